/** A whole inspection from outside, by touch alone, on a slow phone. */

import type { Locator, Page } from '@playwright/test';

import type { Bridge } from './bridge';
import { expect, slow, test } from './check';
import { settle } from './screen';
import { inspect } from './units';
import { type Answers, READING_MS, Walk } from './walk';
import { say, sayAnswer, sayClass } from './words';

/** A phone that many people carry: dense display, a sixth of this processor. */
const SLOWER = 6;
test.use({ deviceScaleFactor: 2 });

test.beforeEach(async ({ page }) => {
  await slow(page, SLOWER);
});

interface Inspected {
  unit: string;
  answers: Answers;
  /** What is asked, in this order, until asking can no longer better the verdict. */
  asked: readonly string[];
  /** What the tag then says. */
  tag: string;
  /** Classes that the sign no longer shows. */
  out: readonly string[];
}

const FROM_OUTSIDE: readonly Inspected[] = [
  {
    unit: 'bare screws and two equal pins',
    answers: { plug: ['two_equal_blades'], bare_metal: ['screws_or_shafts'] },
    asked: ['plug', 'bare_metal'],
    tag: 'tag-live-not_ruled_out',
    out: ['two_faults', 'no_line'],
  },
  {
    unit: 'nothing to touch',
    answers: { plug: ['two_equal_blades'], bare_metal: ['none_anywhere'], back: ['fitted'], terminals: ['none'] },
    asked: ['plug', 'bare_metal', 'terminals', 'back'],
    tag: 'tag-one_fault-not_ruled_out',
    out: ['live', 'leaky', 'no_line'],
  },
  {
    unit: 'batteries only',
    answers: { plug: ['battery_only'], rating_plate: ['battery'] },
    asked: ['plug', 'rating_plate'],
    tag: 'tag-no_line-shown',
    out: ['live', 'leaky', 'one_fault', 'two_faults'],
  },
];

for (const { unit, answers, asked, tag, out } of FROM_OUTSIDE) {
  test(`from the first start to the verdict: ${unit}`, async ({ page, traffic }) => {
    const walk = new Walk(page);
    await page.goto('/');
    await walk.welcome();
    await walk.newUnit();
    await settle(page, traffic);
    const before = await widths(walk, out);
    expect(await walk.toVerdict(answers)).toEqual(asked);
    await expect(walk.tag.getByRole('heading', { level: 2 })).toHaveText(say(tag));
    await page.goBack();
    await settle(page, traffic);
    const after = await widths(walk, out);
    for (const [at, id] of out.entries()) {
      expect(after[at], `the sign still shows ${id}`).toBeLessThan((before[at] ?? 0) / 2);
      await expect(walk.stillPossible).not.toContainText(sayClass(id));
    }
  });
}

/** How wide the sign shows each of these classes. */
async function widths(walk: Walk, classes: readonly string[]): Promise<number[]> {
  const boxes = classes.map((id) => walk.sign(sayClass(id)).boundingBox());
  return (await Promise.all(boxes)).map((box) => box?.width ?? 0);
}

interface Finger {
  x: number;
  y: number;
}

/**
 * One touch, or two of one finger so many milliseconds apart; gives where.
 *
 * One finger is up before it is down again. Two taps that each wait for the page do not promise that: the second
 * could begin within the first, which is no tap at all.
 */
async function tap(page: Page, target: Locator, apart: number | null): Promise<Finger> {
  await target.scrollIntoViewIfNeeded();
  const box = await target.boundingBox();
  if (!box) throw new Error('nothing to tap');
  const finger = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const session = await page.context().newCDPSession(page);
  const touch = (): Promise<unknown>[] => [
    session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [finger] }),
    session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] }),
  ];
  const sent = touch();
  if (apart !== null) {
    await page.waitForTimeout(apart);
    sent.push(...touch());
  }
  await Promise.all(sent);
  await session.detach();
  return finger;
}

/** Milliseconds up to what a phone takes for a double tap, 300 (Android's usual; from memory). */
const APART = [0, 80, 160, 300];

/** What is under the finger when “two pins, both alike” is answered, by how far the inspector may go. */
const OVER_ANSWERS = [
  { then: 'a tick', access: ['outside'] },
  { then: 'an answer', access: ['outside', 'cover_off'] },
];

for (const { then, access } of OVER_ANSWERS) {
  test(`a double tap answers once, with ${then} under the finger after it`, async ({ bridge, page, traffic }) => {
    const walk = new Walk(page);
    /** Answers what is on the end of the cord by one tap or two; gives the inspection and the finger. */
    const answerPlug = async (apart: number | null): Promise<{ inspection: string; finger: Finger }> => {
      const inspection = await inspect(bridge, { name: '', access });
      await page.goto(`/#/i/${inspection}/q/plug`);
      await settle(page, traffic);
      const address = await walk.address();
      // The first tap is meant: the question was read before.
      await page.waitForTimeout(READING_MS);
      const finger = await tap(page, walk.named(sayAnswer('plug', 'two_equal_blades')), apart);
      await walk.leaves(address);
      await settle(page, traffic);
      return { inspection, finger };
    };
    const once = await answerPlug(null);
    expect(await isAnswer(page, once.finger), 'a second tap would meet an answer').toBe(true);
    for (const apart of APART) {
      const { inspection } = await answerPlug(apart);
      expect.soft(await findings(bridge, inspection), `${apart} ms apart`).toEqual(['answers.plug']);
      const marked = page.locator('[aria-pressed=true], [aria-checked=true]');
      expect.soft(await marked.allInnerTexts(), `marked, ${apart} ms apart`).toEqual([]);
    }
  });
}

function isAnswer(page: Page, finger: Finger): Promise<boolean> {
  return page.evaluate(({ x, y }) => {
    const under = document.elementFromPoint(x, y);
    return under?.closest('button[aria-pressed], button[aria-checked]') instanceof Element;
  }, finger);
}

async function findings(bridge: Bridge, inspection: string): Promise<string[]> {
  const view = await bridge.call<{ findings: { path: string }[] }>('show_inspection', { inspection });
  return view.findings.map(({ path }) => path).sort();
}

test('back goes one screen at a time', async ({ page, traffic }) => {
  const walk = new Walk(page);
  await page.goto('/');
  await walk.welcome();
  await walk.newUnit();
  const visited = [await walk.address()];
  const answers = FROM_OUTSIDE[0]?.answers ?? {};
  while (!visited.at(-1)?.endsWith('/verdict')) visited.push(await walk.answer(answers));
  await walk.found.tap();
  visited.push(await walk.leaves(visited.at(-1) ?? ''));
  for (const address of visited.slice(0, -1).reverse()) {
    await page.goBack();
    await settle(page, traffic);
    expect(await walk.address()).toBe(address);
  }
  // The form of the new unit is gone: going back to it would make the unit twice.
  await page.goBack();
  await expect(walk.heading).toHaveText(say('units'));
});

test('loaded again in the middle, turned or started anew it is at the same question', async ({
  context,
  page,
  traffic,
}) => {
  const walk = new Walk(page);
  await page.goto('/');
  await walk.welcome();
  await walk.newUnit();
  await walk.answer(FROM_OUTSIDE[0]?.answers ?? {});
  await settle(page, traffic);
  const stands = await standing(walk);

  await page.reload();
  await settle(page, traffic);
  expect(await standing(walk)).toEqual(stands);

  await page.setViewportSize({ width: 844, height: 390 });
  await settle(page, traffic);
  expect(await standing(walk)).toEqual(stands);

  // As after the process was killed: nothing is left but what is stored.
  await page.close();
  const again = await context.newPage();
  await again.goto('/');
  await settle(again, traffic);
  expect(await standing(new Walk(again))).toEqual(stands);
});

/** Where the inspection stands on the screen. */
async function standing(walk: Walk): Promise<string[]> {
  const words = [walk.heading, walk.stillPossible].map((part) => part.innerText());
  return [await walk.address(), ...(await Promise.all(words))];
}
