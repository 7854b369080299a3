import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import type { ChannelResult } from '../../src/audit/model/report.ts';
import type { ThresholdName, ThresholdResult } from '../../src/audit/model/threshold.ts';
import { standingOf } from '../../src/pane/audit/channels/standing.ts';
import { asFoundText, exposureText, readingsText } from '../../src/pane/audit/channels/ChannelDetail.tsx';
import { lineText, panelText, reallyText, remarksOf } from '../../src/pane/audit/channels/thresholdText.ts';
import { oneChannel } from '../audit/book.ts';

const now = new Date('2026-01-01T12:00:00Z');
type Given = Omit<NonNullable<Parameters<typeof oneChannel>[0]>, 'measured'> & { readonly measured?: number };

function judged(
  given: Given,
  name: ThresholdName = 'danger',
): { channel: ChannelResult; threshold: ThresholdResult } {
  const channel = audit(oneChannel({ measured: 160, ...given }), { now }).channels[0]!;
  return { channel, threshold: channel.thresholds.find((one) => one.name === name && one.multiplier === 1)! };
}
const dates = { 'Last good on': '2025-01-01', 'Calibrated on': '2025-11-27' };

describe('what a threshold really does', () => {
  // By hand: 5·200/160 = 6.25 mil; to treat as danger 5·160/200 = 4 mil.
  it('is said with what it is set to, and with the panel reading of the report', () => {
    const { channel, threshold } = judged({ settings: { 'Resolution (mil)': 0.1 } });
    expect(reallyText(channel, threshold)).toBe('set 5, really trips at 6.25 mil');
    expect(panelText(channel, threshold)).toBe('Panel reading to treat as danger: 4 mil');
    expect(threshold.panel).toBe(4);
    expect(remarksOf(channel, threshold)).toContain('1.25 mil (25 %) late');
    const alert = judged({ settings: { 'Resolution (mil)': 0.1 } }, 'alert');
    expect(reallyText(alert.channel, alert.threshold)).toBe('set 3, really alarms at 3.75 mil');
  });

  it('gives no level to one that cannot act or is not known', () => {
    const above = judged({ measured: 200, settings: { 'Full scale (mil)': 4 } });
    expect(reallyText(above.channel, above.threshold)).toBe('set 5 mil, cannot act');
    const unknown = judged({ measured: 200, kind: 'axial' });
    expect(reallyText(unknown.channel, unknown.threshold)).toBe('set 5 mil, not known');
    expect(remarksOf(unknown.channel, unknown.threshold).join()).toContain('zero voltage was not measured');
  });

  // By hand: 5·200/192 = 5.208 mil, from /1.04 = 5.008 to /0.96 = 5.425.
  it('gives both ends of one that is uncertain', () => {
    const { channel, threshold } = judged({
      measured: 192,
      channel: { 'Uncertainty (%)': 4 },
      settings: { 'Resolution (mil)': 0.1 },
    });
    expect(reallyText(channel, threshold)).toBe('set 5, really trips from 5.01 to 5.43 mil');
  });

  it('names each line of evidence with its own number', () => {
    const { channel, threshold } = judged({});
    expect(threshold.lines.map((line) => lineText(channel, line))).toEqual([
      'By the listed sensitivity: 6.25 mil, late',
    ]);
    const short = {
      ...threshold.lines[0]!,
      effective: null,
      why: 'the record does not reach that far',
    } as const;
    expect(lineText(channel, { ...short, verdict: 'undetermined' })).toBe(
      'By the listed sensitivity: uncertain: its calibration record does not reach that far',
    );
  });

  // By hand: 4.2·200/160 = 5.25 mil, past 5 mil, while the monitor trips at 5 shown.
  it('says of one that is past it now what the panel shows and what is real', () => {
    const { channel, threshold } = judged({ channel: { 'Present reading (mil)': 4.2 } });
    expect(threshold.alreadyThere).toBe(true);
    expect(remarksOf(channel, threshold)[0]).toMatch(/^Past it now: panel 4\.2 mil, really 5\.25 mil/u);
    const below = judged({ channel: { 'Present reading (mil)': 3.9 } });
    expect(remarksOf(below.channel, below.threshold).join()).not.toContain('Past it now');
  });

  // By hand: 5·160/200 = 4 mil, 0.1 above the reading of 3.9; 3·160/200 = 2.4 mil lies below it.
  it('offers an interim setpoint only with its step, its headroom and the procedure', () => {
    const given = {
      channel: { 'Present reading (mil)': 3.9 },
      settings: { 'Resolution (mil)': 0.1 },
    };
    const interim = (name: ThresholdName): string => {
      const { channel, threshold } = judged(given, name);
      return remarksOf(channel, threshold).join('\n');
    };
    expect(interim('danger')).toContain(
      'Interim setpoint 4 mil (in steps of 0.1 mil; 0.1 mil above the present reading), under the site’s change procedure',
    );
    expect(interim('alert')).toContain('it would act on entry');
    const early = judged({ measured: 240 });
    expect(remarksOf(early.channel, early.threshold).join()).not.toContain('Interim');
  });

  it('lists what was not judged', () => {
    const { channel, threshold } = judged({});
    expect(remarksOf(channel, threshold).join()).toMatch(/Not judged for want of data: .*linear reach/u);
  });

  it('never shows a probability as none or certain', () => {
    const { channel, threshold } = judged({ channel: { 'Limit (mil)': 6, 'Uncertainty (%)': 5 } });
    const said = (probabilityBeyondLimit: number): string =>
      remarksOf(channel, { ...threshold, beyondLimit: 'may', probabilityBeyondLimit }).join();
    expect(said(0.9999)).toContain('probability above 99.9 %');
    expect(said(0.0001)).toContain('probability below 0.1 %');
  });
});

describe('a channel that was measured again', () => {
  // By hand: 5·200/170 = 5.882 mil now, 5·200/160 = 6.25 mil when found; 170/200 − 1 = −15 %; 330 days by the calendar.
  it('is shown as it is now, with what was found beside it as history', () => {
    const { channel, threshold } = judged({ channel: { ...dates, 'As-left sensitivity (mV/mil)': 170 } });
    expect(reallyText(channel, threshold)).toBe('set 5, really trips at 5.88 mil');
    expect(asFoundText(channel, channel.asFound, threshold)).toBe(
      'As found: set 5, really trips at 6.25 mil; still late',
    );
    expect(exposureText(channel, threshold)).toBe(
      'May have been so from 2025-01-01, found on 2025-11-27, up to 330 days; still late today',
    );
    expect(readingsText(channel.sensitivity, channel.inputs.gapVoltage)).toBe(
      'Sensitivity 170 mV/mil, −15 % off the configured 200, no uncertainty given',
    );
    expect(readingsText(channel.asFound!.sensitivity, null)).toContain('Sensitivity 160 mV/mil, −20 % off');
  });

  it('stands by its verdict now, corrected or made worse', () => {
    const corrected = judged({ channel: { 'As-left sensitivity (mV/mil)': 200 } });
    expect(standingOf(corrected.channel)).toBe('within');
    expect(asFoundText(corrected.channel, corrected.channel.asFound, corrected.threshold)).toMatch(
      /; corrected$/u,
    );
    expect(remarksOf(corrected.channel, corrected.threshold).join()).not.toContain('Interim');
    const worse = judged({ measured: 200, channel: { 'As-left sensitivity (mV/mil)': 160 } });
    expect(standingOf(worse.channel)).toBe('late');
    expect(asFoundText(worse.channel, worse.channel.asFound, worse.threshold)).toMatch(/; now late$/u);
  });

  it('says what is not known, and nothing where nothing was measured again or given as a day', () => {
    const late = judged({
      channel: { 'Calibrated on': '2025-11-27', 'As-left sensitivity (mV/mil)': 200 },
    });
    expect(exposureText(late.channel, late.threshold)).toBe(
      'May have been so from a day not known, found on 2025-11-27',
    );
    const bare = judged({});
    expect(asFoundText(bare.channel, bare.channel.asFound, bare.threshold)).toBeNull();
    expect(exposureText(bare.channel, bare.threshold)).toBeNull();
  });
});

it('a channel in bypass stands apart, whatever its verdict', () => {
  const { channel } = judged({ measured: 200, settings: { Bypass: 'yes' } });
  expect(channel.verdict).toBe('within');
  expect(standingOf(channel)).toBe('in bypass');
});
