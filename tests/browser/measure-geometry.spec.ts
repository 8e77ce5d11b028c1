/** The numbers behind points on a photo: where they lie on the display, where grips and loupe stand, where points begin. */

import { expect, test } from '@playwright/test';

import {
  type Corner,
  frame,
  gain,
  GRIP_OFF,
  GRIP_RADIUS,
  gripOff,
  gripWays,
  inPhoto,
  isShown,
  LOUPE_RADIUS,
  loupeAt,
  loupeCorner,
  loupeScale,
  MARGIN,
  nudged,
  type Place,
  type Share,
  steadied,
  toBoard,
  toShare,
} from '../../ui/src/lib/measure/geometry';
import { beside, bladesAbout, CARD_MM, closeTo, firstCard, lengthAbout, pxPerMm } from '../../ui/src/lib/measure/placing';
import { nextUnplaced, put, unplaced } from '../../ui/src/lib/measure/points';
import { whole } from '../../ui/src/lib/photo/zoom';
import { format, parent, parse } from '../../ui/src/lib/route/route';

const UPRIGHT = { width: 1536, height: 2048 };
const LYING = { width: 2048, height: 1536 };
const SMALL = { width: 640, height: 480 };
const PHOTOS = [UPRIGHT, LYING, SMALL];
/** Boards from a narrow phone to a tablet. */
const BOARDS = [
  { width: 284, height: 226 },
  { width: 356, height: 480 },
  { width: 450, height: 290 },
  { width: 630, height: 660 },
];

const far = (one: Place, other: Place): number => Math.hypot(one.x - other.x, one.y - other.y);
const pxFar = (one: Share | undefined, other: Share | undefined, { width, height }: typeof UPRIGHT): number =>
  one && other ? Math.hypot((one[0] - other[0]) * width, (one[1] - other[1]) * height) : NaN;

/** Places all over a board, its edges too. */
function* all(board: typeof UPRIGHT, step = 17): Generator<Place> {
  for (let x = 0; x <= board.width; x += step) for (let y = 0; y <= board.height; y += step) yield { x, y };
}

test('a whole photo lies on the board as worked by hand', () => {
  // 400 − 2 × 12 = 376 px for 2048, 300 − 2 × 12 = 276 px for 1536: the height decides, 276 / 1536 = 0.1796875.
  const lies = frame({ width: 400, height: 300 }, LYING, whole(LYING));
  expect(lies.scale).toBeCloseTo(0.1796875, 9);
  expect(lies.left).toBeCloseTo(200 - 1024 * 0.1796875, 9);
  expect(lies.top).toBeCloseTo(12, 9);
});

test('the whole photo is to be seen on every board, with a margin round it', () => {
  for (const board of BOARDS) {
    for (const photo of PHOTOS) {
      const lies = frame(board, photo, whole(photo));
      const [first, last] = [toBoard(lies, photo, [0, 0]), toBoard(lies, photo, [1, 1])];
      expect(Math.min(first.x, first.y, board.width - last.x, board.height - last.y)).toBeCloseTo(MARGIN, 6);
      expect(first.x + last.x, 'in the middle').toBeCloseTo(board.width, 6);
      expect(first.y + last.y, 'in the middle').toBeCloseTo(board.height, 6);
    }
  }
});

test('a share goes to the board and back', () => {
  for (const scale of [1, 2.3, 8]) {
    const lies = frame({ width: 356, height: 480 }, UPRIGHT, { scale, x: 700, y: 900 });
    for (const share of [[0, 0], [0.31, 0.77], [1, 1], [-0.2, 1.4]] as const) {
      const [x, y] = toShare(lies, UPRIGHT, toBoard(lies, UPRIGHT, share));
      expect(x).toBeCloseTo(share[0], 12);
      expect(y).toBeCloseTo(share[1], 12);
    }
  }
});

test('enlarged, the middle of what is shown is in the middle of the board', () => {
  const board = { width: 356, height: 480 };
  const [once, more] = [frame(board, UPRIGHT, whole(UPRIGHT)), frame(board, UPRIGHT, { scale: 3, x: 400, y: 1500 })];
  expect(more.scale).toBeCloseTo(3 * once.scale, 12);
  const middle = toBoard(more, UPRIGHT, [400 / 1536, 1500 / 2048]);
  expect(middle.x).toBeCloseTo(178, 9);
  expect(middle.y).toBeCloseTo(240, 9);
});

test('a nudge is one px of the photo, and never leaves it', () => {
  const [x, y] = nudged([0.5, 0.5], 1, -1, UPRIGHT);
  expect(x * 1536).toBeCloseTo(769, 9);
  expect(y * 2048).toBeCloseTo(1023, 9);
  expect(nudged([0, 1], -1, 1, UPRIGHT)).toEqual([0, 1]);
  expect(nudged([0.9999, 0.0001], 5, -5, UPRIGHT)).toEqual([1, 0]);
  expect(inPhoto([-3, 0.4])).toEqual([0, 0.4]);
});

test('grips stand off outward, and keep a finger’s width from each other however near their points are', () => {
  const heaps: Place[][] = [
    [1, 2, 3, 4].map(() => ({ x: 200, y: 200 })),
    [0, 1, 2, 3].map((step) => ({ x: 200 + step, y: 200 })),
    [{ x: 198, y: 194 }, { x: 198, y: 206 }, { x: 210, y: 194 }, { x: 210, y: 206 }],
    [{ x: 150, y: 300 }, { x: 160, y: 305 }],
    [{ x: 100, y: 100 }, { x: 300, y: 110 }, { x: 290, y: 260 }, { x: 90, y: 250 }],
  ];
  for (const points of heaps) {
    const ways = gripWays(points);
    const grips = points.map(({ x, y }, at) => {
      const off = gripOff({ x, y }, ways[at] ?? 0, { width: 600, height: 600 });
      expect(Math.hypot(off.x, off.y)).toBeCloseTo(GRIP_OFF, 6);
      return { x: x + off.x, y: y + off.y };
    });
    grips.forEach((grip, at) =>
      grips.slice(at + 1).forEach((other) => expect(far(grip, other)).toBeGreaterThan(2 * GRIP_RADIUS)),
    );
  }
  const [card = []] = heaps.slice(-1);
  const middle = { x: 195, y: 180 };
  gripWays(card).forEach((way, at) => {
    const { x, y } = card[at] ?? middle;
    expect(far({ x: x + Math.cos(way), y: y + Math.sin(way) }, middle)).toBeGreaterThan(far({ x, y }, middle));
  });
});

/** How far a place is inside a board. */
const inside = ({ x, y }: Place, board: typeof UPRIGHT): number =>
  Math.min(x, y, board.width - x, board.height - y);

test('wherever a point is on a board, its grip is on the board and no finger on it hides the point', () => {
  let [nearest, outermost, seen] = [Infinity, Infinity, 0];
  for (const board of BOARDS) {
    for (const point of all(board)) {
      for (let way = -3; way <= 3; way += 0.5) {
        const off = gripOff(point, way, board);
        nearest = Math.min(nearest, Math.hypot(off.x, off.y));
        outermost = Math.min(outermost, inside({ x: point.x + off.x, y: point.y + off.y }, board));
        seen += 1;
      }
    }
  }
  expect(seen).toBeGreaterThan(10_000);
  expect(nearest).toBeGreaterThan(44);
  expect(outermost).toBeGreaterThan(GRIP_RADIUS - 0.01);
});

test('the loupe is on the board, and neither the finger nor the point is under it', () => {
  let [nearest, outermost, seen] = [Infinity, Infinity, 0];
  for (const board of BOARDS) {
    for (const finger of all(board)) {
      for (const way of [0, 0.8, 1.6, 2.4, 3.2, 4, 4.8, 5.6]) {
        const point = { x: finger.x + GRIP_OFF * Math.cos(way), y: finger.y + GRIP_OFF * Math.sin(way) };
        if (!isShown(point, board)) continue;
        for (const now of ['top-left', 'top-right', 'bottom-left'] as const) {
          const at = loupeAt(loupeCorner(now, [finger, point], board), board);
          outermost = Math.min(outermost, inside(at, board));
          nearest = Math.min(nearest, far(at, finger), far(at, point));
          seen += 1;
        }
      }
    }
  }
  expect(seen).toBeGreaterThan(10_000);
  expect(outermost).toBeGreaterThan(LOUPE_RADIUS);
  expect(nearest).toBeGreaterThan(LOUPE_RADIUS);
});

test('the loupe stays where it is until a finger comes near, then goes to the other side and stays there', () => {
  const board = { width: 356, height: 480 };
  let corner: Corner = 'top-right';
  const seen: Corner[] = [];
  // From the lower left to the upper right, and a little to and fro there.
  const way = [0, 0.2, 0.4, 0.6, 0.8, 0.9, 1, 0.98, 1, 0.98, 0.7, 0.2];
  for (const part of way) {
    corner = loupeCorner(corner, [{ x: 30 + 296 * part, y: 440 - 380 * part }], board);
    seen.push(corner);
  }
  expect(seen[0]).toBe('top-right');
  expect(seen.filter((one, at) => at > 0 && one !== seen[at - 1])).toEqual(['top-left']);
  expect(loupeCorner('bottom-left', [{ x: 178, y: 400 }], board), 'back to the top').toMatch(/^top/);
});

test('a quick finger takes a point along, a slow one moves it by little more than a px of the photo', () => {
  const lies = frame({ width: 356, height: 480 }, UPRIGHT, whole(UPRIGHT));
  expect(gain(1, lies)).toBe(1);
  expect(gain(0, lies) / lies.scale, 'px of the photo for one of the display').toBeCloseTo(1.5, 9);
  const speeds = [0, 0.02, 0.05, 0.1, 0.14, 0.2].map((speed) => gain(speed, lies));
  expect([...speeds].sort((one, other) => one - other)).toEqual(speeds);
  const near = frame({ width: 356, height: 480 }, UPRIGHT, { ...whole(UPRIGHT), scale: 6 });
  expect(gain(0, near), 'enlarged there is nothing to slow down').toBe(1);
});

test('the speed of a finger is steadied, and finite for two steps at one time', () => {
  expect(steadied(1, 5, 0)).toBeCloseTo(0.15, 9);
  expect(steadied(1, 0, 0), 'nor is it no number where nothing moved').toBeCloseTo(0.15, 9);
  const after = (steps: number): number => {
    let speed = 1;
    for (let step = 0; step < steps; step += 1) speed = steadied(speed, 1, 100);
    return speed;
  };
  expect(after(1), 'one slow step is not yet a slow finger').toBeGreaterThan(0.08);
  expect(after(8)).toBeLessThan(0.03);
});

test('the loupe magnifies what the board shows, within reason', () => {
  expect(loupeScale({ scale: 0.5, left: 0, top: 0 })).toBe(2);
  expect(loupeScale({ scale: 0.1, left: 0, top: 0 })).toBe(1.25);
  expect(loupeScale({ scale: 4, left: 0, top: 0 })).toBe(6);
});

test('the outline of a card begins as a card, in order round it, lying as the photo does', () => {
  for (const photo of PHOTOS) {
    const card = firstCard(photo);
    const [a, b, c, d] = card;
    const sides = [pxFar(a, b, photo), pxFar(b, c, photo), pxFar(c, d, photo), pxFar(d, a, photo)];
    expect(Math.max(...sides) / Math.min(...sides)).toBeCloseTo(CARD_MM[0] / CARD_MM[1], 9);
    expect(sides[0]).toBeCloseTo(sides[2] ?? 0, 9);
    const isLevel = (sides[0] ?? 0) > (sides[1] ?? 0);
    expect(isLevel).toBe(photo.width > photo.height);
    expect(card.flat().every((share) => share > 0.1 && share < 0.9)).toBe(true);
    expect((a?.[0] ?? 1) < (c?.[0] ?? 0) && (a?.[1] ?? 1) < (c?.[1] ?? 0), 'from the upper left').toBe(true);
  }
});

test('the card tells how large a millimetre is, turned or not and from whichever corner', () => {
  const turned = (degrees: number, scale: number): Share[] => {
    const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
    const [x, y] = [(CARD_MM[0] / 2) * scale, (CARD_MM[1] / 2) * scale];
    return [[-x, -y], [x, -y], [x, y], [-x, y]].map(([px = 0, py = 0]): Share => [
      (700 + px * cos - py * sin) / UPRIGHT.width,
      (900 + px * sin + py * cos) / UPRIGHT.height,
    ]);
  };
  for (const degrees of [0, 30, 90, 217]) {
    const card = turned(degrees, 8);
    expect(pxPerMm(card, UPRIGHT)).toBeCloseTo(8, 9);
    expect(pxPerMm([...card.slice(1), ...card.slice(0, 1)], UPRIGHT)).toBeCloseTo(8, 9);
  }
});

test('points begin beside the card, in the photo, where there is most room', () => {
  const shifted = (dx: number, dy: number): Share[] => firstCard(LYING).map(([x, y]): Share => [x + dx, y + dy]);
  expect(beside(shifted(-0.25, 0), LYING)[0], 'a card at the left').toBeGreaterThan(0.5);
  expect(beside(shifted(0.25, 0), LYING)[0], 'a card at the right').toBeLessThan(0.5);
  expect(beside(firstCard(SMALL), SMALL).every((share) => share > 0 && share < 1)).toBe(true);
  const low = shifted(0, 0.2);
  expect(beside(low, LYING)[1], 'a card at the bottom').toBeLessThan(Math.min(...low.map(([, y]) => y)));
});

test('blades begin as large as the card says that blades are, one after the other', () => {
  const card = firstCard(UPRIGHT);
  const mm = pxPerMm(card, UPRIGHT);
  const [a, b, c, d] = bladesAbout([0.5, 0.5], card, UPRIGHT);
  expect(pxFar(a, b, UPRIGHT) / mm).toBeCloseTo(6.35, 9);
  expect(pxFar(c, d, UPRIGHT) / mm).toBeCloseTo(6.35, 9);
  expect(pxFar(a, c, UPRIGHT) / mm).toBeCloseTo(12.7, 9);
  expect(pxFar(...(lengthAbout([0.5, 0.5], card, UPRIGHT) as [Share, Share]), UPRIGHT) / mm).toBeCloseTo(20, 9);
  for (const at of [[0, 0], [1, 1], [0, 1]] as const) {
    const points = [...bladesAbout(at, card, UPRIGHT), ...lengthAbout(at, card, UPRIGHT)];
    expect(points.flat().every((share) => share >= 0 && share <= 1)).toBe(true);
  }
});

test('what is tapped comes to the middle, large enough to place points on', () => {
  const card = firstCard(UPRIGHT);
  const zoom = closeTo([0.5, 0.6], card, UPRIGHT);
  expect(zoom.x).toBeCloseTo(768, 6);
  expect(zoom.y).toBeCloseTo(0.6 * 2048, 6);
  expect(UPRIGHT.width / zoom.scale / pxPerMm(card, UPRIGHT), 'mm across').toBeCloseTo(36, 6);
  const small = card.map(([x, y]): Share => [0.5 + (x - 0.5) / 8, 0.5 + (y - 0.5) / 8]);
  expect(closeTo([0.5, 0.5], small, UPRIGHT).scale, 'no more than there is to see').toBe(8);
  const edge = closeTo([0, 0], card, UPRIGHT);
  expect(edge.x * edge.scale, 'the photo is not left').toBeCloseTo(UPRIGHT.width / 2, 6);
});

test('points count as placed once they were put somewhere', () => {
  const points = unplaced([[0.1, 0.1], [0.2, 0.2], [0.3, 0.3]]);
  expect(nextUnplaced(points)).toBe(0);
  const first = put(points, 0, [0.5, 0.5]);
  expect(first.at).toEqual([[0.5, 0.5], [0.2, 0.2], [0.3, 0.3]]);
  expect(nextUnplaced(first)).toBe(1);
  expect(nextUnplaced(put(put(first, 2, [0, 0]), 1, [0, 0]))).toBe(null);
  expect(points.placed, 'what was handed in is as it was').toEqual([false, false, false]);
});

test('each step has its address, and back goes to the one before', () => {
  for (const step of ['corners', 'what', 'blades', 'length', 'result'] as const) {
    const route = { screen: 'measure', inspection: 'i1', photo: 'p1', step } as const;
    expect(parse(format(route))).toEqual(route);
  }
  expect(parse('#/i/i1/photo/p1/measure/nonsense')).toMatchObject({ screen: 'measure', step: 'corners' });
  expect(parse('#/i/i1/photo/p1')).toEqual({ screen: 'photo', inspection: 'i1', photo: 'p1' });
  const up = (hash: string): string => format(parent(parse(hash)));
  expect(up('#/i/i1/photo/p1/measure/result')).toBe('#/i/i1/photo/p1/measure/what');
  expect(up('#/i/i1/photo/p1/measure/blades')).toBe('#/i/i1/photo/p1/measure/what');
  expect(up('#/i/i1/photo/p1/measure/what')).toBe('#/i/i1/photo/p1/measure');
  expect(up('#/i/i1/photo/p1/measure')).toBe('#/i/i1/photo/p1');
});
