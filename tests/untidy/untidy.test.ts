import { writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { untidy } from './generate.ts';
import { judge } from './judge/judge.ts';
import { grades } from './judge/outcome.ts';
import { hasToPass, reader } from './reader.ts';
import { sharesOf } from './shares.ts';

/** `UNTIDY=500` examines so many workbooks, `SEED=7` others; `UNTIDY_SHARES=file.json` gets what came of them. */
const many = Number(process.env['UNTIDY'] ?? 60);
const first = Number(process.env['SEED'] ?? 20_261_125);
const file = process.env['UNTIDY_SHARES'];

describe('workbooks as plants keep them', () => {
  const examined = Array.from({ length: many }, (_, index) => {
    const { number, workbook, truth, chosen } = untidy(first + index);
    const onlyAsked = truth.channels.some(({ mustAsk }) => mustAsk);
    return { name: `workbook ${number}`, chosen, onlyAsked, judgement: judge(truth, reader(workbook)) };
  });
  const shares = sharesOf(examined);
  if (file !== undefined) writeFileSync(file, `${JSON.stringify(shares, null, 1)}\n`);

  it('each get a grade', () => {
    expect(grades.reduce((sum, grade) => sum + shares.grades[grade], 0)).toBe(many);
  });

  it.runIf(hasToPass)('are never silently wrong', () => {
    expect(shares.wrong).toEqual([]);
  });

  it.runIf(hasToPass)('say the place of each meaning that no header states', () => {
    expect(
      examined
        .filter(({ judgement }) => judgement.unsaid.length > 0)
        .map(({ name, judgement }) => [name, judgement.unsaid]),
    ).toEqual([]);
  });

  it.runIf(hasToPass)('never get a proposal that misleads whoever accepts it', () => {
    expect(
      examined
        .filter(({ judgement }) => judgement.misleads)
        .map(({ name, judgement }) => [name, judgement.reasons]),
    ).toEqual([]);
  });

  it.runIf(hasToPass)(
    'are read right without a question, two of three that need none; no other is refused without a usable proposal',
    () => {
      const readable = examined.filter(({ onlyAsked }) => !onlyAsked);
      const right = readable.filter(({ judgement }) => judgement.grade === 'read right');
      expect(right.length).toBeGreaterThanOrEqual((readable.length * 2) / 3);
      expect(shares.grades.refused).toBe(0);
    },
  );
});
