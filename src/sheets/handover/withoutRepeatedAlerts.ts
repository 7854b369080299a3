import type { Attention, AttentionCode } from '../../audit/model/report.ts';
import { trips } from '../../audit/model/threshold.ts';

/** Whether an entry is about a threshold that warns and trips nothing. */
export function onlyWarns({ subject }: Attention): boolean {
  return subject.threshold !== null && !trips(subject.threshold);
}

/** What an alert's entry would be called of a danger. */
const ofDanger: Readonly<Partial<Record<AttentionCode, AttentionCode>>> = {
  'past-alert': 'past-danger',
  'group-cannot-act': 'group-cannot-trip',
};

/**
 * What needs action, without the alerts that say of a channel or group what its danger says as well: in a line or two the
 * danger stands for both, the annex has all.
 */
export function withoutRepeatedAlerts(attention: readonly Attention[]): readonly Attention[] {
  const keyOf = ({ code, subject }: Attention): string =>
    JSON.stringify([ofDanger[code] ?? code, subject.tag, subject.group, subject.multiplier ?? 1]);
  const tripping = new Set(attention.filter((entry) => !onlyWarns(entry)).map(keyOf));
  return attention.filter((entry) => !onlyWarns(entry) || !tripping.has(keyOf(entry)));
}
