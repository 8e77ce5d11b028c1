/** No screen shuts anybody out: axe finds nothing, in any theme. */

import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

import { expect, test } from './check';
import { addStyle, show, THEMES, wear } from './screen';
import { ALL_SCREENS, screenNamed } from './screens';

/** Takes away what axe cannot judge contrast on, so that it judges every word: the grain of the paper is a
    gradient, and the bar at the bottom lies over what is scrolled under it. */
async function plain(page: Page): Promise<void> {
  await addStyle(
    page,
    `*, *::before, *::after { background-image: none !important; transition: none !important }
    .unstuck { position: static !important }`,
  );
  await page.evaluate(() => {
    for (const element of document.querySelectorAll('body *')) {
      if (getComputedStyle(element).position === 'sticky') element.classList.add('unstuck');
    }
  });
}

/** What axe finds wrong, and what it cannot judge about contrast: that has not been shown to be readable. */
async function violations(page: Page): Promise<string[]> {
  const axe = new AxeBuilder({ page })
    // There is no frame to gather from, and gathering would open a page of its own.
    .setLegacyMode(true)
    .options({ rules: { 'target-size': { enabled: true } }, resultTypes: ['violations', 'incomplete'] });
  const found = await axe.analyze();
  const unjudged = found.incomplete.filter(({ id }) => id === 'color-contrast');
  return [...found.violations, ...unjudged].flatMap(({ id, nodes }) =>
    nodes.filter(({ html }) => !isInDrawing(html)).map((node) => `${id}: ${node.html.slice(0, 160)}\n${node.failureSummary}`),
  );
}

/** Axe does not see what the letters of a drawing stand on. They are ink or pencil on card or paper, as other
    letters that it does judge. */
function isInDrawing(html: string): boolean {
  return /^<(text|tspan)\b/.test(html);
}

for (const screen of ALL_SCREENS) {
  test(`${screen.name} shuts nobody out`, async ({ bridge, page, traffic }) => {
    await show(page, screen, bridge, traffic);
    await plain(page);
    for (const theme of THEMES) {
      await wear(page, theme);
      expect.soft(await violations(page), `${screen.name}, ${theme}`).toEqual([]);
    }
  });
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
});
