/** The verdict and what explains it. */

import type { Page } from '@playwright/test';

import { of, type Screen } from './reached';
import {
  CLOSED_RADIO,
  CONTRADICTED,
  EARTHED_AMPLIFIER,
  HOT_CHASSIS,
  LEAKY_AMPLIFIER,
  PICNIC_PORTABLE,
  READ_OTHERWISE,
  SHELF_RADIO,
  type Unit,
} from './units';
import type { Walk } from './walk';
import { say } from './words';

const TAGS: Screen[] = [
  { name: 'verdict-live', unit: HOT_CHASSIS },
  { name: 'verdict-live-not-ruled-out', unit: SHELF_RADIO },
  { name: 'verdict-leaky', unit: LEAKY_AMPLIFIER },
  { name: 'verdict-one-fault', unit: CLOSED_RADIO },
  { name: 'verdict-two-faults', unit: EARTHED_AMPLIFIER },
  { name: 'verdict-no-line', unit: PICNIC_PORTABLE },
  { name: 'verdict-conflict', unit: CONTRADICTED },
].map(({ name, unit }) => ({ name, reach: of(unit, 'verdict'), long: true }));

/** What lies below the tag, where the phone is scrolled to it. */
const below = (heading: string) => (_: Walk, page: Page) =>
  page
    .getByRole('heading', { level: 2, name: say(heading), exact: true })
    .evaluate((found) => window.scrollTo(0, found.getBoundingClientRect().top + window.scrollY - 12));

const SECTIONS: Screen[] = [
  { name: 'verdict-stopped', reach: of(SHELF_RADIO, 'verdict'), act: below('verdict-next') },
  { name: 'verdict-rests-on-one', reach: of(LEAKY_AMPLIFIER, 'verdict'), act: below('verdict-rests-on-one') },
  { name: 'verdict-rests-on', reach: of(CLOSED_RADIO, 'verdict'), act: below('verdict-rests-on') },
  { name: 'verdict-conflict-drawn', reach: of(CONTRADICTED, 'verdict'), act: below('verdict-conflicts') },
  { name: 'verdict-conflict-reading', reach: of(READ_OTHERWISE, 'verdict'), act: below('verdict-conflicts') },
];

const GRIDS: Screen[] = [
  { name: 'grid-live', reach: of(HOT_CHASSIS, 'grid'), long: true },
  { name: 'grid-leaky', reach: of(LEAKY_AMPLIFIER, 'grid'), long: true },
  { name: 'grid-one-way', reach: of(EARTHED_AMPLIFIER, 'grid'), long: true },
  { name: 'grid-no-line', reach: of(PICNIC_PORTABLE, 'grid') },
];

const GFCI: Screen['act'] = (walk) => walk.tap(say('chart-gfci'));

const CHARTS: Screen[] = [
  { name: 'chart-live', reach: of(HOT_CHASSIS, 'chart'), long: true },
  { name: 'chart-leaky-gfci', reach: of(LEAKY_AMPLIFIER, 'chart'), act: GFCI, long: true },
  { name: 'chart-two-faults', reach: of(EARTHED_AMPLIFIER, 'chart'), long: true },
  { name: 'chart-no-line', reach: of(PICNIC_PORTABLE, 'chart') },
];

const onSelector: Unit = {
  ...LEAKY_AMPLIFIER,
  answers: { ...LEAKY_AMPLIFIER.answers, selector: 'present', line_capacitor: 'on_selector' },
};
const toTop = (page: Page) => page.evaluate(() => window.scrollTo(0, 0));
/** Breaks one thing, and looks at the picture again. */
const fails = (fault: string) => async (_: Walk, page: Page) => {
  const name = say(`fault-${fault}`);
  await page.getByRole('button', { name: name.charAt(0).toUpperCase() + name.slice(1) }).or(page.getByRole('button', { name })).tap();
  await toTop(page);
};
/** The picture starts with the pair that the verdict quotes, and another thing that breaks takes its place. */
const breaksEarthed = async (walk: Walk, page: Page) => {
  await fails('outlet_reversed')(walk, page);
  await fails('stray_far')(walk, page);
};
const lastStep = (_: Walk, page: Page) => page.getByRole('button', { name: new RegExp(say('walk-pair')) }).tap();

const CIRCUITS: Screen[] = [
  { name: 'circuit-ground-switch', reach: of(onSelector, 'circuit') },
  { name: 'circuit-neutral-open', reach: of(HOT_CHASSIS, 'circuit'), act: fails('neutral_open') },
  { name: 'circuit-wired-backwards', reach: of(EARTHED_AMPLIFIER, 'circuit'), act: fails('outlet_reversed') },
  { name: 'circuit-breaker-trips', reach: of(EARTHED_AMPLIFIER, 'circuit'), act: breaksEarthed },
  { name: 'circuit-pair', reach: of(EARTHED_AMPLIFIER, 'circuit'), act: lastStep },
  { name: 'circuit-on-its-side', reach: of(HOT_CHASSIS, 'circuit'), width: 844, height: 390 },
  { name: 'circuit-live', reach: of(HOT_CHASSIS, 'circuit'), long: true },
  { name: 'circuit-leaky', reach: of(LEAKY_AMPLIFIER, 'circuit'), long: true },
  { name: 'circuit-one-fault', reach: of(CLOSED_RADIO, 'circuit') },
  { name: 'circuit-two-faults', reach: of(EARTHED_AMPLIFIER, 'circuit') },
  { name: 'circuit-no-line', reach: of(PICNIC_PORTABLE, 'circuit') },
];

export const VERDICTS: readonly Screen[] = [...TAGS, ...SECTIONS, ...GRIDS, ...CHARTS, ...CIRCUITS];
