import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { SinceResult } from '../../../audit/model/since.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { earlierSheets } from '../../../sheets/earlier/earlierSheets.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { ChangeList } from './ChangeList.tsx';
import { earlierText, sinceWords } from './sinceWords.ts';

interface ComparePartProps {
  readonly workbook: Workbook;
  /** Sheet of earlier results that was chosen. */
  readonly earlier: string | null;
  readonly since: SinceResult | null;
  readonly onEarlier: (sheet: string | null) => void;
}

/** Earlier results of the workbook to choose from, and what changed since; nothing where the workbook has none. */
export function ComparePart({ workbook, earlier, since, onEarlier }: ComparePartProps): JSX.Element | null {
  const sheets = useMemo(() => earlierSheets(workbook), [workbook]);
  if (sheets.length === 0) return null;
  const choices = sheets.map((one) => ({ value: one.sheet.name, text: earlierText(one) }));
  return (
    <Fold part title={sinceWords.title} needed={since !== null}>
      <p class="quiet">{sinceWords.hint}</p>
      <ChoiceField
        label={sinceWords.choose}
        value={earlier ?? ''}
        choices={[{ value: '', text: sinceWords.none }, ...choices]}
        onChoice={(sheet) => {
          onEarlier(sheet === '' ? null : sheet);
        }}
      />
      {since && <ChangeList key={since.before.sheet} since={since} />}
    </Fold>
  );
}
