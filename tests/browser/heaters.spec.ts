/** The tube list: typed with one thumb, kept with each change, and read for what its heaters say. */

import type { Locator, Page } from '@playwright/test';

import type { Bridge } from './bridge';
import { expect, test } from './check';
import { addStyle, settle } from './screen';
import { inspect, type Unit } from './units';
import { READING_MS, Walk } from './walk';
import { say } from './words';

const EMPTY: Unit = { name: 'Shelf radio', access: ['outside', 'cover_off'] };
const FIVE = ['12SA7', '12SK7', '12SQ7', '50L6GT', '35Z5GT'];

const field = (page: Page): Locator => page.getByRole('textbox');
const hits = (page: Page): Locator => page.getByRole('list', { name: say('tubes-hits') }).getByRole('button');
const digit = (page: Page, name: string): Locator =>
  page.getByRole('group', { name: say('tubes-digits') }).getByRole('button', { name });
const tool = (page: Page, id: string, type: string): Locator =>
  page.getByRole('button', { name: say(id, { type }), exact: true });

/** The types in the list on the screen, one for each row. */
const rows = (page: Page): Promise<string[]> => page.locator('ol li b').allInnerTexts();

/** The tubes that the inspection keeps; null where it keeps none. */
async function kept(bridge: Bridge, inspection: string): Promise<string[] | null> {
  const view = await bridge.call<{ findings: { path: string; value: string[] }[] }>('show_inspection', {
    inspection,
  });
  return view.findings.find(({ path }) => path === 'tubes')?.value ?? null;
}

const keeps = (bridge: Bridge, inspection: string, why?: string) =>
  expect.poll(() => kept(bridge, inspection), why);

/** Return on the phone's keyboard. */
const pressReturn = (page: Page): Promise<void> =>
  field(page).dispatchEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true });

/** Pastes a text into the field, as the phone does. */
async function paste(page: Page, text: string): Promise<void> {
  await field(page).tap();
  await field(page).evaluate((input, list) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', list);
    const given = { clipboardData, bubbles: true, cancelable: true };
    input.dispatchEvent(new ClipboardEvent('paste', given));
  }, text);
}

test('a type is found while it is typed, and one tap takes it', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, EMPTY);
  await page.goto(`/#/i/${inspection}/q/tube_list`);
  await settle(page, traffic);
  const address = await new Walk(page).address();
  await field(page).tap();
  await digit(page, '1').tap();
  await digit(page, '2').tap();
  await field(page).fill('12sk');
  await digit(page, '7').tap();
  await expect(field(page)).toHaveValue('12sk7');
  await expect(hits(page).first()).toContainText('12SK7');
  await hits(page).first().tap();
  await expect(field(page)).toHaveValue('');
  await expect(field(page), 'the keyboard stays').toBeFocused();
  expect(await rows(page)).toEqual(['12SK7']);
  await keeps(bridge, inspection).toEqual(['12SK7']);
  expect(await new Walk(page).address(), 'it stays at the question').toBe(address);
});

test('letters for digits are forgiven, and it is said', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, EMPTY);
  await page.goto(`/#/i/${inspection}/q/tube_list`);
  await settle(page, traffic);
  await field(page).tap();
  await field(page).fill('I2SK7');
  await expect(hits(page).first()).toContainText('12SK7');
  await expect(hits(page).first()).toContainText(say('tubes-for', { written: 'I2SK7' }));
  await pressReturn(page);
  await expect(page.getByText(say('tubes-added-for', { type: '12SK7', written: 'I2SK7' }))).toBeVisible();
  await keeps(bridge, inspection).toEqual(['12SK7']);
});

test('what nobody knows is kept as it was written', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, EMPTY);
  await page.goto(`/#/i/${inspection}/q/tube_list`);
  await settle(page, traffic);
  await field(page).tap();
  await field(page).fill('qq99');
  await expect(hits(page)).toHaveCount(1);
  await hits(page).first().tap();
  await keeps(bridge, inspection).toEqual(['QQ99']);
});

test('a list is pasted in one go, and taken back in one', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, EMPTY);
  await page.goto(`/#/i/${inspection}/q/tube_list`);
  await settle(page, traffic);
  await paste(page, '12SA7, I2SK7\n12SQ7 50L6GT;35Z5GT QQ99');
  await expect.poll(() => rows(page)).toEqual([...FIVE, 'QQ99']);
  await expect(page.getByText(say('tubes-pasted-unknown', { types: 'QQ99' }))).toBeVisible();
  await keeps(bridge, inspection).toEqual([...FIVE, 'QQ99']);
  await page.locator('form').getByRole('button', { name: say('undo'), exact: true }).tap();
  await expect.poll(() => rows(page)).toEqual([]);
  await keeps(bridge, inspection).toBeNull();
});

test('rows are counted, moved and removed, and a removal is taken back whole', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...EMPTY, tubes: FIVE });
  await page.goto(`/#/i/${inspection}/change/tube_list`);
  await settle(page, traffic);
  const more = tool(page, 'tubes-more', '12SK7');
  // Faster than they are stored.
  for (let taps = 0; taps < 3; taps += 1) await more.tap();
  const four = ['12SA7', '12SK7', '12SK7', '12SK7', '12SK7', '12SQ7', '50L6GT', '35Z5GT'];
  await keeps(bridge, inspection).toEqual(four);
  expect(await rows(page), 'equal neighbours share a row').toEqual(FIVE);
  for (let taps = 0; taps < 2; taps += 1) await tool(page, 'tubes-fewer', '12SK7').tap();

  await page.getByRole('button', { name: say('tubes-arrange') }).tap();
  await expect(tool(page, 'tubes-up', '12SA7'), 'nothing is above the first').toBeDisabled();
  await tool(page, 'tubes-down', '12SK7').tap();
  const swapped = ['12SA7', '12SQ7', '12SK7', '12SK7', '50L6GT', '35Z5GT'];
  await keeps(bridge, inspection).toEqual(swapped);
  await page.getByRole('button', { name: say('tubes-arranged') }).tap();

  await tool(page, 'tubes-remove', '12SQ7').tap();
  await expect(page.getByText(say('tubes-removed', { type: '12SQ7' }))).toBeVisible();
  await keeps(bridge, inspection).toEqual(['12SA7', '12SK7', '12SK7', '50L6GT', '35Z5GT']);
  await page.locator('form').getByRole('button', { name: say('undo'), exact: true }).tap();
  await keeps(bridge, inspection).toEqual(swapped);
});

test('Next leaves the question, and takes along what is typed', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, EMPTY);
  await page.goto(`/#/i/${inspection}/q/tube_list`);
  await settle(page, traffic);
  const walk = new Walk(page);
  const address = await walk.address();
  await walk.tap(say('next'));
  await expect(page.getByText(say('question-tubes-empty'))).toBeVisible();
  await field(page).tap();
  await field(page).fill('12SK7');
  await walk.tap(say('next'));
  await walk.leaves(address);
  await keeps(bridge, inspection).toEqual(['12SK7']);
});

test('nothing moves while a type is typed', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...EMPTY, tubes: FIVE });
  await page.goto(`/#/i/${inspection}/change/tube_list`);
  await settle(page, traffic);
  await field(page).tap();
  await settle(page, traffic);
  const places = async (): Promise<number[]> => {
    await settle(page, traffic);
    const marks = [digit(page, '1'), page.locator('ol')];
    const boxes = await Promise.all(marks.map((mark) => mark.boundingBox()));
    return boxes.map((box) => box?.y ?? 0);
  };
  const before = await places();
  for (const typed of ['1', '12', '12s', '12sk']) {
    await field(page).fill(typed);
    expect(await places(), `after ${typed}`).toEqual(before);
  }
  await hits(page).first().tap();
  await expect.poll(() => rows(page)).toHaveLength(FIVE.length + 1);
  expect(await places(), 'after it is added').toEqual(before);
});

test('a list without a unit outlives the app, and is cleared and brought back', async ({ page, traffic }) => {
  await page.addInitScript(() => {
    localStorage.setItem('settings', JSON.stringify({ welcomed: true }));
  });
  const walk = new Walk(page);
  await page.goto('/#/heaters');
  await settle(page, traffic);
  await paste(page, FIVE.join(' '));
  await expect.poll(() => rows(page)).toEqual(FIVE);
  await walk.tap(say('tubes-done'));
  // Nothing is assumed of the line.
  await expect(page.getByRole('img')).toHaveCount(0);
  await page.getByLabel(say('heaters-supply'), { exact: true }).selectOption('120v_60hz');
  await expect(page.getByRole('img')).toBeVisible();
  const heading = await walk.heading.innerText();

  await page.reload();
  await settle(page, traffic);
  expect(await rows(page)).toEqual(FIVE);
  await expect(walk.heading).toHaveText(heading);

  await walk.tap(say('heaters-clear'));
  await expect.poll(() => rows(page)).toEqual([]);
  await walk.tap(say('undo'));
  await expect.poll(() => rows(page)).toEqual(FIVE);
});

test('the example says that it is one, and goes in one step', async ({ page, traffic }) => {
  await page.addInitScript(() => {
    localStorage.setItem('settings', JSON.stringify({ welcomed: true, preset: '120v_60hz' }));
  });
  const walk = new Walk(page);
  await page.goto('/#/heaters');
  await settle(page, traffic);
  await walk.tap(say('heaters-example-show'));
  await expect(page.getByText(say('heaters-example'))).toBeVisible();
  await expect(page.getByRole('img')).toBeVisible();
  // 3 × 12.6 + 50 + 35 V (tube manuals, from memory).
  await expect(page.getByRole('img')).toHaveAccessibleName(/122\.8/);
  await walk.tap(say('heaters-example-remove'));
  await expect(page.getByText(say('heaters-does'))).toBeVisible();
  expect(await rows(page)).toEqual([]);
});

test('the heaters of an inspection are its tubes, and what is changed there is kept', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...EMPTY, tubes: FIVE });
  await page.goto(`/#/i/${inspection}/verdict`);
  await settle(page, traffic);
  const walk = new Walk(page);
  await walk.tap(say('heaters-see'));
  await expect(page.getByRole('img')).toBeVisible();
  await tool(page, 'tubes-remove', '35Z5GT').tap();
  await keeps(bridge, inspection).toEqual(FIVE.slice(0, -1));
  await page.waitForTimeout(READING_MS);
  await page.locator('.bottom').getByRole('button', { name: say('undo'), exact: true }).tap();
  await keeps(bridge, inspection).toEqual(FIVE);
  await expect.poll(() => rows(page), 'the list on the screen follows').toEqual(FIVE);
});

const barUndo = (page: Page): Locator => page.locator('.bottom').getByRole('button', { name: say('undo'), exact: true });
const formUndo = (page: Page): Locator => page.locator('form').getByRole('button', { name: say('undo'), exact: true });

test('the undo of the list and the undo of the inspection are one', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...EMPTY, tubes: FIVE });
  await page.goto(`/#/i/${inspection}/change/tube_list`);
  await settle(page, traffic);
  const short = FIVE.slice(0, -1);
  await tool(page, 'tubes-remove', '35Z5GT').tap();
  await keeps(bridge, inspection).toEqual(short);
  await tool(page, 'tubes-remove', '50L6GT').tap();
  await keeps(bridge, inspection).toEqual(short.slice(0, -1));
  await formUndo(page).tap();
  await keeps(bridge, inspection).toEqual(short);
  await page.waitForTimeout(READING_MS);
  await barUndo(page).tap();
  await keeps(bridge, inspection, 'the next undo goes further back').toEqual(FIVE);
});

test('an undo before the change is stored takes back that change alone', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...EMPTY, tubes: FIVE });
  await page.goto(`/#/i/${inspection}/change/tube_list`);
  await settle(page, traffic);
  let release = (): void => undefined;
  const held = new Promise<void>((done) => (release = done));
  await page.route('**/api/set_tubes', async (route) => {
    await held;
    await route.continue();
  });
  await tool(page, 'tubes-remove', '35Z5GT').tap();
  await formUndo(page).tap();
  await expect.poll(() => rows(page)).toEqual(FIVE);
  release();
  await settle(page, traffic);
  expect(await rows(page)).toEqual(FIVE);
  await keeps(bridge, inspection).toEqual(FIVE);
  // All that is left to undo is the list itself.
  await page.waitForTimeout(READING_MS);
  await barUndo(page).tap();
  await keeps(bridge, inspection).toBeNull();
});

test('on a low display the bar makes room while a type is typed', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...EMPTY, tubes: FIVE });
  await page.goto(`/#/i/${inspection}/change/tube_list`);
  await settle(page, traffic);
  const bar = page.locator('.bottom');
  await field(page).tap();
  await expect(bar, 'here is room for both').toBeVisible();
  await page.setViewportSize({ width: 844, height: 190 });
  await expect(bar).toBeHidden();
  await page.getByRole('button', { name: say('tubes-done') }).tap();
  await expect(bar).toBeVisible();
});

test('what is half typed outlives the app', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, EMPTY);
  await page.goto(`/#/i/${inspection}/q/tube_list`);
  await settle(page, traffic);
  await field(page).tap();
  await field(page).fill('12SK');
  await expect(hits(page).first()).toBeVisible();
  await page.reload();
  await settle(page, traffic);
  await expect(field(page)).toHaveValue('12SK');
  await field(page).tap();
  await hits(page).first().tap();
  await keeps(bridge, inspection).toEqual(['12SK7']);
  await page.reload();
  await settle(page, traffic);
  await expect(field(page)).toHaveValue('');
});

test('a type is read as a whole at large text', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...EMPTY, tubes: FIVE });
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto(`/#/i/${inspection}/change/tube_list`);
  await addStyle(page, 'html { font-size: 212.5% }');
  await settle(page, traffic);
  const lines = await page.locator('ol li b').evaluateAll((names) => names.map((name) => name.getClientRects().length));
  expect(lines).toEqual(FIVE.map(() => 1));
});
