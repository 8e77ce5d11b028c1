/** Figures are read as they stand on parts and meters, and said back before they are kept. */

import type { Page } from '@playwright/test';

import { readFigure, readNumber } from '../../ui/src/lib/figure';

import { expect, test } from './check';
import { settle } from './screen';
import { HOT_CHASSIS, inspect, LEAKY_AMPLIFIER } from './units';
import { say } from './words';

/** What stands beside the field for a figure that is written in it. */
async function readBack(page: Page, field: string, written: string): Promise<string> {
  const input = page.getByLabel(field, { exact: true });
  await input.fill(written);
  const hint = await input.getAttribute('aria-describedby');
  return (await page.locator(`[id="${hint}"]`).innerText()).replace(/\u00a0/g, ' ');
}

test('a capacitor is read in every way that it is marked', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...LEAKY_AMPLIFIER, values: {} });
  await page.goto(`/#/i/${inspection}/q/values.line_capacitor`);
  await settle(page, traffic);
  const understood = {
    '47n': '47 nF',
    '0,047 uF': '47 nF',
    '.05 MFD': '50 nF',
    '470 MMFD': '470 pF',
    '0.1µ': '100 nF',
    '4n7': '4.7 nF',
  };
  for (const [written, value] of Object.entries(understood)) {
    expect(await readBack(page, say('question-figure'), written)).toBe(say('question-understood', { value }));
  }
  for (const written of ['', '47', '47m', '1e-8', 'n47n', '-47n', '0']) {
    const told = await readBack(page, say('question-figure'), written);
    expect(told, written).toBe(say('question-figure-farads'));
  }
});

test('a reading with a small m is not taken for megohms', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, { ...HOT_CHASSIS, access: ['outside', 'meter'] });
  await page.goto(`/#/i/${inspection}/readings/ohms_a_b_on`);
  await settle(page, traffic);
  await page.getByRole('button', { name: say('readings-is-unplugged') }).tap();
  const understood = {
    '270k': '270 kΩ', '2M2': '2.2 MΩ', '1M': '1 MΩ', '0.3': '0.3 Ω', '.3': '0.3 Ω', '1,5': '1.5 Ω', '0': '0 Ω',
    '4k7': '4.7 kΩ', 'OL': say('readings-ol'), 'ol': say('readings-ol'), '0L': say('readings-ol'),
  };
  for (const [written, value] of Object.entries(understood)) {
    expect(await readBack(page, say('readings-value'), written)).toBe(say('question-understood', { value }));
  }
  for (const written of ['400m', '2m2', 'x']) {
    expect(await readBack(page, say('readings-value'), written), written).toBe(say('readings-value-hint'));
  }
});

/** Pieces of figures, and what stands near them on a keyboard or in another alphabet. */
const PIECES = [
  ...'0123456789.,-+eEkKmMrRuUnNpPfFx∞ \n\u0000',
  'µ', 'μ', 'Ω', 'Ω', 'MFD', 'mmfd', 'ohms', '0x', '1e400', 'NaN', 'Infinity', '9'.repeat(400), '.'.repeat(9), '٣', '３', '\u202e',
];

test('whatever is typed for a figure is a figure above nothing, or none', () => {
  // A linear congruential generator: the same texts each time.
  let state = 1;
  const below = (count: number) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * count);
  };
  let read = 0;
  // Said once at the end: each `expect` is written down as a step, and hundreds of thousands of them take minutes.
  const wrong: string[] = [];
  for (let turn = 0; turn < 200_000; turn += 1) {
    const text = Array.from({ length: below(7) }, () => PIECES[below(PIECES.length)]).join('');
    for (const unit of ['farads', 'ohms'] as const) {
      const figure = readFigure(text, unit);
      if (!('value' in figure)) continue;
      read += 1;
      if (!Number.isFinite(figure.value) || figure.value <= 0) wrong.push(`${text} is ${figure.value} ${unit}`);
    }
    const number = readNumber(text, 1e12);
    if (number !== null && !(number >= 0 && number <= 1e12)) wrong.push(`${text} is ${number}`);
  }
  expect(wrong).toEqual([]);
  expect(read, 'texts that are figures').toBeGreaterThan(5000);
});
