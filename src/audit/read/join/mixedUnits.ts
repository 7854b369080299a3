import type { PlacedFact } from '../../model/findings.ts';
import type { Amount } from '../rows/rowReader.ts';
import type { FoundTable } from '../tables/found.ts';
import { problemAt } from './problems.ts';
import type { ChannelRow } from '../rows/channelRow.ts';
import type { SettingsRow } from '../rows/settingsRow.ts';

interface Seen {
  readonly text: string;
  readonly row: number;
  readonly column: string;
}

/** Watches the units of a table's amounts as its rows are read, and tells where two units of one quantity meet. */
export interface UnitWatch {
  see(row: number, column: string, amount: Amount | null): void;
  problems(): PlacedFact[];
}

/** A watch over one table: millivolts per mil beside millivolts per micrometre, mil beside µm. */
export function unitWatch(table: FoundTable): UnitWatch {
  const seen = new Map<string, Seen[]>();
  return {
    see(row, column, amount) {
      // Lists that were put together each have their own units.
      if (!amount?.unit || table.origin) return;
      const { dimension, text } = amount.unit;
      const units = seen.get(dimension);
      if (!units) seen.set(dimension, [{ text, row, column }]);
      else if (!units.some((unit) => unit.text === text)) units.push({ text, row, column });
    },
    problems() {
      return [...seen.values()].flatMap((units) => {
        const [first, second] = units;
        if (!first || !second) return [];
        const values = {
          units: units.map((unit) => unit.text),
          rows: [first.row, second.row],
        } as const;
        return [problemAt(table, second.row, second.column, 'units-mixed', 'warning', values)];
      });
    },
  };
}

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
