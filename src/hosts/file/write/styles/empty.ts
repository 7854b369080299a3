import type { Dialect } from '../package/namespaces.ts';

const plain = '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>';

/**
 * A style sheet with nothing but the entries every program takes for granted, and as many plain cell styles as cells of the
 * workbook name already.
 */
export function emptyStyleSheet({ main }: Dialect, cellStyles = 1): string {
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    `<styleSheet xmlns="${main}">`,
    '<fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts>',
    '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>',
    '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>',
    '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
    `<cellXfs count="${cellStyles}">${plain.repeat(cellStyles)}</cellXfs>`,
    '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>',
    '</styleSheet>',
  ].join('');
}
