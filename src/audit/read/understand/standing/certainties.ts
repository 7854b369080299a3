import type { Matter } from '../../tables/columnSpec.ts';
import type { Evidence, Standing } from './evidence.ts';

/** Evidence as the table looks at it. */
export type Sign =
  | 'answer'
  | 'standard header'
  | 'strong word'
  | 'weak word'
  | 'unit fits'
  | 'unit is its own'
  | 'unit by note'
  | 'unit contradicts'
  | 'size fits'
  | 'size contradicts'
  | 'role by word'
  | 'role by weak word'
  | 'role by company'
  | 'role by series'
  | 'role by the other'
  | 'role by assumed group'
  | 'company'
  | 'in order'
  | 'out of order'
  | 'pair'
  | 'shared'
  | 'unique'
  | 'counting'
  | 'hidden'
  | 'visible rival'
  | 'hidden rival'
  | 'set aside';

interface Rule {
  readonly of: readonly Matter[];
  readonly all: readonly Sign[];
  readonly none?: readonly Sign[];
  readonly standing: Standing;
}

const numbers = ['sensitivity', 'setpoint', 'scale', 'quantity'] as const;
const every = [...numbers, 'text', 'tag'] as const;

/**
 * What is believed on which evidence: the first row that fits decides; where none fits a reading is not known. Rows name
 * everything that has to be there together, so that no number of weak signs makes a certain one.
 */
const certainties: readonly Rule[] = [
  { of: every, all: ['answer'], standing: 'certain' },
  { of: every, all: ['unit contradicts'], standing: 'not known' },
  { of: ['sensitivity', 'setpoint', 'scale', 'text', 'tag'], all: ['visible rival'], standing: 'proposed' },
  { of: ['quantity'], all: ['visible rival'], standing: 'proposed' },
  { of: every, all: ['hidden'], standing: 'proposed' },
  { of: every, all: ['set aside'], standing: 'proposed' },
  { of: ['sensitivity'], all: ['role by assumed group'], none: ['standard header'], standing: 'proposed' },
  { of: ['setpoint'], all: ['out of order'], none: ['standard header'], standing: 'proposed' },
  { of: every, all: ['standard header'], standing: 'certain' },
  { of: numbers, all: ['size contradicts'], standing: 'proposed' },

  { of: ['sensitivity'], all: ['unit is its own', 'role by word'], standing: 'certain' },
  { of: ['sensitivity'], all: ['unit is its own', 'role by series'], standing: 'certain' },
  { of: ['sensitivity'], all: ['unit is its own', 'role by company'], standing: 'certain' },
  { of: ['sensitivity'], all: ['unit is its own', 'role by weak word', 'company'], standing: 'certain' },
  {
    of: ['sensitivity'],
    all: ['unit is its own', 'role by weak word', 'role by the other'],
    standing: 'certain',
  },
  { of: ['sensitivity'], all: ['strong word', 'unit by note', 'role by word'], standing: 'certain' },
  { of: ['sensitivity'], all: ['strong word', 'unit by note', 'role by company'], standing: 'certain' },
  {
    of: ['sensitivity'],
    all: ['strong word', 'unit by note', 'role by weak word', 'company'],
    standing: 'certain',
  },
  {
    of: ['sensitivity'],
    all: ['strong word', 'unit by note', 'role by weak word', 'role by the other'],
    standing: 'certain',
  },
  { of: ['sensitivity'], all: ['strong word', 'unit by note', 'role by series'], standing: 'certain' },
  { of: ['sensitivity'], all: ['unit is its own'], standing: 'proposed' },
  { of: ['sensitivity'], all: ['strong word'], standing: 'proposed' },
  { of: ['sensitivity'], all: ['weak word', 'size fits'], standing: 'proposed' },

  { of: ['setpoint'], all: ['strong word', 'unit fits', 'in order'], standing: 'certain' },
  { of: ['setpoint'], all: ['strong word', 'unit fits', 'company'], standing: 'certain' },
  { of: ['setpoint'], all: ['pair', 'unit fits', 'in order'], standing: 'certain' },
  { of: ['setpoint'], all: ['strong word'], standing: 'proposed' },
  { of: ['setpoint'], all: ['pair'], standing: 'proposed' },
  { of: ['setpoint'], all: ['unit fits', 'in order'], standing: 'proposed' },
  { of: ['setpoint'], all: ['weak word'], standing: 'proposed' },

  { of: ['scale'], all: ['strong word', 'unit fits', 'in order'], standing: 'certain' },
  { of: ['scale'], all: ['weak word', 'unit fits', 'in order'], standing: 'certain' },
  { of: ['scale'], all: ['strong word'], standing: 'proposed' },
  { of: ['scale'], all: ['weak word'], standing: 'proposed' },

  { of: ['quantity'], all: ['strong word', 'unit fits'], standing: 'certain' },
  { of: ['quantity'], all: ['strong word', 'size fits'], standing: 'certain' },
  { of: ['quantity'], all: ['weak word', 'unit is its own'], standing: 'certain' },
  { of: ['quantity'], all: ['strong word'], standing: 'proposed' },
  { of: ['quantity'], all: ['weak word', 'unit fits'], standing: 'proposed' },
  { of: ['quantity'], all: ['weak word', 'size fits'], standing: 'proposed' },

  { of: ['text'], all: ['strong word'], standing: 'certain' },
  { of: ['text'], all: ['weak word'], standing: 'certain' },

  { of: ['tag'], all: ['unique', 'shared'], none: ['counting'], standing: 'certain' },
  { of: ['tag'], all: ['strong word', 'unique'], none: ['counting'], standing: 'certain' },
  { of: ['tag'], all: ['strong word'], none: ['counting'], standing: 'certain' },
  { of: ['tag'], all: ['weak word', 'unique'], none: ['counting'], standing: 'certain' },
  { of: ['tag'], all: ['weak word'], standing: 'proposed' },
  { of: ['tag'], all: ['unique'], standing: 'proposed' },
];

/** How far a reading is believed by the signs for it. */
export function standingOf(matter: Matter, signs: ReadonlySet<Sign>): Standing {
  const rule = certainties.find(
    ({ of, all, none = [] }) =>
      of.includes(matter) && all.every((sign) => signs.has(sign)) && !none.some((sign) => signs.has(sign)),
  );
  return rule?.standing ?? 'not known';
}

/** The signs in some evidence. */
export function signsOf(evidence: readonly Evidence[]): Set<Sign> {
  const signs = new Set<Sign>();
  for (const one of evidence) for (const sign of signOf(one)) signs.add(sign);
  return signs;
}

const roles: Readonly<Record<Extract<Evidence, { is: 'role' }>['from'], Sign>> = {
  word: 'role by word',
  'weak word': 'role by weak word',
  company: 'role by company',
  series: 'role by series',
  'the other column': 'role by the other',
  'assumed group': 'role by assumed group',
};

function signOf(one: Evidence): readonly Sign[] {
  switch (one.is) {
    case 'answer':
      return ['answer'];
    case 'standard header':
      return ['standard header'];
    case 'word':
      return [one.strength === 'strong' ? 'strong word' : 'weak word'];
    case 'unit':
      if (!one.fits) return ['unit contradicts'];
      return ['title', 'note', 'legend'].includes(one.scope) && !one.named
        ? ['unit fits', 'unit by note']
        : ['unit fits', 'unit is its own'];
    case 'size':
      return [one.fits ? 'size fits' : 'size contradicts'];
    case 'role':
      return one.company.length > 0 ? [roles[one.from], 'company'] : [roles[one.from]];
    case 'order':
      return [one.holds ? 'in order' : 'out of order'];
    case 'pair':
      return [one.sure ? 'pair' : 'weak word'];
    case 'shared':
      return ['shared'];
    case 'unique':
      return ['unique'];
    case 'counting':
      return ['counting'];
    case 'hidden':
      return ['hidden'];
    case 'rival':
      return [one.hidden ? 'hidden rival' : 'visible rival'];
    case 'aside':
      return ['set aside'];
    case 'series':
      return one.strength === 'strong' ? ['role by series'] : [];
    case 'values':
    case 'label':
    case 'sheet name':
    case 'heading':
    case 'axis':
    case 'ratio':
      return [];
  }
}
