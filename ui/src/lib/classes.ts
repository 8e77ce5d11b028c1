import type { Class } from './types/Class';
import type { Signal } from './types/Signal';

/** The classes, worst first. */
export const CLASSES: readonly Class[] = ['live', 'leaky', 'one_fault', 'two_faults', 'no_line'];

/** Which sign a class is shown with in a list; the tag brings its own. As the core's `Class::signal`. */
const SIGNALS: Record<Class, Signal> = {
  live: 'danger',
  leaky: 'warning',
  one_fault: 'warning',
  two_faults: 'notice',
  no_line: 'notice',
};

/** The sign of a class, by its id; null where the id is not known. */
export function signalOf(id: string | null): Signal | null {
  return CLASSES.find((one) => one === id) ? SIGNALS[id as Class] : null;
}
