import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import type { Report } from '../../../src/audit/model/report.ts';
import { readWorkbook } from '../../../src/hosts/file/read/workbook.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import { machineName, machinesOf } from '../../../src/sheets/machines.ts';
import type { SheetModel } from '../../../src/sheets/model.ts';
import { plant } from '../plant.ts';
import { isPage, reportOf, rowsOf, textOf } from './read.ts';
import { randomReports } from './stations.ts';

const station = join(import.meta.dirname, '../../../workbooks/harbour-station.xlsx');
const reports: readonly (readonly [string, () => readonly Report[]])[] = [
  ['the demo station', () => [audit(readWorkbook('station.xlsx', readFileSync(station)))]],
  ['an invented plant', () => [reportOf(plant)]],
  ['random stations', () => randomReports(80)],
];

/** Text of a page between two of its headings. */
function part(text: string, from: RegExp, to: RegExp): string {
  const start = text.search(from);
  const rest = text.slice(start);
  const end = rest.slice(1).search(to);
  return start < 0 ? '' : end < 0 ? rest : rest.slice(0, end + 1);
}

/** The number in front of "more …" on a page; 0 where nothing was left out. */
function more(text: string, what: RegExp): number {
  return Number(what.exec(text)?.[1] ?? 0);
}

// What needs action is decided by the audit; that each surface shows all of it is the project's own design.
describe.each(reports)('what needs action of %s', (_, made) => {
  it('stands on its machine’s page, or is counted there; and in full on its annex', () => {
    let [entries, counted] = [0, 0];
    for (const report of made()) {
      const sheets = handoverSheets(report).slice(1);
      const machines = machinesOf(report);
      expect(sheets).toHaveLength(2 * machines.length);
      machines.forEach((machine, index) => {
        const [page, annex] = sheets.slice(2 * index) as [SheetModel, SheetModel];
        expect([isPage(page), isPage(annex)]).toEqual([true, false]);
        expect(rowsOf(page)[1]?.[0]?.value).toBe(machineName(machine));
        const text = textOf(page);
        const table = part(text, /^What to treat as danger$/mu, /^What still trips the machine$/mu);
        const votes = part(
          text,
          /^What still trips the machine$/mu,
          /^(?:Where each channel really trips|What to do.*)$/mu,
        );
        const channelsMore = more(table, /^(\d+) more lines? for/mu);
        const groupsMore = more(votes, /^(\d+) more voting/mu);
        const all = textOf(annex);
        const missing = { channels: new Set<string>(), groups: new Set<string>() };
        for (const { severity, subject, headline } of machine.attention) {
          expect(all).toContain(headline);
          if (severity !== 'critical') continue;
          entries++;
          const { group, tag } = subject;
          if (group !== null) {
            if (!votes.includes(` | ${group} (`)) missing.groups.add(group);
          } else if (!table.includes(`\n${tag} | `)) missing.channels.add(tag);
        }
        counted += missing.channels.size + missing.groups.size;
        expect(missing.channels.size).toBeLessThanOrEqual(channelsMore);
        expect(missing.groups.size).toBeLessThanOrEqual(groupsMore);
      });
    }
    expect(entries).toBeGreaterThan(10);
    expect(counted).toBeLessThan(entries / 2);
  });

  it('keeps a machine from being called all OK, and so does what was not read', () => {
    const seen = new Set<boolean>();
    for (const report of made()) {
      for (const machine of machinesOf(report)) {
        const page = handoverSheets(report).find(
          (model) => isPage(model) && rowsOf(model)[1]?.[0]?.value === machineName(machine),
        );
        const clean = /^(?:All \d+ channels OK|1 channel OK)\.$/mu.test(textOf(page!));
        if (machine.attention.length > 0 || report.notRead.length > 0) expect(clean).toBe(false);
        if (report.attention.length === 0) expect(clean).toBe(true);
        seen.add(clean);
        if (report.notRead.length > 0)
          expect(textOf(page!)).toContain('Not everything in the workbook was read');
      }
    }
    expect(seen.size).toBeGreaterThan(0);
  });

  it('first says which readings are past what was meant, and calls nothing by colour alone', () => {
    for (const report of made()) {
      const machines = machinesOf(report);
      const pages = handoverSheets(report).filter(isPage);
      machines.forEach(({ attention }, index) => {
        const page = pages[index]!;
        const past = attention.filter(({ code }) => code === 'past-danger' || code === 'past-alert');
        if (past[0]) expect(textOf(page).split('\n')[4]).toContain(past[0].headline);
        for (const cell of rowsOf(page).flat()) {
          if (cell?.style === undefined || !shaded.has(cell.style) || cell.value === null) continue;
          expect(cell.value).toMatch(/^[✕⊘▶?◀–✓!•‼] \S/u);
        }
      });
    }
  });
});

/** Styles that have the shade of a verdict. */
const shaded = new Set(['unreachable', 'late', 'undetermined', 'early', 'incomplete', 'within']);
