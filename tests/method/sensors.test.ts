import { describe, expect, it } from 'vitest';
import { loopReading, loopSignal } from '../../src/method/loop.ts';
import { pointsTo } from '../../src/method/pointsTo.ts';
import { displacementFromAcceleration, displacementFromVelocity } from '../../src/method/sinusoid.ts';
import { convert } from '../../src/units/unit.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { UGLY, relativeError } from './ranges.ts';

function converted(value: number, from: string, to: string): number {
  return convert(value, parseUnit(from)!, parseUnit(to)!);
}

describe('displacement of a sinusoid', () => {
  it('1 mil p-p at 60 Hz (SINE-1MIL-60HZ, computed from the definition)', () => {
    const mil = 25.4e-6;
    expect(relativeError(displacementFromVelocity(4.78778720407084e-3, 60), mil)).toBeLessThan(1e-12);
    expect(relativeError(displacementFromAcceleration(1.8049532528712213, 60), mil)).toBeLessThan(1e-12);
    const fromInches = converted(0.18849555921538758, 'in/s pk', 'mm/s') / 1000;
    expect(relativeError(displacementFromVelocity(fromInches, 60), mil)).toBeLessThan(1e-12);
    const fromG = converted(0.1840540095620035, 'g pk', 'm/s²');
    expect(relativeError(displacementFromAcceleration(fromG, 60), mil)).toBeLessThan(1e-12);
  });

  it('the handbook constants within their rounding, and to 12 digits recomputed (SINE-CONSTANTS)', () => {
    const milPerInchPerSecond = converted(
      displacementFromVelocity(converted(1, 'in/s', 'mm/s') / 1000, 1) * 1e6,
      'µm',
      'mil',
    );
    expect(relativeError(milPerInchPerSecond, 318.31)).toBeLessThan(0.005);
    expect(relativeError(milPerInchPerSecond, 318.3098861837907)).toBeLessThan(1e-12);
    const hertz = converted(1, 'cpm', 'Hz');
    const atOneCycleAMinute = converted(
      displacementFromVelocity(converted(1, 'in/s', 'mm/s') / 1000, hertz) * 1e6,
      'µm',
      'mil',
    );
    expect(relativeError(atOneCycleAMinute, 19_098.59317102744)).toBeLessThan(1e-12);
    const milPerG = converted(
      displacementFromAcceleration(converted(1, 'g', 'm/s²'), hertz) * 1e6,
      'µm',
      'mil',
    );
    expect(relativeError(milPerG, 70_414_113.93775737)).toBeLessThan(1e-12);
    const inchPerG = converted(displacementFromAcceleration(converted(1, 'g', 'm/s²'), 1) * 1e6, 'µm', 'in');
    expect(relativeError(inchPerG, 19.55947609382149)).toBeLessThan(1e-12);
  });

  it('agrees with a sinusoid differentiated by hand: x = ½·D·sin(2πft)', () => {
    const f = 37;
    const x = (t: number) => 0.5e-3 * Math.sin(2 * Math.PI * f * t);
    const h = 1e-6;
    const velocity = (x(h) - x(-h)) / (2 * h);
    const crest = 1 / (4 * f);
    const acceleration = -(x(crest + 1e-4) - 2 * x(crest) + x(crest - 1e-4)) / 1e-8;
    expect(relativeError(displacementFromVelocity(velocity, f), 1e-3)).toBeLessThan(1e-7);
    expect(relativeError(displacementFromAcceleration(acceleration, f), 1e-3)).toBeLessThan(1e-3);
  });

  it('ugly inputs give NaN', () => {
    for (const ugly of UGLY) {
      expect(displacementFromVelocity(1, ugly)).toBeNaN();
      expect(displacementFromAcceleration(1, ugly)).toBeNaN();
    }
    expect(displacementFromVelocity(0, 60)).toBe(0);
    expect(displacementFromVelocity(-1, 60)).toBeNaN();
    expect(displacementFromAcceleration(NaN, 60)).toBeNaN();
    expect(displacementFromAcceleration(-1, 60)).toBeNaN();
    expect(displacementFromAcceleration(0, 60)).toBe(0);
  });
});

describe('current loop', () => {
  it('reads its end points as 0 and span, the middle as half (straight line)', () => {
    expect(loopReading(4, 20, 4, 20)).toBe(0);
    expect(loopReading(20, 20, 4, 20)).toBe(20);
    expect(loopReading(12, 20, 4, 20)).toBe(10);
    expect(loopReading(3.6, 100, 4, 20)).toBeCloseTo(-2.5, 12);
    expect(loopReading(12, 20, 4.1, 19.9)).toBeCloseTo(10, 12);
    expect(loopReading(12, 20, 20, 4)).toBe(10);
  });

  it('measured end points 4 and 16.8 mA for 4 and 20: a sensitivity 20 % low, so 80 % of the current is all of the span', () => {
    expect(loopReading(16.8, 20, 4, 16.8)).toBe(20);
    expect(loopReading(16.8, 20, 4, 20)).toBeCloseTo(16, 12);
  });

  it('ugly inputs give NaN', () => {
    for (const ugly of [NaN, Infinity, -Infinity]) {
      expect(loopReading(ugly, 20, 4, 20)).toBeNaN();
      expect(loopReading(12, ugly, 4, 20)).toBeNaN();
      expect(loopReading(12, 20, ugly, 20)).toBeNaN();
      expect(loopReading(12, 20, 4, ugly)).toBeNaN();
    }
    expect(loopReading(12, 0, 4, 20)).toBeNaN();
    expect(loopReading(12, 20, 4, 4)).toBeNaN();
  });

  it('classes of NAMUR NE 43 (NE43-LEVELS; 3.6 and 21 second-hand, 3.8 and 20.5 from memory)', () => {
    expect([3.5, 3.7, 4.0, 20.0, 20.7, 21.5].map(loopSignal)).toEqual([
      'failure',
      'undefined band',
      'measurement',
      'measurement',
      'undefined band',
      'failure',
    ]);
    expect([3.6, 3.8, 20.5, 21, 0, -1].map(loopSignal)).toEqual([
      'failure',
      'measurement',
      'measurement',
      'failure',
      'failure',
      'failure',
    ]);
    expect(loopSignal(NaN)).toBeUndefined();
  });
});

describe('what the readings point to (common practice, no source)', () => {
  const from = (measured: number, gapVoltage: number) => pointsTo(measured, 200, gapVoltage, -10, 0.05, 0.5);

  it('the pattern of sensitivity and gap voltage', () => {
    expect(from(200, -10)).toBe('nothing');
    expect(from(160, -8)).toBe('too much cable');
    expect(from(240, -12)).toBe('too little cable');
    expect(from(200, -8)).toBe('probe position');
    expect(from(200, -12)).toBe('probe position');
    expect(from(160, -10)).toBe('hidden by the gap voltage');
    expect(from(240, -10)).toBe('hidden by the gap voltage');
    expect(from(160, -12)).toBe('no single cause');
    expect(from(240, -8)).toBe('no single cause');
  });

  it('a gap voltage in its band never clears a sensitivity that is off', () => {
    for (const measured of [100, 150, 189, 211, 300]) expect(from(measured, -10.4)).not.toBe('nothing');
  });

  it('limits belong to right, and signs of the voltages do not matter', () => {
    expect(from(190, -10.5)).toBe('nothing');
    expect(from(210, -9.5)).toBe('nothing');
    expect(pointsTo(160, 200, 8, 10, 0.05, 0.5)).toBe('too much cable');
    expect(pointsTo(200, 200, -10, -10, 0, 0)).toBe('nothing');
    expect(pointsTo(200, 200, -10.25, -10, 0, 0)).toBe('probe position');
  });

  it('ugly inputs point to nothing that could be named', () => {
    for (const ugly of UGLY) {
      expect(from(ugly, -10)).toBeUndefined();
      expect(pointsTo(160, ugly, -8, -10, 0.05, 0.5)).toBeUndefined();
    }
    expect(from(160, NaN)).toBeUndefined();
    expect(pointsTo(160, 200, -8, -10, 1, 0.5)).toBeUndefined();
    expect(pointsTo(160, 200, -8, -10, 0.05, -1)).toBeUndefined();
  });
});
