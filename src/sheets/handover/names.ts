import { cutSheetName, longestSheetName, withoutApostrophes } from '../../cells/address.ts';
import { machineName, type Machine } from '../machines.ts';

const annexMark = ' annex';

/** Names of the two sheets of a machine. */
export interface MachineSheetNames {
  readonly page: string;
  readonly annex: string;
}

/**
 * Sheet names for each machine, all different: without the characters that sheet names can't have or a link can't hold, cut
 * to 31, and numbered where two begin alike (limits of spreadsheet programs: common practice, no source).
 */
export function machineSheetNames(machines: readonly Machine[], taken: string): readonly MachineSheetNames[] {
  const used = new Set([taken.toLowerCase(), 'history']);
  const lastNumber = new Map<string, number>();
  return machines.map((machine) => {
    const legal = legalName(machineName(machine));
    let names = both(legal, '');
    const stem = names.page.toLowerCase();
    for (let number = (lastNumber.get(stem) ?? 1) + 1; isTaken(names, used); number++) {
      names = both(legal, ` (${number})`);
      lastNumber.set(stem, number);
    }
    used.add(names.page.toLowerCase());
    used.add(names.annex.toLowerCase());
    return names;
  });
}

function both(legal: string, suffix: string): MachineSheetNames {
  const page = cutSheetName(legal, longestSheetName - annexMark.length - suffix.length) + suffix;
  return { page, annex: page + annexMark };
}

function isTaken({ page, annex }: MachineSheetNames, used: ReadonlySet<string>): boolean {
  return used.has(page.toLowerCase()) || used.has(annex.toLowerCase());
}

function legalName(name: string): string {
  const plain = name
    .replace(/[:\\/?*[\]{}"\p{Cc}\p{Surrogate}]/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
  const legal = withoutApostrophes(plain).trim();
  return legal === '' ? 'Machine' : legal;
}
