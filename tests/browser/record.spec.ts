/** The record as a whole by finger: given to another device, taken in, refused, its copies put back. */

import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

import type { Page } from '@playwright/test';

import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import type { QueueLine } from '../../ui/src/lib/types/QueueLine';
import type { QueueView } from '../../ui/src/lib/types/QueueView';
import type { UnitView } from '../../ui/src/lib/types/UnitView';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { ROOT } from './places';
import { bundleFromOther, fileOf, keepCopy, keptBeside, onOther, shop } from './records';
import { settle } from './screen';
import type { Traffic } from './traffic';
import { EARTHED_AMPLIFIER, HOT_CHASSIS, inspect, SHELF_RADIO } from './units';
import { Walk } from './walk';
import { say } from './words';

test.use({ inFile: true });

const units = (bridge: Bridge) => bridge.call<UnitView[]>('list_units', { text: null });

async function open(page: Page, traffic: Traffic, hash = '#/record'): Promise<Walk> {
  await page.goto(`/${hash}`);
  await settle(page, traffic);
  return new Walk(page);
}

/** The row of a copy begins with when that was made. */
const copyRow = (page: Page, at: string) => page.getByRole('button', { name: new RegExp(`^${at}`) });

test('it is reached from the settings, and back leads there', async ({ page, traffic }) => {
  const walk = await open(page, traffic, '#/settings');
  await page.getByRole('button', { name: new RegExp(`^${say('record-title')}`) }).tap();
  await expect(walk.heading).toHaveText(say('record-title'));
  await walk.tap(say('back'));
  await expect(walk.heading).toHaveText(say('settings-title'));
  // Opened by itself, as after a new start, there is no screen before it.
  await page.goto('about:blank');
  await open(page, traffic, '#/record/4');
  await walk.tap(say('back'));
  await expect(walk.heading).toHaveText(say('record-title'));
  await page.evaluate(() => sessionStorage.clear());
});

test('a bundle goes to another device and is taken in there, once', async ({ bridge, page, traffic }) => {
  for (const unit of [SHELF_RADIO, HOT_CHASSIS]) await inspect(bridge, unit);
  const walk = await open(page, traffic);
  await walk.tap(say('record-give-now'));
  await expect(page.getByText(say('bundle-made', { units: 2, photos: 0 }))).toBeVisible();
  const [name = '', ...others] = readdirSync(bridge.given);
  expect(others).toEqual([]);
  expect(name).toMatch(/^coldchassis_\d{4}-\d\d-\d\d\.coldbundle$/);
  await expect(page.getByText(name)).toBeVisible();
  await onOther(async (other) => {
    writeFileSync(join(other.given, name), readFileSync(join(bridge.given, name)));
    await page.goto(`${other.address}/#/record`);
    await settle(page, traffic);
    await walk.tap(say('record-take-now'));
    await expect(page.getByText(say('bundle-taken-in', { units: 2, photos: 0 }))).toBeVisible();
    const rows = page.getByRole('list', { name: say('record-changed') }).getByRole('button');
    await expect(rows).toHaveCount(2);
    // Their classes are worked out beside the window, and shown as soon as they are there.
    await expect(rows.filter({ hasText: say('class-live-short') })).toHaveCount(2);
    await walk.tap(say('record-take-now'));
    await expect(page.getByText(say('bundle-nothing-new'))).toBeVisible();
    await expect(rows).toHaveCount(0);
    expect((await units(other)).map((unit) => unit.name).sort()).toEqual([HOT_CHASSIS.name, SHELF_RADIO.name].sort());
  });
});

test('a unit that a bundle changed is led to, and back leads to what was taken in', async ({ bridge, page, traffic }) => {
  await bundleFromOther(bridge, [EARTHED_AMPLIFIER]);
  const walk = await open(page, traffic);
  await walk.tap(say('record-take-now'));
  const row = page.getByRole('list', { name: say('record-changed') }).getByRole('button');
  await expect(row).toContainText(EARTHED_AMPLIFIER.name);
  await row.tap();
  await expect.poll(() => walk.address()).toMatch(/^#\/i\//);
  const view = await bridge.call<InspectionView>('show_inspection', { inspection: await walk.inspection() });
  expect(view.unit.name).toBe(EARTHED_AMPLIFIER.name);
  await page.goBack();
  await expect(row).toContainText(EARTHED_AMPLIFIER.name);
});

test('a queue that is looked at follows what is worked out beside it, and asks no more when that is done', async ({
  bridge,
  page,
  traffic,
}) => {
  const path = await bundleFromOther(bridge, [HOT_CHASSIS]);
  let pending = 2;
  let asked = 0;
  let isLate = true;
  await page.route('**/api/count_pending', async (route) => {
    asked += 1;
    await route.fulfill({ json: { ok: pending } });
  });
  // As if the class were not there yet.
  await page.route('**/api/show_queue', async (route) => {
    const response = await route.fetch();
    const answer = (await response.json()) as { ok: QueueView };
    const unknown = ({ unit, ...line }: QueueLine) => ({ ...line, unit: { ...unit, treat_as: null, basis: null, signal: null } });
    await route.fulfill({ json: { ok: { ...answer.ok, rows: isLate ? answer.ok.rows.map(unknown) : answer.ok.rows } } });
  });
  await bridge.call('import_bundle', { path });
  await page.goto('/#/queue');
  const row = page.getByRole('main').getByRole('listitem');
  await expect(row).toContainText(say('list-no-verdict'));
  isLate = false;
  pending = 0;
  await expect(row).toContainText(say('class-live-short'));
  await settle(page, traffic);
  const before = asked;
  await page.waitForTimeout(2_500);
  expect(asked).toBe(before);
});

test('a bundle that was cut short is refused whole, in the words of the core', async ({ bridge, page, traffic }) => {
  await inspect(bridge, SHELF_RADIO);
  const path = await bundleFromOther(bridge, [EARTHED_AMPLIFIER], 0.6);
  const walk = await open(page, traffic);
  const answer = page.waitForResponse('**/api/import_bundle');
  await walk.tap(say('record-take-now'));
  const { problem } = (await (await answer).json()) as { problem: { sentence: string } };
  expect(problem.sentence).toBe(say('bundle-refused', { reason: say('bundle-not-one') }));
  await expect(page.getByRole('alert').filter({ hasText: problem.sentence })).toBeVisible();
  expect((await units(bridge)).map((unit) => unit.name)).toEqual([SHELF_RADIO.name]);
  // The whole of it is taken in after that, and nothing speaks of the refusal any more.
  await onOther(async (other) => {
    await inspect(other, EARTHED_AMPLIFIER);
    await other.call('export_bundle', { units: null, path });
  });
  await walk.tap(say('record-take-now'));
  await expect(page.getByText(say('bundle-taken-in', { units: 1, photos: 0 }))).toBeVisible();
  await expect(page.getByText(problem.sentence)).toHaveCount(0);
});

test('whoever thinks better of it is told nothing, and nothing is written', async ({ bridge, page, traffic }) => {
  await inspect(bridge, SHELF_RADIO);
  for (const ask of ['ask_save_path', 'ask_open_path']) {
    await page.route(`**/api/${ask}`, (route) => route.fulfill({ json: { ok: null } }));
  }
  await page.route('**/api/save_file', (route) => route.fulfill({ json: { ok: false } }));
  const walk = await open(page, traffic);
  for (const button of ['record-give-now', 'record-take-now', 'record-list-now']) {
    await walk.tap(say(button));
    await settle(page, traffic);
    await expect(walk.named(say(button))).toBeEnabled();
  }
  await expect(page.getByRole('status').filter({ hasText: /./ })).toHaveCount(0);
  await expect(page.getByRole('alert').filter({ hasText: /./ })).toHaveCount(0);
  expect(traffic.asked.filter((address) => /(export|import)_bundle$/.test(address))).toEqual([]);
  expect(readdirSync(bridge.given)).toEqual([]);
});

test('while a bundle is written nothing else starts, and a second tap does nothing', async ({ bridge, page, traffic }) => {
  await inspect(bridge, SHELF_RADIO);
  let goOn = (): void => undefined;
  const held = new Promise<void>((done) => (goOn = done));
  await page.route('**/api/export_bundle', async (route) => {
    await held;
    await route.continue();
  });
  const walk = await open(page, traffic);
  await walk.tap(say('record-give-now'));
  await expect(walk.named(say('record-giving'))).toBeDisabled();
  for (const button of ['record-take-now', 'record-list-now']) await expect(walk.named(say(button))).toBeDisabled();
  await expect(page.getByRole('status').filter({ hasText: say('record-busy') })).toBeVisible();
  await walk.named(say('record-giving')).tap({ force: true });
  goOn();
  await expect(page.getByText(say('record-given'), { exact: true })).toBeVisible();
  expect(traffic.asked.filter((address) => address.endsWith('export_bundle'))).toHaveLength(1);
});

test('the list is saved as CSV with a line for each unit', async ({ bridge, page, traffic }) => {
  await shop(bridge, 3);
  const walk = await open(page, traffic);
  await walk.tap(say('record-list-now'));
  await expect(page.getByText(say('record-listed'), { exact: true })).toBeVisible();
  const [name = ''] = readdirSync(bridge.given);
  await expect(page.getByText(name)).toBeVisible();
  const text = readFileSync(join(bridge.given, name), 'utf8');
  for (const unit of ['Radio 1', 'Radio 2', 'Radio 3']) expect(text).toContain(unit);
});

test('the words say how many copies are kept, and how far apart', () => {
  const core = readFileSync(`${ROOT}/src-tauri/core/src/store/snapshot.rs`, 'utf8');
  const figure = (name: string) => new RegExp(`const ${name}: \\w+ = (\\d+);`).exec(core)?.[1];
  const figures = ['INSPECTIONS_APART', 'KEPT', 'KEPT_FROM_BEFORE'].map(figure);
  expect(say('record-copies-when').match(/\d+/g)).toEqual(figures);
});

test('the words say how many replaced files are kept, and for how long', () => {
  const core = readFileSync(`${ROOT}/src-tauri/core/src/store/aside.rs`, 'utf8');
  const figures = ['KEPT', 'SERIES_DAYS'].map((name) => new RegExp(`const ${name}: \\w+ = (\\d+);`).exec(core)?.[1]);
  for (const id of ['recovery-would-keep', 'record-back-kept']) expect(say(id).match(/\d+/g)).toEqual(figures);
});

test('a copy is put back in two steps, and a bundle brings back what came after it', async ({ bridge, page, traffic }) => {
  await shop(bridge, 3);
  await keepCopy(bridge, 1, '2026-03-02T16:40:00Z');
  await inspect(bridge, EARTHED_AMPLIFIER);
  const walk = await open(page, traffic);
  await copyRow(page, '2 Mar 2026').tap();
  await expect(walk.heading).toHaveText(say('record-back-title'));
  await page.goBack();
  await expect(walk.heading).toHaveText(say('record-title'));
  expect(await units(bridge)).toHaveLength(4);
  expect(keptBeside(bridge)).toEqual([]);

  await copyRow(page, '2 Mar 2026').tap();
  await walk.tap(say('record-give-now'));
  await expect(page.getByText(say('bundle-made', { units: 4, photos: 0 }))).toBeVisible();
  await walk.tap(say('record-back-now'));
  await expect(page.getByText(say('record-back-done'), { exact: true })).toBeVisible();
  await expect(walk.heading).toHaveText(say('record-title'));
  expect((await units(bridge)).map((unit) => unit.name).sort()).toEqual(['Radio 1', 'Radio 2', 'Radio 3']);
  expect(keptBeside(bridge)).toEqual(['000001']);
  expect(readFileSync(join(dirname(fileOf(bridge)), 'damaged', '000001', 'damaged.coldchassis')).length).toBeGreaterThan(0);

  await walk.tap(say('record-take-now'));
  await expect(page.getByText(say('bundle-taken-in', { units: 1, photos: 0 }))).toBeVisible();
  expect(await units(bridge)).toHaveLength(4);
});

test('a copy that is damaged itself is not put back', async ({ bridge, page, traffic }) => {
  await shop(bridge, 3);
  await keepCopy(bridge, 1, '2026-03-02T16:40:00Z');
  await inspect(bridge, EARTHED_AMPLIFIER);
  const copy = join(dirname(fileOf(bridge)), 'snapshots', '000001-3.coldchassis');
  expect(existsSync(copy)).toBe(true);
  const bytes = readFileSync(copy);
  bytes.fill(0x5a, 2 * 4096, bytes.length - 4096);
  writeFileSync(copy, bytes);
  const walk = await open(page, traffic, '#/record/1');
  await walk.tap(say('record-back-now'));
  await expect(page.getByRole('alert').filter({ hasText: say('record-copy-damaged') })).toBeVisible();
  // The record itself is sound: no window says otherwise.
  await expect(walk.heading).toHaveText(say('record-back-title'));
  expect(await units(bridge)).toHaveLength(4);
});
