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

/** Where on the screen it is shown, CSS px. */
export interface Frame extends Size {
  left: number;
  top: number;
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

/** How many px of the photo one of the screen is; nothing while the frame has no size yet. */
export function perPixel(zoom: Zoom, frame: Size, size: Size): number {
  const fits = Math.min(frame.width / size.width, frame.height / size.height);
  return fits > 0 ? 1 / (fits * zoom.scale) : 0;
}

/** A place of the screen, CSS px, in px of the photo. */
export function placeAt(zoom: Zoom, frame: Frame, size: Size, x: number, y: number): [number, number] {
  const px = perPixel(zoom, frame, size);
  const [middleX, middleY] = [frame.left + frame.width / 2, frame.top + frame.height / 2];
  return [zoom.x + (x - middleX) * px, zoom.y + (y - middleY) * px];
}

/** The same as the viewBox of a drawing. */
export function viewBox({ scale, x, y }: Zoom, { width, height }: Size): string {
  const [wide, high] = [width / scale, height / scale];
  return `${x - wide / 2} ${y - high / 2} ${wide} ${high}`;
}
