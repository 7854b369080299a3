import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** A hash that is fed piece by piece. */
export interface RunningHash {
  update(bytes: Uint8Array): void;
  /** 64 lower-case hexadecimal digits. Nothing can be added afterwards. */
  hex(): string;
}

/** SHA-256 (FIPS 180-4): by Node's own, several times as fast, where the program runs there; in a page by a library. */
export function startSha256(): RunningHash {
  return nodeSha256() ?? librarySha256();
}

/** The same by the library, wherever the program runs. */
export function librarySha256(): RunningHash {
  const hash = sha256.create();
  return {
    update: (bytes) => {
      hash.update(bytes);
    },
    hex: () => bytesToHex(hash.digest()),
  };
}

interface NodeCrypto {
  createHash(name: 'sha256'): {
    update(bytes: Uint8Array): unknown;
    digest(form: 'hex'): string;
  };
}

interface NodeProcess {
  readonly getBuiltinModule?: (name: 'node:crypto') => NodeCrypto | undefined;
}

function nodeSha256(): RunningHash | undefined {
  const { process } = globalThis as { readonly process?: NodeProcess };
  const hash = process?.getBuiltinModule?.('node:crypto')?.createHash('sha256');
  if (!hash) return undefined;
  return {
    update: (bytes) => {
      hash.update(bytes);
    },
    hex: () => hash.digest('hex'),
  };
}
