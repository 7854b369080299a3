import { columnOf, type Draft, type Meaning, type Table } from './draft.ts';
import type { Rendered } from './render/book.ts';
import type { Channel } from './scenario.ts';
import {
  type BookTruth,
  type ChannelTruth,
  type FieldTruth,
  type OptionalTruth,
  verdictOf,
} from './truth.ts';

/** What is true of a rendered draft: the numbers of its channels in mil, and where each of them stands. */
export function bookTruth(draft: Draft, { placed }: Rendered): BookTruth {
  const fields: FieldTruth[] = [];
  for (const [table, { fields: found }] of placed) {
    if (!table.stands) continue;
    for (const { meaning, sheet, column, row, header } of found) {
      if (meaning === 'other') continue;
      fields.push({
        meaning,
        sheet,
        ...(column === undefined ? {} : { column }),
        ...(row === undefined ? {} : { row }),
        standard: draft.words.standard && header === standardHeaders[meaning],
      });
    }
  }
  return {
    channels: draft.channels.map((channel) => channelTruth(draft, channel, placed)),
    fields,
    accept: draft.accept,
    choice: draft.choice,
    mayBeIncomplete: draft.mayBeIncomplete,
    traps: draft.traps,
  };
}

const standardHeaders: Partial<Record<Meaning, string>> = {
  tag: 'Tag',
  machine: 'Machine',
  location: 'Location',
  kind: 'Kind',
  'measured sensitivity': 'Measured sensitivity',
  'as-left sensitivity': 'As-left sensitivity',
  'configured sensitivity': 'Configured sensitivity',
  alert: 'Alert',
  danger: 'Danger',
  'full scale': 'Full scale',
  'gap voltage': 'Gap voltage',
  limit: 'Limit',
  'calibrated on': 'Calibrated on',
  'voting group': 'Voting group',
  voting: 'Voting',
  bypass: 'Bypass',
};

function channelTruth(draft: Draft, channel: Channel, placed: Rendered['placed']): ChannelTruth {
  const { units } = channel;
  const configured = channel.configured * units.configured.factor;
  const measured = channel.measured * units.measured.factor;
  const displacement = units.displacement.factor;
  const pairs = draft.chosen['structure'] === 'X and Y in one row';
  const { optional = {}, ...changed } = draft.changes.get(channel) ?? {};
  const place = draft.wish.machinePlace;
  return {
    machine: channel.machine,
    // A bare heading or the name of a sheet is a hint at the machine, no statement.
    machineAlso: place === 'headings' || place === 'sheet name' || !hasMachine(draft) ? [''] : [],
    tag: pairs ? [channel.bearing, channel.direction] : [channel.tag],
    kind: channel.kind,
    configured,
    measured,
    alert: channel.alert * displacement,
    danger: channel.danger * displacement,
    // Without its zero voltage an axial chain that is right in sensitivity is not known.
    verdict: channel.kind === 'axial' ? 'incomplete' : verdictOf(configured, measured),
    also: [],
    asLeft: null,
    asLeftVerdict: null,
    mustAsk: draft.accept.every((way) => way === 'ask'),
    otherwise: [],
    places: [...placed].flatMap(([table, { channels }]) =>
      table.stands ? channels.filter((one) => one.channel === channel).map((one) => one.place) : [],
    ),
    ...changed,
    optional: { ...optionalOf(draft, channel), ...optional },
  };
}

function hasMachine(draft: Draft): boolean {
  return draft.tables.some((table) => table.machine !== null || columnOf(table, 'machine') !== undefined);
}

function stands(draft: Draft, meaning: Meaning): boolean {
  return draft.tables.some((table: Table) => table.stands && columnOf(table, meaning) !== undefined);
}

function optionalOf(draft: Draft, channel: Channel): OptionalTruth {
  const { factor } = channel.units.displacement;
  return {
    ...(stands(draft, 'full scale') ? { fullScale: channel.fullScale * factor } : {}),
    ...(stands(draft, 'limit') ? { limit: channel.limit * factor } : {}),
    ...(stands(draft, 'gap voltage') ? { gapVoltage: channel.gapVoltage } : {}),
    ...(stands(draft, 'voting group') ? { group: channel.group } : {}),
    ...(stands(draft, 'voting') ? { voting: channel.voting } : {}),
    ...(stands(draft, 'bypass') ? { bypass: channel.bypass } : {}),
  };
}
