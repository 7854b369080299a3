import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { channelScene } from '../../src/pane/drawing/channelScene.ts';
import { sceneInWords } from '../../src/pane/drawing/drawingMessages.ts';
import { positionOf, sceneOf, type Lane, type SceneInput } from '../../src/pane/drawing/scene.ts';
import { oneChannel } from '../audit/book.ts';

const lane: Lane = {
  name: 'danger',
  acts: 'trips',
  intended: 5,
  effective: 6.25,
  low: null,
  high: null,
  verdict: 'late',
};
const bare: SceneInput = { unit: 'mil', lanes: [lane], limit: null, reach: null, reading: null };

describe('scale of a drawing', () => {
  it('starts at rest and holds everything that is drawn', () => {
    const scene = sceneOf({ ...bare, limit: 8, reading: 2 })!;
    expect(scene.from).toBe(0);
    for (const value of [5, 6.25, 8, 2]) {
      expect(value).toBeGreaterThanOrEqual(scene.from);
      expect(value).toBeLessThan(scene.to);
    }
    for (const tick of scene.ticks) {
      expect(tick).toBeGreaterThanOrEqual(scene.from);
      expect(tick).toBeLessThanOrEqual(scene.to);
    }
  });

  it('has room on both sides of zero for positions', () => {
    const counter: Lane = { ...lane, name: 'counter danger', intended: -25, effective: -31.25 };
    const scene = sceneOf({ ...bare, lanes: [counter, { ...lane, intended: 25, effective: 31.25 }] })!;
    expect(scene.from).toBeLessThan(-31.25);
    expect(scene.to).toBeGreaterThan(31.25);
    expect(scene.ticks).toContain(0);
  });

  it('is not squeezed by a linear reach far beyond the thresholds', () => {
    expect(sceneOf({ ...bare, reach: 75 })!.to).toBe(sceneOf(bare)!.to);
  });

  it('is none where no value is known, or all are zero', () => {
    const unknown: Lane = { ...lane, intended: null, effective: null };
    expect(sceneOf({ ...bare, lanes: [unknown] })).toBeNull();
    expect(sceneOf({ ...bare, lanes: [{ ...unknown, intended: 0 }] })).toBeNull();
  });

  it('leaves out a threshold that never acts', () => {
    const scene = sceneOf({ ...bare, lanes: [{ ...lane, effective: Infinity }] })!;
    expect(scene.to).toBeLessThan(6);
  });
});

describe('position on the scale', () => {
  it('is linear between both edges, and on the edge beyond them', () => {
    const scene = { ...sceneOf(bare)!, from: -10, to: 10 };
    expect(positionOf(scene, -10, 0, 200)).toBe(0);
    expect(positionOf(scene, 0, 0, 200)).toBe(100);
    expect(positionOf(scene, 5, 0, 200)).toBe(150);
    expect(positionOf(scene, 1000, 0, 200)).toBe(200);
    expect(positionOf(scene, -1000, 0, 200)).toBe(0);
  });
});

describe('drawing of a channel', () => {
  // 5 mil at 200 mV/mil configured, 160 measured acts at 6.25 mil; 2 mil shown is 2.5 mil real: T = S·Kc/Km, by hand.
  const report = audit(
    oneChannel({
      measured: 160,
      channel: {
        'Uncertainty (%)': 3,
        'Limit (mil)': 6,
        'Present reading (mil)': 2,
        'Gap voltage (V)': -10,
        'Speed (r/min)': 3600,
      },
    }),
  );
  const scene = channelScene(report.channels[0]!)!;

  it('shows intended and effective, the band, the limit and the real reading', () => {
    const danger = scene.lanes.find(({ name }) => name === 'danger')!;
    expect(danger).toMatchObject({ intended: 5, effective: 6.25, verdict: 'late' });
    expect(danger.low).toBeCloseTo(6.25 / 1.03, 12);
    expect(danger.high).toBeCloseTo(6.25 / 0.97, 12);
    expect(scene.limit).toBe(6);
    expect(scene.reading).toBeCloseTo(2.5, 12);
    // 2·min(|−10 − −2|, |−18 − −10|)/0.16 V/mil = 100 mil, linear from −2 to −18 V: common practice, no source.
    expect(scene.reach).toBeCloseTo(100, 9);
  });

  it('says in words what it draws', () => {
    const words = sceneInWords(scene);
    expect(words).toContain('Danger: set 5, really trips at 6.25 mil (6.068 mil to 6.443 mil), late');
    expect(words).toContain('Limit 6 mil');
    expect(words).toContain('Present real reading 2.5 mil');
    expect(words).toContain('Linear reach 100 mil');
  });

  it('multiplies the setpoint of a start-up threshold', () => {
    const started = audit(oneChannel({ settings: { 'Set-point multiplier': 3 } })).channels[0]!;
    const names = channelScene(started)!.lanes.map(({ name, intended }) => [name, intended]);
    expect(names).toContainEqual(['danger × 3', 15]);
    expect(names).toContainEqual(['danger', 5]);
  });

  it('is of now where it was measured again', () => {
    const left = audit(oneChannel({ measured: 160, channel: { 'As-left sensitivity (mV/mil)': 200 } }));
    const [lane] = channelScene(left.channels[0]!)!.lanes.filter(({ name }) => name === 'danger');
    // By hand: 5·200/200 = 5 mil as left, 6.25 mil as found.
    expect(lane).toMatchObject({ intended: 5, effective: 5, verdict: 'within' });
  });

  it('draws no place for a threshold that cannot act, and says so', () => {
    const above = channelScene(audit(oneChannel({ settings: { 'Full scale (mil)': 4 } })).channels[0]!)!;
    expect(above.lanes.find(({ name }) => name === 'danger')).toMatchObject({ intended: 5, effective: null });
    expect(sceneInWords(above)).toContain('Danger: set 5 mil, cannot act');
  });
});
