import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { librarySha256, startSha256 } from '../../../src/audit/evidence/fingerprint.ts';

const hashes = { 'where the program runs': startSha256, 'in a page': librarySha256 };

describe.each(Object.entries(hashes))('SHA-256 %s', (_, start) => {
  const of = (...pieces: readonly Uint8Array[]): string => {
    const hash = start();
    for (const piece of pieces) hash.update(piece);
    return hash.hex();
  };

  // FIPS 180-4, examples as NIST publishes them (from memory, and confirmed by node:crypto below): "abc", and the message of two blocks.
  test.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('gives the published digest of %s', (text, digest) => {
    expect(of(new TextEncoder().encode(text))).toBe(digest);
  });

  test('is that of all pieces together', () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 200 }), { maxLength: 5 }), (pieces) => {
        const whole = createHash('sha256').update(Buffer.concat(pieces)).digest('hex');
        expect(of(...pieces)).toBe(whole);
      }),
    );
  });
});
