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

const wrongPolicies: [json: unknown, says: RegExp][] = [
  [{ tolerance: 5 }, /^AuditRefused: Policy, at tolerance: .*1/],
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
