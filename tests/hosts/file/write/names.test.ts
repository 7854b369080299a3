import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { freeNames, quotedName } from '../../../../src/hosts/formats/reference.ts';

// Rules of sheet names: common practice of spreadsheet programs, no public standard.
describe('sheet names', () => {
  it('are the wanted ones where they are free', () => {
    expect(freeNames(['Audit results', 'Summary'], ['Channels'])).toEqual(['Audit results', 'Summary']);
  });

  it('never are a name the workbook has, in any case, nor each other', () => {
    expect(freeNames(['Audit', 'audit'], ['AUDIT', 'Audit (2)'])).toEqual(['Audit (3)', 'audit (4)']);
  });

  it('are cut to 31 characters, number included, without splitting a character', () => {
    const long = 'Channels of the compressor train';
    expect(freeNames([long, long], [])).toEqual([
      'Channels of the compressor trai',
      'Channels of the compressor (2)',
    ]);
    expect(freeNames([`${'a'.repeat(30)}𝒳`], [])).toEqual(['a'.repeat(30)]);
  });

  it('hold no character that a sheet name may not', () => {
    expect(freeNames(["'a/b:c'", '[*?]', 'History'], [])).toEqual(['a b c', 'Sheet', 'History (2)']);
  });

  it('are legal and free whatever was asked for', () => {
    const name = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }),
      fc.constantFrom('Audit', 'AUDIT', 'audit '),
    );
    fc.assert(
      fc.property(fc.array(name, { maxLength: 6 }), fc.array(name, { maxLength: 6 }), (wanted, existing) => {
        const given = freeNames(wanted, existing);
        const all = [...existing, ...given].map((entry) => entry.toLowerCase());
        for (const [index, entry] of given.entries()) {
          expect(entry).toMatch(/^[^:\\/?*[\]]{1,31}$/u);
          expect(entry).not.toMatch(/^'|'$/);
          expect(all.indexOf(entry.toLowerCase())).toBe(existing.length + index);
        }
      }),
    );
  });

  it('are quoted in formulas, apostrophes doubled', () => {
    expect(quotedName("Operator's (2)")).toBe("'Operator''s (2)'");
  });
});
