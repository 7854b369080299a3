import { describe, expect, it } from 'vitest';
import { summaryText } from '../../src/cli/audit/summary.ts';
import { reportOf } from '../sheets/handover/read.ts';
import type { Listed } from '../sheets/tables.ts';

const fine: Listed = { tag: 'V-1', machine: 'M', measured: 200, configured: 200, alert: 3, danger: 5 };
const told = (...listed: readonly Listed[]) => summaryText(reportOf(listed)).replaceAll(/\s+/gu, ' ');
const clean = 'Nothing here is outside the policy.';

describe('what to do next, at the terminal', () => {
  it('is nothing only where nothing was found', () => {
    expect(told(fine)).toContain(clean);
    const bypassed = told({ ...fine, bypass: true });
    expect(bypassed).not.toContain(clean);
    expect(bypassed).toContain(
      '1. Take the bypass out of the channel that is in it: until then it protects nothing.',
    );
    // 1000/192 = 5.208 mil: within 5 %, beyond 5.1 mil.
    for (const one of [{ measured: 192 }, { asLeft: 192 }]) {
      const beyond = told({ ...fine, ...one, limit: 5.1 });
      expect(beyond).not.toContain(clean);
      expect(beyond).toContain('1. Have each danger that acts beyond the limit of its machine looked at');
    }
    const other = told({ ...fine, alert: 6 });
    expect(other).not.toContain(clean);
    expect(other).toContain('alert-not-below-danger');
  });
});

describe('what was judged as left, at the terminal', () => {
  it('gives no level at which a setpoint above full scale would act', () => {
    const text = told({ ...fine, measured: 160, asLeft: 200, fullScale: 4 });
    expect(text).toContain('unreachable V-1: danger 5 mil still unreachable, above full scale.');
  });

  // By hand, T = (S·Kc + s·(V0c − V0m))/Km in mV and mil, s = +1: s·(−10 + 10.2) V / 200 mV/mil = +1 mil.
  it('tells since when by the threshold it speaks of', () => {
    const axial = { kind: 'axial', zeroConfigured: -10, zeroMeasured: -10.2, direction: 'toward' } as const;
    const days = { lastGood: '2024-01-01', calibrated: '2025-01-01' };
    const one: Listed = { ...fine, ...axial, ...days, alert: 5, danger: 38, asLeft: 180 };
    // Alert 5 → 6 (20 % late) as found, danger 38 → 39 (2.6 %: within); as left 6.67 and 7800/180 = 43.33 mil: both late.
    const text = told(one);
    expect(text).toContain('late V-1: danger 38 mil now late, at 43.33 mil.');
    expect(text).not.toContain('may have been so since');
  });

  it('tells of groups that are late or cannot act as left', () => {
    const group = { group: 'G', voting: '2oo2' };
    const late = told(
      { ...fine, measured: 160, asLeft: 200, ...group },
      { ...fine, tag: 'V-2', asLeft: 150, ...group },
    );
    expect(late).toContain(
      "late group 'G' (2oo2) acts on danger at 6.667 mil as left instead of 5 mil; decided by V-2.",
    );
    const idle = told(
      { ...fine, gap: -9.8, asLeft: 200, asLeftGap: -2.4, ...group },
      { ...fine, tag: 'V-2', ...group },
    );
    expect(idle).toContain("unreachable group 'G' (2oo2) cannot trip on danger as left.");
  });
});
