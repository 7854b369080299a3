import type { PlacedFact } from '../../model/findings.ts';
import type { RuleId, RuleValues } from '../../model/rules/rules.ts';
import type { Tables } from '../../read/tables/found.ts';
import type { Member } from '../groups/members.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import { tagKey } from '../../read/tables/tagKey.ts';
import { unaudited } from './groupMembers.ts';
import { onlyTag, problemAt } from '../../read/join/problems.ts';
import { isOnlyTag, looksLikeHeading, tagAt, type TagIndex } from '../../read/join/tagIndex.ts';

/** Why a channel row can't be joined with exactly one row of settings; `undefined` where it can. */
export function joinTrouble(
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

export interface LoneSettings {
  readonly problems: readonly PlacedFact[];
  /** Their seats in voting groups: members that can't be shown to act. */
  readonly members: readonly Member[];
}

/** Settings rows that no channel was joined with. */
export function loneSettings(
  tables: Tables,
  settings: TagIndex,
  channels: TagIndex,
  joined: ReadonlySet<number>,
  read: (row: number) => SettingsRow,
): LoneSettings {
  const problems: PlacedFact[] = [];
  const members: Member[] = [];
  for (const row of settings.tagged) {
    if (joined.has(row)) continue;
    const tag = tagAt(tables.settings, row);
    const key = tagKey(tag);
    const same = settings.rowsOf(key);
    const inChannels = channels.rowsOf(key).length > 0;
    const warn = <R extends RuleId>(rule: R, values: RuleValues[R]) => {
      problems.push(problemAt(tables.settings, row, 'tag', rule, 'warning', values));
    };
    if (isOnlyTag(tables.settings, row) && looksLikeHeading(tag, inChannels)) {
      problems.push(onlyTag(tables.settings, row, tag));
      continue;
    }
    if (same.length > 1) {
      warn('duplicate-tag', { kind: 'in settings', tag, rows: same });
    } else if (inChannels) {
      warn('settings-not-joined', { tag });
    } else {
      warn('settings-without-channel', { tag, sheet: tables.channels.sheet.name });
    }
    members.push(
      unaudited(
        read(row),
        tag,
        inChannels || same.length > 1 ? 'its tag is not unique' : 'it is not in the channel list',
      ),
    );
  }
  return { problems, members };
}
