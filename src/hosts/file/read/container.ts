import type { Archive } from '../zip/archive.ts';
import { FileRefused } from '../zip/refused.ts';

const saveAs = 'Open it in a spreadsheet program and save it as .xlsx.';

/** Throws FileRefused, saying what the file is instead, where its first bytes are not those of a zip. */
export function refuseUnlessZip(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new FileRefused('The file is empty. Copy or download it again.');
  if (startsWith(bytes, [0x50, 0x4b])) return;
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1])) {
    if (containsUtf16(bytes, 'EncryptedPackage')) {
      throw new FileRefused(
        'The workbook is protected by a password. Remove the password in a spreadsheet program and save it again.',
      );
    }
    throw new FileRefused(
      `This is a workbook of the old .xls kind or another old office file, which is not read. ${saveAs}`,
    );
  }
  // Sheets of the 1980s and 1990s, before they were kept in a container: BIFF 2 to 4 begin with a BOF record.
  if (bytes[0] === 0x09 && [0x00, 0x02, 0x04].includes(bytes[1] ?? -1) && bytes[3] === 0x00) {
    throw new FileRefused(`This is a workbook of the old .xls kind, which is not read. ${saveAs}`);
  }
  throw new FileRefused(`This is not an .xlsx workbook, whatever its name says. ${saveAs}`);
}

/** Throws FileRefused where the zip is an OpenDocument file. */
export function refuseOpenDocument(archive: Archive): void {
  if (archive.get('[Content_Types].xml') === undefined && archive.get('content.xml') !== undefined) {
    throw new FileRefused(`OpenDocument files (.ods) are not read. ${saveAs}`);
  }
}

function startsWith(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, index) => bytes[index] === byte);
}

/** Whether the ASCII text stands anywhere in the bytes as UTF-16LE, as OLE containers write the names of their streams. */
function containsUtf16(bytes: Uint8Array, text: string): boolean {
  const wanted = Array.from(text, (character) => [character.charCodeAt(0), 0]).flat();
  const [first = 0] = wanted;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (wanted.every((byte, index) => bytes[at + index] === byte)) return true;
  }
  return false;
}
