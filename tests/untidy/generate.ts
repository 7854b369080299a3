import type { Workbook } from '../../src/cells/sheet.ts';
import type { Draft } from './draft.ts';
import { beforeTables, dimensions, onTables } from './layouts/all.ts';
import type { Option } from './layouts/dimension.ts';
import { machinePlace, tags } from './layouts/names.ts';
import { frame } from './layouts/old.ts';
import { detection, quantities, units } from './layouts/quantities.ts';
import { structure } from './layouts/structure.ts';
import { unitPlaces } from './layouts/unitPlaces.ts';
import { otherWords } from './layouts/otherWords.ts';
import { type Words, wordSets } from './layouts/words.ts';
import { type Random, randomFrom } from './random.ts';
import { renderBook } from './render/book.ts';
import { scenario } from './scenario.ts';
import { bookTruth } from './trueOf.ts';
import type { BookTruth } from './truth.ts';

export interface Untidy {
  /** From which it was drawn. */
  readonly number: number;
  readonly workbook: Workbook;
  readonly truth: BookTruth;
  /** Option by dimension. */
  readonly chosen: Readonly<Record<string, string>>;
  readonly words: Words;
}

/** Layouts to hold, by dimension; the others are drawn. */
export type Held = Readonly<Record<string, string>>;

/** An untidy workbook with its truth; the same from the same number. */
export function untidy(number: number, held: Held = {}): Untidy {
  const random = randomFrom(number);
  const words = random.weighted(
    [...wordSets, ...otherWords].filter(({ language }) => (held['language'] ?? language) === language),
  );
  const options = draw(random, held);
  const chosen = Object.fromEntries(options.map(({ dimension, option }) => [dimension, option.name]));
  const draft = emptyDraft(random, words, chosen);
  const apply = (names: readonly { readonly name: string }[]): void => {
    for (const { name } of names) options.find(({ dimension }) => dimension === name)?.option.apply?.(draft);
  };
  apply(beforeTables);
  draft.channels = scenario(
    {
      machines: random.shuffled(words.machines).slice(0, draft.wish.machines),
      unitsOf: draft.wish.unitsOf,
      repeatedTags: draft.wish.repeatedTags,
      percent: draft.wish.percent !== 'no',
      axial: draft.wish.axial,
      bearings: draft.wish.bearings,
    },
    random,
  );
  apply(onTables);
  draft.traps = options.flatMap(({ option }) => option.silentlyWrong ?? []);
  const rendered = renderBook(draft, `untidy-${number}.xlsx`);
  return {
    number,
    workbook: rendered.workbook,
    truth: bookTruth(draft, rendered),
    chosen: { language: words.language, ...chosen },
    words,
  };
}

/** Dimensions in which no way is the usual one. */
const alwaysOpen: readonly string[] = [
  structure.name,
  unitPlaces.name,
  machinePlace.name,
  tags.name,
  units.name,
  detection.name,
  quantities.name,
  frame.name,
];

/** Draws a way for each dimension; workbooks differ in how many oddities they have. */
function draw(random: Random, held: Held): { dimension: string; option: Option }[] {
  const chosen: Record<string, string> = {};
  const calm = random.pick([1, 3, 8]);
  return dimensions.map(({ name, options }) => {
    const open = options.filter((option) => option.fits?.(chosen) ?? true);
    const wanted = open.filter((option) => option.name === held[name]);
    const [usual] = options;
    const weighed = open.map((option) => ({
      option,
      weight: option === usual && !alwaysOpen.includes(name) ? option.weight * calm : option.weight,
    }));
    const option = wanted[0] ?? random.weighted(weighed).option;
    chosen[name] = option.name;
    return { dimension: name, option };
  });
}

function emptyDraft(random: Random, words: Words, chosen: Record<string, string>): Draft {
  const draft: Draft = {
    random,
    words,
    chosen,
    wish: {
      unitsOf: () => {
        throw new Error('no units drawn');
      },
      machines: random.whole(2, 3),
      bearings: random.whole(1, 2),
      repeatedTags: false,
      percent: 'no',
      axial: false,
      setpoints: words.setpoints[0]!,
      machinePlace: 'column',
      quantities: new Set(),
      detection: '',
    },
    channels: [],
    tables: [],
    sheets: [],
    numbers: 'numbers',
    titles: false,
    indent: 0,
    accept: ['read', 'ask'],
    choice: [],
    mayBeIncomplete: [],
    traps: [],
    changes: new Map(),
  };
  units.options[0]!.apply!(draft);
  return draft;
}
