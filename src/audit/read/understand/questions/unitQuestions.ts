import { convert } from '../../../../units/unit.ts';
import { parseUnit } from '../../../../units/parse.ts';
import { laneKey, mappedTableOfLane } from '../answers/places.ts';
import { meaning, type MeaningId } from '../meaning.ts';
import type { ReadChannel } from '../readings/channel.ts';
import type { Claim } from '../tables/claim.ts';
import type { TableRead } from '../tables/tableRead.ts';
import { optionOf } from './fieldQuestions.ts';
import { perLayout, type AboutTable } from './perLayout.ts';
import type { Option, Question } from './question.ts';

/** What setpoints can be in whose header says per cent of something. */
const ofFullScale = '% FS';
/** Vibration is peak to peak where nothing else is said: who knows that it is zero to peak has to be able to say so. */
const levels = ['mil', 'µm', 'mm', 'mil 0-p', 'µm 0-p'] as const;
const unitsOf: Readonly<Partial<Record<MeaningId, readonly string[]>>> = {
  measured: ['mV/mil', 'mV/µm'],
  configured: ['mV/mil', 'mV/µm'],
  asLeftSensitivity: ['mV/mil', 'mV/µm'],
  alert: levels,
  danger: levels,
  fullScale: levels,
  limit: levels,
};
/** Greatest factor by which a measured sensitivity may differ from the configured one for their units to agree. */
const agree = 2;

/** Questions for the units of fields that state none, with the one that the numbers' size and the other columns speak for. */
export function unitQuestions(tables: readonly TableRead[], channels: readonly ReadChannel[]): Question[] {
  const found: AboutTable[] = [];
  for (const table of tables) {
    if (table.part !== 'channels' || table.tag?.standing !== 'certain' || table.leftOut) continue;
    for (const id of Object.keys(unitsOf) as MeaningId[]) {
      const claim = table.claims.get(id);
      if (!claim || (claim.standing === 'not known' && !meaning(id).needed)) continue;
      const slip = ratioSlip(table, claim, channels) || sizeSlip(claim);
      if (!slip && hasUnit(claim, table, channels)) continue;
      found.push([table, questionFor(table, claim, unitsOf[id] ?? [])]);
    }
  }
  return perLayout(found);
}

function hasUnit(claim: Claim, table: TableRead, channels: readonly ReadChannel[]): boolean {
  if (claim.unit.doubt !== undefined) return false;
  if (claim.unit.fixed) return true;
  const { numbers, withUnit } = claim.field.values;
  if (claim.standing !== 'certain') return claim.unit.beside.length > 0 || withUnit >= numbers;
  return !channels.some(
    ({ lines, values }) =>
      lines.some((line) => line.table === table) && values.get(claim.meaning)?.amount?.unit === null,
  );
}

/** Whether numbers are far from the usual size in the unit of their header, and usual in another one. */
function sizeSlip({ meaning: id, unit, evidence, standing, field }: Claim): boolean {
  if (standing === 'certain' || !unit.fixed?.unit) return false;
  if (!evidence.some((one) => one.is === 'size' && !one.fits)) return false;
  const [usual] = meaning(id).sizes;
  const base = usual && parseUnit(usual.unit);
  if (!usual || !base || field.values.withUnit > 0) return false;
  return (unitsOf[id] ?? []).some((text) => {
    const other = parseUnit(text);
    const size = other ? Math.abs(convert(field.values.median, other, base)) : NaN;
    return size >= usual.from && size <= usual.to;
  });
}

/** Whether the unit of a note or a title makes measured and configured disagree by far. */
function ratioSlip(table: TableRead, claim: Claim, channels: readonly ReadChannel[]): boolean {
  const { scope } = claim.unit;
  if (scope !== 'title' && scope !== 'note' && scope !== 'legend' && scope !== 'format') return false;
  const ratio = medianRatio(table, channels);
  return ratio !== null && (ratio > agree || ratio < 1 / agree);
}

/** Median of measured over configured of the channels of a table, in one unit; `null` where none has both. */
function medianRatio(table: TableRead, channels: readonly ReadChannel[]): number | null {
  const ratios = channels.flatMap(({ lines, values }) => {
    if (!lines.some((line) => line.table === table)) return [];
    const [measured, configured] = [values.get('measured')?.amount, values.get('configured')?.amount];
    if (!measured?.unit || !configured?.unit) return [];
    const ratio = convert(measured.value, measured.unit, configured.unit) / configured.value;
    return Number.isFinite(ratio) ? [ratio] : [];
  });
  ratios.sort((one, other) => one - other);
  return ratios[Math.floor(ratios.length / 2)] ?? null;
}

function questionFor(table: TableRead, claim: Claim, units: readonly string[]): Question {
  const wanted = meaning(claim.meaning);
  const bySize = units.toSorted((one, other) => off(claim, one) - off(claim, other));
  const isShare = wanted.matter === 'setpoint' && claim.unit.strange?.includes('%') === true;
  const sorted = isShare ? [ofFullScale, ...bySize] : inDoubt(claim, bySize);
  const options = sorted.map((unit): Option => ({
    field: null,
    text: unit,
    answer: { tables: [{ ...mappedTableOfLane(table.lane), units: { [wanted.name]: unit } }] },
  }));
  return {
    id: `unit ${laneKey(table.lane)} ${claim.meaning}`,
    needed: wanted.needed,
    records: claim.field.values.filled,
    subject: { is: 'unit', meaning: claim.meaning, field: optionOf(claim.field) },
    evidence: [{ is: 'size', median: claim.field.values.median, unit: sorted[0] ?? null, fits: true }],
    sheets: [table.lane.block.sheet.name],
    options,
  };
}

/** The unit of the header first where only its detection is in doubt: zero to peak, as a text around the list says. */
function inDoubt({ unit: { doubt, fixed } }: Claim, units: readonly string[]): readonly string[] {
  if (doubt === undefined || !fixed) return units;
  const first = [`${fixed.text} 0-p`, `${fixed.text} p-p`];
  return [...first, ...units.filter((unit) => !first.includes(unit))];
}

/** Usual sizes of both kinds, by which a unit is proposed: 200 mV/mil, and a few mil. */
const typical: Readonly<Record<string, readonly [unit: string, size: number]>> = {
  sensitivity: ['mV/mil', 160],
  setpoint: ['mil', 4],
  scale: ['mil', 10],
};

function off(claim: Claim, unitText: string): number {
  const [baseText, size] = typical[meaning(claim.meaning).matter] ?? ['mil', 4];
  const [unit, base] = [parseUnit(unitText), parseUnit(baseText)];
  if (!unit || !base) return Infinity;
  return Math.abs(Math.log(Math.abs(convert(claim.field.values.median, unit, base)) / size));
}
