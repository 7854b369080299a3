import { refusalOf } from './refusal.ts';
import { patience, usualPatience } from './silence.ts';

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
   * its full stop, that says what did not happen, should Excel refuse or not answer any more; the refusal comes as
   * HostRefused. `begun` says what may be half done then.
   */
  run<T>(
    failed: string,
    batch: (context: Excel.RequestContext) => Promise<T>,
    begun?: () => string,
  ): Promise<T>;
  /** Whether this Excel has that version of the interface, e.g. `1.13`; what the add-in requires need not be asked. */
  hasApi(version: string): boolean;
  /** Ids of sheets that this session has added; changes in them are its own. */
  readonly addedSheets: Set<string>;
}

/** A session that waits for an answer of Excel for so many ms. */
export function session(library: OfficeLibrary, limit = usualPatience): Session {
  return {
    library,
    async run(failed, batch, begun = () => '') {
      const waiting = patience(limit, failed, begun);
      try {
        return await Promise.race([
          library.Excel.run({ delayForCellEdit: true }, (context) => {
            waiting.follow(context);
            return batch(context);
          }),
          waiting.silence,
        ]);
      } catch (error) {
        throw refusalOf(error, failed);
      } finally {
        waiting.end();
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
