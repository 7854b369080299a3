/// <reference lib="dom" />
import type { BenchVisit } from '../bench-page/openPage.ts';

/** The bench with the demo audited and a late channel chosen, as a PNG. */
export async function auditedScreen(visit: BenchVisit): Promise<Uint8Array> {
  const { page, pane } = visit;
  await withoutTour(visit);
  await visit.audit();
  await pane.locator('.machine-line', { hasText: 'K-101' }).click();
  await pane.locator('.channel-line', { hasText: 'K101-1X' }).click();
  await pane.locator('.channel-detail').waitFor();
  await pane.getByRole('tree').evaluate((list) => {
    list.scrollIntoView({ block: 'start' });
  });
  await settled(visit);
  return page.screenshot();
}

/** The pane alone with the quick answer for three cells of the first sheet, as a PNG. */
export async function quickScreen(visit: BenchVisit): Promise<Uint8Array> {
  const { page, pane } = visit;
  await withoutTour(visit);
  const border = page.getByRole('separator', { name: 'Width of the task pane' });
  for (let step = 0; step < 4; step++) await border.press('ArrowLeft');
  await visit.select('Try it', 6, 2, 4);
  await pane.getByRole('button', { name: 'Take from selection' }).click();
  const uncertainty = pane.getByLabel(/Uncertainty/);
  await uncertainty.fill('3');
  await uncertainty.blur();
  await pane.getByText('Danger 5 mil really trips at 6.25 mil').waitFor();
  await settled(visit);
  return page.locator('#side').screenshot();
}

async function withoutTour({ pane }: BenchVisit): Promise<void> {
  await pane.getByRole('button', { name: 'Skip the tour' }).click();
}

/** The grid draws a moment after what it shows has changed, and has no sign for it. */
async function settled({ page }: BenchVisit): Promise<void> {
  await page.mouse.move(1, 1);
  await page.waitForTimeout(1_500);
}
