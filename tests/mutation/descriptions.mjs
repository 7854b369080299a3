// @ts-check
import { PluginKind, declareValuePlugin } from '@stryker-mutator/api/plugin';

/** Properties that hold a description for the function wizard and the reference, and the calls that take one last. */
const properties = ['description', 'resultDescription', 'such'];
const calls = ['number', 'optionalNumber', 'series'];

/** @param {any} path a place in the syntax tree, as Babel gives it */
function isDescription({ node, parent, parentPath }) {
  if (parent.type === 'ObjectProperty') return parent.value === node && properties.includes(parent.key.name);
  if (parent.type === 'BinaryExpression' || parent.type === 'ConditionalExpression')
    return isDescription(parentPath);
  return (
    parent.type === 'CallExpression' && calls.includes(parent.callee.name) && parent.arguments.at(-1) === node
  );
}

/** Descriptions change no number, verdict or unit; all else is mutated, texts of errors too. */
const ignorer = {
  /** @param {any} path */
  shouldIgnore(path) {
    const text = path.isStringLiteral() || path.isTemplateLiteral();
    return text && isDescription(path) ? 'a description' : undefined;
  },
};

export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, 'descriptions', ignorer)];
