import type { ComponentChildren, JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { helpMessages } from './helpMessages.ts';

interface HelpProps {
  /** What it explains. */
  readonly about: string;
  readonly children: ComponentChildren;
}

/** A question mark that shows a sentence below it, and hides it again by another press or by Escape. */
export function Help({ about, children }: HelpProps): JSX.Element {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <>
      <button
        type="button"
        class="help-mark"
        aria-label={helpMessages.about(about)}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={(event) => {
          event.stopPropagation();
          setOpen(!open);
        }}
        onKeyDown={(event) => {
          if (event.key !== 'Escape' || !open) return;
          event.stopPropagation();
          setOpen(false);
        }}
      >
        ?
      </button>
      {open && (
        <span class="help-text" id={id} role="note">
          {children}
        </span>
      )}
    </>
  );
}
