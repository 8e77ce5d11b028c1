/** The circuit picture has room for what it shows: every isolation × cord × reach, as the browser draws it; with
    `COLDCHASSIS_CIRCUITS=all` each with every fault. */

import type { Page } from '@playwright/test';

import type { Feed } from '../../ui/src/lib/types/Feed';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { strays } from './circuit-way';
import { builtBehind, EVERY_FAULT, EVERY_ISOLATION, everyBuilt, picturesOf, withEarthedFeed } from './circuits';
import { crowded, handPictures } from './extents';
import { settle } from './screen';
import type { Traffic } from './traffic';
import { HOT_CHASSIS, inspect } from './units';

async function open(page: Page, bridge: Bridge, traffic: Traffic, feed: Feed = 'direct'): Promise<void> {
  await page.goto(`/#/i/${await inspect(bridge, { ...HOT_CHASSIS, fed: { feed } })}/circuit`);
  await settle(page, traffic);
  await handPictures(page);
}

test('every isolation, cord and reach that exists is built once', () => {
  const all = everyBuilt().map(({ isolation, cord, reach }) => `${isolation} ${cord} ${reach}`);
  // Seven isolations × seven cords × four reaches, and metal on the common for the two where it differs.
  expect(new Set(all).size).toBe(7 * 7 * 4 + 2 * 7);
  expect(all).toHaveLength(7 * 7 * 4 + 2 * 7);
});

for (const isolation of EVERY_ISOLATION) {
  test(`no word, symbol or line stands on another, and the way is one line: ${isolation}`, async ({ bridge, page, traffic }) => {
    test.setTimeout(240_000);
    await open(page, bridge, traffic);
    const found: string[] = [];
    let seen = 0;
    const all = everyBuilt().filter((one) => one.isolation === isolation);
    for (const [place, built] of all.entries()) {
      for (const view of await picturesOf(bridge, built, EVERY_FAULT ? undefined : place)) {
        expect(view, 'the core shows another arrangement').toMatchObject({ cord: built.cord, reach: built.reach });
        const where = [built.cord, built.reach, view.line_capacitor, view.switch_leg, ...view.faults].join(' ');
        found.push(...[...(await crowded(page, view)), ...strays(view, 'direct')].map((fault) => `${where}: ${fault}`));
        seen += 1;
      }
    }
    expect(found.slice(0, 5)).toEqual([]);
    expect(seen).toBeGreaterThanOrEqual(EVERY_FAULT ? 150 : 2 * all.length);
  });
}

for (const feed of ['isolated', 'step_down_auto'] as const) {
  test(`nor behind a transformer in front of the outlet: ${feed}`, async ({ bridge, page, traffic }) => {
    test.setTimeout(240_000);
    await open(page, bridge, traffic, feed);
    const found: string[] = [];
    const seen = new Set<string>();
    for (const [place, built] of builtBehind(feed).entries()) {
      const views = await picturesOf(bridge, built, EVERY_FAULT ? undefined : place);
      // The fault that only a floating outlet has, whatever is built behind it.
      if (feed === 'isolated' && (EVERY_FAULT || place % 3 === 0)) views.push(...(await withEarthedFeed(bridge, built)));
      for (const view of views) {
        const where = [built.isolation, built.cord, built.reach, view.state.plug, view.state.switch, ...view.faults].join(' ');
        found.push(...[...(await crowded(page, view)), ...strays(view, feed)].map((fault) => `${where}: ${fault}`));
        seen.add(`${built.isolation} ${built.cord}`);
        for (const part of [...view.path, ...view.faults]) seen.add(part);
      }
    }
    expect(found.slice(0, 5)).toEqual([]);
    for (const isolation of EVERY_ISOLATION) expect(seen).toContain(`${isolation} two_pin_polarised`);
    expect(seen).toContain('hot_contact');
    expect(seen).toContain('neutral_contact');
    expect(seen.has('feed_earthed')).toBe(feed === 'isolated');
  });
}

test('what stands on something else in the drawn picture is found', async ({ bridge, page, traffic }) => {
  await open(page, bridge, traffic);
  const [built] = everyBuilt().filter(({ unit }) => unit.answers?.['line_capacitor'] === 'both_legs');
  if (!built) throw new Error('no unit with both capacitors');
  const [view] = await picturesOf(bridge, built);
  if (!view) throw new Error('no picture');
  expect(await crowded(page, view)).toEqual([]);
  // A value so long that it runs into what is beside it.
  const long = view.labels.map((label) => ({ ...label, text: `${label.text} and 470 pF` }));
  expect(await crowded(page, { ...view, labels: long })).not.toEqual([]);
  // Words that leave the picture, and a voltage that nobody could print.
  expect(await crowded(page, { ...view, volts: '127.000 000 000 V' })).toContainEqual(expect.stringContaining('outside'));
  // A symbol and a word, moved onto what is beside them.
  for (const selector of ['.symbol.capacitor', '.turn', 'text.name']) {
    await page.evaluate((moved) => {
      const node = document.querySelector(`.picture ${moved}`) as SVGGraphicsElement;
      const [whole] = [document.querySelector('.picture .heaters, .picture .primary') as SVGGraphicsElement];
      const [from, to] = [node.getBoundingClientRect(), whole.getBoundingClientRect()];
      const scale = node.getScreenCTM()?.a ?? 1;
      node.dataset['kept'] = node.getAttribute('transform') ?? '';
      const shift = `translate(${(to.x - from.x) / scale} ${(to.y - from.y) / scale})`;
      node.setAttribute('transform', `${shift} ${node.dataset['kept']}`);
    }, selector);
    expect(await crowded(page, view), selector).not.toEqual([]);
    await page.evaluate((moved) => {
      const node = document.querySelector(`.picture ${moved}`) as SVGGraphicsElement;
      node.setAttribute('transform', node.dataset['kept'] ?? '');
    }, selector);
  }
  expect(await crowded(page, view)).toEqual([]);
});
