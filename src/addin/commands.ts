/** The part of Office.js that the ribbon's commands need. */
export interface OfficeCommands {
  readonly actions: { associate(id: string, run: (event: CommandEvent) => void): void };
  readonly addin: { showAsTaskpane(): Promise<void> };
}

export interface CommandEvent {
  completed(): void;
}

/** The page of the pane, as far as a command talks to it. */
export interface PanePage extends EventTarget {
  readonly documentElement: { readonly dataset: Record<string, string | undefined> };
}

/** The command behind the ribbon button *Audit now*, by the name that the manifest gives it. */
export const AUDIT_COMMAND = 'auditNow';

/** Tells the pane on its document that something was asked of it; what, stands in `data-asked` of the page. */
export const ASKED = 'tripdrift-asked';

/** Name of the page's data attribute that stands once Excel has called a worksheet function. */
export const CALLED = 'functionCalled';

/**
 * Registers the ribbon's commands. Excel calls a command as soon as the page is loaded, which may be before the pane
 * listens: the wish stays in `data-asked` until the pane takes it from there.
 */
export function registerCommands(office: OfficeCommands, page: PanePage): void {
  office.actions.associate(AUDIT_COMMAND, (event) => {
    page.documentElement.dataset['asked'] = 'audit';
    page.dispatchEvent(new Event(ASKED));
    const done = () => {
      event.completed();
    };
    void office.addin.showAsTaskpane().then(done, done);
  });
}
