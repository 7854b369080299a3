import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { auditCase } from './golden.ts';
import { goldenCases } from './goldenCases.ts';

const root = fileURLToPath(new URL('../../src/audit/', import.meta.url));

/** Texts of that form that are words for a detection or a stage, or reasons to act, not names of rules. */
const words = new Set([
  'p-p',
  'pk-pk',
  'peak-peak',
  'full-scale',
  'start-up',
  'past-danger',
  'past-alert',
  'not-read',
  // What a system does with members out of service.
  'no-trip',
]);
/** What makes a fact of a rule. */
const makers = new Set(['factOf', 'factOfThreshold']);
const form = /^[a-z]+(?:-[a-z]+)+$/;

/**
 * Names of rules, or the parts that make them up, in a source text: every string in their form, every rule of a
 * fact, and the fixed parts of templates such as `${name}-delay-long`.
 */
function rulesIn(text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    if (ts.isStringLiteral(node) && form.test(node.text)) found.push(node.text);
    if (ts.isTemplateExpression(node)) {
      for (const { text: part } of [node.head, ...node.templateSpans.map((span) => span.literal)]) {
        if (/^-?[a-z]+(?:-[a-z]+)*-?$/.test(part) && part.includes('-'))
          found.push(part.replaceAll(/^-|-$/g, ''));
      }
    }
    if (ts.isCallExpression(node) && makers.has(node.expression.getText())) {
      const [rule] = node.arguments;
      if (rule && ts.isStringLiteral(rule) && !form.test(rule.text)) found.push(rule.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('source.ts', text, ts.ScriptTarget.ES2022, true));
  return found.filter((name) => !words.has(name));
}

const named = new Set(
  readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .flatMap((entry) => rulesIn(readFileSync(join(entry.parentPath, entry.name), 'utf8'))),
);

const provoked = new Set<string>();
for (const [, golden] of await goldenCases()) {
  if (golden.refused) continue;
  const report = auditCase(golden);
  const all = [
    ...report.problems,
    ...[...report.channels, ...report.groups].flatMap(({ findings }) => findings),
  ];
  for (const { rule } of all) provoked.add(rule);
}

const holds = (rule: string, part: string) => `-${rule}-`.includes(`-${part}-`);

it('every rule that the source names is provoked by a golden case', () => {
  expect([...named].filter((part) => ![...provoked].some((rule) => holds(rule, part)))).toEqual([]);
});

it('every rule that was provoked is one that the source was seen to name', () => {
  expect([...provoked].filter((rule) => ![...named].some((part) => holds(rule, part)))).toEqual([]);
  expect(named.size).toBeGreaterThan(50);
});

it('a rule in any form would be seen', () => {
  expect(rulesIn("x = { rule: hidden ? 'fault-hidden' : 'cause-seen' };")).toEqual([
    'fault-hidden',
    'cause-seen',
  ]);
  expect(rulesIn("y = factOfThreshold('late', 'warning', threshold, values);")).toEqual(['late']);
  expect(rulesIn('z = `multiplied-${rules[reason]}`; w = `${name}-delay-long`;')).toEqual([
    'multiplied',
    'delay-long',
  ]);
  expect(rulesIn("complain('settings', column, 'value-missing', 'It is missing - enter it.');")).toEqual([
    'value-missing',
  ]);
});
