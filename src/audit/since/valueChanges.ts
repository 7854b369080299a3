import { capital, rounded } from '../model/wording.ts';
import { inUnitOf, isSame } from '../model/sameValue.ts';
import type { Change } from '../model/since.ts';
import {
  type SnapshotChannel,
  type Value,
  quantities,
  quantityNames,
  type Quantity,
} from '../model/snapshot.ts';

/**
 * Settings and readings that differ between two audits of a channel. Where a channel is incomplete in one of them, a
 * value that stands in the other alone is no change: it may only not have been readable.
 */
export function valueChanges(
  before: SnapshotChannel,
  now: SnapshotChannel,
  unknown: ReadonlySet<Quantity>,
): Change[] {
  const partly = before.verdict === 'incomplete' || now.verdict === 'incomplete';
  return quantityNames.flatMap((quantity) => {
    const [was, is] = [before.values[quantity] ?? null, now.values[quantity] ?? null];
    if (unknown.has(quantity) || isSame(was, is)) return [];
    if (partly && (was === null || is === null || !isComparable(was, is))) return [];
    return [changeOf(before, now, quantity, was, is)];
  });
}

function isComparable(was: Value, is: Value): boolean {
  return 'word' in was || 'word' in is || inUnitOf(was, is) !== null;
}

function changeOf(
  before: SnapshotChannel,
  { tag, machine, location, calibratedOn, source }: SnapshotChannel,
  quantity: Quantity,
  was: Value | null,
  is: Value | null,
): Change {
  const dates =
    quantity === 'measured sensitivity' && before.calibratedOn !== null && calibratedOn !== null
      ? ` Calibrated on ${before.calibratedOn} and ${calibratedOn}.`
      : '';
  return {
    kind: quantities[quantity],
    tag,
    machine,
    location,
    threshold: null,
    multiplier: null,
    quantity,
    ...inOneUnit(was, is),
    verdictBefore: null,
    verdictNow: null,
    message: `${capital(quantity)}: ${valueText(was)}${inUnitNow(was, is)} before, ${valueText(is)} now.${dates}`,
    source,
  };
}

/** Both values in the unit of the later one where they can be; otherwise each as a text of its own. */
function inOneUnit(was: Value | null, is: Value | null): Pick<Change, 'before' | 'now' | 'unit'> {
  if (was !== null && is !== null && 'amount' in was && 'amount' in is) {
    const level = inUnitOf(was, is);
    if (level !== null) return { before: level, now: is.amount, unit: is.unit || null };
    return { before: valueText(was), now: valueText(is), unit: null };
  }
  const plain = (value: Value | null) =>
    value === null ? null : 'word' in value ? value.word : value.amount;
  const only = [is, was].find((value) => value !== null && 'amount' in value);
  const unit = only && 'amount' in only ? only.unit || null : null;
  return { before: plain(was), now: plain(is), unit };
}

/** The earlier value in the unit of the later one, in brackets, where they are written in two. */
function inUnitNow(was: Value | null, is: Value | null): string {
  if (was === null || is === null || 'word' in was || 'word' in is) return '';
  if (was.unit === is.unit && was.detection === is.detection) return '';
  const amount = inUnitOf(was, is);
  return amount === null ? '' : ` (${valueText({ ...is, amount })})`;
}

/** A value for people, with its unit and detection. */
function valueText(value: Value | null): string {
  if (value === null) return 'nothing';
  if ('word' in value) return value.word;
  return [rounded(value.amount), value.unit, value.detection ?? ''].filter((part) => part !== '').join(' ');
}
