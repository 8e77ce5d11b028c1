/** What explains the verdict: the grid of positions and faults. */

import { expect, test } from './check';
import { settle } from './screen';
import { HOT_CHASSIS, inspect, PICNIC_PORTABLE } from './units';
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

test('a unit without a line side has nothing to show, and says so', async ({ bridge, page, traffic }) => {
  await page.goto(`/#/i/${await inspect(bridge, PICNIC_PORTABLE)}/grid`);
  await settle(page, traffic);
  await expect(page.getByText(say('grid-no-line'))).toBeVisible();
  await expect(page.locator('table')).toHaveCount(0);
});
