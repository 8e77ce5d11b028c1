import type { HeaterView } from '../types/HeaterView';
import type { TubeRow } from '../types/TubeRow';
import { say } from '../words';
import { gathered, nameOf } from './list';
import { type Sheet, TYPE } from './sheet';

/** Equal heaters on a shelf: a low bar, to the same scale as the line. */
export interface Bar {
  key: string;
  row: TubeRow;
  /** Its name, and how many where there are several; and the room that takes. */
  text: string;
  needs: number;
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Heaters of one voltage, side by side. */
export interface Shelf {
  volts: number;
  floor: number;
  bars: Bar[];
  /** Whether it goes on from the shelf above. */
  more: boolean;
}

/** Heaters side by side on a low voltage, beside the line that is far higher. */
export interface Shelves {
  width: number;
  height: number;
  floor: number;
  post: { x: number; width: number; top: number };
  /** Where the winding or battery stands. */
  feed: { x: number; top: number; bottom: number };
  /** Too many for their names: these stand below, by their volts. */
  named: { volts: number; names: string[] }[];
  /** Too narrow for names beside volts: they stand above each other. */
  compact: boolean;
  /** Where the shelves begin. */
  from: number;
  shelves: Shelf[];
  /** Tubes that stand on none of them. */
  rest: TubeRow[];
  /** How many times as high as the tallest of them the line is. */
  times: number;
  /** The empty space that shows it. */
  empty: { x: number; y: number; width: number };
}

/** A shelf before it is known how high it stands. */
type Line = Omit<Shelf, 'floor'>;

/** Lays heaters out on shelves. */
export function layShelves(view: HeaterView, sheet: Sheet): Shelves {
  const { em, measure } = sheet;
  const width = Math.min(sheet.width, 30 * em);
  const compact = width < 15.5 * em;
  const post = { x: 0.2 * em, width: 1.2 * em };
  const feed = post.x + post.width + (compact ? 1.1 : 1.9) * em;
  const from = feed + (compact ? 1.4 : 2.2) * em;
  const fed = view.tubes.filter(({ place, volts }) => place === 'winding' && volts !== null && volts > 0);
  const tallest = Math.max(0, ...fed.map(({ volts }) => volts ?? 0));
  const head = 0.6 * em;
  const rows = gathered(fed);
  const voltages = [...new Set(rows.map(({ row }) => row.volts ?? 0))].sort((a, b) => a - b);
  const gap = 0.6 * em;

  // First in lines as wide as the sheet allows, then as high as they need, from the floor up.
  const lines: Line[] = [];
  for (const volts of voltages) {
    const own: typeof lines = [];
    let line: Line = { volts, bars: [], more: false };
    const start = from + (compact ? 0 : voltsWidth(volts, sheet));
    let x = start;
    for (const { row, count, key } of rows.filter((one) => one.row.volts === volts)) {
      const text = nameOf(row, count);
      const needs = measure(text, TYPE.name * em, true);
      const wide = Math.max(needs + 0.2 * em, 3.4 * em);
      if (line.bars.length > 0 && x + wide > width - 2) {
        own.push(line);
        line = { volts, bars: [], more: true };
        x = start;
      }
      line.bars.push({ key, row, text, needs, x, y: 0, width: Math.min(wide, width - 2 - x), height: 0 });
      x += wide + gap;
    }
    own.push(line);
    // Read from the top, laid from the floor.
    lines.push(...own.reverse());
  }
  const dense = lines.length > 4;
  if (dense) lines.splice(0, lines.length, ...voltages.map((volts) => slim(volts, fed, from + (compact ? 0 : voltsWidth(volts, sheet)), width, sheet.em)));
  const pitch = (compact ? 3.2 : 2.1) * em;
  const least = lines.length * (pitch + 1.2 * em);
  const rise = Math.max(12.5 * em, least);
  const scale = rise / view.line_volts;
  const floor = head + rise;
  let at = floor;
  const shelves: Shelf[] = [];
  for (const { volts, bars, more } of lines) {
    const high = volts * scale;
    shelves.push({ volts, floor: at, more, bars: bars.map((bar) => ({ ...bar, y: at - high, height: high })) });
    at -= high + pitch;
  }
  const top = (shelves.at(-1)?.floor ?? floor) - tallest * scale;
  return {
    width,
    height: floor + 3 * em,
    floor,
    post: { ...post, top: floor - view.line_volts * scale },
    feed: { x: feed, top: Math.min(top, floor - 4 * em), bottom: floor },
    named: dense ? voltages.map((volts) => ({ volts, names: namesOf(rows, volts) })).reverse() : [],
    compact,
    from,
    shelves,
    rest: view.tubes.filter((row) => !fed.includes(row)),
    times: tallest > 0 ? Math.round(view.line_volts / tallest) : 0,
    empty: { x: from, y: (floor - view.line_volts * scale + top - pitch) / 2, width: width - from },
  };
}

/** All heaters of a voltage on one shelf, without their names. */
function slim(volts: number, fed: readonly TubeRow[], start: number, width: number, em: number): Line {
  const own = fed.filter((row) => row.volts === volts);
  const pitch = Math.min(1.5 * em, (width - 2 - start) / own.length);
  const bars = own.map((row, at) => ({
    key: `${row.name} ${at}`,
    row,
    text: '',
    needs: 1,
    x: start + at * pitch,
    y: 0,
    width: pitch * 0.72,
    height: 0,
  }));
  return { volts, bars, more: false };
}

function namesOf(rows: ReturnType<typeof gathered>, volts: number): string[] {
  const own = rows.filter(({ row }) => row.volts === volts);
  return own.map(({ row, count }) => nameOf(row, count));
}

function voltsWidth(volts: number, { em, measure }: Sheet): number {
  return measure(say('heaters-volts', { volts }), TYPE.name * em, true) + 0.9 * em;
}
