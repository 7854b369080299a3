/** Identifies our catalog in the registry, so that trusting it twice leaves one entry: a random UUID (RFC 9562). */
const CATALOG_ID = '{bbdec7a7-db6a-4de4-ac2a-94b1a2a66f4b}';

const CATALOGS = 'HKEY_CURRENT_USER\\Software\\Microsoft\\Office\\16.0\\WEF\\TrustedCatalogs\\';

/** A share for the help page. */
export const EXAMPLE_SHARE = String.raw`\\files\addins`;

/**
 * A registry file that makes a network share a trusted catalog of the user's Office.
 * Source: Microsoft, "Sideload Office Add-ins for testing from a network share". `share` begins with two backslashes.
 */
export function registryFile(share: string): string {
  return [
    'Windows Registry Editor Version 5.00',
    '',
    `[${CATALOGS}${CATALOG_ID}]`,
    `"Id"="${CATALOG_ID}"`,
    `"Url"="${share.replaceAll('\\', '\\\\')}"`,
    '"Flags"=dword:00000001',
    '',
  ].join('\n');
}

/** As bytes that the registry editor takes in any language: UTF-16 with a byte order mark, lines ended by CR LF. */
export function registryBytes(share: string): Uint8Array {
  return Buffer.from(`\uFEFF${registryFile(share).replaceAll('\n', '\r\n')}`, 'utf16le');
}
