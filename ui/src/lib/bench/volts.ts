/** The most volts that the core takes as a reading of the touch test, and the end of its scale. */
export const MOST_VOLTS = 1000;

/** Where the scale begins, V: next to nothing. */
export const LEAST_VOLTS = 0.001;
