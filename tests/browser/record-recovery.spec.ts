/** A record that cannot be used, by finger: the way back is shown in place of everything else. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import type { Page } from '@playwright/test';

import type { UnitView } from '../../ui/src/lib/types/UnitView';
import { Bridge } from './bridge';
import { expect, test } from './check';
import { damage, fileOf, keepCopy, keptBeside, refuse, shop } from './records';
import { settle } from './screen';
import type { Traffic } from './traffic';
import { inspect } from './units';
import { READING_MS, Walk } from './walk';
import { say } from './words';

test.use({ inFile: true });

/** In the middle of a record of many units, so that its first pages, which are read to open it, stay sound: the
    bridge does not start with a record that does not open. */
const STRUCK = 'Zither amplifier';

/** Units in a copy and two after it; then pages of the record are written over. Gives a bridge over that. */
async function struck(bridge: Bridge, copies: boolean): Promise<Bridge> {
  // Each change goes to the disk, which may be busy.
  test.slow();
  await shop(bridge, 12);
  await inspect(bridge, { name: STRUCK });
  await shop(bridge, 6, 'Amplifier');
  await keepCopy(bridge, 1, '2026-03-14T09:26:00Z', copies ? '' : '-spoilt-name-of-none');
  await shop(bridge, 2, 'Late radio');
  // Once more, so that nothing of what came later is in the log beside the record.
  await bridge.call('restore_snapshot', { number: null, readable: true });
  await bridge.stop();
  expect(damage(fileOf(bridge), STRUCK)).toBeGreaterThan(0);
  return Bridge.start(fileOf(bridge));
}

async function open(page: Page, traffic: Traffic, bridge: Bridge, hash: string): Promise<Walk> {
  await page.goto(`${bridge.address}/${hash}`);
  await settle(page, traffic);
  return new Walk(page);
}

test('a damaged record is put together again from its last copy and what can be read', async ({ bridge, page, traffic }) => {
  const again = await struck(bridge, true);
  const file = readFileSync(fileOf(again));
  const walk = await open(page, traffic, again, '#/settings');
  await expect(walk.heading).toHaveText(say('recovery-title'));
  await expect(page.getByText('14 Mar 2026, 09:26')).toBeVisible();
  await expect(page.getByText(say('record-choose-inspections', { count: 19 }))).toBeVisible();

  // Whoever helps after a shock needs no record, and comes back to where they were.
  await walk.named(say('shocked-button-long')).tap();
  await expect(walk.heading).toHaveText(say('shocked-title'));
  await page.goBack();
  await expect(walk.heading).toHaveText(say('recovery-title'));

  // What can be read is saved first; asked, and thought better of: nothing is written to the file.
  await walk.tap(say('recovery-save-now'));
  await expect(page.getByText(say('record-given'), { exact: true })).toBeVisible();
  await walk.tap(say('recovery-main'));
  await expect(walk.heading).toHaveText(say('recovery-ask-copy', { when: '14 Mar 2026, 09:26' }));
  await walk.tap(say('recovery-leave'));
  await expect(walk.heading).toHaveText(say('recovery-title'));
  expect(readFileSync(fileOf(again)).equals(file)).toBe(true);
  // It was put together anew before it was damaged.
  expect(keptBeside(again)).toEqual(['000001']);

  await walk.tap(say('recovery-main'));
  const answer = page.waitForResponse('**/api/restore_snapshot');
  await walk.tap(say('recovery-do-copy'));
  const { ok } = (await (await answer).json()) as { ok: { says: string[]; added: number } };
  await expect(walk.heading).toHaveText(say('recovery-done'));
  for (const line of ok.says) await expect(page.getByText(line)).toBeVisible();
  expect(ok.added).toBeGreaterThan(0);
  expect(keptBeside(again)).toEqual(['000001', '000002']);
  expect(readFileSync(join(fileOf(again), '..', 'damaged', '000002', 'damaged.coldchassis')).equals(file)).toBe(true);

  await walk.tap(say('to-units'));
  await expect(walk.heading).toHaveText(say('units'));
  await expect(page.getByRole('button', { name: 'Late radio 2' })).toBeVisible();
  const names = (await again.call<UnitView[]>('list_units', { text: null })).map((unit) => unit.name);
  expect(names).toHaveLength(21);
  expect(names).toContain(STRUCK);
  await again.stop();
});

test('without a copy a new record is begun from what can be read', async ({ bridge, page, traffic }) => {
  const again = await struck(bridge, false);
  const walk = await open(page, traffic, again, '#/');
  await expect(page.getByText(say('recovery-none'))).toBeVisible();
  await walk.tap(say('recovery-main-none'));
  await expect(walk.heading).toHaveText(say('recovery-ask-new'));
  await expect(page.getByText(say('recovery-would-add'))).toBeVisible();
  await walk.tap(say('recovery-do-new'));
  await expect(walk.heading).toHaveText(say('recovery-done'));
  await walk.tap(say('to-units'));
  await expect(page.getByRole('button', { name: 'Late radio 2' })).toBeVisible();
  await again.stop();
});

test('a double tap on the way back does no more than ask', async ({ bridge, page, traffic }) => {
  await shop(bridge, 2);
  await keepCopy(bridge, 1, '2026-03-14T09:26:00Z');
  await refuse(page, 'list_units', 'damaged', say('error-damaged', { detail: 'a page' }));
  const walk = await open(page, traffic, bridge, '#/');
  await page.waitForTimeout(READING_MS);
  // In the moment in which the question appears, however slow the page is: a finger's second tap.
  await page.evaluate(([first, second]) => {
    const tap = (label: string | undefined) =>
      [...document.querySelectorAll('button')]
        .find((one) => one.textContent.trim() === label)
        ?.dispatchEvent(new MouseEvent('click', { bubbles: true, detail: 1 }));
    const changed = new MutationObserver(() => {
      if (tap(second) !== undefined) document.body.dataset['second'] = 'tapped';
    });
    changed.observe(document.body, { childList: true, subtree: true });
    tap(first);
  }, [say('recovery-main'), say('recovery-do-copy')]);
  await expect(walk.heading).toHaveText(say('recovery-ask-copy', { when: '14 Mar 2026, 09:26' }));
  await expect(page.locator('body[data-second=tapped]')).toBeAttached();
  await settle(page, traffic);
  expect(traffic.asked.filter((address) => address.endsWith('restore_snapshot'))).toEqual([]);
});

test('a record that is found damaged in the middle of the work is said at once', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { name: 'Radio' });
  const walk = await open(page, traffic, bridge, `#/i/${inspection}/q/plug`);
  await refuse(page, 'answer', 'damaged', say('error-damaged', { detail: 'a page' }));
  await walk.tap(say('answer-plug-two_equal_blades'));
  await expect(walk.heading).toHaveText(say('recovery-title'));
  await expect(page.getByText(say('recovery-none'))).toBeVisible();
});

test('where copies cannot be looked for that is said, and what can be read is saved all the same', async ({ bridge, page, traffic }) => {
  await shop(bridge, 2);
  await keepCopy(bridge, 1, '2026-03-14T09:26:00Z');
  await refuse(page, 'list_units', 'damaged', say('error-damaged', { detail: 'a page' }));
  const barred = say('error-storage', { detail: 'input/output error' });
  await refuse(page, 'list_snapshots', 'storage', barred);
  const walk = await open(page, traffic, bridge, '#/');
  await expect(page.getByRole('alert').filter({ hasText: barred })).toBeVisible();
  await walk.tap(say('recovery-save-now'));
  await expect(page.getByText(say('record-given'), { exact: true })).toBeVisible();
  await page.unroute('**/api/list_snapshots');
  await walk.tap(say('recovery-again'));
  await expect(page.getByText('14 Mar 2026, 09:26')).toBeVisible();
});

test('what is saved rests on the newest copy that is sound, and says so', async ({ bridge, page, traffic }) => {
  await shop(bridge, 2);
  await keepCopy(bridge, 1, '2026-03-02T16:40:00Z');
  await keepCopy(bridge, 2, '2026-03-14T09:26:00Z');
  const newest = join(fileOf(bridge), '..', 'snapshots', '000002-2.coldchassis');
  writeFileSync(newest, 'a letter');
  await refuse(page, 'list_units', 'damaged', say('error-damaged', { detail: 'a page' }));
  const walk = await open(page, traffic, bridge, '#/');
  await walk.tap(say('recovery-save-now'));
  await expect(page.getByText(say('bundle-rests-on-copy', { time: '2026-03-02 16:40' }))).toBeVisible();
  writeFileSync(join(newest, '..', '000001-2.coldchassis'), 'a letter');
  await walk.tap(say('recovery-save-now'));
  await expect(page.getByText(say('bundle-rests-on-file'))).toBeVisible();
});

test('what cannot be put in place is said, and can be tried again', async ({ bridge, page, traffic }) => {
  await shop(bridge, 2);
  await keepCopy(bridge, 1, '2026-03-14T09:26:00Z');
  await refuse(page, 'list_units', 'damaged', say('error-damaged', { detail: 'a page' }));
  await refuse(page, 'restore_snapshot', 'storage', say('error-no-room'));
  const walk = await open(page, traffic, bridge, '#/');
  await walk.tap(say('recovery-main'));
  await walk.tap(say('recovery-do-copy'));
  await expect(page.getByRole('alert').filter({ hasText: say('error-no-room') })).toBeVisible();
  await page.unroute('**/api/restore_snapshot');
  await page.unroute('**/api/list_units');
  await walk.tap(say('recovery-do-copy'));
  await expect(walk.heading).toHaveText(say('recovery-done'));
  expect(keptBeside(bridge)).toEqual(['000001']);
});

test('no copy is offered for a record of a newer version', async ({ bridge, page, traffic }) => {
  await shop(bridge, 2);
  await keepCopy(bridge, 1, '2026-03-14T09:26:00Z');
  const sentence = say('error-newer-file', { found: '9', known: '3' });
  await refuse(page, 'list_units', 'newer_file', sentence);
  const walk = await open(page, traffic, bridge, '#/');
  await expect(walk.heading).toHaveText(say('recovery-newer-title'));
  await expect(page.getByText(sentence)).toBeVisible();
  // Nothing can be tapped but the button for a shock.
  await expect(page.getByRole('button')).toHaveCount(1);
});

test('a file that is no record can be left, saved from, or kept beside a new record', async ({ bridge, page, traffic }) => {
  await refuse(page, 'list_units', 'not_our_file', say('error-not-our-file'));
  const walk = await open(page, traffic, bridge, '#/');
  await expect(walk.heading).toHaveText(say('recovery-foreign-title'));
  await expect(walk.named(say('recovery-save-now'))).toBeEnabled();
  await walk.tap(say('recovery-main-none'));
  await expect(page.getByText(say('recovery-would-keep'))).toBeVisible();
  await walk.tap(say('recovery-leave'));
  await expect(walk.heading).toHaveText(say('recovery-foreign-title'));
  expect(traffic.asked.filter((address) => address.endsWith('restore_snapshot'))).toEqual([]);
});
