/// <reference lib="dom" />
import type { FrameLocator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeWithChromium } from '../chromium.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

describeWithChromium('the bench on small screens', () => {
  let visit: BenchVisit;
  let page: Page;
  let pane: FrameLocator;

  eachVisits((begun) => {
    visit = begun;
    ({ page, pane } = visit);
  });

  for (const [width, height] of [
    [320, 640],
    [640, 400],
  ] as const) {
    it(`fits ${width} by ${height} pixels, and has no fault of accessibility there`, async () => {
      await page.setViewportSize({ width, height });
      await pane.getByRole('tab', { name: 'Audit' }).click();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      const side = (await page.locator('#side').boundingBox())!;
      expect(side.width).toBeGreaterThanOrEqual(280);
      expect(side.height).toBeGreaterThan(100);
      const inner = page.frames()[1]!;
      expect(
        await inner.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
      ).toBe(0);
      expect(await visit.violations()).toEqual([]);
    });
  }
});
