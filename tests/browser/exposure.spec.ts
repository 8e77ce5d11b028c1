/** What explains the verdict: the grid of positions and faults, and the chart of current against time. */

import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import { expect, test } from './check';
import { settle } from './screen';
import { HOT_CHASSIS, inspect, LEAKY_AMPLIFIER, PICNIC_PORTABLE } from './units';
import { Walk } from './walk';
import { say } from './words';

test('the grid opens at the cell that the verdict quotes and says what the tapped one means', async ({
  bridge,
  page,
  traffic,
}) => {
  const walk = new Walk(page);
  const id = await inspect(bridge, HOT_CHASSIS);
  await page.goto(`/#/i/${id}/verdict`);
  await settle(page, traffic);
  const quoted = await walk.tag.innerText();
  await walk.tap(say('grid-see'));
  await settle(page, traffic);
  const chosen = page.locator('td button[aria-pressed=true]');
  await expect(chosen).toHaveCount(1);
  const figure = await chosen.locator('b').innerText();
  expect(quoted).toContain(figure);
  await expect(page.locator('td').getByRole('status').getByText(say('grid-quoted'))).toBeVisible();

  // Another cell: what it means comes right under its row, and only once.
  const cell = page.locator('tbody').nth(1).locator('td button').first();
  await cell.tap();
  await expect(cell).toHaveAttribute('aria-pressed', 'true');
  const said = page.locator('td').getByRole('status');
  await expect(said).toHaveCount(1);
  await expect(said).toContainText(await cell.locator('b').innerText());
  await expect(said.getByText(say('grid-quoted'))).toHaveCount(0);
});

test('the chart shows what the verdict quotes, and how soon a device cuts it off', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const id = await inspect(bridge, LEAKY_AMPLIFIER);
  await page.goto(`/#/i/${id}/verdict`);
  await settle(page, traffic);
  const tag = await walk.tag.innerText();
  await walk.tap(say('chart-see'));
  await settle(page, traffic);
  const quoted = page.locator('tbody').filter({ hasText: say('grid-quoted') });
  await expect(quoted).toHaveCount(1);
  const figure = quoted.locator('td').first();
  expect(tag).toContain(await figure.innerText());
  await expect(quoted.locator('td')).toHaveCount(2);

  // What is in the table is in the picture, the largest first in both.
  const picture = page.locator('figure .screen');
  const figures = await page.locator('tbody .figure').allInnerTexts();
  expect(await picture.locator('.figure').allTextContents()).toEqual(figures);
  const across = () => picture.locator('.dot').evaluateAll((dots) => dots.map((dot) => Number(dot.getAttribute('cx'))));
  const before = await across();
  expect(new Set(before).size, 'all at the end of the chart').toBe(1);

  await walk.tap(say('chart-gfci'));
  await settle(page, traffic);
  await expect(quoted.locator('td')).toHaveCount(3);
  await expect(picture.locator('.device')).toHaveCount(1);
  const after = await across();
  expect(after.length).toBe(before.length);
  // The worst is cut short; what leaks below 6 mA stays.
  expect(after[0]).toBeLessThan((before[0] ?? 0) - 40);
  expect(after.at(-1)).toBe(before.at(-1));
  const least = page.locator('tbody').filter({ has: page.locator('.figure') }).last();
  await expect(least).toContainText(say('chart-need-not-trip'));

  await walk.tap(say('chart-no-device'));
  await settle(page, traffic);
  expect(await across()).toEqual(before);
});

test('on paper the chart is as wide as the page, and nothing is left that only a finger can use', async ({
  bridge,
  page,
  traffic,
}) => {
  const inspection = await inspect(bridge, HOT_CHASSIS);
  const { tag } = await bridge.call<InspectionView>('show_inspection', { inspection });
  await page.goto(`/#/i/${inspection}/chart`);
  await settle(page, traffic);
  await page.setViewportSize({ width: 680, height: 962 });
  await page.emulateMedia({ media: 'print' });
  const chart = page.locator('figure svg:visible');
  await expect(chart).toHaveCount(1);
  expect((await chart.boundingBox())?.width).toBeGreaterThan(600);
  await expect(page.locator('button:visible, input:visible')).toHaveCount(0);
  await expect(page.locator('table')).toBeVisible();
  // A sheet is filed by itself: it says what of, against which supply, and when.
  const head = page.locator('main .paper').first();
  await expect(head).toBeVisible();
  await expect(head).toContainText(tag.title);
  await expect(head).toContainText('120 V, 60 Hz');
  await expect(head).toContainText(await page.evaluate(() => new Date().toLocaleDateString([], { dateStyle: 'long' })));
  await page.emulateMedia({ media: 'screen' });
  await expect(head).toBeHidden();
});

for (const place of ['grid', 'chart']) {
  test(`a unit without a line side has nothing to show in the ${place}, and says so`, async ({
    bridge,
    page,
    traffic,
  }) => {
    await page.goto(`/#/i/${await inspect(bridge, PICNIC_PORTABLE)}/${place}`);
    await settle(page, traffic);
    await expect(page.getByText(say('grid-no-line'))).toBeVisible();
    await expect(page.locator('table')).toHaveCount(0);
  });
}
