/** Nothing moves under the hand while an answer is given. */

import type { Page } from '@playwright/test';

import { expect, test } from './check';
import { addStyle, settle, show } from './screen';
import { screenNamed } from './screens';
import type { Traffic } from './traffic';
import { Walk } from './walk';

/** What was seen of the bar at the bottom, frame by frame, and what moved that was there before. */
interface Seen {
  bars: { top: number; height: number }[];
  /** Where each of its buttons was, from the left. */
  buttons: Record<string, number[]>;
  shifts: { afterTouch: boolean; moved: string[] }[];
}

/** Looks at the bar in every frame, and listens for layout shifts, from now on. */
async function watch(page: Page): Promise<void> {
  await page.evaluate(() => {
    interface Shift extends PerformanceEntry {
      hadRecentInput: boolean;
      sources: { node: Node | null }[];
    }
    const seen: Seen = { bars: [], buttons: {}, shifts: [] };
    Object.assign(window, { seen });

    // The bar is what stays at the bottom and says what is still possible.
    const findBar = (): Element | undefined =>
      [...document.querySelectorAll('*:has([role=status])')].find(
        (element) => getComputedStyle(element).position === 'sticky',
      );
    const told = ({ localName, className, textContent }: Element): string =>
      `${localName} ${className} “${textContent?.trim().slice(0, 30)}”`;
    new PerformanceObserver((list) => {
      for (const { hadRecentInput, sources } of list.getEntries() as Shift[]) {
        const bar = findBar();
        const moved = sources
          .map(({ node }) => (node instanceof Element ? node : node?.parentElement))
          .filter((node) => node instanceof Element)
          .filter((node) => !bar?.contains(node));
        if (moved.length > 0) seen.shifts.push({ afterTouch: hadRecentInput, moved: moved.map(told) });
      }
    }).observe({ type: 'layout-shift' });

    const look = (): void => {
      const bar = findBar();
      if (bar && location.hash.includes('/q/')) {
        const { top, height } = bar.getBoundingClientRect();
        seen.bars.push({ top, height });
        for (const button of bar.querySelectorAll('button')) {
          const name = button.innerText.replace(/[\s\d]+/g, '');
          (seen.buttons[name] ??= []).push(button.getBoundingClientRect().left);
        }
      }
      requestAnimationFrame(look);
    };
    look();
  });
}

const spread = (places: number[]): number => Math.max(...places) - Math.min(...places);

/** Answers all that is asked, from the first question to the verdict. */
async function answerAll(page: Page, traffic: Traffic): Promise<Seen> {
  const walk = new Walk(page);
  const asked = [];
  await watch(page);
  for (let question = await walk.question(); question !== ''; question = await walk.question()) {
    asked.push(question);
    await walk.answer({ bare_metal: ['screws_or_shafts', 'instrument_jack'] });
    await settle(page, traffic);
  }
  expect(asked.length, 'too few questions to show anything').toBeGreaterThan(3);
  expect(asked).toContain('bare_metal');
  return page.evaluate(() => (window as unknown as { seen: Seen }).seen);
}

for (const display of [
  { width: 390, height: 844 },
  { width: 320, height: 568 },
]) {
  test(`while answers are given nothing moves at ${display.width} px`, async ({ bridge, page, traffic }) => {
    await page.setViewportSize(display);
    await show(page, screenNamed('question-drawings'), bridge, traffic);
    const { bars, buttons, shifts } = await answerAll(page, traffic);
    expect(bars.length).toBeGreaterThan(0);
    // A page that is scrolled by part of a pixel moves the bar by as much.
    expect.soft(spread(bars.map(({ top }) => top)), 'the bar moves').toBeLessThan(1);
    expect.soft(spread(bars.map(({ height }) => height)), 'the bar grows').toBeLessThan(1);
    for (const [name, places] of Object.entries(buttons)) {
      expect.soft(spread(places), `the button ${name} moves`).toBeLessThan(1);
    }
    expect.soft(shifts, 'what is above the bar moves').toEqual([]);
  });
}

test('what moves is noticed', async ({ bridge, page, traffic }) => {
  await show(page, screenNamed('question-drawings'), bridge, traffic);
  await watch(page);
  await page.evaluate(() => {
    const pusher = document.createElement('div');
    pusher.className = 'pusher';
    document.querySelector('main')?.prepend(pusher);
    for (const told of document.querySelectorAll('[role=status]')) told.after(pusher.cloneNode());
  });
  await addStyle(page, '.pusher { height: 60px }');
  await settle(page, traffic);
  const { bars, shifts } = await page.evaluate(() => (window as unknown as { seen: Seen }).seen);
  expect(spread(bars.map(({ height }) => height))).toBeGreaterThan(50);
  expect(shifts).not.toEqual([]);
});
