/** The circuit picture: nothing in it stands on anything else, for whatever arrangement; and what is turned in it. */

import { type Box, type Label, layout, type Point, type Wire } from '../../ui/src/lib/circuit/layout';
import { HIGH, WIDE } from '../../ui/src/lib/circuit/places';
import { way } from '../../ui/src/lib/circuit/way';
import type { CircuitView } from '../../ui/src/lib/types/CircuitView';
import { expect, test } from './check';
import { settle } from './screen';
import { CLOSED_RADIO, HOT_CHASSIS, inspect, LEAKY_AMPLIFIER, PICNIC_PORTABLE } from './units';
import { Walk } from './walk';
import { say } from './words';

interface Rect {
  left: number;
  top: number;
  right: number;
  bottom: number;
  what: string;
}

/** Wider than any letter of 12.5 px is on average; so no label is thought narrower than it is. */
const LETTER = 7.2;
const LINE = 12;

const rectOf = ({ x, y, width, height, symbol, part }: Box): Rect => ({
  left: x,
  top: y,
  right: x + width,
  bottom: y + height,
  what: `${symbol} ${part}`,
});

function rectOfLabel({ text, x, y, anchor }: Label): Rect {
  const width = text.length * LETTER;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, top: y - LINE + 2, right: left + width, bottom: y + 2, what: text };
}

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
function faultsOf(boxes: readonly Box[], labels: readonly Label[], wires: readonly Wire[]): string[] {
  const rects = [...boxes.map(rectOf), ...labels.map(rectOfLabel)];
  const found: string[] = [];
  rects.forEach((one, place) => {
    for (const other of rects.slice(place + 1)) if (overlap(one, other)) found.push(`${one.what} on ${other.what}`);
    if (one.left < 0 || one.top < 0 || one.right > WIDE || one.bottom > HIGH) found.push(`${one.what} is outside`);
  });
  const strangers = [...boxes.filter(({ symbol }) => symbol !== 'outlet' && symbol !== 'plug'), ...labels];
  for (const { points, part } of wires) {
    for (const stranger of strangers) {
      const rect = 'symbol' in stranger ? rectOf(stranger) : rectOfLabel(stranger);
      const own = 'symbol' in stranger && stranger.part !== null && stranger.part === part;
      // What begins, bends or ends in a symbol belongs to it.
      const joined = 'symbol' in stranger && points.some((point) => within(point, rect));
      if (own || joined) continue;
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

test('no symbol, label or line stands on another, whatever is built like', () => {
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
                const labels: CircuitView['labels'] = [
                  ...(line_capacitor === 'none' ? [] : (['near_capacitor', 'far_capacitor'] as const).map((part) => ({ part, text: '0.047 µF' }))),
                  ...(isolation === 'line_floated' ? [{ part: 'near_chassis' as const, text: '470 kΩ ∥ 0.25 µF' }] : []),
                  ...(reach === 'aerial_terminal' ? [{ part: 'aerial_capacitor' as const, text: '0.01 µF' }] : []),
                ];
                const { boxes, labels: placed, wires } = layout({
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
                  labels,
                });
                const what = `${isolation} ${cord} ${reach} ${line_capacitor} ${switch_leg} ${fault} ${selector}`;
                found.push(...faultsOf(boxes, placed, wires).map((fault) => `${what}: ${fault}`));
                seen += 1;
              }
  }
  expect(found.slice(0, 5)).toEqual([]);
  expect(seen).toBeGreaterThan(20_000);
});

test('planted faults of a layout are found', () => {
  const box = (x: number, y: number): Box => ({ symbol: 'capacitor', part: 'load', x, y, width: 30, height: 20 });
  expect(faultsOf([box(0, 0), box(20, 10)], [], [])).toHaveLength(1);
  expect(faultsOf([box(-1, 0)], [], [])).toHaveLength(1);
  const through: Wire = { part: 'chassis', points: [[10, -5], [10, 50]] };
  expect(faultsOf([box(0, 0)], [], [through])).toHaveLength(1);
  expect(faultsOf([box(0, 0)], [{ text: '0.1 µF', x: 5, y: 10, anchor: 'start' }], [])).toHaveLength(1);
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
  const lit = () => page.locator('.way path').evaluateAll((lines) => lines.map((line) => line.getAttribute('d')));
  const before = await lit();
  expect(before.length).toBeGreaterThan(3);

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

test('the way of the current is one line from the outlet to the hand', async ({ bridge }) => {
  for (const unit of [HOT_CHASSIS, LEAKY_AMPLIFIER, CLOSED_RADIO]) {
    const inspection = await inspect(bridge, unit);
    const view = await bridge.call<CircuitView>('circuit', { inspection, at: null });
    const lines = way(view, layout(view));
    // Each line begins or ends where another does, or on one that runs past: nothing hangs in the air.
    for (const line of lines) {
      const ends = [line[0], line.at(-1)];
      const joined = ends.some((end) => end && lines.some((other) => other !== line && other.some(([x, y]) => Math.abs(x - end[0]) <= 10 && Math.abs(y - end[1]) <= 70)));
      expect(joined, JSON.stringify(line)).toBe(true);
    }
  }
});
