/** Every screen and state of it that is looked at, with how to reach it. The one list for all checks. */

import type { Page } from '@playwright/test';

import type { Bridge } from './bridge';
import { MEASURES } from './measure-screens';
import { PHOTOS } from './photo-screens';
import { PROOFS } from './proof-screens';
import { QUEUES } from './queue-screens';
import { at, of, type Screen } from './reached';
import { RECORDS } from './record-screens';
import { REPAIRS } from './repair-screens';
import {
  CLOSED_RADIO,
  CORD_SEEN,
  EARTHED_AMPLIFIER,
  HOT_CHASSIS,
  inspect,
  LEAKY_AMPLIFIER,
  METER_AT_HAND,
  PICNIC_PORTABLE,
  SHELF_RADIO,
  TESTABLE,
  type Unit,
} from './units';
import { VERDICTS } from './verdict-screens';
import { Walk } from './walk';
import { say, sayAnswer } from './words';

const ALL_ACCESS = ['outside', 'cover_off', 'meter'];
/** A new unit, nothing answered, everything allowed. */
const NEW: Unit = { name: 'Shelf radio, brown case', place: 'Stall 14', access: ALL_ACCESS };
/** An id of the right form that no record has. */
const NOBODY = '00000000-0000-7000-8000-000000000000';

const FIRST_RUN: Screen[] = [1, 2, 3].map((step) => ({
  name: `first-${step}`,
  reach: at(`#/first/${step}`),
  unwelcomed: true,
}));

/** One of each class, both bases. */
const SHELF = [
  PICNIC_PORTABLE,
  EARTHED_AMPLIFIER,
  CLOSED_RADIO,
  LEAKY_AMPLIFIER,
  HOT_CHASSIS,
  SHELF_RADIO,
];

async function shelf(bridge: Bridge): Promise<string> {
  for (const unit of SHELF) await inspect(bridge, unit);
  return '#/';
}

const LISTS: Screen[] = [
  { name: 'list-empty', reach: at('#/') },
  { name: 'list', reach: shelf },
  {
    name: 'list-nothing-found',
    reach: shelf,
    act: (_, page) => page.getByRole('searchbox').fill('zither'),
  },
  {
    name: 'list-demo',
    reach: async (bridge) => {
      await bridge.call('load_demo', {});
      return '#/';
    },
    long: true,
  },
  { name: 'new-unit', reach: at('#/new'), long: true },
  {
    name: 'new-unit-started-too-soon',
    reach: at('#/new'),
    act: (walk) => walk.tap(say('new-start')),
    long: true,
  },
  { name: 'wide-nothing-open', reach: shelf, width: 1280 },
  {
    name: 'wide-verdict',
    reach: async (bridge) => {
      await shelf(bridge);
      return of(SHELF_RADIO, 'verdict')(bridge);
    },
    width: 1280,
  },
];

const openHow = (_: Walk, page: Page) =>
  page.locator('summary', { hasText: say('question-how-to-look') }).tap();
const next = (walk: Walk) => walk.tap(say('next'));

/** A line capacitor of which only the value is open. */
const OPEN_VALUE: Unit = { ...LEAKY_AMPLIFIER, values: {} };

const QUESTIONS: Screen[] = [
  { name: 'question-drawings', reach: of(NEW, 'q/plug'), long: true },
  { name: 'question-how-to-look', reach: of(NEW, 'q/plug'), act: openHow, long: true },
  { name: 'question-kind', reach: of({ ...NEW, answers: { plug: 'two_equal_blades' } }, 'q/kind'), long: true },
  { name: 'question-materials', reach: of({ ...NEW, access: ['outside', 'cover_off'] }, 'q/materials'), long: true },
  { name: 'question-several', reach: of(NEW, 'q/bare_metal'), long: true },
  {
    name: 'question-several-ticked',
    reach: of({ ...NEW, answers: { plug: 'two_equal_blades' } }, 'q/bare_metal'),
    act: async (walk) => {
      await walk.tap(sayAnswer('bare_metal', 'screws_or_shafts'));
      await walk.tap(sayAnswer('bare_metal', 'instrument_jack'));
    },
  },
  {
    name: 'question-places',
    reach: of({ ...NEW, answers: { plug: 'two_equal_blades' } }, 'q/bare_metal'),
    act: (walk) => walk.tap(sayAnswer('bare_metal', 'none_anywhere')),
    long: true,
  },
  { name: 'question-several-unticked', reach: of(NEW, 'q/bare_metal'), act: next },
  { name: 'question-value', reach: of(OPEN_VALUE, 'q/values.line_capacitor') },
  { name: 'question-value-wrong', reach: of(OPEN_VALUE, 'q/values.line_capacitor'), act: next },
  { name: 'question-rated', reach: of(SHELF_RADIO, 'also/values.rated') },
  { name: 'question-hint', reach: of(SHELF_RADIO, 'hint/rating_plate') },
  { name: 'question-count', reach: of(NEW, 'q/tube_count') },
  { name: 'question-types', reach: of(NEW, 'q/tube_list') },
  { name: 'question-caution', reach: of(SHELF_RADIO, 'also/cord') },
  { name: 'question-changed', reach: of(SHELF_RADIO, 'change/plug') },
];

const tubes = (types: string): Unit => ({ ...NEW, tubes: types.split(' ') });
/** Five heaters that need the whole line: a line-up of the trade (common practice). */
const STRING = tubes('12SA7 12SK7 12SQ7 50L6GT 35Z5GT');
/** Four that need half of it. */
const DROPPER = tubes('6SC7 6SJ7 25L6GT 25Z6GT');
/** One that draws another current than the rest. */
const CLASH = tubes('12SA7 12SK7 12SQ7 50L6GT 35Z5GT 6SJ7');
/** A voltage that a transformer gives. */
const PARALLEL = tubes('12AX7 6V6 5Y3GT');
const LONG = tubes('6BE6 6BA6 6BA6 6AV6 6AU6 6AL5 6BE6 6BA6 6BA6 6AV6 6AU6 6AL5 25L6GT 25Z6GT 25L6GT 25Z6GT 12SK7 QQ99');

/** Battery tubes whose rectifier has its heater on the line: a line-up of the trade (common practice). */
const RECTIFIED = tubes('1R5 1U4 1U5 3V4 117Z3');
/** So little is left of the line that its name has no room in it: 120 − 110.2 V (tube manuals, from memory). */
const THIN = tubes('12SA7 12SK7 50L6GT 35Z5GT #47 0D3');
/** As many as the core takes, most of them several times. */
const SIXTY = tubes('6BE6 6BA6 6AV6 12AX7 50C5 QQ99 '.repeat(10).trim());
/** Types that are no more than a guess by their number. */
const BY_RULE = tubes('8AW8 12DQ6 12SK7');

const type = (text: string) => async (_: Walk, page: Page) => {
  await page.getByRole('textbox').tap();
  await page.getByRole('textbox').fill(text);
  await page.getByRole('list', { name: say('tubes-hits') }).getByRole('button').first().waitFor();
};

const HEATERS: Screen[] = [
  { name: 'heaters-empty', reach: at('#/heaters'), long: true },
  { name: 'heaters-example', reach: at('#/heaters'), act: example, long: true },
  { name: 'heaters-no-supply', reach: at('#/heaters'), act: (walk) => walk.tap(say('heaters-example-show')) },
  { name: 'heaters-typing', reach: of(STRING, 'heaters'), act: (_, page) => page.getByRole('textbox').tap() },
  { name: 'heaters-string', reach: of(STRING, 'heaters'), long: true },
  { name: 'heaters-dropper', reach: of(DROPPER, 'heaters'), long: true },
  { name: 'heaters-clash', reach: of(CLASH, 'heaters'), long: true },
  { name: 'heaters-parallel', reach: of(PARALLEL, 'heaters'), long: true },
  { name: 'heaters-long', reach: of(LONG, 'heaters'), long: true },
  { name: 'heaters-rectified', reach: of(RECTIFIED, 'heaters'), long: true },
  { name: 'heaters-thin', reach: of(THIN, 'heaters') },
  { name: 'heaters-sixty', reach: of(SIXTY, 'heaters') },
  {
    name: 'heaters-sources',
    reach: of(STRING, 'heaters'),
    act: (_, page) => page.locator('summary', { hasText: say('heaters-sources') }).tap(),
    long: true,
  },
  { name: 'tubes-hits', reach: of(NEW, 'q/tube_list'), act: type('12SK') },
  { name: 'tubes-corrected', reach: of(NEW, 'q/tube_list'), act: type('I2SK7') },
  { name: 'tubes-unknown', reach: of(NEW, 'q/tube_list'), act: type('QQ99') },
  { name: 'tubes-by-rule', reach: of(BY_RULE, 'change/tube_list'), long: true },
  { name: 'tubes-listed', reach: of(STRING, 'change/tube_list'), long: true },
  {
    name: 'tubes-order',
    reach: of(STRING, 'change/tube_list'),
    act: (walk) => walk.tap(say('tubes-arrange')),
  },
];

/** The example, on a supply that was chosen. */
async function example(walk: Walk, page: Page): Promise<void> {
  await walk.tap(say('heaters-example-show'));
  await page.getByLabel(say('heaters-supply'), { exact: true }).selectOption('120v_60hz');
}

const READ: Unit = { ...SHELF_RADIO, access: ALL_ACCESS, readings: { ohms_a_part_on: 220_000 } };

const METERED: Unit = {
  ...SHELF_RADIO,
  access: ALL_ACCESS,
  readings: { ohms_a_b_on: 120, ohms_a_b_off: 'OL', ohms_b_part_on: 0.4 },
};

const unplugged = (walk: Walk) => walk.tap(say('readings-is-unplugged'));

const REVIEW: Screen[] = [
  { name: 'found-nothing', reach: of(NEW, 'found') },
  { name: 'found', reach: of(READ, 'found'), long: true },
  { name: 'readings', reach: of(READ, 'readings'), long: true },
  { name: 'reading', reach: of(READ, 'readings/ohms_a_b_on'), act: unplugged },
  { name: 'reading-first', reach: of(READ, 'readings/ohms_a_b_on') },
  { name: 'reading-kept', reach: of(METERED, 'readings/ohms_b_part_on'), long: true },
  { name: 'reading-asked', reach: of(METER_AT_HAND, '') },
  { name: 'reading-asked-entered', reach: of(METER_AT_HAND, ''), act: unplugged, long: true },
  { name: 'reading-asked-kept', reach: of(METER_AT_HAND, ''), act: (walk) => walk.enter('124') },
  { name: 'readings-plan', reach: of(METERED, 'readings'), long: true },
];

const live = (kept: Unit['live']): Unit => ({
  ...TESTABLE,
  live: { qualified: true, protection: 'gfci', ...kept },
});

const qualified = (walk: Walk) => walk.tap(say('touch-i-am-qualified'));
/** The person says that they are qualified, and proves the earth of this visit. */
async function begun(walk: Walk, page: Page): Promise<void> {
  await qualified(walk);
  await page.getByLabel(say('touch-earth-volts'), { exact: true }).fill('119');
  await walk.tap(say('question-keep'));
}
const EARTH = { earth_volts: 119 };
/** Worked by hand for 0.047 µF from the one leg and a winding of 0.5 nF from the other: a divider. */
const COLD_SIDE = { check_first_off: 1.3, first_off: 0.03, check_first_on: 1.3, first_on: 0.03 };
/** The capacitor's leg on hot: a meter of high impedance shows nearly the line, one of 3 kΩ 6 V. */
const HOT_SIDE = { check_second_off: 117, low_second_off: 6.3, second_off: 3.2 };

const charge = (farads: string, volts: string, bleed: string) => async (_: Walk, page: Page) => {
  await page.getByLabel(say('charge-farads'), { exact: true }).fill(farads);
  await page.getByLabel(say('charge-volts'), { exact: true }).fill(volts);
  await page.getByLabel(say('charge-bleed'), { exact: true }).fill(bleed);
};

const BENCH: Screen[] = [
  { name: 'charge-empty', reach: at('#/charge') },
  { name: 'charge', reach: at('#/charge'), act: charge('50u', '450', '220k'), long: true },
  { name: 'charge-kept', reach: of(TESTABLE, 'charge'), act: charge('220u', '500', ''), long: true },
  { name: 'charge-wrong', reach: at('#/charge'), act: charge('47', 'many', '-1') },
  { name: 'insulation-refused', reach: of(METERED, 'insulation'), long: true },
  { name: 'insulation', reach: of(TESTABLE, 'insulation'), long: true },
  {
    name: 'insulation-kept',
    reach: of({ ...TESTABLE, readings: { insulation_megohms: 1.4 } }, 'insulation'),
    long: true,
  },
  { name: 'touch-refused', reach: of(METERED, 'touch'), long: true },
  { name: 'touch-first', reach: of(CORD_SEEN, 'touch') },
  { name: 'touch-qualified', reach: of(TESTABLE, 'touch'), long: true },
  {
    name: 'touch-protection',
    reach: of({ ...TESTABLE, live: { qualified: true } }, 'touch'),
    long: true,
  },
  { name: 'touch-earth', reach: of(live({}), 'touch'), act: qualified, long: true },
  {
    name: 'touch-earth-unproven',
    reach: of(live({ earth_volts: 3 }), 'touch'),
    act: qualified,
  },
  { name: 'touch-alone', reach: of(live(EARTH), 'touch'), act: begun, long: true },
  {
    name: 'touch-network',
    reach: of(live(EARTH), 'touch'),
    act: async (walk, page) => {
      await begun(walk, page);
      await page.getByLabel(say('touch-check-volts'), { exact: true }).fill('1.3');
      await walk.tap(say('question-keep'));
    },
    long: true,
  },
  {
    name: 'touch-too-much',
    reach: of(live({ ...EARTH, ...COLD_SIDE, check_second_on: 117 }), 'touch'),
    act: begun,
    long: true,
  },
  {
    name: 'touch-above',
    reach: of(live({ ...EARTH, ...COLD_SIDE, ...HOT_SIDE }), 'touch'),
    long: true,
  },
  {
    name: 'touch-tripped',
    reach: of(live({ ...EARTH, tripped_first_off: true as const }), 'touch'),
    long: true,
  },
  {
    name: 'touch-isolated',
    reach: of(live({ protection: 'isolating', ...EARTH, check_first_off: 0.4, first_off: 0.1 }), 'touch'),
    act: begun,
    long: true,
  },
];

const REST: Screen[] = [
  { name: 'settings', reach: at('#/settings'), long: true },
  { name: 'licences', reach: at('#/licences'), long: true },
  {
    name: 'licences-open',
    reach: at('#/licences'),
    act: (_, page) => page.locator('summary', { hasText: 'zlib License' }).tap(),
  },
  { name: 'shocked', reach: at('#/shocked'), long: true },
  { name: 'trouble', reach: at(`#/i/${NOBODY}/verdict`) },
];

const PAPERS: Screen[] = [
  // The message says when it was written.
  { name: 'papers', reach: of(HOT_CHASSIS, 'papers'), varies: (page) => page.getByRole('textbox'), long: true },
  { name: 'papers-no-line', reach: of(PICNIC_PORTABLE, 'papers'), varies: (page) => page.getByRole('textbox') },
];

export const ALL_SCREENS: readonly Screen[] = [
  ...FIRST_RUN,
  ...LISTS,
  ...QUESTIONS,
  ...HEATERS,
  ...PHOTOS,
  ...MEASURES,
  ...REVIEW,
  ...BENCH,
  ...VERDICTS,
  ...REPAIRS,
  ...PAPERS,
  ...PROOFS,
  ...QUEUES,
  ...RECORDS,
  ...REST,
];

/** One of them, by its name. */
export function screenNamed(name: string): Screen {
  const found = ALL_SCREENS.find((screen) => screen.name === name);
  if (!found) throw new Error(`no screen ${name}`);
  return found;
}
