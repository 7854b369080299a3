import { refusalOf } from './refusal.ts';

/// <reference types="office-js" />

/** The parts of Office.js that the host needs, as the page's globals or handed in. */
export interface OfficeLibrary {
  readonly Excel: typeof Excel;
  readonly Office: Pick<typeof Office, 'context'>;
}

/** Talks with Excel on behalf of every operation of the host. */
export interface Session {
  readonly library: OfficeLibrary;
  /**
   * Runs a batch of calls, waiting until the user has left a cell that is being edited. `failed` is the sentence, without
   * its full stop, that says what did not happen, should Excel refuse; the refusal comes as HostRefused.
   */
  run<T>(failed: string, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T>;
  /** Whether this Excel has that version of the interface, e.g. `1.13`; what the add-in requires need not be asked. */
  hasApi(version: string): boolean;
  /** Ids of sheets that this session has added; changes in them are its own. */
  readonly addedSheets: Set<string>;
}

export function session(library: OfficeLibrary): Session {
  return {
    library,
    async run(failed, batch) {
      try {
        return await library.Excel.run({ delayForCellEdit: true }, batch);
      } catch (error) {
        throw refusalOf(error, failed);
      }
    },
    hasApi: (version) => library.Office.context.requirements.isSetSupported('ExcelApi', version),
    addedSheets: new Set(),
  };
}

/** The library of this page. Throws a ReferenceError where the page has not loaded it. */
export function pageLibrary(): OfficeLibrary {
  return { Excel, Office };
}
