import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { stationSheets } from '../bench/station.ts';
import { smallWorkbook } from '../cli/smallWorkbook.ts';

/** A command whose every call of the file system may fail. */
export interface FaultyCommand {
  readonly name: string;
  readonly args: readonly string[];
  /** Files it reads; the folder holds them before it begins. */
  readonly inputs: readonly string[];
  /** Files it writes, with what they hold before; `null` for nothing. */
  readonly outputs: Readonly<Record<string, string | null>>;
  /** Exit codes where nothing went wrong. */
  readonly passes: number;
  /** What the command line of the process with the fault holds; the process that was started where left out. */
  readonly within?: string;
}

const member = '--member-of-fleet';
const book = smallWorkbook([{ tag: 'L-1', machine: 'Fan', measured: 160 }]);
const many = newWorkbook(stationSheets(60));
const demo = resolve(import.meta.dirname, '../../workbooks/harbour-station.xlsx');

const texts = {
  'channels.csv': 'Tag,Measured sensitivity (mV/mil)\nX-1,160\n',
  'monitor.csv': 'Tag,Configured sensitivity (mV/mil),Alert (mil),Danger (mil)\nX-1,200,3,5\n',
  'policy.json': '{"tolerance": 0.1}',
  'map.json': '{}',
};

/** Lays what the commands read into a folder. */
export function layInputs(folder: string): void {
  mkdirSync(join(folder, 'plant'));
  mkdirSync(join(folder, 'copies'));
  for (const [name, text] of Object.entries(texts)) writeFileSync(join(folder, name), text);
  for (const name of ['in.xlsx', 'plant/a.xlsx', 'plant/b.xlsx']) writeFileSync(join(folder, name), book);
  writeFileSync(join(folder, 'many.xlsx'), many);
  copyFileSync(demo, join(folder, 'demo.xlsx'));
}

export const commands: readonly FaultyCommand[] = [
  {
    name: 'several outputs, some of them there',
    args: [
      'many.xlsx',
      '--out',
      'out.xlsx',
      '--handover',
      'hand.xlsx',
      '--json',
      'r.json',
      '--share',
      's.xlsx',
      '--force',
    ],
    inputs: ['many.xlsx'],
    outputs: { 'out.xlsx': 'earlier', 'hand.xlsx': null, 'r.json': 'earlier', 's.xlsx': null },
    passes: 0,
  },
  {
    name: 'policy, map and an earlier audit',
    args: [
      'in.xlsx',
      '--policy',
      'policy.json',
      '--map',
      'map.json',
      '--since',
      'demo.xlsx',
      '--json',
      'r.json',
    ],
    inputs: ['in.xlsx', 'policy.json', 'map.json', 'demo.xlsx'],
    outputs: { 'r.json': null },
    passes: 0,
  },
  {
    name: 'two text tables',
    args: ['channels.csv', 'monitor.csv', '--out', 'out.xlsx', '--strict'],
    inputs: ['channels.csv', 'monitor.csv'],
    outputs: { 'out.xlsx': null },
    passes: 1,
  },
  {
    name: 'a copy to share alone',
    args: ['demo.xlsx', '--share', 's.xlsx', '--force'],
    inputs: ['demo.xlsx'],
    outputs: { 's.xlsx': 'earlier' },
    passes: 0,
  },
  {
    name: 'a folder',
    args: ['plant', '--out', 'copies', '--json', 'r.json', '--force'],
    inputs: ['plant/a.xlsx', 'plant/b.xlsx'],
    outputs: {
      'copies/a.xlsx': 'earlier',
      'copies/b.xlsx': null,
      'copies/Fleet summary.xlsx': null,
      'r.json': null,
    },
    passes: 0,
  },
  {
    name: 'a workbook of a folder',
    args: ['plant', '--out', 'copies', '--json', 'r.json', '--force'],
    inputs: ['plant/a.xlsx', 'plant/b.xlsx'],
    outputs: {
      'copies/a.xlsx': 'earlier',
      'copies/b.xlsx': null,
      'copies/Fleet summary.xlsx': null,
      'r.json': null,
    },
    passes: 0,
    within: member,
  },
];

/** Marks a process that must not have the fault, where the one that was started has it. */
export const notWithin = member;
