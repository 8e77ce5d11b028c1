/** A finger that places points on a photo: it drags grips, taps and pinches. */

import type { Locator, Page } from '@playwright/test';

import type { Pixel } from './scene';
import { say } from './words';

interface Spot {
  x: number;
  y: number;
}

/** How near a finger that takes its time brings a point, px of the photo. */
const NEAR = 1.2;
/** More drags than it takes. */
const MOST = 12;

export const board = (page: Page): Locator => page.getByRole('group', { name: say('measuring-board') });
export const grip = (page: Page, which: number): Locator => board(page).locator(`[data-point="${which}"]`);

/** The middle of what a locator finds, on the display. */
export async function middleOf(found: Locator): Promise<Spot> {
  const box = await found.boundingBox();
  if (!box) throw new Error('it is not there');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Where the photo lies on the display, and how many px of the display one of its px takes. */
export async function photoOn(page: Page): Promise<Spot & { scale: number }> {
  return board(page).evaluate((sheet) => {
    const { left, top } = sheet.getBoundingClientRect();
    const [scale = NaN, x = NaN, y = NaN] = sheet.dataset['frame']?.split(' ').map(Number) ?? [];
    return { x: left + x, y: top + y, scale };
  });
}

/** A px of the photo as a place on the display. */
export async function onDisplay(page: Page, [x, y]: Pixel): Promise<Spot> {
  const photo = await photoOn(page);
  return { x: photo.x + x * photo.scale, y: photo.y + y * photo.scale };
}

/** Where a point is, on the display. */
export async function pointOnDisplay(page: Page, which: number): Promise<Spot> {
  return grip(page, which).evaluate((found) => {
    const { left, top } = found.closest('svg')?.getBoundingClientRect() ?? { left: 0, top: 0 };
    const moved = found.parentElement?.getAttribute('transform')?.match(/-?[\d.]+(e-?\d+)?/g) ?? [];
    return { x: left + Number(moved[0]), y: top + Number(moved[1]) };
  });
}

/** Where a point is, px of the photo. */
export async function pointOnPhoto(page: Page, which: number): Promise<Pixel> {
  const [{ x, y, scale }, at] = [await photoOn(page), await pointOnDisplay(page, which)];
  return [(at.x - x) / scale, (at.y - y) / scale];
}

/** Sends what a finger does to an element. */
export async function send(found: Locator, type: string, { x, y }: Spot, finger = 2): Promise<void> {
  await found.dispatchEvent(type, {
    pointerId: finger,
    pointerType: 'touch',
    isPrimary: finger === 2,
    bubbles: true,
    clientX: x,
    clientY: y,
  });
}

/** One drag from a place by a way, in steps. */
export async function drag(found: Locator, from: Spot, by: Spot, steps = 3): Promise<void> {
  await send(found, 'pointerdown', from);
  for (let step = 1; step <= steps; step += 1) {
    await send(found, 'pointermove', { x: from.x + (by.x * step) / steps, y: from.y + (by.y * step) / steps });
  }
  await send(found, 'pointerup', { x: from.x + by.x, y: from.y + by.y });
}

/** Drags a point by its grip until it is on a px of the photo. */
export async function place(page: Page, which: number, to: Pixel): Promise<void> {
  for (let tries = 0; tries < MOST; tries += 1) {
    const [x, y] = await pointOnPhoto(page, which);
    if (tries > 0 && Math.hypot(to[0] - x, to[1] - y) < NEAR) return;
    const [now, wanted] = [await pointOnDisplay(page, which), await onDisplay(page, to)];
    await drag(grip(page, which), await middleOf(grip(page, which)), { x: wanted.x - now.x, y: wanted.y - now.y });
  }
  throw new Error(`point ${which} does not come to ${to.join()}`);
}

/** Places all points, in order. */
export async function placeAll(page: Page, places: readonly Pixel[]): Promise<void> {
  for (const [which, to] of places.entries()) await place(page, which, to);
}

/** Taps the photo itself. */
export async function tapPhoto(page: Page, at: Pixel): Promise<void> {
  const spot = await onDisplay(page, at);
  await send(board(page), 'pointerdown', spot);
  await send(board(page), 'pointerup', spot);
}
