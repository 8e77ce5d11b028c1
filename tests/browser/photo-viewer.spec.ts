/** A photo over the whole screen: enlarged, left again, and only as much painted as has to be. */

import type { Mark } from '../../ui/src/lib/types/Mark';
import { expect, test } from './check';
import { key, PhotoScreen, pictureNames, type Place } from './photo-screen';
import { settle } from './screen';
import { Walk } from './walk';
import { say } from './words';

const PIN: Mark = { shape: 'pin', x: 0.5, y: 0.5, caption: '' };

/** Two fingers about the middle, from a tenth apart to as much. */
const parting = (apart: number): [Place, Place][] => [
  [[0.45, 0.5], [0.5 - apart / 2, 0.5]],
  [[0.55, 0.5], [0.5 + apart / 2, 0.5]],
];

test('a photo is enlarged by its buttons and a double tap, and never leaves the screen', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  const wide = () => shown.wide();
  const whole = await wide();
  await shown.button('photo-larger').tap();
  expect(await wide()).toBeLessThan(whole);
  await shown.button('photo-smaller').tap();
  expect(await wide()).toBeCloseTo(whole);
  await shown.fingers(parting(0.6));
  expect(await wide(), 'two fingers that part').toBeLessThan(whole / 2);
  await shown.sheet.tap();
  await shown.sheet.tap();
  await expect.poll(wide, 'a double tap shows the whole').toBeCloseTo(whole);
  await shown.sheet.tap();
  await shown.sheet.tap();
  await expect.poll(wide).toBeCloseTo(whole / 2.5);
  await shown.drag([0.1, 0.5], [0.9, 0.5]);
  const [left] = ((await shown.sheet.getAttribute('viewBox')) ?? '').split(' ').map(Number);
  expect(left).toBeGreaterThanOrEqual(0);
});

test('two fingers move the photo too, and what is under them stays there', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  await shown.fingers(parting(0.4));
  const before = await shown.on([0.5, 0.5]);
  await shown.fingers([
    [[0.4, 0.5], [0.3, 0.45]],
    [[0.6, 0.5], [0.5, 0.45]],
  ]);
  const after = await shown.on([0.5, 0.5]);
  expect(after[0] - before[0]).toBeCloseTo(-0.1, 2);
  expect(after[1] - before[1]).toBeCloseTo(-0.05, 2);
});

test('the whole photo is one tap away while it is enlarged, and only then', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  const whole = await shown.wide();
  await expect(shown.button('photo-whole-again')).toHaveCount(0);
  await shown.fingers(parting(0.8));
  expect(await shown.wide()).toBeLessThan(whole);
  await shown.button('photo-whole-again').tap();
  expect(await shown.wide()).toBeCloseTo(whole);
  await expect(shown.button('photo-whole-again')).toHaveCount(0);
});

test('a button tapped after a pinch is no part of it, even if the page never heard a finger lift', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  const pinch = parting(0.3);
  await shown.send('pointerdown', pinch, 0);
  await shown.send('pointermove', pinch, 1);
  // The second finger is lifted where the page does not hear of it.
  await shown.send('pointerup', pinch.slice(0, 1), 1);
  const pinched = await shown.wide();
  await shown.button('photo-larger').tap();
  expect(await shown.wide()).toBeCloseTo(pinched / 1.6);
  const enlarged = await shown.wide();
  await shown.drag([0.5, 0.5], [0.3, 0.4]);
  expect(await shown.wide(), 'one finger moves, and enlarges nothing').toBeCloseTo(enlarged);
});

test('back closes the photo that is looked at, then leads to where it was opened', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic, [], 'q/plug');
  const walk = new Walk(page);
  const address = await walk.address();
  for (const close of [() => page.goBack(), () => shown.button('photo-close').tap(), () => key(page, 'Escape')]) {
    await page.getByRole('list', { name: say('photos') }).getByRole('button').first().tap();
    await shown.look();
    await close();
    await expect(shown.viewer).toHaveCount(0);
    await expect.poll(() => walk.address()).toBe(`#/i/${shown.inspection}/photo/${shown.id}`);
    await expect(page.getByRole('button', { name: say('photo-closer') })).toBeFocused();
    await page.goBack();
    await expect.poll(() => walk.address()).toBe(address);
  }
});

test('a photo that is looked at survives a reload; a new start shows it by itself', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  await page.reload();
  await expect(shown.sheet).toBeVisible();
  await page.goto('about:blank');
  await page.goto('/');
  await settle(page, traffic);
  await expect(page.getByRole('main').getByRole('img')).toBeVisible();
  await expect(shown.viewer).toHaveCount(0);
});

test('to look about in an enlarged photo changes its viewBox, and to enlarge it no more than its marks beside', async ({
  bridge,
  page,
  traffic,
}) => {
  const shown = await PhotoScreen.open(bridge, page, traffic, [PIN]);
  await shown.look();
  await shown.fingers(parting(0.3));
  const watched = async (what: () => Promise<void>): Promise<string[]> => {
    await page.evaluate(watch);
    await what();
    return page.evaluate(() => (window as unknown as Watched).changed());
  };
  expect(await watched(() => shown.drag([0.2, 0.3], [0.35, 0.4])), 'dragged').toEqual(['svg viewBox']);
  const marks = ['circle r', 'text font-size', 'text y'];
  expect((await watched(() => shown.fingers(parting(0.15)))).filter((one) => !marks.includes(one)), 'pinched').toEqual([
    'svg viewBox',
  ]);
  await shown.button('marks-shown').tap();
  expect(await watched(() => shown.fingers(parting(0.15))), 'without marks').toEqual(['svg viewBox']);
});

test('the picture stays where it is while marks come and go', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  await shown.look();
  const picture = await shown.sheet.locator('image').elementHandle();
  const place = await shown.sheet.boundingBox();
  await shown.turn('mark-pin', true);
  await shown.touch([0.5, 0.5]);
  await expect.poll(async () => (await shown.marks()).length).toBe(1);
  await settle(page, traffic);
  expect(await picture?.evaluate((image) => image.isConnected)).toBe(true);
  expect(await shown.sheet.boundingBox(), 'the next mark is made where it was meant').toEqual(place);
});

test('a screen reader hears what the photo shows, by itself and looked at', async ({ bridge, page, traffic }) => {
  const shown = await PhotoScreen.open(bridge, page, traffic);
  const plug = 'the plug';
  await expect.poll(() => pictureNames(page)).toContain(plug);
  await shown.look();
  await expect.poll(() => pictureNames(page)).toEqual([plug]);
  await bridge.call('caption_photo', { inspection: shown.inspection, photo: shown.id, caption: 'wider blade left' });
  await page.reload();
  await expect.poll(() => pictureNames(page)).toEqual(['wider blade left']);
  await page.goBack();
  await expect.poll(() => pictureNames(page)).toContain('wider blade left');
});

interface Watched {
  changed: () => string[];
}

/** From now on notes what changes in the viewer: elements by what of them, each once. */
function watch(): void {
  const notes: string[] = [];
  const note = (records: MutationRecord[]): void => {
    for (const { attributeName, target, type } of records) notes.push(`${target.nodeName} ${attributeName ?? type}`);
  };
  const observer = new MutationObserver(note);
  const dialog = document.querySelector('dialog');
  if (!dialog) throw new Error('no viewer');
  observer.observe(dialog, { attributes: true, childList: true, characterData: true, subtree: true });
  (window as unknown as Watched).changed = () => {
    note(observer.takeRecords());
    observer.disconnect();
    return [...new Set(notes)].sort();
  };
}
