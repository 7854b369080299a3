import { homedir } from 'node:os';
import { join } from 'node:path';

/** Where Excel on a Mac looks for manifests. Source: Microsoft, "Sideload Office Add-ins on Mac for testing". */
export function macFolder(home = homedir()): string {
  return join(home, 'Library', 'Containers', 'com.microsoft.Excel', 'Data', 'Documents', 'wef');
}

const WINDOWS = String.raw`Windows
  1. Share a folder that you can write to, and run: npm run sideload -- --share \\server\folder
     It copies the manifest there and makes the share a trusted catalog of your Office.
  2. Close every Office program and start Excel.
  3. Home > Add-ins > More Add-ins (older: Insert > My Add-ins) > Shared Folder > Tripdrift > Add.`;

const MAC = `Mac
  1. Run: npm run sideload
     It copies the manifest to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef
  2. Restart Excel. Insert > the small arrow beside My Add-ins > Tripdrift.`;

const WEB = `Excel on the web
  1. Open a workbook. Home > Add-ins > More Add-ins > Upload My Add-in.
  2. Choose the manifest. It stays in this browser until its data are cleared.`;

/** What to do by hand, for each kind of Excel; `manifest` is the path of the built manifest. */
export function steps(manifest: string, address: string): string {
  return [
    `Manifest: ${manifest}`,
    `Its files have to be served at ${address}/ with a certificate that this computer trusts.`,
    WINDOWS,
    MAC,
    WEB,
    `Functions missing afterwards? Restart Excel once; more in ${address}/help.html#when-functions-do-not-register`,
  ].join('\n\n');
}
