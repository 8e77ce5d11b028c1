/** Whether a screen has room: for a finger, on narrow and wide displays, and at large text. */

import { expect, type Page } from '@playwright/test';

import { textSize } from './check';
import { smallTargets, sticksOut } from './measure';
import { atRest, settle } from './screen';
import type { Traffic } from './traffic';

const UPRIGHT = { width: 390, height: 844 };
const SMALL = { width: 360, height: 640 };
const NARROW = { width: 320, height: 568 };
const ON_ITS_SIDE = { width: 844, height: 390 };
/** The screen in the shop. */
const WIDE = { width: 1280, height: 800 };

/** What browsers start from, and twice as much. */
const USUAL = 16;
const LARGE = 32;

/** Whether a screen is looked at in every width and every theme: `COLDCHASSIS_LOOK=all`. Else in the narrowest and the
    widest, and in one theme more than its words are judged in: what fits there fits in between, all but always. */
export const LOOKS_AT_ALL = process.env['COLDCHASSIS_LOOK'] === 'all';
const AT_USUAL_TEXT = LOOKS_AT_ALL ? [UPRIGHT, SMALL, NARROW, ON_ITS_SIDE] : [NARROW, ON_ITS_SIDE];
const AT_LARGE_TEXT = LOOKS_AT_ALL ? [UPRIGHT, NARROW, ON_ITS_SIDE] : [NARROW];

async function inspectRoom(page: Page, display: typeof UPRIGHT, text: string): Promise<void> {
  await page.setViewportSize(display);
  await atRest(page);
  const where = `${display.width} × ${display.height}, ${text}`;
  expect.soft(await sticksOut(page), `sideways at ${where}`).toEqual([]);
  expect.soft(await smallTargets(page), `targets at ${where}`).toEqual([]);
}

/** Looks at the screen that is shown in every size; leaves it as it was. */
export async function hasRoom(page: Page, traffic: Traffic): Promise<void> {
  for (const display of AT_USUAL_TEXT) await inspectRoom(page, display, 'usual text');
  await page.setViewportSize(WIDE);
  // A second pane asks for what it shows.
  await settle(page, traffic);
  await inspectRoom(page, WIDE, 'usual text');
  await textSize(page, LARGE);
  await expect.poll(() => page.evaluate(rootSize)).toBeGreaterThanOrEqual(LARGE);
  for (const display of AT_LARGE_TEXT) await inspectRoom(page, display, 'text at 200 %');
  await textSize(page, USUAL);
  await page.setViewportSize(UPRIGHT);
  await settle(page, traffic);
}

function rootSize(): number {
  return parseFloat(getComputedStyle(document.documentElement).fontSize);
}
