/** Whether a screen shuts anybody out, by axe. */

import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

import { addStyle } from './screen';

/** Takes away what axe cannot judge contrast on, so that it judges every word: the grain of the paper is a
    gradient, and the bar at the bottom lies over what is scrolled under it. */
export async function plain(page: Page): Promise<void> {
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

/** The rules of axe that look at colours: all that another theme can change. */
const COLOURS = ['color-contrast', 'link-in-text-block'];

/** What axe finds wrong, and what it cannot judge about contrast: that has not been shown to be readable. Of a
    screen that was judged in one theme, only the colours of the next. */
export async function violations(page: Page, of: 'all' | 'colours' = 'all'): Promise<string[]> {
  const rules = of === 'all' ? { rules: { 'target-size': { enabled: true } } } : { runOnly: COLOURS };
  const axe = new AxeBuilder({ page })
    // There is no frame to gather from, and gathering would open a page of its own.
    .setLegacyMode(true)
    .options({ ...rules, resultTypes: ['violations', 'incomplete'] });
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
