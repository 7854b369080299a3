import { expect, it } from 'vitest';
import { golden } from './cases/chain-length-hint/case.ts';
import { auditCase } from './golden.ts';

const { attention, channels } = auditCase(golden);

/** What the sensitivity and the gap voltage of a channel together point to. */
function hint(of: string): string {
  const findings = channels.find(({ tag }) => tag === of)?.findings ?? [];
  return findings.find(({ rule }) => rule === 'readings-point-to-a-cause')?.message ?? '';
}

it('the cause that a channel’s readings point to says how much cable', () => {
  expect(hint('long')).toContain('about 8 to 10 % too long');
  expect(hint('short')).toContain('about 6 to 8 % too short');
});

it('readings that are not off alike, and a length that is not given, suggest none', () => {
  expect(hint('unlike')).not.toMatch(/too (?:long|short)|fifth/u);
  expect(hint('none')).not.toMatch(/too (?:long|short)|fifth/u);
});

it('what to do is the same for all that are late, whatever their chains', () => {
  for (const { doNext } of attention) expect(doNext).not.toMatch(/too (?:long|short)/u);
});
