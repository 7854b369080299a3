import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { mutatedBook, randomBook } from '../audit/stations/randomBook.ts';
import { reportOf } from '../audit/truthOfReport.ts';
import { flat, isShown, saysAllOk } from './surface.ts';
import { surfaces } from './surfaces.ts';

const seed = Number(process.env['SEED'] ?? 20_260_101);

const reports: Report[] = [];

/** The same reports for every surface: of any workbook, and of workbooks in which one danger was spoilt. */
function randomReports(): readonly Report[] {
  if (reports.length > 0) return reports;
  const collect = fc.property(fc.gen(), fc.gen(), (any, sound) => {
    for (const book of [randomBook(any), mutatedBook(sound)]) {
      const report = book && reportOf(book);
      if (report) reports.push(report);
    }
  });
  fc.assert(collect, { seed, numRuns: 150 });
  return reports;
}

describe.each(surfaces)('the $name, for any workbook', (surface) => {
  it('shows each critical entry of what needs action, with its subject', () => {
    let shown = 0;
    for (const report of randomReports()) {
      const text = flat(surface.text(report));
      for (const entry of report.attention) {
        if (entry.severity !== 'critical') continue;
        expect(isShown(surface, text, entry), `${entry.code}: ${entry.headline}`).toBe(true);
        shown++;
      }
    }
    expect(shown).toBeGreaterThan(500);
  });

  it('says that all is well only where nothing needs action and all was read', () => {
    for (const report of randomReports()) {
      const [one] = report.notRead;
      const unread = one ? [{ ...report, attention: [] }] : [];
      for (const each of [report, ...unread]) {
        if (each.attention.length + each.notRead.length === 0) continue;
        expect(saysAllOk(surface, flat(surface.text(each)))).toBe(false);
      }
    }
  });
});

it('the random workbooks have some in which nothing needs action, and some with what was not read', () => {
  const all = randomReports();
  expect(all.some(({ attention, notRead }) => attention.length + notRead.length === 0)).toBe(true);
  expect(all.some(({ notRead }) => notRead.length > 0)).toBe(true);
});
