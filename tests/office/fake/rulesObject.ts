import type { Area } from '../../../src/cells/sheet.ts';
import { invalidArgument } from './hostError.ts';
import type { HostObject } from './hostObject.ts';
import type { FakeRule, FakeSheet } from './sheet.ts';

/** Conditional formats of an area; a new one gets the first priority (public reference, ConditionalFormatCollection.add). */
export function rulesObject(sheet: FakeSheet, area: Area): HostObject {
  return {
    methods: {
      Add: (type) => {
        const rule: FakeRule = { area, type, rule: null, stopIfTrue: false, format: new Map() };
        sheet.rules.unshift(rule);
        return ruleObject(rule);
      },
    },
  };
}

function ruleObject(rule: FakeRule): HostObject {
  const paint = (property: string) => (value: unknown) => {
    rule.format.set(property, value);
  };
  return {
    set: {
      StopIfTrue: (value) => {
        rule.stopIfTrue = value === true;
      },
    },
    parts: {
      CellValue: () => ({
        set: {
          Rule: (value) => {
            if (!(value instanceof Object) || !('formula1' in value)) throw invalidArgument();
            rule.rule = value;
          },
        },
        parts: {
          Format: () => ({
            parts: {
              Fill: () => ({ set: { Color: paint('Fill.Color') } }),
              Font: () => ({ set: { Color: paint('Font.Color'), Bold: paint('Font.Bold') } }),
            },
          }),
        },
      }),
    },
  };
}
