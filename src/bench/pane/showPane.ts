import type { WorkbookPort } from '../../hosts/port/port.ts';
import { mountPane } from '../../pane/app/mountPane.tsx';
import paneStyle from '../../pane/style/pane.css?inline';

const page =
  '<!doctype html><html lang="en"><head><title>Tripdrift</title></head><body><div id="pane"></div></body></html>';

/**
 * Shows the task pane in a frame of its own, as a spreadsheet program does, so that neither the grid nor the pane reaches
 * into the other's styles, keys or focus. `takeSelected`: the quick answer begins with what is selected. The returned function takes it away.
 */
export async function showPane(
  side: HTMLElement,
  port: WorkbookPort,
  takeSelected: boolean,
): Promise<() => void> {
  const frame = document.createElement('iframe');
  frame.title = 'Tripdrift task pane';
  frame.srcdoc = page;
  const loaded = new Promise((resolve) => {
    frame.addEventListener('load', resolve, { once: true });
  });
  side.replaceChildren(frame);
  await loaded;
  const inner = frame.contentDocument;
  const root = inner?.getElementById('pane');
  if (!inner || !root) throw new Error('The frame of the task pane could not be filled.');
  const style = inner.createElement('style');
  style.textContent = paneStyle;
  inner.head.append(style);
  const unmount = mountPane(root, port, { takeSelected });
  return () => {
    unmount();
    frame.remove();
  };
}
