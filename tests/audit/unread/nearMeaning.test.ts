import { describe, expect, it } from 'vitest';
import { nearMeaning } from '../../../src/audit/read/unread/nearMeaning.ts';

/** The standard header that a header is near, with a mark where it is that very one. */
function near(header: string): string | null {
  const found = nearMeaning(header);
  return found && `${found.name}${found.exact ? ' itself' : ''}`;
}

describe('a header that a quantity is known by', () => {
  it.each([
    ['Measured sensitivity', 'measured sensitivity itself'],
    [' FULL-SCALE ', 'full scale itself'],
    ['Trip', 'danger itself'],
    ['K', 'coverage factor itself'],
  ])('%s is it, whatever its case and punctuation', (header, name) => {
    expect(near(header)).toBe(name);
  });

  it('has an id by which it is judged', () => {
    expect(nearMeaning('Trip delay')).toEqual({ id: 'dangerDelay', name: 'danger delay', exact: true });
    expect(nearMeaning('Trip dleay')).toEqual({ id: 'dangerDelay', name: 'danger delay', exact: false });
  });

  it('of more than 60 characters is a sentence', () => {
    const spaced = (spaces: number): string => `measured${' '.repeat(spaces)}sensitivity`;
    expect(spaced(41)).toHaveLength(60);
    expect(near(spaced(41))).toBe('measured sensitivity itself');
    expect(near(spaced(42))).toBeNull();
    expect(near(`${' '.repeat(60)}danger `)).toBe('danger itself');
  });
});

// Slips counted by hand, one for each letter that is wrong, missing or too many.
describe('a header with slips of the keyboard', () => {
  it.each([
    ['Dangre', 'danger'], // two letters exchanged
    ['Dagner', 'danger'],
    ['Dnager', 'danger'],
    ['Dangr', 'danger'], // one missing
    ['Dannger', 'danger'], // one too many
    ['Damger', 'danger'], // one wrong
    ['Limits', 'limit'],
    ['Uncertanity', 'uncertainty'], // two, of eleven letters
    ['Detaktion', 'detection'], // two, of nine
    ['Alret', 'alert'],
    ['Uncertaty', 'uncertainty'], // two missing, of eleven
    ['Measuredsensitivty', 'measured sensitivity'], // two words in one
    ['Last goodom', 'last good on'],
  ])('%s is near %s', (header, name) => {
    expect(near(header)).toBe(name);
  });

  it.each([
    ['Tanger'], // another first letter
    ['Anger'],
    ['Dengar'], // two wrong, of six letters
    ['Dgnaer'], // two exchanged that do not stand side by side
    ['Dnagre'], // exchanged twice
    ['Lukatiun'], // two and more, of eight
    ['Locutian'], // two, of eight
    ['Votes'], // near a word of four letters
    ['Limt'], // four letters are near too many words
    ['Aler'],
    ['Ditoctooh'], // three, of nine
    ['Uncert'], // cut short, and a single word
    ['Uncertaintyabc'], // three too many
    ['Colour'],
    [''],
  ])('"%s" is near none', (header) => {
    expect(near(header)).toBeNull();
  });

  it('is another header where it merely lacks a word', () => {
    // "measured on", "last good on": two letters fewer, of ten.
    expect(near('Measured')).toBeNull();
    expect(near('Last goo on')).toBe('last good on');
    expect(near('Loop current at')).toBeNull();
  });
});

describe('a header of words cut short', () => {
  it.each([
    ['Meas. sens.', 'measured sensitivity'],
    ['Start-up mult.', 'set-point multiplier'],
    ['Configured sens', 'configured sensitivity'],
    ['Conf sensitivty', 'configured sensitivity'], // beside one with a slip
    ['Full sca', 'full scale'],
    ['Ref sensitivity', 'reference sensitivity'], // three letters are enough
    ['Fau lmiit high', 'fault limit high'], // beside a slip in a word of five
    ['Moniter gai', 'monitor gain'],
    ['Fault lim high', 'fault limit high'],
    ['Référence sens', 'reference sensitivity'],
  ])('%s is near %s', (header, name) => {
    expect(near(header)).toBe(name);
  });

  it.each([
    ['Re sensitivity'], // two letters are too few
    ['Full sc'], // two letters are too few
    ['Sens. ref.'], // in another order
    ['Ref. sens. mV'], // a word more
    ['Moniter gian'], // a slip in a word of four letters, and three in all
    ['Fault lim'], // a word less
    ['Meas. sample'],
  ])('%s is near none', (header) => {
    expect(near(header)).toBeNull();
  });
});
