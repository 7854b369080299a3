import { BooleanNumber, type IStyleData, WrapStrategy } from '@univerjs/core';
import type { LookChange } from '../../hosts/file/patch/types.ts';
import { acrossOf, downOf, hexOf } from './fileLook.ts';

/** What a look of the grid has become, as far as the file's styles can say it; `undefined` where it is as it was. */
export function lookChange(before: IStyleData, now: IStyleData): LookChange | undefined {
  const [old, look] = [properties(before), properties(now)];
  const changed = Object.entries(look).filter(
    ([name, value]) => value !== undefined && value !== old[name as keyof LookChange],
  );
  return changed.length === 0 ? undefined : Object.fromEntries(changed);
}

/** Whether a look has something that is not saved: borders of its own, a turned text. */
export function isBeyondSaving({ bd: borders, tr: turn }: IStyleData): boolean {
  return Object.values(borders ?? {}).some(Boolean) || (turn?.a ?? 0) !== 0 || turn?.v === BooleanNumber.TRUE;
}

/** All of a look; a font or size that it leaves open is `undefined`. */
function properties(look: IStyleData): { readonly [Name in keyof LookChange]: LookChange[Name] | undefined } {
  const isOn = (flag: BooleanNumber | undefined): boolean => flag === BooleanNumber.TRUE;
  return {
    numberFormat: look.n?.pattern ?? 'General',
    font: look.ff ?? undefined,
    size: look.fs,
    bold: isOn(look.bl),
    italic: isOn(look.it),
    underline: isOn(look.ul?.s),
    strike: isOn(look.st?.s),
    color: hexOf(look.cl?.rgb) ?? null,
    fill: hexOf(look.bg?.rgb) ?? null,
    align: acrossOf(look),
    valign: downOf(look),
    wrap: look.tb === WrapStrategy.WRAP,
  };
}
