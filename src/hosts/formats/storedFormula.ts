import { formulaOf, formulaTokens, nextToken, type FormulaToken } from './formulaTokens.ts';
import { parameterTokens } from './formulaParameters.ts';
import { typedFunctionName, storedFunctionName } from './ourFormula.ts';

const anchorArray: FormulaToken = { kind: 'word', text: 'ANCHORARRAY' };

/** Functions that spreadsheet programs got after the format was fixed, with their names in files (list of [MS-XLSX] 2.2.2, checked against XlsxWriter's). */
const later = `
ANCHORARRAY SINGLE ACOT ACOTH AGGREGATE ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND BITLSHIFT
BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT
CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P COVARIANCE.S CSC
CSCH DAYS DECIMAL DROP ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FIELDVALUE
FILTERXML FLOOR.MATH FLOOR.PRECISE FORECAST.ETS FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT
FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS IMCOSH IMCOT
IMCSC IMCSCH IMSEC IMSECH IMSINH IMTAN ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP
MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION
PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI POISSON.DIST QUARTILE.EXC QUARTILE.INC
QUERYSTRING RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET SHEETS SKEW.P SORTBY STDEV.P STDEV.S
SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR
UNICODE UNIQUE VALUETOTEXT VAR.P VAR.S VSTACK WEBSERVICE WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST`;

const prefixes = new Map<string, string>([
  ...later
    .trim()
    .split(/\s+/)
    .map((name): [string, string] => [name, '_xlfn.']),
  ['FILTER', '_xlfn._xlws.'],
  ['SORT', '_xlfn._xlws.'],
]);

const prefix = /^(?:_xlfn\.|_xlws\.|_xlpm\.|_xlop\.)+/i;

/**
 * A formula of a file as a person types it: `_xldudf_TRIPDRIFT_SHIFT(…)`, with or without a workbook number before it
 * (`[2]!`), becomes `TRIPDRIFT.SHIFT(…)`; marks of newer functions (`_xlfn.`, `_xlws.`, `_xlpm.`) go. Any case. Texts,
 * sheet names and column names stay. Neither form has the leading `=`.
 */
export function shownFormula(stored: string): string {
  if (!/_xl/i.test(stored)) return stored;
  const shown: FormulaToken[] = [];
  for (const token of formulaTokens(stored)) {
    const ours = token.kind === 'word' ? typedFunctionName(token.text) : undefined;
    if (ours !== undefined) {
      dropWorkbookNumber(shown);
      shown.push({ kind: 'word', text: ours });
    } else if (token.kind === 'word') shown.push({ kind: 'word', text: token.text.replace(prefix, '') });
    else shown.push(token);
  }
  return formulaOf(withSpillSigns(shown));
}

/**
 * A formula as a file stores it, from one as a person types it; the other direction of `shownFormula`, but for case,
 * workbook numbers, and `[@Column]`, which files write `[[#This Row],[Column]]`. A formula in its stored form stays as it is.
 */
export function storedFormula(shown: string): string {
  const tokens = withoutSpillSigns(formulaTokens(shown));
  const parameters = parameterTokens(tokens);
  return tokens
    .map((token, index) => {
      if (token.kind === 'bracket') return storedColumns(token.text);
      if (token.kind !== 'word') return token.text;
      if (parameters.has(index)) return `_xlpm.${token.text}`;
      if (tokens[nextToken(tokens, index)]?.text !== '(') return token.text;
      const ours = storedFunctionName(token.text);
      if (ours !== undefined) return ours;
      return storedPrefix(token.text) + token.text;
    })
    .join('');
}

/** `[2]!` before a function's name leads to the add-in's file, where Excel found it once. */
function dropWorkbookNumber(tokens: FormulaToken[]): void {
  if (tokens.at(-1)?.text !== '!' || tokens.at(-2)?.kind !== 'bracket') return;
  tokens.length -= 2;
}

function storedColumns(bracket: string): string {
  const row = /^\[@(\[.*\]|[^[\]]+)\]$/s.exec(bracket)?.[1];
  if (row === undefined) return bracket;
  return `[[#This Row],${row.startsWith('[') ? row : `[${row}]`}]`;
}

/** What stands before a function's name in a file: `_xlfn.` for `XLOOKUP`, nothing for `SUM`. Any case. */
export function storedPrefix(functionName: string): string {
  return prefixes.get(functionName.toUpperCase()) ?? '';
}

/**
 * `A1#`, all that the formula in A1 fills, as the call `ANCHORARRAY(A1)` that files have in its place, and without `@`
 * before a reference or call: a formula that is not an array formula means it anyway (common practice, no source).
 */
function withoutSpillSigns(tokens: readonly FormulaToken[]): FormulaToken[] {
  const result: FormulaToken[] = [];
  for (const token of tokens) {
    if (token.text === '@' && result.at(-1)?.kind !== 'word') continue;
    if (token.text !== '#' || result.at(-1)?.kind !== 'word') {
      result.push(token);
      continue;
    }
    const start = referenceStart(result);
    const reference = result.splice(start);
    result.push(anchorArray, other('('), ...reference, other(')'));
  }
  return result;
}

/** `ANCHORARRAY(A1)` as a person types it, `A1#`; tokens come without the marks of files. */
function withSpillSigns(tokens: readonly FormulaToken[]): FormulaToken[] {
  const result: FormulaToken[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token === undefined) break;
    const end = token.text.toUpperCase() === 'ANCHORARRAY' ? closing(tokens, at + 1) : undefined;
    if (end === undefined) result.push(token);
    else {
      result.push(...tokens.slice(at + 2, end), other('#'));
      at = end;
    }
  }
  return result;
}

/** Where a reference that ends with the last token begins: with its sheet, and that sheet's workbook. */
function referenceStart(tokens: readonly FormulaToken[]): number {
  const cell = tokens.length - 1;
  if (tokens[cell - 1]?.text !== '!') return cell;
  const sheet = cell - 2;
  return tokens[sheet - 1]?.kind === 'bracket' ? sheet - 1 : sheet;
}

/** The closing bracket of a call whose only argument is a reference; undefined for anything else. */
function closing(tokens: readonly FormulaToken[], opening: number): number | undefined {
  if (tokens[opening]?.text !== '(') return undefined;
  let end = opening + 1;
  while (tokens[end] && (tokens[end]?.kind !== 'other' || tokens[end]?.text === '!')) end++;
  return tokens[end]?.text === ')' && tokens[end - 1]?.kind === 'word' ? end : undefined;
}

function other(text: string): FormulaToken {
  return { kind: 'other', text };
}
