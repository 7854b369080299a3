import { Buffer } from 'node:buffer';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { csvStream } from '../../../src/hosts/file/read/csvStream.ts';

/** A text in pieces of as many bytes. */
function* pieces(text: string, size: number): Generator<Uint8Array, void, void> {
  const bytes = Buffer.from(text);
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

/** Rows as they are written: a line break of any kind ends one, and none begins after the last. */
function rowsOf(text: string): string[][] {
  const lines = text.split(/\r\n|\n|\r/u);
  if (lines.at(-1) === '') lines.pop();
  return lines.map((line) => (line === '' ? [] : line.split(',')));
}

it('rows are the same whatever ends a line and wherever a piece of the file ends', () => {
  const character = fc.constantFrom(',', 'x', '2', 'µ', '\r', '\n', '\r\n');
  fc.assert(
    fc.property(fc.array(character, { maxLength: 40 }), fc.integer({ min: 1, max: 9 }), (some, size) => {
      const text = `Time,A,B\n${some.join('')}`;
      const { rows } = csvStream(() => pieces(text, size));
      expect([...rows()]).toEqual(rowsOf(text));
      // Each time anew.
      expect([...rows()]).toEqual(rowsOf(text));
    }),
    { numRuns: 300 },
  );
});

it('quotes stand for what is between them, in lines among others without', () => {
  const text = 'sep=,\r\nTime,A\r\n1,2\r\n"2026-03-01, noon","1,5"\r3,4\r\n\r\n5,"a ""b"""\r\n6,7';
  const { rows } = csvStream(() => pieces(text, 5));
  expect([...rows()]).toEqual([
    ...[['Time', 'A'], ['1', '2'], ['2026-03-01, noon', '1,5'], ['3', '4'], [], ['5', 'a "b"'], ['6', '7']],
  ]);
});
