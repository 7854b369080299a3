import type { Channel } from '../../model/channel.ts';
import type { MemberReason, ThresholdName, ThresholdResult } from '../../model/threshold.ts';
import type { PairedRows } from '../../read/pairedRows.ts';
import { placeOf } from '../../read/rows/diagnostic.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { FoundTable } from '../../read/tables/found.ts';
import type { Member } from '../groups/members.ts';
import { incompleteThreshold } from '../lines/incompleteThreshold.ts';
import { writtenSetpoints } from './incompleteChannel.ts';

/** An audited channel as a member of its voting group. */
export function memberOf(
  pair: PairedRows,
  channel: Channel,
  thresholds: readonly ThresholdResult[],
  asFound: readonly ThresholdResult[] | null,
): Member {
  const { tag, machine } = pair.row;
  const { group, voting, bypass, batch, sharedUncertainty, limit, unit, detection } = channel;
  return {
    tag,
    machine,
    places: placesOf(pair),
    group,
    voting,
    bypass,
    faulty: isFaulty(channel),
    batch,
    sharedUncertainty,
    limit,
    unit,
    detection,
    thresholds,
    asFound,
    notAudited: null,
  };
}

/** The monitor takes a gap voltage outside its fault limits for a broken chain. */
function isFaulty({ gapVoltage, faultLimits }: Channel): boolean {
  if (gapVoltage === null || faultLimits === null) return false;
  const { near, far } = faultLimits;
  return (near !== null && gapVoltage > near) || (far !== null && gapVoltage < far);
}

function placesOf({ place }: PairedRows): Member['places'] {
  return { group: place('settings', 'group'), voting: place('settings', 'voting') };
}

/** A channel of which nothing could be worked out, as a member that can't be shown to act; `null` where it is in no group. */
export function unauditedMember(pair: PairedRows, why: MemberReason): Member | null {
  const { row, settings } = pair;
  if (settings.group === '' && settings.voting === '') return null;
  return ofSettings(settings, row, placesOf(pair), why);
}

/** Settings that no channel was joined with, as a member; `null` where they name no group. */
export function unjoinedMember(
  settings: SettingsRow,
  { tag, machine }: Pick<ChannelRow, 'tag' | 'machine'>,
  table: FoundTable,
  why: MemberReason,
): Member | null {
  if (settings.group === '' && settings.voting === '') return null;
  const places = {
    group: placeOf(table, settings.row, 'group'),
    voting: placeOf(table, settings.row, 'voting'),
  };
  return ofSettings(settings, { tag, machine, kind: null, limit: null }, places, why);
}

function ofSettings(
  settings: SettingsRow,
  { tag, machine, kind, limit }: Pick<ChannelRow, 'tag' | 'machine' | 'kind' | 'limit'>,
  places: Member['places'],
  why: MemberReason,
): Member {
  const { group, voting, bypass, alert, danger, counterAlert, counterDanger } = settings;
  const written = writtenSetpoints(settings);
  const multiplier = settings.multiplier?.value ?? 1;
  const ofDisplacement = kind === 'radial' || kind === 'axial';
  const isComparable =
    ofDisplacement || (limit?.unit?.detection === undefined) === (written.detection === null);
  const given = (name: ThresholdName, amount: Amount | null, sign: number) => {
    const level = written.level(amount);
    if (level === null) return [];
    const plain = incompleteThreshold(name, sign * level, []);
    return multiplier > 1 ? [plain, { ...plain, multiplier }] : [plain];
  };
  return {
    tag,
    machine,
    places,
    group,
    voting,
    bypass,
    faulty: false,
    batch: '',
    sharedUncertainty: null,
    limit: isComparable ? written.level(limit) : null,
    unit: written.unit,
    detection: written.detection,
    asFound: null,
    notAudited: why,
    thresholds: [
      ...given('alert', alert, 1),
      ...given('danger', danger, 1),
      ...given('counter alert', counterAlert, -1),
      ...given('counter danger', counterDanger, -1),
    ],
  };
}
