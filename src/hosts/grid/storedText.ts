import { CellValueType } from '@univerjs/core';

const errorCodes =
  /^#(N\/A|VALUE!|NUM!|DIV\/0!|NULL!|NAME\?|REF!|SPILL!|CALC!|GETTING_DATA|CYCLE!|CONNECT!|ERROR!)$/;

/** Whether a text is how the grid stores an error. */
export function isErrorCode(text: string): boolean {
  return errorCodes.test(text);
}

/** Begins like a formula or a quote, or with what would be cut off, or consists of signs that are a number, date or percentage. */
const mistakable = /^[=+\-@'\s]|\s$|^[\d.,:/$€£%()\s eE+-]+$|^(true|false)$|^\p{L}{3,9}\.? \d|^#/iu;

/**
 * The mark for a text: forced where the grid would take it for a formula, a number, a date or an error, if it were typed
 * or calculated anew.
 */
export function markOfText(text: string): CellValueType {
  return mistakable.test(text) ? CellValueType.FORCE_STRING : CellValueType.STRING;
}
