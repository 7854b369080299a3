import type { Policy } from '../../audit/model/policy.ts';
import type { Report } from '../../audit/model/report.ts';
import { amount, percent } from '../../audit/model/wording.ts';
import { cell } from '../cells.ts';
import { wide } from '../look/layout.ts';
import { timeText } from '../auditedLine.ts';
import type { Machine } from '../machines.ts';
import { heading, line, space, text, type Block, type PageLine } from './page.ts';
import { stepsBeforeStartUp } from './steps.ts';

/** What must be done before start-up, numbered. */
export function stepBlocks(machine: Machine): Block[] {
  const steps = stepsBeforeStartUp(machine);
  if (steps.length === 0) return [];
  const lines = steps.flatMap((step, index) => text(`${index + 1}.  ${step}`));
  return [
    [space, ...heading('Before start-up'), ...lines.slice(0, 1)],
    ...lines.slice(1).map((one): Block => [one]),
  ];
}

/** Lines to sign on, and what the sheet was made from. */
export function closingBlock(report: Report): Block {
  const { policy, version, generated, input, fingerprint } = report;
  return [
    space,
    ...heading('Handed over'),
    {
      entries: [
        undefined,
        wide('Name', 'labelLeft', 4),
        wide('Signature', 'labelLeft', 4),
        wide('Date and time', 'labelLeft', 3),
      ],
    },
    ...['Prepared by', 'Reviewed by', 'Accepted by'].map((who): PageLine => ({
      height: 30,
      entries: [
        cell(who, 'sign'),
        wide(null, 'signHere', 4),
        wide(null, 'signHere', 4),
        wide(null, 'signHere', 3),
      ],
    })),
    space,
    ...text(
      `Made by Tripdrift, rules version ${version}, on ${timeText(generated)}, from ${input}.`,
      'remark',
    ),
    line(policySentence(policy), 'remark'),
    line(`Fingerprint of the inputs, SHA-256: ${fingerprint.inputs}`, 'remark'),
  ];
}

/** The policy of an audit in one line. */
export function policySentence({
  tolerance,
  rule,
  coverage,
  calibrationIntervalDays,
  delays,
}: Policy): string {
  return [
    `Policy: tolerance ${percent(tolerance)} of the sensitivity`,
    `${rule} decision`,
    `coverage factor ${amount(coverage, '')} where none is given`,
    `calibration at most ${amount(calibrationIntervalDays, 'days')} old`,
    `delays at most ${amount(delays.alert, 's')} (alert) and ${amount(delays.danger, 's')} (danger).`,
  ].join('; ');
}
