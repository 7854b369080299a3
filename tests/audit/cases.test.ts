import { expect, it } from 'vitest';
import { check } from './golden.ts';
import { goldenCases } from './goldenCases.ts';

const cases = await goldenCases();

it('the cases are found', () => {
  expect(cases.length).toBeGreaterThan(50);
});

for (const [name, golden] of cases) {
  it(`${name.replaceAll('-', ' ')}: ${golden.because}`, () => {
    check(golden);
  });
}
