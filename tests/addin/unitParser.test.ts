import { afterEach, describe, expect, it, vi } from 'vitest';
import { parseUnit } from '../../src/units/parse.ts';
import small from '../../src/tools/addin/unitParser.ts';

/** Spellings from the project's own vocabulary and wrong ones: bracketed, with powers, doubled, unbalanced. */
const TEXTS = [
  'mil', 'mils p-p', 'µm', 'um pk-pk', 'mm', 'in', 'mV/mil', 'mV/µm', 'V/mm', 'mV/(mm/s)', 'mV / (in/s)', 'mV/(m/s2)',
  'mV/(m/s^2)', 'm/s²', 'mm/s rms', 'in/s', 'ips', 'g', 'g pk', 'mV/g', '%', 'mA', 'mA/%', 'V', 'mV', 'r/min', 'rpm',
  'Hz', 's', 'd', 'h', 'mil/day', 'µm/h', 'mm s^-1', 'm s-2', 'mm/s/day', '1/s', 's^-1', '', ' ', '()', 'mV/', '/mil',
  'mV//mil', 'mV/(mil', 'mV/mil)', 'mil^', 'mil^2', 'mil^^2', 'furlong', 'mV/furlong', '((mil))', '2 mil', '"', 'm/s^0.5',
]; // prettier-ignore

describe('the parser for units in pages', () => {
  afterEach(() => {
    vi.doUnmock('mathjs/lib/browser/math.js');
    vi.resetModules();
  });

  it('reads every unit as the parser under Node does', async () => {
    vi.resetModules();
    let used = 0;
    const parse = (text: string) => {
      used += 1;
      return small.parse(text);
    };
    vi.doMock('mathjs/lib/browser/math.js', () => ({ default: { ...small, parse } }));
    const page = await import('../../src/units/parse.ts');
    const read = TEXTS.map((text) => [text, page.parseUnit(text)]);
    expect(used).toBeGreaterThan(20);
    expect(read).toEqual(TEXTS.map((text) => [text, parseUnit(text)]));
    expect(read.filter(([, unit]) => typeof unit === 'object')).not.toHaveLength(0);
  });
});
