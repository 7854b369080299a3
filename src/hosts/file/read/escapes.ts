/**
 * Undoes the `_xHHHH_` writing of characters that XML cannot hold: `_x000D_` is a carriage return and `_x005F_`
 * an underscore that would otherwise start such an escape (ECMA-376 part 1, section 22.9.2.19, ST_Xstring).
 */
export function unescapeText(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)));
}
