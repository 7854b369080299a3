/** Texts of the care view. */
export const careWords = {
  title: 'Care',
  functions: 'Worksheet functions',
  looking: 'Checking the worksheet functions…',
  ready: 'The worksheet functions are registered and ready.',
  notReady:
    'The worksheet functions are not registered. Close every workbook, start the program again and open this pane once; the audit works without them.',
  unknown:
    'Whether the worksheet functions are registered is not known: no cell of this workbook uses one. Insert one in Quick answer to see. The audit works without them.',
  broken: 'Formulas that show #NAME?',
  brokenIntro:
    'Happens where a workbook was opened without Tripdrift. Repairing enters the same formula anew.',
  find: 'Find them',
  none: 'None found.',
  found: (count: number) => `${count} ${count === 1 ? 'cell' : 'cells'} found.`,
  repair: (count: number) => `Repair ${count === 1 ? 'this cell' : `these ${count} cells`}`,
  repaired: (count: number) => `${count} ${count === 1 ? 'formula was' : 'formulas were'} entered anew.`,
  more: (count: number) => `and ${count} more`,
  recalculate: 'Recalculate all Tripdrift formulas',
  recalculated: (count: number) =>
    count === 0
      ? 'There is no Tripdrift formula in this workbook.'
      : `${count} ${count === 1 ? 'formula was' : 'formulas were'} calculated anew.`,
  recalculation: 'Recalculation',
  sharing: 'A copy for people without Tripdrift',
  sharingHow:
    'Their program shows #NAME? where a formula calls a Tripdrift function. Save the workbook, open it in the Tripdrift bench and choose “Copy to share”: values, or native formulas, stand there instead, and your workbook stays as it is.',
  rules: 'Rules',
  rulesVersion: (version: string) =>
    `Version ${version}. It stands beside every result; results of another version may differ.`,
  caution: 'Caution',
  help: 'Help',
  helpText: 'What each function does, each column means and each finding says:',
  helpLink: 'Tripdrift help',
} as const;

/** The help page beside the pane, on the same host. */
export const helpAddress = 'help.html';
