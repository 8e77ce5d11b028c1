/** The person types a tube: on a low display the rest of the screen makes room for it. */
class Typing {
  tube = $state(false);
}

export const typing = new Typing();

/** As high as this a display has room for a field with its keyboard and for the bar at the bottom, in em. */
const ROOM = 34;

/** Whether a display of this height, px, is too low for both, at the size of text that the person reads in. */
export function isLow(height: number): boolean {
  return height < ROOM * parseFloat(getComputedStyle(document.documentElement).fontSize);
}
