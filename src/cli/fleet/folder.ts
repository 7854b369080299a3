import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isTextTable } from '../audit/input.ts';
import { identityOf } from '../fileIdentity.ts';
import { pathOf } from '../files.ts';
import { UsageRefused } from '../refused.ts';
import { plain } from '../terminal.ts';
import { commandAsTyped } from '../command.ts';

/** What stands directly in a folder. */
export interface Listing {
  /** Names of the workbooks to audit, in the order of their names, numbers by their size. */
  readonly workbooks: readonly string[];
  /** What is left out and what to do about it, one line each. */
  readonly leftOut: readonly string[];
}

const kinds = {
  folder: 'Folders inside are not looked into; audit each by a call of its own',
  table: `Text tables are audited in pairs by a call of their own (${commandAsTyped('audit')} CHANNELS.csv MONITOR.csv)`,
  foreign: 'Workbooks of a kind that is not read; save them as .xlsx',
  open: 'Open in a spreadsheet program, it seems: what is not saved there is not audited',
  other: 'Other files',
} as const;
type LeftOut = keyof typeof kinds;
type Kind = LeftOut | 'workbook';

/** Whether a path of the command line is a folder. */
export function isFolder(given: string): boolean {
  return isDirectory(pathOf(given));
}

/** What can't be looked at is taken for a file: reading it says why. */
function isDirectory(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

/**
 * The workbooks of a folder, and what else stands there but for `own`, a folder of ours inside.
 * @throws UsageRefused where there is no workbook.
 */
export function listFolder(given: string, own: string | undefined): Listing {
  const folder = pathOf(given);
  const byKind = new Map<Kind, string[]>();
  for (const name of namesIn(given).sort(byName)) {
    if (own !== undefined && isSameFolder(join(folder, name), own)) continue;
    const kind = kindOf(folder, name);
    byKind.set(kind, [...(byKind.get(kind) ?? []), lockedBy(name) ?? name]);
  }
  const leftOut = (Object.keys(kinds) as LeftOut[]).flatMap((kind) => {
    const names = byKind.get(kind);
    return names ? [`${kinds[kind]}: ${listed(names)}.`] : [];
  });
  const workbooks = byKind.get('workbook') ?? [];
  if (workbooks.length === 0) {
    throw new UsageRefused([`${given}: there is no .xlsx or .xlsm in this folder.`, ...leftOut].join(' '));
  }
  return { workbooks, leftOut };
}

/** What can't be looked at is another one. */
function isSameFolder(one: string, other: string): boolean {
  try {
    const identity = identityOf(one);
    return identity !== undefined && identity === identityOf(other);
  } catch {
    return false;
  }
}

function namesIn(given: string): string[] {
  try {
    return readdirSync(pathOf(given));
  } catch {
    throw new UsageRefused(`${given}: the folder can not be read. Ask for the permission to.`);
  }
}

/** The workbook that a spreadsheet program holds open, where this is the name of the file it lays beside it meanwhile. */
function lockedBy(name: string): string | undefined {
  const found = /^~\$(.+)$/u.exec(name) ?? /^\.~lock\.(.+)#$/u.exec(name);
  return found?.[1];
}

function kindOf(folder: string, name: string): Kind {
  if (isDirectory(join(folder, name))) return 'folder';
  if (lockedBy(name) !== undefined) return 'open';
  // Hidden, such as what a Mac leaves beside each file on a share.
  if (name.startsWith('.')) return 'other';
  if (/\.xls[xm]$/iu.test(name)) return 'workbook';
  if (isTextTable(name)) return 'table';
  return /\.(xls|xlsb|xlt|xltx|xltm|ods|fods|numbers)$/iu.test(name) ? 'foreign' : 'other';
}

const collator = new Intl.Collator('en', { numeric: true });

function byName(a: string, b: string): number {
  return collator.compare(a, b) || (a < b ? -1 : 1);
}

const namedAtMost = 10;

function listed(names: readonly string[]): string {
  const named = names.slice(0, namedAtMost).map((name) => plain(name, 80));
  const more = names.length - named.length;
  return more > 0 ? `${named.join(', ')} and ${more} more` : named.join(', ');
}
