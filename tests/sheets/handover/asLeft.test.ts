import { describe, expect, it } from 'vitest';
import type { Listed } from '../tables.ts';
import { line, reportOf, sheetOf, textOf } from './read.ts';

const fine: Listed = { tag: 'V-1', machine: 'M', measured: 200, configured: 200, alert: 3, danger: 5 };
const cured: Listed = { ...fine, measured: 160, asLeft: 200 };

/** The part of a sheet from a heading on, without empty lines. */
function part(text: string, heading: string, lines: number): string {
  const all = text.split('\n').filter((one) => one !== '');
  return all.slice(all.indexOf(heading), all.indexOf(heading) + lines).join('\n');
}

// Worked by hand with Kc 200 mV/mil: T = 5·200/Km.
describe('what must be done of a channel that is right as left', () => {
  it('still has its bypass taken out, or found out', () => {
    const bypassed = textOf(sheetOf({ ...cured, bypass: true }));
    expect(bypassed).toContain('1.  Take the bypass out of V-1: until then it protects nothing.');
  });

  // 1000/192 = 5.208 mil: 4.2 % late and so within 5 %, but beyond 5.1 mil.
  it('still says that its danger lies beyond the machine’s limit', () => {
    for (const measured of [160, 200]) {
      const text = textOf(sheetOf({ ...fine, measured, asLeft: 192, limit: 5.1 }));
      expect(text).toMatch(
        /danger at 5\.208 mil, set for 5 mil\. Its danger lies beyond the machine’s limit of 5\.1 mil all the same\./u,
      );
      expect(text).toContain('1.  Have the danger setpoint of V-1 checked against the machine’s limit');
    }
    const right = textOf(sheetOf({ ...cured, limit: 5.1 }));
    expect(right).not.toMatch(/all the same|checked against the machine’s limit/u);
  });

  it('says what the judgement leans on: the uncertainty as left, and the zero that was not read', () => {
    const zeros = { kind: 'axial', zeroConfigured: -10, zeroMeasured: -10.1, direction: 'toward' } as const;
    const text = textOf(sheetOf({ ...cured, ...zeros, alert: 15, danger: 20, asLeftUncertainty: 1 }));
    expect(text).toContain('As left measured 200 mV/mil ± 1 % (k = 2): 0 %.');
    expect(text).toContain('That holds with the zero as found, −10.1 V: it was not read as left.');
    expect(textOf(sheetOf(cured))).not.toContain('zero as found');
  });
});

// At −2.4 V a chain of 200 mV/mil is linear over 2·0.4 V/0.2 = 4 mil: less than a danger of 5.
describe('trips that can’t act as left', () => {
  const moved: Listed = { ...fine, gap: -9.8, asLeft: 200, asLeftGap: -2.4 };

  it('are no “None”, and call for the probe gap', () => {
    const text = textOf(sheetOf(moved));
    expect(part(text, 'Trips that can’t be relied on to act', 2)).toMatch(
      /\nV-1 \| danger, as left \| Can’t be relied on to act: .* only up to 4 mil\./u,
    );
    expect(part(text, 'Before start-up', 3)).toMatch(
      /1\. {2}Set the probe gap of V-1 .*\n2\. {2}Measure V-1 again/u,
    );
    expect(text).toContain('As found: all thresholds of 1 channel act within the tolerance. 1 channel was');
    expect(text).toContain(
      'The sensitivity went from 200 mV/mil to 200 mV/mil, the gap voltage from −9.8 V to −2.4 V',
    );
  });

  it('call for nothing that was put right: found at −2.4 V, left at −9.8 V and late', () => {
    const text = textOf(sheetOf({ ...moved, gap: -2.4, asLeft: 170, asLeftGap: -9.8 }));
    expect(text).not.toContain('Set the probe gap');
    expect(text).toContain('V-1 | danger, as found | Can’t be relied on to act');
    expect(text).not.toContain('V-1 | danger, as left | Can’t');
  });

  it('keep a group from tripping, as left', () => {
    const group = { group: 'G', voting: '2oo2' };
    const text = textOf(sheetOf({ ...moved, ...group }, { ...fine, tag: 'V-2', ...group }));
    expect(text).toContain(
      '1.  Restore the vote of group G, which cannot trip the machine. Too few of its members',
    );
    expect(text).toContain('group G | danger, as left | Too few of its members can act as left');
    expect(text).toContain('G | 2oo2 | danger, as found | 5 | 5 | mil | V-1 and V-2');
    expect(text).toContain('G | 2oo2 | danger, as left | 5 | – | mil | cannot trip: see its channels above');
    const back = textOf(
      sheetOf({ ...moved, gap: -2.4, asLeftGap: -9.8, ...group }, { ...fine, tag: 'V-2', ...group }),
    );
    expect(back).toContain("group G | danger, as found | Group 'G' (2oo2) cannot trip on danger");
    expect(back).not.toContain('Restore the vote');
  });
});

// As found 5·200/160 = 6.25 by V-1; as left 5·200/150 = 6.667 by V-2.
it('a vote stands as found and as left, each with what decides it', () => {
  const group = { group: 'G', voting: '2oo2' };
  const sheet = sheetOf({ ...cured, ...group }, { ...fine, tag: 'V-2', asLeft: 150, ...group });
  expect(line(sheet, 'G', '2oo2', 'danger, as found')).toEqual(expect.arrayContaining([6.25, 'V-1']));
  const left = line(sheet, 'G', '2oo2', 'danger, as left');
  expect(left).toEqual(expect.arrayContaining([expect.closeTo(1000 / 150, 12), 'V-2']));
  const plain = sheetOf({ ...fine, ...group }, { ...fine, tag: 'V-2', ...group });
  expect(line(plain, 'G', '2oo2', 'danger')).toContain(5);
});

it('a period of exposure goes on where the trip is late as left, and where nothing was read', () => {
  const days = { lastGood: '2024-01-01', calibrated: '2025-01-01' };
  const told = (one: Listed) => textOf(sheetOf({ ...one, ...days }));
  const period =
    'Also: For up to 366 days, from 2024-01-01 to 2025-01-01, the alert and danger may have been late';
  expect(told({ ...cured, asLeft: 170 })).toContain(
    `${period} or unable to act. For the alert and danger it goes on as left.`,
  );
  expect(told({ ...fine, measured: 160 })).toContain(
    `${period} or unable to act. Nothing was judged as left: it goes on until`,
  );
  expect(told(cured)).toContain(`${period} or unable to act. As left it has ended.`);
});

it('the audit behind it counts the days by the calendar: 2024 has 366', () => {
  const [channel] = reportOf([{ ...cured, lastGood: '2024-01-01', calibrated: '2025-01-01' }]).channels;
  expect(channel!.exposure[0]).toMatchObject({ days: 366, goesOn: false });
});

it('reports nothing only where there are no remarks to look at either', () => {
  expect(textOf(sheetOf({ ...fine, calibrated: '2025-01-01' }))).toContain('there is nothing to report.');
  const old = textOf(sheetOf({ ...fine, calibrated: '2020-01-01' }));
  expect(old).toContain('no threshold calls for action, but there are remarks to look at.');
  expect(old).not.toContain('nothing to report');
});

// T = (20·200 + 1·(−10 + 11)·1000)/200 = 25 mil with the configured sensitivity: the zero alone makes it late.
it('an axial channel that is late by its zero is not sent after its cable alone', () => {
  const axial: Listed = {
    ...fine,
    kind: 'axial',
    alert: 15,
    danger: 20,
    direction: 'toward',
    zeroConfigured: -10,
  };
  expect(textOf(sheetOf({ ...axial, zeroMeasured: -11 }))).toContain(
    '1.  Correct the measuring chain of V-1. Measure the zero voltage at the mechanical zero, and correct the zero in the monitor. Check that probe',
  );
  expect(textOf(sheetOf({ ...axial, zeroMeasured: -10, measured: 160 }))).toContain(
    '1.  Correct the measuring chain of V-1. Check that probe',
  );
});
