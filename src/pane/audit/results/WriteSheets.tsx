import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { Report } from '../../../audit/model/report.ts';
import { handoverSheetInSteps, handoverSheetsInSteps } from '../../../sheets/handover/handoverSheets.ts';
import { machineName, machinesOf, type Machine } from '../../../sheets/machines.ts';
import { resultSheetsInSteps } from '../../../sheets/resultSheets.ts';
import { tidySheetsInSteps } from '../../../sheets/tidy/tidySheets.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { shownText } from '../../parts/shownText.ts';
import { auditWords } from '../auditWords.ts';
import { SheetsDeed } from './SheetsDeed.tsx';

interface WriteSheetsProps {
  readonly report: Report;
  /** What was audited, with what was said about it. */
  readonly workbook: Workbook;
  readonly map: ColumnMap;
  /** Hears when the pane itself begins and ends to write. */
  readonly onWriting: (under: boolean) => void;
}

const everyMachine = 'every';

function valueOf({ name }: Machine): string {
  return `machine ${name}`;
}

/** What can be written of an audit into the workbook: result sheets, sheets to hand over, and the list itself in the standard shape where it has another. */
export function WriteSheets({ report, workbook, map, onWriting }: WriteSheetsProps): JSX.Element {
  const machines = useMemo(() => machinesOf(report), [report]);
  const [chosen, setChosen] = useState(everyMachine);
  const machine = machines.find((one) => valueOf(one) === chosen);
  return (
    <>
      <SheetsDeed
        words={auditWords.resultSheets}
        first
        sheets={() => resultSheetsInSteps(report)}
        onWriting={onWriting}
      />
      {machines.length > 1 && (
        <ChoiceField
          label={auditWords.handOverOf}
          value={machine ? chosen : everyMachine}
          choices={[
            { value: everyMachine, text: auditWords.everyMachine },
            ...machines.map((one) => ({ value: valueOf(one), text: shownText(machineName(one), 60) })),
          ]}
          onChoice={setChosen}
        />
      )}
      <SheetsDeed
        words={auditWords.handOverSheets}
        sheets={() => (machine ? handoverSheetInSteps(machine, report) : handoverSheetsInSteps(report))}
        onWriting={onWriting}
      />
      {report.proposal !== null && (
        <SheetsDeed
          words={auditWords.tidySheets}
          sheets={() => tidySheetsInSteps(workbook, map)}
          onWriting={onWriting}
        />
      )}
    </>
  );
}
