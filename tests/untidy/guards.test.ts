import { describe, expect, it } from 'vitest';
import { guards } from './golden/all.ts';
import { judge } from './judge/judge.ts';
import { grades, type Outcome } from './judge/outcome.ts';
import { perfect } from './judge/perfect.ts';
import { hasToPass, reader } from './reader.ts';

describe('traps that were seen to give a late trip as within, or to lose a channel', () => {
  it.each(guards.map((guard) => [guard.name, guard] as const))(
    '%s: the truth itself holds',
    (_, { truth, holds }) => {
      const report = perfect(truth);
      const outcome: Outcome = truth.channels.some(({ mustAsk }) => mustAsk)
        ? {
            report: null,
            refusal: 'Which?',
            proposed: [],
            choice: [],
            accepted: () => ({ report, refusal: null, proposed: [], choice: [], accepted: null }),
          }
        : { report, refusal: null, proposed: [], choice: [], accepted: null };
      expect(holds).toContain(judge(truth, outcome).grade);
    },
  );

  it.each(guards.map((guard) => [guard.name, guard] as const))(
    '%s',
    (_, { workbook, truth, holds, because }) => {
      const { grade, reasons } = judge(truth, reader(workbook));
      if (hasToPass) expect(holds, `${because}\n${reasons.join('\n')}`).toContain(grade);
      else expect(grades).toContain(grade);
    },
  );
});
