import { FileRefused } from '../zip/refused.ts';

/** Greatest text file read, in bytes; far more than a full sheet of numbers takes. */
const mostBytes = 2 ** 28;

/** The text of a file in UTF-8, or in UTF-16 with a byte order mark, without that mark. Throws FileRefused for anything else. */
export function plainTextOf(bytes: Uint8Array): string {
  if (bytes.length === 0) throw new FileRefused('The file is empty. Copy or download it again.');
  if (bytes.length > mostBytes) throw new FileRefused('The text file is larger than 256 MB. Split it.');
  let text: string;
  try {
    text = new TextDecoder(encodingOf(bytes), { fatal: true }).decode(bytes);
  } catch {
    throw new FileRefused(
      'The file is not text in UTF-8, so its letters and signs would be guesses. Save it as “CSV UTF-8”.',
    );
  }
  if (text.includes('\0')) {
    throw new FileRefused(
      'The file is not plain text. Choose a .csv file, or save the table as “CSV UTF-8” or .xlsx.',
    );
  }
  return text;
}

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
}
