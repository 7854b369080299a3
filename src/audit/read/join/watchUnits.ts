import type { ChannelRow } from '../rows/channelRow.ts';
import type { SettingsRow } from '../rows/settingsRow.ts';
import type { UnitWatch } from './mixedUnits.ts';

/** Lets a watch see the sensitivities and levels of a row of the channel list. */
export function watchChannelRow(watch: UnitWatch, row: ChannelRow): void {
  watch.see(row.row, 'measured', row.measured);
  watch.see(row.row, 'referenceSensitivity', row.referenceSensitivity);
  watch.see(row.row, 'asLeftSensitivity', row.asLeftSensitivity);
  watch.see(row.row, 'limit', row.limit);
  watch.see(row.row, 'reading', row.reading);
}

/** Lets a watch see the sensitivity and levels of a row of the monitor settings. */
export function watchSettingsRow(watch: UnitWatch, row: SettingsRow): void {
  watch.see(row.row, 'configured', row.configured);
  watch.see(row.row, 'alert', row.alert);
  watch.see(row.row, 'danger', row.danger);
  watch.see(row.row, 'fullScale', row.fullScale);
  watch.see(row.row, 'counterAlert', row.counterAlert);
  watch.see(row.row, 'counterDanger', row.counterDanger);
}
