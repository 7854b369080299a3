import type { ChangeKind } from '../../audit/model/since.ts';
import { verdictStyle } from '../style/verdictStyles.ts';

const styles: Readonly<Partial<Record<ChangeKind, string>>> = {
  'newly unreachable': verdictStyle('unreachable'),
  'newly late': verdictStyle('late'),
  'newly undetermined': verdictStyle('undetermined'),
  'newly incomplete': verdictStyle('incomplete'),
  gone: verdictStyle('incomplete'),
  'not compared': verdictStyle('incomplete'),
  'still unreachable': verdictStyle('unreachable'),
  'still late': verdictStyle('late'),
};

/** The style of what got worse and of channels that are gone; what got better stays plain. */
export function changeStyle(kind: ChangeKind): string {
  return styles[kind] ?? 'strong';
}
