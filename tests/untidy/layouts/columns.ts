import { DateCell, PercentCell } from '../../../src/cells/cell.ts';
import type { Column, Draft, Meaning } from '../draft.ts';
import type { Channel, UnitSystem } from '../scenario.ts';

/** A column where a meaning stands; its header is drawn from the words once for the whole workbook. */
function column(
  meaning: Meaning,
  header: string,
  cell: Column['cell'],
  unit: string | null = null,
  group: string | null = null,
): Column {
  return { meaning, header, cell, unit, group, stands: true };
}

const wanted = (draft: Draft, columns: readonly Column[]): Column[] =>
  columns.filter(
    ({ meaning }) =>
      draft.wish.quantities.has(meaning) ||
      (['tag', 'measured sensitivity', 'configured sensitivity', 'alert', 'danger'] as Meaning[]).includes(
        meaning,
      ),
  );

/** Headers of a workbook: the same word for the same meaning on all its sheets. */
export interface Headers {
  readonly list: (units: UnitSystem) => Column[];
  readonly settings: (units: UnitSystem) => Column[];
  readonly tag: () => Column;
  readonly machine: () => Column;
}

export function headersOf(draft: Draft): Headers {
  const { words, random, wish } = draft;
  const word = {
    tag: random.pick(words.tag),
    machine: random.pick(words.machine),
    location: random.pick(words.location),
    kind: random.pick(words.kind),
    measured: random.pick(words.measured),
    configured: random.pick(words.configured),
    asLeft: random.pick(words.asLeft),
    fullScale: random.pick(words.fullScale),
    gapVoltage: random.pick(words.gapVoltage),
    limit: random.pick(words.limit),
    group: random.pick(words.group),
    voting: random.pick(words.voting),
    bypass: random.pick(words.bypass),
    testedOn: random.pick(words.testedOn),
    radial: random.pick(words.radial),
    axial: random.pick(words.axial),
  };
  const percentOf = (channel: Channel, which: 'alert' | 'danger') =>
    which === 'alert' ? channel.alertPercent : channel.dangerPercent;
  const setpoint = (which: 'alert' | 'danger') => (channel: Channel) => {
    if (wish.percent === 'percent cell') return new PercentCell(percentOf(channel, which));
    return wish.percent === 'number' ? percentOf(channel, which) : channel[which];
  };
  return {
    tag: () => column('tag', word.tag, ({ tag }) => tag),
    machine: () => ({
      ...column('machine', word.machine, ({ machine }) => machine),
      merged: wish.machinePlace === 'merged column',
    }),
    list: (units) =>
      wanted(draft, [
        column('tag', word.tag, ({ tag }) => tag),
        column('location', word.location, ({ bearing, direction }) => `${bearing} ${direction}`),
        column('kind', word.kind, ({ kind }) => (kind === 'axial' ? word.axial : word.radial)),
        column('measured sensitivity', word.measured, ({ measured }) => measured, units.measured.text),
        column('gap voltage', word.gapVoltage, ({ gapVoltage }) => gapVoltage, 'V'),
        column('calibrated on', word.testedOn, ({ testedOn }) => new DateCell(testedOn)),
        column('as-left sensitivity', word.asLeft, ({ left }) => left, units.measured.text),
        column('limit', word.limit, ({ limit }) => limit, displacement(units, wish.detection)),
      ]),
    settings: (units) =>
      wanted(draft, [
        column('tag', word.tag, ({ tag }) => tag),
        column(
          'configured sensitivity',
          word.configured,
          ({ configured }) => configured,
          units.configured.text,
        ),
        column(
          'alert',
          wish.setpoints[0],
          setpoint('alert'),
          wish.percent === 'no' ? displacement(units, wish.detection) : '% FS',
        ),
        column(
          'danger',
          wish.setpoints[1],
          setpoint('danger'),
          wish.percent === 'no' ? displacement(units, wish.detection) : '% FS',
        ),
        column(
          'full scale',
          word.fullScale,
          ({ fullScale }) => fullScale,
          displacement(units, wish.detection),
        ),
        column('voting group', word.group, ({ group }) => group),
        column('voting', word.voting, ({ voting }) => voting),
        column('bypass', word.bypass, ({ bypass }) => (bypass ? words.yes : words.no)),
      ]),
  };
}

/** A unit of displacement as it is written: with its detection where one is said. */
function displacement({ displacement: unit }: UnitSystem, detection: string): string {
  return detection === '' ? unit.text : `${unit.text} ${detection}`;
}
