import type { HeaterView } from '../types/HeaterView';
import type { TubeRow } from '../types/TubeRow';
import { type Share, shared } from './branches';
import { layLeft, type Left, isThin } from './left';
import { type Gathered, gathered, nameOf } from './list';
import { apart, type Sheet } from './sheet';
import { heaterWire, resistor, wire } from './wire';

/** A heater as a block: its height is its volts. */
export interface Block {
  key: string;
  row: TubeRow;
  x: number;
  y: number;
  width: number;
  height: number;
  /** Where its name stands, and where the room for it ends. */
  label: { x: number; y: number; end: number };
  /** From the block to its name, where that stands beside it. */
  leader: string;
}

/** A heater that is not in the stack. */
export interface Aside extends Block {
  /** Its name, and how many where there are several. */
  text: string;
  kind: 'clash' | 'unknown' | 'aside';
}

/** Heater volts stacked up beside the line. */
export interface Stack {
  width: number;
  height: number;
  /** The post that stands for the line. */
  post: { x: number; width: number; top: number };
  floor: number;
  /** What the stack comes to, V: less than the list where some cannot stand in it. */
  sum: number;
  stack: { x: number; width: number; top: number };
  /** Where a string on the line ends. */
  band: { top: number; bottom: number; right: number };
  /** Width of the column that says so; 0 where there is no room for one. */
  column: number;
  blocks: Block[];
  /** What is left for a dropper. */
  left: Left | null;
  /** By how much the stack is higher than the line, where it is more than the line allows, V; else 0. */
  over: number;
  /** Heaters on the line by themselves. */
  own: Block[];
  asides: Aside[];
  /** The names stand beside the blocks. */
  beside: boolean;
  /** Where the volts of the stack are written, and by which end. */
  told: { x: number; anchor: 'start' | 'end' };
  /** There is room for the names only. */
  bare: boolean;
  /** Too many for names: these stand below the stack. */
  named: Gathered[];
  /** Those that there is no place for beside the stack: they are told below. */
  below: TubeRow[];
  /** The current's way: in at the top, through every heater, out at the bottom. */
  path: string;
  arrows: string;
}

/** How high the highest bar is at least; and how high, at most, a drawing gets so that names fit in it. In em. */
const LEAST = 16;
const MOST = 25;
/** A line of names, in em. */
const LINE = 1.28;
/** Room for a heater on the line by itself, and for those that are in no stack, in em. */
const OWN = 2.4;
const ASIDES = 5.5;
/** Below this width, in em, a name beside a thin rest takes the column of the band. */
const THIN = 23;
/** The most of them beside the stack. */
const MOST_ASIDES = 5;
/** The most names beside a stack. */
const MOST_NAMES = 20;

/** What all parts of a drawing are laid by. */
export interface Frame {
  view: HeaterView;
  sheet: Sheet;
  em: number;
  width: number;
  compact: boolean;
  beside: boolean;
  sum: number;
  inString: TubeRow[];
  shares: Share[];
  owns: TubeRow[];
  others: Gathered[];
  /** The others are told below. */
  below: boolean;
  column: number;
  post: { x: number; width: number };
  stack: { x: number; width: number };
  /** Top and floor of what is to scale. */
  head: number;
  floor: number;
  /** Height of so many volts, px. */
  scale: number;
}

/** Lays a stack out on a sheet. */
export function layStack(view: HeaterView, sheet: Sheet): Stack {
  const frame = frameOf(view, sheet);
  const { em, width, compact, beside, floor, sum } = frame;
  const at = (volts: number): number => floor - volts * frame.scale;
  const right = frame.stack.x + frame.stack.width;
  const post = { ...frame.post, top: at(view.line_volts) };
  const stack = { ...frame.stack, top: at(sum) };
  /** Where heaters on the line by themselves begin. */
  const edge = beside ? width - frame.owns.length * OWN * em : right;
  const left = layLeft(frame, beside ? edge : right);
  const blocks = layBlocks(frame);
  const dense = beside && blocks.length > MOST_NAMES;
  if (beside && !dense) putBeside(frame, blocks, edge, left ? left.label.y + 1.6 * em : frame.head);
  const parts = blocks.filter(({ x }) => x === stack.x).map(({ height }) => heaterWire(height, em));
  const ends = {
    post: { x: post.x + post.width / 2, top: post.top },
    stack: { x: stack.x + 0.8 * em, top: left?.top ?? stack.top },
    floor,
    em,
  };
  return {
    width,
    height: floor + 3.6 * em,
    post,
    floor,
    sum,
    stack,
    band: { top: at(view.high_volts), bottom: at(view.low_volts), right: right + (frame.owns.length > 0 ? 0 : 0.35 * em) },
    column: frame.column,
    blocks,
    left,
    over: sum > view.high_volts ? sum - view.line_volts : 0,
    own: layOwn(frame, edge),
    asides: frame.below ? [] : layAsides(frame, right),
    beside,
    told: frame.column === 0 ? { x: compact ? width : right, anchor: 'end' } : { x: stack.x, anchor: 'start' },
    bare: beside && compact,
    named: dense ? gathered(frame.inString) : [],
    below: view.tubes.filter((row) => row.place === 'no_heater' || (frame.below && isOther(row))),
    ...wire(ends, [left ? resistor(left.bottom - left.top, em) : '', ...parts]),
  };
}

function frameOf(view: HeaterView, sheet: Sheet): Frame {
  const { em } = sheet;
  const width = Math.min(sheet.width, 30 * em);
  const inString = view.tubes.filter((row) => drawable(row, 'string', 'branch'));
  const owns = view.tubes.filter((row) => drawable(row, 'own_branch'));
  const others = gathered(view.tubes.filter(isOther));
  const { shares, sum } = shared(inString);
  const left = view.left_volts ?? 0;
  const highest = Math.max(view.high_volts, sum, ...owns.map((row) => row.volts ?? 0));

  const lowest = Math.min(...inString.map((row) => row.volts ?? 0));
  const fits = inString.length > 0 ? (LINE * em * highest) / lowest : 0;
  const beside = fits > MOST * em;
  const compact = width < 15.5 * em;
  // The names beside a stack need their height below what is said of the dropper.
  const listed = inString.length > MOST_NAMES ? 0 : inString.length;
  const names = (listed * LINE * em * highest) / (left > 0 ? sum + left / 2 : highest) + 2 * em;
  const least = Math.max(LEAST * em, beside ? names : fits);
  // What is left of the line may be too little to hold its own name: then that stands beside the stack.
  const thin = !beside && isThin(left, highest, least, em);

  const column = compact || (thin && width < THIN * em) ? 0 : (others.length > 0 ? 4.3 : 5.4) * em;
  const post = { x: column + 0.2 * em, width: 1.2 * em };
  const x = post.x + post.width + (compact ? 1.2 : 1.7) * em;
  const room = width - x - 2 - owns.length * OWN * em;
  const below = beside || others.length > MOST_ASIDES || room - ASIDES * em < 7.4 * em;
  const asides = below ? 0 : others.length;
  const free = room - Math.max(asides > 0 ? ASIDES * em : 0, thin && !compact ? Math.min(5.2 * em, room * 0.45) : 0);
  const wide = beside ? Math.min(4.4 * em, free * (compact ? 0.3 : 0.36)) : Math.min(free, 13 * em);

  // Beside what is too thin for its name there is room for nothing else.
  const rise = Math.max(least, asides > 0 ? (asides + (thin ? 1 : 0)) * 2.9 * em : 0);
  const head = (sum > view.high_volts ? 2.9 : 1.5) * em;
  const stack = { x, width: wide };
  const floor = head + rise;
  const scale = rise / highest;
  return { view, sheet, em, width, compact, beside, sum, inString, shares, owns, others, below, column, post, stack, head, floor, scale };
}

function isOther({ place }: TubeRow): boolean {
  return ['clash', 'unknown', 'aside'].includes(place);
}

export function drawable(row: TubeRow, ...places: string[]): boolean {
  return places.includes(row.place) && row.volts !== null && row.volts > 0;
}

/** The heaters of the string, from the top. */
function layBlocks({ em, floor, scale, stack, sum, inString, shares }: Frame): Block[] {
  let from = sum;
  return inString.map((row, index) => {
    const { part, parts, above, falls } = shares[index] ?? { part: 0, parts: 1, above: 0, falls: 0 };
    const height = (row.volts ?? 0) * scale;
    const width = stack.width / parts;
    const x = stack.x + part * width;
    const y = floor - (from - above) * scale;
    const label = { x: x + (part > 0 ? 0.4 : 1.75) * em, y: y + height / 2, end: x + width - (parts > 1 ? 0.2 : 0.4) * em };
    from -= falls;
    const before = inString.slice(0, index).filter(({ name }) => name === row.name).length;
    return { key: `${row.name} ${before}`, row, x, y, width, height, label, leader: '' };
  });
}

/** Puts the names of blocks that are too low for them beside, each with a line to its block. */
function putBeside({ em, compact, stack, floor }: Frame, blocks: Block[], edge: number, top: number): void {
  const right = stack.x + stack.width;
  const lead = compact ? 0.4 * em : em;
  const wanted = blocks.map(({ y, height }) => y + height / 2);
  const places = apart(wanted, LINE * em, top, floor - (LINE * em) / 2);
  for (const [index, block] of blocks.entries()) {
    const y = places[index] ?? 0;
    block.leader = `M${right} ${wanted[index] ?? 0}h${0.4 * lead}L${right + 1.3 * lead} ${y}h${0.3 * lead}`;
    block.label = { x: right + 1.6 * lead + 0.2 * em, y, end: Math.min(edge - 2, right + 9.5 * em) };
  }
}

function layOwn({ em, owns, floor, scale }: Frame, edge: number): Block[] {
  return owns.map((row, index) => {
    const x = edge + (0.6 + index * OWN) * em;
    const height = (row.volts ?? 0) * scale;
    const label = { x: x + 0.8 * em, y: floor - 0.5 * em, end: 0 };
    return { key: `${row.name} ${index}`, row, x, y: floor - height, width: 1.6 * em, height, label, leader: '' };
  });
}

/** Those that are in no stack, from the floor up, to scale where their volts are known. */
function layAsides({ em, width, owns, others, floor, scale }: Frame, right: number): Aside[] {
  const x = Math.min(width - ASIDES * em, right + owns.length * OWN * em) + 0.5 * em;
  let foot = floor;
  return [...others].reverse().map(({ row, count, key }) => {
    const height = row.place === 'unknown' || row.volts === null ? 2 * em : row.volts * scale;
    const pitch = Math.max(height, 2.3 * em);
    const middle = foot - pitch / 2;
    foot -= pitch + 0.6 * em;
    const kind = row.place === 'clash' || row.place === 'unknown' ? row.place : 'aside';
    const label = { x: x + 1.9 * em, y: middle, end: width };
    return { key, row, text: nameOf(row, count), kind, x, y: middle - height / 2, width: 1.5 * em, height, label, leader: '' };
  });
}
