import type { Seats } from './seats.ts';
import { trips, type ThresholdName } from '../../audit/model/threshold.ts';

/** Places of the formulas of one direction. */
export interface GroupFormulas {
  readonly intended: number;
  readonly effective: number;
  readonly canTrip: number;
}

/** Columns that the formulas refer to. */
export const votesNeeded = 'D';

/**
 * An M-out-of-N group acts at the M-th smallest of its members' levels, counted away from zero: for the negative levels
 * of counter thresholds that is the M-th largest. Texts (tags, members that cannot act) are passed over.
 */
export function groupFormulas({ effectives, setpoints }: Seats): readonly string[] {
  const needed = `${votesNeeded}{r}`;
  const voted = (range: string, pick: string) =>
    `IF(COUNT(${range})<${needed},"",${pick}(${range},${needed}))`;
  const trips = (word: string) => `IF(COUNT(${effectives})<${needed},"${word}","yes")`;
  return [
    voted(setpoints, 'SMALL'),
    voted(effectives, 'SMALL'),
    voted(setpoints, 'LARGE'),
    voted(effectives, 'LARGE'),
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
