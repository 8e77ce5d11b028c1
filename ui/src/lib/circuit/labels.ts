/** What is written in the circuit picture. */

import type { Part } from '../types/Part';
import { capacitorAt, onLeg, opens } from './layout';
import * as at from './places';
import { supplyLabels } from './supply';
import type { Drawn, Label } from './symbols';

type Say = (id: string, args?: Record<string, string>) => string;

/** Every name and every value, in its place. */
export function labels(view: Drawn, say: Say): Label[] {
  return [...supplyLabels(view, say), ...names(view, say), ...values(view)];
}

function names(view: Drawn, say: Say): Label[] {
  const name = (id: string, x: number, y: number, anchor: Label['anchor'] = 'middle'): Label => ({
    text: say(id, { isolation: view.isolation }),
    x,
    y,
    anchor,
    kind: 'name',
  });
  const right = view.line_capacitor === 'selector';
  const isTall = view.isolation === 'heater_transformer';
  const found = [
    // At what it names, not at the switch over it; over the wire to the ground switch and a tall symbol.
    name('circuit-load', at.MIDDLE, right || isTall ? at.TO_SELECTOR - 7 : at.LOAD - 17),
    name('circuit-chassis', at.CHASSIS_RIGHT - 4, at.CHASSIS + 18, 'end'),
    name('circuit-earth', feetEnd(view), at.GROUND - 4, 'start'),
  ];
  const middle = (at.SWITCH_TOP + at.SWITCH_BOTTOM) / 2 - 4;
  if (view.switch_leg === 'both') found.push(name('circuit-switch', at.MIDDLE, middle - 6));
  else if (opens(view, 'far')) found.push(name('circuit-switch', at.FAR + 12, middle, 'start'));
  else if (opens(view, 'near')) found.push(name('circuit-switch', at.NEAR - 18, middle, 'end'));
  // Between the load and what comes under it.
  const below = view.isolation === 'isolating' ? at.TAP - 14 : at.TAP - 17;
  found.push(name('circuit-far-leg', at.FAR - 8, at.LOAD - 6, 'end'));
  found.push(right ? name('circuit-near-leg', at.NEAR - 7, below, 'end') : name('circuit-near-leg', at.NEAR + 8, at.LOAD - 6, 'start'));
  if (right) found.push(name('circuit-ground-switch', at.NEAR + 9, at.TO_SELECTOR - 5, 'start'));
  return found;
}

function feetEnd({ touched }: Drawn): number {
  const hand = touched === 'common' || touched === 'aerial_terminal' ? at.HAND_ON_TERMINAL : at.HAND_ON_CHASSIS;
  return hand - at.ARM + 24;
}

function values(view: Drawn): Label[] {
  return view.labels.flatMap(({ part, text }) => {
    const place = valueAt(view, part);
    const leg = part === 'far_capacitor' ? 'far' : part === 'near_capacitor' ? 'near' : null;
    if (!place || (leg && !onLeg(view, leg))) return [];
    const rows = leg && view.line_capacitor === 'selector' ? text.split(/\s/) : text.split(' ∥ ');
    return rows.map((row, number): Label => ({ ...place, y: place.y + 14 * number, text: row, kind: 'value' }));
  });
}

function valueAt(view: Drawn, part: Part): Pick<Label, 'x' | 'y' | 'anchor'> | null {
  switch (part) {
    case 'near_capacitor':
    case 'far_capacitor': {
      const x = capacitorAt(view, part === 'far_capacitor' ? 'far' : 'near');
      if (view.line_capacitor === 'selector') return { x: x + 17, y: at.SLOT - 13, anchor: 'start' };
      return { x, y: at.TAP - 20, anchor: 'middle' };
    }
    case 'near_chassis':
      return { x: at.MIDDLE - 8, y: at.SLOT - 2, anchor: 'end' };
    case 'aerial_capacitor':
      return { x: at.MIDDLE + 20, y: at.CHASSIS + 25, anchor: 'start' };
    default:
      return null;
  }
}

/** Wider than any letter of the picture is on average; so no label is thought narrower than it is. */
const LETTER = 7.4;
const LINE = 13;

/** About how much room a label takes. */
export function labelRoom({ text, x, y, anchor }: Label): { x: number; y: number; width: number; height: number } {
  const width = text.length * LETTER;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { x: left, y: y - LINE + 3, width, height: LINE };
}
