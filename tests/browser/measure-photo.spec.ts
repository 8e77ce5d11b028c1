/** Measuring on a photo with the real core: the card's corners, the points, what comes of them, and an answer that only
    the person gives. The photos are drawn with known geometry. */

import type { Page } from '@playwright/test';

import type { MeasureView } from '../../ui/src/lib/types/MeasureView';
import { expect, test } from './check';
import { Table, UNIT } from './measure-table';
import {
  board,
  drag,
  grip,
  middleOf,
  onDisplay,
  photoOn,
  place,
  placeAll,
  pointOnDisplay,
  pointOnPhoto,
  send,
} from './placing';
import { corners, edges, EQUAL, NEITHER, type Pixel, POLARISED, SIZE } from './scene';
import { settle } from './screen';
import type { Unit } from './units';
import { READING_MS } from './walk';
import { say, sayAnswer } from './words';

const UPRIGHT = { width: 390, height: 844 };
const LYING = { width: 844, height: 390 };

/** How far places are from where they should be, at most, px. */
const off = (places: readonly Pixel[], wanted: readonly Pixel[]): number =>
  Math.max(...wanted.map(([x, y], at) => Math.hypot(x - (places[at]?.[0] ?? NaN), y - (places[at]?.[1] ?? NaN))));

for (const { scene, answer, sentence } of [
  { scene: POLARISED, answer: 'two_polarised_blades', sentence: 'blades-second-wider' },
  { scene: EQUAL, answer: 'two_equal_blades', sentence: 'blades-equal' },
]) {
  test(`${answer}: offered, shown at the question, and given only by a tap there`, async ({ bridge, page, traffic }) => {
    const table = await Table.at(page, bridge, traffic, scene);
    await table.measure(scene);
    await expect(table.walk.heading).toHaveText(say(sentence));
    for (const figure of [/^\d\.\d\d\s±\s0\.\d+$/, /^\d\.\d\s±\s\d\.\d+\smm$/]) {
      await expect(page.locator('dl b').filter({ hasText: figure }).first()).toBeVisible();
    }
    for (const note of ['measure-unplugged', 'measure-hint']) await expect(page.getByText(say(note))).toBeVisible();
    await expect(table.offer).toHaveText(say('measuring-answer', { answer: sayAnswer('plug', answer) }));
    expect(await table.answered(), 'measuring answers nothing').toEqual([]);

    await page.waitForTimeout(READING_MS);
    await table.offer.tap();
    await settle(page, traffic);
    expect(await table.walk.question()).toBe('plug');
    const offered = page.getByRole('button').filter({ hasText: say('measuring-offered') });
    await expect(offered).toHaveCount(1);
    await expect(offered).toContainText(sayAnswer('plug', answer));
    await expect(offered).toHaveAttribute('aria-pressed', 'false');
    expect(await table.answered(), 'nor does looking at the question').toEqual([]);

    await page.waitForTimeout(READING_MS);
    await offered.tap();
    await expect.poll(() => table.answered()).toEqual([answer]);
  });
}

test('another answer than the offered one can be given, and the result then offers to change it', async ({ bridge, page, traffic }) => {
  const unit: Unit = { ...UNIT, answers: { plug: 'two_equal_blades' } };
  const table = await Table.at(page, bridge, traffic, POLARISED, unit);
  await table.measure(POLARISED);
  await page.waitForTimeout(READING_MS);
  await table.offer.tap();
  await settle(page, traffic);
  expect(await table.walk.address()).toContain('/change/plug');
  expect(await table.answered(), 'what was answered stands').toEqual(['two_equal_blades']);
  await page.waitForTimeout(READING_MS);
  await page.getByRole('button').filter({ hasText: say('measuring-offered') }).tap();
  await settle(page, traffic);
  // Back where the answer was offered: it is given now.
  await expect(page.getByText(say('measuring-answered'))).toBeVisible();
  expect(await table.answered()).toEqual(['two_polarised_blades']);
  await table.tap('measuring-done');
  await expect(table.walk.named(say('measuring-open'))).toBeVisible();
});

test('blades of neither kind offer nothing: the reason is said, and the points can be moved', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, NEITHER);
  await table.measure(NEITHER);
  const share = ([x, y]: Pixel): Pixel => [x / SIZE[0], y / SIZE[1]];
  const [a, b, c, d] = edges(NEITHER).map(share);
  const ask = { card: corners(NEITHER).map(share), blades: [[a, b], [c, d]] };
  const args = { inspection: table.inspection, photo: table.photo, ask };
  const told = await bridge.call<MeasureView>('measure_photo', args);
  expect(told.blades?.says).toBe('cannot_tell');
  await expect(table.walk.heading).toHaveText(told.blades?.sentence ?? '');
  await expect(table.offer).toHaveCount(0);
  await table.tap('measuring-move-points');
  expect(await table.walk.address()).toMatch(/measure\/blades$/);
  expect(off(await table.points(), edges(NEITHER))).toBeLessThan(2);
});

test('a length is told with a bound that holds it', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, EQUAL);
  await table.corners(EQUAL);
  await table.tap('measuring-corners-next');
  await table.choose('length');
  const [left, right] = corners(EQUAL).slice(2).reverse();
  if (!left || !right) throw new Error('no card');
  await placeAll(page, [left, right]);
  await table.tap('measuring-measure');
  const [length = NaN, bound = NaN] = ((await table.walk.heading.textContent()) ?? '').match(/[\d.]+/g)?.map(Number) ?? [];
  expect(Math.abs(length - 85.6), 'the long side of the card').toBeLessThanOrEqual(bound);
  expect(bound).toBeLessThan(10);
  await expect(page.getByText(say('measure-counts'))).toBeVisible();
  await expect(table.offer).toHaveCount(0);
});

test('points that nobody placed are asked for by name; a card that is none is told in words, and stays', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, POLARISED);
  await table.tap('measuring-open');
  const [first, second, third, fourth] = corners(POLARISED);
  if (!first || !second || !third || !fourth) throw new Error('no card');
  await place(page, 0, first);
  await table.tap('measuring-corners-next');
  await expect(table.alert).toHaveText(say('measuring-corner-open', { sign: '2' }));
  await expect(grip(page, 1)).toHaveAttribute('aria-pressed', 'true');

  // Two of them crossed.
  const crossed = [first, third, second, fourth];
  await placeAll(page, crossed);
  await table.tap('measuring-corners-next');
  await expect(table.alert).toHaveText(say('measure-trouble-crossed'));
  expect(await table.walk.address()).toMatch(/measure$/);
  expect(off(await table.points(), crossed)).toBeLessThan(2);
  await placeAll(page, [first, second, third, fourth]);
  await expect(table.alert, 'it says nothing of other points').toHaveCount(0);
  await table.tap('measuring-corners-next');
  await table.choose('blades');
  await table.tap('measuring-measure');
  const point = say('measuring-blades-point', { sign: '1', edge: 'first' });
  await expect(table.alert).toHaveText(say('measuring-blades-open', { point }));
  expect(await table.walk.address()).toMatch(/blades$/);
});

test('back goes one step back, and points outlive steps, a turned phone and a look elsewhere', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, POLARISED);
  await table.measure(POLARISED);
  const steps: string[] = [];
  const at = async (): Promise<string> => (await table.walk.address()).split('/photo/')[1]?.split('/').slice(1).join('/') ?? '';
  for (let step = 0; step < 5; step += 1) {
    steps.push(await at());
    if (steps.at(-1) === 'measure/blades') expect(off(await table.points(), edges(POLARISED))).toBeLessThan(2);
    if (steps.at(-1) === 'measure') expect(off(await table.points(), corners(POLARISED))).toBeLessThan(2);
    await page.goBack();
    await settle(page, traffic);
  }
  expect(steps).toEqual(['measure/result', 'measure/blades', 'measure/what', 'measure', '']);

  await table.open('/measure');
  await page.setViewportSize(LYING);
  await settle(page, traffic);
  expect(off(await table.points(), corners(POLARISED)), 'turned').toBeLessThan(2);
  const sheet = await board(page).boundingBox();
  const next = await table.walk.named(say('measuring-corners-next')).boundingBox();
  expect((sheet?.x ?? 0) + (sheet?.width ?? 0), 'the photo is beside what goes with it').toBeLessThan(next?.x ?? 0);
  await page.setViewportSize(UPRIGHT);
  await page.getByRole('button', { name: say('units'), exact: true }).tap();
  await settle(page, traffic);
  await table.open('/measure/blades');
  expect(off(await table.points(), edges(POLARISED)), 'after a look elsewhere').toBeLessThan(2);

  // Another start of the app has nothing of it: it begins with the first step.
  await page.reload();
  await settle(page, traffic);
  expect(await at()).toBe('measure');
  expect(off(await table.points(), corners(POLARISED))).toBeGreaterThan(50);
});

test('what the core cannot read is told in words, and the points stay', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, POLARISED);
  await table.corners(POLARISED);
  const sentence = 'The photo cannot be read.';
  const problem = { code: 'not_found', field: null, sentence };
  await page.route('**/api/measure_photo', (route) => route.fulfill({ json: { problem } }));
  await table.tap('measuring-corners-next');
  await expect(table.alert).toHaveText(sentence);
  expect(off(await table.points(), corners(POLARISED))).toBeLessThan(2);
  await page.unroute('**/api/measure_photo');
  await table.tap('measuring-corners-next');
  expect(await table.walk.address()).toMatch(/what$/);
});

/** The colour in the middle of the loupe. */
const underLoupe = (page: Page): Promise<number[]> =>
  page.locator('.loupe canvas').evaluate((canvas) => {
    const { width, height } = canvas as HTMLCanvasElement;
    const pixels = (canvas as HTMLCanvasElement).getContext('2d')?.getImageData(width / 2, height / 2, 1, 1).data;
    return [...(pixels ?? [])].slice(0, 3);
  });

test('the loupe shows what the finger would hide, away from it, for as long as it drags', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, POLARISED);
  await table.tap('measuring-open');
  const loupe = page.locator('.loupe');
  await expect(loupe).toHaveCount(0);
  const [, , , corner = [0, 0]] = corners(POLARISED);
  // On the card, and on the tip of a blade, which is some 15 px wide.
  const [from = [0, 0], to = [0, 0]] = edges(POLARISED);
  const tip = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
  const card = [corner[0] + 60, corner[1] - 60] as const;
  for (const [to, colour] of [[card, [0xe9, 0xe4, 0xd6]], [tip, [0xf0, 0xdc, 0xa0]]] as const) {
    await place(page, 0, to);
    await send(grip(page, 0), 'pointerdown', await middleOf(grip(page, 0)));
    await expect(loupe).toHaveCount(1);
    const seen = await underLoupe(page);
    colour.forEach((part, at) => expect(Math.abs((seen[at] ?? NaN) - part), `${seen} for ${colour}`).toBeLessThan(12));
    await send(grip(page, 0), 'pointerup', await middleOf(grip(page, 0)));
    await expect(loupe).toHaveCount(0);
  }
  for (const [which, x] of [[0, 0.05], [1, 0.95]] as const) {
    const from = await middleOf(grip(page, which));
    const point = await pointOnDisplay(page, which);
    expect(Math.hypot(from.x - point.x, from.y - point.y), 'the grip is off the point').toBeGreaterThan(44);
    await send(grip(page, which), 'pointerdown', from);
    const sheet = await board(page).boundingBox();
    if (!sheet) throw new Error('no photo');
    // Up to a corner of the photo, where a loupe may be.
    const to = { x: sheet.x + sheet.width * x, y: sheet.y + 60 };
    await send(grip(page, which), 'pointermove', to);
    const shown = await middleOf(loupe);
    expect(Math.hypot(shown.x - to.x, shown.y - to.y)).toBeGreaterThan(58 + 20);
    await send(grip(page, which), 'pointerup', to);
  }
});

test('a point is nudged by one px, by button and by key; a slow finger goes less far than a quick one', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, POLARISED);
  await table.tap('measuring-open');
  const moved = async (act: () => Promise<unknown>): Promise<Pixel> => {
    const before = await pointOnPhoto(page, 2);
    await act();
    const after = await pointOnPhoto(page, 2);
    return [after[0] - before[0], after[1] - before[1]];
  };
  const from = await middleOf(grip(page, 2));
  const quick = await moved(() => drag(grip(page, 2), from, { x: 30, y: 0 }, 2));
  for (const [name, key, x, y] of [
    ['left', 'ArrowLeft', -1, 0],
    ['right', 'ArrowRight', 1, 0],
    ['up', 'ArrowUp', 0, -1],
    ['down', 'ArrowDown', 0, 1],
  ] as const) {
    for (const act of [
      () => table.tap(`measuring-nudge-${name}`),
      () => grip(page, 2).dispatchEvent('keydown', { key, bubbles: true }),
    ]) {
      const by = await moved(act);
      expect(by[0], name).toBeCloseTo(x, 2);
      expect(by[1], name).toBeCloseTo(y, 2);
    }
  }
  await expect(page.locator('.loupe'), 'it is shown close').toHaveCount(1);
  const slow = await moved(async () => {
    const start = await middleOf(grip(page, 2));
    await send(grip(page, 2), 'pointerdown', start);
    for (let step = 1; step <= 30; step += 1) {
      await page.waitForTimeout(60);
      await send(grip(page, 2), 'pointermove', { x: start.x + step, y: start.y });
    }
    await send(grip(page, 2), 'pointerup', { x: start.x + 30, y: start.y });
  });
  expect(quick[0], 'a quick finger takes it along').toBeGreaterThan(100);
  expect(slow[0]).toBeGreaterThan(10);
  expect(slow[0]).toBeLessThan(0.6 * quick[0]);
});

test('two fingers and the buttons enlarge the photo, one moves it, and the points stay on it', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, POLARISED);
  await table.tap('measuring-open');
  const wide = async (): Promise<number> => SIZE[0] * (await photoOn(page)).scale;
  const [whole, points] = [await wide(), await table.points()];
  await table.tap('measuring-larger');
  expect(await wide()).toBeCloseTo(1.6 * whole, 3);
  await table.tap('measuring-smaller');
  expect(await wide()).toBeCloseTo(whole, 3);
  const sheet = board(page);
  const at = await onDisplay(page, [200, 1800]);
  await send(sheet, 'pointerdown', at, 2);
  await send(sheet, 'pointerdown', { x: at.x + 40, y: at.y }, 3);
  await send(sheet, 'pointermove', { x: at.x + 120, y: at.y }, 3);
  await send(sheet, 'pointerup', { x: at.x + 120, y: at.y }, 3);
  await send(sheet, 'pointerup', at, 2);
  expect(await wide()).toBeCloseTo(3 * whole, 3);
  const before = await onDisplay(page, [200, 1800]);
  await drag(sheet, at, { x: 40, y: -30 });
  const after = await onDisplay(page, [200, 1800]);
  expect(after.y - before.y, 'the photo goes with the finger').toBeCloseTo(-30, 1);
  expect(off(await table.points(), points)).toBeLessThan(0.01);
});

test('how to take the photo is told at the question about the plug, unplugging first, and leads on', async ({ bridge, page, traffic }) => {
  const table = await Table.at(page, bridge, traffic, POLARISED);
  await page.goto(`/#/i/${table.inspection}/q/plug`);
  await settle(page, traffic);
  const told = page.locator('details').filter({ hasText: say('measuring-how') });
  await expect(told.getByText(say('measuring-how-unplug'))).toBeHidden();
  await told.locator('summary').tap();
  await expect(told.getByText(say('measuring-how-unplug'))).toBeVisible();
  for (const step of ['stand', 'card', 'number', 'above', 'light']) {
    await expect(told.getByText(say(`measuring-how-${step}`))).toBeVisible();
  }
  await told.getByRole('button', { name: say('measuring-how-last') }).tap();
  await settle(page, traffic);
  expect(await table.walk.address()).toMatch(/measure$/);
  await table.tap('measuring-help');
  await expect(page.getByText(say('measuring-how-unplug'))).toBeVisible();
  await table.tap('measuring-to-photo');
  await expect(board(page)).toBeVisible();
});
