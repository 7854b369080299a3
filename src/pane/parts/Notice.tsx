import type { ComponentChildren, JSX } from 'preact';

export type Tone = 'problem' | 'outdated' | 'warning' | 'note' | 'done';

const heads: Readonly<Record<Tone, string>> = {
  problem: 'Problem',
  outdated: 'Out of date',
  warning: 'Note well',
  note: 'Note',
  done: 'Done',
};

/** A message where it belongs; problems are announced at once, the rest when the reader pauses. */
export function Notice({ tone, children }: { tone: Tone; children: ComponentChildren }): JSX.Element {
  return (
    <div class={`notice notice-${tone}`} role={tone === 'problem' ? 'alert' : 'status'}>
      <span class="notice-head">{heads[tone]}: </span>
      {children}
    </div>
  );
}
