/** A photo by itself: marked, enlarged, put in order, paired with one of before. */

import type { Page } from '@playwright/test';

import type { PhotoView } from '../../ui/src/lib/types/PhotoView';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { settle } from './screen';
import type { Traffic } from './traffic';
import { BACK, inspect, PLUG, SHELF_RADIO } from './units';
import { say } from './words';

interface Kept {
  inspection: string;
  photos: () => Promise<PhotoView[]>;
}

async function open(bridge: Bridge, page: Page, traffic: Traffic): Promise<Kept> {
  const unit = { ...SHELF_RADIO, photos: [{ of: 'answers.plug', file: PLUG }, { of: null, file: BACK }] };
  const inspection = await inspect(bridge, unit);
  const photos = async (): Promise<PhotoView[]> =>
    (await bridge.call<{ photos: PhotoView[] }>('show_inspection', { inspection })).photos;
  const [first] = await photos();
  await page.goto(`/#/i/${inspection}/photo/${first?.id}`);
  await settle(page, traffic);
  return { inspection, photos };
}

const viewer = (page: Page) => page.getByRole('dialog');
const sheet = (page: Page) => viewer(page).getByRole('img');

type Place = [x: number, y: number];

/** Fingers that go from their first places to their last, in shares of the photo's screen. */
async function fingers(page: Page, ways: readonly [from: Place, to: Place][]): Promise<void> {
  const box = await sheet(page).boundingBox();
  if (!box) throw new Error('no photo');
  const send = async (type: string, share: number): Promise<void> => {
    for (const [id, [from, to]] of ways.entries()) {
      await sheet(page).dispatchEvent(type, {
        pointerId: id + 2,
        pointerType: 'touch',
        isPrimary: id === 0,
        bubbles: true,
        clientX: box.x + box.width * (from[0] + (to[0] - from[0]) * share),
        clientY: box.y + box.height * (from[1] + (to[1] - from[1]) * share),
      });
    }
  };
  await send('pointerdown', 0);
  for (const share of [0.25, 0.5, 0.75, 1]) await send('pointermove', share);
  await send('pointerup', 1);
}

/** Takes up a tool, or lays it down. */
async function turn(page: Page, tool: string, taken: boolean): Promise<void> {
  const button = viewer(page).getByRole('button', { name: say(tool), exact: true });
  await button.tap();
  await expect(button).toHaveAttribute('aria-pressed', String(taken));
}

const drag = (page: Page, from: Place, to: Place): Promise<void> => fingers(page, [[from, to]]);

test('pins, arrows and boxes are stored as they are made, moved, worded and removed', async ({ bridge, page, traffic }) => {
  const { photos } = await open(bridge, page, traffic);
  const marks = async () => (await photos())[0]?.marks ?? [];
  await page.getByRole('button', { name: say('photo-closer') }).last().tap();
  await turn(page, 'mark-pin', true);
  await drag(page, [0.5, 0.5], [0.5, 0.5]);
  await expect.poll(async () => (await marks()).map(({ shape }) => shape)).toEqual(['pin']);
  await viewer(page).getByLabel(say('mark-caption')).fill('bare screw');
  await viewer(page).getByLabel(say('mark-caption')).blur();
  await expect.poll(async () => (await marks())[0]?.caption).toBe('bare screw');

  await turn(page, 'mark-arrow', true);
  await drag(page, [0.3, 0.45], [0.6, 0.55]);
  await expect.poll(async () => (await marks()).length).toBe(2);
  await turn(page, 'mark-box', true);
  await drag(page, [0.6, 0.4], [0.8, 0.6]);
  await expect.poll(async () => (await marks()).map(({ shape }) => shape)).toEqual(['pin', 'arrow', 'box']);

  // With no tool a mark is taken by its place: dragged, then removed.
  await turn(page, 'mark-box', false);
  const [before] = await marks();
  await drag(page, [0.5, 0.5], [0.4, 0.52]);
  await expect.poll(async () => (await marks())[0]).not.toEqual(before);
  await viewer(page).getByRole('button', { name: say('mark-remove') }).tap();
  await expect.poll(async () => (await marks()).map(({ shape }) => shape)).toEqual(['arrow', 'box']);
  await viewer(page).getByRole('button', { name: say('photo-close') }).tap();
  await expect(viewer(page)).toHaveCount(0);
  await expect(page.getByRole('list', { name: say('photo-marks') }).getByRole('listitem')).toHaveCount(2);
});

test('a photo is enlarged by its buttons and a double tap, and never leaves the screen', async ({ bridge, page, traffic }) => {
  await open(bridge, page, traffic);
  await page.getByRole('button', { name: say('photo-closer') }).last().tap();
  const wide = async (): Promise<number> => Number((await sheet(page).getAttribute('viewBox'))?.split(' ')[2]);
  const whole = await wide();
  await viewer(page).getByRole('button', { name: say('photo-larger') }).tap();
  expect(await wide()).toBeLessThan(whole);
  await viewer(page).getByRole('button', { name: say('photo-smaller') }).tap();
  expect(await wide()).toBeCloseTo(whole);
  await fingers(page, [
    [[0.45, 0.5], [0.2, 0.5]],
    [[0.55, 0.5], [0.8, 0.5]],
  ]);
  expect(await wide(), 'two fingers that part').toBeLessThan(whole / 2);
  await sheet(page).tap();
  await sheet(page).tap();
  await expect.poll(wide, 'a double tap shows the whole').toBeCloseTo(whole);
  await sheet(page).tap();
  await sheet(page).tap();
  await expect.poll(wide).toBeCloseTo(whole / 2.5);
  await drag(page, [0.1, 0.5], [0.9, 0.5]);
  const [left] = ((await sheet(page).getAttribute('viewBox')) ?? '').split(' ').map(Number);
  expect(left).toBeGreaterThanOrEqual(0);
});

test('photos change places, and one of after is compared with one of before', async ({ bridge, page, traffic }) => {
  const { photos } = await open(bridge, page, traffic);
  const ids = async () => (await photos()).map(({ id }) => id);
  const [first = '', second = ''] = await ids();
  await expect(page.getByRole('button', { name: say('photo-earlier') })).toBeDisabled();
  await page.getByRole('button', { name: say('photo-later') }).tap();
  await expect.poll(ids).toEqual([second, first]);
  await page.getByLabel(say('photo-pair')).selectOption(second);
  await expect.poll(async () => (await photos())[1]?.before).toBe(second);
  await expect(page.getByRole('slider', { name: say('photo-compare') })).toBeVisible();
  await page.getByLabel(say('photo-pair')).selectOption('');
  await expect.poll(async () => (await photos())[1]?.before).toBe(null);
});
