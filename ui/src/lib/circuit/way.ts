/** The way of the current over the picture: the lines of the parts that it passes. */

import type { CircuitView } from '../types/CircuitView';
import type { Part } from '../types/Part';
import { handAt, type Layout, type Point } from './layout';
import * as at from './places';

/** The lines to be drawn over, in the order of the way. */
export function way(view: CircuitView, { wires }: Layout): Point[][] {
  return view.path.flatMap((part, place): Point[][] => {
    if (part === 'chassis') return alongChassis(view, place);
    return wires.filter((wire) => wire.part === part).map(({ points }) => points);
  });
}

/** Along the chassis: from where the current comes onto it to where it leaves. */
function alongChassis(view: CircuitView, place: number): Point[][] {
  const from = column(view, view.path[place - 1]);
  const next = view.path.slice(place + 1);
  const to = next.map((part) => (part === 'person' ? onChassis(view) : column(view, part)));
  const ends = from === null ? [] : to.filter((x) => x !== null);
  return ends.map((end): Point[] => [
    [from ?? end, at.CHASSIS],
    [end, at.CHASSIS],
  ]);
}

function onChassis(view: CircuitView): number | null {
  return view.touched === 'chassis' ? handAt(view) : null;
}

/** Where a part meets the chassis, from the left. */
function column({ isolation }: CircuitView, part: Part | undefined): number | null {
  const middle = isolation === 'line_rectified';
  switch (part) {
    case 'near_chassis':
      return middle ? at.MIDDLE : at.NEAR;
    case 'far_chassis':
      return middle ? at.MIDDLE : at.FAR;
    case 'near_capacitor':
      return at.NEAR_CAPACITOR;
    case 'far_capacitor':
      return at.FAR_CAPACITOR;
    case 'stray_near':
      return at.STRAY_NEAR;
    case 'stray_far':
      return at.STRAY_FAR;
    case 'aerial_capacitor':
      return at.MIDDLE;
    case 'earth_wire':
      return at.CHASSIS_RIGHT;
    default:
      return null;
  }
}

/** Points as a path. */
export function path(points: readonly Point[]): string {
  return points.map(([x, y], place) => `${place === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}
