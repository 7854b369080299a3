/** Languages whose words are known. */
export type Language = 'en' | 'de' | 'es' | 'fr' | 'pt' | 'it';

/** Words by language, with ` | ` between them. A trailing `*` stands for any ending of up to five letters. Case, accents and punctuation do not count. */
export type Words = Readonly<Partial<Record<Language, string>>>;

/** The words of one language, one by one. */
export function wordsOf(text: string): string[] {
  return text.split(' | ');
}

/** How much a word says: a strong one can hardly mean something else on such a sheet, a weak one can. */
export type Strength = 'strong' | 'weak';

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
export type Quantity =
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
export type Qualifier =
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

/** The words for one concept. */
export interface ConceptWords {
  readonly concept: Concept;
  readonly strong?: Words;
  readonly weak?: Words;
  /** Where the words come from: a source, or the memory of those who wrote them down. */
  readonly from: 'memory';
}
