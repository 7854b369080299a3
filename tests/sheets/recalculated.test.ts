import { verdicts, type ThresholdResult } from '../../src/audit/model/threshold.ts';
import { verdictWords } from '../../src/audit/model/wording.ts';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parsePolicy, type Policy } from '../../src/audit/model/policy.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { auditedOn } from '../demo/files.ts';
import { recalculate } from '../gnumeric.ts';
import { describeWithLibreOffice } from '../libreoffice.ts';
import { describeWithTool } from '../tool.ts';
import { plant, plantAsLeft } from './plant.ts';
import { cellsOf, compare, typedOver } from './recalculation.ts';
import { sweep } from './sweep.ts';
import { workbookOf, type Listed } from './tables.ts';
import { plain, recalculated } from './workbookFiles.ts';

const folder = mkdtempSync(join(tmpdir(), 'sheets-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function auditOf(listed: readonly Listed[], policy?: Policy): Report {
  const now = new Date('2025-03-14T08:05:00Z');
  return audit(workbookOf(listed), policy ? { policy, now } : { now });
}

// Source: LibreOffice calculates the formulas, which are those of the method, without any result to copy; that they agree
// with the audit checks both. Grade: an independent peer.
describeWithLibreOffice('formulas of the result sheets, calculated by LibreOffice', () => {
  it.each([
    ['an invented plant with one of everything', plant, undefined],
    ['the plant by the simple rule', plant, parsePolicy({ rule: 'simple', tolerance: 0.03 })],
    ['the plant as it was left', plantAsLeft, undefined],
    ['sensitivities on and about every limit', sweep, undefined],
    ['the same by the simple rule', sweep, parsePolicy({ rule: 'simple' })],
  ])('give what the audit says for %s', (_, listed, policy) => {
    const models = resultSheets(auditOf(listed, policy));
    const { formulas, differences } = compare(models, recalculated(models, folder));
    expect(differences).toEqual([]);
    expect(formulas).toBeGreaterThan(10 * listed.length);
  });

  it('for every verdict there is', () => {
    const found = auditOf(sweep).channels.flatMap(({ thresholds }) =>
      thresholds.map(({ verdict }) => verdict),
    );
    // Positions without a measured zero are incomplete, or late by the ratio of the sensitivities alone.
    expect([...new Set(found)].sort()).toEqual([...verdicts].sort());
  });

  it('and a wrong result beside a formula would be seen', () => {
    const models = resultSheets(auditOf(plant));
    const wrong = models.map((model) =>
      typedOver(model, (cell) =>
        cell.formula === undefined
          ? cell.value
          : typeof cell.value === 'number'
            ? cell.value + 1e-9 * Math.max(1, Math.abs(cell.value))
            : `${String(cell.value)}?`,
      ),
    );
    const { formulas, differences } = compare(wrong, recalculated(models, folder));
    expect(differences).toHaveLength(formulas);
  });

  it('follow the policy and the inputs when they are typed over', () => {
    const policy = parsePolicy({ tolerance: 0.12, rule: 'simple', linearVolts: { near: -0.5, far: -19 } });
    const changed = plant.map((one) =>
      one.measured === 160 ? { ...one, measured: 185, uncertainty: 7 } : one,
    );
    // Sorting differs between the audits, and the linear reach is an input here: lines are found by tag, threshold and
    // multiplier, and channels judged by their reach are left out.
    const channels = auditOf(changed, policy).channels.filter(
      (channel) => channel.inputs.linearReach === null || channel.sensitivity.measured === 185,
    );
    const wanted = new Map<string, ThresholdResult>(
      channels.flatMap(({ tag, thresholds }) =>
        thresholds.map(
          (threshold) => [`${tag} ${threshold.name} ${threshold.multiplier}`, threshold] as const,
        ),
      ),
    );
    const [, results] = resultSheets(auditOf(plant));
    const header = [...results!.rows()][5]!.cells.map((cell) => cell?.value);
    const column = (name: string) => header.indexOf(name) + 1;
    const typed = typedOver(results!, (cell, row, at) => {
      if (row === 4 && at === 4) return 0.12;
      if (row === 4 && at === 5) return 'simple';
      if (row === 4 && at === 6) return -0.5;
      if (row === 4 && at === 7) return -19;
      if (cell.value === 160 && at === column('Measured sensitivity Km')) return 185;
      return cell.value;
    });
    const book = recalculated([typed], folder);
    let compared = 0;
    for (const row of cellsOf(book, 'Audit results').slice(6)) {
      const at = (name: string) => plain(row[column(name) - 1]);
      const threshold = wanted.get(
        `${String(at('Tag'))} ${String(at('Threshold'))} ${String(at('Multiplier m'))}`,
      );
      if (!threshold) continue;
      compared++;
      const place = `${String(at('Tag'))} ${threshold.name}`;
      expect(at('Verdict'), place).toBe(verdictWords[threshold.verdict]);
      const effective = at('Really acts at T');
      if (threshold.effective === null) expect(effective, place).toBeNull();
      else expect(Number(effective) / threshold.effective, place).toBeCloseTo(1, 12);
    }
    expect(compared).toBeGreaterThan(20);
  });
});

// Source: Gnumeric, a second program that shares no code with the first. Its normal distribution ends in other digits.
describeWithTool('Gnumeric', 'formulas of the result sheets, calculated by Gnumeric', () => {
  it.each([
    ['the demo station', auditedOn('2026-09-01')],
    ['an invented plant with one of everything', auditOf(plant)],
    ['the plant as it was left', auditOf(plantAsLeft)],
    ['sensitivities on and about every limit', auditOf(sweep)],
  ])('give what the audit says for %s', (_, report) => {
    const models = resultSheets(report);
    const { formulas, differences } = compare(models, recalculated(models, folder, recalculate), 1e-11);
    expect(differences).toEqual([]);
    expect(formulas).toBeGreaterThan(10 * report.channels.length);
  });
});
