/** Opening a screen, in each of the themes, and waiting until it is at rest. */

import { expect, type Page } from '@playwright/test';

import type { Bridge } from './bridge';
import type { Screen } from './reached';
import type { Traffic } from './traffic';
import { READING_MS, Walk } from './walk';

export const THEMES = ['light', 'dark', 'contrast'] as const;
export type Theme = (typeof THEMES)[number];

/** Puts the record into a screen's state and goes there as an inspector who has set nothing. */
export async function show(page: Page, screen: Screen, bridge: Bridge, traffic: Traffic): Promise<void> {
  const hash = await screen.reach(bridge);
  const kept = JSON.stringify({ theme: 'system', welcomed: !screen.unwelcomed });
  await page.addInitScript((settings) => localStorage.setItem('settings', settings), kept);
  if (screen.width) await page.setViewportSize({ width: screen.width, height: screen.height ?? 844 });
  await page.goto(`/${hash}`);
  await settle(page, traffic);
  if (!screen.act) return;
  await page.waitForTimeout(READING_MS);
  await screen.act(new Walk(page), page);
  await settle(page, traffic);
}

/** Changes the system's colours, which the screens follow at once. */
export async function wear(page: Page, theme: Theme): Promise<void> {
  await page.emulateMedia({
    colorScheme: theme === 'dark' ? 'dark' : 'light',
    contrast: theme === 'contrast' ? 'more' : 'no-preference',
  });
  await expect(page.locator(`html[data-theme=${theme}]`)).toBeAttached();
}

/** Adds a style to the page; as a sheet of its own, since the app's policy bars styles in the page. */
export async function addStyle(page: Page, style: string): Promise<void> {
  await page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets.push(sheet);
  }, style);
}

/** Waits until nothing is on its way, nothing moves, and what is new is painted. */
export async function settle(page: Page, traffic: Traffic): Promise<void> {
  await expect(page.locator('main').first()).toBeAttached();
  // Between two looks a screen may ask for more, so it has to be quiet at both.
  await quiet(traffic);
  await atRest(page);
  await quiet(traffic);
  await atRest(page);
}

function quiet(traffic: Traffic): Promise<void> {
  return expect.poll(() => traffic.quiet, { intervals: [5, 10, 20, 50] }).toBe(true);
}

/** Waits until nothing moves, and what is new is painted. */
export function atRest(page: Page): Promise<void> {
  return page.evaluate(async () => {
    await document.fonts.ready;
    const painted = () => new Promise((done) => requestAnimationFrame(done));
    await painted();
    const ends = (moving: Animation) => moving.effect?.getComputedTiming().endTime !== Infinity;
    await Promise.allSettled(document.getAnimations().filter(ends).map((moving) => moving.finished));
    await painted();
  });
}
