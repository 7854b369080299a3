import type { FrameLocator } from 'playwright-core';
import { expect, it } from 'vitest';
import { isClean } from '../../src/evidence/verification.ts';
import { verify } from '../../src/evidence/verify.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

describeWithChromium('result sheets in the bench', () => {
  let visit: BenchVisit;
  let pane: FrameLocator;

  eachVisits((begun) => {
    visit = begun;
    ({ pane } = visit);
  });

  const check = async (words: string): Promise<void> => {
    await pane.getByRole('button', { name: 'Check results' }).click();
    await pane.getByText(words).waitFor();
  };

  it('are as audited once written, in the grid and in the saved copy; edits are named and linked', async () => {
    await pane.getByRole('tab', { name: 'Audit' }).click();
    await check('There are no result sheets to check');
    await visit.audit();
    await pane.getByRole('button', { name: 'Write result sheets' }).click();
    await pane.getByText('Written:').waitFor();
    await check('Nothing was edited since this audit.');
    const copy = verify(readWorkbook('copy.xlsx', await visit.saved()));
    expect(isClean(copy), JSON.stringify(copy)).toBe(true);

    // The check that is shown turns red by itself.
    await visit.type('Channels', 6, 7, '150');
    await pane.getByRole('alert').filter({ hasText: 'Inputs changed since the audit.' }).waitFor();
    expect(await pane.getByText('Nothing was edited since this audit.').count()).toBe(0);
    await pane.getByText('The workbook was changed since this audit.').waitFor();
    await check('Inputs changed since the audit.');
    const link = pane.getByRole('button', { name: 'Channels!G6' });
    await link.click();
    await expect.poll(async () => (await visit.selection()).area).toMatchObject({ top: 6, left: 7 });
    expect(await visit.violations()).toEqual([]);
  });
});
