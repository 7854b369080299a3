import type { JSX } from 'preact';
import { useId } from 'preact/hooks';

interface ProgressProps {
  readonly label: string;
  /** From 0 to 1. */
  readonly part: number;
  readonly cancelText: string;
  readonly onCancel: () => void;
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
