/** What the circuit picture is made of. */

import type { CircuitView } from '../types/CircuitView';
import type { Feed } from '../types/Feed';
import type { Part } from '../types/Part';

/** What a symbol shows. */
export type Symbol =
  | 'switch'
  | 'selector'
  | 'heaters'
  | 'primary'
  | 'small_transformer'
  | 'tapped_winding'
  | 'secondary'
  | 'bridge'
  | 'network'
  | 'gap'
  | 'winding_capacitance'
  | 'capacitor'
  | 'class_y'
  | 'short'
  | 'stray'
  | 'break'
  | 'loads'
  | 'supply_windings'
  | 'supply_tapped'
  | 'supply_stray'
  | 'screw'
  | 'panel'
  | 'knob'
  | 'lost_knob'
  | 'terminal';

/** A symbol in its box; `part` is what it stands for, where a current can pass it. */
export interface Box {
  symbol: Symbol;
  part: Part | null;
  x: number;
  y: number;
  width: number;
  height: number;
  /** A switch that is closed; a ground switch on the far leg. */
  marked?: boolean;
}

export type Point = readonly [number, number];

/** A line from point to point; a dashed one is there in effect only. */
export interface Wire {
  points: Point[];
  part: Part | null;
  dashed?: boolean;
  /** It passes over others without touching them. */
  over?: boolean;
}

/** What is written in the picture: the name of a thing, or its value. */
export interface Label {
  text: string;
  x: number;
  y: number;
  anchor: 'start' | 'middle' | 'end';
  kind: 'name' | 'value';
}

/** What decides how the picture looks. */
export type Drawn = Pick<
  CircuitView,
  | 'isolation'
  | 'cord'
  | 'near_pin'
  | 'line_capacitor'
  | 'line_capacitor_class'
  | 'switch_leg'
  | 'reach'
  | 'state'
  | 'faults'
  | 'flips'
  | 'hot_pin'
  | 'touched'
  | 'level'
  | 'path'
  | 'labels'
> & { feed: Feed };

/** A symbol about the middle of its box. */
export function box(symbol: Symbol, part: Part | null, x: number, y: number, width: number, height: number): Box {
  return { symbol, part, x: x - width / 2, y: y - height / 2, width, height };
}

/** Points as a path. */
export function path(points: readonly Point[]): string {
  return points.map(([x, y], place) => `${place === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}
