import type { Class } from './types/Class';

/** The classes, worst first. */
export const CLASSES: readonly Class[] = ['live', 'leaky', 'one_fault', 'two_faults', 'no_line'];
