import type { BarSeries } from '../../sheets/charts/model.ts';

/** Characters that titles and names of series hold (common practice of spreadsheet programs, no source). */
export const longestTitle = 255;

/** Looks that all charts share: sizes in points, colours `RRGGBB`. */
export const chartStyles = {
  titleSize: 12,
  textSize: 9,
  frameColor: 'BFBFBF',
  gridColor: 'D9D9D9',
  axisColor: '7F7F7F',
  /** Space between groups of bars, in percent of a bar's width. */
  gapWidth: 60,
} as const;

/** How much of the paper a pattern leaves white, from 0 to 1; where a program has no patterns, its colour is as much lighter. */
const patternLightness: Readonly<Record<NonNullable<BarSeries['pattern']>, number>> = {
  crossed: 0.5,
  diagonal: 0.65,
  dotted: 0.8,
};

/** The plain colour (`RRGGBB`) that comes nearest to a patterned fill. */
export function plainColor({ color, pattern }: BarSeries): string {
  if (pattern === undefined) return color;
  const lightness = patternLightness[pattern];
  const part = (at: number): string => {
    const value = Number.parseInt(color.slice(at, at + 2), 16);
    return Math.round(value + (255 - value) * lightness)
      .toString(16)
      .padStart(2, '0');
  };
  return `${part(0)}${part(2)}${part(4)}`.toUpperCase();
}
