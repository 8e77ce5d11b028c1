import { say } from '../words';
import { figure } from './say';
import { type Sheet, TYPE, wrap } from './sheet';
import type { Frame } from './stack';

/** What is left of the line, empty, on top of the heaters. */
export interface Left {
  top: number;
  bottom: number;
  /** Without lines it is told below. */
  label: { lines: string[]; x: number; y: number; shrink: number };
  /** From it to its name, where that stands beside it. */
  leader: string;
}

/** A line of its name, in em. */
const LINE = 1.15;
/** The least height that a line of its name can stand in, in em. */
const HOLDS = 1.45;

/** Whether so many volts of a drawing's height are too low to hold their name. */
export function isThin(volts: number, highest: number, rise: number, em: number): boolean {
  return volts > 0 && (volts / highest) * rise < HOLDS * em;
}

/** Lays out what is left over, with room for its name up to an edge. */
export function layLeft(frame: Frame, edge: number): Left | null {
  const { view, sheet, em, width, compact, beside, stack, sum, floor, scale } = frame;
  const volts = view.left_volts ?? 0;
  if (volts <= 0) return null;
  const top = floor - (sum + volts) * scale;
  const bottom = floor - sum * scale;
  const middle = (top + bottom) / 2;
  const right = stack.x + stack.width;
  const given = { volts: figure(volts) };
  const short = say('heaters-left-short', given);
  const isLow = bottom - top < HOLDS * em;

  if (isLow && !beside && compact) return { top, bottom, leader: '', label: { lines: [], x: 0, y: 0, shrink: 1 } };
  if (isLow && !beside) {
    const x = right + 1.1 * em;
    const leader = `M${right} ${middle}H${x - 0.3 * em}`;
    return { top, bottom, leader, label: { lines: [short], x, y: middle, shrink: fit([short], width - x - 2, sheet) } };
  }
  const x = beside ? right + 0.5 * em : stack.x + 1.75 * em;
  const room = edge - x - 0.4 * em;
  const whole = wrap(say('heaters-left', given), room, TYPE.name * em, (text, size) => sheet.measure(text, size, true));
  const holds = fit(whole, room, sheet) === 1 && (beside || whole.length * LINE * em + 0.4 * em <= bottom - top);
  const lines = holds ? whole : [short];
  return { top, bottom, leader: '', label: { lines, x, y: middle, shrink: fit(lines, room, sheet) } };
}

/** How much smaller these lines have to be for so much room. */
function fit(lines: readonly string[], room: number, { em, measure }: Sheet): number {
  const widest = Math.max(...lines.map((line) => measure(line, TYPE.name * em, true)));
  return Math.min(1, room / widest);
}
