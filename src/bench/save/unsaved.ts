import type { Bench } from '../bench.ts';
import { onBookChanged } from '../../hosts/grid/changes.ts';

export interface Unsaved {
  any(): boolean;
  saved(): void;
  /** Begins anew with the workbook that is open now. */
  follow(bench: Bench): void;
}

/** Knows whether the workbook has changes that no copy holds, and asks before the page is left with some. */
export function watchUnsaved(page: Window): Unsaved {
  let any = false;
  page.addEventListener('beforeunload', (event) => {
    if (any) event.preventDefault();
  });
  return {
    any: () => any,
    saved: () => {
      any = false;
    },
    follow: ({ grid, port }) => {
      any = false;
      const changed = (): void => {
        any = true;
      };
      onBookChanged(grid, changed);
      port.onSetting(changed);
    },
  };
}
