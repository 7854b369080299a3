import type { Seats } from './voters.ts';
import { trips, type ThresholdName } from '../../audit/model/threshold.ts';

/** Places of the formulas of one direction. */
export interface GroupFormulas {
  readonly intended: number;
  readonly effective: number;
  readonly canTrip: number;
}

/** Columns that the formulas refer to. */
const votesNeeded = 'D';
const votesNow = 'E';

/**
 * An M-out-of-N group acts at the M-th smallest of its members' levels, counted away from zero: for the negative levels
 * of counter thresholds that is the M-th largest. Texts (tags, members that cannot act) are passed over.
 */
export function groupFormulas({ effectives, setpoints }: Seats): readonly string[] {
  const [needed, now] = [`${votesNeeded}{r}`, `${votesNow}{r}`];
  const voted = (range: string, pick: string, votes: string) =>
    `IF(COUNT(${range})<${votes},"",${pick}(${range},${votes}))`;
  const trips = (word: string) => `IF(COUNT(${effectives})<${now},"${word}","yes")`;
  return [
    voted(setpoints, 'SMALL', needed),
    voted(effectives, 'SMALL', now),
    voted(setpoints, 'LARGE', needed),
    voted(effectives, 'LARGE', now),
    trips('cannot trip'),
    trips('cannot act'),
  ];
}

export function formulasOf(threshold: ThresholdName): GroupFormulas {
  const counter = threshold.startsWith('counter');
  return {
    intended: counter ? 2 : 0,
    effective: counter ? 3 : 1,
    canTrip: trips(threshold) ? 4 : 5,
  };
}

/** What column "Can it trip?" says of a group. */
export function tripWord(threshold: ThresholdName, canTrip: boolean): string {
  if (canTrip) return 'yes';
  return trips(threshold) ? 'cannot trip' : 'cannot act';
}
