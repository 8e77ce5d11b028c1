/** Every screen looks as it did when somebody last looked at it: pictures, kept in goldens/. */

import type { Page } from '@playwright/test';

import { expect, test } from './check';
import { settle, show, wear } from './screen';
import type { Screen } from './reached';
import { ALL_SCREENS } from './screens';
import type { Traffic } from './traffic';

/** Bold colours only: the third theme is held to its contrast elsewhere. */
const PICTURED = ['light', 'dark'] as const;

// A picture is taken with a style of its own in the page, which the app's policy bars.
test.use({ bypassCSP: true });

for (const screen of ALL_SCREENS) {
  test(`${screen.name} looks as before`, async ({ bridge, page, traffic }) => {
    await show(page, screen, bridge, traffic);
    for (const theme of PICTURED) {
      await wear(page, theme);
      await settle(page, traffic);
      await compare(page, screen, `${screen.name}-${theme}`);
    }
    if (screen.long) await compareWhole(page, screen, traffic);
  });
}

async function compare(page: Page, screen: Screen, name: string): Promise<void> {
  const mask = screen.varies ? [screen.varies(page)] : [];
  await expect.soft(page).toHaveScreenshot(`${name}.png`, { mask, maskColor: '#888' });
}

/** What lies below the edge of the display, on one that is high enough. The words are the same in every
    theme, so one picture is enough. */
async function compareWhole(page: Page, screen: Screen, traffic: Traffic): Promise<void> {
  await wear(page, 'light');
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: page.viewportSize()?.width ?? 0, height });
  await settle(page, traffic);
  await compare(page, screen, `${screen.name}-whole`);
}
