import { UsageRefused } from '../../refused.ts';

/**
 * Refuses a name of a copy whose ending is not that of the input: macros stay in an .xlsm alone.
 * @throws UsageRefused
 */
export function checkCopyName(option: string, given: string, input = ''): void {
  const wanted = /\.xlsm$/iu.test(input) ? '.xlsm' : '.xlsx';
  if (given.toLowerCase().endsWith(wanted)) return;
  throw new UsageRefused(`${option} ${given}: a copy of ${input} must be named ${wanted}.`);
}
