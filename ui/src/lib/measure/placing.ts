/** Where points are put before anybody has moved them. */

import type { Size, Zoom } from '../photo/zoom';
import { enlarged, moved, whole } from '../photo/zoom';
import { inPhoto, type Share } from './geometry';

/** Long and short side of an ID-1 card, mm. ISO/IEC 7810:2019, from memory, high. */
export const CARD_MM = [85.6, 53.98] as const;

/** From blade to blade and the width of one, mm: where the points begin, not what is measured. NEMA WD 6, from memory,
    high. */
const BLADES_MM = { apart: 12.7, width: 6.35 } as const;

/** From end to end of a length before it is placed, mm, and how much of the photo is shown about points. */
const LENGTH_MM = 20;
const SHOWN_MM = 36;

/** How much of the photo's longer side a card takes before it is placed. */
const CARD_PART = 0.42;

type Px = readonly [x: number, y: number];

const toPx = ([x, y]: Share, { width, height }: Size): Px => [x * width, y * height];
const toShare = ([x, y]: Px, { width, height }: Size): Share => [x / width, y / height];

/** A card in the middle of the photo, lying as the photo does: its corners in order round it, from the upper left. */
export function firstCard(photo: Size): Share[] {
  const isWide = photo.width >= photo.height;
  const long = CARD_PART * Math.max(photo.width, photo.height);
  const short = (long * CARD_MM[1]) / CARD_MM[0];
  const [x, y] = isWide ? [long / 2, short / 2] : [short / 2, long / 2];
  const [left, right] = [0.5 - x / photo.width, 0.5 + x / photo.width];
  const [top, bottom] = [0.5 - y / photo.height, 0.5 + y / photo.height];
  const corners: Share[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
  return corners.map(inPhoto);
}

/** About how many px of the photo a millimetre beside the card takes. */
export function pxPerMm(card: readonly Share[], photo: Size): number {
  const corners = card.map((corner) => toPx(corner, photo));
  const sides = corners.map(([x, y], place) => {
    const [nextX, nextY] = corners[(place + 1) % corners.length] ?? [x, y];
    return Math.hypot(nextX - x, nextY - y);
  });
  const [a = 0, b = 0, c = 0, d = 0] = sides;
  const [one, other] = [(a + c) / 2, (b + d) / 2];
  return (Math.max(one, other) / CARD_MM[0] + Math.min(one, other) / CARD_MM[1]) / 2;
}

/** A place beside the card, off the side where the photo has most room: what is measured lies there. */
export function beside(card: readonly Share[], photo: Size): Share {
  const corners = card.map((corner) => toPx(corner, photo));
  const count = Math.max(corners.length, 1);
  const mean = (axis: 0 | 1): number => corners.reduce((sum, corner) => sum + corner[axis], 0) / count;
  const [x, y] = [mean(0), mean(1)];
  const off = 25 * pxPerMm(card, photo);
  const places = corners.map((corner, place): Px => {
    const next = corners[(place + 1) % corners.length] ?? corner;
    const [midX, midY] = [(corner[0] + next[0]) / 2, (corner[1] + next[1]) / 2];
    const long = Math.hypot(midX - x, midY - y) || 1;
    return [midX + (off * (midX - x)) / long, midY + (off * (midY - y)) / long];
  });
  const room = ([atX, atY]: Px): number => Math.min(atX, atY, photo.width - atX, photo.height - atY);
  const [best = [photo.width / 2, photo.height / 2] as const] = [...places].sort((one, other) => room(other) - room(one));
  return inPhoto(toShare(best, photo));
}

/** Both edges of two blades about a place, one blade after the other, as large as the card says that blades are. */
export function bladesAbout(at: Share, card: readonly Share[], photo: Size): Share[] {
  const mm = pxPerMm(card, photo);
  const [x, y] = toPx(at, photo);
  const [apart, width] = [(BLADES_MM.apart / 2) * mm, (BLADES_MM.width / 2) * mm];
  const places: Px[] = [
    [x - apart, y - width],
    [x - apart, y + width],
    [x + apart, y - width],
    [x + apart, y + width],
  ];
  return places.map((place) => inPhoto(toShare(place, photo)));
}

/** The two ends of a length about a place. */
export function lengthAbout(at: Share, card: readonly Share[], photo: Size): Share[] {
  const half = (LENGTH_MM / 2) * pxPerMm(card, photo);
  const [x, y] = toPx(at, photo);
  return [[x - half, y] as const, [x + half, y] as const].map((place) => inPhoto(toShare(place, photo)));
}

/** The photo enlarged about a place, so that what lies about it fills the board. */
export function closeTo(at: Share, card: readonly Share[], photo: Size): Zoom {
  const shown = SHOWN_MM * pxPerMm(card, photo);
  const factor = Math.min(photo.width, photo.height) / Math.max(shown, 1);
  const [x, y] = toPx(at, photo);
  const near = enlarged(whole(photo), factor, [x, y], photo);
  // The place itself comes to the middle, as far as the photo reaches.
  return moved(near, x - near.x, y - near.y, photo);
}
