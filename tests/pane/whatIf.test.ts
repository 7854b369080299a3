import { expect, it } from 'vitest';
import { whatIf } from '../../src/audit/advise/whatIf.ts';
import { audit } from '../../src/audit/audit.ts';
import { lateWords } from '../../src/pane/audit/whatIf/whatIfMessages.ts';
import { book } from '../audit/book.ts';
import { describeWithChromium } from '../chromium.ts';
import type { GivenSheet } from './pages/test.ts';
import { visits } from './visit.ts';

/** All of a 2oo3 late by a third. */
const sheets: readonly GivenSheet[] = [
  {
    name: 'Channels',
    rows: [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)'],
      ...['A', 'B', 'C'].map((tag) => [tag, 'K-1', 150, 3]),
    ],
  },
  {
    name: 'Monitor',
    rows: [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Group', 'Voting'],
      ...['A', 'B', 'C'].map((tag) => [tag, 200, 3, 5, 'g', '2oo3']),
    ],
  },
];
const [machine] = audit(book(...sheets.map(({ name, rows }) => [name, rows] as const)), {}).machines;

it('one group is said by its own chance, several by any, all and the expected number', () => {
  expect(lateWords({ any: 0.25, all: 0.25, expected: 0.25 }, 1)).toBe(
    '25 % that its danger group acts later than its limit.',
  );
  expect(lateWords({ any: 0.25, all: 0.01, expected: 0.26 }, 2)).toContain(
    'at least one of its 2 danger groups',
  );
  expect(lateWords({ any: null, all: null, expected: 1.5 }, 2)).toBe(
    'Expected number of late danger groups: 1.5.',
  );
  expect(lateWords(null, 2)).toBe('This can’t be worked out.');
});

describeWithChromium('what if, in the task pane', () => {
  const visit = visits();

  it('ticking channels as corrected shows how the machine changes, and clearing takes it back', async () => {
    if (!machine) throw new Error('no machine');
    const page = await visit('workbook=given', {}, sheets);
    await page.getByRole('tree').waitFor();
    const part = page.locator('details', { has: page.locator('summary', { hasText: /^What if$/u }) });
    await part.locator('summary').click();
    const status = part.getByRole('status');
    expect(await status.innerText()).toBe('');
    await part.getByLabel('A').check();
    const one = lateWords(whatIf(machine, new Set(['A'])), 1);
    expect(await status.innerText()).toBe(`With 1 channel corrected: ${one}`);
    await part.getByLabel('B').check();
    const two = lateWords(whatIf(machine, new Set(['A', 'B'])), 1);
    expect(two).not.toBe(one);
    expect(await status.innerText()).toBe(`With 2 channels corrected: ${two}`);
    expect(await part.innerText()).toContain('wiring, logic and relays are not counted');
    await part.getByRole('button', { name: 'Clear all' }).click();
    expect(await status.innerText()).toBe('');
  });
});
