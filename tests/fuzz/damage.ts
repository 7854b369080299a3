import fc from 'fast-check';

/** One piece of damage; places are fractions of the length, so that they shrink and fit any file. */
export type Damage =
  | { readonly kind: 'set'; readonly at: number; readonly byte: number }
  | { readonly kind: 'cut'; readonly at: number; readonly length: number }
  | { readonly kind: 'repeat'; readonly at: number; readonly length: number; readonly times: number }
  | { readonly kind: 'insert'; readonly at: number; readonly text: string }
  | { readonly kind: 'truncate'; readonly at: number };

const tokens = [
  ...[
    '<',
    '>',
    '&',
    '"',
    "'",
    '/',
    '=',
    '\0',
    '\ufffe',
    '😀',
    '&#0;',
    '&#x10ffff;',
    '&lol;',
    ']]>',
    '<![CDATA[',
    '<!--',
    '-->',
  ],
  ...[
    '<?xml version="1.1"?>',
    '<!DOCTYPE a [<!ENTITY b "c">]>',
    '<c r="',
    '<c t="s"><v>',
    '</c>',
    '<row r="',
    '</row>',
    '<f>',
    '<v/>',
  ],
  ...[
    'XFD1048576',
    'A0',
    '-1',
    '1e999',
    'NaN',
    '99999999999999999999',
    '__proto__',
    'constructor',
    '_x0000_',
    '../../',
    '%00',
    't="d"',
  ],
  ...[
    'PK\x03\x04',
    'PK\x01\x02',
    'PK\x05\x06',
    '\xff\xff\xff\xff',
    ';',
    ',',
    '\t',
    '\r',
    '\n',
    '"";',
    'sep=;\n',
  ],
];

// Whole numbers spread evenly; floating-point ones would nearly all lie close to 0.
const place = fc.integer({ min: 0, max: 999_999 }).map((millionths) => millionths / 1e6);

/** Damage that moves nothing, so that every other byte of a zip still lies where it is looked for. */
export const overwriting: fc.Arbitrary<Damage> = fc.record({
  kind: fc.constant('set' as const),
  at: place,
  byte: fc.integer({ min: 0, max: 255 }),
});

export const damage: fc.Arbitrary<Damage> = fc.oneof(
  overwriting,
  fc.record({ kind: fc.constant('cut' as const), at: place, length: fc.integer({ min: 1, max: 40 }) }),
  fc.record({
    kind: fc.constant('repeat' as const),
    at: place,
    length: fc.integer({ min: 1, max: 60 }),
    times: fc.integer({ min: 1, max: 200 }),
  }),
  fc.record({ kind: fc.constant('insert' as const), at: place, text: fc.constantFrom(...tokens) }),
  fc.record({ kind: fc.constant('truncate' as const), at: place }),
);

/** The bytes with that damage done. */
export function inflict(bytes: Uint8Array, harm: Damage): Uint8Array {
  const at = Math.floor(harm.at * bytes.length);
  const before = bytes.subarray(0, at);
  switch (harm.kind) {
    case 'set':
      return join(before, new Uint8Array([harm.byte]), bytes.subarray(at + 1));
    case 'cut':
      return join(before, bytes.subarray(at + harm.length));
    case 'repeat': {
      const piece = bytes.subarray(at, at + harm.length);
      return join(before, ...Array<Uint8Array>(harm.times).fill(piece), bytes.subarray(at));
    }
    case 'insert':
      return join(before, new TextEncoder().encode(harm.text), bytes.subarray(at));
    case 'truncate':
      return before.slice();
  }
}

function join(...pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
