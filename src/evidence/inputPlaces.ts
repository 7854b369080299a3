import type { AuditBasis } from '../audit/model/basis.ts';
import type { Place } from '../audit/model/findings.ts';
import type { ChannelResult } from '../audit/model/report.ts';
import type { Steps } from '../audit/model/steps.ts';
import { readBook } from '../audit/read/readBook.ts';
import type { TableKind } from '../audit/read/tables/vocabulary.ts';
import type { TidyChannel } from '../audit/read/tidy/tidyList.ts';
import { withColumnLetters } from '../audit/read/tidy/cellRemarks.ts';
import type { MeaningId } from '../audit/read/understand/meaning.ts';
import type { Workbook } from '../cells/sheet.ts';

/** Where an input that the results sheet shows stands in the tables. */
export interface InputPlace {
  readonly table: TableKind;
  /** Id of the column in the vocabulary; the setpoint's is that of its threshold. */
  readonly column: string;
  /** The same where what was left counts. */
  readonly asLeft?: string;
}

/** Columns of the results sheet that show inputs, by their ids. */
export const inputColumns: ReadonlyMap<string, InputPlace> = new Map([
  ['machine', { table: 'channels', column: 'machine' }],
  ['location', { table: 'channels', column: 'location' }],
  ['kind', { table: 'channels', column: 'kind' }],
  ['detection', { table: 'settings', column: 'detection' }],
  ['setpoint', { table: 'settings', column: 'setpoint' }],
  ['configured', { table: 'settings', column: 'configured' }],
  ['measured', { table: 'channels', column: 'measured', asLeft: 'asLeftSensitivity' }],
  ['uncertainty', { table: 'channels', column: 'uncertainty', asLeft: 'asLeftUncertainty' }],
  ['coverage', { table: 'channels', column: 'coverage' }],
  ['fullScale', { table: 'settings', column: 'fullScale' }],
  ['zeroConfigured', { table: 'settings', column: 'zeroConfigured' }],
  ['zeroMeasured', { table: 'channels', column: 'zeroMeasured', asLeft: 'asLeftZero' }],
  ['zeroUncertainty', { table: 'channels', column: 'zeroUncertainty' }],
  ['runout', { table: 'channels', column: 'runoutAmplitude' }],
  ['runoutPhase', { table: 'channels', column: 'runoutPhase' }],
  ['vectorAmplitude', { table: 'channels', column: 'vectorAmplitude' }],
  ['vectorPhase', { table: 'channels', column: 'vectorPhase' }],
  ['gain', { table: 'settings', column: 'gain' }],
  ['gainUncertainty', { table: 'settings', column: 'gainUncertainty' }],
  ['loopAtZero', { table: 'channels', column: 'loopAtZero' }],
  ['loopAtZeroUncertainty', { table: 'channels', column: 'loopAtZeroUncertainty' }],
  ['loopAtSpan', { table: 'channels', column: 'loopAtSpan' }],
  ['loopAtSpanUncertainty', { table: 'channels', column: 'loopAtSpanUncertainty' }],
  ['limit', { table: 'channels', column: 'limit' }],
  ['reading', { table: 'channels', column: 'reading' }],
  ['resolution', { table: 'settings', column: 'resolution' }],
]);

/** The cell from which an input of a channel is read, by the id of its column; `undefined` where its table tells that. */
export type InputPlaces = (channel: ChannelResult, table: TableKind, id: string) => Place | undefined;

/**
 * Where the inputs of a workbook stand that is no channel list and monitor settings but lists of another shape, in which
 * neither one row nor one column holds a channel. `time`: of the audit.
 */
export function* inputPlaces(workbook: Workbook, { map }: AuditBasis, time: Date): Steps<void, InputPlaces> {
  const book = yield* readBook(workbook, map, Math.floor(time.getTime() / 86_400_000));
  const list = 'refusal' in book ? undefined : book.understood?.list;
  const channels = new Map<string, TidyChannel>();
  for (const channel of list?.channels ?? []) channels.set(keyOf(channel), channel);
  return (channel, table, id) => {
    const own = channels.get(keyOf(channel));
    if (!own) return undefined;
    const column = id as MeaningId;
    return withColumnLetters(own.values.get(column)?.place ?? own.unused.get(column) ?? own.at[table]);
  };
}

function keyOf({ tag, machine }: Pick<TidyChannel, 'tag' | 'machine'>): string {
  return `${tag}\n${machine}`;
}
