/** The circuit picture of one arrangement: which symbols stand where, and which lines join them. */

import type { Part } from '../types/Part';
import { feetAt, isBroken, reachBoxes } from './person';
import * as at from './places';
import { conductor, contacts, earthWires, supplyBoxes, supplyWires } from './supply';
import { box, type Box, type Drawn, type Point, type Symbol, type Wire } from './symbols';

export interface Layout {
  boxes: Box[];
  wires: Wire[];
}

/** The isolations whose chassis is on the near leg. */
export const TIED: readonly string[] = ['line_tied', 'heater_transformer', 'autotransformer'];

/** Whether the circuit's common is something else than the chassis. */
export function hasOwnCommon({ isolation }: Pick<Drawn, 'isolation'>): boolean {
  return isolation === 'line_floated' || isolation === 'line_insulated';
}

/** All that is drawn, in its place; the words are apart. */
export function layout(view: Drawn): Layout {
  const boxes = [...supplyBoxes(view), ...switches(view), across(view), ...onNear(view), ...onFar(view), ...middle(view)];
  boxes.push(...capacitors(view), ...strays(view), ...aerial(view), ...reachBoxes(view));
  return { boxes, wires: wires(view) };
}

/** Whether the switch opens a leg. */
export function opens({ switch_leg }: Pick<Drawn, 'switch_leg'>, leg: 'near' | 'far'): boolean {
  return switch_leg === leg || switch_leg === 'both';
}

/** Whether the way of the current would lead through a switch that is open: then next to nothing flows. */
export function opensWay(view: Pick<Drawn, 'switch_leg' | 'state' | 'path'>): boolean {
  if (view.state.switch === 'on') return false;
  return (['far', 'near'] as const).some((leg) => opens(view, leg) && view.path.includes(`${leg}_switch`));
}

function switches(view: Drawn): Box[] {
  const middle = (at.SWITCH_TOP + at.SWITCH_BOTTOM) / 2;
  const one = (part: Part, x: number): Box => ({
    ...box('switch', part, x, middle, 30, at.SWITCH_BOTTOM - at.SWITCH_TOP),
    marked: view.state.switch === 'on',
  });
  const boxes: Box[] = [];
  if (opens(view, 'far')) boxes.push(one('far_switch', at.FAR));
  if (opens(view, 'near')) boxes.push(one('near_switch', at.NEAR));
  return boxes;
}

/** What lies between the legs. */
function across({ isolation }: Drawn): Box {
  const symbols: Partial<Record<Drawn['isolation'], Symbol>> = {
    isolating: 'primary',
    autotransformer: 'tapped_winding',
    heater_transformer: 'small_transformer',
  };
  const symbol = symbols[isolation] ?? 'heaters';
  return box(symbol, 'load', at.MIDDLE, at.LOAD, 60, symbol === 'small_transformer' ? 40 : 28);
}

/** What joins the near leg to the chassis, where that is more than a wire. */
function onNear({ isolation, faults }: Drawn): Box[] {
  const slot = (symbol: Symbol, width: number, height = 40): Box =>
    box(symbol, 'near_chassis', at.NEAR, at.SLOT, width, height);
  if (isolation === 'line_floated') {
    return [slot(faults.includes('network_capacitor_shorted') ? 'short' : 'network', 42)];
  }
  if (isolation === 'line_insulated') return [slot(faults.includes('insulation_breakdown') ? 'short' : 'gap', 28)];
  return isolation === 'isolating' ? [slot('winding_capacitance', 28, 16)] : [];
}

function onFar({ isolation, faults }: Drawn): Box[] {
  if (isolation !== 'isolating') return [];
  const broken = faults.includes('insulation_breakdown');
  return [box(broken ? 'short' : 'winding_capacitance', 'far_chassis', at.FAR, at.SLOT, 28, 16)];
}

/** What stands in the middle, under the load. */
function middle({ isolation }: Drawn): Box[] {
  if (isolation === 'isolating') return [box('secondary', null, at.MIDDLE, at.TAP - 2, 48, 28)];
  return isolation === 'line_rectified' ? [box('bridge', null, at.MIDDLE, at.TAP + 4, 34, 34)] : [];
}

/** Whether a line capacitor is joined to a leg now. */
export function onLeg({ line_capacitor, state }: Pick<Drawn, 'line_capacitor' | 'state'>, leg: 'near' | 'far'): boolean {
  if (line_capacitor === 'both_legs' || line_capacitor === `${leg}_leg`) return true;
  return line_capacitor === 'selector' && state.selector === leg;
}

/** Where a leg's line capacitor is: the one on a ground switch has one place, whatever leg it is on. */
export function capacitorAt({ line_capacitor }: Pick<Drawn, 'line_capacitor'>, leg: 'near' | 'far'): number {
  return leg === 'far' && line_capacitor !== 'selector' ? at.FAR_CAPACITOR : at.NEAR_CAPACITOR;
}

function capacitors(view: Drawn): Box[] {
  const boxes: Box[] = [];
  for (const leg of ['far', 'near'] as const) {
    if (!onLeg(view, leg)) continue;
    const x = capacitorAt(view, leg);
    const broken = (['selector_capacitor_shorted', `${leg}_capacitor_shorted`] as const).some((fault) => view.faults.includes(fault));
    boxes.push(box(broken ? 'short' : 'capacitor', `${leg}_capacitor`, x, at.SLOT, 30, 16));
    if (view.line_capacitor_class === 'class_y') boxes.push(box('class_y', null, x + 18, at.SLOT + 18, 19, 19));
    if (view.line_capacitor === 'selector') {
      const { near, far, top, pole } = at.SELECTOR;
      const selector = box('selector', `${leg}_capacitor`, (near + far) / 2, (top + pole) / 2, far - near + 8, pole - top + 8);
      boxes.push({ ...selector, marked: leg === 'far' });
    }
  }
  return boxes;
}

function strays({ faults }: Drawn): Box[] {
  const one = (part: Part, x: number): Box => box('stray', part, x, at.CHASSIS - 14, 20, 20);
  const boxes: Box[] = [];
  if (faults.includes('stray_far')) boxes.push(one('stray_far', at.STRAY_FAR + 1));
  if (faults.includes('stray_near')) boxes.push(one('stray_near', at.STRAY_NEAR - 1));
  return boxes;
}

function aerial({ reach, faults }: Drawn): Box[] {
  if (reach !== 'aerial_terminal') return [];
  const symbol = faults.includes('aerial_capacitor_shorted') ? 'short' : 'capacitor';
  return [box(symbol, 'aerial_capacitor', at.MIDDLE, at.CHASSIS + 20, 30, 18)];
}

function wires(view: Drawn): Wire[] {
  const [far, near] = contacts(view);
  return [
    ...supplyWires(view, feetAt(view)),
    { part: 'far_conductor', points: conductor(far, at.FAR) },
    { part: 'near_conductor', points: conductor(near, at.NEAR) },
    ...leg(view, 'far'),
    ...leg(view, 'near'),
    { part: 'load', points: [[at.FAR, at.LOAD], [at.NEAR, at.LOAD]] },
    { part: 'chassis', points: [[at.CHASSIS_LEFT, at.CHASSIS], [at.CHASSIS_RIGHT, at.CHASSIS]] },
    ...toChassis(view),
    ...loose(view),
    ...earthWires(view),
    ...toReach(view),
  ];
}

function leg(view: Drawn, side: 'far' | 'near'): Wire[] {
  const [x, part]: [number, Part] = side === 'far' ? [at.FAR, 'far_switch'] : [at.NEAR, 'near_switch'];
  // Open where the switch is, so that the line does not seem to go on.
  if (!opens(view, side)) return [{ part, points: [[x, at.AHEAD], [x, at.LOAD]] }];
  return [
    { part, points: [[x, at.AHEAD], [x, at.SWITCH_TOP]] },
    { part, points: [[x, at.SWITCH_BOTTOM], [x, at.LOAD]] },
  ];
}

/** From a leg down to the chassis. */
export function legToChassis({ isolation }: Drawn, side: 'far' | 'near'): Point[] {
  const x = side === 'far' ? at.FAR : at.NEAR;
  if (isolation !== 'line_rectified') return [[x, at.LOAD], [x, at.CHASSIS]];
  return [
    [x, at.LOAD],
    [x, at.TAP + 4],
    [at.MIDDLE + (side === 'far' ? -17 : 17), at.TAP + 4],
    [at.MIDDLE, at.TAP + 21],
    [at.MIDDLE, at.CHASSIS],
  ];
}

/** From a leg through its line capacitor to the chassis. */
export function byCapacitor(view: Drawn, leg: 'far' | 'near'): Point[] {
  const rail = leg === 'far' ? at.FAR : at.NEAR;
  const x = capacitorAt(view, leg);
  if (view.line_capacitor !== 'selector') {
    return [[rail, at.LOAD], [rail, at.TAP - 10], [x, at.TAP - 10], [x, at.CHASSIS]];
  }
  return [...toSelector(leg), [x, at.SELECTOR.pole], [x, at.CHASSIS]];
}

/** From a leg to its contact of the ground switch. */
function toSelector(leg: 'far' | 'near'): Point[] {
  const { near, far, top } = at.SELECTOR;
  if (leg === 'near') return [[at.NEAR, at.LOAD], [near, at.LOAD], [near, top]];
  return [[at.FAR, at.LOAD], [at.FAR, at.TO_SELECTOR], [far, at.TO_SELECTOR], [far, top]];
}

function toChassis(view: Drawn): Wire[] {
  const { isolation } = view;
  const lines: Wire[] = [];
  const dashed = isolation === 'isolating';
  const reaches = TIED.includes(isolation) || hasOwnCommon(view);
  lines.push({ part: 'near_chassis', points: legToChassis(view, 'near'), dashed });
  if (!reaches) lines.push({ part: 'far_chassis', points: legToChassis(view, 'far'), dashed });
  if (dashed) lines.push({ part: null, points: [[at.MIDDLE, at.TAP + 12], [at.MIDDLE, at.CHASSIS]] });
  if (view.line_capacitor === 'selector') {
    lines.push({ part: onLeg(view, 'near') ? 'near_capacitor' : null, points: toSelector('near') });
    lines.push({ part: onLeg(view, 'far') ? 'far_capacitor' : null, points: toSelector('far'), over: true });
    const part = onLeg(view, 'far') ? 'far_capacitor' : 'near_capacitor';
    lines.push({ part, points: [[at.NEAR_CAPACITOR, at.SELECTOR.pole], [at.NEAR_CAPACITOR, at.CHASSIS]] });
    return lines;
  }
  for (const leg of ['far', 'near'] as const) {
    if (onLeg(view, leg)) lines.push({ part: `${leg}_capacitor`, points: byCapacitor(view, leg) });
  }
  return lines;
}

/** A conductor that lies on the chassis, from its contact on: it is ahead of the switch. */
export function strayFrom(view: Drawn, leg: 'far' | 'near'): Point[] {
  const [far, near] = contacts(view);
  const [contact, rail, x] = leg === 'far' ? [far, at.FAR, at.STRAY_FAR] : [near, at.NEAR, at.STRAY_NEAR];
  return [...conductor(contact, rail), [x, at.AHEAD], [x, at.CHASSIS]];
}

function loose(view: Drawn): Wire[] {
  const found = (['far', 'near'] as const).filter((leg) => view.faults.includes(`stray_${leg}`));
  return found.map((leg) => ({ part: `stray_${leg}`, points: strayFrom(view, leg) }));
}

/** From the near leg, where the common is something of its own, to the terminal. */
export function fromCommon(): Point[] {
  return [[at.NEAR, at.LOAD], [at.NEAR, at.TAP - 10], [at.MIDDLE, at.TAP - 10], [at.MIDDLE, at.TERMINAL]];
}

/** From the circuit common through the aerial capacitor to the terminal. */
export function toAerial(view: Pick<Drawn, 'isolation'>): Point[] {
  return hasOwnCommon(view) ? fromCommon() : [[at.MIDDLE, at.CHASSIS], [at.MIDDLE, at.TERMINAL]];
}

function toReach(view: Drawn): Wire[] {
  const lines: Wire[] = [];
  if (view.reach === 'aerial_terminal') {
    lines.push({ part: 'aerial_capacitor', points: toAerial(view), over: hasOwnCommon(view) });
  }
  if (view.reach === 'common_exposed') lines.push({ part: 'common', points: fromCommon(), over: true });
  if (!isBroken(view)) {
    lines.push({ part: null, points: [[at.HAND_ON_CHASSIS, at.CHASSIS], [at.HAND_ON_CHASSIS, at.TERMINAL - 6]] });
  }
  return lines;
}
