/** The record as a whole, and what is shown where it cannot be used. */

import { expect, type Page } from '@playwright/test';

import type { Code } from '../../ui/src/lib/types/Code';
import type { Bridge } from './bridge';
import { at, type Screen } from './reached';
import { bundleFromOther, keepCopy, refuse, shop } from './records';
import { EARTHED_AMPLIFIER, HOT_CHASSIS, inspect, LEAKY_AMPLIFIER, SHELF_RADIO } from './units';
import type { Walk } from './walk';
import { say } from './words';

/** Three copies, one of them from before an update, then two units more. */
async function copied(bridge: Bridge): Promise<void> {
  await shop(bridge, 10);
  await keepCopy(bridge, 1, '2026-03-02T16:40:00Z');
  await shop(bridge, 2);
  await keepCopy(bridge, 2, '2026-03-09T08:05:00Z', '-before-2');
  await shop(bridge, 8);
  await keepCopy(bridge, 3, '2026-03-14T09:26:00Z');
  for (const unit of [SHELF_RADIO, HOT_CHASSIS]) await inspect(bridge, unit);
}

const withCopies = (hash: string) => async (bridge: Bridge) => {
  await copied(bridge);
  return hash;
};

const withBundle = (share: number) => async (bridge: Bridge) => {
  await shop(bridge, 1);
  await bundleFromOther(bridge, [EARTHED_AMPLIFIER, LEAKY_AMPLIFIER], share);
  return '#/record';
};

const tapped = (name: string, then: (page: Page) => Promise<void>) => async (walk: Walk, page: Page) => {
  await walk.tap(say(name));
  await then(page);
};

const told = (text: string) => (page: Page) => expect(page.getByText(text, { exact: true })).toBeVisible();
const alarmed = (page: Page) => expect(page.getByRole('alert').filter({ hasText: /./ }).first()).toBeVisible();

/** The classes of what came in are worked out beside the window, and come a moment later. */
async function takenIn(page: Page): Promise<void> {
  await told(say('bundle-taken-in', { units: 2, photos: 0 }))(page);
  for (const short of ['class-leaky-short', 'class-two_faults-short']) await told(say(short))(page);
}

async function putBack(walk: Walk, page: Page): Promise<void> {
  await walk.tap(say('record-back-now'));
  await expect(walk.heading).toHaveText(say('record-title'));
  await told(say('record-back-done'))(page);
}

const WHOLE: Screen[] = [
  { name: 'record', reach: withCopies('#/record'), inFile: true, long: true },
  { name: 'record-empty', reach: at('#/record'), inFile: true, long: true },
  { name: 'record-wide', reach: withCopies('#/record'), inFile: true, width: 1280 },
  {
    name: 'record-given',
    reach: withCopies('#/record'),
    act: tapped('record-give-now', told(say('record-given'))),
    // The day, and a length that hangs on times.
    varies: (page) => page.locator('.file'),
    inFile: true,
  },
  {
    name: 'record-taken',
    reach: withBundle(1),
    act: tapped('record-take-now', takenIn),
    inFile: true,
    long: true,
  },
  { name: 'record-refused', reach: withBundle(0.7), act: tapped('record-take-now', alarmed), inFile: true },
  { name: 'record-put-back', reach: withCopies('#/record/1'), inFile: true, long: true },
  { name: 'record-put-back-gone', reach: withCopies('#/record/9'), inFile: true },
  { name: 'record-put-back-done', reach: withCopies('#/record/1'), act: putBack, inFile: true, long: true },
];

const DAMAGED = say('error-damaged', { detail: 'database disk image is malformed' });

/** The bridge does not start with a record that does not open, so the refusal is put in its way here;
    record-recovery.spec.ts goes through with a record that is damaged indeed. */
const shut =
  (code: Code, sentence: string, then: (walk: Walk, page: Page) => Promise<void> = () => Promise.resolve()) =>
  async (walk: Walk, page: Page) => {
    await refuse(page, 'list_units', code, sentence);
    const title = { newer_file: 'recovery-newer-title', not_our_file: 'recovery-foreign-title' }[code as string];
    await page.reload();
    await expect(walk.heading).toHaveText(say(title ?? 'recovery-title'));
    await then(walk, page);
  };

async function restored(walk: Walk, page: Page): Promise<void> {
  await walk.tap(say('recovery-main'));
  await page.unroute('**/api/list_units');
  await walk.tap(say('recovery-do-copy'));
  await expect(walk.heading).toHaveText(say('recovery-done'));
}

async function unlisted(_: Walk, page: Page): Promise<void> {
  await refuse(page, 'list_snapshots', 'storage', say('error-storage', { detail: 'input/output error' }));
  await page.reload();
  await alarmed(page);
}

const SHUT: Screen[] = [
  { name: 'recovery', reach: withCopies('#/'), act: shut('damaged', DAMAGED), inFile: true, long: true },
  {
    name: 'recovery-none',
    reach: at('#/'),
    act: shut('damaged', DAMAGED),
    inFile: true,
    long: true,
  },
  { name: 'recovery-unlisted', reach: at('#/'), act: shut('damaged', DAMAGED, unlisted), inFile: true },
  {
    name: 'recovery-saved',
    reach: withCopies('#/'),
    act: shut('damaged', DAMAGED, tapped('recovery-save-now', told(say('record-given')))),
    varies: (page) => page.locator('.file'),
    inFile: true,
    long: true,
  },
  {
    name: 'recovery-asked',
    reach: withCopies('#/'),
    act: shut('damaged', DAMAGED, (walk) => walk.tap(say('recovery-main'))),
    inFile: true,
    long: true,
  },
  {
    name: 'recovery-asked-new',
    reach: at('#/'),
    act: shut('damaged', DAMAGED, async (walk, page) => {
      await walk.tap(say('recovery-main-none'));
      await page.getByRole('checkbox').tap();
    }),
    inFile: true,
  },
  { name: 'recovery-done', reach: withCopies('#/'), act: shut('damaged', DAMAGED, restored), inFile: true },
  {
    name: 'recovery-newer',
    reach: at('#/'),
    act: shut('newer_file', say('error-newer-file', { found: '9', known: '3' })),
    inFile: true,
  },
  {
    name: 'recovery-foreign',
    reach: at('#/'),
    act: shut('not_our_file', say('error-not-our-file')),
    inFile: true,
    long: true,
  },
];

export const RECORDS: Screen[] = [...WHOLE, ...SHUT];
