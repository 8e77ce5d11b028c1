/** The circuit picture: nothing in it stands on anything else, for whatever arrangement; and what is turned in it. */

import { layout } from '../../ui/src/lib/circuit/layout';
import { HIGH, WIDE } from '../../ui/src/lib/circuit/places';
import type { Box, Point, Wire } from '../../ui/src/lib/circuit/symbols';
import type { CircuitView } from '../../ui/src/lib/types/CircuitView';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { everyBuilt } from './circuits';
import { settle } from './screen';
import { CLOSED_RADIO, HOT_CHASSIS, inspect, LEAKY_AMPLIFIER, PICNIC_PORTABLE } from './units';
import { READING_MS, Walk } from './walk';
import { say } from './words';

interface Rect {
  left: number;
  top: number;
  right: number;
  bottom: number;
  what: string;
}

const rectOf = ({ x, y, width, height, symbol, part }: Box): Rect => ({
  left: x,
  top: y,
  right: x + width,
  bottom: y + height,
  what: `${symbol} ${part}`,
});

const overlap = (one: Rect, other: Rect): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

const within = ([x, y]: Point, { left, top, right, bottom }: Rect): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;

/** Whether a straight piece, upright or level, runs through a rectangle. */
function runsThrough([x1, y1]: Point, [x2, y2]: Point, rect: Rect): boolean {
  const piece = {
    left: Math.min(x1, x2),
    right: Math.max(x1, x2) + 0.01,
    top: Math.min(y1, y2),
    bottom: Math.max(y1, y2) + 0.01,
    what: '',
  };
  return (x1 === x2 || y1 === y2) && overlap(piece, rect);
}

/** What stands where it should not. */
function faultsOf(boxes: readonly Box[], wires: readonly Wire[]): string[] {
  const rects = boxes.map(rectOf);
  const found: string[] = [];
  rects.forEach((one, place) => {
    for (const other of rects.slice(place + 1)) if (overlap(one, other)) found.push(`${one.what} on ${other.what}`);
    if (one.left < 0 || one.top < 0 || one.right > WIDE || one.bottom > HIGH) found.push(`${one.what} is outside`);
  });
  for (const { points, part } of wires) {
    for (const stranger of boxes) {
      const rect = rectOf(stranger);
      // What begins, bends or ends in a symbol belongs to it.
      if ((stranger.part !== null && stranger.part === part) || points.some((point) => within(point, rect))) continue;
      points.slice(1).forEach((to, place) => {
        const from = points[place];
        if (from && runsThrough(from, to, rect)) found.push(`${part ?? 'a line'} through ${rect.what}`);
      });
    }
  }
  return found;
}

const ISOLATIONS = [
  'line_tied',
  'line_rectified',
  'line_floated',
  'line_insulated',
  'heater_transformer',
  'autotransformer',
  'isolating',
] as const;
const CORDS = [
  'two_pin_reversible',
  'two_pin_polarised',
  'three_pin_earthed',
  'three_pin_unearthed',
  'three_pin_cut',
  'three_pin_reversible_earthed',
  'three_pin_reversible_unearthed',
] as const;
const REACHES = ['closed', 'aerial_terminal', 'exposed', 'handheld', 'common_exposed'] as const;
const CAPACITORS = ['none', 'near_leg', 'far_leg', 'both_legs', 'selector'] as const;
const SWITCHES = ['near', 'far', 'both', 'none'] as const;
const FAULTS = [
  'lost_barrier',
  'stray_far',
  'stray_near',
  'near_capacitor_shorted',
  'far_capacitor_shorted',
  'selector_capacitor_shorted',
  'network_capacitor_shorted',
  'aerial_capacitor_shorted',
  'insulation_breakdown',
  'earth_open',
  'outlet_reversed',
  'neutral_open',
] as const;

/** Which metal the finger is on, as the design says. */
function touched(reach: (typeof REACHES)[number], lost: boolean): CircuitView['touched'] {
  if (reach === 'closed') return lost ? 'chassis' : null;
  if (reach === 'aerial_terminal') return lost ? 'chassis' : 'aerial_terminal';
  return reach === 'common_exposed' ? 'common' : 'chassis';
}

test('no symbol stands on another and no wire runs through one, whatever is built like', () => {
  let seen = 0;
  const found: string[] = [];
  for (const isolation of ISOLATIONS) {
    const floated = isolation === 'line_floated' || isolation === 'line_insulated';
    for (const cord of CORDS)
      for (const reach of REACHES)
        for (const line_capacitor of CAPACITORS)
          for (const switch_leg of SWITCHES)
            for (const fault of [null, ...FAULTS])
              for (const selector of ['near', 'far'] as const) {
                if (reach === 'common_exposed' && !floated) continue;
                if (line_capacitor !== 'none' && !floated && isolation !== 'isolating') continue;
                if (line_capacitor !== 'selector' && selector === 'far') continue;
                const { boxes, wires } = layout({
                  isolation,
                  cord,
                  reach,
                  line_capacitor,
                  line_capacitor_class: 'class_y',
                  switch_leg,
                  near_pin: 'b',
                  hot_pin: seen % 2 === 0 ? 'a' : 'b',
                  state: { plug: 'first', switch: seen % 3 === 0 ? 'off' : 'on', selector: line_capacitor === 'selector' ? selector : null },
                  faults: fault === null ? [] : [fault],
                  touched: touched(reach, fault === 'lost_barrier'),
                  labels: [],
                  level: 'below',
                  path: [],
                  flips: { plug: true, switch: true, selector: true },
                  feed: 'direct',
                });
                const what = `${isolation} ${cord} ${reach} ${line_capacitor} ${switch_leg} ${fault} ${selector}`;
                found.push(...faultsOf(boxes, wires).map((fault) => `${what}: ${fault}`));
                seen += 1;
              }
  }
  expect(found.slice(0, 5)).toEqual([]);
  expect(seen).toBeGreaterThan(20_000);
});

test('planted faults of a layout are found', () => {
  const box = (x: number, y: number): Box => ({ symbol: 'capacitor', part: 'load', x, y, width: 30, height: 20 });
  expect(faultsOf([box(0, 0), box(20, 10)], [])).toHaveLength(1);
  expect(faultsOf([box(-1, 0)], [])).toHaveLength(1);
  const through: Wire = { part: 'chassis', points: [[10, -5], [10, 50]] };
  expect(faultsOf([box(0, 0)], [through])).toHaveLength(1);
});

test('plug and switch are turned by touch, and the current, its way and the words follow', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  const id = await inspect(bridge, HOT_CHASSIS);
  await page.goto(`/#/i/${id}/verdict`);
  await settle(page, traffic);
  const tag = await walk.tag.innerText();
  await walk.tap(say('circuit-see'));
  await settle(page, traffic);
  const figure = page.locator('svg .figure');
  const worst = (await figure.textContent()) ?? '';
  expect(tag, 'it opens where the verdict looks').toContain(worst);
  const lit = () => page.locator('.way .main').evaluateAll((lines) => lines.map((line) => line.getAttribute('d')));
  const before = await lit();
  expect(before, 'one line').toHaveLength(1);

  await page.getByRole('button', { name: say('circuit-turn-plug') }).tap();
  await expect(figure).not.toHaveText(worst);
  expect(await lit()).not.toEqual(before);
  await page.getByRole('button', { name: say('circuit-turn-plug') }).tap();
  await expect(figure).toHaveText(worst);
  expect(await lit()).toEqual(before);
});

test('one thing at a time is broken, and going back shows what the verdict quotes', async ({ bridge, page, traffic }) => {
  const id = await inspect(bridge, LEAKY_AMPLIFIER);
  await page.goto(`/#/i/${id}/circuit`);
  await settle(page, traffic);
  const figure = page.locator('svg .figure');
  const quoted = (await figure.textContent()) ?? '';
  const choices = page.locator('section').filter({ hasText: say('circuit-faults') }).getByRole('button');
  const pressed = choices.and(page.locator('[aria-pressed=true]'));
  await expect(pressed).toHaveCount(1);
  await pressed.tap();
  await expect(pressed).toHaveCount(0);
  await expect(figure).not.toHaveText(quoted);
  for (const place of [0, 1]) {
    await choices.nth(place).tap();
    await expect(choices.nth(place)).toHaveAttribute('aria-pressed', 'true');
    await expect(pressed).toHaveCount(1);
  }
  await page.getByRole('button', { name: say('circuit-quoted') }).tap();
  await expect(figure).toHaveText(quoted);
});

test('the walk leads through positions, and says which one is shown', async ({ bridge, page, traffic }) => {
  const id = await inspect(bridge, CLOSED_RADIO);
  await page.goto(`/#/i/${id}/circuit`);
  await settle(page, traffic);
  const steps = page.locator('ol').getByRole('button');
  const count = await steps.count();
  expect(count).toBeGreaterThanOrEqual(2);
  for (let place = 0; place < count; place += 1) {
    await steps.nth(place).tap();
    await expect(steps.nth(place)).toHaveAttribute('aria-current', 'step');
  }
});

test('a unit without a line side has no way for a current', async ({ bridge, page, traffic }) => {
  const id = await inspect(bridge, PICNIC_PORTABLE);
  await page.goto(`/#/i/${id}/circuit`);
  await settle(page, traffic);
  await expect(page.getByText(say('circuit-no-line'))).toBeVisible();
});

/** A transformer with two equal pins, a switch and a ground switch. */
async function withGroundSwitch(bridge: Bridge): Promise<string> {
  const built = everyBuilt().find(
    ({ isolation, cord, unit }) =>
      isolation === 'isolating' && cord === 'two_pin_reversible' && unit.answers?.['line_capacitor'] === 'on_selector',
  );
  if (!built) throw new Error('no unit with a ground switch');
  return inspect(bridge, built.unit);
}

const TURNS = ['circuit-turn-plug', 'circuit-turn-switch', 'circuit-turn-selector'] as const;

test('plug, switch and ground switch are tapped where they are drawn, with room for a finger', async ({ bridge, page, traffic }) => {
  const id = await withGroundSwitch(bridge);
  for (const width of [360, 320]) {
    await page.setViewportSize({ width, height: 640 });
    await page.goto(`/#/i/${id}/circuit`);
    await settle(page, traffic);
    const boxes: Rect[] = [];
    for (const turn of TURNS) {
      const box = await page.getByRole('button', { name: say(turn), exact: true }).boundingBox();
      if (!box) throw new Error(`no ${turn}`);
      expect(Math.min(box.width, box.height), `${turn} at ${width} px`).toBeGreaterThanOrEqual(48);
      boxes.push({ left: box.x, top: box.y, right: box.x + box.width, bottom: box.y + box.height, what: turn });
    }
    boxes.forEach((one, place) => {
      for (const other of boxes.slice(place + 1)) expect(overlap(one, other), `${one.what} on ${other.what} at ${width} px`).toBe(false);
    });
  }
  await page.waitForTimeout(READING_MS);
  for (const [turn, said] of [
    ['circuit-turn-selector', 'circuit-selector-now'],
    ['circuit-turn-switch', 'circuit-switch-now'],
    ['circuit-turn-plug', 'circuit-plug-now'],
  ] as const) {
    const ways = { 'circuit-selector-now': ['near', 'far'], 'circuit-switch-now': ['on', 'off'], 'circuit-plug-now': ['first', 'second'] }[said];
    const stands = ways.map((way) => page.getByRole('button', { name: say(said, { way }), exact: true }));
    const before = (await stands[0]?.isVisible()) ? 0 : 1;
    await page.getByRole('button', { name: say(turn), exact: true }).tap();
    await expect(stands[1 - before] ?? page.locator('nothing')).toBeVisible();
  }
});

test('equal pins are drawn alike, and the tape on pin B goes over with the plug', async ({ bridge, page, traffic }) => {
  await page.goto(`/#/i/${await withGroundSwitch(bridge)}/circuit`);
  await settle(page, traffic);
  await page.waitForTimeout(READING_MS);
  const widths = () => page.locator('svg .pin').evaluateAll((all) => all.map((pin) => getComputedStyle(pin).strokeWidth));
  const tape = async () => (await page.locator('svg .tape').boundingBox())?.x ?? NaN;
  const [one, other, ...more] = await widths();
  expect([other, ...more]).toEqual([one]);
  const before = await tape();
  await page.getByRole('button', { name: say('circuit-turn-plug') }).tap();
  await expect.poll(async () => Math.abs((await tape()) - before)).toBeGreaterThan(60);
});

test('an outlet wired backwards crosses the wires behind it and says so; the plug stays as it fits', async ({ bridge, page, traffic }) => {
  const built = everyBuilt().find(({ isolation, cord, reach }) => isolation === 'line_tied' && cord === 'two_pin_polarised' && reach === 'exposed');
  const inspection = await inspect(bridge, built?.unit ?? HOT_CHASSIS);
  await page.goto(`/#/i/${inspection}/circuit`);
  await settle(page, traffic);
  await page.waitForTimeout(READING_MS);
  const choice = (fault: string) => page.getByRole('button', { name: new RegExp(say(`fault-${fault}`), 'i') });
  const letters = () => page.locator('svg .letter').allInnerTexts();
  const words = say('circuit-wired-backwards').split(' ');
  await choice('neutral_open').tap();
  await expect(page.locator('svg').getByText(say('circuit-other-loads'), { exact: true })).toBeVisible();
  await expect(page.locator('svg .break')).toHaveCount(1);
  const before = await letters();
  // From the hot wire on the left to the contact on the right.
  const crossing = page.locator('svg .wire[d*="L106 66L194 82"]');
  await expect(crossing).toHaveCount(0);
  await choice('outlet_reversed').tap();
  for (const word of words) await expect(page.locator('svg').getByText(word, { exact: true })).toBeVisible();
  expect(await letters()).toEqual(before);
  await expect(crossing).toHaveCount(1);
});

test('beside the hand stands what flows, what the metal is at, and in which position', async ({ bridge, page, traffic }) => {
  const inspection = await inspect(bridge, HOT_CHASSIS);
  const view = await bridge.call<CircuitView>('circuit', { inspection, at: null });
  await page.goto(`/#/i/${inspection}/circuit`);
  await settle(page, traffic);
  const picture = page.locator('.picture svg');
  await expect(picture.locator('.figure')).toHaveText(view.figure ?? '');
  await expect(picture.locator('.volts')).toHaveText(view.volts);
  await expect(picture).toContainText(say('circuit-for-plug', { way: view.state.plug }));
  await expect(picture).toContainText(say('circuit-for-switch', { way: view.state.switch }));
});
