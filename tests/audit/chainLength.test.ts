import { expect, it } from 'vitest';
import { golden } from './cases/chain-length-hint/case.ts';
import { auditCase } from './golden.ts';

const { attention } = auditCase(golden);

/** What to do about the danger of a channel. */
function doNext(of: string): string {
  return attention.find(({ subject }) => subject.tag === of && subject.threshold === 'danger')?.doNext ?? '';
}

it('the advice for a danger that is off says how much cable; the one for an alert does not say it again', () => {
  expect(doNext('long')).toContain('about 8 to 10 % too long');
  expect(doNext('short')).toContain('about 6 to 8 % too short');
  const alert = attention.find(({ subject }) => subject.tag === 'long' && subject.threshold === 'alert');
  expect(alert?.doNext).not.toContain('too long');
});

it('readings that are not off alike, and a length that is not given, suggest none', () => {
  expect(doNext('unlike')).not.toMatch(/too (?:long|short)|fifth/u);
  expect(doNext('none')).not.toMatch(/too (?:long|short)|fifth/u);
});
