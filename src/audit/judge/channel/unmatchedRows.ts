import type { PlacedFact, RowPlace } from '../../model/findings.ts';
import type { RuleId, RuleValues } from '../../model/rules/rules.ts';
import type { Tables, FoundTable } from '../../read/tables/found.ts';
import type { Member } from '../groups/members.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import { placeOf, rowPlaceOf, placed } from '../../read/rows/diagnostic.ts';
import { unjoinedMember } from './groupMembers.ts';
import { onlyTag, problemAt } from '../../read/join/problems.ts';
import { isOnlyTag, looksLikeHeading, machineAt, tagAt, type TagIndex } from '../../read/join/tagIndex.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { JudgedChannel } from './context.ts';
import { incompleteChannel, writtenSetpoints } from './incompleteChannel.ts';

/** Why a channel row can't be joined with exactly one row of settings; `undefined` where it can. */
export function joinProblem(
  row: number,
  tag: string,
  sameTag: readonly number[],
  settingsRows: readonly number[],
  tables: Tables,
): PlacedFact | undefined {
  const at = <R extends RuleId>(rule: R, values: RuleValues[R]) =>
    problemAt(tables.channels, row, 'tag', rule, 'warning', values);
  const sheet = tables.settings.sheet.name;
  if (sameTag.length > 1) {
    return at('duplicate-tag', { kind: 'in channel list', tag, rows: sameTag });
  }
  if (settingsRows.length > 1) {
    return at('duplicate-tag', { kind: 'in settings of a channel', tag, rows: settingsRows, sheet });
  }
  return settingsRows.length === 0 ? at('channel-without-settings', { tag, sheet }) : undefined;
}

export interface UnmatchedSettings {
  readonly problems: readonly PlacedFact[];
  /** Those of which it is not known where their danger acts. */
  readonly unjudged: readonly UnjudgedRow[];
  /** Members of voting groups that can't be shown to act. */
  readonly members: readonly Member[];
}

/** Settings that no channel was joined with. */
export interface UnjudgedRow {
  readonly tag: string;
  /** Empty where its row names none. */
  readonly machine: string;
  readonly danger: number | null;
  readonly unit: string | null;
  readonly place: RowPlace;
  readonly fact: PlacedFact;
}

/** Settings rows that no channel was joined with. */
export function unmatchedSettings(
  tables: Tables,
  settings: TagIndex,
  channels: TagIndex,
  joined: ReadonlySet<number>,
  read: (row: number) => SettingsRow,
): UnmatchedSettings {
  const problems: PlacedFact[] = [];
  const unjudged: UnjudgedRow[] = [];
  const members: Member[] = [];
  for (const row of settings.tagged) {
    if (joined.has(row)) continue;
    const tag = tagAt(tables.settings, row);
    const key = settings.keyOf(row);
    const same = settings.rowsOf(key);
    const inChannels = channels.rowsOf(key).length > 0;
    if (isOnlyTag(tables.settings, row) && looksLikeHeading(tag, inChannels)) {
      problems.push(onlyTag(tables.settings, row, tag));
      continue;
    }
    const at = <R extends RuleId>(rule: R, values: RuleValues[R]) =>
      problemAt(tables.settings, row, 'tag', rule, 'warning', values);
    const fact =
      same.length > 1
        ? at('duplicate-tag', { kind: 'in settings', tag, rows: same })
        : inChannels
          ? at('settings-not-joined', { tag })
          : at('settings-without-channel', { tag, sheet: tables.channels.sheet.name });
    problems.push(fact);
    const own = read(row);
    const machine = machineAt(tables.settings, row);
    const written = writtenSetpoints(own);
    if (!inChannels) {
      unjudged.push({
        tag,
        machine,
        danger: written.level(own.danger),
        unit: written.unit?.text ?? null,
        place: rowPlaceOf(tables.settings, row),
        fact,
      });
    }
    const why = inChannels || same.length > 1 ? 'its tag is not unique' : 'it is not in the channel list';
    const member = unjoinedMember(own, { tag, machine }, tables.settings, why);
    if (member) members.push(member);
  }
  return { problems, unjudged, members };
}

/** A channel that can't be joined with settings: incomplete, for the reason given. */
export function unjoinedChannel(
  row: ChannelRow,
  trouble: PlacedFact | undefined,
  tables: Tables,
): JudgedChannel {
  const facts = [
    ...(trouble ? [trouble] : []),
    ...row.diagnostics.map((one) => placed(tables.channels, row.row, one)),
    ...hiddenRow(tables.channels, row.row),
  ];
  const result = incompleteChannel({ row, settings: null }, tables, []);
  return {
    result,
    ofVerdicts: [],
    facts,
    invalid: trouble ? [trouble] : [],
    member: null,
    setpointPlace: () => placeOf(tables.channels, row.row, 'tag'),
  };
}

/** Says that a row is hidden, which is audited all the same. */
export function hiddenRow(table: FoundTable, row: number): PlacedFact[] {
  if (!table.sheet.hiddenRows.has(row)) return [];
  return [problemAt(table, row, 'tag', 'hidden-row', 'note', rowPlaceOf(table, row))];
}
