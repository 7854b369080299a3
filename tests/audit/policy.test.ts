import { parseColumnMap } from '../../src/audit/model/columnMap.ts';
import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import { oneChannel } from './book.ts';
import { now } from './golden.ts';

it('an empty policy is the default one: 5 %, guarded, k = 2, 730 days', () => {
  expect(parsePolicy({})).toMatchObject({
    tolerance: 0.05,
    rule: 'guarded',
    coverage: 2,
    calibrationIntervalDays: 730,
    linearVolts: { near: -2, far: -18 },
  });
});

it('what a policy says is used, and stands in the report', () => {
  const policy = parsePolicy({ tolerance: 0.3, delays: { danger: 1 } });
  const report = audit(oneChannel({ measured: 160, settings: { 'Danger delay': 2 } }), { policy, now });
  expect(report.policy).toMatchObject({ tolerance: 0.3, delays: { alert: 3, danger: 1 } });
  // 160/200 = 0.8 lies within 1 ± 0.3.
  expect(report.summary).toMatchObject({ within: 1, late: 0 });
  expect(report.channels[0]!.findings.map(({ rule }) => rule)).toEqual(['danger-delay-long']);
});

it('takes a loose policy that still is one', () => {
  const loose = {
    tolerance: 0.49,
    coverage: 4,
    calibrationIntervalDays: 7305,
    delays: { alert: 60, danger: 60 },
    linearVolts: { near: 0, far: -60 },
    recordTolerance: { deviation: { value: 0.5, unit: 'mm' } },
  };
  expect(parsePolicy(loose)).toMatchObject(loose);
});

const wrongPolicies: [json: unknown, says: RegExp][] = [
  [{ tolerance: 5 }, /^AuditRefused: Policy, at tolerance: .*0\.5/],
  [{ tolerance: 0 }, /at tolerance/],
  [{ tolerance: '5 %' }, /at tolerance: .*number/],
  [{ rule: 'strict' }, /at rule: .*guarded.*simple/],
  [{ coverage: -2 }, /at coverage/],
  [{ Tolerance: 0.1 }, /Tolerance/],
  [{ linearVolts: { near: -18, far: -2 } }, /at linearVolts: far must be more negative than near/],
  [
    { ratedSensitivity: { radial: { value: 200, unit: 'mil' } } },
    /at ratedSensitivity\.radial\.unit: .*no unit of sensitivity/,
  ],
  [{ ratedSensitivity: { radial: { value: -1, unit: 'mV/mil' } } }, /at ratedSensitivity\.radial\.value/],
  [
    { minimumLinearRange: { value: 80, unit: 'V' } },
    /at minimumLinearRange\.unit: .*no unit of displacement/,
  ],
  [{ calibrationIntervalDays: 0 }, /at calibrationIntervalDays/],
  [{ delays: { alert: -1 } }, /at delays\.alert/],
  [{ tolerance: 0.5 }, /^AuditRefused: Policy, at tolerance: must be below 0\.5 \(50 %\)/],
  [{ tolerance: 0.99 }, /at tolerance: must be below 0\.5/],
  [{ tolerance: 1e308 }, /at tolerance/],
  [{ ratedTolerance: 0.5 }, /at ratedTolerance/],
  [{ curveDifference: 0.7 }, /at curveDifference/],
  [{ recordTolerance: { incremental: 0.6 } }, /at recordTolerance\.incremental/],
  [{ recordTolerance: { deviation: { value: 1e308, unit: 'mil' } } }, /at recordTolerance\.deviation\.value/],
  [{ recordTolerance: { deviation: { value: 1, unit: 'cm' } } }, /at recordTolerance\.deviation\.value/],
  [
    { minimumLinearRange: { value: 1e-300, unit: 'mil' } },
    /at minimumLinearRange\.value: must be from 10 mil/,
  ],
  [{ coverage: 1e-9 }, /at coverage: must be from 1 to 4/],
  [{ coverage: 1e308 }, /at coverage/],
  [{ calibrationIntervalDays: 1e308 }, /at calibrationIntervalDays: .*20 years/],
  [{ linearVolts: { near: 1e308, far: -1e308 } }, /at linearVolts\.near: must be from −60 V to 0 V/],
  [{ gapVoltageTolerance: 1e308 }, /at gapVoltageTolerance/],
  [{ ratedSensitivity: { axial: { value: 1e308, unit: 'mV/mil' } } }, /at ratedSensitivity\.axial\.value/],
  [{ delays: { danger: 1e308 } }, /at delays\.danger: must be from 0 s to 60 s/],
  [null, /Policy, at its top level/],
  [[], /Policy, at its top level/],
  ['guarded', /Policy, at its top level/],
];
for (const [json, says] of wrongPolicies) {
  it(`refuses the policy ${JSON.stringify(json)} in one line that names the entry`, () => {
    let message = '';
    try {
      parsePolicy(json);
    } catch (error) {
      message = String(error);
    }
    expect(message).toMatch(says);
    expect(message).not.toContain('\n');
  });
}

const wrongMaps: [json: unknown, says: RegExp][] = [
  [{ channel: {} }, /Column map/],
  [
    { channels: { columns: { hazard: 'B' } } },
    /channels: there is no column 'hazard'\. The columns are: tag, machine/,
  ],
  [
    { channels: { columns: { speed: 'no such header' } } },
    /speed: 'no such header' is neither one header of sheet 'Channels' row 1/,
  ],
  [{ channels: { sheet: 'Chanels' } }, /no sheet 'Chanels'\. The sheets are: 'Channels', 'Monitor'/],
  [{ channels: { sheet: 'Channels', headerRow: 9 } }, /no row 9 with headers on sheet 'Channels'/],
  [{ channels: { headerRow: 9 } }, /no row 9 with headers on any sheet/],
  [{ channels: { headerRow: 0 } }, /at channels\.headerRow/],
  [{ settings: { sheet: 'Monitor', units: { alert: 'furlong' } } }, /unit of alert: 'furlong' is no unit/],
  [{ settings: { sheet: 'Monitor', units: { 'full scale': 'mil' } } }, /'full scale', but no such column/],
  [{ settings: { columns: { danger: 4 } } }, /at settings\.columns\.danger/],
];
for (const [json, says] of wrongMaps) {
  it(`refuses the column map ${JSON.stringify(json)} with what is wrong`, () => {
    expect(() => audit(oneChannel({}), { map: parseColumnMap(json), now })).toThrow(says);
  });
}
