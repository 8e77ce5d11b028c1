/** Where a unit will be plugged in, and the proof of its repair, by finger: what is given is kept at once, what is
    refused says which field, and nothing is ready before every line is passed. */

import type { Page } from '@playwright/test';

import type { FeedsView } from '../../ui/src/lib/types/FeedsView';
import type { ProofLine } from '../../ui/src/lib/types/ProofLine';
import type { ProofView } from '../../ui/src/lib/types/ProofView';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { repaired, SOUND } from './proofs';
import { settle } from './screen';
import type { Traffic } from './traffic';
import { HOT_CHASSIS, inspect, LEAKY_AMPLIFIER } from './units';
import { Walk } from './walk';
import { say } from './words';

const CORD = { unit: LEAKY_AMPLIFIER, stack: { steps: ['three_wire_cord' as const] } };
const field = (page: Page, id: string) => page.getByLabel(say(id), { exact: true });
const next = (line: ProofLine) => say('proving-next', { line: say(`proof-${line}`) });
const row = (page: Page, line: ProofLine) => page.getByRole('button', { name: new RegExp(`^${say(`proof-${line}`)}`) });

async function open(page: Page, traffic: Traffic, inspection: string, place: string): Promise<Walk> {
  await page.goto(`/#/i/${inspection}/${place}`);
  await settle(page, traffic);
  return new Walk(page);
}

async function enter(walk: Walk, unit: string, text: string): Promise<void> {
  await field(walk.page, `proving-${unit}`).fill(text);
  await walk.tap(say('question-keep'));
}

async function kept(bridge: Bridge, inspection: string, line: ProofLine): Promise<unknown> {
  const { lines } = await bridge.call<ProofView>('proof', { inspection });
  return lines.find(({ id }) => id === line)?.entry;
}

test('a proof is gone through line by line, and the unit is ready at its end', async ({ bridge, page, traffic }) => {
  test.setTimeout(120_000);
  const inspection = await repaired(bridge, CORD);
  const walk = await open(page, traffic, inspection, 'proof');
  await expect(page.getByText(say('proof-progress', { open: '8', passed: '0', failed: '0' }))).toBeVisible();
  await walk.tap(next('earth_bond'));
  await expect(walk.heading).toHaveText(say('proof-earth_bond'));

  // What is no number never reaches the core; what the core does not take is named, and stays as it was written.
  await enter(walk, 'ohms', 'none');
  await expect(field(page, 'proving-ohms')).toHaveAttribute('aria-invalid', 'true');
  await enter(walk, 'ohms', '9000000M');
  await expect(page.getByRole('alert').filter({ hasText: say('field-read') })).toBeVisible();
  await expect(field(page, 'proving-ohms')).toHaveAttribute('aria-invalid', 'true');
  await expect(field(page, 'proving-ohms')).toHaveValue('9000000M');
  expect(await kept(bridge, inspection, 'earth_bond')).toBeNull();

  await enter(walk, 'ohms', '0.08');
  await expect(page.getByText(say('proof-mark-passed'))).toBeVisible();
  expect(await kept(bridge, inspection, 'earth_bond')).toEqual({ read: 0.08 });
  await walk.tap(next('cord_pull'));
  await walk.tap(say('proving-holds'));
  await walk.tap(next('hot_blade_open_off'));
  await walk.tap(say('insulation-ol'));
  await walk.tap(next('insulation'));
  await enter(walk, 'megohms', '20');
  await walk.tap(next('outlet_proven'));
  // Live parts: only whoever says that they may.
  await expect(walk.named(say('proving-holds'))).toBeHidden();
  await walk.tap(say('proving-i-may-wire'));
  await walk.tap(say('proving-holds'));
  await walk.tap(next('chassis_volts_loaded'));
  await expect(field(page, 'proving-volts')).toBeHidden();
  await walk.tap(say('touch-i-am-qualified'));
  for (const [place, position] of (['first_off', 'first_on', 'second_off', 'second_on'] as const).entries()) {
    await expect(page.getByRole('heading', { level: 2 })).toHaveText(say(`touch-position-${position}`));
    await enter(walk, 'volts', `0.0${place + 1}`);
  }
  await expect(page.getByText(say('proof-mark-passed'))).toBeVisible();
  expect(await kept(bridge, inspection, 'chassis_volts_loaded')).toEqual({
    positions: { first_off: 0.01, first_on: 0.02, second_off: 0.03, second_on: 0.04 },
  });
  await walk.tap(next('leakage_first'));
  await enter(walk, 'milliamps', '0,02');
  await walk.tap(next('leakage_second'));
  await enter(walk, 'milliamps', '0.03');
  await walk.tap(say('proving-to-plan'));

  await expect(page.getByText(say('proof-all-passed'))).toBeVisible();
  await walk.tap(say('proving-ready'));
  await expect(page.getByText(say('proving-is-ready'), { exact: true })).toBeVisible();
  // Asked again at the next visit.
  await page.reload();
  await settle(page, traffic);
  await expect(page.getByText(say('proving-is-ready'), { exact: true })).toBeVisible();
  await row(page, 'leakage_first').tap();
  await walk.tap(say('readings-again'));
  await expect(walk.named(say('touch-i-am-qualified'))).toBeVisible();
});

test('a line that failed keeps the plug out and the unit from being ready', async ({ bridge, page, traffic }) => {
  const inspection = await repaired(bridge, { ...CORD, entries: SOUND.slice(0, 3) });
  const walk = await open(page, traffic, inspection, 'proof/insulation');
  await enter(walk, 'megohms', '0.3');
  await expect(page.getByText(say('proving-failed-insulation'))).toBeVisible();
  await walk.tap(say('proving-to-plan'));
  await walk.tap(say('proving-ready'));
  await expect(page.getByRole('alert').filter({ hasText: say('proof-insulation') }).first()).toBeVisible();
  expect((await bridge.call<ProofView>('proof', { inspection })).marked_ready).toBe(false);
  await row(page, 'chassis_volts_loaded').tap();
  await expect(page.getByText(say('proving-held', { line: say('proof-insulation') }))).toBeVisible();
  await expect(walk.named(say('touch-i-am-qualified'))).toBeHidden();
  // From there to what has to be mended, and once it is, on.
  await row(page, 'insulation').tap();
  await walk.tap(say('readings-again'));
  await enter(walk, 'megohms', '2.2');
  await expect(page.getByText(say('proof-mark-passed'))).toBeVisible();
  await walk.tap(next('outlet_proven'));
});

test('what was withdrawn is open again, and comes back by undo', async ({ bridge, page, traffic }) => {
  const inspection = await repaired(bridge, { ...CORD, entries: SOUND, ready: true });
  const walk = await open(page, traffic, inspection, 'proof/cord_pull');
  await walk.tap(say('readings-withdraw'));
  await expect(walk.named(say('proving-holds'))).toBeVisible();
  expect(await kept(bridge, inspection, 'cord_pull')).toBeNull();
  await page.goBack();
  await page.goto(`/#/i/${inspection}/proof`);
  await expect(page.getByText(say('proof-progress', { open: '1', passed: '7', failed: '0' }))).toBeVisible();
  await expect(page.getByText(say('proving-is-ready'), { exact: true })).toBeHidden();
  await walk.tap(say('undo'));
  await expect(page.getByText(say('proof-all-passed'))).toBeVisible();
  expect(await kept(bridge, inspection, 'cord_pull')).toEqual({ holds: true });
  await expect(page.getByText(say('proving-is-ready'), { exact: true })).toBeVisible();
  await walk.tap(say('proving-ready-back'));
  await expect(walk.named(say('proving-ready'))).toBeVisible();
});

test('the first reading above the limit is the one that is read again', async ({ bridge, page, traffic }) => {
  const inspection = await repaired(bridge, { ...CORD, entries: SOUND.slice(0, 5) });
  const walk = await open(page, traffic, inspection, 'proof/chassis_volts_loaded');
  await walk.tap(say('touch-i-am-qualified'));
  await enter(walk, 'volts', '0.01');
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(say('touch-position-first_on'));
  await enter(walk, 'volts', '9');
  await expect(page.getByText(say('proving-failed-chassis_volts_loaded'))).toBeVisible();
  await walk.tap(say('readings-again'));
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(say('touch-position-first_on'));
  await enter(walk, 'volts', '0.02');
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(say('touch-position-second_off'));
  expect(await kept(bridge, inspection, 'chassis_volts_loaded')).toEqual({ positions: { first_off: 0.01, first_on: 0.02 } });
});

test('a line leads back to the plan, and the plan to the verdict', async ({ bridge, page, traffic }) => {
  const inspection = await repaired(bridge, CORD);
  const walk = await open(page, traffic, inspection, 'proof/cord_pull');
  await walk.tap(say('back'));
  await expect.poll(() => walk.address()).toBe(`#/i/${inspection}/proof`);
  await walk.tap(say('back'));
  await expect.poll(() => walk.address()).toBe(`#/i/${inspection}/verdict`);
});

test('without a repair there is nothing to prove', async ({ bridge, page, traffic }) => {
  await open(page, traffic, await inspect(bridge, LEAKY_AMPLIFIER), 'proof');
  await expect(page.getByText(say('proof-nothing-chosen'))).toBeVisible();
  await expect(page.getByText(say('proving-ready'))).toBeHidden();
});

test('the outlet is chosen at once, taken back, and its volts are checked by the core', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, HOT_CHASSIS);
  const walk = await open(page, traffic, inspection, 'verdict');
  await walk.tap(say('outlet-see'));
  const card = (feed: string) => page.getByRole('button', { name: new RegExp(`^${say(`feed-${feed}`)}`) });
  const chosen = async () => {
    const { feeds, input_volts } = await bridge.call<FeedsView>('feeds', { inspection });
    return [feeds.find((feed) => feed.chosen)?.id, input_volts];
  };
  await expect(card('direct')).toHaveAttribute('aria-pressed', 'true');
  await page.waitForTimeout(500);
  await card('isolated').tap();
  await expect(card('isolated')).toHaveAttribute('aria-pressed', 'true');
  expect(await chosen()).toEqual(['isolated', 240]);
  await walk.tap(say('undo'));
  await expect(card('direct')).toHaveAttribute('aria-pressed', 'true');
  await card('step_down_auto').tap();
  await field(page, 'field-input_volts').fill('20');
  await walk.tap(say('question-keep'));
  await expect(page.getByRole('alert').filter({ hasText: say('field-input_volts') })).toBeVisible();
  await expect(field(page, 'field-input_volts')).toHaveValue('20');
  await expect(field(page, 'field-input_volts')).toHaveAttribute('aria-invalid', 'true');
  expect(await chosen()).toEqual(['step_down_auto', 240]);
  await field(page, 'field-input_volts').fill('230');
  await walk.tap(say('question-keep'));
  await expect(page.getByText(say('feed-input', { volts: '230\u00a0V' }))).toBeVisible();
  await expect(page.getByRole('alert').filter({ hasText: say('field-input_volts') })).toBeHidden();
  expect(await chosen()).toEqual(['step_down_auto', 230]);
});
