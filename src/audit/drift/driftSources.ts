import { rowReader } from '../rows/rowReader.ts';
import { byTag } from '../since/byTag.ts';
import type { Snapshot } from '../since/snapshot.ts';
import { channelColumns } from '../tables/channelColumns.ts';
import type { FoundTable } from '../tables/found.ts';
import type { DriftSources } from './channelReadings.ts';
import type { HistoryBook } from './reading.ts';

/** Where the dated readings of channels come from: the histories, an earlier audit, as-left cells of the channel list. */
export function driftSources(
  history: HistoryBook,
  before: Snapshot | undefined,
  channels: FoundTable,
): DriftSources {
  const { asLeftSensitivity } = channelColumns;
  const read = rowReader(channels, { asLeftSensitivity });
  return {
    history,
    before: before ? byTag(before) : new Map(),
    asLeftIn(row) {
      read.open(row);
      return read.amount('asLeftSensitivity');
    },
  };
}
