/** Circuit pictures of every arrangement that somebody can be shown, as the core gives them. */

import type { CircuitView } from '../../ui/src/lib/types/CircuitView';
import type { Cord } from '../../ui/src/lib/types/Cord';
import type { Feed } from '../../ui/src/lib/types/Feed';
import type { Isolation } from '../../ui/src/lib/types/Isolation';
import type { LineCapacitor } from '../../ui/src/lib/types/LineCapacitor';
import type { Reach } from '../../ui/src/lib/types/Reach';
import type { SwitchLeg } from '../../ui/src/lib/types/SwitchLeg';
import type { Bridge } from './bridge';
import { inspect, type Unit } from './units';

type Answers = Record<string, string | readonly string[]>;
type Metal = Exclude<Isolation, 'no_line'>;

/** What an inspector finds who opens a unit of each kind: the core is left with this one. */
const ISOLATIONS: Record<Metal, Answers> = {
  line_tied: { transformer: 'none', common_to_chassis: 'direct' },
  line_rectified: { transformer: 'none', common_to_chassis: 'direct', common_leg: 'neither' },
  line_floated: { transformer: 'none', common_to_chassis: 'through_network' },
  line_insulated: { transformer: 'none', common_to_chassis: 'not_joined' },
  heater_transformer: { transformer: 'heaters_only_traced', common_to_chassis: 'direct' },
  // Nothing that is seen tells it from the one before, and their parts are the same.
  autotransformer: { transformer: 'heaters_only_traced', common_to_chassis: 'direct' },
  isolating: { transformer: 'separate_traced' },
};

const CORDS: Record<Cord, Answers> = {
  two_pin_reversible: { plug: 'two_equal_blades' },
  two_pin_polarised: { plug: 'two_polarised_blades' },
  three_pin_earthed: { plug: 'three_pins', earth_wire: 'on_chassis' },
  three_pin_unearthed: { plug: 'three_pins', earth_wire: 'not_on_chassis' },
  three_pin_cut: { plug: 'earth_pin_missing' },
  three_pin_reversible_earthed: { plug: 'three_pins_reversible', earth_wire: 'on_chassis' },
  three_pin_reversible_unearthed: { plug: 'three_pins_reversible', earth_wire: 'not_on_chassis' },
};

const REACHES: Record<Reach, Answers> = {
  closed: { bare_metal: ['none_anywhere'], back: 'fitted', terminals: ['none'] },
  aerial_terminal: { bare_metal: ['none_anywhere'], back: 'fitted', terminals: ['aerial_or_earth'] },
  exposed: { bare_metal: ['screws_or_shafts'], back: 'fitted', terminals: ['none'], metal_joined: 'chassis' },
  handheld: { bare_metal: ['instrument_jack'], back: 'fitted', terminals: ['none'], metal_joined: 'chassis' },
  common_exposed: { bare_metal: ['socket_or_pickup'], back: 'fitted', terminals: ['none'], metal_joined: 'common' },
};

/** In which order the other factors take their turns, so that each meets each isolation, cord and reach. */
const CAPACITORS: readonly LineCapacitor[] = ['selector', 'near_leg', 'both_legs', 'far_leg', 'none'];
const SWITCHES: readonly SwitchLeg[] = ['far', 'near', 'both', 'none'];
const CAPACITOR_ANSWERS: Record<LineCapacitor, string> = {
  none: 'none',
  near_leg: 'pin_b_leg',
  far_leg: 'pin_a_leg',
  both_legs: 'both_legs',
  selector: 'on_selector',
};
const SWITCH_ANSWERS: Record<SwitchLeg, string> = { near: 'pin_b', far: 'pin_a', both: 'both', none: 'none' };

const hasOwnCommon = (isolation: Metal): boolean => isolation === 'line_floated' || isolation === 'line_insulated';

export interface Built {
  isolation: Metal;
  cord: Cord;
  reach: Reach;
  unit: Unit;
}

export const EVERY_ISOLATION = Object.keys(ISOLATIONS) as Metal[];

/** Every isolation × cord × reach that exists; capacitor and switch take turns. */
export function everyBuilt(): Built[] {
  const built: Built[] = [];
  for (const isolation of EVERY_ISOLATION) {
    for (const cord of Object.keys(CORDS) as Cord[]) {
      for (const reach of Object.keys(REACHES) as Reach[]) {
        if (reach === 'common_exposed' && !hasOwnCommon(isolation)) continue;
        // Held metal may as well be on the common, which is worse: alone on the chassis it is like bare metal.
        const found = reach === 'handheld' && hasOwnCommon(isolation) ? 'exposed' : reach;
        built.push({ isolation, cord, reach, unit: unitOf(isolation, cord, found, built.length) });
      }
    }
  }
  return built;
}

/** The same behind a transformer, reaches taking turns: what stands in front of the outlet has nothing to do with them. */
export function builtBehind(feed: Feed): Built[] {
  const isTurn = ({ cord, reach }: Built, place: number): boolean =>
    EVERY_FAULT || Object.keys(REACHES).indexOf(reach) === (Object.keys(CORDS).indexOf(cord) + place) % 4;
  const all = EVERY_ISOLATION.flatMap((isolation, place) =>
    everyBuilt().filter((built) => built.isolation === isolation && isTurn(built, place)),
  );
  return all.map((built) => ({ ...built, unit: { ...built.unit, fed: { feed } } }));
}

/** `turn` says which of the other factors it has. */
function unitOf(isolation: Metal, cord: Cord, reach: Reach, turn: number): Unit {
  const capacitor = CAPACITORS[turn % CAPACITORS.length] ?? 'none';
  const leg = SWITCHES[turn % SWITCHES.length] ?? 'none';
  const takesCapacitor = isolation === 'isolating' || hasOwnCommon(isolation);
  const answers: Answers = {
    ...ISOLATIONS[isolation],
    ...(isolation === 'isolating' || isolation === 'line_rectified' ? {} : { common_leg: 'pin_b' }),
    ...CORDS[cord],
    ...REACHES[reach],
    switch_leg: SWITCH_ANSWERS[leg],
  };
  if (takesCapacitor) {
    answers['line_capacitor'] = CAPACITOR_ANSWERS[capacitor];
    if (capacitor === 'selector') answers['selector'] = 'present';
    if (capacitor !== 'none') answers['line_capacitor_class'] = turn % 3 === 0 ? 'ordinary' : 'class_y';
  }
  return { name: `${isolation} ${cord} ${reach}`, access: ['outside', 'cover_off'], answers };
}

/** Whether each arrangement is looked at with every fault; else with one, which take turns over the arrangements. */
export const EVERY_FAULT = process.env['COLDCHASSIS_CIRCUITS'] === 'all';

/** Pictures of one arrangement: as the verdict quotes it, and with faults; plug and switches take turns. */
export async function picturesOf(
  bridge: Bridge,
  { isolation, reach, unit }: Built,
  only?: number,
): Promise<CircuitView[]> {
  const inspection = await inspect(bridge, unit);
  const ask = (at: unknown) => bridge.call<CircuitView>('circuit', { inspection, at });
  const first = await ask(null);
  const views = [first];
  const faults = [[], ...first.choices.map(({ fault }) => [fault])];
  for (const [turn, these] of faults.entries()) {
    if (only !== undefined && turn !== only % faults.length) continue;
    const plug = first.flips.plug && turn % 2 === 1 ? 'second' : 'first';
    const selector = first.flips.selector ? (turn % 2 === 0 ? 'near' : 'far') : null;
    views.push(await ask({ plug, switch: turn % 3 === 0 ? 'on' : 'off', selector, faults: these }));
  }
  return views.map((view) => ({ ...view, isolation, reach }));
}

/** Pictures of one arrangement with an output of the transformer in front on earth, both ways round. */
export async function withEarthedFeed(bridge: Bridge, { isolation, reach, unit }: Built): Promise<CircuitView[]> {
  const inspection = await inspect(bridge, unit);
  const first = await bridge.call<CircuitView>('circuit', { inspection, at: null });
  const { selector } = first.state;
  const views = ['first', 'second'].map((plug) =>
    bridge.call<CircuitView>('circuit', { inspection, at: { plug, switch: 'on', selector, faults: ['feed_earthed'] } }),
  );
  return (await Promise.all(views)).map((view) => ({ ...view, isolation, reach }));
}
