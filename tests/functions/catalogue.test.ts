import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { NAMESPACE, catalogue } from '../../src/functions/catalogue.ts';
import { optional } from '../../src/functions/declare/argument.ts';
import { associateAll } from '../../src/functions/excel/associate.ts';
import { functionsJson } from '../../src/functions/excel/metadata.ts';
import { referenceMarkdown, signature } from '../../src/functions/reference.ts';

const HELP = 'https://host.example/tripdrift/help.html';

/** Frozen: workbooks hold these names and orders, and Excel caches them; nothing here may change once published. */
const SIGNATURES = [
  'EFFECTIVE(setpoint, configured, measured, [multiplier])',
  'SHIFT(setpoint, configured, measured, [multiplier])',
  'SHIFTFRACTION(configured, measured)',
  'SENSITIVITYERROR(configured, measured)',
  'INDICATED(real, configured, measured)',
  'ACTUAL(indicated, configured, measured)',
  'INTERIMSETPOINT(setpoint, configured, measured, [resolution])',
  'BAND(setpoint, configured, measured, uncertainty, [multiplier])',
  'VERDICT(configured, measured, [tolerance], [uncertainty])',
  'PROBABILITYLATER(setpoint, limit, configured, measured, uncertainty, [coverage], [multiplier])',
  'AXIALEFFECTIVE(setpoint, configured, measured, zeroConfigured, zeroMeasured, direction)',
  'VOTED(thresholds, m)',
  'LATEBY(setpoint, effective, growth, [law])',
  'LEVELATTRIP(effective, delay, growth, [law])',
  'REACH(gap, from, to)',
  'ZONE(displacement, speed, [unit])',
  'ZONELIMIT(boundary, speed, [unit])',
  'CONVERTUNIT(value, from, to)',
  'DISPLACEMENT(amplitude, unit, frequency, [frequencyUnit], [to])',
  'LOOP(current, span, [at0], [at100])',
  'FIT(gaps, volts, [from], [to])',
  'INCREMENTAL(gaps, volts)',
  'DEVIATION(gaps, volts, [rated])',
  'LINEARRANGE(gaps, volts, rated, [tolerance], [deviation], [midGap])',
  'GAPAT(gaps, volts, voltage, [method])',
  'VOLTSAT(gaps, volts, gap, [method])',
  'EFFECTIVEONCURVE(setpoint, configured, gaps, volts, gapVoltage, [multiplier], [method])',
  'POINTSTO(measured, reference, gapVoltage, referenceGapVoltage, [tolerance], [voltTolerance])',
  'SENSITIVITYUNCERTAINTY(values, distributions, [degreesOfFreedom], [level])',
  'LIVEVOTE(votes, members, out, policy)',
  'VOTELATER(votes, setpoints, configured, measured, shared, own, limit, [batches], [multiplier])',
  'VOTEBAND(votes, setpoints, configured, measured, shared, own, [batches], [multiplier], [coverage])',
  'AXIALBAND(setpoint, configured, measured, zeroConfigured, zeroMeasured, direction, uncertainty, zeroUncertainty, [coverage])',
  'LOOPEFFECTIVE(setpoint, span, currentAtZero, currentAtSpan, [believedAtZero], [believedAtSpan])',
  'HYSTERESIS(gaps, volts)',
  'HIGHPASS(frequency, corner, damping)',
  'LOWPASS(frequency, corner)',
  'SENSITIVITYAT(frequencies, sensitivities, frequency)',
  'RUNUPTRIP(speeds, real, sensitivities, setpoint, configured, [multiplier], [multiplierSpeed])',
  'TRIPTIME(times, readings, setpoint, [delay], [maxGap], [hold])',
  'COMPENSATE(amplitude, phase, runout, runoutPhase, configured, measured, [measuredThen])',
];

/**
 * `functions.json` as Microsoft's page "Manually create JSON metadata for custom functions in Excel" describes it
 * (OfficeDev/office-js-docs-pr, docs/excel/custom-functions-json.md, 27 Oct 2025); names from its naming guidelines.
 */
const METADATA = z.strictObject({
  allowErrorForDataTypeAny: z.literal(true),
  functions: z.array(
    z.strictObject({
      id: z.string().regex(/^[A-Za-z][A-Za-z0-9_.]{2,127}$/),
      name: z.string().regex(/^[A-Za-z][A-Za-z0-9_.]{2,127}$/),
      description: z.string().min(1).max(255),
      helpUrl: z.url({ protocol: /^https$/ }),
      parameters: z.array(
        z.strictObject({
          name: z.string().regex(/^[a-z][A-Za-z0-9]*$/),
          description: z.string().min(1).max(255),
          type: z.enum(['string', 'number', 'boolean', 'any']),
          dimensionality: z.enum(['scalar', 'matrix']),
          optional: z.boolean().optional(),
        }),
      ),
      result: z.strictObject({
        type: z.enum(['string', 'number', 'boolean', 'any']),
        dimensionality: z.enum(['scalar', 'matrix']),
      }),
    }),
  ),
});

const metadata = METADATA.parse(JSON.parse(functionsJson(HELP)));

describe('the catalogue', () => {
  it('keeps names, order and optional arguments', () => {
    expect(NAMESPACE).toBe('TRIPDRIFT');
    expect(catalogue.map(signature)).toEqual(SIGNATURES);
  });

  it('has no name twice, capital letters alone, none that reads as a cell', () => {
    const ids = catalogue.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[A-Z]{3,}$/.test(id))).toEqual([]);
  });

  it('says of each probability of a late trip what is not counted in it', () => {
    const told = catalogue.filter(({ resultDescription }) => /probability/iu.test(resultDescription));
    expect(told.map(({ id }) => id)).toEqual(expect.arrayContaining(['PROBABILITYLATER', 'VOTELATER']));
    for (const { resultDescription } of told)
      expect(resultDescription).toContain('wiring, logic and relays are not counted');
  });

  it('says of each result what its example shows: a number, a text, or several cells', () => {
    for (const { id, result, example } of catalogue) {
      const cells = example.result.split('\t');
      const shown = Number.isNaN(Number(cells[0])) ? ['text'] : ['number'];
      expect([id, cells.length > 1 ? ['pair', 'row', 'along'] : shown]).toEqual([
        id,
        expect.arrayContaining([result]),
      ]);
    }
  });

  it('puts optional arguments last, and names no argument of a function twice', () => {
    for (const { arguments: declared } of catalogue) {
      const kinds = declared.map((argument) => (optional(argument) ? 'o' : 'r')).join('');
      expect(kinds).toMatch(/^r+o*$/);
      expect(new Set(declared.map(({ name }) => name)).size).toBe(declared.length);
    }
  });
});

describe('what Excel is told', () => {
  it('follows the published form, and says the same as the catalogue', () => {
    expect(metadata.functions.map(({ id }) => id)).toEqual(catalogue.map(({ id }) => id));
    for (const [index, { id, name, helpUrl, parameters }] of metadata.functions.entries()) {
      const called = parameters.map((one) => (one.optional ? `[${one.name}]` : one.name)).join(', ');
      expect(`${name}(${called})`).toBe(SIGNATURES[index]);
      expect(helpUrl).toBe(`${HELP}#${id.toLowerCase()}`);
    }
  });

  it('lets ranges, text and errors through to our own checks', () => {
    for (const { parameters, result } of metadata.functions) {
      for (const one of [...parameters, result])
        expect(one).toMatchObject({ type: 'any', dimensionality: 'matrix' });
    }
    expect(functionsJson(HELP)).not.toContain('allowCustomDataForDataTypeAny');
  });

  it('each function is associated, none more', () => {
    const ids: string[] = [];
    associateAll({
      associate: (id: string) => ids.push(id),
      Error: Error,
      ErrorCode: {
        invalidValue: 1,
        invalidNumber: 2,
        notAvailable: 3,
        divisionByZero: 4,
        nullReference: 5,
      },
    });
    expect(ids).toEqual(metadata.functions.map(({ id }) => id));
  });
});

describe('the reference', () => {
  const markdown = referenceMarkdown();

  it('has a heading that each help address points to, and each argument', () => {
    const headings = [...markdown.matchAll(/^## (.+)$/gm)].map(([, heading = '']) => heading.toLowerCase());
    expect(metadata.functions.map(({ helpUrl }) => new URL(helpUrl).hash.slice(1))).toEqual(headings);
    for (const one of SIGNATURES) expect(markdown).toContain(`\`TRIPDRIFT.${one}\``);
  });

  it('on the help pages is current (npm run reference writes it)', () => {
    const page = readFileSync(join(import.meta.dirname, '..', '..', 'src', 'help', 'functions.md'), 'utf8');
    expect(page).toBe(`${markdown}\n`);
  });
});
