import { finish } from '../../../audit/model/steps.ts';
import { isClean } from '../../../evidence/verification.ts';
import { verifyInSteps } from '../../../evidence/verify.ts';
import { UsageRefused } from '../../refused.ts';
import { plain, progressOn } from '../../terminal.ts';
import { readInput } from '../input.ts';
import { optionList } from '../optionList.ts';
import type { Options } from '../options.ts';
import { fileFormulas } from './fileFormulas.ts';
import { verificationText } from './verificationText.ts';

const others = (Object.keys(optionList) as (keyof typeof optionList)[]).filter((name) => name !== 'verify');

/**
 * `--verify`: checks a workbook with result sheets and says what was edited. Returns 0 where nothing was, 1 otherwise.
 * @throws UsageRefused, FileRefused where the workbook can't be read or holds no results.
 */
export function verifyFile(options: Options): number {
  const other = others.find((name) => options[name] !== undefined && options[name] !== false);
  if (other !== undefined)
    throw new UsageRefused(
      `--verify goes without --${other}: it writes nothing, and goes by the policy and column map of the audit.`,
    );
  const progress = progressOn(process.stderr);
  try {
    const { workbook, original } = readInput(options.inputs, (part) => {
      progress.show('reading', part);
    });
    if (!original) throw new UsageRefused('--verify takes a workbook with result sheets, not text tables.');
    const verification = finish(verifyInSteps(workbook, fileFormulas(workbook.name, original)), (part) => {
      progress.show('checking', part);
    });
    progress.clear();
    if (!verification.checked) throw new UsageRefused(nothingToCheck(workbook.name, verification.without));
    process.stdout.write(verificationText(workbook.name, verification));
    return isClean(verification) ? 0 : 1;
  } finally {
    progress.clear();
  }
}

function nothingToCheck(name: string, without: readonly string[]): string {
  if (without.length === 0) return `${plain(name)} holds no result sheets, so there is nothing to check.`;
  const sheets = plain(without.map((sheet) => `'${sheet}'`).join(', '));
  return `${plain(name)} holds result sheets without evidence (${sheets}): sheets to hand over alone, or from a version that kept none. They can't be checked: check the workbook of --out.`;
}
