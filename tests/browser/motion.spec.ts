/** Who asks the system for less motion sees none: whatever would move is where it belongs at once. */

import type { Page } from '@playwright/test';

import { expect, test } from './check';
import { settle, show } from './screen';
import { screenNamed } from './screens';
import { READING_MS } from './walk';

/** Longer than this it could be seen, ms. */
const SEEN_MS = 1;

/** Notes everything that starts to move for long enough to be seen. */
async function watch(page: Page): Promise<void> {
  await page.evaluate((longest) => {
    const moved: string[] = [];
    Object.assign(window, { moved });
    const look = ({ target }: Event): void => {
      for (const animation of document.getAnimations()) {
        const { duration, iterations } = animation.effect?.getComputedTiming() ?? {};
        if (Number(duration) > longest || iterations === Infinity) {
          moved.push(`${(target as Element).localName} ${(target as Element).className}`);
        }
      }
    };
    for (const start of ['animationstart', 'transitionrun']) addEventListener(start, look, { capture: true });
  }, SEEN_MS);
}

const moved = (page: Page) => page.evaluate(() => (window as unknown as { moved: string[] }).moved);

/** Taps whatever can be tapped on the screen without leaving it, one after the other. */
async function tapAll(page: Page): Promise<void> {
  await page.waitForTimeout(READING_MS);
  const here = page.url();
  for (const button of await page.locator('main button:visible, main summary:visible').all()) {
    if (page.url() !== here) break;
    // What another tap has taken away is passed over.
    await button.tap({ timeout: 500 }).catch(() => undefined);
  }
  await page.waitForTimeout(READING_MS);
}

const MOVING = ['question-drawings', 'circuit-live', 'chart-leaky-gfci', 'grid-live', 'heaters-string'] as const;

for (const motion of ['reduce', 'no-preference'] as const) {
  test(`with ${motion} of motion asked for, screens ${motion === 'reduce' ? 'stand still' : 'move'}`, async ({
    bridge,
    page,
    traffic,
  }) => {
    test.slow();
    await page.emulateMedia({ reducedMotion: motion });
    const all: string[] = [];
    for (const name of MOVING) {
      await show(page, screenNamed(name), bridge, traffic);
      await watch(page);
      await tapAll(page);
      await settle(page, traffic);
      all.push(...(await moved(page)).map((what) => `${name}: ${what}`));
    }
    // The second run shows that what the first looks for is there to be found.
    if (motion === 'reduce') expect(all).toEqual([]);
    else expect(all.length).toBeGreaterThan(0);
  });
}
