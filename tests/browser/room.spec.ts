/** Every screen has room: for a finger, on narrow and wide displays, and at large text. */

import type { Page } from '@playwright/test';

import { expect, test, textSize } from './check';
import { smallTargets, sticksOut } from './measure';
import { addStyle, atRest, settle, show } from './screen';
import { ALL_SCREENS, screenNamed } from './screens';

const UPRIGHT = { width: 390, height: 844 };
const SMALL = { width: 360, height: 640 };
const NARROW = { width: 320, height: 568 };
const ON_ITS_SIDE = { width: 844, height: 390 };
/** The screen in the shop. */
const WIDE = { width: 1280, height: 800 };

/** Twice the text that browsers start from. */
const LARGE = 32;

async function inspectRoom(page: Page, display: typeof UPRIGHT, text: string): Promise<void> {
  await page.setViewportSize(display);
  await atRest(page);
  const where = `${display.width} × ${display.height}, ${text}`;
  expect.soft(await sticksOut(page), `sideways at ${where}`).toEqual([]);
  expect.soft(await smallTargets(page), `targets at ${where}`).toEqual([]);
}

// Each is looked at in every width, so those that are wide by nature are among them already.
for (const screen of ALL_SCREENS.filter(({ width }) => width === undefined)) {
  test(`${screen.name} has room`, async ({ bridge, page, traffic }) => {
    await show(page, screen, bridge, traffic);
    for (const display of [UPRIGHT, SMALL, NARROW, ON_ITS_SIDE]) await inspectRoom(page, display, 'usual text');
    await page.setViewportSize(WIDE);
    // A second pane asks for what it shows.
    await settle(page, traffic);
    await inspectRoom(page, WIDE, 'usual text');
    await textSize(page, LARGE);
    await expect.poll(() => page.evaluate(rootSize)).toBeGreaterThanOrEqual(LARGE);
    for (const display of [UPRIGHT, NARROW, ON_ITS_SIDE]) await inspectRoom(page, display, 'text at 200 %');
  });
}

test('what is too small or too wide is noticed', async ({ bridge, page, traffic }) => {
  await show(page, screenNamed('list-empty'), bridge, traffic);
  expect(await sticksOut(page)).toEqual([]);
  expect(await smallTargets(page)).toEqual([]);
  await page.evaluate(() => {
    const small = document.createElement('button');
    small.textContent = 'small';
    const wide = document.createElement('div');
    wide.className = 'wide';
    document.querySelector('main')?.append(small, wide);
  });
  await addStyle(page, '.wide { width: 120vw; height: 1px }');
  expect((await smallTargets(page)).join()).toContain('small');
  expect((await sticksOut(page)).join()).toContain('wide');
});

function rootSize(): number {
  return parseFloat(getComputedStyle(document.documentElement).fontSize);
}
