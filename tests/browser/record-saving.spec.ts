/** No room, or a place that may only be read: what is said where the answer or the file was given, and that what
    is shown is what is stored. */

import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import { expect, test } from './check';
import { refuse } from './records';
import { settle } from './screen';
import { BACK, HOT_CHASSIS, inspect } from './units';
import { Walk } from './walk';
import { say } from './words';

for (const trouble of ['error-no-room', 'error-read-only']) {
  test(`${trouble}: an answer is not taken, is said where it was given, and can be given again`, async ({
    bridge,
    page,
    traffic,
  }) => {
    const walk = new Walk(page);
    const inspection = await inspect(bridge, { name: 'Radio' });
    const found = async () =>
      (await bridge.call<InspectionView>('show_inspection', { inspection })).findings.map(({ question }) => question);
    await page.goto(`/#/i/${inspection}/q/plug`);
    await settle(page, traffic);
    await refuse(page, 'answer', 'storage', say(trouble));
    const answer = page.getByRole('button', { name: say('answer-plug-two_equal_blades'), exact: true });
    await page.waitForTimeout(500);
    await answer.tap();
    await expect(page.getByRole('alert').filter({ hasText: say(trouble) })).toBeInViewport();
    // The same question, with no answer chosen: that is what is stored.
    expect(await walk.question()).toBe('plug');
    await expect(answer).toBeEnabled();
    await expect(page.locator('[aria-pressed=true], [aria-current=true]')).toHaveCount(0);
    expect(await found()).toEqual([]);
    await page.unroute('**/api/answer');
    await answer.tap();
    await expect.poll(() => walk.question()).not.toBe('plug');
    expect(await found()).toEqual(['plug']);
    await expect(page.getByText(say(trouble))).toHaveCount(0);
  });
}

const FILES = [
  { what: 'a report', place: 'papers', button: 'papers-report-give' },
  { what: 'a tag', place: 'papers', button: 'papers-tag-give' },
  { what: 'a photo', place: 'photo', button: 'photo-share' },
];

for (const { what, place, button } of FILES) {
  test(`${what} that is not saved after all is not said to be, and why it cannot be written is`, async ({
    bridge,
    page,
    traffic,
  }) => {
    const walk = new Walk(page);
    const inspection = await inspect(bridge, { ...HOT_CHASSIS, photos: [{ of: null, file: BACK }] });
    const { photos } = await bridge.call<InspectionView>('show_inspection', { inspection });
    await page.goto(`/#/i/${inspection}/${place}${place === 'photo' ? `/${photos[0]?.id}` : ''}`);
    await settle(page, traffic);
    await page.route('**/api/save_file', (route) => route.fulfill({ json: { ok: false } }));
    const told = page.getByRole('main').getByRole('status').filter({ hasText: /\.(pdf|jpg)/ });
    const alarm = page.getByRole('alert').filter({ hasText: /./ });
    await walk.tap(say(button));
    await settle(page, traffic);
    await expect(walk.named(say(button))).toBeEnabled();
    await expect(told).toHaveCount(0);
    await expect(alarm).toHaveCount(0);
    expect(traffic.asked.filter((address) => address.endsWith('save_file'))).toHaveLength(1);

    await page.unroute('**/api/save_file');
    await refuse(page, 'save_file', 'storage', say('file-no-room'));
    await walk.tap(say(button));
    await expect(alarm.filter({ hasText: say('file-no-room') })).toBeVisible();
    await expect(told).toHaveCount(0);

    await page.unroute('**/api/save_file');
    await walk.tap(say(button));
    await expect(alarm).toHaveCount(0);
    if (place === 'papers') await expect(told).toBeVisible();
  });
}
