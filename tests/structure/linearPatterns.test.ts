import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { checkSync } from 'recheck/lib/browser.js';
import { afterEach, expect, test, vi } from 'vitest';
import { tidy } from '../../src/units/tidy.ts';
import { sourceFiles } from './sourceFiles.ts';

interface Pattern {
  readonly file: string;
  readonly source: string;
  readonly flags: string;
}

/**
 * Patterns that the checker cannot take apart, with what keeps their text short: `tidy` refuses a unit of more than 64
 * characters (shown below), and templates of formulas are our own.
 */
const onShortTexts: ReadonlyMap<string, readonly string[]> = new Map([
  [
    'src/units/detection.ts',
    ['^[\\s_-]+|[\\s_-]+$', '(?<!^s|\\ss)(?<=[a-zμ"%2])(?<!\\bpk)(pp|pkpk|pk|rms)$'],
  ],
  ['src/units/expression.ts', ['\\s*(?:(?<word>[a-zμ]+|%|")|(?<power>\\^?-?\\d)(?!\\d)|(?<sign>[*/()]))']],
  ['src/units/tidy.ts', ['(?<=[va]|volts?|amps?)\\s*(?:\\(d\\.?c\\.?\\)|-?\\s*d\\.?c\\b\\.?)']],
  ['src/hosts/formats/rowFormula.ts', ['(?<![\\w.$\\\\])\\$?[A-Za-z]{1,3}\\d+(?![\\w.(])']],
]);

/** Files that put patterns together from constants as they are loaded, or from words of our own. */
const builtPatterns: readonly string[] = [
  'src/tools/addin/notices.ts',
  'src/tools/sideload/main.ts',
  'src/hosts/formats/ourFormula.ts',
  'src/hosts/formats/ourFormula.ts',
  'src/units/detection.ts',
];

/** Longest text of a unit, as `tidy` takes it. */
const longestUnit = 64;

const { literals, constructed } = patternsOf(sourceFiles());

afterEach(() => vi.unstubAllGlobals());

test('the sources hold patterns to look at', () => {
  expect(literals.length).toBeGreaterThan(150);
});

test('a pattern that takes quadratic time is told', () => {
  expect(complexity({ file: '', source: '^\\d+\\.?\\d*$', flags: '' })).toBe('polynomial');
  expect(complexity({ file: '', source: '\\s+$', flags: 'g' })).toBe('polynomial');
});

test('every pattern of the sources takes time in proportion to its text', { timeout: 300_000 }, () => {
  const distinct = new Map(
    literals.map((pattern) => [`${pattern.file} /${pattern.source}/${pattern.flags}`, pattern]),
  );
  const slow = [...distinct].filter(([, pattern]) => !isShort(pattern) && !isLinear(pattern));
  expect(slow.map(([where]) => where)).toEqual([]);
});

test('patterns that are put together take time in proportion to their text', async () => {
  expect(constructed.filter((file) => !builtPatterns.includes(file))).toEqual([]);
  const made: Pattern[] = [];
  vi.stubGlobal('RegExp', recording(made));
  vi.resetModules();
  const { withShownNames } = await import('../../src/hosts/formats/ourFormula.ts');
  withShownNames('SUM(A1)');
  const plain = made.filter(({ source }) => !source.includes('(?<'));
  expect(plain.length).toBeGreaterThanOrEqual(4);
  expect(plain.filter((pattern) => !isLinear(pattern))).toEqual([]);
});

test('a text longer than a unit is none before any pattern sees it', () => {
  expect(tidy('m'.repeat(longestUnit))).toBeDefined();
  expect(tidy('m'.repeat(longestUnit + 1))).toBeUndefined();
  expect(tidy('\u3392'.repeat(longestUnit))).toBeUndefined();
});

function isShort({ file, source }: Pattern): boolean {
  return onShortTexts.get(file)?.includes(source) ?? false;
}

function isLinear(pattern: Pattern): boolean {
  const found = complexity(pattern);
  return found === 'safe' || found === 'linear';
}

/** By the automaton of the pattern as it looks for a match anywhere in a text, which holds for a sticky one too. */
function complexity({ source, flags }: Pattern): string {
  const result = checkSync(source, flags, { checker: 'automaton', timeout: 60_000 });
  return result.status === 'unknown' ? result.error.kind : result.complexity.type;
}

function recording(made: Pattern[]): typeof RegExp {
  return new Proxy(RegExp, {
    construct(target, [source, flags]: [string | RegExp, string?]) {
      const pattern = new target(source, flags);
      if (typeof source === 'string') made.push({ file: '', source: pattern.source, flags: pattern.flags });
      return pattern;
    },
  });
}

function patternsOf(files: readonly string[]): { literals: Pattern[]; constructed: string[] } {
  const found: Pattern[] = [];
  const built: string[] = [];
  for (const file of files) {
    const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
    const tree = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true, kind);
    const look = (node: ts.Node): void => {
      if (ts.isRegularExpressionLiteral(node)) {
        const end = node.text.lastIndexOf('/');
        found.push({ file, source: node.text.slice(1, end), flags: node.text.slice(end + 1) });
      }
      const isCall = ts.isNewExpression(node) || ts.isCallExpression(node);
      if (isCall && node.expression.getText() === 'RegExp') built.push(file);
      ts.forEachChild(node, look);
    };
    look(tree);
  }
  return { literals: found, constructed: built };
}
