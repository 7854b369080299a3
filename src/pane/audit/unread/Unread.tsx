import type { JSX } from 'preact';
import type { ColumnMap, NotOfAudit } from '../../../audit/model/columnMap.ts';
import type { NotRead } from '../../../audit/model/report.ts';
import { capital } from '../../../audit/model/wording.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { LongList } from '../../parts/LongList.tsx';
import { Said } from '../../parts/Said.tsx';
import { severityNames } from '../auditMessages.ts';
import { headerKey } from '../../../audit/read/tables/header.ts';
import { columnNumber } from '../../../cells/address.ts';

/** Texts of what was not read. */
const unreadMessages = {
  title: 'Not read',
  hint: 'These look like part of the audit. Correct the header, or say that they are none; that is kept in the workbook.',
  looksLike: 'looks like',
  mark: { column: 'No quantity of this audit', other: 'No part of this audit' },
  marked: 'Counts as settled from the next audit on.',
  takeBack: 'Take it back',
  settled: 'Marked as not part of this audit',
  more: (count: number) => `Show ${count} more`,
} as const;

interface UnreadProps {
  readonly notRead: readonly NotRead[];
  readonly map: ColumnMap;
  readonly onMap: (map: ColumnMap) => void;
}

/** What looks like part of the audit and was not read, each to be marked as none; and what was marked, to be taken back. */
export function Unread({ notRead, map, onMap }: UnreadProps): JSX.Element | null {
  const settled = marksOf(map);
  if (notRead.length === 0 && settled.length === 0) return null;
  return (
    <Fold
      part
      needed={notRead.length > 0}
      title={
        <>
          {unreadMessages.title} <span class="quiet">{notRead.length}</span>
        </>
      }
    >
      {notRead.length > 0 && <p class="quiet">{unreadMessages.hint}</p>}
      <LongList
        entries={notRead}
        more={unreadMessages.more}
        line={(one, index) => <UnreadLine key={index} one={one} notRead={notRead} map={map} onMap={onMap} />}
      />
      {settled.length > 0 && (
        <>
          <h4>{unreadMessages.settled}</h4>
          <ul class="findings">
            {settled.map((mark) => (
              <li key={settledText(mark)}>
                <Said text={settledText(mark)} most={120} />{' '}
                <button
                  type="button"
                  class="button"
                  onClick={() => {
                    onMap(withoutMark(map, mark));
                  }}
                >
                  {unreadMessages.takeBack}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </Fold>
  );
}

function UnreadLine({ one, notRead, map, onMap }: UnreadProps & { one: NotRead }): JSX.Element {
  const { what, text, looksLike, severity, sheet, row, column } = one;
  const mark = markOf(one, notRead);
  return (
    <li class={`severity-${severity}`}>
      <b>{severityNames[severity]}</b> <CellLink sheet={sheet} row={row} column={column} />
      <span class="block">
        {capital(what)} {text !== '' && <Said text={text} most={80} />} {unreadMessages.looksLike}{' '}
        <Said text={looksLike} most={80} />.
      </span>
      {isMarked(map, mark) ? (
        <span class="quiet" role="status">
          {unreadMessages.marked}
        </span>
      ) : (
        <button
          type="button"
          class="button"
          onClick={() => {
            onMap(withMark(map, mark));
          }}
        >
          {markText(one)}
        </button>
      )}
    </li>
  );
}

/** What a button says that marks a thing that was not read. */
function markText({ what }: NotRead): string {
  return what === 'column' || what === 'value' ? unreadMessages.mark.column : unreadMessages.mark.other;
}

/** What was marked, for people. */
function settledText({ sheet, column, row }: NotOfAudit): string {
  if (row !== undefined) return `Sheet '${sheet}', row ${row}`;
  return column === undefined ? `Sheet '${sheet}'` : `Sheet '${sheet}', column '${column}'`;
}

/** What was said to be no part of the audit, as it is kept with the columns. */
function marksOf({ notOfAudit = [] }: ColumnMap): readonly NotOfAudit[] {
  return notOfAudit;
}

/**
 * The mark that settles one thing that was not read, and nothing else: a whole sheet, a column by its header (by its letters,
 * where another one of its sheet has the same header), else by the row in which it begins.
 */
export function markOf(one: NotRead, all: readonly NotRead[]): NotOfAudit {
  const { what, sheet, row } = one;
  if (what === 'sheet') return { sheet };
  return what === 'column' ? { sheet, column: nameOf(one, all) } : { sheet, row };
}

/** The map after something was said to be no part of the audit. */
export function withMark(map: ColumnMap, mark: NotOfAudit): ColumnMap {
  return isMarked(map, mark) ? map : { ...map, notOfAudit: [...marksOf(map), mark] };
}

/** The map after that was taken back. */
export function withoutMark(map: ColumnMap, mark: NotOfAudit): ColumnMap {
  const left = marksOf(map).filter((one) => !isSame(one, mark));
  const next: ColumnMap = { ...map, notOfAudit: left };
  if (left.length === 0) Reflect.deleteProperty(next, 'notOfAudit');
  return next;
}

/** Whether this was said to be no part of the audit. */
export function isMarked(map: ColumnMap, mark: NotOfAudit): boolean {
  return marksOf(map).some((one) => isSame(one, mark));
}

function isSame(one: NotOfAudit, other: NotOfAudit): boolean {
  return one.sheet === other.sheet && one.column === other.column && one.row === other.row;
}

function nameOf({ sheet, text, column }: NotRead, all: readonly NotRead[]): string {
  const key = headerKey(text);
  const alike = all.filter(
    (other) => other.what === 'column' && other.sheet === sheet && headerKey(other.text) === key,
  );
  return key !== '' && alike.length === 1 && Number.isNaN(columnNumber(text)) ? text : column;
}
