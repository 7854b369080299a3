import { describe, expect, it } from 'vitest';
import { type Cell, DateCell } from '../../src/cells/cell.ts';
import type { TrendClock } from '../../src/audit/model/trend.ts';
import { dateOrderIn, timeReader } from '../../src/audit/read/trend/timeReader.ts';

const utc = (text: string) => Date.parse(`${text}Z`);

/** What a reader makes of a date and a clock cell: its time in UTC as text, or its fault. */
function read(date: Cell, clock: Cell = null, of: Partial<TrendClock> = {}): string {
  const reader = timeReader({ zone: 'UTC', dates: null, ...of });
  const at = reader.read(date, clock);
  return Number.isNaN(at) ? String(reader.fault()) : new Date(at).toISOString();
}

const berlin: Partial<TrendClock> = { zone: 'Europe/Berlin' };

describe('times of recorded readings', () => {
  it('are read in the forms in which loggers write them', () => {
    for (const [text, expected] of [
      ['2026-03-14T02:15:00', '2026-03-14T02:15:00.000Z'],
      ['2026-03-14 02:15:07Z', '2026-03-14T02:15:07.000Z'],
      ['2026-03-14T23:59:59.25', '2026-03-14T23:59:59.250Z'],
      ['2026-03-14T02:15:00.007Z', '2026-03-14T02:15:00.007Z'],
      ['2026-03-14 2:15', '2026-03-14T02:15:00.000Z'],
      ['2026-03-14, 02:15:00,5', '2026-03-14T02:15:00.500Z'],
      ['2026-03-14 12:15 am', '2026-03-14T00:15:00.000Z'],
      ['2026-03-14 12:15 pm', '2026-03-14T12:15:00.000Z'],
      ['2026-03-14 2:15PM', '2026-03-14T14:15:00.000Z'],
      ['2026-03-14 02:15 UTC', '2026-03-14T02:15:00.000Z'],
      ['2026-03-14T02:15:00+01:00', '2026-03-14T01:15:00.000Z'],
      ['2026-03-14 02:15 -0330', '2026-03-14T05:45:00.000Z'],
      ['2026-03-14 02:15:00+05', '2026-03-13T21:15:00.000Z'],
    ] as const)
      expect(read(text), text).toBe(expected);
  });

  it('are none where an hour, a minute, a second or an offset is none', () => {
    for (const text of [
      '2026-03-14T24:00:00',
      '2026-03-14T02:60:00',
      '2026-03-14T02:15:60',
      '2026-03-14 25:15',
      '2026-03-14 13:15 pm',
      '2026-03-14 0:15 am',
      '2026-03-14 02:15:00+99:00',
      '2026-03-14 02:15:00-01:75',
      '2026-03-14',
      'noon',
    ])
      expect(read(text), text).toBe('no time');
    expect(read('2026-02-30 02:15:00')).toBe('no day of the calendar');
    expect([read(null), read('')]).toEqual(['blank', 'blank']);
  });

  it('that name no offset are of the zone, summer or winter; those that name one are not', () => {
    expect(read('2026-07-01T12:00:00', null, berlin)).toBe('2026-07-01T10:00:00.000Z');
    expect(read('2026-01-01T12:00:00', null, berlin)).toBe('2026-01-01T11:00:00.000Z');
    expect(read('2026-07-01T12:00:00Z', null, berlin)).toBe('2026-07-01T12:00:00.000Z');
    expect(read('2026-07-01 12:00+02:00', null, berlin)).toBe('2026-07-01T10:00:00.000Z');
    expect(read('2026-03-29T02:30:00', null, berlin)).toBe('does not exist');
    expect(read('2026-07-01T12:00:00', null, { zone: null })).toBe('no zone');
    expect(read('2026-07-01T12:00:00Z', null, { zone: null })).toBe('2026-07-01T12:00:00.000Z');
  });

  it('of the hour that comes twice are two, an hour apart; and whether the zone was asked is known', () => {
    const reader = timeReader({ zone: 'Europe/Berlin', dates: null });
    expect(reader.read('2025-10-26T02:30:00Z', null)).toBe(utc('2025-10-26T02:30:00'));
    expect(reader.usedZone()).toBe(false);
    expect(reader.read('2025-10-26T02:30:00', null)).toBe(utc('2025-10-26T00:30:00'));
    expect(reader.other()).toBe(utc('2025-10-26T01:30:00'));
    expect(reader.local()).toBe(utc('2025-10-26T02:30:00'));
    expect(reader.usedZone()).toBe(true);
    expect(reader.read('2025-10-26T03:30:00', null)).toBe(utc('2025-10-26T02:30:00'));
    expect(reader.other()).toBeNaN();
  });

  it('in two cells are one: texts, dates, days of a spreadsheet, parts of a day', () => {
    const day = Date.UTC(2026, 2, 14) / 86_400_000;
    expect(read('2026-03-14', '02:15')).toBe('2026-03-14T02:15:00.000Z');
    expect(read(new DateCell(day), 0.25)).toBe('2026-03-14T06:00:00.000Z');
    expect(read(new DateCell(day + 0.5), 0.25)).toBe('2026-03-14T06:00:00.000Z');
    expect(read(new DateCell(day), new DateCell(day + 0.75))).toBe('2026-03-14T18:00:00.000Z');
    expect(read(null, new DateCell(day + 0.75))).toBe('2026-03-14T18:00:00.000Z');
    // Day 46,095 of the usual calendar of spreadsheets is 2026-03-14.
    expect(read(46_095.5)).toBe('2026-03-14T12:00:00.000Z');
    expect([read(18_263), read(73_051), read(true)]).toEqual(['no time', 'no time', 'no time']);
    // A text beside a part of a day is not read as both.
    expect(read('2026-03-14', 0.25)).toBe('no time');
  });

  it('with a date in slashes are of the order that is said, else of none', () => {
    expect(read('03/04/2026 10:00', null, { dates: 'day first' })).toBe('2026-04-03T10:00:00.000Z');
    expect(read('03/04/2026 10:00', null, { dates: 'month first' })).toBe('2026-03-04T10:00:00.000Z');
    expect(read('31/04/2026 10:00', null, { dates: 'day first' })).toBe('no day of the calendar');
    expect(
      ['31.03.2026 10:00', '03/31/2026', '12/12/2026 10:00', '13-01-2026T10:00'].map(dateOrderIn),
    ).toEqual(['day first', 'month first', null, 'day first']);
  });
});
