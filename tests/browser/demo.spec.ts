/** The demonstration: ten invented units come in one step and go in one. */

import { expect, test } from './check';
import { settle } from './screen';
import { inspect, SHELF_RADIO } from './units';
import { Walk } from './walk';
import { say } from './words';

test('the demonstration comes and goes, and leaves real units alone', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await page.goto('/');
  await walk.welcome();
  await walk.tap(say('list-demo-load'));
  const rows = page.getByRole('main').getByRole('listitem');
  await expect(rows).toHaveCount(10);
  await expect(rows.getByText(say('list-demo'), { exact: true })).toHaveCount(10);

  await inspect(bridge, SHELF_RADIO);
  await page.reload();
  await expect(rows).toHaveCount(11);
  await walk.tap(say('list-demo-remove'));
  await expect(rows).toHaveCount(1);
  await settle(page, traffic);
  await expect(rows).toContainText(SHELF_RADIO.name);
});
