/** A photo taken at a question stays with it; what is no photo is refused, once. */

import { expect, test } from './check';
import { settle } from './screen';
import { BACK, inspect, NO_PICTURE, SHELF_RADIO } from './units';
import { Walk } from './walk';
import { say } from './words';

test('a photo taken at a question is shown there, at the review and enlarged', async ({
  bridge,
  page,
  traffic,
}) => {
  const walk = new Walk(page);
  const inspection = await inspect(bridge, { name: '' });
  await page.goto(`/#/i/${inspection}/q/plug`);
  await settle(page, traffic);
  const chooser = page.waitForEvent('filechooser');
  await walk.tap(say('photo'));
  await (await chooser).setFiles(BACK);
  const thumbnail = page.getByRole('list', { name: say('photos') }).getByRole('button');
  await expect(thumbnail).toHaveCount(1);
  expect(await walk.question()).toBe('plug');

  await page.reload();
  await thumbnail.tap();
  const enlarged = page.getByRole('main').getByRole('img');
  await expect(enlarged).toBeVisible();
  const address = await enlarged.locator('image').getAttribute('href');
  expect(await page.evaluate(loaded, address ?? '')).toBeGreaterThan(0);

  await page.goBack();
  await walk.answer({ plug: ['two_equal_blades'] });
  await walk.found.tap();
  await expect(thumbnail.first()).toBeVisible();
});

for (const place of ['change/plug', 'found', 'verdict']) {
  test(`at ${place} a file that is no picture is refused once`, async ({ bridge, page, traffic }) => {
    const inspection = await inspect(bridge, SHELF_RADIO);
    await page.goto(`/#/i/${inspection}/${place}`);
    await settle(page, traffic);
    await page.locator('input[type=file]').first().setInputFiles(NO_PICTURE);
    await expect(page.getByText(NO_PICTURE.name).first()).toBeVisible();
    await settle(page, traffic);
    await expect(page.getByRole('alert').filter({ hasText: NO_PICTURE.name })).toHaveCount(1, { timeout: 1000 });
    const view = await bridge.call<{ photos: unknown[] }>('show_inspection', { inspection });
    expect(view.photos).toEqual([]);
  });
}

/** How wide a picture is once it is read. */
async function loaded(address: string): Promise<number> {
  const image = new Image();
  image.src = address;
  await image.decode();
  return image.naturalWidth;
}
