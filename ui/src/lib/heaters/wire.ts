/** What the current's way is drawn between, px. */
export interface Ends {
  /** Middle and top of the post that stands for the line. */
  post: { x: number; top: number };
  /** Where it goes down the stack, and where it enters it. */
  stack: { x: number; top: number };
  floor: number;
  em: number;
}

/** The current's way from the line through what stands in the stack and back, with arrows on it. */
export function wire({ post, stack, floor, em }: Ends, parts: readonly string[]): { path: string; arrows: string } {
  const up = Math.min(post.top, stack.top) - 0.75 * em;
  const down = floor + 0.75 * em;
  const path = `M${post.x} ${post.top}V${up}H${stack.x}V${stack.top}${parts.join('')}V${down}H${post.x}V${floor}`;
  const head = 0.34 * em;
  const half = (post.x + stack.x) / 2;
  return { path, arrows: arrow(half + head, up, head) + arrow(half - head, down, -head) };
}

/** The head of an arrow whose tip is there; to the left where its length is negative. */
function arrow(x: number, y: number, length: number): string {
  const high = Math.abs(length);
  return `M${x - length} ${y - high}L${x} ${y}L${x - length} ${y + high}`;
}

/** A heater's wire down a block of this height. */
export function heaterWire(height: number, em: number): string {
  const bow = Math.min(0.42 * em, height * 0.3);
  const lead = height / 2 - bow;
  return `v${lead}c${bow * 1.5} 0 ${bow * 1.5} ${bow * 2} 0 ${bow * 2}v${lead}`;
}

/** A resistor down a height. */
export function resistor(height: number, em: number): string {
  const turn = Math.min(0.3 * em, height / 9);
  const wide = 0.4 * em;
  const lead = (height - turn * 6) / 2;
  const back = `l${-2 * wide} ${turn}`;
  const forth = `l${2 * wide} ${turn}`;
  return `v${lead}l${wide} ${turn / 2}${back}${forth}${back}${forth}${back}l${wide} ${turn / 2}v${lead}`;
}
