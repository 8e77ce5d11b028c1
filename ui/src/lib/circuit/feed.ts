/** What feeds the outlet: the supply itself, two windings that do not touch, or one winding with a tap. */

import type { Feed } from '../types/Feed';
import * as at from './places';
import { box, type Box, type Drawn, type Label, type Point, type Wire } from './symbols';

type Fed = Pick<Drawn, 'feed' | 'path' | 'faults'>;

/** Whether both contacts are hot, from a supply whose middle is on earth. */
function isBothHot({ feed }: Pick<Drawn, 'feed'>): boolean {
  return feed === 'both_hot';
}

/** Whether nothing but stray capacitance joins the contacts to earth. */
export function floats({ feed }: Pick<Drawn, 'feed'>): boolean {
  return feed === 'isolated';
}

function isStepDown({ feed }: Pick<Drawn, 'feed'>): boolean {
  return feed === 'step_down_auto';
}

/** The supply's own source: it makes room for two windings in front. */
export function sourceOf(feed: Feed): { x: number; y: number; r: number } {
  return floats({ feed }) ? at.ISOLATED.source : at.SOURCE;
}

/** From what feeds it to over the left contact: from the supply, or from the second winding. */
export function fromHotEnd({ feed }: Pick<Drawn, 'feed'>): Point[] {
  const { hot } = at.ISOLATED;
  if (floats({ feed })) return [[at.SECONDARY, hot], [at.FAR, hot]];
  return [
    [at.SOURCE.x + at.SOURCE.r, at.HOT_RAIL],
    [at.FAR, at.HOT_RAIL],
  ];
}

/** The same to over the right contact; behind one winding by its tap. */
export function fromNeutralEnd({ feed }: Pick<Drawn, 'feed'>): Point[] {
  const { neutral } = at.ISOLATED;
  if (floats({ feed })) return [[at.SECONDARY, neutral], [at.NEAR, neutral]];
  if (isStepDown({ feed })) {
    return [
      [at.SOURCE.x + at.SOURCE.r, at.HOT_RAIL],
      [at.WINDING, at.HOT_RAIL],
      [at.WINDING, at.NEUTRAL_RAIL],
      [at.NEAR, at.NEUTRAL_RAIL],
    ];
  }
  return [
    [at.SOURCE.x, at.SOURCE.y - at.SOURCE.r],
    [at.SOURCE.x, at.NEUTRAL_RAIL],
    [at.NEAR, at.NEUTRAL_RAIL],
  ];
}

/** Where the supply's neutral is joined to earth; with both contacts hot it has none. */
export function bond({ feed }: Pick<Drawn, 'feed'>): Point[] {
  if (isBothHot({ feed })) return [];
  const { x, y, r } = sourceOf(feed);
  return [[x, at.EARTH_RAIL], [x, y - r]];
}

/** From the ground on the left back to what feeds it. */
export function home(view: Fed): Point[] {
  const { x, y, r } = at.SOURCE;
  if (isBothHot(view)) return [[at.GROUND_LEFT, y], [x - r, y]];
  if (!floats(view)) return [[at.GROUND_LEFT, at.EARTH_RAIL], ...bond(view)];
  if (comesFromRight(view)) return byLeftStray();
  return [[at.GROUND_LEFT, at.EARTH_RAIL], [at.EARTH_CONTACT, at.EARTH_RAIL], ...byRightStray()];
}

/** From the outlet's earth contact back to what feeds it. */
export function homeFromEarth(view: Fed): Point[] {
  const rail: Point = [at.EARTH_CONTACT, at.EARTH_RAIL];
  if (isBothHot(view)) return [rail, [at.GROUND_LEFT, at.EARTH_RAIL], ...home(view)];
  if (!floats(view)) return [rail, ...bond(view)];
  if (comesFromRight(view)) return [rail, [at.GROUND_LEFT, at.EARTH_RAIL], ...byLeftStray()];
  return byRightStray();
}

/** Whether the current comes from the right contact, and so goes back by the left one. */
function comesFromRight({ path }: Pick<Drawn, 'path'>): boolean {
  return path[0] === 'neutral_contact';
}

function byLeftStray(): Point[] {
  const { hot, leftStray } = at.ISOLATED;
  return [[at.GROUND_LEFT, leftStray], [at.FAR, leftStray], [at.FAR, hot], [at.SECONDARY, hot]];
}

function byRightStray(): Point[] {
  const { neutral, rightStray } = at.ISOLATED;
  return [
    [at.EARTH_CONTACT, rightStray],
    [at.NEAR, rightStray],
    [at.NEAR, neutral],
    [at.SECONDARY, neutral],
  ];
}

/** Whether an output of the transformer in front is joined to earth. */
export function isFeedEarthed({ faults }: Pick<Drawn, 'faults'>): boolean {
  return faults.includes('feed_earthed');
}

/** What joins the contacts to earth, and the windings to the supply. */
export function feedWires(view: Fed): Wire[] {
  if (isStepDown(view)) return [{ part: null, points: [[at.WINDING, at.NEUTRAL_RAIL], [at.WINDING, at.EARTH_RAIL]] }];
  if (!floats(view)) return [];
  const { source, hot, neutral, leftStray, rightStray } = at.ISOLATED;
  // Where the rails of the windings meet the round source.
  const edge = source.x + Math.sqrt(source.r ** 2 - (hot - source.y) ** 2);
  return [
    { part: null, points: [[edge, hot], [at.PRIMARY, hot], [at.PRIMARY, neutral], [edge, neutral]] },
    { part: null, points: [[at.GROUND_LEFT, leftStray], [at.FAR, leftStray]], dashed: true },
    { part: null, points: [[at.NEAR, rightStray], [at.EARTH_CONTACT, rightStray]], dashed: !isFeedEarthed(view) },
  ];
}

/** Windings, and the capacitance that is there without a part. */
export function feedBoxes(view: Fed): Box[] {
  if (isStepDown(view)) {
    return [box('supply_tapped', 'neutral_contact', at.WINDING, (at.EARTH_RAIL + at.HOT_RAIL) / 2, 14, at.HOT_RAIL - at.EARTH_RAIL)];
  }
  if (!floats(view)) return [];
  const { hot, neutral, leftStray, rightStray, leftPlates, rightPlates } = at.ISOLATED;
  const middle = (hot + neutral) / 2;
  const fromRight = comesFromRight(view);
  const stray = (x: number, y: number, part: Box['part']): Box => box('supply_stray', part, x, y, 10, 16);
  const boxes = [
    box('supply_windings', null, (at.PRIMARY + at.SECONDARY) / 2, middle, 24, hot - neutral),
    stray(leftPlates, leftStray, fromRight ? 'neutral_contact' : null),
  ];
  if (!isFeedEarthed(view)) boxes.push(stray(rightPlates, rightStray, fromRight ? null : 'hot_contact'));
  return boxes;
}

/** What the outlet's left and right contact are called. */
export function contactNames(view: Fed): [left: string, right: string] {
  if (isStepDown(view)) return ['circuit-input', 'circuit-tap'];
  if (isFeedEarthed(view)) return ['circuit-hot', 'circuit-earthed'];
  if (floats(view)) return ['circuit-floats', 'circuit-floats'];
  return ['circuit-hot', isBothHot(view) ? 'circuit-hot' : 'circuit-neutral'];
}

/** The words of what stands in front of the outlet. */
export function feedLabels(view: Fed, say: (id: string) => string): Label[] {
  const name = (id: string, x: number, y: number): Label => ({ text: say(id), x, y, anchor: 'middle', kind: 'name' });
  if (isStepDown(view)) return [name('circuit-one-winding', at.MIDDLE, at.WINDING_WORDS)];
  if (!floats(view)) return [];
  const { rightPlates, rightStray } = at.ISOLATED;
  const right = isFeedEarthed(view) ? name('circuit-to-earth', rightPlates, rightStray - 7) : name('circuit-stray', rightPlates, rightStray - 11);
  return [name('circuit-two-windings', at.MIDDLE, at.WINDING_WORDS), right];
}
