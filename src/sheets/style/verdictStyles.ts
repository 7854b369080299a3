import { severities } from '../../audit/model/severity.ts';
import type { Severity } from '../../audit/model/findings.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import type { CellStyle } from '../model.ts';
import { severityShades, verdictShades } from './shades.ts';
import { verdictMarks, type Standing } from './verdictMarks.ts';

const standingWords: Readonly<Record<Standing, string>> = { ...verdictWords, 'in bypass': 'in bypass' };
const standings = Object.keys(verdictMarks) as Standing[];

/** Name of the style of cells that say a verdict and do not follow from a formula; of `severity` the same for severities. */
export function verdictStyle(verdict: Standing): string {
  return `verdict ${verdict}`;
}

export function severityStyle(severity: Severity): string {
  return `severity ${severity}`;
}

/** These styles; a file lists them under names of ours, such as `Tripdrift late`. */
export const verdictStyles: Readonly<Record<string, CellStyle>> = {
  ...Object.fromEntries(
    standings.map((standing): [string, CellStyle] => {
      const shade = standing === 'in bypass' ? verdictShades.unreachable : verdictShades[standing];
      return [
        verdictStyle(standing),
        { named: `Tripdrift ${standingWords[standing]}`, bold: true, valign: 'top', ...shade },
      ];
    }),
  ),
  ...Object.fromEntries(
    severities.map((severity): [string, CellStyle] => [
      severityStyle(severity),
      { named: `Tripdrift ${severity}`, valign: 'top', ...severityShades[severity] },
    ]),
  ),
};
