import type { ComponentChildren, JSX } from 'preact';
import { useRef } from 'preact/hooks';

export interface Tab<Id extends string> {
  readonly id: Id;
  readonly name: string;
  readonly content: ComponentChildren;
}

interface TabsProps<Id extends string> {
  readonly label: string;
  readonly tabs: readonly Tab<Id>[];
  readonly chosen: Id;
  readonly onChoose: (id: Id) => void;
}

/** Views as tabs, by the tabs pattern of WAI-ARIA; views that are not shown keep their state. */
export function Tabs<Id extends string>({ label, tabs, chosen, onChoose }: TabsProps<Id>): JSX.Element {
  const list = useRef<HTMLDivElement>(null);
  const at = tabs.findIndex((tab) => tab.id === chosen);
  const steps: Readonly<Record<string, number>> = {
    ArrowLeft: (at + tabs.length - 1) % tabs.length,
    ArrowRight: (at + 1) % tabs.length,
    Home: 0,
    End: tabs.length - 1,
  };
  const onKey = (event: KeyboardEvent): void => {
    const next = steps[event.key];
    const tab = next === undefined ? undefined : tabs[next];
    if (next === undefined || !tab) return;
    event.preventDefault();
    onChoose(tab.id);
    list.current?.querySelectorAll<HTMLElement>('[role=tab]')[next]?.focus();
  };
  return (
    <>
      <div class="tabs" role="tablist" aria-label={label} ref={list} onKeyDown={onKey}>
        {tabs.map(({ id, name }) => (
          <button
            key={id}
            type="button"
            role="tab"
            id={`tab-${id}`}
            aria-selected={id === chosen}
            aria-controls={`view-${id}`}
            tabIndex={id === chosen ? 0 : -1}
            onClick={() => {
              onChoose(id);
            }}
          >
            {name}
          </button>
        ))}
      </div>
      {tabs.map(({ id, content }) => (
        <section
          key={id}
          class="view"
          role="tabpanel"
          id={`view-${id}`}
          aria-labelledby={`tab-${id}`}
          hidden={id !== chosen}
        >
          {content}
        </section>
      ))}
    </>
  );
}
