import { render } from 'preact';
import * as z from 'zod';
import type { WorkbookPort } from '../../hosts/port/port.ts';
import { App } from './App.tsx';
import { viewIds, type ViewId } from './views.ts';
import { followTheme } from './theme.ts';

export interface MountOptions {
  readonly view?: ViewId;
  readonly remark?: string;
  /** The quick answer begins with what is selected. */
  readonly takeSelected?: boolean;
}

/**
 * Shows the pane in an element, over the program behind `port`. Checks of JSON run without generated code from here on,
 * as a strict content policy demands. The returned function takes the pane away, and with it all that it listens to.
 */
export function mountPane(root: HTMLElement, port: WorkbookPort, options: MountOptions = {}): () => void {
  z.config({ jitless: true });
  followTheme(port, root.ownerDocument.documentElement);
  root.replaceChildren();
  const { view = 'quick', remark = null, takeSelected = false } = options;
  render(<App port={port} view={view} remark={remark} takeSelected={takeSelected} />, root);
  return () => {
    render(null, root);
  };
}

/** The view that an address asks for by its part behind `#`; `quick` where it asks for none. */
export function viewOf(hash: string): ViewId {
  return viewIds.find((id) => `#${id}` === hash) ?? 'quick';
}
