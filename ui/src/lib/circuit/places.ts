/** Where everything of the circuit picture stands, in units of its viewBox. Fixed places, so that what is flipped
    or broken changes where it is and nothing else moves. */

export const WIDE = 340;
export const HIGH = 458;

/** The rails of the two legs, and the columns of what hangs on them. */
export const FAR = 110;
export const NEAR = 204;
export const MIDDLE = 157;
export const FAR_CAPACITOR = 70;
export const NEAR_CAPACITOR = 252;
export const STRAY_FAR = 38;
export const STRAY_NEAR = 284;
export const EARTH = 322;

/** Heights, from the outlet down. */
export const CONTACT = 38;
export const PLUG_TOP = 76;
export const PLUG_BOTTOM = 118;
export const AHEAD = 140;
export const SWITCH_TOP = 148;
export const SWITCH_BOTTOM = 176;
export const LOAD = 210;
export const TAP = 252;
export const CHASSIS = 318;
export const TERMINAL = 372;
export const TIP = 380;
export const GROUND = 426;

/** The chassis, from end to end. */
export const CHASSIS_LEFT = 34;
export const CHASSIS_RIGHT = 292;

/** The cabinet. */
export const CABINET = { x: 22, y: 130, width: 280, height: 226 } as const;

/** Where a finger is: on the chassis's bare metal, or on a terminal. */
export const HAND_ON_CHASSIS = 244;
export const HAND_ON_TERMINAL = MIDDLE;
