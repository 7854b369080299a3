import { appMessages } from './app/appMessages.ts';
import { mountPane, viewOf } from './app/mountPane.tsx';
import { surroundings, type OfficeLike } from './app/startup.ts';
import { plainMessage } from './parts/shownText.ts';

/** What Office.js puts into the page, where it is loaded. */
declare const Office: OfficeLike | undefined;

const root = document.getElementById('pane');

function say(text: string): void {
  if (!root) return;
  const line = document.createElement('p');
  line.className = 'starting';
  line.setAttribute('role', 'status');
  line.textContent = text;
  root.replaceChildren(line);
}

/** Left in the page by the functions' own script, once Excel has called one of them. */
function functionWasCalled(): boolean {
  return 'functionCalled' in document.documentElement.dataset;
}

async function start(): Promise<void> {
  if (!root) return;
  say(appMessages.starting);
  const office = typeof Office === 'undefined' ? undefined : Office;
  const where = await surroundings(office, () => {
    say(appMessages.noAnswer);
  });
  const view = viewOf(window.location.hash);
  if (where === 'excel') {
    const { excelPort } = await import('../hosts/excel/excelPort.ts');
    mountPane(root, excelPort({ functionWasCalled }), { view });
    return;
  }
  const [{ memoryPort }, { exampleWorkbook }] = await Promise.all([
    import('./example/memoryPort.ts'),
    import('./example/exampleWorkbook.ts'),
  ]);
  mountPane(root, memoryPort(exampleWorkbook), {
    view,
    remark: where === 'browser' ? appMessages.example : appMessages.outsideExcel,
  });
}

start().catch((error: unknown) => {
  say(`${appMessages.failed} ${plainMessage(error)}`);
});
