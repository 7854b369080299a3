import type { Workbook } from '../../../cells/sheet.ts';
import type { Steps } from '../../model/steps.ts';
import { nothingSaid, type Said } from './answers/said.ts';
import { findBlocks } from './blocks/findBlocks.ts';
import type { ReadChannel } from './readings/channel.ts';
import { readChannels } from './readings/readChannels.ts';
import type { Line } from './readings/records.ts';
import { readTables } from './tables/readTables.ts';
import type { TableRead } from './tables/tableRead.ts';

/** What a workbook says, as far as it is understood. */
export interface Understanding {
  readonly tables: readonly TableRead[];
  readonly channels: readonly ReadChannel[];
  readonly others: readonly Line[];
  readonly yielded: readonly Line[];
}

/** Understands a workbook, with what a person said about it. Goes step by step, so that a screen stays alive. */
export function* understand(workbook: Workbook, said: Said = nothingSaid): Steps<void, Understanding> {
  const blocks = yield* findBlocks(workbook);
  const tables = yield* readTables(workbook, blocks, said);
  const sheets = new Map(workbook.sheets.map((sheet) => [sheet.name, sheet]));
  const { channels, others, yielded } = yield* readChannels(tables, sheets, said);
  return { tables, channels, others, yielded };
}
