import { grades, type Grade, type Judgement } from './judge/outcome.ts';

export interface Examined {
  readonly name: string;
  readonly chosen: Readonly<Record<string, string>>;
  readonly judgement: Judgement;
}

export interface Shares {
  readonly workbooks: number;
  readonly grades: Readonly<Record<Grade, number>>;
  /** Read rightly, but a meaning was inferred and its place not said. */
  readonly inferredUnsaid: number;
  /** Proposals that read something wrong when they are accepted as they are. */
  readonly misleading: number;
  /** Grades by layout: `dimension: way` → grade → number of workbooks. */
  readonly byLayout: Readonly<Record<string, Partial<Record<Grade, number>>>>;
  /** What is wrong, workbook by workbook. */
  readonly wrong: readonly {
    readonly name: string;
    readonly layouts: string;
    readonly reasons: readonly string[];
  }[];
}

/** How many workbooks had which grade, in all and by each layout. */
export function sharesOf(all: readonly Examined[]): Shares {
  const byLayout: Record<string, Partial<Record<Grade, number>>> = {};
  for (const { chosen, judgement } of all) {
    for (const [dimension, way] of Object.entries(chosen)) {
      const counts = (byLayout[`${dimension}: ${way}`] ??= {});
      counts[judgement.grade] = (counts[judgement.grade] ?? 0) + 1;
    }
  }
  const count = (fits: (judgement: Judgement) => boolean): number =>
    all.filter(({ judgement }) => fits(judgement)).length;
  return {
    workbooks: all.length,
    grades: Object.fromEntries(grades.map((grade) => [grade, count((one) => one.grade === grade)])) as Record<
      Grade,
      number
    >,
    inferredUnsaid: count(({ unsaid }) => unsaid.length > 0),
    misleading: count(({ misleads }) => misleads),
    byLayout: Object.fromEntries(Object.entries(byLayout).sort(([a], [b]) => a.localeCompare(b))),
    wrong: all
      .filter(({ judgement }) => judgement.grade === 'silently wrong')
      .map(({ name, chosen, judgement }) => ({
        name,
        layouts: Object.entries(chosen)
          .map(([dimension, way]) => `${dimension}: ${way}`)
          .join('; '),
        reasons: judgement.reasons,
      })),
  };
}
