import { verdictMarks } from '../../sheets/style/verdictMarks.ts';
import { standingName, standings } from '../audit/channels/standing.ts';
import type { HostTheme, WorkbookPort } from '../../hosts/port/port.ts';

/**
 * Follows the host's theme: light or dark. The colours are the pane's own, so that their contrast is known whatever the
 * host's are; where the host has no theme the page follows the system, and forced colours come before both.
 */
export function followTheme(port: WorkbookPort, root: HTMLElement): void {
  for (const standing of standings) {
    const { light, dark } = verdictMarks[standing];
    root.style.setProperty(`--${standingName(standing)}-light`, `#${light}`);
    root.style.setProperty(`--${standingName(standing)}-dark`, `#${dark}`);
  }
  const apply = (theme: HostTheme | null): void => {
    if (theme) root.dataset['theme'] = theme.dark ? 'dark' : 'light';
    else delete root.dataset['theme'];
  };
  apply(port.theme());
  port.onTheme(apply);
}
