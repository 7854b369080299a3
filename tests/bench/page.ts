import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { largeRun, steps } from '../bench-page/largeRun.ts';
import { serveBench } from '../bench-page/openPage.ts';
import { chromiumPath, startChromium } from '../chromium.ts';
import { stationSheets } from './station.ts';

/** How long each step with a large workbook takes in the bench, and how long its page answers nobody meanwhile. */
const channels = 20_000;

if (chromiumPath() === undefined) {
  console.log('The page of the bench was not measured: Chromium is not installed.');
} else {
  const [served, browser] = await Promise.all([serveBench(), startChromium()]);
  try {
    const page = await browser.newPage();
    page.setDefaultTimeout(180_000);
    const { figures } = await largeRun(page, served.origin, newWorkbook(stationSheets(channels)));
    console.table(
      steps.map((step) => ({
        [`page, ${channels} channels`]: step,
        s: figures[step].seconds.toFixed(1),
        'longest task ms': figures[step].longest.toFixed(0),
      })),
    );
  } finally {
    await browser.close();
    await served.close();
  }
}
