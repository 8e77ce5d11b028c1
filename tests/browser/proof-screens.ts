/** Where a unit will be plugged in, and the proof of its repair. */

import type { Page } from '@playwright/test';

import type { Bridge } from './bridge';
import { repaired, type Repaired, SOUND } from './proofs';
import { of, type Screen } from './reached';
import { EARTHED_AMPLIFIER, HOT_CHASSIS, LEAKY_AMPLIFIER, PICNIC_PORTABLE, type Unit } from './units';
import type { Walk } from './walk';
import { say } from './words';

const behind = (unit: Unit, feed: 'isolated' | 'step_down_auto'): Unit => ({ ...unit, fed: { feed } });

const CIRCUITS: Screen[] = [
  { name: 'circuit-isolated', reach: of(behind(HOT_CHASSIS, 'isolated'), 'circuit'), act: (_, page) => stepOne(page), long: true },
  { name: 'circuit-isolated-leaky', reach: of(behind(LEAKY_AMPLIFIER, 'isolated'), 'circuit'), act: (_, page) => stepOne(page) },
  { name: 'circuit-feed-earthed', reach: of(behind(HOT_CHASSIS, 'isolated'), 'circuit'), long: true },
  { name: 'circuit-step-down', reach: of(behind(HOT_CHASSIS, 'step_down_auto'), 'circuit'), long: true },
  { name: 'circuit-step-down-tap', reach: of(behind(HOT_CHASSIS, 'step_down_auto'), 'circuit'), act: (_, page) => stepOne(page) },
  { name: 'circuit-step-down-earthed', reach: of(behind(EARTHED_AMPLIFIER, 'step_down_auto'), 'circuit') },
];

/** The least as found: the first step of the walk. */
async function stepOne(page: Page): Promise<void> {
  await page.getByRole('button', { name: new RegExp(say('walk-kindest')) }).tap();
  await page.evaluate(() => window.scrollTo(0, 0));
}

const OUTLETS: Screen[] = [
  { name: 'outlet', reach: of(HOT_CHASSIS, 'outlet'), long: true },
  { name: 'outlet-isolated', reach: of(behind(LEAKY_AMPLIFIER, 'isolated'), 'outlet'), long: true },
  { name: 'outlet-step-down', reach: of(behind(HOT_CHASSIS, 'step_down_auto'), 'outlet'), act: (_, page) => toInput(page), long: true },
  { name: 'outlet-input-wrong', reach: of(behind(HOT_CHASSIS, 'step_down_auto'), 'outlet'), act: inputWrong },
  { name: 'outlet-no-line', reach: of(PICNIC_PORTABLE, 'outlet') },
];

/** To what goes into the transformer. */
const toInput = (page: Page) =>
  page.getByLabel(say('field-input_volts'), { exact: true }).evaluate((field) => window.scrollTo(0, field.getBoundingClientRect().top + window.scrollY - 300));

/** Less than comes out of it. */
async function inputWrong(walk: Walk, page: Page): Promise<void> {
  await page.getByLabel(say('field-input_volts'), { exact: true }).fill('20');
  await walk.tap(say('question-keep'));
  await page.getByRole('alert').filter({ hasText: say('field-input_volts') }).waitFor();
  await toInput(page);
}

/** An amplifier that was given a three-wire cord, its earth on the chassis. */
const CORDED: Repaired = { unit: LEAKY_AMPLIFIER, stack: { steps: ['three_wire_cord'] } };
const entered = (count: number): Repaired => ({ ...CORDED, entries: SOUND.slice(0, count) });
const ofProof = (kept: Repaired, line = '') => async (bridge: Bridge) =>
  `#/i/${await repaired(bridge, kept)}/proof${line && `/${line}`}`;
const tried = (bond: number): Repaired => ({ ...CORDED, entries: [['earth_bond', { read: bond }]] });

/** A second inspection of a unit, as it is found after its repair. */
async function again(bridge: Bridge, answers: Unit['answers']): Promise<string> {
  const first = await repaired(bridge, { ...CORDED, entries: SOUND });
  const { unit } = await bridge.call<{ unit: { id: string } }>('show_inspection', { inspection: first });
  const access = ['outside', 'cover_off'];
  const { id: inspection } = await bridge.call<{ id: string }>('start_inspection', { unit: unit.id, access });
  for (const [question, answer] of Object.entries({ ...LEAKY_AMPLIFIER.answers, ...answers })) {
    await bridge.call('answer', { inspection, question, answer });
  }
  return `#/i/${inspection}/proof`;
}
const qualified = (walk: Walk) => walk.tap(say('touch-i-am-qualified'));
const badFigure = async (walk: Walk, page: Page) => {
  await page.getByLabel(say('proving-ohms'), { exact: true }).fill('none');
  await walk.tap(say('question-keep'));
};

/** The cord that was fitted. */
const REPAIRED: Unit['answers'] = { plug: 'three_pins', earth_wire: 'on_chassis' };

/** The day of the first inspection. */
const whenFirst = (page: Page) => page.getByRole('button', { name: say('proving-see-first') }).locator('small');

const LINES: Screen[] = [
  { name: 'proof-empty', reach: of(LEAKY_AMPLIFIER, 'proof') },
  { name: 'proof-open', reach: ofProof(CORDED), long: true },
  { name: 'proof-figure', reach: ofProof(CORDED, 'earth_bond'), long: true },
  { name: 'proof-figure-wrong', reach: ofProof(CORDED, 'earth_bond'), act: badFigure },
  { name: 'proof-holds', reach: ofProof(CORDED, 'cord_pull'), long: true },
  { name: 'proof-over-range', reach: ofProof(CORDED, 'hot_blade_open_off') },
  { name: 'proof-gate', reach: ofProof(entered(5), 'chassis_volts_loaded'), long: true },
  { name: 'proof-positions', reach: ofProof(entered(5), 'chassis_volts_loaded'), act: qualified, long: true },
  { name: 'proof-line-failed', reach: ofProof(tried(4.7), 'earth_bond'), long: true },
  { name: 'proof-line-passed', reach: ofProof(tried(0.08), 'earth_bond') },
  { name: 'proof-held', reach: ofProof(tried(4.7), 'leakage_first') },
  { name: 'proof-failed', reach: ofProof({ ...CORDED, entries: [...SOUND.slice(0, 2), ['insulation', { read: 0.3 }]] }), long: true },
  { name: 'proof-not-ready', reach: ofProof(entered(3)), act: (walk) => walk.tap(say('proving-ready')) },
  { name: 'proof-passed', reach: ofProof({ ...CORDED, entries: SOUND }), act: toEnd },
  { name: 'proof-ready', reach: ofProof({ ...CORDED, entries: SOUND, ready: true }), act: toEnd, long: true },
  { name: 'proof-compared', reach: (bridge) => again(bridge, REPAIRED), act: toEnd, varies: whenFirst },
  { name: 'proof-compared-worse', reach: (bridge) => again(bridge, { transformer: 'none', common_to_chassis: 'direct' }), act: toEnd, varies: whenFirst },
  { name: 'proof-on-its-side', reach: ofProof(CORDED, 'earth_bond'), width: 844, height: 390 },
];

async function toEnd(_: Walk, page: Page): Promise<void> {
  await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
}

export const PROOFS: readonly Screen[] = [...CIRCUITS, ...OUTLETS, ...LINES];
