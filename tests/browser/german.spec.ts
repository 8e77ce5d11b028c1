/** German is longer than English: its words have room on every kind of screen, none is cut off, none is left in English. */

import { expect, test } from './check';
import { cutOff, sticksOut } from './measure';
import { hasRoom, LOOKS_AT_ALL } from './room';
import { addStyle, atRest, settle, show } from './screen';
import { ALL_SCREENS, screenNamed } from './screens';
import { SHELF_RADIO, inspect } from './units';
import { expectWords, say } from './words';

/** One of each kind, where there are most words for the room. */
const SCREENS = [
  'first-2',
  'list',
  'list-demo',
  'new-unit-started-too-soon',
  'question-drawings',
  'question-places',
  'question-value-wrong',
  'found',
  'readings-plan',
  'reading-asked-entered',
  'heaters-string',
  'tubes-listed',
  'charge',
  'insulation-refused',
  'touch-qualified',
  'shocked',
  'settings',
  'verdict-live-not-ruled-out',
  'verdict-conflict',
  'grid-live',
  'chart-leaky-gfci',
  'circuit-live',
  'repairs-live',
  'repairs-stack-live',
  'repairs-parts',
  'repairs-grid',
  'outlet-step-down',
  'proof-open',
  'proof-positions',
  'queue',
  'queue-filters',
  'queue-unit',
  'record',
  'recovery',
  'photo-marked',
  'measure-what',
];
const LOOKED_AT = LOOKS_AT_ALL ? ALL_SCREENS.filter(({ width }) => width === undefined) : SCREENS.map(screenNamed);
/** Kept as pictures: what a person sees of the verdict and on the way to it. */
const PICTURED: readonly string[] = ['list', 'question-drawings', 'verdict-live-not-ruled-out', 'circuit-live', 'repairs-live', 'settings'];

/** What a person called a unit is cut where it is long, and whole on the unit's own page. */
const TYPED = /“(Shelf radio|Combo amplifier|Record player)/;

const HELD = [
  { width: 390, height: 844 },
  { width: 360, height: 640 },
];

test.use({ locale: 'de-DE', bypassCSP: true });
test.beforeEach(async ({ bridge }) => {
  expectWords('de');
  await bridge.call('set_inspector', { author: '', language: 'de' });
});
test.afterEach(() => expectWords('en'));

for (const screen of LOOKED_AT) {
  const { name } = screen;
  test.describe(() => {
    test.use({ inFile: screen.inFile ?? false });
    test(`${name} has room for German`, async ({ bridge, page, traffic }) => {
      await show(page, screen, bridge, traffic);
      await expect(page.locator('html')).toHaveAttribute('lang', 'de');
      for (const display of HELD) {
        await page.setViewportSize(display);
        await atRest(page);
        const where = `${display.width} × ${display.height}`;
        expect.soft(await sticksOut(page), `sideways at ${where}`).toEqual([]);
        const cut = await cutOff(page);
        expect.soft(cut.filter((one) => !TYPED.test(one)), `cut off at ${where}`).toEqual([]);
      }
      const text = (await page.locator('body').innerText()).replaceAll('Shelf radio, with a meter', '');
      expect.soft(text.match(/\b(the|with|and|you|your|what|which|not|this)\b/gi) ?? [], 'left in English').toEqual([]);
      await hasRoom(page, traffic);
      if (PICTURED.includes(name)) await expect.soft(page).toHaveScreenshot(`german-${name}.png`);
    });
  });
}

test('a figure is written with a comma, and read with comma or point', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...SHELF_RADIO, access: ['outside', 'meter'] });
  await show(page, { name: 'reading', reach: () => Promise.resolve(`#/i/${inspection}/readings/ohms_a_b_on`) }, bridge, traffic);
  await page.getByRole('button', { name: say('readings-is-unplugged') }).tap();
  const field = page.getByLabel(say('readings-value'), { exact: true });
  const told = page.locator(`[id="${await field.getAttribute('aria-describedby')}"]`);
  for (const written of ['1,5k', '1.5k', '1k5', '1,500k']) {
    await field.fill(written);
    await expect(told, written).toHaveText(say('question-understood', { value: '1,5\u00a0kΩ' }));
  }
  for (const written of ['1.500', '12.000', '220.000k']) {
    await field.fill(written);
    await expect(told, `${written} may be thousands`).toHaveText(say('readings-value-hint'));
  }
});

test('a language that is chosen is spoken at once by screens and core, and after a new start', async ({ page, traffic }) => {
  await page.goto('/#/settings');
  await settle(page, traffic);
  expectWords('en');
  await page.getByRole('radio', { name: say('language-en') }).check();
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(say('settings-title'));
  await settle(page, traffic);
  const supplies = page.getByLabel(say('settings-supply'), { exact: true });
  await expect(supplies).toContainText(say('preset-230v_50hz'));
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(say('settings-title'));
  await expect(page.getByRole('radio', { name: say('language-en') })).toBeChecked();
});

test('a region sets up what a new unit starts with, and changes none that is there', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, SHELF_RADIO);
  await page.goto('/#/settings');
  await settle(page, traffic);
  await page.getByLabel(say('settings-region'), { exact: true }).selectOption('europe');
  await settle(page, traffic);
  await expect(page.getByLabel(say('settings-supply'), { exact: true })).toHaveValue('230v_50hz');
  await page.getByText(say('settings-region-facts')).tap();
  await expect(page.getByText(say('region-protection-europe'))).toBeVisible();
  // Two supplies: the town decides, so none is taken for granted.
  await page.getByLabel(say('settings-region'), { exact: true }).selectOption('japan');
  await settle(page, traffic);
  await expect(page.getByLabel(say('settings-supply'), { exact: true })).toHaveValue('');
  const { supply } = await bridge.call<{ supply: { volts: number } }>('show_inspection', { inspection });
  expect(supply.volts).toBe(120);
});

test('a word that is too long for its box is noticed', async ({ bridge, page, traffic }) => {
  await show(page, screenNamed('shocked'), bridge, traffic);
  expect(await cutOff(page)).toEqual([]);
  await page.evaluate(() => {
    const box = document.createElement('p');
    box.className = 'narrow';
    box.textContent = 'Leitungsschutzschalter';
    document.querySelector('main')?.append(box);
  });
  await addStyle(page, '.narrow { width: 5em; overflow: hidden; overflow-wrap: normal }');
  expect((await cutOff(page)).join()).toContain('Leitungsschutzschalter');
});
