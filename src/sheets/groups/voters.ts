import { columnLetters } from '../../cells/address.ts';
import type { GroupMember, GroupResult } from '../../audit/model/report.ts';
import type { ModelCell } from '../model.ts';
import { cell } from '../cells.ts';

/** Members of a group that stand beside it. A larger group, which no voting has, is not calculated by formulas. */
export const mostSeats = 24;

/** Members' columns to the right of a group: pairs of tag and where it acts, then where each is set. */
export interface Seats {
  readonly count: number;
  readonly headers: readonly string[];
  /** Columns of the members' pairs and of their setpoints, as a row's ranges in a formula. */
  readonly effectives: string;
  readonly setpoints: string;
}

/** Seats for the largest of these groups, from column `first` on. */
export function seatsFor(groups: readonly GroupResult[], first: number): Seats {
  const largest = groups.reduce((most, group) => Math.max(most, group.members.length), 1);
  const count = Math.min(largest, mostSeats);
  const numbers = Array.from({ length: count }, (_, index) => index + 1);
  const range = (from: number, to: number) => `${columnLetters(from)}{r}:${columnLetters(to)}{r}`;
  const setFrom = first + 2 * count;
  return {
    count,
    headers: [
      ...numbers.flatMap((number) => [`Member ${number}`, `Member ${number} acts at`]),
      ...numbers.map((number) => `Member ${number} set at`),
    ],
    effectives: range(first, setFrom - 1),
    setpoints: range(setFrom, setFrom + count - 1),
  };
}

/** The members of a group in their columns; a text stands where one cannot act, so that formulas pass over it. */
export function voterCells(
  { members }: GroupResult,
  count: number,
  level: string,
): readonly (ModelCell | undefined)[] {
  const shown = Array.from({ length: count }, (_, index) => members[index]);
  return [
    ...shown.flatMap((member) => [cell(member?.tag ?? null, 'text'), member && acting(member, level)]),
    ...shown.map((member) => cell(member?.setpoint ?? null, level)),
  ];
}

function acting({ effective, why }: GroupMember, level: string): ModelCell | undefined {
  return effective === null ? cell(why ?? 'cannot act', 'wrapped') : cell(effective, level);
}
