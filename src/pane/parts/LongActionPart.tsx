import type { ComponentChildren, JSX } from 'preact';
import { Notice } from './Notice.tsx';
import { Said } from './Said.tsx';
import type { LongAction } from './useLongAction.ts';
import { useId } from 'preact/hooks';

interface ProgressProps {
  readonly label: string;
  /** From 0 to 1. */
  readonly part: number;
  readonly cancelText: string;
  readonly onCancel: () => void;
}

interface LongDeedPartProps {
  readonly action: LongAction;
  /** What the button says, and what it does, for those who hesitate. */
  readonly words: { readonly button: string; readonly hint: string; readonly cancel: string };
  /** The first thing to do of those that stand beside it. */
  readonly first?: boolean;
  /** What is under way, and how much of it is done, from 0 to 1. */
  readonly work: { readonly label: string; readonly part: number };
  readonly start: () => void;
  /** What came of it. */
  readonly children: ComponentChildren;
}

/** The button of a long deed, or how far it is while it is under way, and what came of it. */
export function LongActionPart(props: LongDeedPartProps): JSX.Element {
  const { action, words, first = false, work, start, children } = props;
  return (
    <div class="deed">
      {action.busy ? (
        <Progress label={work.label} part={work.part} cancelText={words.cancel} onCancel={action.cancel} />
      ) : (
        <button type="button" class={first ? 'button button-first' : 'button'} onClick={start}>
          {words.button}
        </button>
      )}
      <span class="quiet">{words.hint}</span>
      {action.refusal !== null && (
        <Notice tone="problem">
          <Said text={action.refusal} />
        </Notice>
      )}
      {action.cancelled !== null && (
        <Notice tone="note">
          <Said text={action.cancelled} />
        </Notice>
      )}
      {children}
    </div>
  );
}

/** How far long work is, and the button that stops it. */
export function Progress({ label, part, cancelText, onCancel }: ProgressProps): JSX.Element {
  const id = useId();
  const percent = Math.round(100 * Math.min(1, Math.max(0, part)));
  return (
    <div class="progress">
      <label for={id}>{label}</label>
      <progress id={id} max={100} value={percent} />
      <button type="button" class="button" onClick={onCancel}>
        {cancelText}
      </button>
    </div>
  );
}
