/** The way of the current over the picture: one line from the supply through somebody and the ground back to it. */

import type { Part } from '../types/Part';
import { byCapacitor, fromCommon, legToChassis, opensWay, strayFrom, toAerial } from './layout';
import { feetAt, throughBody } from './person';
import * as at from './places';
import { byEarthWire, conductor, contacts, pull, toHot, toNeutral, toSource } from './supply';
import type { Box, Drawn, Point } from './symbols';

export interface Way {
  /** From the source back to the source; empty where no current flows. */
  main: Point[];
  /** Along the earth wire, where that carries the rest of it past somebody. */
  branch: Point[];
  /** Through somebody, for as long as a breaker has yet to trip. */
  until: Point[];
}

/** The line through all the parts that the core says are passed; none through a switch that is open. */
export function way(view: Drawn): Way {
  if (view.path.length === 0 || opensWay(view)) return { main: [], branch: [], until: [] };
  const touched = view.path.includes('person');
  const parts = touched ? view.path.filter((part) => part !== 'earth_wire') : view.path;
  const courses = parts.map((part) => course(view, part)).filter((points) => points.length > 0);
  if (touched) courses.push(toSource(view, feetAt(view)));
  const main = straightened(courses.reduce(joined, []));
  return {
    main,
    branch: touched && view.path.includes('earth_wire') ? earthBranch(view, main) : [],
    until: view.level === 'breaker_trips' && view.touched !== null ? throughBody(view) : [],
  };
}

/** Beside the person: from where the current comes onto the chassis. */
function earthBranch(view: Drawn, main: readonly Point[]): Point[] {
  const [x] = main.find(([, y]) => y === at.CHASSIS) ?? [at.CHASSIS_RIGHT];
  return straightened([[x, at.CHASSIS], ...byEarthWire(view)]);
}

/** One course after the other, turned so that it goes on where the last one ends. */
function joined(line: Point[], next: Point[]): Point[] {
  const end = line.at(-1);
  const [first, last] = [next[0], next.at(-1)];
  if (!end || !first || !last) return [...line, ...next];
  const distance = ([x, y]: Point): number => Math.hypot(x - end[0], y - end[1]);
  // The chassis joins all that ends on it, however far apart.
  const isOn = ([, y]: Point): boolean => end[1] === at.CHASSIS && y === at.CHASSIS;
  const turns = isOn(first) === isOn(last) ? distance(last) < distance(first) : isOn(last);
  return [...line, ...(turns ? [...next].reverse() : next)];
}

/** Without points that lie on a straight piece, and without going there and back. */
function straightened(line: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of line) {
    while (kept.length > 0 && isNeedless(kept.at(-2), kept.at(-1), point)) kept.pop();
    kept.push(point);
  }
  return kept;
}

function isNeedless(before: Point | undefined, here: Point | undefined, after: Point): boolean {
  if (!here) return false;
  if (here[0] === after[0] && here[1] === after[1]) return true;
  if (!before) return false;
  return (before[0] === here[0] && here[0] === after[0]) || (before[1] === here[1] && here[1] === after[1]);
}

function course(view: Drawn, part: Part): Point[] {
  const [far, near] = contacts(view);
  switch (part) {
    case 'hot_contact':
      return toHot(view);
    case 'neutral_contact':
      return toNeutral(view);
    case 'neutral_pull':
      return pull();
    case 'far_conductor':
      return conductor(far, at.FAR);
    case 'near_conductor':
      return conductor(near, at.NEAR);
    case 'far_switch':
      return [[at.FAR, at.AHEAD], [at.FAR, at.LOAD]];
    case 'near_switch':
      return [[at.NEAR, at.AHEAD], [at.NEAR, at.LOAD]];
    case 'load':
      return [[at.FAR, at.LOAD], [at.NEAR, at.LOAD]];
    case 'near_chassis':
      return legToChassis(view, 'near');
    case 'far_chassis':
      return legToChassis(view, 'far');
    case 'near_capacitor':
      return byCapacitor(view, 'near');
    case 'far_capacitor':
      return byCapacitor(view, 'far');
    case 'stray_near':
      return strayFrom(view, 'near');
    case 'stray_far':
      return strayFrom(view, 'far');
    case 'common':
      return fromCommon();
    case 'aerial_capacitor':
      return toAerial(view);
    case 'earth_wire':
      return byEarthWire(view);
    case 'person':
      return throughBody(view);
    default:
      // Chassis and aerial terminal are where courses meet.
      return [];
  }
}

/** An arrowhead: where its tip is, and which way it points, degrees from the right. */
export interface Arrow {
  x: number;
  y: number;
  turn: number;
}

/** Pieces shorter than this carry no arrow; from one arrow to the next is at least `APART`. */
const SHORT = 30;
const APART = 150;

/** Where no arrow may be. */
export type Room = Pick<Box, 'x' | 'y' | 'width' | 'height'>;

/** Arrowheads along a line, away from what is shown or written there. */
export function arrows(line: readonly Point[], boxes: readonly Room[]): Arrow[] {
  return line.slice(1).flatMap((to, place) => {
    const from = line[place];
    return from ? onPiece(from, to, boxes) : [];
  });
}

function onPiece([x1, y1]: Point, [x2, y2]: Point, boxes: readonly Room[]): Arrow[] {
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length < SHORT) return [];
  const count = Math.max(1, Math.floor(length / APART));
  const turn = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
  const found = Array.from({ length: count }, (_, number) => {
    const share = (number + 0.5) / count;
    return { x: x1 + (x2 - x1) * share, y: y1 + (y2 - y1) * share, turn };
  });
  return found.filter((arrow) => !boxes.some((box) => isNear(arrow, box)));
}

function isNear({ x, y }: Arrow, box: Room): boolean {
  const room = 9;
  return x > box.x - room && x < box.x + box.width + room && y > box.y - room && y < box.y + box.height + room;
}
