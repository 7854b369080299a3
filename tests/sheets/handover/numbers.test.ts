import { describe, expect, it } from 'vitest';
import { line, rowsOf, sheetOf, textOf } from './read.ts';
import type { Listed } from '../tables.ts';

const late: Listed = { tag: 'V-1', machine: 'M', measured: 160, configured: 200, alert: 3, danger: 5 };

// Source: worked by hand beside each check. 1 mil = 25.4 µm, 1 in/s = 25.4 mm/s exactly (international inch, 1959).
describe('numbers of a hand-over sheet, against hand-worked ones', () => {
  it('5 mil at 200 configured, 160 measured acts at 6.25 mil and shows 4 mil', () => {
    const sheet = sheetOf(late);
    // 5 · 200/160 = 6.25; 6.25 − 5 = 1.25 = 25 % of 5; 5 · 160/200 = 4; 5 · 25.4 = 127; 6.25 · 25.4 = 158.75
    expect(line(sheet, 'danger')).toEqual([
      'danger',
      5,
      6.25,
      '–',
      '–',
      1.25,
      0.25,
      4,
      'mil p-p',
      127,
      158.75,
      'µm',
    ]);
    // 3 · 1.25 = 3.75; 3 · 0.8 = 2.4; 76.2; 95.25
    expect(line(sheet, 'alert')[2]).toBeCloseTo(3.75, 12);
    expect(line(sheet, 'alert')[7]).toBeCloseTo(2.4, 12);
    expect(line(sheet, 'alert')[9]).toBeCloseTo(76.2, 12);
    expect(textOf(sheet)).toContain('Treat 4 mil on the panel as the 5 mil limit.');
    expect(textOf(sheet)).toContain('Danger acts only at 6.25 mil instead of 5 mil: 1.25 mil (25 %) late.');
  });

  it('an uncertainty of 3 % gives where it acts at least and at most, and a number to treat as the limit', () => {
    const sheet = sheetOf({ ...late, uncertainty: 3 });
    const [, , , low, high] = line(sheet, 'danger');
    expect(low).toBeCloseTo(6.25 / 1.03, 12);
    expect(high).toBeCloseTo(6.25 / 0.97, 12);
    // 4 · 0.97 = 3.88
    expect(textOf(sheet)).toContain('(3.88 mil with its uncertainty of 3 % counted in full)');
  });

  it('the number to treat as the limit is rounded to the early side', () => {
    // 5 · 159.8/200 = 3.995 → 3.99, though 4.00 is nearer
    expect(textOf(sheetOf({ ...late, measured: 159.8 }))).toContain(
      'Treat 3.99 mil on the panel as the 5 mil limit.',
    );
  });

  it('a moved zero shifts what the panel shows, also past zero', () => {
    const axial: Listed = {
      ...late,
      kind: 'axial',
      measured: 150,
      alert: 15,
      danger: 20,
      counterAlert: 15,
      counterDanger: 20,
      zeroConfigured: -9,
      zeroMeasured: -10,
      direction: 'toward',
    };
    const sheet = sheetOf(axial);
    // Z = (V0c − V0m)·1000/Km = 1000/150 = 6.6667 mil; T = 20 · 200/150 + Z = 33.3333; panel (20 · 150 − 1000)/200 = 10
    const danger = line(sheet, 'danger');
    expect(danger[2]).toBeCloseTo(100 / 3, 12);
    expect(danger[7]).toBeCloseTo(10, 12);
    // T = −26.6667 + 6.6667 = −20, so on its setting; panel (−3000 − 1000)/200 = −20
    const counter = line(sheet, 'counter danger');
    expect(counter[2]).toBeCloseTo(-20, 12);
    expect(counter[5]).toBeCloseTo(0, 12);
    expect(counter[7]).toBeCloseTo(-20, 12);
    expect(textOf(sheet)).toContain('Treat 10 mil on the panel as the 20 mil limit.');
    const past = sheetOf({ ...axial, measured: 200, zeroConfigured: -10, zeroMeasured: -7.5 });
    // Moved by 2.5 V = 12.5 mil: −15 really shows −2.5, −20 shows −7.5; the other way it acts 12.5 mil early
    expect(line(past, 'counter alert')[7]).toBeCloseTo(-2.5, 12);
    expect(textOf(past)).toContain('Treat −7.5 mil on the panel as the −20 mil limit.');
  });

  it('velocity stands in both units, acceleration in its own alone', () => {
    const velocity = sheetOf({
      ...late,
      kind: 'velocity',
      sensitivityUnit: 'mV/(in/s)',
      unit: 'in/s',
      measured: 80,
      configured: 100,
      alert: 0.3,
      danger: 0.5,
    });
    // 0.5 · 100/80 = 0.625; 0.5 · 25.4 = 12.7; 0.625 · 25.4 = 15.875
    const [, , acts, , , , , , , set, other, unit] = line(velocity, 'danger');
    expect([acts, set, other, unit]).toEqual([0.625, 12.7, 15.875, 'mm/s']);
    const metric = sheetOf({
      ...late,
      sensitivityUnit: 'mV/µm',
      unit: 'µm',
      measured: 6,
      configured: 7.5,
      alert: 50.8,
      danger: 127,
    });
    expect(line(metric, 'danger').slice(8)).toEqual(['µm p-p', 5, 6.25, 'mil']);
    const acceleration = sheetOf({
      ...late,
      kind: 'acceleration',
      sensitivityUnit: 'mV/g',
      unit: 'g',
      measured: 80,
      configured: 100,
    });
    expect(line(acceleration, 'danger').slice(9)).toEqual(
      [null, null, null].slice(0, line(acceleration, 'danger').length - 9),
    );
  });

  it('time at the present growth, and the group’s vote', () => {
    const group = { group: 'G', voting: '2oo2' };
    const sheet = sheetOf(
      { ...late, growth: 0.01, reading: 2, ...group },
      { ...late, tag: 'V-2', measured: 200, ...group },
    );
    // (6.25 − 5)/0.01 = 125 days; real level 2 · 1.25 = 2.5, (6.25 − 2.5)/0.01 = 375 days to go; acts at 6.25
    const time = line(sheet, 'V-1', 'danger', '0.01 mil a day');
    expect(time[6]).toBeCloseTo(125, 9);
    expect(time[7]).toBeCloseTo(375, 9);
    expect(time[9]).toBeCloseTo(6.25, 9);
    // 2oo2 acts at the second smallest of 5 and 6.25
    expect(line(sheet, 'G', '2oo2', 'danger').slice(5, 9)).toEqual([5, 6.25, 'mil', 'V-1']);
  });

  it('an interim setpoint stands with its step, its room and the warning', () => {
    // 5 · 175/200 = 4.375 → 4.3 in steps of 0.1; 4.3 − 4.5 = −0.2; alert 3 · 0.875 = 2.625 → 2.6; 2.6 − 4.5 = −1.9
    const sheet = sheetOf({ ...late, measured: 175, resolution: 0.1, reading: 4.5 });
    const at = rowsOf(sheet).findIndex((cells) => cells[0]?.value === 'V-1' && cells[1]?.value === 'danger');
    const values = rowsOf(sheet)[at]!.map((cell) => cell?.value ?? null);
    expect(values.slice(2, 6)).toEqual([5, 4.3, 0.1, 4.5]);
    expect(values[6]).toBeCloseTo(-0.2, 12);
    expect(values[8]).toBe('Lies at or below what the panel shows now: trips on entry.');
    expect(textOf(sheet)).toContain('change procedure of the site');
    const blank = textOf(sheetOf(late));
    expect(blank).toContain('No present reading: read the panel before anything is entered. Not rounded');
    expect(textOf(sheetOf({ ...late, measured: 240 }))).toContain('None is offered');
  });

  it('a number that is missing is never a zero', () => {
    const sheets = [
      sheetOf(late),
      sheetOf({ ...late, fullScale: 4 }),
      sheetOf({ ...late, danger: null }),
      sheetOf({ ...late, measured: null }),
      sheetOf({ ...late, gap: -3, bypass: true }),
    ];
    for (const sheet of sheets)
      expect(
        rowsOf(sheet)
          .flat()
          .filter((cell) => cell?.value === 0),
      ).toEqual([]);
    expect(line(sheets[1]!, 'danger').slice(2, 8)).toEqual(['never', '–', '–', '–', '–', '–']);
    expect(textOf(sheets[1]!)).not.toContain('Treat');
    expect(textOf(sheets[3]!)).toMatch(
      /V-1 \| .*measured sensitivity is missing.*\(Channels, row 2, column E\)/u,
    );
  });
});

// Source: worked by hand: 5 · 200/198 = 5.0505; 5 · 200/170 = 5.882, panel 5 · 170/200 = 4.25.
describe('a channel that was measured again as left', () => {
  it('stands as found and as left, without advice that holds no more', () => {
    const sheet = sheetOf({ ...late, asLeft: 198, reading: 2, resolution: 0.1 });
    const text = textOf(sheet);
    expect(text).toContain('As found: Danger acts only at 6.25 mil instead of 5 mil');
    expect(text).toContain(
      'As left it acts within the tolerance: alert at 3.03 mil, set for 3 mil; danger at 5.051 mil',
    );
    expect(text).toContain(
      '−20 %. As left measured 198 mV/mil, its uncertainty not given: −1 %. The panel shows',
    );
    expect(text).not.toMatch(/Treat|Interim setpoint|Correct the measuring chain of/u);
    expect(line(sheet, 'danger, as left')[2]).toBeCloseTo(1000 / 198, 12);
    expect(text).toContain('1 channel was measured again as left: 1 within the tolerance.');
    const still = sheetOf({ ...late, asLeft: 170 });
    expect(textOf(still)).toContain('As left: Danger acts only at 5.882 mil');
    expect(textOf(still)).toContain('Treat 4.25 mil on the panel as the 5 mil limit');
    expect(textOf(still)).toContain('Correct the measuring chain of V-1.');
  });

  // Source: worked by hand: 160 of 200 is late as found, 198 within as left; 199 is within as found, 170 late as left.
  it('stands by its worst state now: one that was made worse before one that was cured', () => {
    const cured = { ...late, tag: 'V-1', asLeft: 198 };
    const worse = { ...late, tag: 'V-2', measured: 199, asLeft: 170 };
    const sheet = sheetOf(cured, worse);
    const heads = textOf(sheet)
      .split('\n')
      .filter((text) => / as left$/u.test(text) && text.startsWith('V-'));
    expect(heads.map((text) => text.split(' | ').at(0))).toEqual(['V-2', 'V-1']);
    expect(heads[0]).toMatch(/late as left$/u);
    expect(heads[1]).toMatch(/within as left$/u);
    const drawn = rowsOf(sheet).flatMap((cells) => {
      const at = cells.findIndex((cell) => cell?.value === 'V-2 danger');
      return at < 0 ? [] : [cells[at + 2]?.value];
    });
    expect(drawn).toEqual([expect.closeTo(1000 / 170, 12)]);
  });
});
