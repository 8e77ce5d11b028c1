/** Where everything of the circuit picture stands, in units of its viewBox. Fixed places, so that what is flipped
    or broken changes where it is and nothing else moves. */

export const WIDE = 344;
export const HIGH = 500;

/** The rails of the two legs, and the columns of what hangs on them. */
export const FAR = 106;
export const NEAR = 194;
export const MIDDLE = 150;
export const FAR_CAPACITOR = 66;
export const NEAR_CAPACITOR = 242;
export const STRAY_FAR = 36;
export const STRAY_NEAR = 300;
export const EARTH = 330;
/** The outlet's earth contact; its hot and neutral contacts are over the rails. */
export const EARTH_CONTACT = 256;

/** The source of the supply, and the way back to it through the ground. */
export const SOURCE = { x: 36, y: 40, r: 12 } as const;
export const GROUND_LEFT = 10;

/** One winding with a tap in front of the outlet. */
export const WINDING = 72;
/** Two windings that do not touch: a smaller source, its rails, the stray capacitance of either output to earth. */
export const PRIMARY = 60;
export const SECONDARY = 82;
export const ISOLATED = {
  source: { x: 34, y: 27, r: 11 },
  hot: 35,
  neutral: 19,
  leftStray: 50,
  leftPlates: 84,
  rightStray: 38,
  rightPlates: 225,
} as const;
/** What stands in front, in words between the rails. */
export const WINDING_WORDS = 42;

/** Heights, from the supply down. */
export const EARTH_RAIL = 8;
export const NEUTRAL_RAIL = 22;
export const HOT_RAIL = SOURCE.y;
/** Other loads between hot and a broken neutral, and the break itself. */
export const PULL = 53;
export const LOADS = 146;
export const BREAK = 37;
export const WORDS = 58;
export const PLATE = { x: 80, y: 64, width: 192, height: 40 } as const;
/** Between these the wires behind an outlet cross that is wired backwards. */
export const SWAP_TOP = 66;
export const SWAP_BOTTOM = 82;
export const CONTACT = 94;
export const PLUG_TOP = 116;
export const PLUG_BOTTOM = 150;
export const AHEAD = 167;
export const SWITCH_TOP = 172;
export const SWITCH_BOTTOM = 202;
/** The wire from the far leg to the ground switch: clear of what lies between the legs. */
export const TO_SELECTOR = 213;
export const LOAD = 232;
export const TAP = 274;
export const CHASSIS = 338;
/** Between the legs and the chassis. */
export const SLOT = (TAP + CHASSIS) / 2;
export const TERMINAL = 390;
/** What stands on its own two feet. */
export const GROUND = 484;

/** The chassis, from end to end. */
export const CHASSIS_LEFT = 30;
export const CHASSIS_RIGHT = 308;

/** The cabinet. */
export const CABINET = { x: 22, y: 158, width: 294, height: 216 } as const;
export const CABINET_BOTTOM = CABINET.y + CABINET.height;

/** The ground switch: its two contacts, and its pole over the capacitor. */
export const SELECTOR = { near: 228, far: 256, top: 241, pole: 262 } as const;

/** Where a finger is: on the chassis's bare metal, or on a terminal. */
export const HAND_ON_CHASSIS = 92;
export const HAND_ON_TERMINAL = MIDDLE;
/** How far left of its hand somebody stands. */
export const ARM = 44;

/** What is written beside the hand. */
export const FIGURES = 192;
