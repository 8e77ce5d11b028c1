/** Tests on the bench by finger: each step is kept when it is given, and the dangerous ones end by themselves. */

import type { Page } from '@playwright/test';

import { expect, test } from './check';
import { settle } from './screen';
import { CORD_SEEN, HOT_CHASSIS, inspect, SHELF_RADIO, TESTABLE, type Unit } from './units';
import { Walk } from './walk';
import { say } from './words';

const field = (page: Page, id: string) => page.getByLabel(say(id), { exact: true });

async function enter(page: Page, id: string, text: string): Promise<void> {
  await field(page, id).fill(text);
  await new Walk(page).tap(say('question-keep'));
}

const GFCI: Unit = { ...TESTABLE, live: { qualified: true, protection: 'gfci', earth_volts: 119 } };
const step = (page: Page, position: string) =>
  page.getByRole('heading', { level: 2, name: say(`touch-position-${position}`) });

test('the live touch test goes on step by step, and what is kept is there after a new start', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await page.goto(`/#/i/${await inspect(bridge, TESTABLE)}/touch`);
  await settle(page, traffic);
  await walk.tap(say('touch-i-am-qualified'));
  await walk.tap(`${say('touch-protection-gfci')} ${say('touch-protection-gfci-says')}`);
  await enter(page, 'touch-earth-volts', '2');
  await expect(page.getByText(say('touch-earth-unproven', { volts: '120\u00a0V' }))).toBeVisible();
  await enter(page, 'touch-earth-volts', '118');
  await expect(step(page, 'first_off')).toBeVisible();
  await enter(page, 'touch-check-volts', '1.3');
  await enter(page, 'touch-network-volts', '0,03');
  await expect(page.getByText('0.03\u00a0V', { exact: true })).toBeVisible();
  await expect(step(page, 'first_on')).toBeVisible();
  await enter(page, 'touch-check-volts', '1.3');
  await expect(field(page, 'touch-network-volts')).toBeVisible();
  await page.reload();
  await settle(page, traffic);
  // Whoever comes back says it again, and the meter alone comes first again: the plug may be another way.
  await expect(field(page, 'touch-network-volts')).toBeHidden();
  await walk.tap(say('touch-i-am-qualified'));
  await enter(page, 'touch-earth-volts', '118');
  await expect(page.getByText('0.03\u00a0V', { exact: true })).toBeVisible();
  await expect(step(page, 'first_on')).toBeVisible();
  await expect(field(page, 'touch-check-volts')).toBeVisible();
  // Another piece of metal begins with the meter alone, and can be left.
  await walk.tap(say('touch-again-what', { position: say('touch-position-first_off') }));
  await expect(step(page, 'first_off')).toBeVisible();
  await expect(field(page, 'touch-check-volts')).toBeVisible();
  await walk.tap(say('readings-leave'));
  await expect(step(page, 'first_on')).toBeVisible();
});

test('above thirty volts low impedance is tried, and where it shows the line the network is not asked for', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await page.goto(`/#/i/${await inspect(bridge, GFCI)}/touch`);
  await settle(page, traffic);
  await walk.tap(say('touch-i-am-qualified'));
  await enter(page, 'touch-earth-volts', '119');
  await enter(page, 'touch-check-volts', '31');
  await expect(page.getByText(say('touch-stopped', { stop: '30\u00a0V' }))).toBeVisible();
  // Taken back, the meter alone is asked for anew: the network is not next.
  await walk.tap(say('undo'));
  await expect(field(page, 'touch-check-volts')).toBeVisible();
  await enter(page, 'touch-check-volts', '31');
  await enter(page, 'touch-low-volts', '31');
  await expect(page.getByText(say('touch-stopped-low', { stop: '30\u00a0V' }))).toBeVisible();
  await expect(walk.named(say('touch-other-protection'))).toBeHidden();
  await expect(field(page, 'touch-low-volts')).toBeHidden();
  await expect(field(page, 'touch-network-volts')).toBeHidden();
  await walk.tap(say('verdict'));
  await expect(walk.tag).toContainText(say('permission-touch_stopped'));
});

test('where the protection trips the test ends, and the tag forbids', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await page.goto(`/#/i/${await inspect(bridge, GFCI)}/touch`);
  await settle(page, traffic);
  await walk.tap(say('touch-i-am-qualified'));
  await enter(page, 'touch-earth-volts', '119');
  await walk.tap(say('touch-it-tripped'));
  await expect(page.getByText(say('touch-stopped-tripped'))).toBeVisible();
  await expect(field(page, 'touch-check-volts')).toBeHidden();
  await walk.tap(say('verdict'));
  await expect(walk.tag).toContainText(say('permission-touch_tripped'));
});

test('a word in place of a figure is refused beside its field, and nothing is kept', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, GFCI);
  await page.goto(`/#/i/${inspection}/touch`);
  await settle(page, traffic);
  await new Walk(page).tap(say('touch-i-am-qualified'));
  await enter(page, 'touch-earth-volts', '119');
  for (const text of ['much', '-1', '1001', '']) {
    await enter(page, 'touch-check-volts', text);
    await expect(page.getByText(say('bench-figure-wrong', { most: '1000' }))).toBeVisible();
  }
  const { findings } = await bridge.call<{ findings: { path: string }[] }>('show_inspection', { inspection });
  expect(findings.some(({ path }) => path.includes('check_'))).toBe(false);
});

for (const [unit, why] of [
  [HOT_CHASSIS, 'touch-refused-live'],
  [SHELF_RADIO, 'touch-refused-may_be_live'],
] as const) {
  test(`${unit.name} is not plugged in for a test`, async ({ bridge, page, traffic }) => {
    await page.goto(`/#/i/${await inspect(bridge, unit)}/touch`);
    await settle(page, traffic);
    await expect(page.getByText(say(why))).toBeVisible();
    await expect(new Walk(page).named(say('touch-i-am-qualified'))).toBeHidden();
  });
}

test('what is to be looked at first leads there and back', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await page.goto(`/#/i/${await inspect(bridge, CORD_SEEN)}/touch`);
  await settle(page, traffic);
  await walk.tap(say('readings-answer'));
  await expect(page).toHaveURL(/values\.rated$/);
  await walk.tap(say('answer-cant_tell'));
  await expect(walk.named(say('touch-i-am-qualified'))).toBeVisible();
});

test('an insulation reading is kept, told and withdrawn', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await page.goto(`/#/i/${await inspect(bridge, TESTABLE)}/insulation`);
  await settle(page, traffic);
  await enter(page, 'insulation-value', '0.4');
  await expect(page.getByText(say('insulation-means-rejected'))).toBeVisible();
  await walk.tap(say('readings-withdraw'));
  await expect(field(page, 'insulation-value')).toBeVisible();
  await walk.tap(say('insulation-ol'));
  await expect(page.getByText(say('insulation-over-range'))).toBeVisible();
});

test('a stored charge is worked out while it is typed, and outlives a look elsewhere', async ({ page, traffic }) => {
  await page.goto('/#/charge');
  await settle(page, traffic);
  await field(page, 'charge-farads').fill('50u');
  await field(page, 'charge-volts').fill('450');
  await expect(page.getByText(say('charge-never')).first()).toBeVisible();
  await field(page, 'charge-bleed').fill('220k');
  await expect(page.getByText('22.2\u00a0s to 39.9\u00a0s')).toBeVisible();
  await page.goto('/#/settings');
  await settle(page, traffic);
  await page.goBack();
  await expect(field(page, 'charge-volts')).toHaveValue('450');
  await field(page, 'charge-volts').fill('0');
  await expect(page.getByText(say('charge-volts-wrong'))).toBeVisible();
  await expect(page.getByText('22.2\u00a0s to 39.9\u00a0s')).toBeHidden();
});
