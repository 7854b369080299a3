import { describe, expect, it } from 'vitest';
import { judge } from './judge/judge.ts';
import { grades } from './judge/outcome.ts';
import { ownWorkbooks } from './ownWorkbooks.ts';
import { hasToPass, reader } from './reader.ts';

describe('workbooks of plants, from files', () => {
  it.each(ownWorkbooks().map((own) => [own.file, own] as const))('%s', (_, { workbook, truth }) => {
    const { grade, reasons, unsaid, misleads } = judge(truth, reader(workbook));
    if (!hasToPass) {
      expect(grades).toContain(grade);
      return;
    }
    expect(['read right', 'partly read', 'asked'], reasons.join('\n')).toContain(grade);
    expect({ unsaid, misleads }).toEqual({ unsaid: [], misleads: false });
  });
});
