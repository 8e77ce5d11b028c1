/** Marks of a photo: stored as they are made, however quickly and however writing ends; never lost. */

import type { Page } from '@playwright/test';

import type { Mark } from '../../ui/src/lib/types/Mark';
import { expect, test } from './check';
import { hold, key, PhotoScreen, type, type Place, refuse } from './photo-screen';
import { settle } from './screen';
import { say } from './words';

const pin = (x: number, y: number, caption = ''): Mark => ({ shape: 'pin', x, y, caption });
const PINS = [pin(0.3, 0.3), pin(0.7, 0.7)];
const BOX: Mark = { shape: 'box', x1: 0.3, y1: 0.3, x2: 0.7, y2: 0.7, caption: '' };

const pinNamed = (number: number): string => say('mark-number', { mark: say('mark-pin'), number });

test('pins, arrows and boxes are stored as they are made, moved, worded and removed', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const shapes = async () => (await shown.marks()).map(({ shape }) => shape);
  await shown.look();
  await shown.turn('mark-pin', true);
  await shown.touch([0.5, 0.5]);
  await expect.poll(shapes).toEqual(['pin']);
  await shown.words.fill('bare screw');
  await shown.words.blur();
  await expect.poll(async () => (await shown.marks())[0]?.caption).toBe('bare screw');

  await shown.turn('mark-arrow', true);
  await shown.drag([0.3, 0.45], [0.6, 0.55]);
  await expect.poll(shapes).toEqual(['pin', 'arrow']);
  await shown.turn('mark-box', true);
  await shown.drag([0.6, 0.4], [0.8, 0.6]);
  await expect.poll(shapes).toEqual(['pin', 'arrow', 'box']);

  // With no tool a mark is taken by its place: dragged, then removed.
  await shown.turn('mark-box', false);
  const [before] = await shown.marks();
  await shown.drag([0.5, 0.5], [0.4, 0.52]);
  await expect.poll(async () => (await shown.marks())[0]).not.toEqual(before);
  await shown.viewer.getByRole('button', { name: say('mark-remove-which', { mark: pinNamed(1) }) }).tap();
  await expect.poll(shapes).toEqual(['arrow', 'box']);
  await shown.button('photo-close').tap();
  await expect(shown.viewer).toHaveCount(0);
  await expect(page.getByRole('list', { name: say('photo-marks') }).getByRole('listitem')).toHaveCount(2);
});

test('marks made while another is being stored are shown, and stored after it', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  const release = await hold(page, 'mark_photo');
  await shown.turn('mark-pin', true);
  for (const at of [[0.3, 0.4], [0.5, 0.5], [0.7, 0.6]] as Place[]) await shown.touch(at);
  await expect(shown.sheet.locator('text')).toHaveText(['1', '2', '3']);
  expect(await shown.marks(), 'none is stored yet').toEqual([]);
  release();
  await expect.poll(async () => (await shown.marks()).length).toBe(3);
  await settle(page, traffic);
  await expect(shown.sheet.locator('text')).toHaveText(['1', '2', '3']);
});

test('a mark waits for whatever else is being stored', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const release = await hold(page, 'order_photos');
  await page.getByRole('button', { name: say('photo-later') }).tap();
  await shown.look();
  await shown.turn('mark-pin', true);
  await shown.touch([0.5, 0.5]);
  release();
  await expect.poll(async () => (await shown.marks()).length).toBe(1);
  expect((await shown.photos())[1]?.id, 'and the order is kept too').toBe(shown.id);
});

test('a mark that cannot be stored stays, says so, and is stored when tried again', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  const allow = await refuse(page, 'mark_photo', 'The disk is full.');
  await shown.turn('mark-pin', true);
  await shown.touch([0.5, 0.5]);
  await expect(shown.viewer.getByRole('alert').filter({ hasText: 'The disk is full.' })).toBeVisible();
  await expect(shown.sheet.locator('text')).toHaveText(['1']);
  await shown.touch([0.3, 0.3]);
  await expect(shown.sheet.locator('text')).toHaveText(['1', '2']);
  // Elsewhere too it is said, and what was drawn is still there.
  await shown.button('photo-close').tap();
  await expect(page.getByRole('alert').filter({ hasText: 'The disk is full.' })).toBeVisible();
  await expect(page.getByRole('main').getByRole('img').locator('text')).toHaveText(['1', '2']);
  await shown.look();
  await shown.button('undo').tap();
  await expect(shown.sheet.locator('text'), 'an undo takes back one that is not stored').toHaveText(['1']);
  await allow();
  await shown.button('photo-store-again').tap();
  await expect.poll(async () => (await shown.marks()).length).toBe(1);
  await expect(shown.button('photo-store-again')).toHaveCount(0);
});

const ENDS: Record<string, (page: Page, shown: PhotoScreen) => Promise<unknown>> = {
  'by Escape': (page) => key(page, 'Escape'),
  'by going back': (page) => page.goBack(),
  'by the button that closes': (_, shown) => shown.button('photo-close').tap(),
  'by another mark': (_, shown) => shown.touch([0.7, 0.6]),
  'by a mark in the list': (_, shown) => shown.list.nth(1).tap(),
  'by a tool': (_, shown) => shown.button('mark-arrow').tap(),
  'by hiding the marks': (_, shown) => shown.button('marks-shown').tap(),
  'by a new start': (page) => page.reload(),
  'by a call that hides the app': (page) => hide(page),
};

for (const [how, end] of Object.entries(ENDS)) {
  test(`half-written words of a mark are kept when writing ends ${how}`, async ({ bridge, page, traffic }) => {
    const shown = await PhotoScreen.open(bridge, page, traffic, [pin(0.3, 0.4), pin(0.7, 0.6)]);
    await shown.look();
    await shown.touch(await shown.on([0.3, 0.4]));
    await type(page, shown.words, 'bare scr');
    await end(page, shown);
    await expect.poll(async () => (await shown.marks()).map(({ caption }) => caption)).toEqual(['bare scr', '']);
  });
}

test('undo in the viewer takes back what was marked, and nothing else', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const { findings } = await shown.view();
  await shown.look();
  await expect(shown.button('undo'), 'nothing was marked').toBeDisabled();
  await shown.turn('mark-pin', true);
  await shown.touch([0.4, 0.4]);
  await shown.touch([0.6, 0.6]);
  await expect.poll(async () => (await shown.marks()).length).toBe(2);
  for (const left of [1, 0]) {
    await shown.button('undo').tap();
    await expect.poll(async () => (await shown.marks()).length).toBe(left);
  }
  await expect(shown.button('undo')).toBeDisabled();
  expect((await shown.view()).findings).toEqual(findings);
  expect((await shown.photos()).length).toBe(2);
});

test('undo waits for the mark that is being stored', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic, [pin(0.2, 0.3)]);
  await shown.look();
  const release = await hold(page, 'mark_photo');
  await shown.turn('mark-pin', true);
  await shown.touch([0.6, 0.6]);
  await shown.button('undo').tap();
  release();
  await expect(shown.sheet.locator('text')).toHaveText(['1']);
  await settle(page, traffic);
  expect((await shown.marks()).length).toBe(1);
});

/** Where a box can be taken, in shares of the photo. */
const TAKEN: Record<string, Place> = { 'a quarter along its upper side': [0.4, 0.3], 'its inside': [0.42, 0.55] };

for (const [where, at] of Object.entries(TAKEN)) {
  test(`a box is taken by ${where}`, async ({ bridge, page, traffic }) => {
    const shown = await PhotoScreen.open(bridge, page, traffic, [BOX]);
    await shown.look();
    await shown.touch(await shown.on(at));
    await expect(shown.list.first()).toHaveAttribute('aria-pressed', 'true');
    await shown.touch(await shown.on([0.1, 0.9]));
    await expect(shown.list.first(), 'a tap beside it lets it go').toHaveAttribute('aria-pressed', 'false');
    await shown.drag(await shown.on(at), await shown.on([at[0] + 0.1, at[1]]));
    const left = async () => (await shown.marks()).map((mark) => (mark.shape === 'box' ? mark.x1 : 0))[0];
    await expect.poll(left).toBeCloseTo(0.4);
  });
}

test('a tap beside the photo marks nothing', async ({ bridge, page, traffic }) => {
  await page.setViewportSize({ width: 844, height: 390 });
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  await shown.turn('mark-pin', true);
  await shown.touch(await shown.on([-0.4, 0.5]));
  await shown.drag(await shown.on([-0.4, 0.3]), await shown.on([-0.3, 0.6]));
  await shown.touch(await shown.on([0.5, 0.5]));
  await expect.poll(async () => rounded((await shown.marks())[0])).toMatchObject({ x: 0.5, y: 0.5 });
  expect((await shown.marks()).length).toBe(1);
});

test('what is nearer is taken before the box around it', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic, [pin(0.5, 0.5), BOX]);
  await shown.look();
  await shown.touch(await shown.on([0.5, 0.52]));
  await expect(shown.list.first()).toHaveAttribute('aria-pressed', 'true');
});

for (const larger of [0, 2]) {
  test(`the ends of a mark are dragged by 48 px handles, enlarged ${larger} times`, async ({ bridge, page, traffic }) => {
    const arrow: Mark = { shape: 'arrow', x1: 0.4, y1: 0.45, x2: 0.6, y2: 0.55, caption: 'cord' };
    const shown = await PhotoScreen.open(bridge, page, traffic, [arrow, { ...BOX, x1: 0.45, y1: 0.4, x2: 0.55, y2: 0.6 }]);
    await shown.look();
    for (let times = 0; times < larger; times += 1) await shown.button('photo-larger').tap();
    await shown.list.first().tap();
    const reach = shown.sheet.locator('.reach');
    await expect(reach).toHaveCount(2);
    for (const handle of await reach.all()) expect((await handle.boundingBox())?.width).toBeGreaterThanOrEqual(48);
    // At the rim of what a finger reaches.
    await shown.drag(await shown.beside([0.6, 0.55], 16, 16), await shown.beside([0.65, 0.5], 16, 16));
    await expect.poll(async () => rounded((await shown.marks())[0])).toEqual({ ...arrow, x2: 0.65, y2: 0.5 });

    await shown.list.nth(1).tap();
    await expect(reach).toHaveCount(4);
    await shown.drag(await shown.on([0.55, 0.4]), await shown.on([0.6, 0.35]));
    await expect.poll(async () => rounded((await shown.marks())[1])).toMatchObject({ x1: 0.45, y1: 0.35, x2: 0.6, y2: 0.6 });
  });
}

test('marks are reached, moved and removed by keys, and have names', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic, [pin(0.3, 0.3, 'bare screw'), BOX]);
  await shown.look();
  const named = [
    say('mark-with-words', { mark: pinNamed(1), words: 'bare screw' }),
    say('mark-number', { mark: say('mark-box'), number: 1 }),
  ];
  for (const [place, name] of named.entries()) await expect(shown.list.nth(place)).toHaveAccessibleName(name);
  await shown.list.first().tap();
  await key(page, 'ArrowRight');
  await key(page, 'ArrowRight');
  const { width, height } = (await shown.photo()) ?? { width: 1, height: 1 };
  await expect.poll(async () => rounded((await shown.marks())[0])).toMatchObject({ x: 0.32, y: 0.3 });
  await key(page, 'ArrowDown');
  const down = 0.3 + (0.01 * width) / height;
  await expect.poll(async () => ((await shown.marks())[0] as { y: number }).y).toBeCloseTo(down);
  await key(page, 'Delete');
  await expect.poll(async () => (await shown.marks()).map(({ shape }) => shape)).toEqual(['box']);
});

test('a tool that a key takes up marks the middle of what is in sight', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic, PINS);
  await shown.look();
  await shown.turn('mark-arrow', true);
  await key(page, 'Enter');
  await expect(shown.button('mark-arrow')).toHaveAttribute('aria-pressed', 'false');
  await key(page, 'Enter');
  await expect.poll(async () => rounded((await shown.marks())[2])).toMatchObject({ shape: 'arrow', x1: 0.4, x2: 0.6 });
});

test('marks are put out of sight and back', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic, PINS);
  await shown.look();
  await expect(shown.sheet.locator('text')).toHaveCount(2);
  await shown.button('marks-shown').tap();
  await expect(shown.button('marks-shown')).toHaveAttribute('aria-pressed', 'false');
  await expect(shown.sheet.locator('text')).toHaveCount(0);
  await shown.touch(await shown.on([0.3, 0.3]));
  await expect(shown.words, 'what is not seen is not taken').toHaveCount(0);
  await shown.turn('mark-pin', true);
  await expect(shown.sheet.locator('text'), 'a tool brings them back').toHaveCount(2);
});

/** A mark with its places to the nearest thousandth: a finger is no finer. */
function rounded(mark: Mark | undefined): object {
  const entries = Object.entries(mark ?? {}).map(([name, value]: [string, string | number]) => [
    name,
    typeof value === 'number' ? Math.round(value * 1000) / 1000 : value,
  ]);
  return Object.fromEntries(entries) as object;
}

/** The app goes behind another, as when the phone rings. */
function hide(page: Page): Promise<void> {
  return page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
}
