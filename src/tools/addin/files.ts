/** Names of the built files that addresses lead to, relative to the folder that is served. */
export const PANE_FILE = 'taskpane.html';
export const FUNCTIONS_FILE = 'functions.js';
export const HELP_FILE = 'help.html';
export const NOTICES_FILE = 'THIRD-PARTY-NOTICES.txt';
export const OFFICE_FOLDER = 'office';

/**
 * Sizes in pixels of our icon: all that Office knows for a button. 16, 32 and 80 are demanded, the others spare it
 * from scaling. Source: Microsoft, manifest reference, "Icon".
 */
export const ICON_SIZES = [16, 20, 24, 32, 40, 48, 64, 80] as const;

export function iconFile(size: number): string {
  return `icons/icon-${size}.png`;
}
