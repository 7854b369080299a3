import fc from 'fast-check';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/cells/address.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { callable } from '../../src/functions/call/callable.ts';
import type { Argument } from '../../src/functions/declare/argument.ts';
import { optional } from '../../src/functions/declare/argument.ts';
import type { WorksheetFunction } from '../../src/functions/declare/declare.ts';
import { ranges } from '../../src/functions/declare/numberRange.ts';
import { parseFormula } from '../../src/functions/formula/parse.ts';
import { printed } from '../../src/functions/formula/print.ts';
import { FunctionError } from '../../src/functions/functionError.ts';
import { nativeFormula } from '../../src/functions/native/nativeFormula.ts';
import type { ModelValue } from '../../src/sheets/model.ts';
import { patched, cellsOf, withRows } from '../hosts/file/patch/patched.ts';
import type { EditedCell } from '../../src/hosts/file/patch/types.ts';
import { convert, describeWithLibreOffice } from '../libreoffice.ts';
import '../seed.ts';

const withNative = catalogue.filter(({ native }) => native !== undefined);

/** Cells with numbers in range are all that a native formula is made for. */
const sound: Readonly<Record<Argument['kind'], unknown>> = {
  number: 0.5,
  choice: null,
  unit: null,
  members: null,
  series: null,
  labels: null,
  switch: null,
};

/** An argument as it is written into a formula, and what the cell that it leads to holds later. */
interface Given {
  readonly written: string;
  readonly value: ModelValue;
  readonly isCell: boolean;
}

/** TRUE is not among them: LibreOffice takes it for the number 1, Excel does not. */
const bad = fc.constantFrom<ModelValue>(0, -3, 'text', '7', null, 1e9);

function given(argument: Argument, address: string): fc.Arbitrary<Given> {
  const left = fc.constant<Given>({ written: '', value: null, isCell: false });
  const orLeft = (some: fc.Arbitrary<Given>) =>
    optional(argument) ? fc.oneof({ weight: 3, arbitrary: some }, left) : some;
  switch (argument.kind) {
    case 'number': {
      const { above, below, whole } = ranges[argument.range];
      const from = Math.max(above, -50);
      const to = Math.min(below, 300);
      // Six digits: spreadsheet programs take numbers for equal that differ in the fifteenth.
      const some = whole ? fc.integer({ min: 1, max: 9 }) : fc.double({ min: from, max: to, noNaN: true });
      const good = some
        .map((one) => Number(one.toPrecision(6)))
        .filter((one) => one > above && one < below && Math.abs(one) > 1e-3);
      const cell = fc
        .oneof({ weight: 9, arbitrary: good.map((one): ModelValue => one) }, { weight: 2, arbitrary: bad })
        .map((value): Given => ({ written: address, value, isCell: true }));
      return orLeft(
        fc.oneof(
          { weight: 4, arbitrary: cell },
          good.map((one): Given => ({ written: String(one).toUpperCase(), value: one, isCell: false })),
        ),
      );
    }
    case 'choice': {
      const literal = fc
        .constantFrom(...argument.choices)
        .map((value): Given => ({ written: `"${value.toUpperCase()}"`, value, isCell: false }));
      const cell = fc
        .constantFrom(...argument.choices, 'neither')
        .map((value): Given => ({ written: address, value, isCell: true }));
      return orLeft(fc.oneof(literal, cell));
    }
    case 'unit': {
      const units =
        argument.dimensions?.includes('displacement') === true ? ['um', 'mil', 'mm'] : ['mil', 'um', 'in'];
      return orLeft(
        fc.constantFrom(...units).map((value): Given => ({ written: `"${value}"`, value, isCell: false })),
      );
    }
    case 'members':
    case 'series':
    case 'labels':
    case 'switch':
      throw new Error(`no argument of kind ${argument.kind} has a native form`);
  }
}

interface Case {
  readonly declared: WorksheetFunction;
  readonly formula: string;
  readonly values: readonly ModelValue[];
  readonly cells: readonly EditedCell[];
}

function caseOf(declared: WorksheetFunction, row: number): fc.Arbitrary<Case> {
  return fc
    .tuple(...declared.arguments.map((argument, index) => given(argument, cellAddress(row, index + 2))))
    .map((all) => ({
      declared,
      formula: `TRIPDRIFT.${declared.id}(${all
        .map(({ written }) => written)
        .join(',')
        .replace(/,+$/, '')})`,
      values: all.map(({ value }) => value),
      cells: all.flatMap(({ isCell, value }, index) => (isCell ? [{ row, column: index + 2, value }] : [])),
    }));
}

/** The native formula that is made while every cell holds something the function takes. */
function nativeOf({ declared, formula }: Case): string | undefined {
  return nativeFormula(formula, {
    array: false,
    cellsAt: (reference) => {
      const index = reference.charCodeAt(0) - 'B'.charCodeAt(0);
      const argument = declared.arguments[index];
      if (!argument) return undefined;
      return [[argument.kind === 'choice' ? argument.choices[0] : sound[argument.kind]]];
    },
  })?.[0];
}

describe('native forms', () => {
  it('name nothing but arguments of their function', () => {
    for (const { id, native, arguments: declared } of withNative) {
      if (native === undefined) continue;
      const templates =
        typeof native === 'string'
          ? [native]
          : 'low' in native
            ? [native.low, native.high]
            : Object.values(native.forms);
      const names = new Set(declared.map(({ name }) => name));
      for (const template of templates) {
        const found = JSON.stringify(parseFormula(template)).matchAll(
          /"ReferenceIdentifier","loc":[^]*?"value":"([^"]*)"/g,
        );
        const unknown = Array.from(found, ([, name = '']) => name).filter((name) => !names.has(name));
        const plain = Array.from(
          JSON.stringify(parseFormula(template)).matchAll(/"type":"ReferenceIdentifier","value":"([^"]*)"/g),
          ([, name = '']) => name,
        ).filter((name) => !names.has(name));
        expect([id, ...unknown, ...plain]).toEqual([id]);
      }
    }
  });

  it('of a choice has every choice', () => {
    for (const { id, native, arguments: declared } of withNative) {
      if (native === undefined || typeof native === 'string' || 'low' in native) continue;
      const argument = declared.find(({ name }) => name === native.by);
      const wanted = argument?.kind === 'choice' ? argument.choices : ['given', 'left out'];
      expect([id, ...Object.keys(native.forms).toSorted()]).toEqual([id, ...[...wanted].toSorted()]);
    }
  });

  it.each([
    // Units of two kinds, or of two detections, which the function refuses wherever the formula comes to it.
    'IFERROR(TRIPDRIFT.CONVERTUNIT(A1,"mil","g"),0)',
    'IF(A1>9,TRIPDRIFT.CONVERTUNIT(A1,"mil","mV/mil"),1)',
    'IFERROR(TRIPDRIFT.CONVERTUNIT(A1,"mm/s rms","mm/s 0-p"),0)',
    'IFERROR(TRIPDRIFT.ZONE(A1,3600,"um 0-p"),"none")',
    'IFERROR(TRIPDRIFT.ZONELIMIT("A/B",A1,"um rms"),"none")',
  ])('are not made where the function would refuse its units: %s', (formula) => {
    const place = { array: false, cellsAt: () => [[1]] };
    expect(nativeFormula(formula, place)).toBeUndefined();
    expect(
      nativeFormula(
        formula
          .replace(/"(mil|mm\/s rms|um 0-p|um rms)"/g, '"um"')
          .replace(/"(g|mV\/mil|mm\/s 0-p)"/, '"mm"'),
        place,
      ),
    ).toBeDefined();
  });

  it('are not made where a cell of a range is blank that stands for a value', () => {
    const formula = 'TRIPDRIFT.EFFECTIVE(A1:A3,200,160,B1:B3)';
    const withThird = (third: unknown) => ({
      array: true,
      cellsAt: (reference: string) => (reference.startsWith('A') ? [[5], [6], [7]] : [[2], [3], [third]]),
    });
    expect(nativeFormula(formula, withThird(4))).toBeDefined();
    expect(nativeFormula(formula, withThird(null))).toBeUndefined();
  });

  it('are printed so that they read back as what they were', () => {
    const bare = (text: string): unknown =>
      JSON.parse(
        JSON.stringify(parseFormula(text), (key, value: unknown) =>
          key === 'loc' ? undefined : value,
        ).replace(
          // The parser reads -2 as a number and -(2) as a number with a sign.
          /\{"type":"Literal","value":-(\d+),"raw":"-\d+"\}/g,
          '{"type":"UnaryExpression","operator":"-","arguments":[{"type":"Literal","value":$1,"raw":"$1"}]}',
        ),
      );
    const leaf = fc.constantFrom(
      'A1',
      '2',
      '-3',
      "'a b'!$C$4",
      '"x""y"',
      'T[[#This Row],[a b]]',
      '{1,2;3,4}',
      'F(1,,A2)',
      '5%',
    );
    const { formula } = fc.letrec<{ formula: string }>((tie) => ({
      formula: fc.oneof(
        { maxDepth: 4 },
        leaf,
        fc
          .tuple(tie('formula'), fc.constantFrom('+', '-', '*', '/', '^', '&', '<', '='), tie('formula'))
          .map(([a, by, b]) => `(${a})${by}(${b})`),
        tie('formula').map((one) => `-(${one})`),
        tie('formula').map((one) => `ABS(${one})`),
      ),
    }));
    fc.assert(
      fc.property(formula, (text) => {
        expect(bare(printed(parseFormula(text)) ?? '')).toEqual(bare(text));
      }),
      { numRuns: 300 },
    );
  });
});

describeWithLibreOffice('native formulas in LibreOffice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'native-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it('give what the functions give, and refuse whatever they refuse', () => {
    const rounds = 60;
    const cases = fc
      .sample(
        fc.tuple(
          ...Array.from({ length: rounds * withNative.length }, (_, index) =>
            caseOf(withNative[index % withNative.length] as WorksheetFunction, index + 1),
          ),
        ),
        1,
      )
      .flat();
    const edits = cases.flatMap((one, index): EditedCell[] => {
      const formula = nativeOf(one);
      return formula === undefined ? [] : [{ row: index + 1, column: 1, value: null, formula }, ...one.cells];
    });
    const path = join(folder, 'native.xlsx');
    writeFileSync(path, patched(withRows(''), 'Channels', edits));
    const found = cellsOf(readFileSync(convert(path, 'xlsx', join(folder, 'out'))));
    let numbers = 0;
    let refusals = 0;
    cases.forEach((one, index) => {
      if (nativeOf(one) === undefined) return;
      const cell = found[`A${index + 1}`];
      const run = callable(one.declared);
      const ours = run(...one.values);
      const first = Array.isArray(ours) ? ours[0]?.[0] : ours;
      const what = `${one.formula} of ${JSON.stringify(one.values)}`;
      if (first instanceof FunctionError) {
        refusals++;
        expect([what, cell?.error]).toEqual([what, true]);
      } else if (cell?.error) {
        // Texts that are numbers and blanks are taken by the function in a single cell, and refused by native formulas.
        expect(
          one.cells.some(({ value }) => value === '7' || value === null),
          what,
        ).toBe(true);
      } else if (typeof first === 'number') {
        numbers++;
        expect(Math.abs(Number(cell?.value) - first), what).toBeLessThanOrEqual(
          1e-9 * Math.max(Math.abs(first), 1e-3),
        );
      } else expect([what, cell?.value]).toEqual([what, first]);
    });
    expect(numbers).toBeGreaterThan(300);
    expect(refusals).toBeGreaterThan(100);
  });
});
