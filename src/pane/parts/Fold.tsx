import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface FoldProps {
  readonly title: ComponentChildren;
  /** Opens it where something inside needs the user; it never closes by itself. */
  readonly needed?: boolean;
  readonly part?: boolean;
  readonly children: ComponentChildren;
}

/** Something folded away under its title. */
export function Fold({ title, needed = false, part = false, children }: FoldProps): JSX.Element {
  const fold = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (needed && fold.current) fold.current.open = true;
  }, [needed]);
  return (
    <details ref={fold} class={part ? 'part' : undefined}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}
