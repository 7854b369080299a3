import type { ValueAxis } from '../../../../sheets/charts/model.ts';
import { chartLooks } from '../../../formats/chartLooks.ts';
import { escapeXml } from '../xml/text.ts';
import { lineShape } from './shapes.ts';
import { title } from './text.ts';

/** Which side of the plot an axis stands on: below or at the left. */
export type Side = 'b' | 'l';

/** The numbers by which a chart's two axes know each other; any two will do, as each chart is a part of its own. */
export const axisIds = { across: 1, up: 2 } as const;

export interface AxisPlace {
  readonly side: Side;
  readonly id: number;
  readonly crossed: number;
}

const gridLines = `<c:majorGridlines>${lineShape({ color: chartLooks.gridColor, width: 0.5 })}</c:majorGridlines>`;
const axisLine = lineShape({ color: chartLooks.axisColor, width: 0.75 });

function labels(position: 'low' | 'nextTo'): string {
  return `<c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="${position}"/>`;
}

/**
 * An axis of numbers (CT_ValAx). Its numbers stand at the edge of the plot, wherever zero is. `atEnd`: it stands where the
 * other axis ends, which is below for categories that run down; `between`: the other axis has categories, not points.
 */
export function valueAxis(
  { title: text, numberFormat, min, max }: ValueAxis,
  { side, id, crossed }: AxisPlace,
  { atEnd = false, between = false } = {},
): string {
  const format =
    numberFormat === undefined
      ? '<c:numFmt formatCode="General" sourceLinked="1"/>'
      : `<c:numFmt formatCode="${escapeXml(numberFormat)}" sourceLinked="0"/>`;
  return [
    `<c:valAx><c:axId val="${id}"/><c:scaling><c:orientation val="minMax"/>`,
    max === undefined ? '' : `<c:max val="${max}"/>`,
    min === undefined ? '' : `<c:min val="${min}"/>`,
    `</c:scaling><c:delete val="0"/><c:axPos val="${side}"/>${gridLines}`,
    title(text, chartLooks.textSize, false, side === 'l'),
    `${format}${labels(atEnd ? 'nextTo' : 'low')}${axisLine}<c:crossAx val="${crossed}"/>`,
    `<c:crosses val="${atEnd ? 'max' : 'autoZero'}"/>`,
    `<c:crossBetween val="${between ? 'between' : 'midCat'}"/></c:valAx>`,
  ].join('');
}

/** An axis of categories (CT_CatAx); `downwards`: the first one is at the top. */
export function categoryAxis(
  text: string | undefined,
  { side, id, crossed }: AxisPlace,
  downwards: boolean,
): string {
  return [
    `<c:catAx><c:axId val="${id}"/><c:scaling><c:orientation val="${downwards ? 'maxMin' : 'minMax'}"/></c:scaling>`,
    `<c:delete val="0"/><c:axPos val="${side}"/>`,
    title(text, chartLooks.textSize, false, side === 'l'),
    `<c:numFmt formatCode="General" sourceLinked="1"/>${labels('low')}${axisLine}<c:crossAx val="${crossed}"/>`,
    '<c:crosses val="autoZero"/><c:auto val="0"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="1"/></c:catAx>',
  ].join('');
}
