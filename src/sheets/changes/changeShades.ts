import { changeKinds, changeWords, type ChangeKind } from '../../audit/model/since.ts';
import { verdictShades } from '../look/shades.ts';
import type { ShadeRule } from '../model.ts';

const { unreachable, late, undetermined, incomplete } = verdictShades;

const shadeOf: Readonly<Partial<Record<ChangeKind, ShadeRule['style'] | undefined>>> = {
  'newly unreachable': unreachable,
  'newly late': late,
  'newly undetermined': undetermined,
  'newly incomplete': incomplete,
  gone: incomplete,
  'not compared': incomplete,
  'still unreachable': unreachable,
  'still late': late,
};

/** Shades of what got worse and of channels that are gone, by the words of their kind; what got better stays plain. */
export const changeShades: Readonly<Record<string, ShadeRule['style'] | undefined>> = Object.fromEntries(
  changeKinds.map((kind) => [changeWords[kind], shadeOf[kind]]),
);
