/** What a word of a header, a title or a label can stand for. */
export type Concept =
  | Quantity
  | Qualifier
  | 'setpoint'
  | 'pair low'
  | 'pair high'
  | 'unit'
  | 'person'
  | 'remark'
  | 'ordinal'
  | 'other';

/** What a column can hold. */
type Quantity =
  | 'tag'
  | 'machine'
  | 'location'
  | 'kind'
  | 'sensitivity'
  | 'alert'
  | 'danger'
  | 'full scale'
  | 'gap voltage'
  | 'zero voltage'
  | 'monitor gain'
  | 'runout amplitude'
  | 'runout phase'
  | 'runout sensitivity'
  | '1X amplitude'
  | '1X phase'
  | 'chain length'
  | 'loop zero'
  | 'loop span'
  | 'uncertainty'
  | 'date'
  | 'speed'
  | 'delay'
  | 'detection'
  | 'voting group'
  | 'voting'
  | 'bypass'
  | 'direction'
  | 'reading'
  | 'displacement limit'
  | 'series'
  | 'multiplier'
  | 'resolution';

/** What tells two columns of one quantity apart. */
type Qualifier =
  | 'measured'
  | 'configured'
  | 'as found'
  | 'as left'
  | 'reference'
  | 'old'
  | 'proposed'
  | 'counter'
  | 'deviation'
  | 'tolerance';
