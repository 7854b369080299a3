import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, posix, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { preProcessFile } from 'typescript';
import { describe, expect, it } from 'vitest';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'src');

/** What each layer may import beside itself. Source: the project's own design. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  cells: [],
  units: [],
  method: ['units'],
  functions: ['cells', 'units', 'method'],
  audit: ['cells', 'units', 'method'],
  sheets: ['cells', 'units', 'method', 'audit'],
  evidence: ['cells', 'audit', 'sheets'],
  hosts: ['cells', 'units', 'method', 'audit', 'sheets'],
  share: ['cells', 'functions', 'units', 'sheets', 'hosts'],
  cli: ['cells', 'units', 'method', 'functions', 'audit', 'sheets', 'evidence', 'hosts', 'share', 'tools'],
  pane: ['cells', 'units', 'method', 'audit', 'sheets', 'evidence', 'functions', 'hosts'],
  addin: ['functions', 'audit'],
  bench: ['cells', 'units', 'method', 'functions', 'audit', 'sheets', 'hosts', 'pane', 'share'],
  tools: ['cells', 'units', 'method', 'functions', 'audit', 'sheets', 'hosts', 'addin'],
};

/**
 * The floors of the audit, from the ground: the model of a channel and a report; what is read of a workbook; the judgement
 * of what was read; the advice drawn from it; what goes by whole reports; the audit itself.
 */
const AUDIT_FLOORS: readonly (readonly string[])[] = [
  ['model'],
  ['read'],
  ['judge'],
  ['advise'],
  ['since', 'evidence'],
  ['audit.ts'],
];

function auditFloor(path: string): number {
  return AUDIT_FLOORS.findIndex((names) => names.includes(path.split('/')[1] ?? ''));
}

interface SourceFile {
  /** Path below `src`, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

const FILES: readonly SourceFile[] = readdirSync(ROOT, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.[cm]?tsx?$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
  .map((path) => ({ path: relative(ROOT, path).split(sep).join('/'), text: readFileSync(path, 'utf8') }));

/** Project files that a file imports, as paths below `src`; the compiler's own scanner finds them. */
function importsOf({ path, text }: SourceFile): string[] {
  return preProcessFile(text, true, true)
    .importedFiles.map(({ fileName }) => fileName)
    .filter((name) => name.startsWith('.'))
    .map((name) => posix.join(posix.dirname(path), name));
}

/** The pane knows hosts by their port alone; only its entry chooses Excel. */
function reachesHost(path: string, target: string): boolean {
  if (!target.startsWith('hosts/') || target.startsWith('hosts/port/')) return false;
  return !(path === 'pane/main.tsx' && target.startsWith('hosts/excel/'));
}

/** Complaints about imports that leave `src` or go against the layers. */
function against(file: SourceFile): string[] {
  const layer = file.path.split('/')[0] ?? '';
  return importsOf(file).flatMap((target) => {
    const targetLayer = target.split('/')[0] ?? '';
    const allowed =
      (targetLayer === layer || (MAY_IMPORT[layer] ?? []).includes(targetLayer)) &&
      !(layer === 'pane' && reachesHost(file.path, target));
    return allowed ? [] : [`${file.path} imports ${target}`];
  });
}

/** Imports from one floor of the audit to one above it, or to its neighbour. */
function upstairs(file: SourceFile): string[] {
  if (!file.path.startsWith('audit/')) return [];
  const [, own] = file.path.split('/');
  return importsOf(file)
    .filter((target) => target.startsWith('audit/') && target.split('/')[1] !== own)
    .filter((target) => auditFloor(target) >= auditFloor(file.path))
    .map((target) => `${file.path} imports ${target}`);
}

/** Circles of imports, each as the files in it. */
function circles(files: readonly SourceFile[]): string[][] {
  const imports = new Map(files.map((file) => [file.path, importsOf(file)]));
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const found: string[][] = [];
  const visit = (path: string): number => {
    const at = order.size;
    order.set(path, at);
    let low = at;
    open.push(path);
    for (const target of imports.get(path) ?? []) {
      if (!imports.has(target)) continue;
      if (!order.has(target)) low = Math.min(low, visit(target));
      else if (open.includes(target)) low = Math.min(low, order.get(target) ?? at);
    }
    lowest.set(path, low);
    if (low === at) {
      const circle = open.splice(open.lastIndexOf(path));
      if (circle.length > 1 || imports.get(path)?.includes(path)) found.push(circle);
    }
    return low;
  };
  for (const path of imports.keys()) if (!order.has(path)) visit(path);
  return found;
}

describe('structure of the source', () => {
  it('is found, layer by layer', () => {
    const layers = new Set(FILES.map(({ path }) => path.split('/')[0]));
    for (const layer of ['cells', 'units', 'method']) expect(layers).toContain(layer);
    for (const layer of layers) expect(Object.keys(MAY_IMPORT)).toContain(layer);
  });

  it('imports point one way', () => {
    expect(FILES.flatMap(against)).toEqual([]);
  });

  it('imports inside the audit go down its floors', () => {
    expect(FILES.filter(({ path }) => path.startsWith('audit/') && auditFloor(path) < 0)).toEqual([]);
    expect(FILES.flatMap(upstairs)).toEqual([]);
    const wrong = (path: string, target: string) =>
      upstairs({ path, text: `import type { X } from '${target}';` });
    expect(wrong('audit/model/a.ts', '../read/b.ts')).toHaveLength(1);
    expect(wrong('audit/read/tables/a.ts', '../../judge/b.ts')).toHaveLength(1);
    expect(wrong('audit/since/a.ts', '../evidence/b.ts')).toHaveLength(1);
    expect(wrong('audit/judge/a.ts', '../audit.ts')).toHaveLength(1);
    expect(wrong('audit/judge/a.ts', '../read/b.ts')).toEqual([]);
  });

  it('no imports go in a circle', () => {
    expect(circles(FILES)).toEqual([]);
    const file = (path: string, target: string): SourceFile => ({ path, text: `import '${target}';` });
    expect(circles([file('a.ts', './b.ts'), file('b.ts', './c.ts'), file('c.ts', './a.ts')])).toHaveLength(1);
    expect(circles([file('a.ts', './b.ts'), file('b.ts', './c.ts'), file('c.ts', './d.ts')])).toEqual([]);
  });

  it('a wrong import would be seen', () => {
    const wrong = (path: string, target: string) =>
      against({ path, text: `import type { X } from '${target}';` });
    expect(wrong('units/a.ts', '../method/b.ts')).toHaveLength(1);
    expect(wrong('method/zone/a.ts', '../../audit/b.ts')).toHaveLength(1);
    expect(wrong('sheets/a.ts', '../hosts/b.ts')).toHaveLength(1);
    expect(wrong('hosts/file/a.ts', '../../cli/b.ts')).toHaveLength(1);
    expect(wrong('hosts/file/a.ts', '../../functions/b.ts')).toHaveLength(1);
    expect(wrong('functions/a.ts', '../audit/b.ts')).toHaveLength(1);
    expect(wrong('sheets/a.ts', '../evidence/b.ts')).toHaveLength(1);
    expect(wrong('evidence/a.ts', '../hosts/b.ts')).toHaveLength(1);
    expect(wrong('cells/a.ts', '../../tests/b.ts')).toHaveLength(1);
    expect(wrong('pane/audit/a.tsx', '../../hosts/excel/b.ts')).toHaveLength(1);
    expect(wrong('pane/main.tsx', '../hosts/file/b.ts')).toHaveLength(1);
    expect(wrong('pane/main.tsx', '../hosts/excel/b.ts')).toEqual([]);
    expect(wrong('pane/audit/a.tsx', '../../hosts/port/port.ts')).toEqual([]);
    expect(wrong('audit/a.ts', '../method/b.ts')).toEqual([]);
    expect(against({ path: 'units/a.ts', text: "export * from '../audit/b.ts';" })).toHaveLength(1);
    expect(against({ path: 'units/a.ts', text: "void import('../audit/b.ts');" })).toHaveLength(1);
  });

  it('names say what a file is about', () => {
    expect(FILES.filter(({ path }) => /(util|helper|manager|misc|common)s?\b/i.test(path))).toEqual([]);
  });

  it('files are short', () => {
    const long = FILES.filter(({ text }) => text.split('\n').length > 250).map(({ path }) => path);
    expect(long).toEqual([]);
  });
});
