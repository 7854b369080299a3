/** The areas of the page that the keyboard goes around, in their order. */
export interface Areas {
  readonly bar: HTMLElement;
  readonly grid: HTMLElement;
  readonly side: HTMLElement;
  /** Gives the keyboard to the grid. */
  readonly focusGrid: () => void;
  /** Whether a cell of the grid is being edited: Escape then belongs to it. */
  readonly editing: () => boolean;
}

type AreaName = 'bar' | 'grid' | 'side';

/**
 * Leads the keyboard out of the grid, which takes the Tab key for itself: F6 goes to the next area and Shift+F6 to the one
 * before, also from within the pane; Escape goes from the grid to the pane, unless a cell is being edited.
 */
export function leadAround(areas: Areas): void {
  const inner = (): Document | null => areas.side.querySelector('iframe')?.contentDocument ?? null;
  const order: readonly AreaName[] = ['bar', 'grid', 'side'];
  const enter: Readonly<Record<AreaName, () => void>> = {
    bar: () => areas.bar.querySelector<HTMLElement>('button')?.focus(),
    grid: areas.focusGrid,
    side: () => {
      areas.side.querySelector('iframe')?.focus();
      inner()?.querySelector<HTMLElement>('[role=tab][aria-selected=true]')?.focus();
    },
  };
  const areaOf = (target: EventTarget | null): AreaName => {
    if (!(target instanceof Node)) return 'side';
    return areas.bar.contains(target) ? 'bar' : areas.grid.contains(target) ? 'grid' : 'side';
  };
  const listen = (page: Document, at: (target: EventTarget | null) => AreaName): void => {
    // Before the grid hears it, which ends the editing of a cell by the same key.
    page.defaultView?.addEventListener(
      'keydown',
      (event) => {
        const here = at(event.target);
        if (event.key === 'F6') {
          event.preventDefault();
          event.stopPropagation();
          const step = event.shiftKey ? order.length - 1 : 1;
          enter[order[(order.indexOf(here) + step) % order.length] ?? 'bar']();
        } else if (event.key === 'Escape' && here === 'grid' && !areas.editing()) {
          enter.side();
        }
      },
      { capture: true },
    );
  };
  listen(areas.bar.ownerDocument, (target) => areaOf(target));
  areas.side.addEventListener(
    'load',
    () => {
      const page = inner();
      if (page) listen(page, () => 'side');
    },
    { capture: true },
  );
}
