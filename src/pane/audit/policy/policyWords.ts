/** Texts of the policy form; those of its fields stand with them. */
export const policyWords = {
  title: 'Policy',
  intro: 'What the site accepts. What is used stands in every result. Kept in this workbook.',
  rule: 'Decision rule',
  guarded: 'Guarded: all of the band must be inside',
  simple: 'Simple: the value alone decides',
  apply: 'Use this policy',
  reset: 'Back to defaults',
  applied: 'This policy holds from the next run on.',
  wrong: 'Correct the marked fields first.',
  changed: (count: number) =>
    `${count} ${count === 1 ? 'entry differs' : 'entries differ'} from the defaults`,
  defaults: 'All as by default',
} as const;
