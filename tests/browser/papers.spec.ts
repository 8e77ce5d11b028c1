/** Report, tag and message from the screen: what is given away is read back by a program that did not make it. */

import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

import type { Page } from '@playwright/test';

import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { settle } from './screen';
import { HOT_CHASSIS, inspect, LEAKY_AMPLIFIER, PICNIC_PORTABLE } from './units';
import { Walk } from './walk';
import { say } from './words';

/** Taps a button and reads the document that is saved, of which the screen tells the name. */
async function given(bridge: Bridge, page: Page, walk: Walk, button: string): Promise<{ name: string; text: string }> {
  await walk.tap(say(button));
  await expect(page.getByRole('status').filter({ hasText: '.pdf' })).toBeVisible();
  const [name = '', ...others] = readdirSync(bridge.given);
  expect(others).toEqual([]);
  const text = execFileSync('pdftotext', ['-layout', join(bridge.given, name), '-'], { encoding: 'utf8' });
  return { name, text };
}

for (const unit of [HOT_CHASSIS, LEAKY_AMPLIFIER, PICNIC_PORTABLE]) {
  test(`the report of ${unit.name} holds what the screens show`, async ({ bridge, page, traffic }) => {
    const walk = new Walk(page);
    const inspection = await inspect(bridge, unit);
    const view = await bridge.call<InspectionView>('show_inspection', { inspection });
    await page.goto(`/#/i/${inspection}/verdict`);
    await settle(page, traffic);
    await walk.tap(say('papers-see'));
    await expect(walk.heading).toHaveText(say('papers-title'));
    await settle(page, traffic);
    const { name, text } = await given(bridge, page, walk, 'papers-report-give');
    expect(name).toBe(`${view.unit.label}_report.pdf`);
    expect(text).toContain(view.tag.signal_word);
    expect(text).toContain(unit.name);
    // The drawings are in it with their own words.
    const drawn = view.tag.class !== 'no_line';
    expect(text.includes(say('circuit-chassis')), text).toBe(drawn);
    expect(text.includes(say('chart-axis-time')), text).toBe(drawn);
    await expect(page.getByRole('status').filter({ hasText: name })).toBeVisible();
  });
}

test('a tag is made for the paper that was chosen, and the choice is kept', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const inspection = await inspect(bridge, HOT_CHASSIS);
  await page.goto(`/#/i/${inspection}/papers`);
  await settle(page, traffic);
  const eight = page.getByRole('radio', { name: say('papers-sheet_of_eight') });
  await eight.tap();
  await expect(eight).toBeChecked();
  const { name, text } = await given(bridge, page, walk, 'papers-tag-give');
  expect(name).toBe('U-0001_tag.pdf');
  expect(text).toContain('U-0001');
  await page.reload();
  await expect(eight).toBeChecked();
});

test('the message is the text that the core gives', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, LEAKY_AMPLIFIER);
  await page.goto(`/#/i/${inspection}/papers`);
  await settle(page, traffic);
  const text = await bridge.call<string>('report_text', { inspection });
  await expect(page.getByRole('textbox', { name: say('papers-message') })).toHaveValue(text);
});
