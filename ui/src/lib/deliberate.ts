/** How long after it appears a button takes no tap, ms: the second tap of a double tap, begun on the screen
 * before, comes within this (systems wait 300 to 500 ms for one; common practice, from memory). */
const UNASKED = 400;

/** A guard for a button that appears under a finger: given a tap, whether it can be meant for it. */
export function guard(): (event: MouseEvent) => boolean {
  const shown = performance.now();
  // By when the finger came, not by when a busy page heard of it. A key or a screen reader clicks without
  // a pointer, and never by a tap left over.
  return (event) => event.detail === 0 || event.timeStamp - shown > UNASKED;
}
