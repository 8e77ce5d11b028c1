/** Every screen looks as it did when somebody last looked at it (pictures, kept in goldens/), has room at any size,
    and shuts nobody out. It is opened once for all three. */

import type { Page } from '@playwright/test';

import { plain, violations } from './access';
import { expect, test } from './check';
import { smallTargets, sticksOut } from './measure';
import type { Screen } from './reached';
import { hasRoom, LOOKS_AT_ALL } from './room';
import { addStyle, settle, show, type Theme, THEMES, wear } from './screen';
import { ALL_SCREENS, screenNamed } from './screens';
import type { Traffic } from './traffic';

/** Bold colours only: the third theme is held to its contrast by axe. */
const PICTURED = ['light', 'dark'] as const;

// A picture is taken with a style of its own in the page, which the app's policy bars.
test.use({ bypassCSP: true });

/** The themes whose contrast is judged: light, and one of the others by turns, or every one. */
function judged(turn: number): readonly Theme[] {
  return LOOKS_AT_ALL ? THEMES : ['light', turn % 2 === 0 ? 'dark' : 'contrast'];
}

for (const [turn, screen] of ALL_SCREENS.entries()) {
  test.describe(() => {
    test.use({ inFile: screen.inFile ?? false });
    test(`${screen.name} looks as before, has room and shuts nobody out`, async ({ bridge, page, traffic }) => {
      await show(page, screen, bridge, traffic);
      const display = page.viewportSize();
      for (const theme of PICTURED) {
        await wear(page, theme);
        await settle(page, traffic);
        await compare(page, screen, `${screen.name}-${theme}`);
      }
      if (screen.long) await compareWhole(page, screen, traffic);
      if (display) await page.setViewportSize(display);
      // Those that are wide by nature are among the others, each of which is looked at in every width.
      if (screen.width === undefined) await hasRoom(page, traffic);
      await plain(page);
      for (const theme of judged(turn)) {
        await wear(page, theme);
        const found = await violations(page, theme === 'light' ? 'all' : 'colours');
        expect.soft(found, `${screen.name}, ${theme}`).toEqual([]);
      }
    });
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

test('axe is listened to', async ({ bridge, page, traffic }) => {
  await show(page, screenNamed('shocked'), bridge, traffic);
  await plain(page);
  await page.evaluate(() => {
    const nameless = document.createElement('button');
    const faint = document.createElement('p');
    faint.textContent = 'faint';
    faint.setAttribute('class', 'faint');
    document.querySelector('main')?.append(nameless, faint);
  });
  await addStyle(page, '.faint { color: #c8bda9 }');
  const found = (await violations(page)).map((line) => line.split(':')[0]);
  expect(found).toContain('button-name');
  expect(found).toContain('color-contrast');
  const colours = (await violations(page, 'colours')).map((line) => line.split(':')[0]);
  expect(colours).toContain('color-contrast');
  expect(colours).not.toContain('button-name');
});

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
