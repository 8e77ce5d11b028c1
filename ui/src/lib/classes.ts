import type { Class } from './types/Class';
import type { Signal } from './types/Signal';

/** The classes, worst first. */
export const CLASSES: readonly Class[] = ['live', 'leaky', 'one_fault', 'two_faults', 'no_line'];

/** The sign that goes with a class, as on its tag. */
export const SIGNALS: Record<Class, Signal> = {
  live: 'danger',
  leaky: 'warning',
  one_fault: 'warning',
  two_faults: 'notice',
  no_line: 'notice',
};
