/** What turning something makes of a position. */

import type { CircuitPlace } from '../backend/backend';
import type { CircuitView } from '../types/CircuitView';
import type { Fault } from '../types/Fault';

export type Turned = 'plug' | 'switch' | 'selector';

/** The position that is shown. */
export function placeOf({ state, faults }: Pick<CircuitView, 'state' | 'faults'>): CircuitPlace {
  return { ...state, faults };
}

/** The same with the plug turned round, the switch over, or the ground switch on the other leg. */
export function turned(place: CircuitPlace, what: Turned): CircuitPlace {
  switch (what) {
    case 'plug':
      return { ...place, plug: place.plug === 'first' ? 'second' : 'first' };
    case 'switch':
      return { ...place, switch: place.switch === 'on' ? 'off' : 'on' };
    case 'selector':
      return place.selector === null ? place : { ...place, selector: place.selector === 'near' ? 'far' : 'near' };
  }
}

/** The same with this fault alone, or without it where it is in. */
export function broken(place: CircuitPlace, fault: Fault): CircuitPlace {
  return { ...place, faults: place.faults.includes(fault) ? [] : [fault] };
}

/** The step of the walk that is shown, from 0; -1 where the position is another. */
export function stepAt({ walk, state, faults }: Pick<CircuitView, 'walk' | 'state' | 'faults'>): number {
  const { plug, selector } = state;
  return walk.findIndex(
    (step) =>
      step.state.plug === plug &&
      step.state.switch === state.switch &&
      step.state.selector === selector &&
      step.faults.join() === faults.join(),
  );
}
