import type { EvidenceName } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import { hasZeros, level, type Band, type Column } from './column.ts';
import { evidenceBy } from './line.ts';
import {
  acceptedFrom,
  acceptedTo,
  judgedFrom,
  judgedTo,
  listedReasons,
  panelLeast,
  panelStep,
} from './workings.ts';

/** The working by the listed sensitivity alone, whatever other evidence there is. */
export const listedBand: Band = {
  caption: 'By the listed sensitivity; levels judged without their sign',
  columns: [
    {
      id: 'listed',
      header: 'T by the list',
      width: 10,
      style: level,
      value: ({ threshold }) => evidenceBy(threshold, 'listed sensitivity')?.effective ?? null,
      formula: 'listed',
    },
    {
      id: 'listedLow',
      header: 'at least',
      width: 9,
      style: level,
      value: ({ threshold }) => evidenceBy(threshold, 'listed sensitivity')?.low ?? null,
      formula: 'listedLow',
    },
    {
      id: 'listedHigh',
      header: 'at most',
      width: 9,
      style: level,
      value: ({ threshold }) => evidenceBy(threshold, 'listed sensitivity')?.high ?? null,
      formula: 'listedHigh',
    },
    {
      id: 'acceptedFrom',
      header: 'Accepted from',
      width: 10,
      style: level,
      value: acceptedFrom,
      formula: 'acceptedFrom',
    },
    {
      id: 'acceptedTo',
      header: 'Accepted to',
      width: 10,
      style: level,
      value: acceptedTo,
      formula: 'acceptedTo',
    },
    {
      id: 'judgedFrom',
      header: 'Judged from',
      width: 9,
      style: level,
      value: judgedFrom,
      formula: 'judgedFrom',
    },
    { id: 'judgedTo', header: 'Judged to', width: 9, style: level, value: judgedTo, formula: 'judgedTo' },
    {
      id: 'unreachable',
      header: 'By the list cannot act because',
      width: 22,
      style: 'text',
      value: (line) => listedReasons(line).join(', '),
      formula: 'unreachable',
    },
    {
      id: 'listedVerdict',
      header: 'Verdict by the list',
      width: 12,
      style: 'strong',
      value: ({ threshold }) => verdictOf(threshold, 'listed sensitivity'),
      formula: 'listedVerdict',
    },
    {
      id: 'listedPanel',
      header: 'Panel at real S, uncertainty counted',
      width: 11,
      style: level,
      value: ({ threshold }) => evidenceBy(threshold, 'listed sensitivity')?.panel ?? null,
      formula: 'listedPanel',
      applies: hasZeros,
    },
    {
      id: 'panelLeast',
      header: 'Amount, up to full scale',
      width: 10,
      style: level,
      value: panelLeast,
      formula: 'panelLeast',
      applies: hasZeros,
    },
    {
      id: 'panelStep',
      header: 'Rounded down to steps of',
      width: 10,
      style: 'factor',
      value: panelStep,
      formula: 'panelStep',
      applies: hasZeros,
    },
  ],
};

/** What other evidence says. */
export const otherLinesBand: Band = {
  caption: 'By other evidence; values',
  columns: [
    ...columnsBy('calibration record', 'record', 'the calibration record'),
    ...columnsBy('known vibration', 'vibration', 'the known vibration'),
  ],
};

function columnsBy(name: EvidenceName, id: string, said: string): Column[] {
  return [
    {
      id: `${id}Effective`,
      header: `T by ${said}`,
      width: 11,
      style: level,
      value: ({ threshold }) => evidenceBy(threshold, name)?.effective ?? null,
    },
    {
      id: `${id}Verdict`,
      header: `Verdict by ${said}`,
      width: 12,
      style: 'strong',
      value: ({ threshold }) => verdictOf(threshold, name),
    },
    {
      id: `${id}Why`,
      header: `Why not by ${said}`,
      width: 24,
      style: 'text',
      value: ({ threshold }) => evidenceBy(threshold, name)?.why ?? null,
    },
  ];
}

function verdictOf(threshold: Parameters<typeof evidenceBy>[0], name: EvidenceName): string | null {
  const line = evidenceBy(threshold, name);
  return line ? verdictWords[line.verdict] : null;
}
