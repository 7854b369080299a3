import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { Steps } from '../../../audit/steps.ts';
import type { SheetModel } from '../../../sheets/model.ts';
import type { WrittenSheet } from '../../../hosts/port/port.ts';
import { usePort } from '../../app/paneContext.ts';
import { Notice } from '../../parts/Notice.tsx';
import { plainMessage } from '../../parts/plainMessage.ts';
import { Progress } from '../../parts/Progress.tsx';
import { Said } from '../../parts/Said.tsx';
import { useDeed } from '../../parts/useDeed.ts';
import { auditWords } from '../auditWords.ts';
import { inSlices } from '../run/inSlices.ts';

interface SheetsDeedProps {
  /** What the button says, what is said while it works, and what it does, for those who hesitate. */
  readonly words: { readonly button: string; readonly under: string; readonly hint: string };
  /** The first thing to do of those that stand beside it. */
  readonly first?: boolean;
  /** Makes them, in steps that tell the part done. */
  readonly sheets: () => Steps<number, readonly SheetModel[]>;
  /** Hears when the pane itself begins and ends to write, so that its own sheets are no change of the workbook. */
  readonly onWriting: (under: boolean) => void;
}

/** Adds sheets to the workbook, all or none, and says under which names. */
export function SheetsDeed({ words, first = false, sheets, onWriting }: SheetsDeedProps): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const cancel = useRef({ cancelled: false });
  const [part, setPart] = useState(0);
  const [written, setWritten] = useState<readonly WrittenSheet[]>([]);
  const [cancelled, setCancelled] = useState<string | null>(null);

  const write = async (): Promise<void> => {
    const own = { cancelled: false };
    cancel.current = own;
    setPart(0);
    setWritten([]);
    setCancelled(null);
    onWriting(true);
    try {
      const made = await inSlices(sheets(), () => undefined, own);
      if (made) setWritten(await port.writeSheets(made, setPart, own));
      else setCancelled(auditWords.cancelled);
    } catch (error) {
      if (!own.cancelled) throw error;
      setCancelled(plainMessage(error));
    } finally {
      onWriting(false);
    }
  };

  return (
    <div class="deed">
      {deed.busy ? (
        <Progress
          label={words.under}
          part={part}
          cancelText={auditWords.cancel}
          onCancel={() => {
            cancel.current.cancelled = true;
          }}
        />
      ) : (
        <button
          type="button"
          class={first ? 'button button-first' : 'button'}
          onClick={() => {
            deed.run(write);
          }}
        >
          {words.button}
        </button>
      )}
      <span class="quiet">{words.hint}</span>
      {deed.refusal !== null && (
        <Notice tone="problem">
          <Said text={deed.refusal} />
        </Notice>
      )}
      {cancelled !== null && (
        <Notice tone="note">
          <Said text={cancelled} />
        </Notice>
      )}
      {written.length > 0 && (
        <Notice tone="done">
          {auditWords.written}
          <ul class="inline-list">
            {written.map(({ wanted, given }) => (
              <li key={given}>
                <CellOfSheet given={given} />
                {given !== wanted && <Said text={auditWords.renamed(wanted)} />}
              </li>
            ))}
          </ul>
        </Notice>
      )}
    </div>
  );
}

function CellOfSheet({ given }: { given: string }): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  return (
    <>
      <button
        type="button"
        class="cell-link"
        onClick={() => {
          deed.run(() => port.selectCell({ sheet: given, row: 1, column: 1 }));
        }}
      >
        <Said text={given} most={40} />
      </button>
      {deed.refusal !== null && (
        <span class="field-complaint" role="alert">
          <Said text={deed.refusal} />
        </span>
      )}
    </>
  );
}
