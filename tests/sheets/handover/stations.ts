import fc from 'fast-check';
import { audit } from '../../../src/audit/audit.ts';
import { parsePolicy } from '../../../src/audit/model/policy.ts';
import type { Report } from '../../../src/audit/model/report.ts';
import { randomBook } from '../../audit/stations/randomBook.ts';
import { sheetOf } from '../tables.ts';

/** Reports on random stations with every kind of channel, fault and slip; those that the audit refuses left out. */
export function randomReports(count: number): readonly Report[] {
  const reports: Report[] = [];
  const collect = fc.property(fc.gen(), (gen) => {
    const { pages, policy, mayBeRefused } = randomBook(gen);
    if (mayBeRefused) return;
    const workbook = { name: 'station.xlsx', sheets: pages.map(({ name, rows }) => sheetOf(name, rows)) };
    const { tolerance, rule, coverage } = policy;
    reports.push(
      audit(workbook, {
        now: new Date('2025-03-14T08:05:00Z'),
        policy: parsePolicy({ tolerance, rule, coverage }),
      }),
    );
  });
  fc.assert(collect, { seed: 20_260_311, numRuns: count });
  return reports;
}
