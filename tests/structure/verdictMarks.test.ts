import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { verdicts } from '../../src/audit/model/threshold.ts';
import { verdictMarks, type Standing } from '../../src/sheets/style/verdictMarks.ts';

const standings = Object.keys(verdictMarks) as Standing[];
const source = join(import.meta.dirname, '../../src');

/** Relative luminance and contrast (W3C, Web Content Accessibility Guidelines 2.2, from memory; checked below by its ends). */
function luminance(color: string): number {
  const [red = 0, green = 0, blue = 0] = [0, 2, 4].map((at) => {
    const part = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** Grounds of the pane by their names in its style sheet: those of light themes, and those of dark ones. */
function grounds(block: RegExp): string[] {
  const css = readFileSync(join(source, 'pane/style/tokens.css'), 'utf8');
  const own = block.exec(css)?.[0] ?? '';
  return Array.from(own.matchAll(/--(?:ground|raised|sunk): #([0-9a-f]{6});/gu), ([, color = '']) => color);
}

function files(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.(?:tsx?|css|html|mjs)$/u.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

describe('the looks of verdicts', () => {
  it('are told by contrasts from 1 to 21', () => {
    expect(contrast('FFFFFF', '000000')).toBeCloseTo(21, 9);
    expect(contrast('777777', 'FFFFFF')).toBeCloseTo(4.48, 2);
  });

  // 4.5: success criterion 1.4.3 for text.
  it.each(standings)('%s is read on every ground of light and dark themes, and in a cell', (standing) => {
    const { light, dark, fill, onFill } = verdictMarks[standing];
    const [day, night] = [grounds(/:root \{[^}]*\}/u), grounds(/:root\[data-theme='dark'\] \{[^}]*\}/u)];
    expect([day.length, night.length]).toEqual([3, 3]);
    for (const ground of [...day, 'FFFFFF']) expect(contrast(light, ground), ground).toBeGreaterThan(4.5);
    for (const ground of night) expect(contrast(dark, ground), ground).toBeGreaterThan(4.5);
    expect(contrast(onFill, fill ?? 'FFFFFF')).toBeGreaterThan(4.5);
  });

  it('have one sign each, and one colour each but for what acts as little as the other', () => {
    expect(new Set(standings.map((one) => verdictMarks[one].sign)).size).toBe(standings.length);
    for (const part of ['light', 'dark', 'fill'] as const) {
      const colors = verdicts.map((one) => verdictMarks[one][part]);
      expect(new Set(colors).size, part).toBe(verdicts.length);
    }
    expect(verdictMarks['in bypass']).toMatchObject({ fill: verdictMarks.unreachable.fill });
  });

  it('stand in grey with the gravest darkest, late well apart, and what is OK as the paper', () => {
    const grey = (one: Standing) => luminance(verdictMarks[one].fill ?? 'FFFFFF');
    const rising: readonly Standing[] = ['unreachable', 'late', 'undetermined', 'early', 'within'];
    const greys = rising.map(grey);
    expect(greys.toSorted((a, b) => a - b)).toEqual(greys);
    expect(contrast(verdictMarks.unreachable.fill!, verdictMarks.late.fill!)).toBeGreaterThan(3);
    expect(contrast(verdictMarks.late.fill!, verdictMarks.undetermined.fill!)).toBeGreaterThan(1.5);
  });

  it('are declared once: no other source names one of their colours or signs', () => {
    const colors = standings.flatMap((one) => {
      const { light, dark, fill } = verdictMarks[one];
      return [light, dark, fill ?? light];
    });
    const signs = ['unreachable', 'in bypass', 'late', 'early', 'within'].map(
      (one) => verdictMarks[one as Standing].sign,
    );
    const found = files(source)
      // What people write into lists is read there.
      .filter((path) => !path.endsWith('style/verdictMarks.ts') && !path.includes('audit/read/'))
      .flatMap((path) => {
        const text = readFileSync(path, 'utf8');
        const own = [...new Set(colors)].filter((color) =>
          new RegExp(`(?<![0-9a-z])${color}(?![0-9a-z])`, 'iu').test(text),
        );
        return [...own, ...signs.filter((sign) => new RegExp(`['"\`>]${sign}`, 'u').test(text))].map(
          (what) => `${path.slice(source.length + 1)}: ${what}`,
        );
      });
    expect(found).toEqual([]);
  });
});
