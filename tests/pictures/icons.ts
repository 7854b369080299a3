import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { ICON_SIZES } from '../../src/tools/addin/files.ts';

const icons = join(import.meta.dirname, '../../src/tools/icons');

/**
 * Draws our icons as PNG from the drawings in their folder: `npx tsx tests/pictures/icons.ts [path of chromium]`.
 * Small sizes have a drawing of their own that fits their pixels; from 32 on one drawing serves all.
 */
function drawing(size: number): string {
  return `icon-${Math.min(size, 32)}.svg`;
}

const browser = await chromium.launch({
  executablePath: process.argv[2] ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  const page = await browser.newPage();
  for (const size of ICON_SIZES) {
    const svg = readFileSync(join(icons, drawing(size))).toString('base64');
    await page.setViewportSize({ width: size, height: size });
    await page.setContent(
      `<body style="margin:0"><img src="data:image/svg+xml;base64,${svg}" width="${size}" height="${size}" style="display:block">`,
    );
    const png = await page.screenshot({
      omitBackground: true,
      clip: { x: 0, y: 0, width: size, height: size },
    });
    writeFileSync(join(icons, `icon-${size}.png`), png);
  }
} finally {
  await browser.close();
}
