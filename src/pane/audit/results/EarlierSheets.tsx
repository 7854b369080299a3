import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Report } from '../../../audit/model/report.ts';
import { cellAddress } from '../../../cells/address.ts';
import { ownSheetsInSteps } from '../../../evidence/ownSheets.ts';
import type { Cancel, CellPlace, WrittenSheet } from '../../../hosts/port/port.ts';
import { resultSheetsInSteps } from '../../../sheets/resultSheets.ts';
import { usePort } from '../../app/paneContext.ts';
import { CellButton } from '../../parts/CellLink.tsx';
import { LongActionPart } from '../../parts/LongActionPart.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Said } from '../../parts/Said.tsx';
import { useLongAction } from '../../parts/useLongAction.ts';
import { auditMessages } from '../auditMessages.ts';
import { inSlices } from '../run/inSlices.ts';

interface EarlierSheetsProps {
  /** Whether new result sheets come in place of those taken away. */
  readonly aim: 'replace' | 'remove';
  readonly report: Report;
  /** Hears when the pane itself begins and ends to write. */
  readonly onWriting: (under: boolean) => void;
}

/** What has to be consented to before sheets are taken away. */
interface Asked {
  readonly sheets: readonly string[];
  readonly edited: readonly string[];
  readonly references: readonly CellPlace[];
}

interface Done {
  readonly removed: readonly string[];
  readonly written: readonly WrittenSheet[];
}

/** Cells that are named one by one. */
const mostNamed = 10;

/**
 * Takes the result sheets of earlier audits away, or replaces them. Only what its audit wrote goes unasked: sheets that were
 * edited, and cells that refer to any, are named first.
 */
export function EarlierSheets({ aim, report, onWriting }: EarlierSheetsProps): JSX.Element {
  const port = usePort();
  const action = useLongAction(auditMessages.cancelled);
  const [part, setPart] = useState(0);
  const [asked, setAsked] = useState<Asked | null>(null);
  const [done, setDone] = useState<Done | null>(null);
  const words = aim === 'replace' ? auditMessages.replaceSheets : auditMessages.removeSheets;

  const carryOut = async (sheets: readonly string[], cancel: Cancel): Promise<boolean> => {
    setAsked(null);
    onWriting(true);
    try {
      const made =
        aim === 'replace' ? await inSlices(resultSheetsInSteps(report), () => undefined, cancel) : [];
      if (made === null) return false;
      const written = aim === 'replace' ? await port.replaceSheets(sheets, made, setPart, cancel) : [];
      if (aim === 'remove' && sheets.length > 0) await port.removeSheets(sheets);
      setDone({ removed: sheets, written });
      return true;
    } finally {
      onWriting(false);
    }
  };

  const look = async (cancel: Cancel): Promise<boolean> => {
    setPart(0);
    setAsked(null);
    setDone(null);
    const workbook = await port.readWorkbook(setPart, cancel);
    const own = await inSlices(ownSheetsInSteps(workbook), () => undefined, cancel);
    if (own === null) return false;
    const sheets = [...own.proven, ...own.unproven];
    const references = sheets.length === 0 ? [] : await port.referencesTo(sheets);
    if (own.unproven.length === 0 && references.length === 0) return carryOut(sheets, cancel);
    setAsked({ sheets, edited: own.unproven, references });
    return true;
  };

  return (
    <LongActionPart
      action={action}
      words={{ ...words, cancel: auditMessages.cancel }}
      work={{ label: words.under, part }}
      start={() => {
        action.run(look);
      }}
    >
      {asked && (
        <Notice tone="problem">
          {asked.edited.length > 0 && (
            <>
              {auditMessages.editedSheets}
              <Places places={asked.edited.map((sheet) => ({ sheet, row: 1, column: 1 }))} />
            </>
          )}
          {asked.references.length > 0 && (
            <>
              {auditMessages.referring}
              <Places places={asked.references} cells />
            </>
          )}
          <button
            type="button"
            class="button"
            onClick={() => {
              action.run((cancel) => carryOut(asked.sheets, cancel));
            }}
          >
            {auditMessages.goOn}
          </button>{' '}
          <button
            type="button"
            class="button"
            onClick={() => {
              setAsked(null);
            }}
          >
            {auditMessages.leave}
          </button>
        </Notice>
      )}
      {done && (
        <Notice tone="done">
          {done.removed.length === 0 ? (
            done.written.length === 0 && auditMessages.noneThere
          ) : (
            <>
              {auditMessages.removed} <Said text={done.removed.join(', ')} />
            </>
          )}
          {done.written.length > 0 && (
            <>
              <br />
              {auditMessages.written}
              <Places places={done.written.map(({ given }) => ({ sheet: given, row: 1, column: 1 }))} />
            </>
          )}
        </Notice>
      )}
    </LongActionPart>
  );
}

/** Places to go to, as far as a list of them helps. */
function Places({
  places,
  cells = false,
}: {
  readonly places: readonly CellPlace[];
  readonly cells?: boolean;
}): JSX.Element {
  const more = places.length - mostNamed;
  return (
    <ul class="inline-list">
      {places.slice(0, mostNamed).map((place) => (
        <li key={`${place.sheet} ${place.row} ${place.column}`}>
          <CellButton place={place}>
            <Said
              text={cells ? `${place.sheet}!${cellAddress(place.row, place.column)}` : place.sheet}
              most={50}
            />
          </CellButton>
        </li>
      ))}
      {more > 0 && <li>{auditMessages.andMore(more)}</li>}
    </ul>
  );
}
