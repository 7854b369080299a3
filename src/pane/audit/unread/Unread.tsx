import type { JSX } from 'preact';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { NotRead } from '../../../audit/model/report.ts';
import { capital } from '../../../audit/model/wording.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { LongList } from '../../parts/LongList.tsx';
import { Said } from '../../parts/Said.tsx';
import { severityNames } from '../auditWords.ts';
import { isMarked, markOf, marksOf, withMark, withoutMark } from './marks.ts';
import { markText, settledText, unreadWords } from './unreadWords.ts';

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
          {unreadWords.title} <span class="quiet">{notRead.length}</span>
        </>
      }
    >
      {notRead.length > 0 && <p class="quiet">{unreadWords.hint}</p>}
      <LongList
        entries={notRead}
        more={unreadWords.more}
        line={(one, index) => <UnreadLine key={index} one={one} notRead={notRead} map={map} onMap={onMap} />}
      />
      {settled.length > 0 && (
        <>
          <h4>{unreadWords.settled}</h4>
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
                  {unreadWords.takeBack}
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
        {capital(what)} {text !== '' && <Said text={text} most={80} />} {unreadWords.looksLike}{' '}
        <Said text={looksLike} most={80} />.
      </span>
      {isMarked(map, mark) ? (
        <span class="quiet" role="status">
          {unreadWords.marked}
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
