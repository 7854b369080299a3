import type { Policy } from '../model/policy.ts';
import { canonicalJson } from './canonical.ts';
import { textHash } from './textHash.ts';

/** What an audit went by, as SHA-256 in 64 hexadecimal digits each. No signature: whoever changes both can forge both. */
export interface Fingerprint {
  /** Of the cells that were read, see `inputsFingerprint`. */
  readonly inputs: string;
  /** Of the policy, what it leaves out included. */
  readonly policy: string;
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
