import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { book } from './book.ts';
import { golden } from './cases/runout/case.ts';
import { auditCase } from './golden.ts';

const { channels } = auditCase(golden);
const runoutOf = (of: string) => channels.find(({ tag }) => tag === of)?.runout ?? null;
const dangerOf = (of: string) => runoutOf(of)?.thresholds.find(({ name }) => name === 'danger');

// Source: complex numbers and the law of cosines, worked out apart from this code.
it('a component is compensated by vectors, each scaled with the sensitivity it was read with', () => {
  const found = runoutOf('A');
  expect(found?.real).toBeCloseTo(1, 12);
  expect(found?.compensated?.amplitude).toBeCloseTo(6, 12);
  expect(found?.compensated?.phase).toBeCloseTo(30, 9);
  expect(dangerOf('A')).toMatchObject({ least: 5.25, most: 7.25 });
  expect(dangerOf('A')?.real).toBeCloseTo(7.25, 12);
});

it('without a phase only the span over all angles is known; a runout that reaches the danger leaves none', () => {
  expect(dangerOf('B')).toEqual({ name: 'danger', multiplier: 1, real: null, least: 3, most: 7 });
  expect(dangerOf('C')).toEqual({ name: 'danger', multiplier: 1, real: null, least: null, most: null });
  expect(runoutOf('D')?.compensated).toBeNull();
  expect(runoutOf('E')).toBeNull();
  expect(runoutOf('F')).toBeNull();
});

it('at an angle of 120° to the movement the shaft really moves 6.591 mil at a danger of 6.25', () => {
  // 3 mil at 0° real and 0.75 mil at 120° of runout, both shown at 160/200 of it.
  const [channel] = audit(
    book([
      'All',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Slow-roll amplitude (mil)',
          'Slow-roll phase',
          '1X amplitude (mil)',
          '1X phase',
        ],
        ['V', 160, 200, 3, 5, 0.6, 120, 2.1633307652783933, 13.897886248013984],
      ],
    ]),
    {},
  ).channels;
  expect(channel?.runout?.compensated?.amplitude).toBeCloseTo(3, 12);
  const danger = channel?.runout?.thresholds.find(({ name }) => name === 'danger');
  expect(danger?.real).toBeCloseTo(6.591158379578178, 9);
  expect(danger?.least).toBeCloseTo(5.5, 12);
});
