import { shortId } from '../../audit/evidence/fingerprint.ts';
import type { Report } from '../../audit/model/report.ts';
import { timeText } from '../auditedLine.ts';
import { wide } from '../style/layout.ts';
import { machineName, type Machine } from '../machines.ts';
import { titleOf } from '../titles.ts';
import { type PageLine, clipped } from './paper.ts';
import type { Policy } from '../../audit/model/policy.ts';
import { amount, percent } from '../../audit/model/wording.ts';

/** Narrow columns of the control-room page, on which its tables, marks and lines all find their places. */
export const columns = 44;
export const widths: readonly number[] = Array.from({ length: columns }, () => 1.7);

/** What the page is of, when it was audited, and the caution in short. */
export function headLines(machine: Machine, report: Report): PageLine[] {
  return [
    {
      entries: [
        wide(titleOf('hand-over', report), 'mark', 26),
        wide(`As audited on ${timeText(report.generated)}`, 'markRight', columns - 26),
      ],
    },
    full(clipped(machineName(machine), 60), 'machine'),
    full(shortCaution, 'cautionLine'),
  ];
}

const shortCaution =
  'Advisory only. Correct the measuring chain first. Never bypass protection on the word of this page.';

/** Lines to sign on; then the caution in full, the policy, and what the page was made from. */
export function signaturePart(report: Report): PageLine[] {
  const { version, input, generated, fingerprint, policy, caution } = report;
  return [
    space,
    {
      entries: [
        wide('Handed over', 'section', 8),
        wide('Name', 'labelLeft', 13),
        wide('Signature', 'labelLeft', 13),
        wide('Date and time', 'labelLeft', 10),
      ],
    },
    ...['Prepared by', 'Reviewed by', 'Accepted by'].map((who): PageLine => ({
      height: 19,
      entries: [wide(who, 'sign', 8), ...[13, 13, 10].map((span) => wide(null, 'signHere', span))],
    })),
    { entries: [], height: 3 },
    full(`${caution} ${policySentence(policy)}`, 'small'),
    full(
      `Audit ${shortId(report)}, rules version ${version}, ${timeText(generated)}, from ${clipped(input, 60)}. Fingerprint of the inputs, SHA-256: ${fingerprint.inputs}`,
      'small',
    ),
  ];
}

/** A heading, with room above it. */
export function section(words: string): PageLine[] {
  return [space, full(words, 'section')];
}

/** A text over the whole page. */
export function full(text: string, style: string): PageLine {
  return { entries: [wide(text, style, columns)] };
}

/** Room between two parts of the page. */
export const space: PageLine = { entries: [], height: 5 };

/** The policy of an audit in one line. */
export function policySentence(policy: Policy): string {
  const { tolerance, rule, coverage, calibrationIntervalDays, delays } = policy;
  return [
    `Policy: tolerance ${percent(tolerance)} of the sensitivity`,
    `${rule} decision`,
    `coverage factor ${amount(coverage, '')} where none is given`,
    `calibration at most ${amount(calibrationIntervalDays, 'days')} old`,
    `delays at most ${amount(delays.alert, 's')} (alert) and ${amount(delays.danger, 's')} (danger).`,
  ].join('; ');
}
