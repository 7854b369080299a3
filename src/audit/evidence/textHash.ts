import { startSha256 } from './sha256.ts';

const encoder = new TextEncoder();

/** SHA-256 (FIPS 180-4) of a text as UTF-8, as 64 lower-case hexadecimal digits. */
export function textHash(text: string): string {
  const hash = startSha256();
  hash.update(encoder.encode(text));
  return hash.hex();
}
