import type { ColumnSpec } from '../tables/columnSpec.ts';
import { sensitivity } from '../tables/dimensions.ts';
import { channelColumns } from '../tables/channelColumns.ts';
import { tagWords } from '../tables/tagKey.ts';

const { measured, asLeftSensitivity, uncertainty, calibratedOn } = channelColumns;

/** Columns of a history: dated readings of the sensitivity, one row a tag and day. */
export const historyColumns = {
  tag: { name: 'tag', also: tagWords, required: true, holds: 'text' },
  day: {
    name: 'date',
    also: [
      calibratedOn.name,
      ...calibratedOn.also,
      'taken on',
      'date taken',
      'reading date',
      'date of reading',
      'date of calibration',
      'day',
    ],
    required: true,
    holds: 'date',
  },
  sensitivity: {
    name: 'sensitivity',
    also: ['scale factor', 'sensitivity reading', 'average sensitivity', measured.name, ...measured.also],
    required: true,
    holds: 'number',
    dimensions: sensitivity,
  },
  asLeft: {
    name: asLeftSensitivity.name,
    also: asLeftSensitivity.also,
    holds: 'number',
    dimensions: sensitivity,
  },
  series: {
    name: 'as found / as left',
    also: ['as found or as left', 'found / left', 'found or left', 'series', 'condition', 'state', 'reading'],
    holds: 'text',
  },
  uncertainty: { ...uncertainty, name: 'uncertainty' },
} as const satisfies Record<string, ColumnSpec>;

export type HistoryColumnId = keyof typeof historyColumns;
