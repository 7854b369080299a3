import { describe, expect, it } from 'vitest';
import type { Cell } from '../../src/cells/cell.ts';
import { book, oneChannel, type Rows } from './book.ts';
import { auditCase } from './golden.ts';

/** 160 mV/mil from 10 to 30 mil (−3.6 V is 20 mil), 166 from 40 to 70 mil (−9.52 V is 60 mil), 100 between them. */
const volts = [-2, -3.6, -5.2, -6.2, -7.86, -9.52, -11.18];
const recordOf = (series: string): [string, Rows] => [
  'Records',
  [
    ['Tag', 'Series', 'Gap (mil)', 'Output (V)'],
    ...volts.map((at, index) => ['V-1', series, 10 + 10 * index, at]),
  ],
];
const audited = (
  series: string,
  channel: Readonly<Record<string, Cell>>,
  { kind = 'radial', measured = null }: { kind?: string; measured?: number | null } = {},
) =>
  auditCase({
    because: '',
    book: book(
      ...oneChannel({
        kind,
        measured,
        channel,
        settings: kind === 'axial' ? { 'Configured zero voltage (V)': -9.52 } : {},
      }).sheets,
      recordOf(series),
    ),
  }).channels[0]!.sensitivity;

describe('a sensitivity from a bent record is that about the voltage at which the chain works (by hand)', () => {
  it('the gap voltage of a vibration, the zero of a position', () => {
    expect(audited('as found', { 'Gap voltage (V)': -3.6 }).measured).toBeCloseTo(160, 9);
    expect(audited('as found', { 'Gap voltage (V)': -9.52 }).measured).toBeCloseTo(166, 9);
    for (const [zero, sensitivity] of [
      [-3.6, 160],
      [-9.52, 166],
    ] as const)
      expect(
        audited('as found', { 'Zero voltage (V)': zero, 'Positive direction': 'toward' }, { kind: 'axial' })
          .measured,
      ).toBeCloseTo(sensitivity, 9);
  });

  it('as left the gap voltage as left, else as found', () => {
    const left = (channel: Readonly<Record<string, Cell>>) => audited('as left', channel, { measured: 200 });
    expect(left({ 'Gap voltage (V)': -3.6, 'As-left gap voltage (V)': -9.52 })).toMatchObject({
      from: 'calibration record',
      measured: expect.closeTo(166, 9) as number,
    });
    expect(left({ 'Gap voltage (V)': -9.52, 'As-left gap voltage (V)': -3.6 }).measured).toBeCloseTo(160, 9);
    expect(left({ 'Gap voltage (V)': -9.52 }).measured).toBeCloseTo(166, 9);
    expect(left({ 'Gap voltage (V)': -3.6 }).measured).toBeCloseTo(160, 9);
  });

  it('a listed sensitivity is from the channel list', () => {
    expect(audited('as found', { 'Gap voltage (V)': -3.6 }, { measured: 200 }).from).toBe('channel list');
  });
});
