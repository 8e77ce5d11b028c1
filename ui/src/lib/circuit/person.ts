/** Whoever touches the unit: what is under the finger, the body, and what the barrier is worth. */

import * as at from './places';
import { box, type Box, type Drawn, type Point } from './symbols';

/** Where the finger is, from the left. */
export function handAt({ touched }: Pick<Drawn, 'touched'>): number {
  return touched === 'common' || touched === 'aerial_terminal' ? at.HAND_ON_TERMINAL : at.HAND_ON_CHASSIS;
}

/** Where somebody stands, from the left. */
export function feetAt(view: Pick<Drawn, 'touched'>): number {
  return handAt(view) - at.ARM;
}

/** Whether nothing joined to the circuit can be touched while the cabinet is whole. */
export function isClosed({ reach }: Pick<Drawn, 'reach'>): boolean {
  return reach === 'closed' || reach === 'aerial_terminal';
}

/** Whether a knob, the back or a cover is gone. */
export function isBroken({ faults }: Pick<Drawn, 'faults'>): boolean {
  return faults.includes('lost_barrier');
}

/** Whether the hand goes into the cabinet. */
function reachesIn(view: Pick<Drawn, 'touched' | 'faults'>): boolean {
  return isBroken(view) && view.touched === 'chassis';
}

/** The tip of the finger, from the top. */
export function tipAt(view: Pick<Drawn, 'touched' | 'faults'>): number {
  return reachesIn(view) ? at.CHASSIS + 6 : at.TERMINAL + 9;
}

/** How long a hand is, from the tip of its finger to the wrist. */
export const HAND = 30;

/** Where arm, body and legs bend. */
export function joints(view: Pick<Drawn, 'touched' | 'faults'>): { wrist: Point; elbow: Point; neck: Point; hip: Point } {
  const x = handAt(view);
  const feet = feetAt(view);
  return {
    wrist: [x, tipAt(view) + HAND],
    elbow: [x - 3, at.GROUND - 38],
    neck: [feet, at.GROUND - 53],
    hip: [feet, at.GROUND - 27],
  };
}

/** The way of the current through somebody: from what is touched to the ground. */
export function throughBody(view: Pick<Drawn, 'touched' | 'faults'>): Point[] {
  const { wrist, elbow, neck, hip } = joints(view);
  const from = view.touched === 'chassis' ? at.CHASSIS : at.TERMINAL;
  return [[handAt(view), from], wrist, elbow, neck, hip, [feetAt(view), at.GROUND]];
}

/** The room that somebody takes, from the finger down. */
export function bodyRoom(view: Pick<Drawn, 'touched' | 'faults'>): { x: number; y: number; width: number; height: number } {
  const y = tipAt(view) - 4;
  return { x: feetAt(view) - 14, y, width: at.ARM + 28, height: at.GROUND - 10 - y };
}

/** What can be touched, and what keeps a hand off it. */
export function reachBoxes(view: Drawn): Box[] {
  const x = at.HAND_ON_CHASSIS;
  const boxes: Box[] = [];
  if (view.reach === 'aerial_terminal' || view.reach === 'common_exposed') {
    boxes.push(box('terminal', null, at.MIDDLE, at.TERMINAL, 14, 14));
  }
  if (isBroken(view)) {
    const aside = handAt(view) === x ? x + 36 : x - 40;
    boxes.push(box('lost_knob', null, aside, at.CABINET_BOTTOM + 36, 28, 28));
  } else if (isClosed(view)) {
    boxes.push(box('knob', null, x, at.TERMINAL - 5, 34, 18));
  } else {
    boxes.push(view.reach === 'handheld' ? box('panel', null, x, at.TERMINAL - 1, 52, 10) : box('screw', null, x, at.TERMINAL - 2, 22, 12));
  }
  return boxes;
}

/** The outline of the cabinet: whole, with the holes that its metal comes through, or broken open. */
export function cabinet(view: Drawn): string {
  const { x, y, width, height } = at.CABINET;
  const whole = `V${y}h${width}v${height}`;
  const hand = at.HAND_ON_CHASSIS;
  if (isBroken(view)) {
    const [left, right] = [hand - 24, hand + 24];
    return `M${left + 2} ${at.CABINET_BOTTOM + 9}l-3-7l-5 5l-2-7H${x}${whole}H${right + 8}l-3-6l-3 8l-4-7`;
  }
  return `M${hand - 9} ${at.CABINET_BOTTOM}H${x}${whole}H${hand + 9}`;
}
