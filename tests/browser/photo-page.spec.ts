/** A photo by itself: worded, put in order, compared, given away, taken again and removed. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import type { Page } from '@playwright/test';

import { expect, test } from './check';
import { key, PHOTOGRAPHED, PhotoScreen, refuse, type } from './photo-screen';
import { settle } from './screen';
import { BACK, inspect, PLUG, SHELF_RADIO } from './units';
import { READING_MS } from './walk';
import { say } from './words';

const caption = (page: Page) => page.getByLabel(say('photo-caption'), { exact: true });

const ENDS: Record<string, (page: Page) => Promise<unknown>> = {
  'by going back': (page) => page.goBack(),
  'by the key that is done': (page) => key(page, 'Enter'),
  'by another screen': (page) => page.getByRole('button', { name: say('verdict'), exact: true }).tap(),
  'by looking closer': (page) => page.getByRole('button', { name: say('photo-closer') }).tap(),
  'by putting it in order': (page) => page.getByRole('button', { name: say('photo-later') }).tap(),
  'by a new start': (page) => page.reload(),
};

for (const [how, end] of Object.entries(ENDS)) {
  test(`a half-written caption is kept when writing ends ${how}`, async ({ bridge, page, traffic }) => {
    const shown = await PhotoScreen.open(bridge, page, traffic, [], 'q/plug');
    await page.getByRole('list', { name: say('photos') }).getByRole('button').first().tap();
    await type(page, caption(page), 'wider bla');
    await end(page);
    await expect.poll(async () => (await shown.photo())?.caption).toBe('wider bla');
    if (how === 'by putting it in order') {
      await expect.poll(async () => (await shown.photos())[1]?.id, 'and what ended it is done').toBe(shown.id);
    }
  });
}

test('a caption that cannot be stored stays as it was written', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const allow = await refuse(page, 'caption_photo', 'The disk is full.');
  await caption(page).fill('wider blade');
  await caption(page).blur();
  await expect(page.getByRole('alert').filter({ hasText: 'The disk is full.' })).toBeVisible();
  await expect(caption(page)).toHaveValue('wider blade');
  await allow();
  await page.getByRole('button', { name: say('photo-store-again') }).tap();
  await expect.poll(async () => (await shown.photo())?.caption).toBe('wider blade');
  await expect(page.getByRole('alert').filter({ hasText: 'The disk is full.' })).toHaveCount(0);
});

test('undo writes the caption over', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await caption(page).fill('wider blade');
  await caption(page).blur();
  await expect.poll(async () => (await shown.photo())?.caption).toBe('wider blade');
  await settle(page, traffic);
  await page.getByRole('button', { name: say('undo'), exact: true }).tap();
  await expect.poll(async () => (await shown.photo())?.caption).toBe('');
  await expect(caption(page)).toHaveValue('');
});

/** Screens that a photo is opened from, with the photo that is opened there. */
const FROM: Record<string, number> = { 'q/plug': 0, 'change/plug': 0, found: 0, verdict: 0, 'readings/ohms_a_part_on': 2 };

for (const [place, at] of Object.entries(FROM)) {
  test(`a photo that was opened at ${place} and removed is brought back there`, async ({ bridge, page, traffic }) => {
    const inspection = await inspect(bridge, {
      ...PHOTOGRAPHED,
      access: ['outside', 'cover_off', 'meter'],
      photos: [...(PHOTOGRAPHED.photos ?? []), { of: 'readings.ohms_a_part_on', file: BACK }],
    });
    const photos = async () => (await bridge.call<{ photos: { id: string }[] }>('show_inspection', { inspection })).photos;
    const ids = (await photos()).map(({ id }) => id);
    await page.goto(`/#/i/${inspection}/${place}`);
    await settle(page, traffic);
    const strip = page.getByRole('list', { name: say('photos') }).getByRole('button');
    await strip.first().tap();
    await page.waitForURL(`**/photo/${ids[at]}`);
    await page.getByRole('button', { name: say('photo-remove') }).tap();
    await page.waitForURL(`**/${place}`);
    const note = page.locator('.removed');
    await expect(note).toContainText(say('photo-removed'));
    await expect(note, 'seen without looking for it').toBeInViewport({ ratio: 1 });
    expect((await photos()).map(({ id }) => id)).toEqual(ids.filter((id) => id !== ids[at]));
    await page.waitForTimeout(READING_MS);
    await note.getByRole('button', { name: say('undo'), exact: true }).tap();
    await expect.poll(async () => (await photos()).map(({ id }) => id)).toEqual(ids);
    await expect(note).toHaveCount(0);
    await expect(strip.first()).toBeVisible();
    expect(page.url()).toContain(place);
  });
}

test('a photo that was all there is of an inspection, as after a new start, is brought back as well', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await page.goto('about:blank');
  await page.goto('/');
  await settle(page, traffic);
  await page.getByRole('button', { name: say('photo-remove') }).tap();
  await expect.poll(async () => (await shown.photos()).length).toBe(1);
  const note = page.locator('.removed');
  await expect(note).toContainText(say('photo-removed'));
  await page.waitForTimeout(READING_MS);
  await note.getByRole('button', { name: say('undo'), exact: true }).tap();
  await expect.poll(async () => (await shown.photos()).length).toBe(2);
});

test('that a photo was removed is no longer said once something else is done or looked at', async ({ bridge, page, traffic }) => {
  await PhotoScreen.open(bridge, page, traffic, [], 'found');
  await page.getByRole('list', { name: say('photos') }).getByRole('button').first().tap();
  await page.getByRole('button', { name: say('photo-remove') }).tap();
  await expect(page.locator('.removed')).toBeVisible();
  await page.waitForTimeout(READING_MS);
  await page.getByRole('button', { name: say('verdict'), exact: true }).tap();
  await expect(page.getByRole('article')).toBeVisible();
  await expect(page.locator('.removed')).toHaveCount(0);
});

test('photos change places, and one of after is compared with one of before', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const ids = async () => (await shown.photos()).map(({ id }) => id);
  const [first = '', second = ''] = await ids();
  await expect(page.getByRole('button', { name: say('photo-earlier') })).toBeDisabled();
  await page.getByRole('button', { name: say('photo-later') }).tap();
  await expect.poll(ids).toEqual([second, first]);
  await page.getByLabel(say('photo-pair')).selectOption(second);
  await expect.poll(async () => (await shown.photo())?.before).toBe(second);
  await expect(page.getByRole('slider', { name: say('photo-compare') })).toBeVisible();
  await page.getByLabel(say('photo-pair')).selectOption('');
  await expect.poll(async () => (await shown.photo())?.before).toBe(null);
});

test('the line between before and after is dragged on the picture, nothing is cropped, and the sides swap', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const [plug, back] = await shown.photos();
  await bridge.call('pair_photo', { inspection: shown.inspection, photo: shown.id, before: back?.id });
  await page.reload();
  const both = page.getByRole('img', { name: say('photo-both', { before: say('photo-whole'), after: 'the plug' }) });
  await both.scrollIntoViewIfNeeded();
  const box = await both.boundingBox();
  if (!box) throw new Error('no picture');

  // Each photo has the whole frame, and is fitted into it.
  const images = both.locator('image');
  await expect(images).toHaveCount(2);
  for (const image of await images.all()) {
    await expect(image).toHaveAttribute('preserveAspectRatio', 'xMidYMid meet');
    const frame = await image.boundingBox();
    expect(frame?.width).toBeCloseTo(box.width, -1);
    expect(frame?.height).toBeCloseTo(box.height, -1);
  }

  const slider = page.getByRole('slider', { name: say('photo-compare') });
  await expect(slider).toHaveValue('50');
  const grip = both.locator('.grip');
  const held = await grip.boundingBox();
  expect(held?.width).toBeGreaterThanOrEqual(48);
  const send = (type: string, right: number): Promise<void> =>
    both.dispatchEvent(type, {
      pointerId: 2,
      pointerType: 'touch',
      isPrimary: true,
      clientX: box.x + box.width / 2 + right,
      clientY: box.y + box.height / 2,
    });
  await send('pointerdown', 0);
  await send('pointermove', box.width / 8);
  await send('pointermove', box.width / 4);
  await send('pointerup', box.width / 4);
  await expect.poll(async () => Number(await slider.inputValue())).toBeCloseTo(75, 0);
  const moved = await grip.boundingBox();
  expect((moved?.x ?? 0) - (held?.x ?? 0)).toBeCloseTo(box.width / 4, 0);
  await send('pointermove', 0);
  expect(Number(await slider.inputValue()), 'no finger is down').toBeCloseTo(75, 0);

  const order = () => images.evaluateAll((all) => all.map((image) => image.getAttribute('data-photo')));
  expect(await order()).toEqual([back?.id, plug?.id]);
  await page.getByRole('button', { name: say('photo-swap') }).tap();
  expect(await order()).toEqual([plug?.id, back?.id]);
});

test('what cannot be given away is said, and can be tried again', async ({ bridge, page, traffic }) => {
  await PhotoScreen.open(bridge, page, traffic);
  const allow = await refuse(page, 'export_photo', 'The photo cannot be read.');
  const share = page.getByRole('button', { name: say('photo-share') });
  await share.tap();
  const said = page.getByRole('alert').filter({ hasText: 'The photo cannot be read.' });
  await expect(said).toBeInViewport();
  await allow();
  await share.tap();
  await expect.poll(() => readdirSync(bridge.given)).toEqual(['U-0001.jpg']);
  await expect(said).toHaveCount(0);
});

test('the file that is given away is the photo with its marks drawn in', async ({ bridge, page, traffic }) => {
  const { inspection, id } = await PhotoScreen.open(bridge, page, traffic);
  await page.getByRole('button', { name: say('photo-share') }).tap();
  await expect.poll(() => readdirSync(bridge.given)).toEqual(['U-0001.jpg']);
  const exported = await bridge.call<string>('export_photo', { inspection, photo: id });
  expect(readFileSync(join(bridge.given, 'U-0001.jpg')).toString('base64')).toBe(exported);
});

test('a photo is taken again, and the old one removed', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic, [], 'q/plug');
  await page.getByRole('list', { name: say('photos') }).getByRole('button').first().tap();
  const again = page.getByRole('button', { name: say('photo-take-again') });
  const chooser = page.waitForEvent('filechooser');
  await again.tap();
  const chosen = await chooser;
  expect(chosen.isMultiple()).toBe(false);
  await expect(page.locator('input[type=file][capture=environment]').first()).toBeAttached();
  await chosen.setFiles(BACK);
  const offer = page.getByRole('group', { name: say('photo-taken-again') });
  await expect(offer).toBeVisible();
  const made = (await shown.photos()).find(({ id, finding }) => id !== shown.id && finding === 'answers.plug');
  expect(made, 'it is of the same question').toBeDefined();
  await page.waitForTimeout(READING_MS);
  await offer.getByRole('button', { name: say('photo-remove-old') }).tap();
  await page.waitForURL(`**/photo/${made?.id}`);
  expect((await shown.photos()).map(({ id }) => id)).not.toContain(shown.id);
  await expect(page.locator('.removed')).toContainText(say('photo-removed'));
  await page.goBack();
  await expect.poll(() => page.url()).toContain('/q/plug');
});

test('a photo taken again has caption, place, before and after of the one it replaces', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const [first, back] = await shown.photos();
  const { inspection } = shown;
  for (const file of [BACK, PLUG]) {
    await bridge.call('add_photo', { inspection, finding: null, picture: readFileSync(file).toString('base64') });
  }
  const third = (await shown.photos())[2];
  await bridge.call('caption_photo', { inspection, photo: first?.id, caption: 'Plug, seen from below' });
  await bridge.call('pair_photo', { inspection, photo: first?.id, before: back?.id });
  await bridge.call('pair_photo', { inspection, photo: third?.id, before: first?.id });
  const before = (await shown.photos()).map(({ id }) => id);
  await page.reload();
  await settle(page, traffic);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: say('photo-take-again') }).tap();
  await (await chooser).setFiles(BACK);
  const remove = page.getByRole('button', { name: say('photo-remove-old') });
  await expect(remove).toBeVisible();
  await page.waitForTimeout(READING_MS);
  await remove.tap();
  await expect.poll(async () => (await shown.photos()).some(({ id }) => id === first?.id)).toBe(false);
  const now = await shown.photos();
  const made = now.find(({ id }) => !before.includes(id));
  expect(now.map(({ id }) => id), 'in its place').toEqual(before.map((id) => (id === first?.id ? made?.id : id)));
  expect(made).toMatchObject({ caption: 'Plug, seen from below', before: back?.id, finding: 'answers.plug' });
  expect(now.find(({ id }) => id === third?.id)?.before, 'what it is the before of').toBe(made?.id);
  // The removal is the last thing that was done: an undo brings the old one back.
  await page.waitForTimeout(READING_MS);
  await page.locator('.removed').getByRole('button').tap();
  await expect.poll(async () => (await shown.photos()).map(({ id }) => id)).toContain(first?.id);
});

test('of a photo taken again nothing of the old one is lost when something of it cannot be stored', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await bridge.call('caption_photo', { inspection: shown.inspection, photo: shown.id, caption: 'Plug' });
  await page.reload();
  await settle(page, traffic);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: say('photo-take-again') }).tap();
  await (await chooser).setFiles(BACK);
  const remove = page.getByRole('button', { name: say('photo-remove-old') });
  await expect(remove).toBeVisible();
  await page.waitForTimeout(READING_MS);
  await refuse(page, 'caption_photo', 'The disk is full.');
  await remove.tap();
  await expect(page.getByText('The disk is full.').first()).toBeVisible();
  expect(await shown.photo()).toMatchObject({ caption: 'Plug' });
});

test('from a photo that is gone a button leads back', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, SHELF_RADIO);
  await page.goto(`/#/i/${inspection}/found`);
  await settle(page, traffic);
  await page.evaluate((id) => (location.hash = `#/i/${id}/photo/00000000-0000-7000-8000-000000000000`), inspection);
  await expect(page.getByRole('heading', { name: say('photo-gone') })).toBeVisible();
  await page.waitForTimeout(READING_MS);
  await page.getByRole('button', { name: say('photo-gone-back') }).tap();
  await expect(page.getByRole('heading', { name: say('photo-gone') })).toHaveCount(0);
  expect(page.url()).toContain(inspection);
});

test('a photo that is taken again is kept beside the old one if the person likes', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: say('photo-take-again') }).tap();
  await (await chooser).setFiles(BACK);
  await expect(page.getByRole('button', { name: say('photo-keep-both') })).toBeVisible();
  await page.waitForTimeout(READING_MS);
  await page.getByRole('button', { name: say('photo-keep-both') }).tap();
  await expect(page.getByRole('button', { name: say('photo-take-again') })).toBeVisible();
  expect((await shown.photos()).length).toBe(3);
});
