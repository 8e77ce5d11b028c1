import type { HeaterView } from '../types/HeaterView';
import type { TubeRow } from '../types/TubeRow';
import { apart, type Sheet, TYPE } from './sheet';
import { type Block, drawable } from './stack';
import { heaterWire, resistor } from './wire';

/** Filaments behind a rectifier and a resistor, beside the rectifier's own heater on the line. */
export interface Rectified {
  width: number;
  height: number;
  floor: number;
  post: { x: number; width: number; top: number };
  /** Heaters on the line by themselves. */
  own: Block[];
  /** The filaments, to the same scale. */
  blocks: Block[];
  /** Where their column begins and ends, and its top. */
  stack: { x: number; width: number; top: number };
  /** What they come to, V. */
  sum: number;
  /** There is room for their names only. */
  bare: boolean;
  /** The current's ways. */
  path: string;
  /** The rectifier in it, to be filled. */
  diode: string;
  arrows: string;
  /** Where the two parts are named, and the room for that. */
  names: { x: number; rectifier: number; resistor: number; room: number };
  /** Those that the drawing has no place for. */
  below: TubeRow[];
}

/** The most of the line that filaments take: more than this could be heaters. */
const SMALL = 1 / 5;
/** Height of the line at least, and of a name, in em. */
const LEAST = 17;
const LINE = 1.28;
/** Room for a heater on the line by itself, in em. */
const OWN = 2.7;

/** Whether a list is one of filaments that a rectifier feeds, with the rectifier's heater on the line. */
export function isRectified(view: HeaterView): boolean {
  return (
    view.reading === 'series_with_dropper' &&
    view.left_volts === null &&
    view.sum_volts < view.line_volts * SMALL &&
    view.tubes.some((row) => drawable(row, 'own_branch'))
  );
}

/** What all parts of the drawing are laid by. */
interface Frame {
  em: number;
  width: number;
  compact: boolean;
  post: { x: number; width: number; top: number };
  stack: { x: number; width: number; top: number };
  /** Where the first heater on the line by itself begins, and how far the next is from it. */
  begin: number;
  pitch: number;
  head: number;
  floor: number;
  /** Height of so many volts, px. */
  scale: number;
  /** Heights of the wires above and below it all. */
  up: number;
  down: number;
}

/** Lays them out on a sheet. */
export function layRectified(view: HeaterView, sheet: Sheet): Rectified {
  const owns = view.tubes.filter((row) => drawable(row, 'own_branch'));
  const filaments = view.tubes.filter((row) => drawable(row, 'string', 'branch'));
  const sum = Number(filaments.reduce((all, row) => all + (row.volts ?? 0), 0).toFixed(2));
  const frame = frameOf(view, sheet, owns, filaments, sum);
  const { width, compact, post, stack, floor } = frame;
  const own = layOwn(frame, owns);
  const blocks = layFilaments(frame, filaments);
  return {
    width,
    height: floor + 3.6 * frame.em,
    floor,
    post,
    own,
    blocks,
    stack,
    sum,
    bare: compact,
    ...layWires(frame, own, blocks),
    below: view.tubes.filter((row) => !owns.includes(row) && !filaments.includes(row)),
  };
}

function frameOf(view: HeaterView, sheet: Sheet, owns: TubeRow[], filaments: TubeRow[], sum: number): Frame {
  const { em } = sheet;
  const width = Math.min(sheet.width, 24 * em);
  const compact = width < 15.5 * em;
  const highest = Math.max(view.line_volts, ...owns.map((row) => row.volts ?? 0));
  const head = 1.5 * em;
  // The names of the filaments stand below those of the rectifier and the resistor.
  const rise = Math.max(LEAST * em, (filaments.length * LINE + 9.5) * em);
  const floor = head + rise;
  const scale = rise / highest;
  const post = { x: 0.2 * em, width: (compact ? 0.9 : 1.2) * em, top: floor - view.line_volts * scale };
  const begin = post.x + post.width + (compact ? 0.7 : 1.8) * em;
  const pitch = (compact ? 2 : OWN) * em;
  const x = begin + owns.length * pitch + (compact ? 0 : 1.4 * em);
  const stack = { x, width: (compact ? 0.9 : 3) * em, top: floor - sum * scale };
  const up = post.top - 0.75 * em;
  return { em, width, compact, post, stack, begin, pitch, head, floor, scale, up, down: floor + 0.75 * em };
}

function layOwn({ em, begin, pitch, floor, scale }: Frame, owns: readonly TubeRow[]): Block[] {
  return owns.map((row, index) => {
    const x = begin + index * pitch;
    const height = (row.volts ?? 0) * scale;
    const label = { x: x + 1.15 * em, y: floor - 0.6 * em, end: 0 };
    return { key: `${row.name} ${index}`, row, x, y: floor - height, width: 1.7 * em, height, label, leader: '' };
  });
}

/** The filaments from the top, each with a line to its name beside them. */
function layFilaments(frame: Frame, filaments: readonly TubeRow[]): Block[] {
  const { em, width, compact, stack, head, floor, scale } = frame;
  const right = stack.x + stack.width;
  const lead = (compact ? 0.3 : 1) * em;
  const x = right + 1.6 * lead + 0.2 * em;
  const end = Math.min(width, x + 5.5 * em);
  let from = stack.top;
  const blocks = filaments.map((row, index): Block => {
    const height = (row.volts ?? 0) * scale;
    const y = from;
    from += height;
    const label = { x, y: 0, end };
    return { key: `${row.name} ${index}`, row, x: stack.x, y, width: stack.width, height, label, leader: '' };
  });
  const middles = blocks.map(({ y, height }) => y + height / 2);
  const places = apart(middles, LINE * em, head, floor - (LINE * em) / 2);
  for (const [index, block] of blocks.entries()) {
    const y = places[index] ?? 0;
    block.label.y = y;
    block.leader = `M${right} ${middles[index] ?? 0}h${0.4 * lead}L${right + 1.3 * lead} ${y}h${0.3 * lead}`;
  }
  return blocks;
}

/** From the line through each heater that is on it; and through the rectifier and the resistor down the filaments. */
function layWires(
  { em, width, post, stack, floor, up, down }: Frame,
  own: readonly Block[],
  blocks: readonly Block[],
): Pick<Rectified, 'path' | 'diode' | 'arrows' | 'names'> {
  const ways = own.map(({ x, y, height }) => {
    // One that does not stand the whole line has something in series as well.
    const before = y - up > 3 * em ? resistor(y - up, em) : `V${y}`;
    return `M${x + 0.45 * em} ${up}${before}${heaterWire(height, em)}V${down}`;
  });
  const x = stack.x + Math.min(0.8 * em, stack.width / 2);
  const middle = post.x + post.width / 2;
  const rectifier = { top: up + 2.2 * em, tip: up + 3.2 * em };
  const dropper = { top: up + 4.1 * em, bottom: up + 7.1 * em };
  const through = blocks.map(({ height }) => heaterWire(height, em)).join('');
  const main =
    `M${middle} ${post.top}V${up}H${x}V${rectifier.top}M${x} ${rectifier.tip}V${dropper.top}` +
    `${resistor(dropper.bottom - dropper.top, em)}V${stack.top}${through}V${down}H${middle}V${floor}`;
  const side = 0.55 * em;
  const left = x - side;
  const diode = `M${left} ${rectifier.top}h${2 * side}L${x} ${rectifier.tip}zM${left} ${rectifier.tip}h${2 * side}`;
  const named = x + 1.1 * em;
  return {
    path: [main, ...ways].join(''),
    diode,
    arrows: arrowDown(x, (dropper.bottom + stack.top) / 2, 0.34 * em),
    names: {
      x: named,
      rectifier: (rectifier.top + rectifier.tip) / 2,
      resistor: (dropper.top + dropper.bottom) / 2,
      room: width - named,
    },
  };
}

/** How much smaller a name has to be for so much room. */
export function shrunk(text: string, room: number, { em, measure }: Sheet): number {
  return Math.min(1, room / measure(text, TYPE.name * em));
}

/** The head of an arrow that points down. */
function arrowDown(x: number, y: number, size: number): string {
  return `M${x - size} ${y - size}L${x} ${y}L${x + size} ${y - size}`;
}
