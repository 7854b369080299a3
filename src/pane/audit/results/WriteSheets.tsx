import type { JSX } from 'preact';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { Report } from '../../../audit/model/report.ts';
import { isResultSheet } from '../../../audit/read/tables/titleWords.ts';
import { handoverSheetInSteps, handoverSheetsInSteps } from '../../../sheets/handover/handoverSheets.ts';
import { machineName, type Machine } from '../../../sheets/machines.ts';
import { resultSheetsInSteps } from '../../../sheets/resultSheets.ts';
import { tidySheetsInSteps } from '../../../sheets/tidySheets.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { shownText } from '../../parts/shownText.ts';
import { auditMessages } from '../auditMessages.ts';
import { EarlierSheets } from './EarlierSheets.tsx';
import { useState } from 'preact/hooks';
import type { Steps } from '../../../audit/model/steps.ts';
import type { SheetModel } from '../../../sheets/model.ts';
import type { Cancel, WrittenSheet } from '../../../hosts/port/port.ts';
import { usePort } from '../../app/paneContext.ts';
import { CellButton } from '../../parts/CellLink.tsx';
import { LongActionPart } from '../../parts/LongActionPart.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Said } from '../../parts/Said.tsx';
import { useLongAction } from '../../parts/useLongAction.ts';
import { inSlices } from '../run/inSlices.ts';

interface SheetsActionProps {
  /** What the button says, what is said while it works, and what it does, for those who hesitate. */
  readonly words: { readonly button: string; readonly under: string; readonly hint: string };
  /** The first thing to do of those that stand beside it. */
  readonly first?: boolean;
  /** Makes them, in steps that tell the part done. */
  readonly sheets: () => Steps<number, readonly SheetModel[]>;
  /** Hears when the pane itself begins and ends to write, so that its own sheets are no change of the workbook. */
  readonly onWriting: (under: boolean) => void;
}

interface WriteSheetsProps {
  readonly report: Report;
  /** What was audited, with what was said about it. */
  readonly workbook: Workbook;
  readonly map: ColumnMap;
  /** The machine that is chosen in the list, where there are several. */
  readonly machine: Machine | null;
  /** There are several. */
  readonly several: boolean;
  /** Hears when the pane itself begins and ends to write. */
  readonly onWriting: (under: boolean) => void;
}

/** What can be written of an audit into the workbook: result sheets, sheets to hand over, and the list itself in the standard shape where it has another. */
export function WriteSheets(props: WriteSheetsProps): JSX.Element {
  const { report, workbook, map, machine, several, onWriting } = props;
  const [wrote, setWrote] = useState(false);
  const hasResults = wrote || workbook.sheets.some(isResultSheet);
  return (
    <>
      <SheetsAction
        words={auditMessages.resultSheets}
        first
        sheets={() => resultSheetsInSteps(report)}
        onWriting={(under) => {
          if (!under) setWrote(true);
          onWriting(under);
        }}
      />
      {hasResults &&
        (['replace', 'remove'] as const).map((aim) => (
          <EarlierSheets key={aim} aim={aim} report={report} onWriting={onWriting} />
        ))}
      <SheetsAction
        words={auditMessages.handOverSheets}
        sheets={() => handoverSheetsInSteps(report)}
        onWriting={onWriting}
      />
      {machine ? (
        <SheetsAction
          key={machine.name}
          words={auditMessages.handOverOne(shownText(machineName(machine), 60))}
          sheets={() => handoverSheetInSteps(machine, report)}
          onWriting={onWriting}
        />
      ) : (
        several && <p class="quiet">{auditMessages.chooseMachine}</p>
      )}
      {report.proposal !== null && (
        <SheetsAction
          words={auditMessages.tidySheets}
          sheets={() => tidySheetsInSteps(workbook, map)}
          onWriting={onWriting}
        />
      )}
    </>
  );
}

/** Adds sheets to the workbook, all or none, and says under which names. */
function SheetsAction({ words, first = false, sheets, onWriting }: SheetsActionProps): JSX.Element {
  const port = usePort();
  const action = useLongAction(auditMessages.cancelled);
  const [part, setPart] = useState(0);
  const [written, setWritten] = useState<readonly WrittenSheet[]>([]);

  const write = async (cancel: Cancel): Promise<boolean> => {
    setPart(0);
    setWritten([]);
    onWriting(true);
    try {
      const made = await inSlices(sheets(), () => undefined, cancel);
      if (made) setWritten(await port.writeSheets(made, setPart, cancel));
      return made !== null;
    } finally {
      onWriting(false);
    }
  };

  return (
    <LongActionPart
      action={action}
      words={{ ...words, cancel: auditMessages.cancel }}
      first={first}
      work={{ label: words.under, part }}
      start={() => {
        action.run(write);
      }}
    >
      {written.length > 0 && (
        <Notice tone="done">
          {auditMessages.written}
          <ul class="inline-list">
            {written.map(({ wanted, given }) => (
              <li key={given}>
                <CellButton place={{ sheet: given, row: 1, column: 1 }}>
                  <Said text={given} most={40} />
                </CellButton>
                {given !== wanted && <Said text={auditMessages.renamed(wanted)} />}
              </li>
            ))}
          </ul>
        </Notice>
      )}
    </LongActionPart>
  );
}
