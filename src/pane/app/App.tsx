import type { JSX, ComponentChildren } from 'preact';
import { useEffect, useState, useRef } from 'preact/hooks';
import { caution } from '../../audit/model/caution.ts';
import type { WorkbookPort } from '../../hosts/port/port.ts';
import { AuditView } from '../audit/AuditView.tsx';
import { CareView } from '../care/CareView.tsx';
import { Notice } from '../parts/Notice.tsx';
import { QuickView } from '../quick/QuickView.tsx';
import { appMessages } from './appMessages.ts';
import { PortContext } from './paneContext.ts';
import type { ViewId } from './views.ts';
import { Tour } from '../tour/Tour.tsx';

interface Tab<Id extends string> {
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

/** Event on the document by which a button outside the pane asks for something; what, stands in `data-asked` of the page. */
const askedEvent = 'tripdrift-asked';

interface AppProps {
  readonly port: WorkbookPort;
  /** View shown first. */
  readonly view: ViewId;
  /** Something to know about where the pane runs. */
  readonly remark: string | null;
  /** The quick answer begins with what is selected. */
  readonly takeSelected: boolean;
}

/** The pane: its name, three views, and the caution that is always in sight. */
export function App({ port, view, remark, takeSelected }: AppProps): JSX.Element {
  const [chosen, setChosen] = useState<ViewId>(view);
  const [asked, setAsked] = useState(0);
  useEffect(
    () =>
      onAuditAsked(document, () => {
        setChosen('audit');
        setAsked((times) => times + 1);
      }),
    [],
  );
  return (
    <PortContext.Provider value={port}>
      <header class="masthead">
        <h1>{appMessages.name}</h1>
      </header>
      <main>
        {remark !== null && <Notice tone="note">{remark}</Notice>}
        <Tabs
          label={appMessages.views}
          chosen={chosen}
          onChoose={setChosen}
          tabs={[
            { id: 'quick', name: appMessages.quick, content: <QuickView takeSelected={takeSelected} /> },
            { id: 'audit', name: appMessages.audit, content: <AuditView asked={asked} /> },
            { id: 'care', name: appMessages.care, content: <CareView shown={chosen === 'care'} /> },
          ]}
        />
      </main>
      <footer class="caution">
        <Tour onView={setChosen} />
        <details>
          <summary>{appMessages.cautionShort}</summary>
          <p>{caution}</p>
        </details>
      </footer>
    </PortContext.Provider>
  );
}

/**
 * Calls back whenever a button outside the pane, such as the host's own *Audit now*, asks for an audit; at once where it
 * was asked before the pane was there. The returned function stops it.
 */
function onAuditAsked(page: Document, listener: () => void): () => void {
  const take = (): void => {
    if (page.documentElement.dataset['asked'] !== 'audit') return;
    delete page.documentElement.dataset['asked'];
    listener();
  };
  page.addEventListener(askedEvent, take);
  take();
  return () => {
    page.removeEventListener(askedEvent, take);
  };
}

/** Views as tabs, by the tabs pattern of WAI-ARIA; views that are not shown keep their state. */
function Tabs<Id extends string>({ label, tabs, chosen, onChoose }: TabsProps<Id>): JSX.Element {
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
