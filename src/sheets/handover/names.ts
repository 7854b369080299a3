import { machineName, type Machine } from '../machines.ts';

const longest = 31;

/**
 * A sheet name for each machine, all different: without the characters that sheet names can't have, cut to 31, and
 * numbered where two begin alike (limits of spreadsheet programs: common practice, no source).
 */
export function machineSheetNames(machines: readonly Machine[], taken: string): readonly string[] {
  const used = new Set([taken.toLowerCase(), 'history']);
  return machines.map((machine) => {
    const legal = legalName(machineName(machine));
    let name = cut(legal, longest);
    for (let number = 2; used.has(name.toLowerCase()); number++) {
      const suffix = ` (${number})`;
      name = cut(legal, longest - suffix.length) + suffix;
    }
    used.add(name.toLowerCase());
    return name;
  });
}

function legalName(name: string): string {
  const legal = name
    .replace(/[:\\/?*[\]{}\p{Cc}\p{Surrogate}]/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim()
    .replace(/^'+|'+$/gu, '')
    .trim();
  return legal === '' ? 'Machine' : legal;
}

function cut(name: string, most: number): string {
  return name
    .slice(0, most)
    .replace(/[\uD800-\uDBFF]$/u, '')
    .replace(/[\s']+$/u, '');
}
