/** How long it takes from a tap on the plug of the circuit picture to the next painted frame with the new figures.
    It reports and never fails by the clock: how busy this machine is says nothing of the screens. */

import type { Page } from '@playwright/test';

import { expect, slow, test } from './check';
import { settle } from './screen';
import { HOT_CHASSIS, inspect } from './units';
import { within } from './pace';
import { READING_MS } from './walk';
import { say } from './words';

/** `COLDCHASSIS_FLIPS` sets another number. */
const FLIPS = Number(process.env['COLDCHASSIS_FLIPS'] ?? 20);

/** Watches the figure in the picture: each time it is new, from the tap to after the frame that shows it, ms. */
function watch(page: Page): Promise<void> {
  return page.evaluate(() => {
    const flips: number[] = [];
    Object.assign(window, { flips });
    let tapped: number | null = null;
    let before = '';
    const figure = () => document.querySelector('.picture svg .figure')?.textContent ?? '';
    addEventListener('click', ({ timeStamp }) => ([tapped, before] = [timeStamp, figure()]), { capture: true });
    new MutationObserver(() => {
      if (tapped === null || figure() === before) return;
      const from = tapped;
      tapped = null;
      // What is posted from a frame is heard once that frame is painted.
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => flips.push(performance.now() - from);
        port2.postMessage(null);
      });
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
}

/** Keeps each answer of the core, so that a second flip to the same place shows the share of the screens alone. */
function keepAnswers(page: Page): Promise<void> {
  return page.evaluate(() => {
    const asked = window.fetch;
    const kept = new Map<string, string>();
    window.fetch = async (address, request) => {
      const key = `${String(address)} ${String(request?.body)}`;
      const text = kept.get(key) ?? (await (await asked(address, request)).text());
      kept.set(key, text);
      return new Response(text);
    };
  });
}

async function flip(page: Page, times: number): Promise<number[]> {
  const plug = page.getByRole('button', { name: say('circuit-turn-plug') });
  const count = () => page.evaluate(() => (window as unknown as { flips: number[] }).flips.length);
  await page.evaluate(() => ((window as unknown as { flips: number[] }).flips.length = 0));
  for (let turn = 1; turn <= times; turn += 1) {
    await plug.tap();
    await expect.poll(count, { intervals: [10, 20] }).toBe(turn);
  }
  return page.evaluate(() => (window as unknown as { flips: number[] }).flips.slice());
}

function told(flips: readonly number[]): string {
  const at = within(flips);
  return `median ${at(0.5)} ms, 95 of 100 within ${at(0.95)} ms, ${flips.length} flips`;
}

test('from a tap on the plug to the frame with the new figures', async ({ bridge, page, traffic }) => {
  test.setTimeout(300_000);
  await page.goto(`/#/i/${await inspect(bridge, HOT_CHASSIS)}/circuit`);
  await settle(page, traffic);
  await page.waitForTimeout(READING_MS);
  await watch(page);
  const lines: string[] = [];
  for (const times of [1, 6]) {
    await slow(page, times);
    for (const kept of [false, true]) {
      if (kept) await keepAnswers(page);
      const flips = await flip(page, kept ? FLIPS + 2 : FLIPS);
      const counted = kept ? flips.slice(2) : flips;
      expect(counted).toHaveLength(FLIPS);
      lines.push(`processor slowed ${times}×, ${kept ? 'the screens alone' : 'with the core of this build'}: ${told(counted)}`);
    }
    await page.reload();
    await settle(page, traffic);
    await watch(page);
  }
  test.info().annotations.push(...lines.map((description) => ({ type: 'flip to repaint', description })));
  console.log(lines.join('\n'));
});
