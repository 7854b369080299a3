import type { FakeChart } from './chart.ts';
import { HostError, invalidArgument } from './hostError.ts';
import type { HostObject } from './hostObject.ts';
import { type Check, lineChecks, measure, number, oneOf, type Setters, text, truth } from './settable.ts';

/** An axis that would end before it begins is refused. Categories have no ends, but those of a scatter chart do. */
export function axisObject(group: string, chart: FakeChart, settable: Setters): HostObject {
  const isOfNumbers = group.endsWith('ValueAxis') || chart.type.startsWith('XYScatter');
  const end =
    (other: string, isBeyond: (value: number, otherEnd: number) => boolean): Check =>
    (value) => {
      const otherEnd = chart.set.get(`${group}.${other}`);
      if (!isOfNumbers || (typeof otherEnd === 'number' && isBeyond(number(value), otherEnd)))
        throw invalidArgument();
      return number(value);
    };
  const line = `${group}.MajorGridlines.Format.Line`;
  return {
    set: settable(group, {
      Minimum: end('Maximum', (value, most) => value >= most),
      Maximum: end('Minimum', (value, least) => value <= least),
      NumberFormat: text,
      TickLabelPosition: oneOf(['NextToAxis', 'High', 'Low', 'None']),
      Position: oneOf(['Automatic', 'Maximum', 'Minimum', 'Custom']),
      ReversePlotOrder: truth,
    }),
    parts: {
      Title: () => titleObject(`${group}.Title`, chart.set, settable),
      MajorGridlines: () => ({
        set: settable(`${group}.MajorGridlines`, { Visible: truth }),
        parts: { Format: () => ({ parts: { Line: () => ({ set: settable(line, lineChecks) }) } }) },
      }),
    },
  };
}

/** A title that is not shown can't be formatted (common practice of spreadsheet programs, no source). */
export function titleObject(
  group: string,
  kept: ReadonlyMap<string, unknown>,
  settable: Setters,
): HostObject {
  return {
    set: settable(group, { Visible: truth, Text: text }),
    parts: {
      Format: () => {
        if (kept.get(`${group}.Visible`) === false) throw new HostError('InvalidOperation');
        return {
          parts: {
            Font: () => ({ set: settable(`${group}.Format.Font`, { Size: measure(1, 409), Bold: truth }) }),
          },
        };
      },
    },
  };
}
