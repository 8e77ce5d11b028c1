/** A shop's whole shelf: two thousand units in the list. */

import { expect, test } from './check';
import { settle } from './screen';
import { inspect } from './units';
import { say } from './words';

const UNITS = 2_000;
/** Rows that a screen holds, with those just outside. */
const FEW = 40;

test('two thousand units scroll with only those in view on the page, and all of them are counted', async ({
  bridge,
  page,
  traffic,
}) => {
  test.slow();
  for (let number = 1; number <= UNITS; number += 1) {
    await inspect(bridge, { name: `Shelf ${number}` });
  }
  await page.goto('/#/');
  await settle(page, traffic);
  const rows = page.getByRole('listitem');
  expect(await rows.count()).toBeLessThan(FEW);
  await expect(rows.first()).toHaveAttribute('aria-setsize', `${UNITS}`);
  // The last created comes first.
  await expect(rows.first()).toContainText(`Shelf ${UNITS}`);

  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
  await expect(page.getByText('Shelf 1', { exact: true })).toBeVisible();
  expect(await rows.count()).toBeLessThan(FEW);
  await expect(rows.last()).toHaveAttribute('aria-posinset', `${UNITS}`);

  // Back from a unit, the list is where it was left.
  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight / 2));
  await settle(page, traffic);
  const middle = rows.nth(4);
  const name = await middle.locator('b').innerText();
  await middle.getByRole('button').tap();
  await expect(page.getByText(name, { exact: true }).first()).toBeVisible();
  await page.goBack();
  await settle(page, traffic);
  await expect(page.getByText(name, { exact: true }).first()).toBeInViewport();

  // What a search leaves is a plain list again.
  await page.getByRole('searchbox', { name: say('list-search') }).fill('Shelf 1999');
  await expect(page.getByRole('listitem')).toHaveCount(1);
});
