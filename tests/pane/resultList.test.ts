import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { machinesOf } from '../../src/sheets/machines.ts';
import { noFilter } from '../../src/pane/audit/channels/channelFilter.ts';
import { listRows, machineKey, type ListRow } from '../../src/pane/audit/channels/listRows.ts';
import { countsText, tripText } from '../../src/pane/audit/channels/machineText.ts';
import { exampleWorkbook } from '../../src/pane/example/exampleWorkbook.ts';

const example = machinesOf(audit(exampleWorkbook.workbook));
const machine = (name: string) => example.find((one) => one.name === name)!;
const none = new Map<string, boolean>();
const named = (rows: readonly ListRow[]): string[] =>
  rows.map((row) => (row.kind === 'machine' ? row.machine.name : `  ${row.channel.tag}`));

describe('list of machines and channels', () => {
  it('shows a short list with every channel below its machine', () => {
    const { rows, fitting } = listRows(example, noFilter, none);
    expect(fitting).toBe(8);
    expect(rows).toHaveLength(10);
    const lines = named(rows);
    expect(lines.filter((line) => !line.startsWith(' '))).toEqual(example.map(({ name }) => name));
    const [first] = example;
    expect(lines.slice(1, 1 + first!.channels.length)).toEqual(first!.channels.map(({ tag }) => `  ${tag}`));
  });

  it('counts places among siblings', () => {
    const { rows } = listRows(example, noFilter, none);
    const pump = rows.findIndex((row) => row.kind === 'machine' && row.machine.name === 'Pump');
    expect(rows[pump]).toMatchObject({ of: 2, open: true });
    expect(rows[pump + 2]).toMatchObject({ kind: 'channel', level: 2, at: 2, of: 2 });
  });

  it('closes and opens the machines that the user turned', () => {
    const closed = new Map([[machineKey('Compressor'), false]]);
    expect(named(listRows(example, noFilter, closed).rows).filter((line) => line.includes('K1-'))).toEqual(
      [],
    );
    expect(listRows(example, noFilter, closed).fitting).toBe(8);
  });

  it('shows of a long list the machines alone, until a search finds channels in them', () => {
    const compressor = machine('Compressor');
    const machines = Array.from({ length: 40 }, (_, index) => ({
      ...compressor,
      name: `M-${index}`,
      channels: compressor.channels.map((channel) => ({ ...channel, tag: `${channel.tag} of ${index}` })),
    }));
    expect(listRows(machines, noFilter, none).rows.map(({ kind }) => kind)).toEqual(
      Array.from({ length: 40 }, () => 'machine'),
    );
    const found = listRows(machines, { standing: null, search: 'k1-1y of 33' }, none);
    expect(named(found.rows)).toEqual(['M-33', '  K1-1Y of 33']);
    expect(found.fitting).toBe(1);
  });

  it('needs no line for the only machine', () => {
    const compressor = machine('Compressor');
    const { rows } = listRows([compressor], noFilter, none);
    expect(rows.every((row) => row.kind === 'channel' && row.level === 1)).toBe(true);
  });

  it('leaves out machines in which nothing fits', () => {
    const { rows } = listRows(example, { standing: null, search: 'thrust' }, none);
    expect(named(rows).filter((line) => !line.startsWith(' '))).toEqual(['Compressor']);
  });
});

describe('line of a machine', () => {
  it('counts its channels by how they stand, worst first', () => {
    const { channels } = machine('Compressor');
    const text = countsText(machine('Compressor'));
    const counted = text.split(', ').reduce((sum, part) => sum + Number(part.split(' ')[0]), 0);
    expect(counted).toBe(channels.length);
    // K1-1X: 160 of 200 mV/mil; K1-2X: 231 of 200, early.
    expect(text).toMatch(/\d late.*\d early/u);
  });

  it('says what still trips it, and where nothing votes', () => {
    expect(tripText(machine('Pump'))).toBe('No voting group');
    // Drive end, free end, thrust and thrust in the counter direction: four danger votes.
    expect(tripText(machine('Compressor'))).toMatch(/4 votes trip/u);
  });

  it('names the votes that cannot trip', () => {
    const own = machine('Compressor');
    const idle = own.groups.map((group) =>
      group.name === 'K1 thrust' ? { ...group, canTrip: false, effective: null } : group,
    );
    expect(tripText({ ...own, groups: idle })).toBe('2 of 4 votes trip; cannot trip: K1 thrust');
  });
});
