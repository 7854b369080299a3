import type { ChangeKind } from '../../audit/model/since.ts';
import { verdictShades } from '../look/shades.ts';
import type { ShadeRule } from '../model.ts';

const { unreachable, late, undetermined, incomplete } = verdictShades;

/** Shades of what got worse and of channels that are gone; what is as it was, and what got better, stays plain. */
export const changeShades: Readonly<Partial<Record<ChangeKind, ShadeRule['style'] | undefined>>> = {
  'newly unreachable': unreachable,
  'newly late': late,
  'newly undetermined': undetermined,
  'newly incomplete': incomplete,
  gone: incomplete,
  'not compared': incomplete,
  'still unreachable': unreachable,
  'still late': late,
};
