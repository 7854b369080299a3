import type { Cell } from '../../../cells/cell.ts';
import { parseUnit, type Unit } from '../../../units/parse.ts';
import { channelColumns } from '../tables/channelColumns.ts';
import { headerKey, looksLikeUnit, parseHeader, type Header } from '../tables/header.ts';
import { tagWords } from '../tables/tagKey.ts';

/** A column with the unit in its header. */
export interface HeadedColumn {
  readonly column: number;
  readonly unit: Unit | null;
  /** What was meant as a unit, though it is none known here. */
  readonly unknownUnit: string | null;
}

/** The header row of a table of run-ups, or of what is known of sensors against speed. Rows and columns count from 1. */
export interface RunUpHead {
  readonly row: number;
  readonly holds: 'amplitudes' | 'response' | 'sensor';
  readonly tag: number;
  readonly machine: number | null;
  /** Speed or frequency, its unit r/min where none is named for a speed. */
  readonly speed: HeadedColumn | null;
  readonly amplitude: HeadedColumn | null;
  /** What the amplitudes are, where the header says it. */
  readonly amplitudes: 'real' | 'indicated' | null;
  /** Column that says it row by row. */
  readonly amplitudesColumn: number | null;
  readonly sensitivity: HeadedColumn | null;
  readonly multiplierSpeed: HeadedColumn | null;
  /** r/min a second. */
  readonly rate: number | null;
  readonly corner: HeadedColumn | null;
  readonly damping: number | null;
  readonly measuredAt: HeadedColumn | null;
}

const keys = (...words: readonly string[]): ReadonlySet<string> => new Set(words.map(headerKey));
const words = {
  tag: keys('tag', ...tagWords),
  machine: keys(channelColumns.machine.name, ...channelColumns.machine.also),
  speed: keys(
    'speed',
    'shaft speed',
    'rotor speed',
    'running speed',
    'rpm',
    'Drehzahl',
    'vitesse',
    'velocidad',
  ),
  frequency: keys('frequency', 'Frequenz', 'fréquence', 'frecuencia'),
  real: keys('real amplitude', 'amplitude real', 'true amplitude', 'real vibration'),
  indicated: keys(
    'indicated amplitude',
    'amplitude indicated',
    'shown amplitude',
    'amplitude shown',
    'indicated vibration',
  ),
  amplitude: keys('amplitude', 'run-up amplitude', 'vibration', 'run-up vibration'),
  kind: keys('real or indicated', 'amplitude is', 'amplitudes are'),
  sensitivity: keys('sensitivity', 'measured sensitivity', 'sensitivity measured', 'scale factor'),
  multiplierSpeed: keys('multiplier below', 'multiplier speed', 'multiplier until'),
  rate: keys('rate', 'run-up rate', 'acceleration rate', 'speed rate'),
  corner: keys('corner frequency', 'corner', 'natural frequency', 'cut-off frequency'),
  damping: keys('damping', 'damping ratio'),
  measuredAt: keys('measured at', 'measuring frequency', 'sensitivity measured at', 'calibration frequency'),
} as const;

/** Reads a row as the header of a table of run-ups, of sensitivities against speed, or of sensors; `undefined` where it is none. */
export function runUpHead(cells: readonly Cell[], row: number): RunUpHead | undefined {
  const headed: { readonly column: number; readonly header: Header }[] = [];
  for (const [index, cell] of cells.entries())
    if (typeof cell === 'string' && cell.trim() !== '' && cell.length <= 250)
      headed.push({ column: index + 1, header: parseHeader(cell, () => false) });
  const find = (which: keyof typeof words) => headed.find(({ header }) => words[which].has(header.key));
  const column = (which: keyof typeof words): HeadedColumn | null => {
    const found = find(which);
    return found ? headedAs(found.column, found.header) : null;
  };
  const tag = column('tag');
  if (!tag) return undefined;
  const told = find('real') ?? find('indicated') ?? find('amplitude');
  const [speed, frequency, sensitivity] = [column('speed'), column('frequency'), column('sensitivity')];
  const [corner, damping] = [column('corner'), column('damping')];
  const amplitude = told ? headedAs(told.column, told.header) : null;
  const holds =
    speed && amplitude && !sensitivity
      ? 'amplitudes'
      : (speed ?? frequency) && sensitivity && !amplitude && headed.length <= 5
        ? 'response'
        : corner && damping
          ? 'sensor'
          : null;
  if (holds === null) return undefined;
  const remarks = told?.header.remarks.map((remark) => remark.toLowerCase()) ?? [];
  return {
    row,
    holds,
    tag: tag.column,
    machine: column('machine')?.column ?? null,
    speed: withUnit(speed, turns) ?? withUnit(frequency, hertz),
    amplitude,
    amplitudes:
      told === undefined
        ? null
        : words.real.has(told.header.key) || remarks.includes('real')
          ? 'real'
          : words.indicated.has(told.header.key) || remarks.includes('indicated')
            ? 'indicated'
            : null,
    amplitudesColumn: column('kind')?.column ?? null,
    sensitivity,
    multiplierSpeed: withUnit(column('multiplierSpeed'), turns),
    rate: column('rate')?.column ?? null,
    corner: withUnit(corner, hertz),
    damping: damping?.column ?? null,
    measuredAt: withUnit(column('measuredAt'), hertz),
  };
}

const hertz = parseUnit('Hz') ?? null;
const turns = parseUnit('r/min') ?? null;

function headedAs(column: number, { unit, remarks }: Header): HeadedColumn {
  return { column, unit: unit ?? null, unknownUnit: unit ? null : (remarks.find(looksLikeUnit) ?? null) };
}

/** The column in the unit that it has where its header names none. */
function withUnit(found: HeadedColumn | null, usual: Unit | null): HeadedColumn | null {
  return found && { ...found, unit: found.unit ?? usual };
}
