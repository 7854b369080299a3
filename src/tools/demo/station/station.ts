import { readFileSync } from 'node:fs';
import { readMachine } from './readMachine.ts';
import type { Machine } from './records.ts';

/** The files of the machines, in the order in which the station's workbook lists them. */
const files = ['T-101', 'G-101', 'K-101', 'K-201', 'P-301', 'P-302', 'P-303', 'F-401', 'T-102', 'K-102'];

/** The machine with which the second rack of monitors begins. */
export const secondRack = 'P-301 Booster pump';

/** The machines of an invented gas compression station. */
export const machines: readonly Machine[] = files.map((name) => {
  const file = `machines/${name}.txt`;
  return readMachine(readFileSync(new URL(file, import.meta.url), 'utf8'), file);
});
