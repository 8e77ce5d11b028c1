/** The circuit picture of one arrangement: which symbols stand where, and which lines join them. */

import type { CircuitView } from '../types/CircuitView';
import type { Part } from '../types/Part';
import * as at from './places';

/** What a symbol shows. */
export type Symbol =
  | 'outlet'
  | 'plug'
  | 'switch'
  | 'heaters'
  | 'primary'
  | 'small_transformer'
  | 'tapped_winding'
  | 'secondary'
  | 'bridge'
  | 'network'
  | 'gap'
  | 'winding_capacitance'
  | 'capacitor'
  | 'short'
  | 'open'
  | 'stray'
  | 'hand'
  | 'ground'
  | 'terminal';

/** A symbol in its box; `part` is what it stands for, where a current can pass it. */
export interface Box {
  symbol: Symbol;
  part: Part | null;
  x: number;
  y: number;
  width: number;
  height: number;
  /** A switch that is closed; a class-Y capacitor. */
  marked?: boolean;
}

export type Point = readonly [number, number];

/** A line from point to point; a dashed one is there in effect only. */
export interface Wire {
  points: Point[];
  part: Part | null;
  dashed?: boolean;
}

/** What is written beside a symbol. */
export interface Label {
  text: string;
  x: number;
  y: number;
  anchor: 'start' | 'middle' | 'end';
}

export interface Layout {
  boxes: Box[];
  wires: Wire[];
  labels: Label[];
}

type Of = Pick<
  CircuitView,
  | 'isolation'
  | 'cord'
  | 'near_pin'
  | 'line_capacitor'
  | 'line_capacitor_class'
  | 'switch_leg'
  | 'reach'
  | 'state'
  | 'faults'
  | 'hot_pin'
  | 'touched'
  | 'labels'
>;

const TIED = ['line_tied', 'heater_transformer', 'autotransformer'];

/** Whether the circuit's common is something else than the chassis. */
export function hasOwnCommon({ isolation }: Pick<Of, 'isolation'>): boolean {
  return isolation === 'line_floated' || isolation === 'line_insulated';
}

/** Whether the leg nearer to the common is on the hot contact: the legs cross in the plug then. */
export function crossed({ hot_pin, near_pin }: Pick<Of, 'hot_pin' | 'near_pin'>): boolean {
  return hot_pin === near_pin;
}

/** Where the finger is, from the left. */
export function handAt(view: Of): number {
  return view.touched === 'common' || view.touched === 'aerial_terminal' ? at.HAND_ON_TERMINAL : at.HAND_ON_CHASSIS;
}

/** All that is drawn, in its place. */
export function layout(view: Of): Layout {
  const boxes = [...supply(), ...switches(view), across(view), ...onNear(view), ...onFar(view), ...middle(view)];
  boxes.push(...capacitors(view), ...strays(view), ...person(view));
  return { boxes, wires: wires(view), labels: labels(view) };
}

function box(symbol: Symbol, part: Part | null, x: number, y: number, width: number, height: number): Box {
  return { symbol, part, x: x - width / 2, y: y - height / 2, width, height };
}

function supply(): Box[] {
  const middle = (at.FAR + at.NEAR) / 2;
  const plug = (at.PLUG_TOP + at.PLUG_BOTTOM) / 2;
  return [
    { ...box('outlet', null, middle + 14, 30, 200, 48) },
    box('plug', null, middle, plug, 150, at.PLUG_BOTTOM - at.PLUG_TOP),
  ];
}

function opens(view: Of, leg: 'near' | 'far'): boolean {
  return view.switch_leg === leg || view.switch_leg === 'both';
}

function switches(view: Of): Box[] {
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
function across({ isolation }: Of): Box {
  const symbol: Symbol =
    isolation === 'isolating'
      ? 'primary'
      : isolation === 'autotransformer'
        ? 'tapped_winding'
        : isolation === 'heater_transformer'
          ? 'small_transformer'
          : 'heaters';
  return box(symbol, 'load', at.MIDDLE, at.LOAD, 64, symbol === 'small_transformer' ? 40 : 28);
}

const SLOT = (at.TAP + at.CHASSIS) / 2;

/** What joins the near leg to the chassis, where that is more than a wire. */
function onNear({ isolation, faults }: Of): Box[] {
  const slot = (symbol: Symbol, width: number): Box => box(symbol, 'near_chassis', at.NEAR, SLOT, width, 40);
  if (isolation === 'line_floated') {
    return [slot(faults.includes('network_capacitor_shorted') ? 'short' : 'network', 42)];
  }
  if (isolation === 'line_insulated') return [slot(faults.includes('insulation_breakdown') ? 'short' : 'gap', 28)];
  return isolation === 'isolating' ? [slot('winding_capacitance', 28)] : [];
}

function onFar({ isolation, faults }: Of): Box[] {
  if (isolation !== 'isolating') return [];
  const broken = faults.includes('insulation_breakdown');
  return [box(broken ? 'short' : 'winding_capacitance', 'far_chassis', at.FAR, SLOT, 28, 40)];
}

/** What stands in the middle, under the load. */
function middle({ isolation }: Of): Box[] {
  if (isolation === 'isolating') return [box('secondary', null, at.MIDDLE, at.TAP - 2, 48, 28)];
  return isolation === 'line_rectified' ? [box('bridge', null, at.MIDDLE, at.TAP + 4, 34, 34)] : [];
}

/** Whether a line capacitor is joined to a leg now. */
export function onLeg({ line_capacitor, state }: Of, leg: 'near' | 'far'): boolean {
  if (line_capacitor === 'both_legs' || line_capacitor === `${leg}_leg`) return true;
  return line_capacitor === 'selector' && state.selector === leg;
}

function capacitors(view: Of): Box[] {
  const marked = view.line_capacitor_class === 'class_y';
  const one = (leg: 'near' | 'far', part: Part, x: number): Box[] => {
    if (onLeg(view, leg)) {
      const shorted =
        view.faults.includes(`${leg}_capacitor_shorted`) || view.faults.includes('selector_capacitor_shorted');
      return [{ ...box(shorted ? 'short' : 'capacitor', part, x, SLOT, 30, 40), marked }];
    }
    return view.line_capacitor === 'selector' ? [box('open', null, x, SLOT, 28, 40)] : [];
  };
  return [...one('far', 'far_capacitor', at.FAR_CAPACITOR), ...one('near', 'near_capacitor', at.NEAR_CAPACITOR)];
}

function strays({ faults }: Of): Box[] {
  const one = (part: Part, x: number): Box => box('stray', part, x, at.CHASSIS - 14, 20, 22);
  const boxes: Box[] = [];
  if (faults.includes('stray_far')) boxes.push(one('stray_far', at.STRAY_FAR));
  if (faults.includes('stray_near')) boxes.push(one('stray_near', at.STRAY_NEAR));
  return boxes;
}

function hasAerial({ reach }: Of): boolean {
  return reach === 'aerial_terminal';
}

function person(view: Of): Box[] {
  const boxes: Box[] = [];
  if (hasAerial(view)) {
    const shorted = view.faults.includes('aerial_capacitor_shorted');
    boxes.push(box(shorted ? 'short' : 'capacitor', 'aerial_capacitor', at.MIDDLE, at.CHASSIS + 20, 30, 26));
  }
  if (hasAerial(view) || view.reach === 'common_exposed') {
    boxes.push(box('terminal', null, at.MIDDLE, at.TERMINAL, 12, 12));
  }
  const x = handAt(view);
  boxes.push(box('hand', 'person', x, at.TIP + 18, 34, 32), box('ground', null, x, at.GROUND + 12, 28, 22));
  return boxes;
}

/** Whether the finger is on something. */
function touches(view: Of): boolean {
  return view.touched !== null;
}

function wires(view: Of): Wire[] {
  const [far, near] = contacts(view);
  const lines: Wire[] = [
    { part: 'far_conductor', points: conductor(far, at.FAR) },
    { part: 'near_conductor', points: conductor(near, at.NEAR) },
    ...leg(view, 'far'),
    ...leg(view, 'near'),
    { part: 'load', points: [[at.FAR, at.LOAD], [at.NEAR, at.LOAD]] },
    { part: 'chassis', points: [[at.CHASSIS_LEFT, at.CHASSIS], [at.CHASSIS_RIGHT, at.CHASSIS]] },
    ...toChassis(view),
    ...loose(view),
    ...earth(view),
    ...toHand(view),
  ];
  return lines;
}

/** From an outlet contact through the plug to a leg: straight, or crossed where the plug is turned. */
function conductor(contact: number, rail: number): Point[] {
  return [
    [contact, at.CONTACT],
    [contact, at.PLUG_TOP + 8],
    [rail, at.PLUG_BOTTOM - 8],
    [rail, at.AHEAD],
  ];
}

function leg(view: Of, side: 'far' | 'near'): Wire[] {
  const [x, part]: [number, Part] = side === 'far' ? [at.FAR, 'far_switch'] : [at.NEAR, 'near_switch'];
  const points: Point[] = [[x, at.AHEAD], [x, at.LOAD]];
  // Open where the switch is, so that the line does not seem to go on.
  if (!opens(view, side)) return [{ part, points }];
  return [
    { part, points: [[x, at.AHEAD], [x, at.SWITCH_TOP]] },
    { part, points: [[x, at.SWITCH_BOTTOM], [x, at.LOAD]] },
  ];
}

function down(x: number, from: number): Point[] {
  return [[x, from], [x, at.CHASSIS]];
}

function toChassis(view: Of): Wire[] {
  const { isolation } = view;
  const lines: Wire[] = [];
  if (isolation === 'line_rectified') {
    const into = (x: number, by: number): Point[] => [
      [x, at.LOAD],
      [x, at.TAP + 4],
      [at.MIDDLE + by, at.TAP + 4],
      [at.MIDDLE, at.TAP + 21],
      [at.MIDDLE, at.CHASSIS],
    ];
    lines.push({ part: 'near_chassis', points: into(at.NEAR, 17) }, { part: 'far_chassis', points: into(at.FAR, -17) });
  } else if (TIED.includes(isolation) || hasOwnCommon(view)) {
    lines.push({ part: 'near_chassis', points: down(at.NEAR, at.LOAD) });
  } else {
    lines.push({ part: 'near_chassis', points: down(at.NEAR, at.LOAD), dashed: true });
    lines.push({ part: 'far_chassis', points: down(at.FAR, at.LOAD), dashed: true });
    lines.push({ part: null, points: [[at.MIDDLE, at.TAP + 12], [at.MIDDLE, at.CHASSIS]] });
  }
  const branch = (from: number, to: number): Point[] => [[from, at.LOAD], [from, at.TAP - 10], [to, at.TAP - 10], [to, at.CHASSIS]];
  if (onLeg(view, 'far')) lines.push({ part: 'far_capacitor', points: branch(at.FAR, at.FAR_CAPACITOR) });
  if (onLeg(view, 'near')) lines.push({ part: 'near_capacitor', points: branch(at.NEAR, at.NEAR_CAPACITOR) });
  return lines;
}

/** The outlet contacts above the far and the near leg. */
function contacts(view: Of): [far: number, near: number] {
  return crossed(view) ? [at.NEAR, at.FAR] : [at.FAR, at.NEAR];
}

/** A conductor that lies on the chassis, from its contact on: it is ahead of the switch. */
function loose(view: Of): Wire[] {
  const [far, near] = contacts(view);
  const one = (contact: number, from: number, to: number): Point[] => [
    ...conductor(contact, from),
    [to, at.AHEAD],
    [to, at.CHASSIS],
  ];
  const lines: Wire[] = [];
  const { faults } = view;
  if (faults.includes('stray_far')) lines.push({ part: 'stray_far', points: one(far, at.FAR, at.STRAY_FAR) });
  if (faults.includes('stray_near')) lines.push({ part: 'stray_near', points: one(near, at.NEAR, at.STRAY_NEAR) });
  return lines;
}

const EARTHED = ['three_pin_earthed', 'three_pin_reversible_earthed'];

/** Whether an earth wire is whole from the outlet to the chassis. */
export function isEarthed({ cord, faults }: Pick<Of, 'cord' | 'faults'>): boolean {
  return EARTHED.includes(cord) && !faults.includes('earth_open');
}

/** Where the earth contact is, from the left. */
export const EARTH_CONTACT = 252;

function earth({ cord, faults }: Of): Wire[] {
  if (!cord.startsWith('three_pin') || cord === 'three_pin_cut') return [];
  const top: Point[] = [[EARTH_CONTACT, at.CONTACT], [EARTH_CONTACT, at.PLUG_TOP], [at.EARTH, at.PLUG_TOP]];
  if (isEarthed({ cord, faults })) {
    return [{ part: 'earth_wire', points: [...top, [at.EARTH, at.CHASSIS], [at.CHASSIS_RIGHT, at.CHASSIS]] }];
  }
  const broken: Wire[] = [{ part: null, points: [...top, [at.EARTH, at.SWITCH_TOP]] }];
  // Broken on its way, or never joined to the chassis.
  if (faults.includes('earth_open')) {
    broken.push({ part: null, points: [[at.EARTH, at.LOAD], [at.EARTH, at.CHASSIS], [at.CHASSIS_RIGHT, at.CHASSIS]] });
  }
  return broken;
}

/** From the near leg, where the common is something of its own, to the middle. */
const fromCommon: Point[] = [[at.NEAR, at.LOAD], [at.NEAR, at.TAP - 10], [at.MIDDLE, at.TAP - 10]];

function toHand(view: Of): Wire[] {
  const lines: Wire[] = [];
  const x = handAt(view);
  if (hasAerial(view)) {
    const from: Point[] = hasOwnCommon(view) ? fromCommon : [[at.MIDDLE, at.CHASSIS]];
    lines.push({ part: 'aerial_capacitor', points: [...from, [at.MIDDLE, at.TERMINAL]] });
  }
  if (view.reach === 'common_exposed') {
    lines.push({ part: 'common', points: [...fromCommon, [at.MIDDLE, at.TERMINAL]] });
  }
  const bare = ['exposed', 'handheld', 'common_exposed'].includes(view.reach);
  if (bare) lines.push({ part: null, points: [[at.HAND_ON_CHASSIS, at.CHASSIS], [at.HAND_ON_CHASSIS, at.TIP - 6]] });
  const from = view.touched === 'chassis' ? at.CHASSIS : at.TERMINAL;
  if (touches(view)) lines.push({ part: 'person', points: [[x, from], [x, at.GROUND]] });
  return lines;
}

function labels(view: Of): Label[] {
  return view.labels.flatMap(({ part, text }) => {
    const place = labelAt(part);
    const leg = part === 'far_capacitor' ? 'far' : part === 'near_capacitor' ? 'near' : null;
    if (!place || (leg && !onLeg(view, leg))) return [];
    return text.split(' ∥ ').map((line, row) => ({ ...place, y: place.y + 14 * row, text: line }));
  });
}

function labelAt(part: Part): Omit<Label, 'text'> | null {
  switch (part) {
    case 'near_capacitor':
      return { x: at.NEAR_CAPACITOR - 2, y: at.TAP - 16, anchor: 'middle' };
    case 'far_capacitor':
      return { x: at.FAR_CAPACITOR, y: at.TAP - 16, anchor: 'middle' };
    case 'near_chassis':
      return { x: at.MIDDLE - 8, y: SLOT - 2, anchor: 'end' };
    case 'aerial_capacitor':
      return { x: at.MIDDLE + 20, y: at.CHASSIS + 25, anchor: 'start' };
    default:
      return null;
  }
}
