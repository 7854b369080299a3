/// <reference types="office-js" />

/** The parts of Office.js that the host needs, as the page's globals or handed in. */
export interface OfficeLibrary {
  readonly Excel: typeof Excel;
  readonly Office: Pick<typeof Office, 'context'>;
}

/** The library of this page. Throws a ReferenceError where the page has not loaded it. */
export function pageLibrary(): OfficeLibrary {
  return { Excel, Office };
}
