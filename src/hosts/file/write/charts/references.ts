import type { ChartCells } from '../../../../sheets/charts/model.ts';
import { columnLetters } from '../../../../cells/address.ts';
import { quotedName } from '../../../formats/reference.ts';
import { escapeCellText, escapeXml } from '../xml/text.ts';
import type { DrawnValues } from './drawnValues.ts';

/** Leads a chart to cells, with what stands in them, so that a program can draw it before it calculates anything. */
export interface References {
  /** Numbers; texts and empty cells are gaps (CT_NumRef). */
  readonly numbers: (cells: ChartCells) => string;
  /** Names of categories: numbers where all are, else texts. */
  readonly names: (cells: ChartCells) => string;
}

/** References from the charts of a sheet; `nameOf` gives the real name of the sheet on which cells stand. */
export function referencesOf(
  nameOf: (cells: ChartCells) => string,
  valuesOf: (cells: ChartCells) => DrawnValues,
): References {
  const leadTo = (cells: ChartCells): string => {
    const name = nameOf(cells);
    const { top, left, bottom, right } = cells.area;
    const first = `$${columnLetters(left)}$${top}`;
    const last = `$${columnLetters(right)}$${bottom}`;
    return `<c:f>${escapeXml(`${quotedName(name)}!${first === last ? first : `${first}:${last}`}`)}</c:f>`;
  };
  const numbers = (cells: ChartCells): string => {
    const { values, numberFormat = 'General' } = valuesOf(cells);
    const format = `<c:formatCode>${escapeCellText(numberFormat)}</c:formatCode>`;
    const points = pointsOf(values, (value) => (typeof value === 'number' ? String(value) : undefined));
    return `<c:numRef>${leadTo(cells)}<c:numCache>${format}${points}</c:numCache></c:numRef>`;
  };
  return {
    numbers,
    names: (cells) => {
      const { values } = valuesOf(cells);
      if (values.every((value) => typeof value !== 'string')) return numbers(cells);
      const points = pointsOf(values, (value) =>
        value === undefined ? undefined : escapeCellText(String(value)),
      );
      return `<c:strRef>${leadTo(cells)}<c:strCache>${points}</c:strCache></c:strRef>`;
    },
  };
}

function pointsOf(
  values: DrawnValues['values'],
  stored: (value: number | string | undefined) => string | undefined,
): string {
  const points = values.map((value, index) => {
    const text = stored(value);
    return text === undefined ? '' : `<c:pt idx="${index}"><c:v>${text}</c:v></c:pt>`;
  });
  return `<c:ptCount val="${values.length}"/>${points.join('')}`;
}
