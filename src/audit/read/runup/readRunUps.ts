import { cellText, isBlank, type Cell } from '../../../cells/cell.ts';
import { readNumber } from '../../../cells/number.ts';
import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import { convert } from '../../../units/unit.ts';
import { parseUnit, type Unit } from '../../../units/parse.ts';
import { columnLetters } from '../../../cells/address.ts';
import type { ColumnMap } from '../../model/columnMap.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import type { RunUpRowFault } from '../../model/rules/runUpRules.ts';
import { hasListHeader, type OwnHeader } from '../hasListHeader.ts';
import { isResultSheet } from '../tables/titleWords.ts';
import { channelKey, tagKey } from '../tables/tagKey.ts';
import { runUpHead, type HeadedColumn, type RunUpHead } from './runUpHead.ts';

/** One tag of a table against speed. Speeds in r/min. */
export interface SpeedSeries {
  readonly tag: string;
  readonly machine: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: string;
  readonly amplitudes: 'real' | 'indicated' | null;
  readonly points: { readonly speed: number; readonly value: number }[];
  /** Unit of the values. */
  readonly unit: Unit | null;
  /** A unit in the headers that is not known here, and which is wanted there: `null` for the values, which have the channel's. */
  readonly unknownUnit: { readonly unit: string; readonly wanted: string | null } | null;
  readonly multiplierSpeed: number | null;
  /** r/min a second. */
  readonly rate: number | null;
  readonly sensor: {
    readonly corner: number;
    readonly damping: number;
    readonly measuredAt: number | null;
  } | null;
}

/** What a workbook holds against speed. */
export interface SpeedBook {
  readonly runUps: readonly SpeedSeries[];
  readonly responses: readonly SpeedSeries[];
  readonly remarks: readonly PlacedFact[];
}

const headRows = 20;
const turns = parseUnit('r/min');

/** Sheets of a workbook that hold run-ups, sensitivities against speed, or corner and damping of sensors, and nothing else. */
export function speedSheets(workbook: Workbook, { notOfAudit = [] }: ColumnMap = {}): Sheet[] {
  return workbook.sheets.filter((sheet) => {
    if (isResultSheet(sheet)) return false;
    const head = headOf(sheet);
    if (!head || (head.holds !== 'sensor' && !hasRepeatedTag(sheet, head))) return false;
    if (hasListHeader(sheet, ownHeader(head))) return false;
    return !notOfAudit.some((said) => said.sheet.toLowerCase() === sheet.name.toLowerCase());
  });
}

/** A table of sensitivities against speed names them itself; one of sensors the frequency at which they were measured. */
function ownHeader({ row, holds, sensitivity, measuredAt }: RunUpHead): OwnHeader {
  const own = [holds === 'response' ? sensitivity : null, measuredAt];
  return { row, columns: new Set(own.flatMap((one) => one?.column ?? [])) };
}

function headOf({ rows }: Sheet): RunUpHead | undefined {
  for (const [index, cells] of rows.slice(0, headRows).entries()) {
    const head = runUpHead(cells, index + 1);
    if (head) return head;
  }
  return undefined;
}

/** A list has a row a tag; a run-up has several. */
function hasRepeatedTag({ rows }: Sheet, { row, tag, speed }: RunUpHead): boolean {
  const counts = new Map<string, number>();
  for (const cells of rows.slice(row)) {
    const key = tagKey(cellText(cells[tag - 1] ?? null));
    if (key !== '' && speed && !isBlank(cells[speed.column - 1] ?? null))
      counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts.size > 0 && [...counts.values()].every((count) => count > 1);
}

/** Reads what such sheets hold. */
export function readRunUps(sheets: readonly Sheet[]): SpeedBook {
  const remarks: PlacedFact[] = [];
  const found = { runUps: [] as SpeedSeries[], responses: [] as SpeedSeries[] };
  for (const sheet of sheets) {
    const head = headOf(sheet);
    if (!head) continue;
    const series = seriesIn(sheet, head, remarks);
    (head.holds === 'amplitudes' ? found.runUps : found.responses).push(...series);
  }
  return { ...found, remarks };
}

function seriesIn(sheet: Sheet, head: RunUpHead, remarks: PlacedFact[]): SpeedSeries[] {
  const found = new Map<string, SpeedSeries>();
  const value = head.holds === 'amplitudes' ? head.amplitude : head.sensitivity;
  const unknownUnit = unknownUnitIn(head, value);
  for (const [index, cells] of sheet.rows.entries()) {
    const row = index + 1;
    if (row <= head.row || cells.every(isBlank)) continue;
    const cell = (column: number | null | undefined): Cell => (column ? (cells[column - 1] ?? null) : null);
    const number = (column: number | null | undefined): number => numberOf(cell(column), sheet.plainText);
    const leftOut = (fault: RunUpRowFault, column: number): void => {
      const place = { sheet: sheet.name, row, column: columnLetters(column) };
      remarks.push(
        factAt(place, factOf('run-up-row-left-out', 'warning', { fault, row, text: cellText(cell(column)) })),
      );
    };
    const tag = cellText(cell(head.tag));
    if (tag === '') {
      leftOut('no tag', head.tag);
      continue;
    }
    const machine = cellText(cell(head.machine));
    const key = channelKey({ machine, tag });
    const speed = inTurns(number(head.speed?.column), head.speed);
    const level = number(value?.column);
    if (head.holds !== 'sensor' && !(speed >= 0)) {
      leftOut('no speed', head.speed?.column ?? head.tag);
      continue;
    }
    if (head.holds === 'amplitudes' ? !(level >= 0) : head.holds === 'response' && !(level > 0)) {
      leftOut(head.holds === 'amplitudes' ? 'no amplitude' : 'no sensitivity', value?.column ?? head.tag);
      continue;
    }
    const own = found.get(key);
    const aside = asideOf(head).find(({ column, needed }) =>
      isBlank(cell(column)) ? needed : !(number(column) > 0),
    );
    if (aside) {
      leftOut(aside.fault, aside.column);
      continue;
    }
    const said = cellText(cell(head.amplitudesColumn)).toLowerCase();
    const amplitudes = said === 'real' || said === 'indicated' ? said : head.amplitudes;
    const multiplierSpeed = known(inTurns(number(head.multiplierSpeed?.column), head.multiplierSpeed));
    const rate = known(number(head.rate));
    if (own) {
      const [other] = [
        head.holds === 'sensor' ? head.tag : null,
        said !== '' && amplitudes !== own.amplitudes ? head.amplitudesColumn : null,
        isOther(multiplierSpeed, own.multiplierSpeed) ? head.multiplierSpeed?.column : null,
        isOther(rate, own.rate) ? head.rate : null,
      ].flatMap((column) => column ?? []);
      if (other !== undefined) {
        leftOut('not as above', other);
        continue;
      }
      own.points.push({ speed, value: level });
      found.set(key, {
        ...own,
        multiplierSpeed: own.multiplierSpeed ?? multiplierSpeed,
        rate: own.rate ?? rate,
      });
      continue;
    }
    const corner = inTurns(number(head.corner?.column), head.corner);
    found.set(key, {
      tag,
      machine,
      sheet: sheet.name,
      row,
      column: columnLetters(value?.column ?? head.tag),
      amplitudes,
      points: head.holds === 'sensor' ? [] : [{ speed, value: level }],
      unit: value?.unit ?? null,
      unknownUnit,
      multiplierSpeed,
      rate,
      sensor:
        head.holds === 'sensor'
          ? {
              corner,
              damping: number(head.damping),
              measuredAt: known(inTurns(number(head.measuredAt?.column), head.measuredAt)),
            }
          : null,
    });
  }
  return [...found.values()].map((one) => ({ ...one, points: risingSpeeds(one.points) }));
}

function unknownUnitIn(
  { speed, multiplierSpeed, corner, measuredAt }: RunUpHead,
  value: HeadedColumn | null,
): SpeedSeries['unknownUnit'] {
  const ofValues = value?.unknownUnit ?? null;
  if (ofValues !== null) return { unit: ofValues, wanted: null };
  const other = [speed, multiplierSpeed, corner, measuredAt].find(
    (column) => column && column.unknownUnit !== null,
  );
  return other ? { unit: other.unknownUnit ?? '', wanted: other.unit?.text ?? '' } : null;
}

/** What stands beside the values: numbers above 0, those of a sensor `needed`. */
function asideOf({ corner, damping, measuredAt, multiplierSpeed, rate }: RunUpHead) {
  const columns = [
    { column: corner?.column, fault: 'no corner', needed: true },
    { column: damping, fault: 'no damping', needed: true },
    { column: measuredAt?.column, fault: 'no measuring frequency', needed: false },
    { column: multiplierSpeed?.column, fault: 'no multiplier speed', needed: false },
    { column: rate, fault: 'no rate', needed: false },
  ] as const;
  return columns.flatMap(({ column, ...of }) => (column ? [{ column, ...of }] : []));
}

/** Whether a row says another number than the rows above; one that says none leaves it. */
function isOther(number: number | null, above: number | null): boolean {
  return number !== null && above !== null && number !== above;
}

/** In order of speed; of two values at one speed the larger. */
function risingSpeeds(points: SpeedSeries['points']): SpeedSeries['points'] {
  const sorted = points.toSorted((one, other) => one.speed - other.speed || other.value - one.value);
  return sorted.filter(({ speed }, index) => speed !== sorted[index - 1]?.speed);
}

function numberOf(cell: Cell, plainText: Sheet['plainText']): number {
  if (cell === null || isBlank(cell)) return NaN;
  const read = readNumber(cell, plainText);
  return 'value' in read && !read.percent ? read.value : NaN;
}

function inTurns(value: number, column: HeadedColumn | null): number {
  return column?.unit && turns ? convert(value, column.unit, turns) : value;
}

function known(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
