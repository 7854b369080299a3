import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../src/cells/cell.ts';
import type { Workbook } from '../../../src/cells/sheet.ts';
import { book, type Rows } from '../book.ts';
import { short, since } from './change.ts';

const headers = ['Tag', 'Measured sensitivity', 'Configured sensitivity', 'Sensitivity unit'] as const;

/** One table that is channel list and settings in one, in the units that its headers name. */
function plant(unit: string, rows: Rows, more: readonly string[] = []): Workbook {
  return book(['Plant', [[...headers, `Alert (${unit})`, `Danger (${unit})`, ...more], ...rows]]);
}
const channel = (
  tag: string,
  measured: Cell,
  { configured = 200, alert = 3, danger = 5, more = [] as Cell[] } = {},
): Cell[] => [tag, measured, configured, 'mV/mil', alert, danger, ...more];

// By hand: a danger acts at setpoint × configured / measured: 5·200/160 = 6.25, 5·200/250 = 4, 5·200/200 = 5.
describe('what changed since an earlier audit', () => {
  it('says what became late, what was cured and what is still late, dangers first', () => {
    const result = since(
      plant('mil', [channel('A', 200), channel('B', 160), channel('C', 160), channel('D', 200)]),
      plant('mil', [channel('A', 160), channel('B', 200), channel('C', 160), channel('D', 200)]),
    );
    expect(result.changes.map(short)).toEqual([
      'newly late A danger',
      'newly late A alert',
      'still late C danger',
      'still late C alert',
      'changed sensitivity A measured sensitivity',
      'changed sensitivity B measured sensitivity',
      'cured B danger',
      'cured B alert',
    ]);
    const [danger] = result.changes;
    expect(danger).toMatchObject({
      before: 5,
      now: 6.25,
      unit: 'mil',
      verdictBefore: 'within',
      verdictNow: 'late',
    });
    expect(danger?.message).toBe(
      'Danger is late: really trips at 6.25 mil; it was OK at 5 mil before. Changed meanwhile: measured sensitivity.',
    );
    expect(result.counts).toMatchObject({ 'newly late': 2, 'still late': 2, cured: 2, gone: 0, new: 0 });
  });

  it('says where the workbook named as the earlier one is the later by its calibrations', () => {
    const dated = (measured: number, day: string) =>
      plant('mil', [channel('A', measured, { more: [day] })], ['Calibrated on']);
    const [found, cured] = [dated(160, '2025-01-01'), dated(200, '2024-01-01')];
    const reversed = since(found, cured);
    expect(reversed.counts.cured).toBe(2);
    expect(reversed.remarks.map(({ message }) => message)).toEqual([
      expect.stringMatching(
        /looks like the later one: A was calibrated on 2025-01-01 there, and on 2024-01-01 here\. What is called corrected may then be what went wrong/u,
      ),
    ]);
    expect(since(cured, found).remarks).toEqual([]);
    expect(since(found, found).remarks).toEqual([]);
  });

  it('counts no change where a value is only written in another unit: 1 mil is 25.4 µm exactly', () => {
    const { changes } = since(
      plant('mil', [channel('A', 200)]),
      plant('µm', [['A', 200 / 25.4, 200 / 25.4, 'mV/µm', 76.2, 127]]),
    );
    expect(changes).toEqual([]);
  });

  it('shows a setpoint that did change in the unit that it has now', () => {
    const { changes } = since(
      plant('mil', [channel('A', 200)]),
      plant('µm', [['A', 200, 200, 'mV/mil', 76.2, 150]]),
    );
    expect(changes.map(short)).toEqual(['changed setting A danger']);
    expect(changes[0]).toMatchObject({ now: 150, unit: 'µm' });
    expect(changes[0]?.before).toBeCloseTo(127, 10);
    expect(changes[0]?.message).toBe('Danger: 5 mil p-p (127 µm p-p) before, 150 µm p-p now.');
  });

  it('takes half the level in 0-p for the same setpoint and says that the detection changed', () => {
    const { changes } = since(
      plant('mil', [channel('A', 200, { more: ['p-p'] })], ['Detection']),
      plant('mil', [channel('A', 200, { alert: 1.5, danger: 2.5, more: ['0-p'] })], ['Detection']),
    );
    expect(changes.map(short)).toEqual(['changed setting A detection']);
    expect(changes[0]).toMatchObject({ before: 'p-p', now: '0-p' });
  });

  it('says which channels are gone and which are new, and what is late in a new one', () => {
    const { changes } = since(
      plant('mil', [channel('A', 200), channel('Old', 160)]),
      plant('mil', [channel('a ', 200), channel('New', 160)]),
    );
    expect(changes.map(short)).toEqual([
      'newly late New danger',
      'newly late New alert',
      'gone Old',
      'new New',
    ]);
  });

  it('compares bypass, delays, full scale and multiplier', () => {
    const more = ['Bypass', 'Danger delay (s)', 'Full scale (mil)', 'Set-point multiplier', 'Voting'];
    const { changes } = since(
      plant('mil', [channel('A', 200, { more: ['no', 3, 10, 1, '1oo2'] })], more),
      plant('mil', [channel('A', 200, { more: ['yes', 1, 20, 2, '2oo2'] })], more),
    );
    expect(changes.map(short)).toEqual(
      ['set-point multiplier', 'full scale', 'bypass', 'voting', 'danger delay'].map(
        (name) => `changed setting A ${name}`,
      ),
    );
    expect(changes.map(({ before, now, unit }) => [before, now, unit])).toEqual([
      [1, 2, null],
      [10, 20, 'mil'],
      ['no', 'yes', null],
      ['1oo2', '2oo2', null],
      [3, 1, 's'],
    ]);
  });

  it('does not guess where a tag stands twice', () => {
    const { changes } = since(
      plant('mil', [channel('A', 200), channel('A', 160)]),
      plant('mil', [channel('A', 160)]),
    );
    expect(changes.map(short)).toEqual(['not compared A']);
    expect(changes[0]?.message).toMatch(/in rows 2, 3 of sheet 'Plant' before/);
  });

  it('joins a tag that stands on several machines by the machine, and says which is gone', () => {
    const more = ['Machine'];
    const on = (machine: string, measured: number): Cell[] => channel('A', measured, { more: [machine] });
    const { changes } = since(
      plant('mil', [on('Pump 1', 200), on('Pump 2', 200), on('Pump 3', 200)], more),
      plant('mil', [on('pump  2', 160), on('Pump 1', 200)], more),
    );
    expect(changes.map((one) => `${short(one)} ${one.machine}`)).toEqual([
      'newly late A danger pump  2',
      'newly late A alert pump  2',
      'gone A Pump 3',
      'changed sensitivity A measured sensitivity pump  2',
    ]);
  });

  it('says that a channel is incomplete, and takes no blank of it for a change of a setting', () => {
    const { changes } = since(
      plant('mil', [channel('A', 200, { more: [10] }), channel('B', null)], ['Full scale (mil)']),
      plant('mil', [channel('A', '?', { more: [10] }), channel('B', 200)], ['Full scale (mil)']),
    );
    expect(changes.map(short)).toEqual([
      'newly incomplete A danger',
      'newly incomplete A alert',
      'completed B danger',
      'completed B alert',
    ]);
  });
});

describe('for any two plants', () => {
  const measured = fc.double({ min: 100, max: 300, noNaN: true });
  const lists = fc.uniqueArray(fc.tuple(fc.integer({ min: 1, max: 12 }), measured), {
    selector: ([tag]) => tag,
    minLength: 1,
  });
  const listed = (rows: readonly (readonly [number, number])[]) =>
    plant(
      'mil',
      rows.map(([tag, value]) => channel(`V-${tag}`, value)),
    );

  it('one compared with itself has changed in nothing', () => {
    fc.assert(
      fc.property(lists, (rows) => {
        const { changes } = since(listed(rows), listed(rows.toReversed()));
        expect(changes.filter(({ kind }) => !kind.startsWith('still'))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('what is new one way is gone the other, and each sensitivity changes both ways', () => {
    fc.assert(
      fc.property(lists, lists, (one, other) => {
        const [there, back] = [since(listed(one), listed(other)), since(listed(other), listed(one))];
        expect(there.counts.new).toBe(back.counts.gone);
        expect(there.counts['changed sensitivity']).toBe(back.counts['changed sensitivity']);
        const tags = new Set([...one, ...other].map(([tag]) => tag)).size;
        expect(there.counts.new + one.length).toBe(tags);
      }),
      { numRuns: 60 },
    );
  });
});
