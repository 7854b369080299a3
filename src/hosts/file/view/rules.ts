import type { Attributes } from '../read/branches.ts';
import { shownFormula } from '../../formats/storedFormula.ts';
import { parseRange } from '../read/area.ts';
import { booleanAttribute } from '../read/xml.ts';
import type { ViewRule, ViewShade } from './types.ts';

interface GrowingRule {
  readonly priority: number;
  readonly formulas: string[];
  readonly rule: Omit<ViewRule, 'formulas'>;
}

/** Kinds of rules (ECMA-376 part 1, section 18.18.12) that a comparison, a stored formula or a count decides. */
const kinds: Readonly<Record<string, ViewRule['kind']>> = {
  cellIs: 'cellIs',
  expression: 'expression',
  containsText: 'expression',
  notContainsText: 'expression',
  beginsWith: 'expression',
  endsWith: 'expression',
  containsBlanks: 'expression',
  notContainsBlanks: 'expression',
  containsErrors: 'expression',
  notContainsErrors: 'expression',
  timePeriod: 'expression',
  duplicateValues: 'duplicate',
  uniqueValues: 'unique',
};

/** Hears the conditional formats of a worksheet part (ECMA-376 part 1, section 18.3.1.18) and holds those that colour cells one by one. */
export class RuleList {
  readonly #rules: GrowingRule[] = [];
  readonly #shades: readonly ViewShade[];
  #areas: ViewRule['areas'] = [];
  #rule: GrowingRule | undefined;
  #formula: string | undefined;

  constructor(shades: readonly ViewShade[]) {
    this.#shades = shades;
  }

  ordered(): readonly ViewRule[] {
    return this.#rules
      .filter(
        ({ formulas, rule: { kind } }) => formulas.length > 0 || (kind !== 'cellIs' && kind !== 'expression'),
      )
      .sort((a, b) => a.priority - b.priority)
      .map(({ rule, formulas }) => ({ ...rule, formulas }));
  }

  open(name: string, attributes: Attributes, parents: readonly string[]): void {
    if (parents[1] !== 'conditionalFormatting') {
      if (parents.length === 1 && name === 'conditionalFormatting')
        this.#areas = areasOf(attributes['sqref']);
    } else if (parents.length === 2 && name === 'cfRule') this.#start(attributes);
    else if (parents.length === 3 && name === 'formula' && this.#rule !== undefined) this.#formula = '';
  }

  text(text: string): void {
    if (this.#formula !== undefined) this.#formula += text;
  }

  close(name: string): void {
    if (name === 'cfRule') this.#rule = undefined;
    if (name !== 'formula' || this.#formula === undefined) return;
    this.#rule?.formulas.push(shownFormula(this.#formula));
    this.#formula = undefined;
  }

  #start(attributes: Attributes): void {
    const { type, operator, dxfId, priority, stopIfTrue } = attributes;
    const shade = dxfId === undefined ? undefined : this.#shades[Number(dxfId)];
    const kind = type === undefined || !Object.hasOwn(kinds, type) ? undefined : kinds[type];
    if (kind === undefined || shade === undefined || this.#areas.length === 0) return;
    this.#rule = {
      priority: Number(priority) || 0,
      formulas: [],
      rule: {
        kind,
        areas: this.#areas,
        ...(kind === 'cellIs' && operator !== undefined ? { operator } : {}),
        shade,
        stops: booleanAttribute(stopIfTrue) === true,
      },
    };
    this.#rules.push(this.#rule);
  }
}

function areasOf(references: string | undefined): ViewRule['areas'] {
  return (references ?? '').split(/\s+/).flatMap((reference) => parseRange(reference) ?? []);
}
