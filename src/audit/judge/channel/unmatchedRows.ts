import type { Finding, Problem } from '../../model/findings.ts';
import type { Tables } from '../../read/tables/found.ts';
import type { Member } from '../groups/members.ts';
import { placed } from '../../read/rows/complaint.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import { tagKey } from '../../read/tables/tagKey.ts';
import { unaudited } from './groupMembers.ts';
import { problemAt } from '../../read/join/problems.ts';
import { isOnlyTag, looksLikeHeading, tagAt, type TagIndex } from '../../read/join/tagIndex.ts';

/** Why a channel row can't be joined with exactly one row of settings; `undefined` where it can. */
export function joinTrouble(
  row: number,
  tag: string,
  sameTag: readonly number[],
  settingsRows: readonly number[],
  tables: Tables,
): Finding | undefined {
  const at = (rule: string, message: string) =>
    placed(tables.channels, row, { rule, severity: 'warning', message, column: 'tag' });
  if (sameTag.length > 1) {
    return at(
      'duplicate-tag',
      `Tag '${tag}' stands in rows ${list(sameTag)} of the channel list, so it can't be told which row is meant. Keep one.`,
    );
  }
  if (settingsRows.length > 1) {
    return at(
      'duplicate-tag',
      `Tag '${tag}' stands in rows ${list(settingsRows)} of the monitor settings ('${tables.settings.sheet.name}'), so it can't be told which row is meant. Keep one.`,
    );
  }
  if (settingsRows.length === 0) {
    return at(
      'channel-without-settings',
      `Tag '${tag}' has no row in the monitor settings ('${tables.settings.sheet.name}'), so its thresholds are not known. Add its settings or correct the tag.`,
    );
  }
  return undefined;
}

function list(rows: readonly number[]): string {
  const shown = rows.slice(0, 5).join(', ');
  return rows.length > 5 ? `${shown} and ${rows.length - 5} more` : shown;
}

export interface LoneSettings {
  readonly problems: readonly Problem[];
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
  const problems: Problem[] = [];
  const members: Member[] = [];
  for (const row of settings.tagged) {
    if (joined.has(row)) continue;
    const tag = tagAt(tables.settings, row);
    const key = tagKey(tag);
    const same = settings.rowsOf(key);
    const inChannels = channels.rowsOf(key).length > 0;
    const problem = (rule: string, severity: 'warning' | 'note', message: string) => {
      problems.push(problemAt(tables.settings, row, 'tag', rule, severity, message));
    };
    if (isOnlyTag(tables.settings, row) && looksLikeHeading(tag, inChannels)) {
      problem(
        'heading-or-remark',
        'note',
        `Row ${row} holds nothing but '${tag.slice(0, 80)}' in the tag column; it was taken for a heading or remark and not audited.`,
      );
      continue;
    }
    if (same.length > 1) {
      problem(
        'duplicate-tag',
        'warning',
        `Tag '${tag}' stands in rows ${list(same)} of the monitor settings, so none of them was used. Keep one.`,
      );
    } else if (inChannels) {
      problem(
        'settings-not-joined',
        'warning',
        `Tag '${tag}' stands more than once in the channel list, so these settings were not used. Keep one row there.`,
      );
    } else {
      problem(
        'settings-without-channel',
        'warning',
        `Tag '${tag}' has settings but stands in no row of the channel list ('${tables.channels.sheet.name}'), so where it really acts is not known. Add its measured sensitivity or correct the tag.`,
      );
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
