/** Which part of a photo is on the screen: its middle in px of the photo, and how much it is enlarged. */
export interface Zoom {
  scale: number;
  x: number;
  y: number;
}

export interface Size {
  width: number;
  height: number;
}

/** The most that a photo is enlarged: a pixel is then as large as a grain of sand. */
const MOST = 8;

/** The whole photo. */
export function whole({ width, height }: Size): Zoom {
  return { scale: 1, x: width / 2, y: height / 2 };
}

/** Enlarged by a factor about a place of the photo, which stays where it is on the screen. */
export function enlarged(zoom: Zoom, factor: number, [x, y]: readonly [number, number], size: Size): Zoom {
  const scale = Math.min(Math.max(zoom.scale * factor, 1), MOST);
  const by = zoom.scale / scale;
  return held({ scale, x: x + (zoom.x - x) * by, y: y + (zoom.y - y) * by }, size);
}

/** Moved by so many px of the photo. */
export function moved(zoom: Zoom, dx: number, dy: number, size: Size): Zoom {
  return held({ ...zoom, x: zoom.x + dx, y: zoom.y + dy }, size);
}

/** Never so far that the middle of the screen leaves the photo, nor a small photo its place. */
function held({ scale, x, y }: Zoom, { width, height }: Size): Zoom {
  const inside = (at: number, length: number): number => {
    const half = length / (2 * scale);
    return Math.min(Math.max(at, half), length - half);
  };
  return { scale, x: inside(x, width), y: inside(y, height) };
}

/** The same as the viewBox of a drawing. */
export function viewBox({ scale, x, y }: Zoom, { width, height }: Size): string {
  const [wide, high] = [width / scale, height / scale];
  return `${x - wide / 2} ${y - high / 2} ${wide} ${high}`;
}
