/** What a screen measures: the size of what can be tapped, and whether anything sticks out sideways. */

import type { Page } from '@playwright/test';

/** A finger in a glove; CSS pixels. Source: DESIGN section 10, 48 px targets. */
const TARGET = 48;

/** What can be tapped and is smaller than a finger. A row with a label counts as a whole, and the label of
    a field belongs to the field. */
export function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const tapped = 'button, a[href], summary, select, textarea, [role=button], [role=checkbox], [tabindex="0"]';
    const rows = [...document.querySelectorAll('label')].filter((label) => label.querySelector('input'));
    const fields = [...document.querySelectorAll('input')].filter((field) => !field.closest('label'));
    const all = [...document.querySelectorAll(tapped), ...rows, ...fields];
    return all
      // What is hidden from a reader too is not for a finger: a button stands for it.
      .filter((element) => element.getClientRects().length > 0 && !element.closest('[aria-hidden=true]'))
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      // Layout works in 64ths of a pixel.
      .filter(({ box }) => Math.min(box.width, box.height) < least - 1 / 32)
      .map(({ element, box }) => {
        const name = element.getAttribute('aria-label') ?? element.textContent?.trim();
        return `${element.localName} “${name}”: ${box.width.toFixed(1)} × ${box.height.toFixed(1)}`;
      });
  }, TARGET);
}

/** What makes the page scroll sideways, or lies beyond its edge where it can be seen. */
export function sticksOut(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const root = document.documentElement;
    const width = root.clientWidth;
    const clips = (element: Element) => getComputedStyle(element).overflowX !== 'visible';

    const beyond = (element: Element): boolean => {
      const { left, right } = element.getBoundingClientRect();
      return right > width + 0.5 || left < -0.5;
    };
    const seen = (element: Element): boolean => {
      // A drawing is one thing, and clips what is in it.
      if (element.parentElement?.closest('svg')) return false;
      for (let above = element.parentElement; above && above !== document.body; above = above.parentElement) {
        if (clips(above) && !beyond(above)) return false;
      }
      return element.checkVisibility({ opacityProperty: true });
    };
    const told = (element: Element): string => {
      const { left, right } = element.getBoundingClientRect();
      const text = element.textContent?.trim().slice(0, 40);
      return `${element.localName}.${element.classList[0]} “${text}”: ${left.toFixed(1)} to ${right.toFixed(1)}`;
    };

    const all = [...document.querySelectorAll('body *')];
    const out = new Set(all.filter((element) => beyond(element) && seen(element)));
    const innermost = [...out].filter((element) => ![...element.children].some((child) => out.has(child)));
    const scrolling = all.filter((element) => {
      const scrolls = ['auto', 'scroll'].includes(getComputedStyle(element).overflowX);
      return scrolls && element.scrollWidth > element.clientWidth;
    });
    const page = root.scrollWidth > width ? [`the page: ${root.scrollWidth} in ${width}`] : [];
    return [...page, ...innermost.map(told), ...scrolling.map((element) => `scrolls: ${told(element)}`)];
  });
}

/** Text that is cut off where a box ends, or runs out of its own; what is hidden from the eye on purpose is not. */
export function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
    const scrolls = (overflow: string) => overflow === 'auto' || overflow === 'scroll';
    /** The box that a text has to lie in: the first around it that is no part of a line, and each that cuts. */
    const boxes = (element: Element): DOMRect[] => {
      const found: DOMRect[] = [];
      for (let above: Element | null = element; above && above !== document.body; above = above.parentElement) {
        const { display, overflowX, clipPath } = getComputedStyle(above);
        if (scrolls(overflowX)) break;
        const isBox = found.length === 0 && display !== 'inline' && display !== 'contents';
        if (isBox || hides(overflowX) || clipPath !== 'none') found.push(above.getBoundingClientRect());
      }
      return found;
    };
    const isOnPurpose = (element: Element): boolean =>
      element.closest('svg') !== null || element.getBoundingClientRect().width <= 1;
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const cut: string[] = [];
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const element = text.parentElement;
      if (!element || !text.textContent?.trim() || isOnPurpose(element)) continue;
      if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      const lines = [...range.getClientRects()].filter(({ width }) => width > 0);
      const around = boxes(element).filter(({ width }) => width > 1);
      const sticks = lines.some((line) => around.some((box) => line.right > box.right + 1 || line.left < box.left - 1));
      if (sticks) cut.push(`${element.localName}.${element.classList[0]} “${text.textContent.trim().slice(0, 60)}”`);
    }
    return cut;
  });
}
