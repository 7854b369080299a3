import type { Attributes } from '../read/branches.ts';

/** What colours of a workbook refer to; `RRGGBB` each. */
export interface Palette {
  /** Colours of the theme in the order cells count them: light 1, dark 1, light 2, dark 2, accents 1 to 6, links. */
  readonly theme: readonly string[];
  readonly indexed: readonly string[];
}

/** The colours files name by number (ECMA-376 part 1, section 18.8.27), 0 to 63. */
export const standardColours: readonly string[] = [
  ...primaries(),
  ...primaries(),
  ...(
    '800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF ' +
    '000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 ' +
    '3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333'
  ).split(' '),
];

/**
 * The colour that an element such as `fgColor` names by `rgb`, `theme` or `indexed`, with its `tint` worked out;
 * undefined for the automatic one and for one that is not there.
 */
export function colourOf(attributes: Attributes, { theme, indexed }: Palette): string | undefined {
  const { rgb, theme: themed, indexed: number, tint } = attributes;
  const base =
    rgb !== undefined
      ? /^(?:[0-9a-f]{2})?([0-9a-f]{6})$/i.exec(rgb)?.[1]
      : themed !== undefined
        ? theme[Number(themed)]
        : number === undefined
          ? undefined
          : indexed[Number(number)];
  return base && tinted(base.toUpperCase(), Number(tint ?? 0));
}

/** Lightness moved towards black (tint −1) or white (tint 1) by that share (ECMA-376 part 1, section 18.8.19). */
function tinted(rgb: string, tint: number): string {
  if (!(Math.abs(tint) <= 1) || tint === 0) return rgb;
  const [red, green, blue] = [0, 2, 4].map((at) => parseInt(rgb.slice(at, at + 2), 16) / 255) as [
    number,
    number,
    number,
  ];
  const most = Math.max(red, green, blue);
  const least = Math.min(red, green, blue);
  const lightness = (most + least) / 2;
  const chroma = most - least;
  const saturation = chroma === 0 ? 0 : chroma / (1 - Math.abs(2 * lightness - 1));
  const lighter = tint < 0 ? lightness * (1 + tint) : lightness * (1 - tint) + tint;
  const newChroma = (1 - Math.abs(2 * lighter - 1)) * saturation;
  return [red, green, blue]
    .map((part) => {
      const share = chroma === 0 ? 0.5 : (part - least) / chroma;
      const value = lighter - newChroma / 2 + share * newChroma;
      return Math.round(Math.min(1, Math.max(0, value)) * 255)
        .toString(16)
        .padStart(2, '0')
        .toUpperCase();
    })
    .join('');
}

function primaries(): readonly string[] {
  return '000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF'.split(' ');
}
