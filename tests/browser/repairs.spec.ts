/** Repairs by finger: a stack is put together, its figures are the core's, it is kept, chosen and taken back. */

import type { Locator, Page } from '@playwright/test';

import type { RemediesView } from '../../ui/src/lib/types/RemediesView';
import type { RepairView } from '../../ui/src/lib/types/RepairView';
import type { StandingView } from '../../ui/src/lib/types/StandingView';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { FLOATED_RADIO, TIED_RADIO } from './repair-screens';
import { settle } from './screen';
import { inspect, LEAKY_AMPLIFIER } from './units';
import { READING_MS, Walk } from './walk';
import { say, sayClass } from './words';

const STACK = ['polarised_plug', 'switch_to_hot_leg', 'reach_closed'] as const;
const nameOf = (step: string): string => say(`remedy-${step}`);

const rows = (page: Page): Locator => page.getByRole('listitem').filter({ has: page.getByRole('button', { name: say('repairs-out') }) });
const add = (walk: Walk, step: string) => walk.tap(say('repairs-add-what', { what: nameOf(step) }));

const whole = (page: Page): Locator =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: say('repairs-whole'), exact: true }) });

async function says(where: Locator, standing: StandingView): Promise<void> {
  await expect(where).toContainText(sayClass(standing.class));
  await expect(where).toContainText(standing.worst);
  await expect(where).toContainText(standing.as_found);
}

async function asked(bridge: Bridge, inspection: string, steps: readonly string[]): Promise<RepairView> {
  return bridge.call<RepairView>('remedy_stack', { inspection, stack: { steps } });
}

async function kept(bridge: Bridge, inspection: string): Promise<readonly string[]> {
  return (await bridge.call<RemediesView>('remedies', { inspection })).chosen;
}

test('a stack is put together step by step, chosen, found again and taken back', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const inspection = await inspect(bridge, TIED_RADIO);
  await page.goto(`/#/i/${inspection}/verdict`);
  await settle(page, traffic);
  await walk.tap(say('repairs-see'));
  await expect(walk.heading).toHaveText(say('repairs-title'));

  // Each by itself: what stands on a card is what the core says of a stack of it alone.
  const alone = await asked(bridge, inspection, ['isolating_transformer_inside']);
  const card = page.getByRole('article').filter({ hasText: nameOf('isolating_transformer_inside') });
  await says(card, alone.before);
  await says(card, alone.after);

  await add(walk, STACK[0]);
  await expect(walk.heading).toHaveText(say('repairs-stack'));
  await expect(rows(page)).toHaveCount(1);
  await add(walk, STACK[1]);
  await expect(rows(page)).toHaveCount(2);
  await add(walk, STACK[2]);
  await expect(rows(page)).toHaveCount(3);

  const stacked = await asked(bridge, inspection, STACK);
  expect(stacked.steps.map(({ after }) => after.class)).toEqual(['live', 'one_fault', 'two_faults']);
  for (const [place, step] of stacked.steps.entries()) {
    const row = rows(page).nth(place);
    await expect(row).toContainText(step.name);
    await says(row, step.after);
  }
  const together = whole(page);
  await says(together, stacked.before);
  await says(together, stacked.after);
  await expect(together).toContainText(say('repairs-minutes', { minutes: String(stacked.stack.minutes) }));
  expect(await kept(bridge, inspection)).toEqual([]);

  // Left before it is chosen, it is there when one comes back, whichever way.
  await walk.tap(say('verdict'));
  await walk.tap(say('repairs-see'));
  await walk.tap(say('repairs-stack-see', { count: 3 }));
  await expect(rows(page)).toHaveCount(3);
  await page.reload();
  await settle(page, traffic);
  await expect(rows(page)).toHaveCount(3);

  await walk.tap(say('repairs-choose'));
  await expect(page.getByText(say('repairs-chosen'))).toBeVisible();
  expect(await kept(bridge, inspection)).toEqual([...STACK]);
  await walk.tap(say('verdict'));
  await walk.tap(say('repairs-see'));
  await walk.tap(say('repairs-chosen-see', { count: 3 }));
  await expect(page.getByText(say('repairs-chosen'))).toBeVisible();

  await walk.tap(say('repairs-unchoose'));
  await expect(walk.named(say('repairs-choose'))).toBeVisible();
  expect(await kept(bridge, inspection)).toEqual([]);
  // The choice is gone, not the work: what was put together is still there.
  await expect(rows(page)).toHaveCount(3);
});

test('undo takes back a step of the stack first, then the choice, and never an answer meanwhile', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const inspection = await inspect(bridge, TIED_RADIO);
  const answers = async () =>
    (await bridge.call<{ findings: unknown[] }>('show_inspection', { inspection })).findings.length;
  const before = await answers();
  await page.goto(`/#/i/${inspection}/repairs/stack`);
  await settle(page, traffic);
  await add(walk, STACK[0]);
  await expect(rows(page)).toHaveCount(1);
  await add(walk, STACK[1]);
  await expect(rows(page)).toHaveCount(2);
  await walk.tap(say('repairs-out-what', { what: nameOf(STACK[0]) }));
  await expect(rows(page)).toHaveCount(1);
  await walk.tap(say('undo'));
  await expect(rows(page)).toHaveCount(2);
  await expect(rows(page).first()).toContainText(nameOf(STACK[0]));
  await walk.tap(say('repairs-choose'));
  await expect(page.getByText(say('repairs-chosen'))).toBeVisible();
  await walk.tap(say('undo'));
  await expect(walk.named(say('repairs-choose'))).toBeVisible();
  expect(await kept(bridge, inspection)).toEqual([]);
  await expect(rows(page)).toHaveCount(2);
  expect(await answers()).toBe(before);
});

/** Taps a button, and in the moment in which the steps change the one that is then first among its kind: a second tap
    that was meant for what was there before. */
async function tapTwice(page: Page, name: string): Promise<void> {
  await page.evaluate((label) => {
    const first = () => [...document.querySelectorAll('main button')].find((one) => one.textContent.trim() === label);
    const tap = () => first()?.dispatchEvent(new MouseEvent('click', { bubbles: true, detail: 1 }));
    const list = document.querySelector('main');
    const steps = () => document.querySelectorAll('main ol > li').length;
    const before = steps();
    const changed = new MutationObserver(() => {
      if (steps() === before) return;
      changed.disconnect();
      document.body.dataset['second'] = tap() === undefined ? 'missing' : 'tapped';
    });
    if (list) changed.observe(list, { childList: true, subtree: true });
    delete document.body.dataset['second'];
    tap();
    // A finger that trembles: the same button again, before anything has come of it.
    tap();
  }, name);
  await expect(page.locator('body[data-second=tapped]')).toBeAttached();
}

test('a double tap adds one step, and takes one out', async ({ bridge, page, traffic }) => {
  await page.goto(`/#/i/${await inspect(bridge, LEAKY_AMPLIFIER)}/repairs/stack`);
  await settle(page, traffic);
  for (const count of [1, 2, 3]) {
    await page.waitForTimeout(READING_MS);
    await tapTwice(page, say('repairs-add'));
    await settle(page, traffic);
    await expect(rows(page)).toHaveCount(count);
  }
  await page.waitForTimeout(READING_MS);
  await tapTwice(page, say('repairs-out'));
  await settle(page, traffic);
  await expect(rows(page)).toHaveCount(2);
  // One undo for one tap.
  await new Walk(page).tap(say('undo'));
  await expect(rows(page)).toHaveCount(3);
});

test('a step that is no longer offered is named with its reason, and can be taken out', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const inspection = await inspect(bridge, FLOATED_RADIO);
  await page.goto(`/#/i/${inspection}/repairs/stack`);
  await settle(page, traffic);
  await add(walk, 'network_class_y');
  await expect(rows(page)).toHaveCount(1);
  await add(walk, 'three_wire_cord');
  await expect(rows(page)).toHaveCount(2);
  await walk.tap(say('repairs-out-what', { what: nameOf('network_class_y') }));
  const refused = page.getByText(say('refusal-network_ordinary'));
  await expect(refused.first()).toBeVisible();
  // Nothing is said of where the unit would stand while that is open.
  await expect(whole(page)).toBeHidden();
  await walk.tap(say('undo'));
  await expect(rows(page)).toHaveCount(2);
  await expect(refused).toBeHidden();
  await walk.tap(say('repairs-out-what', { what: nameOf('network_class_y') }));
  await expect(refused.first()).toBeVisible();
  await walk.tap(say('repairs-out'));
  await expect(page.getByText(say('repairs-stack-empty'))).toBeVisible();
});

test('before and after show what the core says of the same position, in the grid and in the circuit', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const inspection = await inspect(bridge, LEAKY_AMPLIFIER);
  await bridge.call('choose_remedies', { inspection, stack: { steps: ['line_capacitor_removed'] } });
  await page.goto(`/#/i/${inspection}/repairs/stack`);
  await settle(page, traffic);
  await walk.tap(say('repairs-see-grid'));
  const { grid_before: before, grid_after: after } = await asked(bridge, inspection, ['line_capacitor_removed']);
  const side = (id: string) => page.locator('label').filter({ has: page.getByRole('radio', { name: new RegExp(`^${say(id)}`) }) });
  const row = after.rows.findIndex(({ fault }) => fault === 'insulation_breakdown');
  expect(row).toBeGreaterThan(0);
  for (const [column, { state }] of after.columns.entries()) {
    const cell = page.getByRole('region', { name: say('repairs-after'), exact: true }).locator('tbody').nth(row).locator('td button').nth(column);
    await cell.tap();
    const old = before.rows.find(({ fault }) => fault === 'insulation_breakdown')?.cells[before.columns.findIndex((one) => JSON.stringify(one.state) === JSON.stringify(state))];
    await expect(side('repairs-before')).toContainText(old?.figure ?? old?.word ?? '?');
    await expect(side('repairs-after')).toContainText(after.rows[row]?.cells[column]?.figure ?? '?');
  }
  await walk.tap(say('back'));
  await walk.tap(say('repairs-see-circuit'));
  await expect(side('repairs-before')).toContainText('mA');
  await walk.tap(say('repairs-worst-after'));
  const stack = { steps: ['line_capacitor_removed'] };
  const worst = await bridge.call<{ figure: string; state: object; faults: string[] }>('circuit_repaired', { inspection, stack, at: null });
  await expect(side('repairs-after')).toContainText(worst.figure);
  const was = await bridge.call<{ figure: string }>('circuit', { inspection, at: { ...worst.state, faults: worst.faults } });
  await expect(side('repairs-before')).toContainText(was.figure);
});

test('another limit sizes class Y anew, and a stack that was chosen keeps it', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, FLOATED_RADIO);
  const steps = ['network_class_y'];
  await bridge.call('choose_remedies', { inspection, stack: { steps } });
  await page.goto(`/#/i/${inspection}/repairs/parts`);
  await settle(page, traffic);
  const sizeAt = async (limit_ma: number) => {
    const { parts } = await bridge.call<RepairView>('remedy_stack', { inspection, stack: { steps, limit_ma } });
    return parts.find(({ kind }) => kind === 'network_class_y')?.size ?? '';
  };
  const [low, high] = [await sizeAt(0.25), await sizeAt(0.5)];
  expect(low).not.toBe(high);
  await expect(page.getByText(low, { exact: true })).toBeVisible();
  await page.getByRole('radio', { name: new RegExp(`^${say('repairs-limit-of', { limit: '0.5' })}`) }).tap();
  await expect(page.getByText(high, { exact: true })).toBeVisible();
  await expect.poll(async () => (await bridge.call<RemediesView>('remedies', { inspection })).limit_ma).toBe(0.5);
  expect(await kept(bridge, inspection)).toEqual(steps);
});
