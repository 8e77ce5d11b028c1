/** What the inspector sets is done at once and kept. */

import { expect, test } from './check';
import { settle, THEMES } from './screen';
import { Walk } from './walk';
import { say } from './words';

test('each theme is shown when it is chosen, and is there after a new start', async ({ page, traffic }) => {
  const walk = new Walk(page);
  await page.goto('/#/settings');
  const papers = new Set<string>();
  for (const theme of THEMES) {
    await settle(page, traffic);
    await walk.tap(say(`theme-${theme}`));
    await expect(page.locator(`html[data-theme=${theme}]`)).toBeAttached();
    papers.add(await page.locator('body').evaluate((body) => getComputedStyle(body).backgroundColor));
    await page.reload();
    await expect(page.locator(`html[data-theme=${theme}]`)).toBeAttached();
    await expect(walk.named(say(`theme-${theme}`))).toBeChecked();
  }
  expect(papers.size, 'each on a paper of its own').toBe(THEMES.length);
});
