import type { Allowed } from '../../../audit/read/tables/columnSpec.ts';
import type { Area } from '../../../cells/sheet.ts';
import { reference } from '../../../hosts/formats/reference.ts';
import { escapeXml } from '../../../hosts/file/write/xml/text.ts';
import type { Parts } from '../package/parts.ts';
import { addSheetElement } from '../package/sheetElement.ts';

export interface Validation {
  readonly area: Area;
  /** What may stand in the cells; anything where left out. */
  readonly allowed?: Allowed;
  /** What the spreadsheet says to someone who types something else, at most 255 characters. */
  readonly message?: string;
  /** What it shows while one of the cells is selected: at most 32 characters of title and 255 of text. */
  readonly prompt?: { readonly title: string; readonly text: string };
  /** The entry may be kept after the message. */
  readonly warnOnly?: true;
}

/** Gives a worksheet rules for what may be typed into it; a cell may always stay blank. */
export function addValidations(parts: Parts, sheet: string, validations: readonly Validation[]): void {
  const markup = validations.map(({ area, allowed, message, prompt, warnOnly }) => {
    const { attributes, formulas } = allowed ? rule(allowed) : { attributes: 'type="none"', formulas: [] };
    const style = warnOnly ? ' errorStyle="warning"' : '';
    const limits = formulas.map(
      (text, index) => `<formula${index + 1}>${escapeXml(text)}</formula${index + 1}>`,
    );
    const error =
      message === undefined
        ? ''
        : ` showErrorMessage="1" errorTitle="Check the entry" error="${escapeXml(message)}"`;
    const shown = prompt
      ? ` showInputMessage="1" promptTitle="${escapeXml(prompt.title)}" prompt="${escapeXml(prompt.text)}"`
      : '';
    return (
      `<dataValidation ${attributes}${style} allowBlank="1"${error}${shown} sqref="${reference(area)}">` +
      `${limits.join('')}</dataValidation>`
    );
  });
  addSheetElement(
    parts,
    sheet,
    'dataValidations',
    `<dataValidations count="${validations.length}">${markup.join('')}</dataValidations>`,
  );
}

function rule(allowed: Allowed): { attributes: string; formulas: readonly string[] } {
  if ('words' in allowed) return { attributes: 'type="list"', formulas: [`"${allowed.words.join(',')}"`] };
  if ('above' in allowed) {
    return { attributes: 'type="decimal" operator="greaterThan"', formulas: [String(allowed.above)] };
  }
  if ('atLeast' in allowed) {
    return {
      attributes: 'type="decimal" operator="greaterThanOrEqual"',
      formulas: [String(allowed.atLeast)],
    };
  }
  if ('dateFrom' in allowed) {
    return { attributes: 'type="date" operator="greaterThanOrEqual"', formulas: [String(allowed.dateFrom)] };
  }
  return {
    attributes: 'type="decimal" operator="between"',
    formulas: [String(allowed.from), String(allowed.to)],
  };
}
