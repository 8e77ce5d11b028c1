/** A shop's whole shelf: two thousand units in the list. */

import type { Page } from '@playwright/test';

import { expect, slow, test } from './check';
import { within } from './pace';
import { settle } from './screen';
import { inspect } from './units';
import { say } from './words';

const UNITS = 2_000;
/** Rows that a screen holds, with those just outside. */
const FEW = 40;

/** How far a thumb flings the list, CSS px, and how fast, px/s. */
const FLING = { far: 12_000, fast: 6_000 };

/** Scrolls down by touch, and gives the time between frames, ms. */
async function fling(page: Page): Promise<number[]> {
  await page.evaluate(() => {
    const frames: number[] = [];
    Object.assign(window, { frames });
    const look = (now: number): void => {
      frames.push(now);
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  const session = await page.context().newCDPSession(page);
  const { far, fast } = FLING;
  await session.send('Input.synthesizeScrollGesture', { x: 190, y: 600, yDistance: -far, speed: fast, gestureSourceType: 'touch' });
  const frames = await page.evaluate(() => (window as unknown as { frames: number[] }).frames.slice());
  return frames.slice(1).map((now, place) => now - (frames[place] ?? now));
}

/** It reports and never fails by the clock: how busy this machine is says nothing of the screens. */
function inWords(gaps: readonly number[]): string {
  const at = within(gaps);
  const late = gaps.filter((gap) => gap > 50).length;
  return `${gaps.length} frames, median ${at(0.5)} ms, 95 of 100 within ${at(0.95)} ms, longest ${at(1)} ms, ${late} over 50 ms`;
}

function rowsInView(page: Page): Promise<number> {
  return page.getByRole('listitem').evaluateAll(
    (rows) => rows.filter((row) => row.getBoundingClientRect().bottom > 0 && row.getBoundingClientRect().top < innerHeight).length,
  );
}

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

  await page.evaluate(() => window.scrollTo(0, 0));
  for (const times of [1, 6]) {
    await slow(page, times);
    const told = `processor slowed ${times}×: ${inWords(await fling(page))}`;
    test.info().annotations.push({ type: 'frames while scrolling', description: told });
    console.log(told);
    // What comes into view is there: no hole where the rows should be.
    expect(await rowsInView(page)).toBeGreaterThan(5);
  }
  await slow(page, 1);

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
