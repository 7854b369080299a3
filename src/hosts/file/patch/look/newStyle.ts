import type { EditedLook } from '../types.ts';
import type { Restyled } from './restyle.ts';

/** The style that a cell gets, by its number, from the one it had. */
export type NewStyle = (style: string | undefined, look: EditedLook) => string | undefined;

/** The styles of a workbook's edited looks; a file without styles keeps its cells plain. */
export function newStyles(styles: Restyled | undefined): NewStyle {
  return (style, look) => {
    if (styles === undefined) return style;
    const base = look.style !== undefined && styles.has(look.style) ? look.style : Number(style ?? 0);
    const number = look.change === undefined ? base : styles.changed(base, look.change);
    return number === Number(style ?? 0) ? style : String(number);
  };
}
