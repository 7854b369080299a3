import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Fingerprint } from '../model/basis.ts';
import type { Policy } from '../model/policy.ts';
import { canonicalJson } from './canonical.ts';

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

const encoder = new TextEncoder();

/** SHA-256 (FIPS 180-4) of a text as UTF-8, as 64 lower-case hexadecimal digits. */
export function textHash(text: string): string {
  const hash = startSha256();
  hash.update(encoder.encode(text));
  return hash.hex();
}

/** SHA-256 of a policy, the same however its JSON was ordered. */
export function policyFingerprint(policy: Policy): string {
  return textHash(canonicalJson(policy));
}

/** Eight hexadecimal digits by which people tell audits apart, as in `3f2a-91c0`: of the inputs, the policy and the time. */
export function shortId({
  fingerprint,
  generated,
}: {
  readonly fingerprint: Fingerprint;
  readonly generated: string;
}): string {
  const hex = textHash(`${fingerprint.inputs}\n${fingerprint.policy}\n${generated}`);
  return `${hex.slice(0, 4)}-${hex.slice(4, 8)}`;
}
