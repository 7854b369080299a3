import { verdictWords } from '../../audit/model/wording.ts';
import {
  acts,
  given,
  hasLimit,
  level,
  listedAlone,
  listedGoverns,
  signed,
  yesOrNo,
  type Band,
} from './column.ts';

/** How a threshold stands now, with the formulas that lead to it. */
export const verdictBand: Band = {
  caption: 'Now',
  columns: [
    {
      id: 'verdict',
      header: 'Verdict',
      width: 14,
      style: 'verdict',
      value: ({ threshold }) => verdictWords[threshold.verdict],
      formula: 'verdict',
      applies: listedGoverns,
    },
    { id: 'state', header: 'Judged', width: 10, style: 'centred', value: ({ channel }) => channel.state },
    {
      id: 'inBypass',
      header: 'In bypass',
      width: 9,
      style: 'centred',
      value: ({ channel }) => yesOrNo(channel.inBypass) ?? 'not known',
    },
  ],
};

export const effectBand: Band = {
  caption: 'Where it really acts',
  columns: [
    {
      id: 'effective',
      header: 'Really acts at T',
      width: 10,
      style: level,
      value: ({ threshold }) => threshold.effective,
      formula: 'effective',
      applies: listedGoverns,
    },
    {
      id: 'low',
      header: 'T at least',
      width: 9,
      style: level,
      value: ({ threshold }) => threshold.low,
      formula: 'low',
      applies: listedGoverns,
    },
    {
      id: 'high',
      header: 'T at most',
      width: 9,
      style: level,
      value: ({ threshold }) => threshold.high,
      formula: 'high',
      applies: listedGoverns,
    },
    {
      id: 'shift',
      header: 'Late (+) or early (−) by',
      width: 10,
      style: signed,
      value: ({ threshold }) => threshold.shift,
      formula: 'shift',
      applies: acts,
    },
    {
      id: 'shiftFraction',
      header: 'Late (+) or early (−) by, %',
      width: 10,
      style: 'signedPercent',
      value: ({ threshold }) => threshold.shiftFraction,
      formula: 'shiftFraction',
      applies: acts,
    },
    {
      id: 'panel',
      header: 'Panel reading to treat as S',
      width: 11,
      style: 'panel',
      value: ({ threshold }) => threshold.panel,
      formula: 'panel',
      applies: listedAlone,
    },
    {
      id: 'governedBy',
      header: 'Decided by',
      width: 18,
      style: 'text',
      value: ({ threshold }) => threshold.governedBy,
    },
  ],
};

/** Why a threshold is no better than not known, and what was not judged. */
export const gapsBand: Band = {
  caption: 'What is missing',
  columns: [
    {
      id: 'obstacles',
      header: 'Not known because',
      width: 30,
      style: 'text',
      value: ({ threshold }) => threshold.obstacles.join(', '),
    },
    {
      id: 'notJudged',
      header: 'Not judged',
      width: 22,
      style: 'text',
      value: ({ threshold }) => threshold.notJudged.join(', '),
    },
    {
      id: 'cannotActBecause',
      header: 'Cannot act because',
      width: 22,
      style: 'text',
      value: ({ threshold }) => threshold.unreachable.join(', '),
    },
  ],
};

export const limitBand: Band = {
  caption: 'Limit and zone; probability by the measurement alone',
  columns: [
    {
      id: 'limit',
      header: 'Limit',
      width: 9,
      style: given(({ channel }) => channel.inputs.limit),
      value: ({ channel }) => channel.inputs.limit,
    },
    {
      id: 'beyondLimit',
      header: 'Acts beyond the limit',
      width: 10,
      style: 'centred',
      value: ({ threshold }) => threshold.beyondLimit,
      formula: 'beyondLimit',
      applies: (line) => hasLimit(line) && listedAlone(line),
    },
    {
      id: 'probability',
      header: 'Probability beyond limit',
      width: 11,
      style: 'chance',
      value: ({ threshold }) => threshold.probabilityBeyondLimit,
      formula: 'probability',
      applies: (line) => hasLimit(line) && listedGoverns(line),
    },
    {
      id: 'intendedZone',
      header: 'Zone meant',
      width: 8,
      style: 'centred',
      value: ({ threshold }) => threshold.intendedZone,
    },
    {
      id: 'zone',
      header: 'Zone where it acts',
      width: 9,
      style: 'centred',
      value: ({ threshold }) => threshold.zone,
    },
  ],
};
