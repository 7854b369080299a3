/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { callsOurs } from '../../src/hosts/formats/ourFormula.ts';
import { describeWithChromium } from '../chromium.ts';
import { cellsOf } from '../hosts/file/patch/patched.ts';
import { partText } from '../hosts/file/write/parts.ts';
import { objections } from '../hosts/file/write/validator.ts';
import { sharedBook } from '../share/sharedBook.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

describeWithChromium('a copy to share that the bench makes', () => {
  let visit: BenchVisit;
  eachVisits((begun) => {
    visit = begun;
  });

  async function shared(formulas: 'values' | 'native'): Promise<{ name: string; bytes: Uint8Array }> {
    const { page } = visit;
    await page.getByRole('button', { name: 'Share…' }).click();
    await page.getByRole('radio', { name: formulas === 'values' ? /^its value/u : /^a formula/u }).check();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Make the copy' }).click(),
    ]);
    return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
  }

  it.each(['values', 'native'] as const)(
    'has what was typed, and no function of ours, with %s',
    async (formulas) => {
      await visit.open('limits.xlsx', sharedBook());
      await visit.shown('limits.xlsx');
      await visit.type('Channels', 2, 1, '6');
      const { name, bytes } = await shared(formulas);
      expect(name).toBe('limits (to share).xlsx');
      const cells = cellsOf(bytes);
      expect(cells['A2']?.value).toBe(6);
      // 6·200/160, and half of it more for the formula in a formula: 7.5·200/160.
      expect(cells['E2']?.value).toBe(7.5);
      expect(cells['I3']?.value).toBe(9.375);
      const found = Object.values(cells).flatMap(({ formula }) => formula ?? []);
      expect(found.filter(callsOurs)).toEqual([]);
      expect(cells['E2']?.formula === undefined).toBe(formulas === 'values');
      expect(objections(bytes)).toEqual([]);
      if (formulas === 'values') {
        expect(partText(bytes, 'xl/comments1.xml')).toContain('Was: =TRIPDRIFT.EFFECTIVE(A2,B2,C2)');
      }
      await visit.page.locator('#note', { hasText: 'went to your downloads' }).waitFor();
      // The user's own workbook is as unsaved as before.
      expect(cellsOf(await visit.saved())['E2']?.formula).toBe('TRIPDRIFT.EFFECTIVE(A2,B2,C2)');
    },
  );
});
