import { describe, expect, it } from 'vitest';
import { bestCorrections, greedyCorrections } from '../../src/method/corrections/bestCorrections.ts';
import { type CorrectableMember, objectiveOf } from '../../src/method/corrections/corrected.ts';
import { expectedFalls } from '../../src/method/corrections/expectedFalls.ts';
import { inOrder, rankCorrections } from '../../src/method/corrections/rankCorrections.ts';

/** Late with ½, as its threshold is the limit of 5; in time for certain once it is corrected, unless `corrected` says else. */
function even(tag: string, corrected = 1): CorrectableMember {
  const of = (threshold: number) => ({ threshold, shared: 0, own: 0.01, batch: null });
  return { tag, ...of(5), corrected: of(corrected) };
}
const group = (m: number, ...members: CorrectableMember[]) => ({ m, limit: 5, members });
const tags = (count: number) => Array.from({ length: count }, (_, at) => `T${String(at).padStart(3, '0')}`);

describe('what each correction takes off the expected number of late groups', () => {
  it('adds up over groups; the most helpful first, equal ones by tag, useless ones not at all (by hand)', () => {
    // B is in two groups. The 2oo2 of D and E is late with ¾, with one corrected with ½. C stays as it is.
    const falls = expectedFalls([
      group(1, even('A')),
      group(1, even('B')),
      group(2, even('E'), even('D')),
      group(1, even('B')),
      group(1, even('C', 5)),
      group(1, { ...even('X'), threshold: NaN }),
    ]);
    expect(falls.map(({ tag }) => tag)).toEqual(['B', 'A', 'D', 'E']);
    [1, 0.5, 0.25, 0.25].forEach((fall, at) => {
      expect(falls[at]?.fall).toBeCloseTo(fall, 12);
    });
    expect(expectedFalls([])).toEqual([]);
  });

  it('and the objective of a machine is a number or none', () => {
    const objective = objectiveOf([group(1, even('A')), group(1, even('B'))], 'any');
    expect(objective(new Set())).toBeCloseTo(0.75, 12);
    expect(objective(new Set(['A']))).toBeCloseTo(0.5, 12);
    expect(objectiveOf([], 'any')(new Set())).toBeNaN();
  });
});

describe('the best set', () => {
  it('is looked for in every set just once', () => {
    const tried: string[] = [];
    const best = bestCorrections(['d', 'b', 'a', 'c'], 2, (set) => {
      tried.push([...set].join(''));
      return 0;
    });
    expect(tried).toEqual(['ab', 'ac', 'ad', 'bc', 'bd', 'cd']);
    expect(best).toEqual({ tags: ['a', 'b'], left: 0, how: 'every set' });
  });

  it('is looked for in up to 20 000 sets: 2 of 200 are 19 900, 2 of 201 are 20 100, 37 of 40 are 9 880', () => {
    const how = (count: number, budget: number) => bestCorrections(tags(count), budget, () => 0).how;
    expect([how(200, 2), how(201, 2)]).toEqual(['every set', 'one after the other']);
    expect([how(40, 3), how(40, 4), how(40, 37)]).toEqual(['every set', 'one after the other', 'every set']);
  });

  it('one after the other ends where none is left', () => {
    expect(greedyCorrections(['b', 'a'], 3, (set) => 2 - set.size)).toEqual({
      tags: ['a', 'b'],
      left: 0,
      how: 'one after the other',
    });
  });
});

it('tags stand in one order, each once; equal gains too', () => {
  expect(inOrder(['b', 'a', 'B', 'b', 'c', 'a'])).toEqual(['B', 'a', 'b', 'c']);
  expect(rankCorrections(['c', 'a', 'b'], () => 1).map(({ tag, gain }) => `${tag} ${gain}`)).toEqual([
    'a 0',
    'b 0',
    'c 0',
  ]);
});
