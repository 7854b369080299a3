import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { caution } from '../../audit/model/caution.ts';
import type { WorkbookPort } from '../../hosts/port/port.ts';
import { AuditView } from '../audit/AuditView.tsx';
import { CareView } from '../care/CareView.tsx';
import { Notice } from '../parts/Notice.tsx';
import { QuickView } from '../quick/QuickView.tsx';
import { appWords } from './appWords.ts';
import { onAuditAsked } from './asked.ts';
import { PortContext } from './paneContext.ts';
import { Tabs } from './Tabs.tsx';

export const viewIds = ['quick', 'audit', 'care'] as const;
export type ViewId = (typeof viewIds)[number];

interface AppProps {
  readonly port: WorkbookPort;
  /** View shown first. */
  readonly view: ViewId;
  /** Something to know about where the pane runs. */
  readonly remark: string | null;
}

/** The pane: its name, three views, and the caution that is always in sight. */
export function App({ port, view, remark }: AppProps): JSX.Element {
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
        <h1>{appWords.name}</h1>
      </header>
      <main>
        {remark !== null && <Notice tone="note">{remark}</Notice>}
        <Tabs
          label={appWords.views}
          chosen={chosen}
          onChoose={setChosen}
          tabs={[
            { id: 'quick', name: appWords.quick, content: <QuickView /> },
            { id: 'audit', name: appWords.audit, content: <AuditView asked={asked} /> },
            { id: 'care', name: appWords.care, content: <CareView shown={chosen === 'care'} /> },
          ]}
        />
      </main>
      <footer class="caution">
        <details>
          <summary>{appWords.cautionShort}</summary>
          <p>{caution}</p>
        </details>
      </footer>
    </PortContext.Provider>
  );
}
