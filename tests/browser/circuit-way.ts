/** Whether the way of the current in a circuit picture is one line along what is drawn there. */

import { layout } from '../../ui/src/lib/circuit/layout';
import { feetAt, throughBody } from '../../ui/src/lib/circuit/person';
import { ISOLATED, SECONDARY, SOURCE } from '../../ui/src/lib/circuit/places';
import { byEarthWire, toSource } from '../../ui/src/lib/circuit/supply';
import type { Box, Drawn, Point } from '../../ui/src/lib/circuit/symbols';
import { way } from '../../ui/src/lib/circuit/way';
import type { Feed } from '../../ui/src/lib/types/Feed';
import type { CircuitView } from '../../ui/src/lib/types/CircuitView';

const isIn = ([x, y]: Point, box: Box): boolean =>
  x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;

/** Whether a point lies on a line, or within a stroke of it. */
function liesOn([x, y]: Point, points: readonly Point[]): boolean {
  return points.slice(1).some(([x2, y2], place) => {
    const [x1, y1] = points[place] ?? [x2, y2];
    const length = Math.hypot(x2 - x1, y2 - y1) || 1;
    const along = ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / length;
    const beside = Math.abs((x - x1) * (y2 - y1) - (y - y1) * (x2 - x1)) / length;
    return beside < 3 && along > -3 && along < length + 3;
  });
}

/** The pieces of a way that follow nothing which is drawn. */
function jumps(view: Drawn, line: readonly Point[]): Point[] {
  const back = view.path.includes('person') ? toSource(view, feetAt(view)) : byEarthWire(view);
  const drawn = [...layout(view).wires.map(({ points }) => points), throughBody(view), back];
  const { boxes } = layout(view);
  return line.slice(1).flatMap(([x2, y2], place): Point[] => {
    const [x1, y1] = line[place] ?? [x2, y2];
    const steps = Math.ceil(Math.hypot(x2 - x1, y2 - y1) / 4);
    const on = Array.from({ length: steps }, (_, step): Point => [x1 + ((x2 - x1) * step) / steps, y1 + ((y2 - y1) * step) / steps]);
    return on.filter((point) => !drawn.some((points) => liesOn(point, points)) && !boxes.some((box) => isIn(point, box)));
  });
}

/** Where a way may begin and end: at the two poles of the source, or at the two ends of a winding of its own. */
function loops(feed: Feed): string[] {
  if (feed !== 'isolated') return [`${SOURCE.x + SOURCE.r},${SOURCE.y} ${SOURCE.x},${SOURCE.y - SOURCE.r}`];
  const [hot, neutral] = [`${SECONDARY},${ISOLATED.hot}`, `${SECONDARY},${ISOLATED.neutral}`];
  return [`${hot} ${neutral}`, `${neutral} ${hot}`];
}

/** What is wrong with a picture's way of the current: nothing, where there is none. */
export function strays(found: CircuitView, feed: Feed): string[] {
  const view: Drawn = { ...found, feed };
  const { main, branch } = way(view);
  if (main.length === 0) return [];
  const wrong = jumps(view, main).map((point) => `the way leaves the lines at ${point}`);
  const ends = [main[0], main.at(-1)].join(' ');
  if (!loops(feed).includes(ends)) wrong.push(`it is no loop: ${ends}`);
  const splits = found.path.includes('earth_wire') && found.path.includes('person');
  if (splits !== branch.length > 0) wrong.push('the earth wire is not beside the hand');
  return wrong;
}
