/** What is asked and why, readings among it; where asking stops; and the findings that the verdict hangs on. */

import type { Page } from '@playwright/test';

import type { Bridge } from './bridge';
import { expect, test } from './check';
import { settle } from './screen';
import type { Traffic } from './traffic';
import {
  CLOSED_RADIO,
  CONTRADICTED,
  inspect,
  LEAKY_AMPLIFIER,
  METER_AT_HAND,
  READ_OTHERWISE,
  SHELF_RADIO,
  type Unit,
} from './units';
import { Walk } from './walk';
import { say, sayAnswer } from './words';

/** As much of an inspection as is looked at here. */
interface Stand {
  question: { id: string } | null;
  hints: { id: string }[];
  access: string[];
  findings: { path: string; name: string; found: string }[];
  tag: { next: string; next_reason: string | null; further: string[]; go_on: string | null; rests_on: string[] };
  verdict: { rests_on: { finding: string }[]; conflicts: string[][] };
}

/** A unit on the screen, and the way to what the core says of it. */
async function open(
  { bridge, page, traffic }: { bridge: Bridge; page: Page; traffic: Traffic },
  unit: Unit,
  place = '',
): Promise<{ walk: Walk; stand: () => Promise<Stand> }> {
  const inspection = await inspect(bridge, unit);
  await page.goto(`/#/i/${inspection}${place && `/${place}`}`);
  await settle(page, traffic);
  return { walk: new Walk(page), stand: () => bridge.call<Stand>('show_inspection', { inspection }) };
}

const paths = (stand: Stand): string[] => stand.findings.map(({ path }) => path);

/** What is asked next, after it is shown to be a reading. */
function readingAsked(stand: Stand): string {
  expect(stand.question?.id).toMatch(/^readings\./);
  return stand.question?.id ?? '';
}

test('a reading that is asked is entered, told, and gone on from', async ({ bridge, page, traffic }) => {
  const { walk, stand } = await open({ bridge, page, traffic }, METER_AT_HAND);
  const asked = readingAsked(await stand());
  expect(await walk.question()).toBe(asked);
  await expect(page.getByText((await stand()).tag.next_reason ?? '').first()).toBeVisible();
  await walk.enter('124');
  expect(paths(await stand())).toContain(asked);
  await expect(page.getByText('124\u00a0Ω', { exact: true })).toBeInViewport();
  expect(await walk.question(), 'what came of it is seen first').toBe(asked);
  // This figure settles it: nothing more is asked.
  expect((await stand()).question).toBeNull();
  await walk.tap(say('touch-to-verdict'));
  await expect.poll(() => walk.address()).toMatch(/\/verdict$/);
});

test('a reading that is asked is taken back where it was entered', async ({ bridge, page, traffic }) => {
  const { walk, stand } = await open({ bridge, page, traffic }, METER_AT_HAND);
  const asked = readingAsked(await stand());
  await walk.enter('124');
  await walk.tap(say('undo'));
  await expect(page.getByLabel(say('readings-value'), { exact: true })).toBeVisible();
  expect(paths(await stand())).not.toContain(asked);
  expect(await walk.question()).toBe(asked);
  // The answer before it can be taken back from here too.
  await walk.tap(say('undo'));
  await expect.poll(() => walk.question()).toBe('plug');
});

test('a reading that cannot be taken is left open, undone, and taken after all', async ({ bridge, page, traffic }) => {
  const { walk, stand } = await open({ bridge, page, traffic }, METER_AT_HAND);
  const asked = readingAsked(await stand());
  const open_ = asked.replace('readings.', 'left_open.');
  await walk.answer({});
  expect(paths(await stand())).toContain(open_);
  expect(await walk.question()).toBe((await stand()).question?.id);
  expect(await walk.question()).not.toBe(asked);
  await walk.tap(say('undo'));
  await expect.poll(() => walk.question()).toBe(asked);
  expect(paths(await stand())).not.toContain(open_);

  await walk.answer({});
  await walk.found.tap();
  const finding = (await stand()).findings.find(({ path }) => path === open_);
  await walk.tap(say('found-change-what', { name: finding?.name ?? '' }));
  await expect.poll(() => walk.address()).toMatch(new RegExp(`/change/${asked}$`));
  await expect(walk.named(say('readings-cannot-take'))).toHaveAttribute('aria-pressed', 'true');
  expect(await walk.read('124')).toMatch(/\/found$/);
  expect(paths(await stand())).toContain(asked);
});

test('nobody is held up by a reading', async ({ bridge, page, traffic }) => {
  const { walk, stand } = await open({ bridge, page, traffic }, METER_AT_HAND);
  const asked = await walk.toVerdict({});
  const readings = asked.filter((id) => id.startsWith('readings.'));
  expect(readings.length).toBeGreaterThan(1);
  expect(new Set(asked).size, 'nothing is asked twice').toBe(asked.length);
  expect((await stand()).question).toBeNull();
});

test('a reading out of the list leads along the list', async ({ bridge, page, traffic }) => {
  const { walk } = await open({ bridge, page, traffic }, METER_AT_HAND, 'readings');
  await walk.tap(say('readings-start'));
  await expect.poll(() => walk.address()).toMatch(/\/readings\/\w+$/);
  const [first, second] = [await walk.address(), await walk.read(null)];
  expect(second).toMatch(/\/readings\/\w+$/);
  const third = await walk.read('OL');
  expect(third).toMatch(/\/readings\/\w+$/);
  expect(new Set([first, second, third]).size, 'what could not be taken is not come back to').toBe(3);
  await page.goBack();
  await expect(walk.heading).toHaveText(say('readings-title'));
  await expect(page.getByText(say('readings-left-open'), { exact: true })).toHaveCount(1);
});

test('why it is asked stands at the question, and where there is no room, under how to look', async ({
  bridge,
  page,
  traffic,
}) => {
  const { walk, stand } = await open({ bridge, page, traffic }, { ...SHELF_RADIO, answers: { plug: 'two_equal_blades' } });
  const reason = page.getByText((await stand()).tag.next_reason ?? '', { exact: true });
  await expect(reason.filter({ visible: true })).toHaveCount(1);
  await page.setViewportSize({ width: 360, height: 640 });
  await expect(reason.filter({ visible: true })).toHaveCount(0);
  const answers = page.getByRole('checkbox');
  await expect(answers.first()).toBeInViewport({ ratio: 1 });
  await page.locator('summary').tap();
  await expect(reason.filter({ visible: true })).toHaveCount(1);
  // Nothing of that sort where it is looked at for another reason.
  const { question } = await stand();
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(`${page.url().split('/q/')[0]}/change/${question?.id}`);
  await settle(page, traffic);
  await expect(walk.heading).toBeVisible();
  await expect(reason).toHaveCount(0);
});

test('where asking stops it says why, what more access could show, and what hints could', async ({
  bridge,
  page,
  traffic,
}) => {
  const { walk, stand } = await open({ bridge, page, traffic }, SHELF_RADIO, 'verdict');
  const { tag, hints } = await stand();
  expect(tag.next).toBe(say('nothing-left'));
  expect(tag.further.length).toBeGreaterThan(0);
  for (const line of [tag.next, ...tag.further, tag.go_on ?? '']) await expect(page.getByText(line, { exact: true })).toBeVisible();
  await walk.tap(say('verdict-to-hints'));
  await expect.poll(() => walk.address()).toMatch(new RegExp(`/hint/${hints[0]?.id}$`));
  await page.goBack();
  await settle(page, traffic);

  await page.getByRole('checkbox', { name: say('access-cover_off') }).tap();
  await expect.poll(async () => (await stand()).access).toContain('cover_off');
  // The choice stays under the finger, and what is asked now is one tap away.
  await expect(page.getByRole('checkbox', { name: say('access-cover_off') })).toBeChecked();
  await walk.tap(say('found-go-on'));
  await expect.poll(() => walk.question()).toBe((await stand()).question?.id);
});

/** The row of a finding by what it is called. */
const row = (page: Page, name: string) =>
  page.getByRole('button', { name: new RegExp(`^${say('verdict-again')}:\\s+${name}`) });

for (const [what, unit, title] of [
  ['one finding carries', LEAKY_AMPLIFIER, 'verdict-rests-on-one'],
  ['several findings carry', CLOSED_RADIO, 'verdict-rests-on'],
] as const) {
  test(`what ${what} the verdict leads to its question`, async ({ bridge, page, traffic }) => {
    const { walk, stand } = await open({ bridge, page, traffic }, unit, 'verdict');
    await expect(page.getByRole('heading', { level: 2, name: say(title), exact: true })).toBeVisible();
    const { verdict, tag, findings } = await stand();
    expect(verdict.rests_on.length === 1).toBe(title === 'verdict-rests-on-one');
    for (const [at, { finding }] of verdict.rests_on.entries()) {
      const found = findings.find(({ path }) => path === `answers.${finding}`);
      const link = row(page, found?.name ?? '');
      await expect(link).toContainText(found?.found ?? '');
      await expect(link).toContainText(tag.rests_on[at] ?? '');
      await expect(link.locator('svg:not(.icon)')).toBeVisible();
      await link.tap();
      await expect.poll(() => walk.address()).toMatch(new RegExp(`/change/${finding}$`));
      await page.goBack();
      await settle(page, traffic);
    }
  });
}

test('findings that disagree are drawn, and mended from the verdict', async ({ bridge, page, traffic }) => {
  const { walk, stand } = await open({ bridge, page, traffic }, CONTRADICTED, 'verdict');
  const { verdict, findings } = await stand();
  const named = [...new Set(verdict.conflicts.flat())];
  for (const id of named) {
    const name = findings.find(({ path }) => path === `answers.${id}`)?.name ?? '';
    await expect(row(page, name).locator('svg:not(.icon)')).toBeVisible();
  }
  await row(page, findings.find(({ path }) => path === 'answers.transformer')?.name ?? '').tap();
  await expect.poll(() => walk.question()).toBe('transformer');
  await walk.tap(sayAnswer('transformer', 'separate_traced'));
  await expect.poll(() => walk.address()).toMatch(/\/verdict$/);
  expect((await stand()).verdict.conflicts).toEqual([]);
});

test('a reading that disagrees is drawn with its probes, and taken again from the verdict', async ({
  bridge,
  page,
  traffic,
}) => {
  const { walk, stand } = await open({ bridge, page, traffic }, READ_OTHERWISE, 'verdict');
  const { verdict, findings } = await stand();
  const id = verdict.conflicts.flat().find((finding) => finding.startsWith('readings.')) ?? '';
  const link = row(page, findings.find(({ path }) => path === id)?.name ?? 'none');
  await expect(link.locator('svg:not(.icon)')).toBeVisible();
  await link.tap();
  await expect.poll(() => walk.address()).toMatch(new RegExp(`/change/${id}$`));
  await walk.tap(say('readings-again'));
  await page.getByLabel(say('readings-value'), { exact: true }).or(walk.named(say('readings-is-unplugged'))).first().waitFor();
  expect(await walk.read('OL')).toMatch(/\/verdict$/);
  expect(paths(await stand())).toContain(id);
});
