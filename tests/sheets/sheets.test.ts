import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { defaultPolicy } from '../../src/audit/model/policy.ts';
import { verdictWords } from '../../src/audit/model/wording.ts';
import { isResultSheet } from '../../src/audit/read/tables/titleWords.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import type { ModelCell, ModelValue, SheetModel } from '../../src/sheets/model.ts';
import { finish } from '../../src/audit/model/steps.ts';
import { modelFingerprint } from '../../src/sheets/evidence/resultsFingerprint.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { book } from '../audit/book.ts';
import { hostile, plant } from './plant.ts';
import { sheetOf, workbookOf, type Listed } from './tables.ts';
import { objections } from '../hosts/file/write/validator.ts';

const now = new Date('2025-03-14T08:05:00Z');
const reportOf = (listed: readonly Listed[]): Report => audit(workbookOf(listed), { now });

function sheet(
  report: Report,
  name: string,
): { model: SheetModel; rows: readonly (readonly (ModelCell | undefined)[])[] } {
  const model = resultSheets(report).find((entry) => entry.name === name);
  if (!model) throw new Error(`no sheet ${name}`);
  return { model, rows: [...model.rows()].map((row) => row.cells) };
}

const valuesOf = (rows: readonly (readonly (ModelCell | undefined)[])[]): ModelValue[][] =>
  rows.map((row) => row.map((cell) => cell?.value ?? null));

/** The texts of a sheet, one line a row. */
const textOf = (report: Report, name: string): string =>
  valuesOf(sheet(report, name).rows)
    .map((row) => row.filter((value) => value !== null).join(' | '))
    .join('\n');

const healthy: Listed = { tag: 'V-1', measured: 200, configured: 200, alert: 3, danger: 5 };

// What must stand where is the project's own design, and what other programs hold to the Open XML SDK's validator.
describe('the four result sheets', () => {
  const report = reportOf(plant);
  const models = resultSheets(report);

  it('are named, and known again as no input of a later audit', () => {
    expect(models.map((model) => model.name)).toEqual([
      'Audit summary',
      'Audit results',
      'Audit groups',
      'Audit problems',
    ]);
    const book = readWorkbook('again.xlsx', newWorkbook(models));
    expect(book.sheets.map(isResultSheet)).toEqual([true, true, true, true]);
    const again = audit({ name: 'again', sheets: [...workbookOf(plant).sheets, ...book.sheets] }, { now });
    expect(again.summary).toEqual(report.summary);
    expect(again.problems.filter((problem) => problem.rule === 'earlier-result')).toHaveLength(4);
  });

  it('keep their word on rows, styles, formulas and areas, and carry the caution and the footer', () => {
    for (const model of models) {
      const rows = [...model.rows()];
      expect(rows).toHaveLength(model.rowCount);
      expect([...model.rows()]).toEqual(rows);
      for (const { cells } of rows) {
        expect(cells.length).toBeLessThanOrEqual(model.widths.length);
        for (const cell of cells) {
          if (!cell) continue;
          expect(Object.keys(model.styles)).toContain(cell.style);
          if (cell.formula !== undefined) expect(model.formulas[cell.formula]).toBeDefined();
        }
      }
      expect(textOf(report, model.name)).toContain(report.caution);
      expect(model.print).toMatchObject({
        landscape: true,
        footer: expect.stringMatching(/^Advisory only/) as string,
      });
      for (const area of [...(model.merges ?? []), ...(model.shades ?? []).map((shade) => shade.area)]) {
        expect(area.bottom).toBeLessThanOrEqual(model.rowCount);
        expect(area.bottom).toBeGreaterThanOrEqual(area.top);
      }
    }
  });

  it('satisfy the validator, filled and empty', () => {
    const empty = reportOf([healthy]);
    const none = audit(workbookOf([]), { now });
    for (const sheets of [models, resultSheets(empty), resultSheets(none)]) {
      expect(objections(newWorkbook(sheets))).toEqual([]);
    }
  });

  it('leave numbers unrounded and give every threshold a row in the report’s order', () => {
    const { rows } = sheet(report, 'Audit results');
    const header = valuesOf(rows)[5]!;
    const at = (name: string) => header.indexOf(name);
    const wanted = report.channels.flatMap(({ tag, thresholds }) =>
      thresholds.map(({ name, effective, verdict, setpoint, panel }) => [
        tag,
        name,
        verdictWords[verdict],
        setpoint,
        effective,
        panel,
      ]),
    );
    const found = valuesOf(rows)
      .slice(6)
      .map((row) =>
        ['Tag', 'Threshold', 'Verdict', 'Setpoint S', 'Really acts at T', 'Panel reading to treat as S'].map(
          (name) => row[at(name)] ?? null,
        ),
      );
    expect(found).toEqual(wanted);
    expect(new Set(header).size).toBe(header.length);
  });

  it('have no formula in a row that could not be worked out, only the word', () => {
    const { rows } = sheet(report, 'Audit results');
    const incomplete = rows.filter((row) =>
      row.some((cell) => cell?.value === 'not known' && cell.style === 'verdict'),
    );
    expect(incomplete).toHaveLength(
      report.channels
        .flatMap((channel) => channel.thresholds)
        .filter((threshold) => threshold.verdict === 'incomplete').length,
    );
    expect(incomplete.length).toBeGreaterThan(0);
    expect(incomplete.flat().filter((cell) => cell?.formula !== undefined)).toEqual([]);
  });

  it('lose no finding and no problem', () => {
    const rows = valuesOf(sheet(report, 'Audit problems').rows).slice(3);
    expect(report.notRead).toEqual([]);
    const wanted = [...report.channels.flatMap((channel) => channel.findings), ...report.problems];
    expect(rows.map((row) => row[2]).sort()).toEqual(wanted.map((finding) => finding.message).sort());
    const order = ['critical', 'warning', 'note'];
    const severities = rows.map((row) => order.indexOf(String(row[0])));
    expect(severities).toEqual([...severities].sort());
  });

  it('tell what is wrong with a multiplied setpoint from what is with the plain one', () => {
    const rows = valuesOf(sheet(report, 'Audit results').rows);
    const [header, ...lines] = rows.slice(5);
    const wrong = header!.indexOf('What is wrong');
    const own = lines.filter((row) => row[0] === '31-VT-4101X' && row[wrong] !== '');
    expect(own.map((row) => row[header!.indexOf('Multiplier m')])).toContain(3);
    for (const row of own)
      expect(String(row[wrong]).includes('× 3 at start-up')).toBe(row[header!.indexOf('Multiplier m')] === 3);
  });
});

describe('the summary', () => {
  it('lets no long text run on beyond the page: what is longer than a line wraps', () => {
    const { model, rows } = sheet(reportOf(plant), 'Audit summary');
    const long = rows.flat().filter((cell) => typeof cell?.value === 'string' && cell.value.length > 200);
    expect(long.length).toBeGreaterThan(3);
    for (const cell of long) expect(model.styles[cell!.style ?? '']?.wrap, String(cell!.value)).toBe(true);
  });

  it('shows no reading that was seen as the one to treat as the setpoint', () => {
    // 2.5 · 200/160 = 3.125 mil, past 3; the alert reads 3 · 160/200 = 2.4 mil, which its own line says.
    const text = textOf(
      reportOf([{ ...healthy, measured: 160, resolution: 0.1, reading: 2.5 }]),
      'Audit summary',
    );
    expect(text).toMatch(/V-1 \| alert \| warning \| 3 \| 3\.125 \| mil \| V-1 is past its alert now/u);
    expect(text).toMatch(/V-1 \| alert \| warning \| 3 \| 3\.75 \| 2\.4 \| mil \| V-1 alert is late/u);
  });

  it('says how things stand, what to act on, and how the columns were understood', () => {
    const text = textOf(reportOf(plant), 'Audit summary');
    expect(text).toContain(
      '15 channels: 4 cannot act, 3 late, 2 uncertain, 3 not known, 2 in bypass, 1 OK. 3 voting groups cannot trip.',
    );
    // By hand: 5 · 200/160 = 6.25; 5 · 160 · 0.97/200 = 3.88, in steps of 0.1 to the early side 3.8.
    expect(text).toContain(
      '31-VT-4101X | Feed pump A | danger | critical | 5 | 6.25 | 3.8 | mil | 31-VT-4101X danger is late: set 5, really trips at 6.25 mil. | Correct the chain and measure again. Until then treat 3.8 mil on the panel as danger. | Channels, row 2',
    );
    expect(text).toContain('31-VT-4101X danger acts at 6.25 mil, beyond the machine limit of 6 mil.');
    expect(text).toContain('31-VT-4101Y is in bypass: it trips nothing.');
    expect(text).toMatch(
      /31-VT-4132X danger is not known: .*measured sensitivity is missing.*Channels, row 15/,
    );
    expect(text).toContain('channel list | Channels | 1 | G | Uncertainty (%) | uncertainty | %');
    expect(text).toContain('2025-03-14 08:05 UTC');
    const counts = text
      .split('\n')
      .map((line) => line.split(' | '))
      .filter(([first = '', count = '']) => first in shown && /^\d+$/u.test(count));
    expect(counts.map(([, count]) => Number(count))).toEqual([4, 3, 2, 0, 3, 1, 2, 15, 3, 0]);
  });

  const shown: Readonly<Record<string, true>> = Object.fromEntries(
    [...Object.values(verdictWords), 'in bypass', 'channels in all', 'cannot trip', 'not read'].map(
      (word) => [word, true],
    ),
  );

  it('lists a danger beyond its limit though it is within the tolerance', () => {
    // By hand: 5 · 200/195 = 5.128; 5 · 195/200 = 4.875, in two digits to the early side 4.8.
    const text = textOf(reportOf([{ ...healthy, measured: 195, limit: 5.05 }]), 'Audit summary');
    expect(text).toMatch(
      /V-1 \| danger \| critical \| 5 \| 5\.128205\d* \| 4\.8 \| mil \| V-1 danger acts at 5\.13 mil, beyond the machine limit of 5\.05 mil\./,
    );
    const clean = textOf(reportOf([{ ...healthy, limit: 5.2 }]), 'Audit summary');
    expect(clean).toContain('The one channel is OK.');
    expect(clean).toContain('Nothing needs action.');
  });

  it('goes by what was left: late now is late, corrected is OK', () => {
    const late = textOf(reportOf([{ ...healthy, asLeft: 160 }]), 'Audit summary');
    expect(late).toContain('1 channel: 1 late.');
    expect(late).toContain('V-1 danger is late: set 5, really trips at 6.25 mil.');
    const corrected = textOf(reportOf([{ ...healthy, measured: 160, asLeft: 200 }]), 'Audit summary');
    expect(corrected).not.toContain('is late');
    expect(corrected).toContain('corrected | 1 | ');
  });

  it('has what was not read in a part of its own, and calls nothing OK then', () => {
    const { name, sheets } = workbookOf([{ ...healthy, fullScale: 10 }]);
    const [channels, monitor] = sheets;
    const misspelled = {
      ...monitor!,
      rows: monitor!.rows.map((row) => row.map((cell) => (cell === 'Full scale' ? 'Full scael' : cell))),
    };
    const report = audit({ name, sheets: [channels!, misspelled] }, { now });
    expect(report.notRead).toHaveLength(1);
    const text = textOf(report, 'Audit summary');
    expect(text).toContain('column | full scale | critical | Full scael | Monitor, G1');
    expect(text).toContain('1 channel: 1 OK. 1 thing was not read.');
    expect(text).not.toContain('Nothing needs action');
    expect(textOf(report, 'Audit problems')).toContain('Full scael');
  });

  it('shows all that is critical and at most 25 things in all beyond that, and says how many more there are', () => {
    const many = Array.from({ length: 20 }, (_, index): Listed => ({
      ...healthy,
      tag: `V-${index}`,
      measured: 150,
    }));
    const actions = (listed: readonly Listed[]) =>
      textOf(reportOf(listed), 'Audit summary')
        .split('\n')
        .filter((line) => line.includes('is late: '));
    expect(actions(many).map((line) => line.split(' | ')[1])).toEqual([
      ...Array<string>(20).fill('danger'),
      ...Array<string>(5).fill('alert'),
    ]);
    expect(textOf(reportOf(many), 'Audit summary')).toContain('And 15 more');
    const more = many.flatMap((one) => [one, { ...one, tag: `${one.tag}B` }]);
    expect(actions(more)).toHaveLength(40);
  });

  it('states every part of the policy', () => {
    const leaves = (part: unknown): number =>
      typeof part !== 'object' || part === null || 'value' in part
        ? 1
        : Object.values(part).reduce((sum: number, inner) => sum + leaves(inner), 0);
    const text = textOf(reportOf([healthy]), 'Audit summary');
    const policy = text.slice(text.indexOf('Policy that was applied'), text.indexOf('Evidence\n'));
    expect(policy.trim().split('\n')).toHaveLength(leaves(defaultPolicy) + 2);
    for (const value of [
      '5 %',
      'guarded',
      '730 days',
      '200 mV/mil',
      '100 mV/(in/s)',
      '80 mil',
      '−18 V',
      '3 s',
    ])
      expect(policy).toContain(value);
  });
});

describe('text from cells', () => {
  it('stays the text it is on every sheet', () => {
    const listed = hostile.flatMap((tag, index): Listed[] => [
      {
        tag,
        machine: tag,
        location: tag,
        measured: 150,
        configured: 200,
        alert: 3,
        danger: 5,
        group: tag,
        voting: '1oo1',
      },
      { tag: `B-${index}`, machine: tag, configured: 200, alert: 3, danger: 5 },
    ]);
    const report = reportOf(listed);
    expect(report.channels.map((channel) => channel.tag).sort()).toEqual(listed.map((one) => one.tag).sort());
    const models = resultSheets(report);
    const book = readWorkbook('hostile.xlsx', newWorkbook(models));
    for (const model of models) {
      const sheetRead = book.sheets.find((entry) => entry.name === model.name);
      [...model.rows()].forEach((row, index) => {
        row.cells.forEach((cell, column) => {
          if (typeof cell?.value !== 'string' || cell.value === '' || cell.value.length > 32_767) return;
          expect(sheetRead?.rows[index]?.[column]).toBe(cell.value);
        });
      });
    }
    for (const name of ['Audit results', 'Audit groups']) {
      const texts = new Set(valuesOf(sheet(report, name).rows).flat());
      for (const text of hostile) expect(texts).toContain(text);
    }
  });

  it('cannot pass for the title of a result sheet elsewhere', () => {
    expect(isResultSheet(sheetOf('Channels', [['Tripdrift audits we had'], ['Tag']]))).toBe(true);
    expect(isResultSheet(sheetOf('Channels', [['Audit by Tripdrift'], ['Tag']]))).toBe(false);
  });
});

describe('groups', () => {
  it('call a group early that acts by an early member', () => {
    // 5 · 200/250 = 4 mil, 20 % below 5; either of two acts at the lower one.
    const group = { group: 'B1', voting: '1oo2' };
    const report = reportOf([
      { ...healthy, ...group, measured: 250 },
      { ...healthy, ...group, tag: 'V-2' },
    ]);
    const rows = valuesOf(sheet(report, 'Audit groups').rows);
    const row = rows.find((entry) => entry[0] === 'B1' && entry[5] === 'danger');
    expect(row?.slice(6, 10)).toEqual(['early', 'mil', 5, 4]);
  });

  it('show each member with where it acts, or why it cannot', () => {
    const values = valuesOf(sheet(reportOf(plant), 'Audit groups').rows);
    const row = values.find((entry) => entry[0] === 'Compressor B NDE' && entry[5] === 'danger');
    expect(row?.slice(1, 12)).toEqual([
      'Compressor B',
      '2oo3',
      2,
      2,
      'danger',
      'cannot trip',
      'mil',
      4,
      null,
      'cannot trip',
      'no',
    ]);
    expect(row?.[12]).toContain('Compressor B NDE (2oo3) cannot trip');
    expect(row?.slice(14, 18)).toEqual([
      null,
      '31-VT-4102Y in bypass: no vote (not said; ask). Left: 2oo2.',
      4.1,
      'no',
    ]);
    expect(row?.slice(27)).toEqual([
      '31-VT-4102X',
      800 / 190,
      '31-VT-4102Y',
      'in bypass',
      '31-VT-4102Z',
      'set beyond the linear range',
      4,
      4,
      4,
    ]);
  });

  it('stand for the start-up multiplier too, worst first, with what was found beside', () => {
    const listed: readonly Listed[] = [
      { ...healthy, tag: 'A-1', machine: 'M', group: 'Good', voting: '1oo1' },
      {
        ...healthy,
        tag: 'B-1',
        machine: 'M',
        measured: 160,
        asLeft: 200,
        multiplier: 3,
        fullScale: 10,
        group: 'Multiplied',
        voting: '1oo1',
      },
    ];
    const rows = valuesOf(sheet(reportOf(listed), 'Audit groups').rows).slice(4);
    // 3 · 5 = 15 mil lies above 10; 5 mil acted at 6.25 as found and acts at 5 as left.
    expect(rows[0]?.slice(0, 11)).toEqual([
      'Multiplied',
      'M',
      '1oo1',
      1,
      1,
      'danger × 3',
      'cannot trip',
      'mil',
      15,
      null,
      'cannot trip',
    ]);
    const plain = rows.find((row) => row[0] === 'Multiplied' && row[5] === 'danger');
    expect([plain?.[9], plain?.[23], plain?.[24], plain?.[25]]).toEqual([5, 6.25, 'yes', 'B-1']);
  });

  it('of more members than columns are shown as worked out, without formulas', () => {
    const many = Array.from({ length: 30 }, (_, index): Listed => ({
      ...healthy,
      tag: `V-${index}`,
      group: 'All',
      voting: '2oo30',
    }));
    const { model, rows } = sheet(reportOf(many), 'Audit groups');
    const danger = rows[4]!;
    expect(danger.filter((cell) => cell?.formula !== undefined)).toEqual([]);
    expect(danger.slice(0, 27).map((cell) => cell?.value ?? null)).toEqual([
      'All',
      null,
      '2oo30',
      2,
      2,
      'danger',
      'OK',
      'mil',
      5,
      5,
      'yes',
      'no',
      null,
      null,
      many.map((one) => one.tag).join(', '),
      ...Array<null>(11).fill(null),
      6,
    ]);
    expect(model.widths).toHaveLength(27 + 3 * 24);
  });

  it('are said to be none where none is named', () => {
    expect(textOf(reportOf([healthy]), 'Audit groups')).toContain('No voting group is named');
  });
});

describe('the rows of the results', () => {
  it('are made once in a file, though the summary before them carries their fingerprints', () => {
    const report = reportOf([healthy]);
    let asked = 0;
    const watched = report.channels.map((channel) =>
      Object.defineProperty({ ...channel }, 'location', {
        get: () => {
          asked++;
          return channel.location;
        },
      }),
    );
    const models = resultSheets({ ...report, channels: watched });
    asked = 0;
    const bytes = newWorkbook(models);
    expect(asked).toBe(2);
    const summary = readWorkbook('once.xlsx', bytes).sheets[0]!;
    const printed = summary.rows.find(([first]) => first === 'Fingerprints of sheets')?.[2];
    const [results] = resultSheets(report).slice(1);
    expect(printed).toContain(finish(modelFingerprint(results!)));
  });
});

describe('the rows of a large audit', () => {
  it('come one at a time', () => {
    const listed = Array.from({ length: 3000 }, (_, index): Listed => ({ ...healthy, tag: `V-${index}` }));
    const { model } = { model: resultSheets(reportOf(listed))[1]! };
    expect(model.rowCount).toBe(6 + 2 * 3000);
    const rows = model.rows()[Symbol.iterator]();
    expect(rows.next().value).not.toBe(rows.next().value);
    expect(Array.isArray(model.rows())).toBe(false);
  });
});

it('a sentence stands once where one table is both lists', () => {
  const one = book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      ['V-1', 160, 200, 3, 5],
    ],
  ]);
  const text = textOf(audit(one, { now }), 'Audit results');
  expect(text.split('V-1 danger is late: set 5, really trips at 6.25 mil.')).toHaveLength(2);
});
