/** A card, a plug that stands beside it and a camera above both: what the camera sees, drawn with known geometry. Nothing
    of it knows the code that measures. Millimetres; x to the right, y towards the holder of the camera, z up from the
    card. */

import type { Page } from '@playwright/test';

export type Pixel = readonly [x: number, y: number];
type Vector = readonly [x: number, y: number, z: number];

/** Sides of an ID-1 card and the radius of its corners, mm. ISO/IEC 7810:2019, from memory, high. */
const CARD = { long: 85.6, short: 53.98, round: 3.18 };
/** Widths of a blade, and from one to the other, mm. NEMA WD 6, nominal, from memory, high. */
export const NARROW = 6.35;
export const WIDE = 7.92;
const APART = 12.7;
/** Thickness of a blade, mm. NEMA WD 6, maximum, verified. */
const THICK = 1.52;
/** Height of the tips above the card, and of the plug's face below it, mm: a card on a thick book. */
const TIPS = 9;
const FACE = -7;

/** Width and height of the photo, px: 3 to 4, held upright, as long as a photo is kept. */
export const SIZE = [1536, 2048] as const;
/** Field of view along the diagonal: a phone's main camera. Common practice. */
const FIELD = (70 * Math.PI) / 180;
/** How far the camera leans over, and how it is turned. */
const LEAN = (11 * Math.PI) / 180;
const ROLL = (4 * Math.PI) / 180;
/** The middle of the plug and what the camera is aimed at. */
const PLUG: Vector = [4, 58, 0];
const AIM: Vector = [0, 24, 0];

export interface Scene {
  /** Widths of the two blades, mm, the left one first. */
  widths: readonly [number, number];
  /** How far away the camera is, mm. */
  far: number;
}

export const POLARISED: Scene = { widths: [NARROW, WIDE], far: 200 };
export const EQUAL: Scene = { widths: [NARROW, NARROW], far: 200 };
/** Of neither kind: halfway between them. */
export const NEITHER: Scene = { widths: [NARROW, 7.1], far: 200 };

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Where a place is seen, px of the photo. */
export function sees({ far }: Scene, at: Vector): Pixel {
  const [sin, cos] = [Math.sin(LEAN), Math.cos(LEAN)];
  // Leaned back towards the holder, who stands at the lower edge of the photo.
  const up: Vector = [0, sin, cos];
  const centre: Vector = [AIM[0] + up[0] * far, AIM[1] + up[1] * far, AIM[2] + up[2] * far];
  const forward: Vector = [0, -sin, -cos];
  const right: Vector = [Math.cos(ROLL), Math.sin(ROLL) * cos, -Math.sin(ROLL) * sin];
  const down: Vector = [-Math.sin(ROLL), Math.cos(ROLL) * cos, -Math.cos(ROLL) * sin];
  const focal = Math.hypot(...SIZE) / 2 / Math.tan(FIELD / 2);
  const from = minus(at, centre);
  const deep = dot(from, forward);
  return [SIZE[0] / 2 + (focal * dot(from, right)) / deep, SIZE[1] / 2 + (focal * dot(from, down)) / deep];
}

/** The corners of the card, where its sides would meet, in order round it from the upper left. */
export function corners(scene: Scene): Pixel[] {
  const [x, y] = [CARD.long / 2, CARD.short / 2];
  const places: Vector[] = [
    [-x, -y, 0],
    [x, -y, 0],
    [x, y, 0],
    [-x, y, 0],
  ];
  return places.map((place) => sees(scene, place));
}

/** Both edges of each blade at its tip, the left blade first. */
export function edges(scene: Scene): Pixel[] {
  return scene.widths.flatMap((width, which) => {
    const x = PLUG[0] + (which - 0.5) * APART;
    return [-width / 2, width / 2].map((off) => sees(scene, [x, PLUG[1] + off, TIPS]));
  });
}

/** Between the blades. */
export function middle(scene: Scene): Pixel {
  return sees(scene, [PLUG[0], PLUG[1], TIPS]);
}

interface Shape {
  points: Pixel[];
  fill: string;
}

/** A rectangle with rounded corners, level, as the camera sees it. */
function plate(scene: Scene, [x, y, z]: Vector, [long, short]: Pixel, round: number, fill: string): Shape {
  const points: Pixel[] = [];
  for (let step = 0; step < 4 * 12; step += 1) {
    const turn = (2 * Math.PI * step) / 48;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const off = (half: number, part: number): number => Math.sign(part) * (half - round) + round * part;
    points.push(sees(scene, [x + off(long / 2, cos), y + off(short / 2, sin), z]));
  }
  return { points, fill };
}

function shapes(scene: Scene): Shape[] {
  const box = (x: number, y: number, z: number, long: number, short: number, fill: string): Shape =>
    plate(scene, [x, y, z], [long, short], 0.05, fill);
  const drawn = [
    // The table, the book and its shadow, the card with a band on it.
    box(0, 24, -30, 900, 900, '#b99b6f'),
    box(3, 0, -29, 124, 78, '#94794f'),
    box(0, -4, -2, 116, 74, '#5a6b73'),
    box(0, -4, -1, 112, 70, '#66787f'),
    plate(scene, [1, 1, -0.8], [CARD.long, CARD.short], CARD.round, '#46535a'),
    plate(scene, [0, 0, 0], [CARD.long, CARD.short], CARD.round, '#e9e4d6'),
    box(0, -12, 0, CARD.long - 0.2, 9, '#9db4a6'),
    box(-24, 14, 0, 26, 4, '#c8c1ac'),
    // The plug, its face and the blades from their feet to their tips.
    plate(scene, [PLUG[0], PLUG[1], FACE - 12], [38, 30], 12, '#1c1512'),
    plate(scene, [PLUG[0], PLUG[1], FACE], [34, 25], 11, '#38291f'),
  ];
  scene.widths.forEach((width, which) => {
    const x = PLUG[0] + (which - 0.5) * APART;
    for (let z = FACE; z < TIPS; z += 0.5) drawn.push(box(x, PLUG[1], z, THICK, width, '#7d6330'));
    drawn.push(box(x, PLUG[1], TIPS, THICK, width, '#f0dca0'));
  });
  return drawn;
}

/** The photo of a scene as base64 text of a JPEG, drawn in the browser. */
export async function photographed(page: Page, scene: Scene): Promise<string> {
  return page.evaluate(
    ({ size: [width, height], drawn }) => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [width, height];
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('no canvas');
      for (const { points, fill } of drawn) {
        pen.beginPath();
        points.forEach(([x, y], place) => (place === 0 ? pen.moveTo(x, y) : pen.lineTo(x, y)));
        pen.closePath();
        pen.fillStyle = fill;
        pen.fill();
      }
      return canvas.toDataURL('image/jpeg', 0.9).split(',')[1] ?? '';
    },
    { size: SIZE, drawn: shapes(scene) },
  );
}
