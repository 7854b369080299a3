// package.json names what the project imports, where it belongs, and nothing else.
import { readFileSync, readdirSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';

const root = resolve(import.meta.dirname, '../..');
const section = z.record(z.string(), z.string()).default({});
const manifest = z
  .object({
    scripts: section,
    dependencies: section,
    devDependencies: section,
    optionalDependencies: section,
    peerDependencies: section,
    bin: z.union([z.string(), z.record(z.string(), z.string())]).optional(),
  })
  .parse(JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')));

/** What a file asks of packages. */
interface Asked {
  readonly name: string;
  /** Types alone, which are gone once it runs. */
  readonly typesOnly: boolean;
}

/** The package that a module name leads to; none for our own files and for Node's. */
function packageOf(module: string): string[] {
  if (module.startsWith('.') || isBuiltin(module)) return [];
  return [module.split('/', module.startsWith('@') ? 2 : 1).join('/')];
}

/** Whether an import brings types alone. */
function bringsTypes(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  const clause = node.importClause;
  if (clause === undefined) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const named = clause.namedBindings;
  return (
    clause.name === undefined &&
    named !== undefined &&
    ts.isNamedImports(named) &&
    named.elements.every(({ isTypeOnly }) => isTypeOnly)
  );
}

/** Packages that a source text imports or resolves, however it does. */
function asked(path: string, text: string): Asked[] {
  const found: Asked[] = [];
  const add = (literal: ts.Node | undefined, typesOnly: boolean): void => {
    if (literal && ts.isStringLiteralLike(literal))
      found.push(...packageOf(literal.text).map((name) => ({ name, typesOnly })));
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node))
      add(node.moduleSpecifier, bringsTypes(node));
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      add(node.argument.literal, true);
    else if (ts.isCallExpression(node)) {
      const { expression } = node;
      const resolves = ts.isPropertyAccessExpression(expression) && expression.name.text === 'resolve';
      const made = resolves && expression.expression.getText().includes('equire');
      if (expression.kind === ts.SyntaxKind.ImportKeyword || made) add(node.arguments[0], false);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, true));
  return found;
}

function askedBelow(folder: string): Asked[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.([cm]?tsx?|mjs)$/u.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .flatMap((path) => asked(path, readFileSync(path, 'utf8')));
}

const inSource = askedBelow('src');
const atRunTime = new Set(inSource.filter(({ typesOnly }) => !typesOnly).map(({ name }) => name));
const ofSource = new Set(inSource.map(({ name }) => name));
const configs = readdirSync(root).filter((name) => /\.config\.[jt]s$/u.test(name));
const besides = new Set([
  ...inSource.map(({ name }) => name),
  ...askedBelow('tests').map(({ name }) => name),
  ...configs.flatMap((name) => asked(name, readFileSync(join(root, name), 'utf8'))).map(({ name }) => name),
]);

const installed = (name: string): unknown =>
  JSON.parse(readFileSync(join(root, 'node_modules', name, 'package.json'), 'utf8'));
const ofPackage = z.object({
  bin: z.union([z.string(), z.record(z.string(), z.string())]).default({}),
  peerDependencies: section,
});

/** Whether one of these scripts begins a command of a package. */
function isRunBy(scripts: readonly string[], name: string): boolean {
  const { bin } = ofPackage.parse(installed(name));
  const commands = typeof bin === 'string' ? [name.split('/').at(-1) ?? name] : Object.keys(bin);
  const words = scripts
    .flatMap((script) => script.split('&&'))
    .map((call) => call.trim().split(' ')[0] ?? '');
  return commands.some((command) => words.includes(command));
}

const declared = Object.keys(manifest.dependencies);
const forWork = Object.keys(manifest.devDependencies);

describe('package.json', () => {
  it('has in its dependencies all that the source imports when it runs', () => {
    expect([...atRunTime].filter((name) => !declared.includes(name)).sort()).toEqual([]);
  });

  it('names all that tests and types import', () => {
    const named = [...declared, ...forWork];
    expect([...besides].filter((name) => !named.includes(name)).sort()).toEqual([]);
  });

  it('has no dependency that nothing needs', () => {
    const peers = new Set(
      [...atRunTime].flatMap((name) => Object.keys(ofPackage.parse(installed(name)).peerDependencies)),
    );
    const scripts = Object.values(manifest.scripts);
    const idle = declared.filter(
      (name) => !ofSource.has(name) && !peers.has(name) && !isRunBy(scripts, name),
    );
    expect(idle).toEqual([]);
  });

  it('has nothing for work alone that nothing needs', () => {
    const typesOf = (name: string) => name.replace(/^@types\//u, '');
    const idle = forWork.filter(
      (name) =>
        !besides.has(name) &&
        !isRunBy(Object.values(manifest.scripts), name) &&
        !(name.startsWith('@types/') && (name === '@types/node' || besides.has(typesOf(name)))) &&
        !(name === '@types/office-js' && declared.concat(forWork).includes('@microsoft/office-js')),
    );
    expect(idle).toEqual([]);
  });

  it('pins every version', () => {
    const versions = [manifest.dependencies, manifest.devDependencies, manifest.optionalDependencies];
    const loose = versions
      .flatMap(Object.entries)
      .filter(([, version]) => !/^\d+\.\d+\.\d+$/u.test(String(version)));
    expect(loose).toEqual([]);
  });

  it('would be told of an import of any kind', () => {
    const names = (text: string) =>
      asked('a.ts', text).map(({ name, typesOnly }) => `${name}${typesOnly ? ' type' : ''}`);
    expect(names("import { a } from '@scope/one/deep'; import type { b } from 'two';")).toEqual([
      '@scope/one',
      'two type',
    ]);
    expect(names("import { type a, type b } from 'three'; export * from 'four';")).toEqual([
      'three type',
      'four',
    ]);
    expect(names("void import('five'); createRequire(x).resolve('six/package.json');")).toEqual([
      'five',
      'six',
    ]);
    expect(
      names("import 'seven/style.css'; import './own.ts'; import 'node:fs'; type T = import('eight').T;"),
    ).toEqual(['seven', 'eight type']);
  });
});
