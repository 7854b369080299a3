import type { Fingerprint } from '../model/basis.ts';
import type { Policy } from '../model/policy.ts';
import { canonicalJson } from './canonical.ts';
import { textHash } from './textHash.ts';

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
