/** The part of the picture outside the unit: supply, outlet, plug and earth. */

import type { CircuitView } from '../types/CircuitView';
import type { NearPin } from '../types/NearPin';
import {
  bond,
  contactNames,
  feedBoxes,
  feedLabels,
  feedWires,
  floats,
  fromHotEnd,
  fromNeutralEnd,
  home,
  homeFromEarth,
} from './feed';
import * as at from './places';
import { box, type Box, type Drawn, type Label, type Point, type Wire } from './symbols';

const EARTHED = ['three_pin_earthed', 'three_pin_reversible_earthed'];

/** Whether the plug has an earth pin. */
export function hasEarthPin({ cord }: Pick<CircuitView, 'cord'>): boolean {
  return cord.startsWith('three_pin') && cord !== 'three_pin_cut';
}

/** Whether an earth wire is whole from the outlet to the chassis. */
export function isEarthed({ cord, faults }: Pick<Drawn, 'cord' | 'faults'>): boolean {
  return EARTHED.includes(cord) && !faults.includes('earth_open');
}

/** Whether the plug itself goes in both ways round; another may still meet either contact of a transformer. */
export function isReversible({ cord }: Pick<CircuitView, 'cord'>): boolean {
  return cord === 'three_pin_cut' || cord.includes('reversible');
}

/** Whether hot and neutral are swapped behind the outlet. */
function isReversed({ faults }: Pick<Drawn, 'faults'>): boolean {
  return faults.includes('outlet_reversed');
}

/** The pins from left to right: which is on hot, the core says; a reversed outlet has hot on its right. */
export function pins({ hot_pin, faults }: Pick<Drawn, 'hot_pin' | 'faults'>): [NearPin, NearPin] {
  return (hot_pin === 'a') !== isReversed({ faults }) ? ['a', 'b'] : ['b', 'a'];
}

/** The contacts that the far and the near leg are plugged into, from the left of the picture. */
export function contacts(view: Drawn): [far: number, near: number] {
  return pins(view)[0] === view.near_pin ? [at.NEAR, at.FAR] : [at.FAR, at.NEAR];
}

/** From an outlet contact through the plug to a leg: straight, or crossed where the plug is turned. */
export function conductor(contact: number, rail: number): Point[] {
  return [
    [contact, at.CONTACT],
    [contact, at.PLUG_TOP + 6],
    [rail, at.PLUG_BOTTOM - 6],
    [rail, at.AHEAD],
  ];
}

function behindOutlet(view: Drawn, from: number, to: number): Point[] {
  if (!isReversed(view)) return [[from, at.CONTACT]];
  return [
    [from, at.SWAP_TOP],
    [to, at.SWAP_BOTTOM],
    [to, at.CONTACT],
  ];
}

/** From the source to the hot contact; only to the other loads where the current turns off there. */
export function toHot(view: Drawn): Point[] {
  const start = fromHotEnd(view);
  if (view.path.includes('neutral_pull')) return [...start, [at.FAR, at.PULL]];
  return [...start, ...behindOutlet(view, at.FAR, at.NEAR)];
}

/** From the source to the neutral contact; from the other loads on where it is broken before them. */
export function toNeutral(view: Drawn): Point[] {
  const start: Point[] = view.faults.includes('neutral_open') ? [[at.NEAR, at.PULL]] : fromNeutralEnd(view);
  return [...start, ...behindOutlet(view, at.NEAR, at.FAR)];
}

/** From the ground under somebody's feet back to the source. */
export function toSource(view: Drawn, from: number): Point[] {
  return [...ground(from), ...home(view)];
}

function ground(from: number): Point[] {
  return [
    [from, at.GROUND],
    [at.GROUND_LEFT, at.GROUND],
  ];
}

/** From the chassis by the earth wire back to the source. */
export function byEarthWire(view: Drawn): Point[] {
  return [...fromChassis(), ...homeFromEarth(view)];
}

const CORD_BEND = at.PLUG_BOTTOM - 16;

function fromChassis(): Point[] {
  return [
    [at.CHASSIS_RIGHT, at.CHASSIS],
    [at.EARTH, at.CHASSIS],
    [at.EARTH, CORD_BEND],
    [at.EARTH_CONTACT, CORD_BEND],
    [at.EARTH_CONTACT, at.CONTACT],
  ];
}

/** The supply's own wires, and the ground. */
export function supplyWires(view: Drawn, feet: number): Wire[] {
  const whole = { ...view, path: [] };
  const wires: Wire[] = [
    { part: null, points: floats(view) ? [...ground(feet), [at.GROUND_LEFT, at.EARTH_RAIL]] : toSource(view, feet), dashed: true },
    { part: null, points: [[at.GROUND_LEFT, at.EARTH_RAIL], [at.EARTH_CONTACT, at.EARTH_RAIL], [at.EARTH_CONTACT, at.CONTACT]] },
    { part: 'hot_contact', points: toHot(whole) },
    { part: 'neutral_contact', points: toNeutral(view), over: isReversed(view) },
  ];
  if (bond(view).length > 0) wires.push({ part: null, points: bond(view) });
  wires.push(...feedWires(view));
  if (view.faults.includes('neutral_open')) {
    const { x, y, r } = at.SOURCE;
    wires.push({
      part: null,
      points: [[x, y - r], [x, at.NEUTRAL_RAIL], [at.NEAR, at.NEUTRAL_RAIL], [at.NEAR, at.BREAK - 7]],
    });
    wires.push({ part: 'neutral_pull', points: pull() });
  }
  return wires;
}

/** Other loads of the supply, from hot to the broken neutral. */
export function pull(): Point[] {
  return [[at.FAR, at.PULL], [at.NEAR, at.PULL]];
}

/** The cord's earth wire, as far as there is one. */
export function earthWires(view: Drawn): Wire[] {
  if (!hasEarthPin(view)) return [];
  if (isEarthed(view)) return [{ part: 'earth_wire', points: fromChassis() }];
  const toBreak: Point[] = [
    [at.EARTH_CONTACT, at.CONTACT],
    [at.EARTH_CONTACT, CORD_BEND],
    [at.EARTH, CORD_BEND],
    [at.EARTH, at.SWITCH_TOP + 20],
  ];
  const wires: Wire[] = [{ part: null, points: toBreak }];
  // Broken on its way; else it was never joined to the chassis.
  if (view.faults.includes('earth_open')) {
    wires.push({ part: null, points: [[at.EARTH, at.LOAD], [at.EARTH, at.CHASSIS], [at.CHASSIS_RIGHT, at.CHASSIS]] });
  }
  return wires;
}

/** What is broken or loose in supply and earth wire. */
export function supplyBoxes(view: Drawn): Box[] {
  const { faults } = view;
  const boxes = feedBoxes(view);
  if (faults.includes('neutral_open')) {
    boxes.push(box('break', null, at.NEAR, at.BREAK, 16, 16));
    boxes.push(box('loads', 'neutral_pull', at.LOADS, at.PULL, 70, 18));
  }
  if (faults.includes('earth_open')) boxes.push(box('break', null, at.EARTH, (at.SWITCH_TOP + 20 + at.LOAD) / 2, 16, 16));
  // An earth wire that was never joined to the chassis.
  if (hasEarthPin(view) && !EARTHED.includes(view.cord)) boxes.push(box('terminal', null, at.EARTH, at.SWITCH_TOP + 24, 12, 12));
  return boxes;
}

/** The words of supply and outlet. */
export function supplyLabels(view: Drawn, say: (id: string) => string): Label[] {
  const name = (text: string, x: number, y: number, anchor: Label['anchor']): Label => ({ text, x, y, anchor, kind: 'name' });
  const [left, right] = contactNames(view);
  const labels = [
    name(say('circuit-supply'), at.SOURCE.x, at.SOURCE.y + at.SOURCE.r + 15, 'middle'),
    // On its outer side runs what leads from a floating contact to earth.
    floats(view) ? name(say(left), at.FAR + 7, at.WORDS, 'start') : name(say(left), at.FAR - 7, at.WORDS, 'end'),
    name(say(right), at.NEAR + 7, at.WORDS, 'start'),
    name(say('circuit-earth'), at.EARTH_CONTACT + 7, at.WORDS, 'start'),
    ...feedLabels(view, say),
  ];
  if (isReversed(view)) {
    const rows = say('circuit-wired-backwards').split(' ');
    labels.push(...rows.map((text, row) => name(text, at.PLATE.x + at.PLATE.width + 5, at.PLATE.y + 16 + 15 * row, 'start')));
  }
  if (view.faults.includes('neutral_open')) labels.push(name(say('circuit-other-loads'), at.LOADS, at.PULL + 4.5, 'middle'));
  return labels;
}
