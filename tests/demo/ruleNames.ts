import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import type { Report } from '../../src/audit/model/report.ts';

const root = fileURLToPath(new URL('../../src/audit/', import.meta.url));
/** Files with words for headers, cells and codes of what needs action, some of which look like names of rules. */
const vocabulary = /(^|[\\/])(tables[\\/]|rows[\\/]words\.ts|attention\.ts|sentences\.ts|evaluateGroup\.ts)/;
/** What makes a fact of a rule. */
const makers: ReadonlySet<string> = new Set(['factOf', 'factOfThreshold']);
const kebab = /^[a-z]+(-[a-z]+)+$/;
/** What a name made from a threshold's begins with; not `alert` of `alert-not-below-danger`, which is whole. */
const ofThreshold = /^(counter-)?(alert|danger)-(?!not-)/;

/**
 * Every name of a rule in the source of the audit, found by its form: a string of several words with hyphens, or
 * the rule of a fact. The part that names the threshold is left out: `late` stands for `danger-late` and `alert-late`.
 */
export function ruleNames(): ReadonlySet<string> {
  const names = new Set<string>();
  for (const file of readdirSync(root, { recursive: true, encoding: 'utf8' })) {
    if (!file.endsWith('.ts') || vocabulary.test(file)) continue;
    const text = readFileSync(join(root, file), 'utf8');
    collect(ts.createSourceFile(file, text, ts.ScriptTarget.Latest), names);
  }
  for (const word of ['p-p', 'no-trip', 'start-up']) names.delete(word);
  return names;
}

function collect(node: ts.Node, names: Set<string>): void {
  if (ts.isImportDeclaration(node)) return;
  if (ts.isStringLiteral(node) && kebab.test(node.text)) names.add(node.text);
  if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && makers.has(node.expression.text)) {
    const [rule] = node.arguments;
    if (rule && ts.isStringLiteral(rule)) names.add(rule.text);
  }
  ts.forEachChild(node, (inner) => {
    collect(inner, names);
  });
}

/** Names of all rules that spoke in a report, without the threshold of which they spoke. */
export function rulesIn({ channels, groups, problems }: Report): ReadonlySet<string> {
  const spoken = [...channels, ...groups].flatMap(({ findings }) => findings.map(({ rule }) => rule));
  return new Set(
    [...spoken, ...problems.map(({ rule }) => rule)].map((rule) => rule.replace(ofThreshold, '')),
  );
}
