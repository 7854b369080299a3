import type { BarSeries, ChartLine, ChartMarker } from '../../../../sheets/charts/model.ts';
import { opaque } from '../styles/font.ts';

/** English Metric Units in a point (ECMA-376 part 1, 20.1.2.1: 12,700 a point). */
const unitsAPoint = 12_700;

const dashes = { dash: 'dash', dot: 'sysDot', dashDot: 'dashDot' } as const;
const symbols = {
  circle: 'circle',
  square: 'square',
  diamond: 'diamond',
  triangle: 'triangle',
  cross: 'x',
  plus: 'plus',
} as const;
const patterns = { diagonal: 'wdUpDiag', crossed: 'diagCross', dotted: 'pct20' } as const;

/** A solid colour, `RRGGBB`. Throws a RangeError for anything else. */
function color(rgb: string): string {
  return `<a:srgbClr val="${opaque(rgb).slice(2)}"/>`;
}

function solid(rgb: string): string {
  return `<a:solidFill>${color(rgb)}</a:solidFill>`;
}

function outline({ color: rgb, width, dash }: ChartLine): string {
  const dashed = dash === undefined ? '' : `<a:prstDash val="${dashes[dash]}"/>`;
  return `<a:ln w="${Math.round(width * unitsAPoint)}">${solid(rgb)}${dashed}<a:round/></a:ln>`;
}

/** The properties of a line, or of a series without one. */
export function lineShape(line: ChartLine | undefined): string {
  return `<c:spPr>${line ? outline(line) : '<a:ln><a:noFill/></a:ln>'}</c:spPr>`;
}

/** The properties of a box: `fill` and frame in colours `RRGGBB`. */
export function boxShape(fill: string, frame: string): string {
  return `<c:spPr>${solid(fill)}${outline({ color: frame, width: 0.75 })}</c:spPr>`;
}

/** A series' markers, or that it has none. */
export function markerShape(marker: ChartMarker | undefined): string {
  if (!marker) return '<c:marker><c:symbol val="none"/></c:marker>';
  const { shape, size, color: rgb } = marker;
  return `<c:marker><c:symbol val="${symbols[shape]}"/><c:size val="${size}"/>${boxShape(rgb, rgb)}</c:marker>`;
}

/** A bar's fill, with an outline in its own colour. */
export function barShape({ color: rgb, pattern }: BarSeries): string {
  if (pattern === undefined) return boxShape(rgb, rgb);
  const fill = `<a:pattFill prst="${patterns[pattern]}"><a:fgClr>${color(rgb)}</a:fgClr><a:bgClr>${color('FFFFFF')}</a:bgClr></a:pattFill>`;
  return `<c:spPr>${fill}${outline({ color: rgb, width: 0.75 })}</c:spPr>`;
}
