import { describe, expect, it } from 'vitest';
import type { Listed } from '../tables.ts';
import { annexOf, line, pageOf, rowsOf, textOf } from './read.ts';

const late: Listed = {
  tag: 'V-1',
  machine: 'M',
  location: 'bearing 1',
  measured: 160,
  configured: 200,
  alert: 3,
  danger: 5,
  resolution: 0.1,
};
const fine: Listed = { ...late, tag: 'V-2', measured: 200 };

// Source: worked by hand beside each check. 1 mil = 25.4 µm, 1 in/s = 25.4 mm/s exactly (international inch, 1959).
describe('numbers of a control-room page, against hand-worked ones', () => {
  it('5 mil at 200 configured, 160 measured trips at 6.25 mil and is shown as 4 mil', () => {
    // 5 · 200/160 = 6.25; 5 · 160/200 = 4; 3 · 160/200 = 2.4; 2 · 200/160 = 2.5, below the alert of 3
    const page = pageOf({ ...late, reading: 2, limit: 6.5 });
    expect(line(page, 'V-1', 'bearing 1')).toEqual([
      'V-1',
      'bearing 1',
      expect.closeTo(2.4, 12),
      4,
      2,
      5,
      6.25,
      6.5,
      '▶ late',
    ]);
    expect(textOf(page)).toContain('Do not rely on V-1: it trips late.');
  });

  it('the panel reading counts the uncertainty and is rounded to the early side, at the panel’s step', () => {
    // 4 · 0.97 = 3.88 → 3.8; 2.4 · 0.97 = 2.328 → 2.3; 6.25/0.97 = 6.443
    const page = pageOf({ ...late, uncertainty: 3, limit: 6.3 });
    const [, , alert, danger] = line(page, 'V-1');
    expect([alert, danger]).toEqual([2.3, 3.8]);
    // 6.25 within 6.3, 6.443 beyond it
    expect(line(page, 'V-1').at(-1)).toBe('▶ late, may be beyond limit');
  });

  it('an uncertain channel shows from where to where it trips', () => {
    // 5 · 200/190 = 5.263; /1.04 = 5.061, /0.96 = 5.482: neither within 5 % nor outside it
    const page = pageOf({ ...late, measured: 190, uncertainty: 4 });
    expect(line(page, 'V-1')).toContain('5.06–5.48');
    expect(line(page, 'V-1').at(-1)).toBe('? uncertain');
  });

  it('a reading that is past what was meant comes first', () => {
    // 2.5 · 200/160 = 3.125, past the alert of 3 though the panel shows 2.5
    const page = pageOf({ ...late, reading: 2.5 });
    expect(textOf(page)).toMatch(/\nV-1 is past its alert now: panel 2\.5, really 3\.1[23] mil/u);
    expect(line(page, 'V-1')[4]).toMatch(/^2\.5: past ALERT, really 3\.1[23]$/u);
    expect(textOf(page)).toMatch(/\n☐ \| 1\. V-1: Treat it as an alert now/u);
  });

  it('a moved zero shifts both directions, each in a line of its own where it is wrong', () => {
    const page = pageOf({
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
      resolution: 0.5,
    });
    // Z = (V0c − V0m)·1000/Km = 6.667 mil; T = 20 · 200/150 + Z = 33.33; panel (20 · 150 − 1000)/200 = 10, (15 · 150 − 1000)/200 = 6.25 → 6
    const [, , alert, danger, , set, acts] = line(page, 'V-1', 'bearing 1');
    expect([alert, danger, set]).toEqual([6, 10, 20]);
    expect(acts).toBeCloseTo(100 / 3, 12);
    // T = −26.667 + 6.667 = −20: on its setting. Its alert: −15 · 200/150 + 6.667 = −13.33: early, panel (−2250 − 1000)/200 = −16.25, which the monitor never lets it
    // come to: it alarms at −15 on the panel.
    expect(line(page, 'V-1', 'counter direction, bearing 1').slice(2, 4)).toEqual(['as set', -20]);
  });

  it('what can’t be told is a word, never a zero', () => {
    const pages = [
      pageOf({ ...late, configured: null }),
      pageOf({ ...late, fullScale: 4 }),
      pageOf({ ...late, danger: null }),
      pageOf({ ...late, measured: null }),
      pageOf({ ...late, gap: -3, bypass: true }),
    ];
    for (const page of pages)
      expect(
        rowsOf(page)
          .flat()
          .filter((cell) => cell?.value === 0),
      ).toEqual([]);
    expect(line(pages[0]!, 'V-1')).toContain('none: not known');
    expect(line(pages[1]!, 'V-1')).toContain('cannot trip');
    expect(line(pages[3]!, 'V-1').at(-1)).toBe('– not known');
    expect(line(pages[4]!, 'V-1')).toContain('in bypass');
  });

  it('a vote says where it trips, by whom, and on whom not to count', () => {
    // 1oo2 trips at the smaller of 6.25 and 5, 2oo2 at the larger
    const group = { group: 'Bearing 1', voting: '1oo2' };
    expect(textOf(pageOf({ ...late, ...group }, { ...fine, ...group }))).toContain(
      '! reduced | Bearing 1 (either of two): trips at 5 mil by V-2. Do not count on V-1.',
    );
    const both = { ...group, voting: '2oo2' };
    expect(textOf(pageOf({ ...late, ...both }, { ...fine, ...both }))).toContain(
      '▶ late | Bearing 1 (both of two): trips late, at 6.25 mil by V-1.',
    );
    // V-2 acts long before: the vote's interval is V-1's, 6.25/1.04 = 6.01 to 6.25/0.96 = 6.51.
    expect(textOf(pageOf({ ...late, ...both, uncertainty: 4 }, { ...fine, ...both }))).toContain(
      'Bearing 1 (both of two): trips late, at 6.25 mil (between 6.01 and 6.51 mil) by V-1.',
    );
    expect(textOf(pageOf({ ...late, ...both, bypass: true }, { ...fine, ...both }))).toContain(
      '✕ CANNOT TRIP | Bearing 1 (both of two): CANNOT TRIP because of V-1 (in bypass). Do not count on V-1.',
    );
  });

  // By hand: 228 for 200 mV/mil. The panel would show 5·228/200 = 5.7 mil at a real 5, but the monitor trips at 5 on it.
  it('an early channel has no reading above its own setpoint, and a group that it trips is early', () => {
    const early = pageOf({ ...fine, measured: 228, group: 'Bearing 1', voting: '1oo1' });
    expect(line(early, 'V-2').slice(2, 4)).toEqual(['as set', 'as set']);
    expect(textOf(early)).not.toContain('5.7');
    expect(textOf(early)).toContain('◀ early | Bearing 1 (alone): trips early, at 4.39 mil by V-2.');
  });

  // By hand: V-1 acts at 5·200/160 = 6.25 mil. It decides the late vote; V-3 is as late and still not to be counted on.
  it('a late vote names those not to count on, but not again the one by which it is late', () => {
    const group = { group: 'Bearing 1', voting: '2oo3' };
    const worse = { ...late, tag: 'V-3', measured: 150 };
    const text = textOf(pageOf({ ...late, ...group }, { ...fine, ...group }, { ...worse, ...group }));
    expect(text).toContain('trips late, at 6.25 mil by V-1. Do not count on V-3.');
  });

  it('what cannot act for its setting says so of the setting', () => {
    const group = { group: 'Bearing 1', voting: '2oo2' };
    const text = textOf(pageOf({ ...late, ...group, fullScale: 4 }, { ...fine, ...group }));
    expect(text).toContain('CANNOT TRIP because of V-1 (set above full scale)');
  });

  it('what is OK but to be checked stands apart from what is OK', () => {
    const text = textOf(pageOf(late, fine, { ...fine, tag: 'V-3', alert: 6 }));
    expect(text).toContain('✓ OK: V-2. • OK as far as known, but check: V-3.');
  });

  it('the drawing has a number beside each mark', () => {
    const text = textOf(pageOf({ ...late, limit: 6 }, { ...fine, limit: 6 }));
    expect(text).toMatch(/\nV-1 \| ▼ \| 6\.25\n5 \| △ \| ┃ \| 6\n/u);
    expect(text).toMatch(/\nV-2 \| ▼ \| 5\n5 \| △ \| ┃ \| 6\n/u);
  });
});

describe('numbers of an annex, against hand-worked ones', () => {
  it('both units, and how much later', () => {
    // 6.25 − 5 = 1.25 = 25 % of 5; 5 · 25.4 = 127; 6.25 · 25.4 = 158.75
    const annex = annexOf(late);
    expect(line(annex, 'danger', 5)).toEqual([
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
    // 0.5 · 100/80 = 0.625; 0.5 · 25.4 = 12.7; 0.625 · 25.4 = 15.875
    const velocity = { kind: 'velocity', sensitivityUnit: 'mV/(in/s)', unit: 'in/s' };
    const metric = line(
      annexOf({
        ...late,
        ...velocity,
        measured: 80,
        configured: 100,
        alert: 0.3,
        danger: 0.5,
        resolution: 0.01,
      }),
      'danger',
    );
    expect(metric[2]).toBeCloseTo(0.625, 12);
    expect(metric.slice(9)).toEqual([expect.closeTo(12.7, 12), expect.closeTo(15.875, 12), 'mm/s']);
  });

  it('time at the present growth, votes and interim setpoints with their conditions', () => {
    const group = { group: 'G', voting: '2oo2' };
    const annex = annexOf({ ...late, growth: 0.01, reading: 2, ...group }, { ...fine, ...group });
    // (6.25 − 5)/0.01 = 125 days; real level 2 · 1.25 = 2.5, (6.25 − 2.5)/0.01 = 375 days to go; acts at 6.25
    const [, , , later, toGo, at] = line(annex, 'V-1', 'danger', '0.01 mil a day');
    expect([later, toGo, at]).toEqual([
      expect.closeTo(125, 9),
      expect.closeTo(375, 9),
      expect.closeTo(6.25, 9),
    ]);
    expect(line(annex, 'G', '2oo2', 'danger').slice(3)).toEqual([5, 6.25, 'mil', 'by V-1']);
    // Interim 4 at a reading of 2: room of 2
    const interim = [line(annex, 'V-1', 'danger', 5)];
    expect(interim[0]!.slice(2, 7)).toEqual([5, 4, 0.1, 2, 2]);
    expect(textOf(annex)).toContain('it needs the site’s management of change');
  });

  it('as it was found beside as it stands now, and what became of it', () => {
    // Found 5 · 200/160 = 6.25, left 5 · 200/198 = 5.0505; exposed from 2024-01-01 to 2025-01-01, 366 days (leap year)
    const days = { lastGood: '2024-01-01', calibrated: '2025-01-01' };
    const annex = annexOf({ ...late, ...days, asLeft: 198 });
    expect(line(annex, 'danger')[2]).toBeCloseTo(1000 / 198, 12);
    expect(line(annex, 'danger, as found')[2]).toBe(6.25);
    // 5 · 198/200 = 4.95, at steps of 0.1 to the early side 4.9; what is history is nothing to go by.
    expect(line(annex, 'danger')[7]).toBeCloseTo(4.9, 12);
    expect(line(annex, 'danger, as found')[7]).toBe('–');
    expect(textOf(annex)).toContain('danger corrected');
    expect(textOf(annex)).toContain(
      'Exposure: danger may have been late or unable to act for up to 366 days (from 2024-01-01 to 2025-01-01); it has ended.',
    );
    expect(textOf(pageOf({ ...late, ...days, asLeft: 198 }))).not.toContain('▶ late');
    expect(textOf(annexOf({ ...late, ...days, asLeft: 170 }))).toContain('danger still late');
  });

  it('says what was not judged', () => {
    expect(textOf(annexOf(late))).toMatch(
      /V-1: how sure the measured sensitivity is: no uncertainty is given/u,
    );
    expect(textOf(annexOf({ ...late, uncertainty: 2 }))).not.toMatch(/how sure the measured/u);
  });
});
