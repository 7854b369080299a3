import { AuditRefused } from '../../audit/model/refused.ts';
import { HostRefused } from '../../hosts/port/port.ts';

/** Characters that change the direction or the look of text around them, by the name shown in their place. */
const invisible: Readonly<Record<string, string>> = {
  '\u200E': 'LRM',
  '\u200F': 'RLM',
  '\u061C': 'ALM',
  '\u202A': 'LRE',
  '\u202B': 'RLE',
  '\u202C': 'PDF',
  '\u202D': 'LRO',
  '\u202E': 'RLO',
  '\u2066': 'LRI',
  '\u2067': 'RLI',
  '\u2068': 'FSI',
  '\u2069': 'PDI',
};

/**
 * Text from a workbook as it can be shown on one line: marks of direction by their names (Unicode Standard Annex 9),
 * control characters as spaces, and a long text cut with its length said.
 */
export function shownText(text: string, most: number): string {
  const cut = text.length > most ? `${text.slice(0, most)}… (${text.length} characters)` : text;
  return cut
    .replace(/[\u200E\u200F\u061C\u202A-\u202E\u2066-\u2069]/gu, (mark) => `[${invisible[mark] ?? ''}]`)
    .replace(/[\p{Cc}\p{Cs}\s]+/gu, ' ');
}

/** An error in words for the user: refusals say it all themselves, anything else is named as unexpected. */
export function plainMessage(error: unknown): string {
  if (error instanceof AuditRefused || error instanceof HostRefused) return error.message;
  const said = error instanceof Error ? error.message : String(error);
  return `This did not work, and it is a fault of Tripdrift: ${said}. Your workbook is as it was; close the pane, open it again and retry.`;
}
