import { describe, expect, it } from 'vitest';
import { untidy } from '../untidy/generate.ts';
import { guards } from '../untidy/golden/all.ts';
import { judge } from '../untidy/judge/judge.ts';
import { ownWorkbooks } from '../untidy/ownWorkbooks.ts';
import { sharesOf } from '../untidy/shares.ts';
import { understood } from '../untidy/understood.ts';

/** `UNTIDY=500` examines so many workbooks, `SEED=7` others. */
const many = Number(process.env['UNTIDY'] ?? 150);
const first = Number(process.env['SEED'] ?? 20_261_130);

describe('the understanding alone, over workbooks as plants keep them', () => {
  const examined = Array.from({ length: many }, (_, index) => {
    const { number, workbook, truth, chosen } = untidy(first + index);
    const onlyAsked = truth.channels.some(({ mustAsk }) => mustAsk);
    return { name: `workbook ${number}`, chosen, onlyAsked, judgement: judge(truth, understood(workbook)) };
  });
  const { grades, wrong } = sharesOf(examined);

  it('is never silently wrong', () => {
    expect(wrong).toEqual([]);
  });

  it('reads three of four right without a question, where none is needed', () => {
    const readable = examined.filter(({ onlyAsked }) => !onlyAsked);
    const right = readable.filter(({ judgement }) => judgement.grade === 'read right');
    expect(right.length).toBeGreaterThanOrEqual((readable.length * 3) / 4);
  });

  it('reads nineteen of twenty right once its proposal is accepted as it is', () => {
    expect(grades['read right'] + grades.asked).toBeGreaterThanOrEqual((many * 19) / 20);
  });
});

describe('the understanding alone, at each trap', () => {
  it.each(guards.map((guard) => [guard.name, guard] as const))(
    '%s',
    (_, { workbook, truth, holds, because }) => {
      const { grade, reasons } = judge(truth, understood(workbook));
      expect(holds, `${because}\n${reasons.join('\n')}`).toContain(grade);
    },
  );

  it.each(ownWorkbooks().map((own) => [own.file, own] as const))('%s', (_, { workbook, truth }) => {
    const { grade, reasons, unsaid, misleads } = judge(truth, understood(workbook));
    expect(['read right', 'asked'], reasons.join('\n')).toContain(grade);
    expect({ unsaid, misleads }).toEqual({ unsaid: [], misleads: false });
  });
});
