/** What repairs would change: each by itself, stacks of them, their parts, before and after. */

import type { Page } from '@playwright/test';

import type { Bridge } from './bridge';
import { of, type Screen } from './reached';
import {
  CONTRADICTED,
  EARTHED_AMPLIFIER,
  HOT_CHASSIS,
  inspect,
  LEAKY_AMPLIFIER,
  PICNIC_PORTABLE,
  SHELF_RADIO,
  type Unit,
} from './units';
import type { Walk } from './walk';
import { say } from './words';

/** The common on the chassis, its leg and the switch's traced: one arrangement is left. */
export const TIED_RADIO: Unit = {
  ...HOT_CHASSIS,
  name: 'Shelf radio, traced',
  answers: { ...HOT_CHASSIS.answers, common_leg: 'pin_b', switch_leg: 'pin_b' },
};
/** Its common held off the chassis by a resistor and an old capacitor, with a plate that says what it draws. */
export const FLOATED_RADIO: Unit = {
  ...HOT_CHASSIS,
  name: 'Shelf radio, floating chassis',
  answers: { ...HOT_CHASSIS.answers, common_to_chassis: 'through_network', line_capacitor: 'none' },
};

/** The same with an earth wire on its chassis, which is the line: taking that away makes the touch worse at first. */
export const EARTHED_RADIO: Unit = {
  ...TIED_RADIO,
  name: 'Shelf radio, earthed by mistake',
  answers: { ...TIED_RADIO.answers, plug: 'three_pins', earth_wire: 'on_chassis' },
};

/** An inspection with a stack that was chosen, and a page of its repairs. */
const chosen = (unit: Unit, steps: readonly string[], page: string) => async (bridge: Bridge) => {
  const inspection = await inspect(bridge, unit);
  await bridge.call('choose_remedies', { inspection, stack: { steps } });
  return `#/i/${inspection}/repairs/${page}`;
};

const CLOSED_UP = ['polarised_plug', 'switch_to_hot_leg', 'reach_closed'];
const EARTHED = ['three_wire_cord'];

const openRefused = async (_: Walk, page: Page): Promise<void> => {
  const fold = page.locator('summary', { hasText: /not offered|nicht angeboten/ });
  await fold.tap();
  await fold.scrollIntoViewIfNeeded();
};
const side = (name: string) => async (_: Walk, page: Page) => {
  await page.getByRole('radio', { name: new RegExp(`^${say(name)}`) }).tap();
};

/** A choice of which a step is no longer there to be done: its answer was changed afterwards. */
async function refused(bridge: Bridge): Promise<string> {
  const address = await chosen(TIED_RADIO, CLOSED_UP, 'stack')(bridge);
  const inspection = address.split('/')[2];
  await bridge.call('answer', { inspection, question: 'switch_leg', answer: 'pin_a' });
  return address;
}

const EACH: Screen[] = [
  { name: 'repairs-not-ruled-out', reach: of(SHELF_RADIO, 'repairs'), long: true },
  { name: 'repairs-live', reach: of(TIED_RADIO, 'repairs'), long: true },
  { name: 'repairs-leaky', reach: of(LEAKY_AMPLIFIER, 'repairs'), long: true },
  { name: 'repairs-on-earth', reach: of(EARTHED_RADIO, 'repairs') },
  { name: 'repairs-refused', reach: of(LEAKY_AMPLIFIER, 'repairs'), act: openRefused },
  { name: 'repairs-two-faults', reach: of(EARTHED_AMPLIFIER, 'repairs') },
  { name: 'repairs-conflict', reach: of(CONTRADICTED, 'repairs') },
  { name: 'repairs-no-line', reach: of(PICNIC_PORTABLE, 'repairs') },
];

const CLASS_Y = ['network_class_y', 'three_wire_cord', 'fuse_in_hot_leg'];
const openHow = async (_: Walk, page: Page): Promise<void> => {
  await page.locator('summary', { hasText: say('repairs-parts-how') }).first().tap();
};

const STACKS: Screen[] = [
  { name: 'repairs-stack-empty', reach: of(TIED_RADIO, 'repairs/stack'), long: true },
  { name: 'repairs-stack-live', reach: chosen(TIED_RADIO, CLOSED_UP, 'stack'), long: true },
  { name: 'repairs-stack-leaky', reach: chosen(LEAKY_AMPLIFIER, EARTHED, 'stack'), long: true },
  { name: 'repairs-stack-worse', reach: chosen(EARTHED_RADIO, CLOSED_UP, 'stack'), long: true },
  { name: 'repairs-stack-refused', reach: refused },
  { name: 'repairs-stack-on-its-side', reach: chosen(TIED_RADIO, CLOSED_UP, 'stack'), width: 844, height: 390 },
  { name: 'repairs-parts', reach: chosen(FLOATED_RADIO, CLASS_Y, 'parts'), act: openHow, long: true },
  { name: 'repairs-parts-none', reach: of(TIED_RADIO, 'repairs/parts') },
];

const PAIRS: Screen[] = [
  { name: 'repairs-grid', reach: chosen(TIED_RADIO, CLOSED_UP, 'grid'), long: true },
  { name: 'repairs-grid-before', reach: chosen(LEAKY_AMPLIFIER, EARTHED, 'grid'), act: side('repairs-before') },
  { name: 'repairs-grid-on-its-side', reach: chosen(LEAKY_AMPLIFIER, EARTHED, 'grid'), width: 844, height: 390 },
  { name: 'repairs-circuit', reach: chosen(TIED_RADIO, CLOSED_UP, 'circuit'), long: true },
  { name: 'repairs-circuit-before', reach: chosen(LEAKY_AMPLIFIER, EARTHED, 'circuit'), act: side('repairs-before') },
  { name: 'repairs-circuit-wide', reach: chosen(LEAKY_AMPLIFIER, EARTHED, 'circuit'), width: 1280 },
];

export const REPAIRS: readonly Screen[] = [...EACH, ...STACKS, ...PAIRS];
