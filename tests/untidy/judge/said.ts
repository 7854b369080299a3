import type { ChannelPlace, FieldTruth } from '../truth.ts';

/** Something that the report says of a place, wherever in the report it stands. */
export interface Saying {
  /** Key of the report under which it stands: `problems`, `notRead`, … */
  readonly under: string;
  readonly sheet: string;
  readonly row: number | null;
  readonly column: string | null;
  readonly what: string | null;
  readonly texts: string;
}

/** Every place that a report names, with what stands beside it. */
export function sayings(report: unknown): Saying[] {
  if (typeof report !== 'object' || report === null) return [];
  const found: Saying[] = [];
  for (const [under, value] of Object.entries(report)) collect(value, under, '', found);
  return found;
}

function collect(value: unknown, under: string, around: string, found: Saying[]): void {
  if (Array.isArray(value)) {
    for (const one of value) collect(one, under, around, found);
    return;
  }
  if (typeof value !== 'object' || value === null) return;
  const own: Record<string, unknown> = { ...value };
  const texts = [around, ...Object.values(own).filter((one) => typeof one === 'string')].join(' ');
  if (typeof own['sheet'] === 'string') {
    found.push({
      under,
      sheet: own['sheet'],
      row:
        typeof own['row'] === 'number'
          ? own['row']
          : typeof own['headerRow'] === 'number'
            ? own['headerRow']
            : null,
      column: typeof own['column'] === 'string' ? own['column'] : null,
      what: typeof own['what'] === 'string' ? own['what'] : null,
      texts,
    });
  }
  for (const one of Object.values(own)) collect(one, under, texts, found);
}

/** Parts of a report that say what was used, or repeat the inputs: they tell nobody of what was left out. */
const tellOfUse: ReadonlySet<string> = new Set([
  'channels',
  'groups',
  'basis',
  'columns',
  'fingerprint',
  'summary',
  'policy',
  'since',
]);

/** Parts of a report whose places are those of channels, or that only repeat the inputs. */
const tellNothingOfMeanings: ReadonlySet<string> = new Set([
  'channels',
  'groups',
  'basis',
  'fingerprint',
  'since',
]);

/** Whether a report says that a channel, or the table or sheet in which it stands, was left out. */
export function leftOutSaid(all: readonly Saying[], tag: string, places: readonly ChannelPlace[]): boolean {
  return all.some(
    (saying) =>
      !tellOfUse.has(saying.under) &&
      places.some((place) => saying.sheet === place.sheet && names(saying, place, tag)),
  );
}

function names({ row, column, what, texts }: Saying, place: ChannelPlace, tag: string): boolean {
  if (what === 'sheet' || texts.includes(tag)) return true;
  if (row !== null && row === place.row) return true;
  if (place.row === undefined && column !== null && column === place.column) return true;
  const [first, last] = place.headerRows ?? [NaN, NaN];
  return what !== 'column' && what !== 'value' && row !== null && row >= first && row <= last;
}

/** Whether a sheet on which a missing value does stand is named at all: "no settings" alone hides that they stand elsewhere. */
export function sheetSaid(all: readonly Saying[], fields: readonly FieldTruth[]): boolean {
  return (
    fields.length === 0 ||
    all.some(
      ({ under, sheet, texts }) =>
        !tellOfUse.has(under) && fields.some((field) => sheet === field.sheet || texts.includes(field.sheet)),
    )
  );
}

/** Whether a report says that the column (or row) of a meaning was left out. */
export function fieldLeftOutSaid(all: readonly Saying[], fields: readonly FieldTruth[]): boolean {
  return all.some((saying) => !tellOfUse.has(saying.under) && fields.some((field) => isAt(saying, field)));
}

/** Whether a report names the place from which a meaning was read. */
export function useSaid(all: readonly Saying[], fields: readonly FieldTruth[]): boolean {
  return all.some(
    (saying) => !tellNothingOfMeanings.has(saying.under) && fields.some((field) => isAt(saying, field)),
  );
}

function isAt(saying: Saying, { sheet, column, row }: FieldTruth): boolean {
  if (saying.sheet !== sheet) return false;
  if (column !== undefined) return saying.column === column;
  return row !== undefined && saying.row === row;
}
