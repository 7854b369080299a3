import type { LeftAside } from '../../../model/rules/tableRules.ts';
import type { Place } from '../blocks/block.ts';
import type { MeaningId } from '../meaning.ts';

/** How much hangs on what was not read: a danger may, a value beside it may, or nothing but completeness does. */
type Weight = 'may bear on a danger' | 'optional' | 'note';

/** Something that looks like a part of the audit and was not used, with what it looks like and why it was not. */
export interface NotUsed {
  readonly what: 'list' | 'field' | 'line' | 'value' | 'heading';
  readonly looksLike:
    'list' | 'sensitivity' | 'level' | 'gap voltage' | 'date' | 'machine' | 'channel' | 'other' | MeaningId;
  readonly why: LeftAside;
  readonly weight: Weight;
  readonly place: Place;
  readonly text: string;
}
