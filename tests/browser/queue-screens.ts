/** The intake queue. */

import type { Page } from '@playwright/test';

import { at, type Screen } from './reached';
import { enqueue, proving, shop } from './queues';
import { HOT_CHASSIS } from './units';
import type { Walk } from './walk';
import { say } from './words';

const toQueue = (place: string) => async (bridge: Parameters<Screen['reach']>[0]) => {
  await shop(bridge);
  return `#/queue${place}`;
};
const search = (text: string) => async (_: Walk, page: Page) => {
  await page.getByRole('searchbox').fill(text);
  await page.getByText(say('queue-everywhere')).waitFor();
};

async function nothingFound(walk: Walk, page: Page): Promise<void> {
  await search('zither')(walk, page);
  await page.getByText(say('list-none-found', { text: 'zither' })).waitFor();
}

/** Chooses on the sheet of filters, and comes back. */
async function narrow(walk: Walk, page: Page): Promise<void> {
  await walk.tap(say('queue-filters'));
  for (const name of [say('work-to_inspect'), say('class-one_fault-short'), say('class-live-short'), 'Stall 14']) {
    await page.getByRole('checkbox', { name, exact: true }).tap();
  }
  await page.getByRole('button', { name: say('queue-show', { count: 1 }) }).tap();
}

async function select(walk: Walk, page: Page): Promise<void> {
  await walk.tap(say('queue-select'));
  await page.getByRole('checkbox', { name: 'U-0002' }).tap();
  await page.getByRole('checkbox', { name: 'U-0001' }).tap();
}

async function selected(walk: Walk, page: Page): Promise<void> {
  await select(walk, page);
  await walk.tap(say('queue-pick-go'));
  await walk.heading.getByText(say('queue-picked-title', { count: 2 })).waitFor();
  // It takes no tap that is left over from the screen before.
  await walk.tap(say('work-ready'));
  await page.getByRole('alert').getByText(say('queue-refused', { count: 2, state: say('work-ready') })).waitFor();
}

async function refused(walk: Walk, page: Page): Promise<void> {
  await walk.tap(say('work-ready'));
  await page.getByRole('button', { name: say('queue-to-proof', { label: 'U-0006' }) }).waitFor();
}

async function changed(walk: Walk, page: Page): Promise<void> {
  await walk.tap(say('work-in_repair'));
  await page.getByRole('button', { name: say('undo') }).waitFor();
}

/** The first page of more than one. */
async function many(bridge: Parameters<Screen['reach']>[0]): Promise<string> {
  for (let number = 1; number <= 60; number += 1) await enqueue(bridge, { name: `Shelf ${number}` }, null);
  return '#/queue';
}

export const QUEUES: Screen[] = [
  { name: 'queue-empty', reach: at('#/queue') },
  { name: 'queue', reach: shop, long: true },
  { name: 'queue-state-chosen', reach: shop, act: (_, page) => tile(page, 1, say('work-in_repair')) },
  { name: 'queue-none-in-state', reach: shop, act: (_, page) => tile(page, 0, say('work-ready')) },
  { name: 'queue-filtered', reach: shop, act: narrow },
  { name: 'queue-searched', reach: shop, act: search('amplif') },
  { name: 'queue-nothing-found', reach: shop, act: nothingFound },
  { name: 'queue-selecting', reach: shop, act: select },
  { name: 'queue-selected', reach: shop, act: selected, long: true },
  { name: 'queue-filters', reach: toQueue('/filters'), long: true },
  { name: 'queue-unit', reach: toQueue('/U-0002'), long: true },
  { name: 'queue-unit-changed', reach: toQueue('/U-0002'), act: changed },
  { name: 'queue-unit-refused', reach: toQueue('/U-0006'), act: refused },
  { name: 'queue-unit-gone', reach: toQueue('/U-0404') },
  { name: 'queue-many', reach: many, varies: (page) => page.getByRole('main').getByRole('list') },
  { name: 'queue-on-its-side', reach: shop, width: 844, height: 390 },
  { name: 'queue-wide', reach: toQueue('/U-0006'), width: 1280 },
  {
    name: 'queue-ready',
    reach: async (bridge) => {
      await enqueue(bridge, HOT_CHASSIS, 'do_not_power');
      await proving(bridge, Infinity);
      return '#/queue/U-0002';
    },
  },
];

function tile(page: Page, units: number, word: string): Promise<void> {
  return page.getByRole('button', { name: `${units} ${word}`, exact: true }).tap();
}
