/** The intake queue by finger: narrowed, searched, states changed and put back, several units at once. */

import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import type { Locator, Page } from '@playwright/test';

import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import type { QueueView } from '../../ui/src/lib/types/QueueView';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { enqueue, proving, shop, unitOf } from './queues';
import { settle } from './screen';
import { HOT_CHASSIS, inspect, LEAKY_AMPLIFIER, SHELF_RADIO } from './units';
import { Walk } from './walk';
import { say } from './words';

const rows = (page: Page): Locator => page.getByRole('main').getByRole('listitem');
const row = (page: Page, label: string): Locator => rows(page).filter({ hasText: label });
const tile = (page: Page, units: number, word: string): Locator =>
  page.getByRole('button', { name: `${units} ${word}`, exact: true });

/** The state of a unit, as the core has it. */
async function stateOf(bridge: Bridge, label: string): Promise<string | undefined> {
  const { rows: found } = await bridge.call<QueueView>('show_queue', { ask: { text: label } });
  return found.find(({ unit }) => unit.label === label)?.state;
}

/** The one file that was given away. */
async function given(bridge: Bridge, page: Page): Promise<string> {
  await expect.poll(() => readdirSync(bridge.given).length).toBe(1);
  await expect(page.getByRole('alert').filter({ hasText: /./ })).toHaveCount(0);
  return join(bridge.given, readdirSync(bridge.given)[0] ?? '');
}

test('the list of units leads to the queue, worst first, without those handed back', async ({ bridge, page, traffic }) => {
  await shop(bridge);
  await page.goto('/#/');
  await settle(page, traffic);
  await page.getByRole('button', { name: new RegExp(`^${say('queue')} `) }).tap();
  await expect(new Walk(page).heading).toHaveText(say('queue-title'));
  await expect(rows(page)).toHaveCount(7);
  await expect(rows(page).first()).toContainText(say('class-live-short'));
  await expect(rows(page).last()).toContainText(say('class-no_line-short'));
  await expect(row(page, 'U-0007')).toHaveCount(0);
  // Who said so, beside the state.
  await expect(row(page, 'U-0002')).toContainText(/Do not power.*Kim/);
  await page.getByRole('radio', { name: say('queue-newest') }).tap();
  // They came in within a second or two, one after the other.
  await expect(rows(page)).toContainText(['U-0008', 'U-0006', 'U-0005', 'U-0004', 'U-0003', 'U-0002', 'U-0001']);
  await page.reload();
  await expect(page.getByRole('radio', { name: say('queue-newest') })).toBeChecked();
});

test('a search begins with two letters, looks everywhere, and says what it does not find', async ({ bridge, page, traffic }) => {
  await shop(bridge);
  await page.goto('/#/queue');
  await settle(page, traffic);
  const field = page.getByRole('searchbox', { name: say('queue-search') });
  await field.fill('h');
  await expect(page.getByText(say('queue-search-more'))).toBeVisible();
  await expect(rows(page)).toHaveCount(7);
  // What was found, in the words in which it was answered.
  await field.fill('both alike');
  await expect(row(page, 'U-0002')).toBeVisible();
  // Handed back, and found all the same.
  await field.fill('house');
  await expect(rows(page)).toHaveCount(1);
  await expect(row(page, 'U-0007')).toContainText(say('work-handed_back'));
  await field.fill('zither');
  await expect(page.getByText(say('list-none-found', { text: 'zither' }))).toBeVisible();
  await new Walk(page).tap(say('queue-clear'));
  await expect(rows(page)).toHaveCount(7);
});

test('filters are put on, kept over a new start, and taken off one by one or all at once', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await shop(bridge);
  await page.goto('/#/queue');
  await settle(page, traffic);
  await tile(page, 1, say('work-in_repair')).tap();
  await expect(rows(page)).toHaveCount(1);
  await expect(row(page, 'U-0004')).toBeVisible();

  await walk.tap(`${say('queue-filters')} 1`);
  await expect(walk.heading).toHaveText(say('queue-filters-title'));
  await page.getByRole('checkbox', { name: say('work-awaiting_parts') }).tap();
  await page.getByRole('checkbox', { name: 'Backstage, left' }).tap();
  await page.getByRole('checkbox', { name: say('answer-kind-instrument_amplifier') }).tap();
  await page.getByRole('checkbox', { name: say('queue-basis-shown') }).tap();
  await page.getByLabel(say('queue-filter-from'), { exact: true }).fill('2020-01-01');
  await page.getByRole('button', { name: say('queue-show', { count: 2 }) }).tap();
  await expect(rows(page)).toHaveCount(2);

  await page.reload();
  await expect(rows(page)).toHaveCount(2);
  await walk.tap(say('queue-filter-off', { filter: say('work-in_repair') }));
  await expect(rows(page)).toHaveCount(1);
  await expect(row(page, 'U-0003')).toBeVisible();
  await walk.tap(say('queue-filters-clear'));
  await expect(rows(page)).toHaveCount(7);

  // From a day on which nothing had come in yet.
  await walk.tap(say('queue-filters'));
  await page.getByLabel(say('queue-filter-to'), { exact: true }).fill('2020-01-01');
  await page.getByRole('button', { name: say('queue-show', { count: 0 }) }).tap();
  await expect(page.getByText(say('queue-none-fits'))).toBeVisible();
});

test('a state is changed by a tap, and the one before is put back by another', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await shop(bridge);
  await page.goto('/#/queue');
  await settle(page, traffic);
  await row(page, 'U-0002').getByRole('button').tap();
  await expect(walk.heading).toHaveText(say('queue-state-title'));

  // The name is asked for once.
  await walk.tap(say('queue-who-add'));
  await page.getByLabel(say('settings-author'), { exact: true }).fill('Ada');
  await walk.tap(say('question-keep'));
  await expect(page.getByText(say('queue-who'))).toHaveCount(0);

  const repair = page.getByRole('radio', { name: say('work-in_repair') });
  await repair.tap();
  await expect(page.getByText(/In repair.*Ada/)).toBeVisible();
  await expect.poll(() => stateOf(bridge, 'U-0002')).toBe('in_repair');
  await walk.tap(say('undo'));
  await expect(page.getByRole('radio', { name: say('work-do_not_power') })).toBeChecked();
  await expect.poll(() => stateOf(bridge, 'U-0002')).toBe('do_not_power');

  await repair.tap();
  await expect(repair).toBeChecked();
  await page.goBack();
  // Back in the list it stands with its new state, counted, and can still be undone.
  await expect(tile(page, 2, say('work-in_repair'))).toBeVisible();
  await expect(row(page, 'U-0002')).toContainText(say('work-in_repair'));
  await walk.tap(say('undo'));
  await expect(row(page, 'U-0002')).toContainText(say('work-do_not_power'));
});

test('ready is refused without its proof, which is a tap away, and holds with it', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const open = await proving(bridge, 3);
  const proven = await proving(bridge, Infinity);
  await bridge.call('set_unit_state', { unit: proven.id, state: 'in_repair' });
  await page.goto(`/#/queue/${open.label}`);
  await settle(page, traffic);
  const ready = page.getByRole('radio', { name: say('work-ready') });
  await ready.tap();
  await expect(page.getByRole('alert')).toContainText(say('proof-insulation'));
  // What was refused does not look as if it had been taken.
  await expect(ready).not.toBeChecked();
  await expect(page.getByRole('radio', { name: say('work-proof_open') })).toBeChecked();
  await walk.tap(say('queue-to-proof', { label: open.label }));
  await expect.poll(() => walk.address()).toBe(`#/i/${open.inspection}/proof`);
  await expect(walk.heading).toHaveText(say('proving-title'));
  await page.goBack();
  await expect(walk.heading).toHaveText(say('queue-state-title'));

  await page.goto(`/#/queue/${proven.label}`);
  await expect(page.getByRole('radio', { name: say('work-in_repair') })).toBeChecked();
  await ready.tap();
  await expect(page.getByText(say('queue-was-set', { unit: `${proven.label} ${proven.name}`, state: say('work-ready') }))).toBeVisible();
  expect(await stateOf(bridge, proven.label)).toBe('ready');
});

test('several units are put into a state at once; those refused are named, the others done', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const proven = await proving(bridge, Infinity);
  await bridge.call('set_unit_state', { unit: proven.id, state: 'in_repair' });
  const hot = await enqueue(bridge, HOT_CHASSIS, 'do_not_power');
  const shelf = await enqueue(bridge, SHELF_RADIO, null);
  await page.goto('/#/queue');
  await settle(page, traffic);
  await walk.tap(say('queue-select'));
  await walk.tap(say('queue-pick-all', { count: 3 }));
  await expect(page.getByText(say('queue-picked', { count: 3 }))).toBeVisible();
  await page.getByRole('checkbox', { name: shelf.label }).tap();
  await expect(page.getByText(say('queue-picked', { count: 2 }))).toBeVisible();
  await walk.tap(say('queue-pick-go'));

  await page.getByRole('radio', { name: say('work-ready') }).tap();
  const alert = page.getByRole('alert').filter({ hasText: hot.label });
  await expect(alert).toContainText(say('proof-nothing-chosen'));
  await expect(alert).not.toContainText(proven.label);
  expect(await stateOf(bridge, proven.label)).toBe('ready');
  expect(await stateOf(bridge, hot.label)).toBe('do_not_power');
  expect(await stateOf(bridge, shelf.label)).toBe('to_inspect');

  await page.getByRole('radio', { name: say('work-awaiting_parts') }).tap();
  await expect(page.getByText(say('queue-were-set', { count: 2, state: say('work-awaiting_parts') }))).toBeVisible();
  await walk.tap(say('undo'));
  await expect(page.getByText(say('queue-were-undone', { count: 2 }))).toBeVisible();
  expect(await stateOf(bridge, proven.label)).toBe('ready');
  expect(await stateOf(bridge, hot.label)).toBe('do_not_power');
  await walk.tap(say('queue-pick-done'));
  await expect(page.getByRole('checkbox')).toHaveCount(0);
  await expect(rows(page)).toHaveCount(3);
});

test('a change of several units is stopped on the way, and what was done of it undone at once', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const units: InspectionView['unit'][] = [];
  for (let number = 1; number <= 8; number += 1) units.push(await enqueue(bridge, { name: `Shelf ${number}` }, null));
  const states = () => Promise.all(units.map(({ label }) => stateOf(bridge, label)));
  const there = async (state: string) => (await states()).filter((one) => one === state).length;
  await page.goto('/#/queue');
  await settle(page, traffic);
  await pickAll(page, 8);
  // The fourth is held back until the way has been stopped.
  let asked = 0;
  let letGo = (): void => undefined;
  const stopped = new Promise<void>((done) => (letGo = done));
  await page.route('**/api/set_unit_state', async (route) => {
    asked += 1;
    if (asked === 4) await stopped;
    await route.continue();
  });
  await page.getByRole('radio', { name: say('work-in_repair') }).tap();
  await expect(page.getByText(say('queue-doing', { done: 3, of: 8 }))).toBeVisible();
  await walk.tap(say('queue-stop'));
  letGo();
  const said = say('queue-were-set-stopped', { count: 4, state: say('work-in_repair'), left: 4 });
  await expect(page.getByText(said)).toBeVisible();
  expect(asked).toBe(4);
  expect(await there('in_repair')).toBe(4);
  await walk.tap(say('undo'));
  await expect(page.getByText(say('queue-were-undone', { count: 4 }))).toBeVisible();
  expect(await there('to_inspect')).toBe(8);
  await expect(page.getByRole('button', { name: say('undo') })).toHaveCount(0);
});

test('the proof is led to where it is entered, though the unit was looked at again since', async ({ bridge, page, traffic }) => {
  const open = await proving(bridge, 3);
  const again = await bridge.call<InspectionView>('start_inspection', { unit: open.id, access: ['outside'] });
  await bridge.call('answer', { inspection: again.id, question: 'back', answer: 'fitted' });
  await page.goto(`/#/queue/${open.label}`);
  await settle(page, traffic);
  const walk = new Walk(page);
  await walk.tap(say('queue-look-verdict'));
  await expect.poll(() => walk.address()).toBe(`#/i/${again.id}/verdict`);
  await page.goBack();
  await walk.tap(say('proving-see'));
  await expect.poll(() => walk.address()).toBe(`#/i/${open.inspection}/proof`);
  await page.goBack();
  await page.getByRole('radio', { name: say('work-ready') }).tap();
  await walk.tap(say('queue-to-proof', { label: open.label }));
  await expect.poll(() => walk.address()).toBe(`#/i/${open.inspection}/proof`);
});

test('of more places than are read at once each is found by a part of its name', async ({ bridge, page, traffic }) => {
  const supply = { volts: 120, hertz: 60, volts_max: 127, feed: 'direct' };
  for (let number = 1; number <= 205; number += 1) {
    await bridge.call('create_unit', { unit: { name: `Set ${number}`, place: `Shelf ${1000 + number}`, supply } });
  }
  await page.goto('/#/queue/filters');
  await settle(page, traffic);
  await expect(page.getByText(say('queue-filter-places-many', { count: 188 }))).toBeVisible();
  await expect(page.getByRole('checkbox', { name: 'Shelf 1205' })).toHaveCount(0);
  await page.getByLabel(say('queue-filter-places-find'), { exact: true }).fill('205');
  await page.getByRole('checkbox', { name: 'Shelf 1205' }).tap();
  await expect(page.getByRole('button', { name: say('queue-show', { count: 1 }) })).toBeVisible();
});

test('tags of the selected units are made on the paper that was chosen', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await shop(bridge);
  await page.goto('/#/queue');
  await settle(page, traffic);
  await walk.tap(say('queue-select'));
  for (const label of ['U-0002', 'U-0006']) await page.getByRole('checkbox', { name: label }).tap();
  await walk.tap(say('queue-pick-go'));
  await page.getByRole('radio', { name: say('papers-sheet_of_eight') }).tap();
  await walk.tap(say('queue-picked-tags-give'));
  const file = await given(bridge, page);
  expect(file).toMatch(/\.pdf$/);
  const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
  expect(text).toContain('U-0002');
  expect(text).toContain('U-0006');
  expect(text).not.toContain('U-0001');
  await expect(page.getByRole('status').filter({ hasText: '.pdf' })).toBeVisible();
});

test('a unit is deleted by two taps, for good, and the queue goes on without it', async ({ bridge, page, traffic }) => {
  await shop(bridge);
  await page.goto('/#/queue/U-0002');
  await settle(page, traffic);
  const walk = new Walk(page);
  await page.locator('summary', { hasText: say('unit-delete') }).tap();
  await expect(page.getByText(say('unit-delete-what'))).toBeVisible();
  await walk.tap(say('unit-delete-now', { label: 'U-0002' }));
  await expect(walk.heading).toHaveText(say('queue-title'));
  await settle(page, traffic);
  await expect(row(page, 'U-0002')).toHaveCount(0);
  expect(await stateOf(bridge, 'U-0002')).toBeUndefined();
  await page.goto('/#/queue/U-0002');
  await expect(walk.heading).toHaveText(say('queue-gone'));
});

test('the whole list is given away as CSV', async ({ bridge, page, traffic }) => {
  await shop(bridge);
  await page.goto('/#/queue');
  await settle(page, traffic);
  await new Walk(page).tap(say('queue-list'));
  const file = await given(bridge, page);
  expect(file).toMatch(/\.csv$/);
  const lines = readFileSync(file, 'utf8').trim().split('\r\n');
  expect(lines).toHaveLength(9);
  expect(lines.join('\n')).toContain(LEAKY_AMPLIFIER.name);
});

test('a record that is only in memory refuses a bundle in words', async ({ bridge, page, traffic }) => {
  await inspect(bridge, HOT_CHASSIS);
  await page.goto('/#/queue');
  await settle(page, traffic);
  await pickAll(page, 1);
  await new Walk(page).tap(say('queue-picked-bundle-give'));
  await expect(page.getByRole('alert').filter({ hasText: /./ })).toBeVisible();
  expect(readdirSync(bridge.given)).toEqual([]);
});

async function pickAll(page: Page, count: number): Promise<void> {
  const walk = new Walk(page);
  await walk.tap(say('queue-select'));
  await walk.tap(say('queue-pick-all', { count }));
  await walk.tap(say('queue-pick-go'));
}

test.describe('a record in a file', () => {
  test.use({ inFile: true });

  test('the selected units go into a bundle, named after the day', async ({ bridge, page, traffic }) => {
    for (const unit of [HOT_CHASSIS, SHELF_RADIO]) await unitOf(bridge, await inspect(bridge, unit));
    await page.goto('/#/queue');
    await settle(page, traffic);
    await pickAll(page, 2);
    await new Walk(page).tap(say('queue-picked-bundle-give'));
    const file = await given(bridge, page);
    expect(file).toMatch(/coldchassis_\d{4}-\d\d-\d\d\.coldbundle$/);
    await expect(page.getByRole('status').filter({ hasText: /2/ }).last()).toBeVisible();
    expect(readFileSync(file).subarray(0, 2).toString()).toBe('PK');
  });
});

test('more than a page is read while one scrolls, and one comes back to where one was', async ({ bridge, page, traffic }) => {
  test.slow();
  for (let number = 1; number <= 120; number += 1) await inspect(bridge, { name: `Shelf ${number}` });
  await page.goto('/#/queue');
  await settle(page, traffic);
  await expect(page.getByText(say('queue-found-more', { count: 50 }))).toBeVisible();
  const list = page.getByRole('main').getByRole('list');
  const bottom = () => page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
  await expect
    .poll(async () => {
      await bottom();
      return page.getByText(say('queue-found', { count: 120 })).count();
    })
    .toBe(1);
  expect(await list.getByRole('listitem').count()).toBeLessThan(40);
  await bottom();
  await expect(list.getByRole('listitem').last()).toHaveAttribute('aria-posinset', '120');

  await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight / 2));
  await settle(page, traffic);
  const middle = list.getByRole('listitem').nth(5);
  const name = await middle.locator('b').first().innerText();
  await middle.getByRole('button').tap();
  await expect(new Walk(page).heading).toHaveText(say('queue-state-title'));
  await page.getByRole('radio', { name: say('work-in_repair') }).tap();
  await expect(page.getByRole('radio', { name: say('work-in_repair') })).toBeChecked();
  await page.goBack();
  await settle(page, traffic);
  await expect(page.getByText(name, { exact: true }).first()).toBeInViewport();
});

test('what cannot be read is said, and read by another try', async ({ bridge, page, traffic }) => {
  await shop(bridge);
  const sentence = say('error-read-only');
  const problem = { code: 'storage', field: null, sentence };
  await page.route('**/api/show_queue', (route) => route.fulfill({ json: { problem } }), { times: 1 });
  await page.goto('/#/queue');
  await settle(page, traffic);
  await expect(page.getByRole('alert')).toContainText(sentence);
  await new Walk(page).tap(say('queue-again'));
  await expect(rows(page)).toHaveCount(7);
});
