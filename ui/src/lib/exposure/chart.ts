import { apart, type Sheet } from '../heaters/sheet';
import type { ChartDevice } from '../types/ChartDevice';
import type { ChartPoint } from '../types/ChartPoint';
import type { ChartView } from '../types/ChartView';
import type { Curve } from '../types/Curve';
import type { Guard } from '../types/Guard';
import type { Zone } from '../types/Zone';
import { type Axis, betweenDecades, decades, placeOn, writeTime } from './axes';

/** Width of a printed page between its margins, and its type, px. */
export const PRINTED = { width: 680, em: 16 } as const;

/** Sizes of type on the chart, in em. */
export const TYPE = { label: 0.8, zone: 0.72, line: 0.72 } as const;
/** Height of a tenfold current, em. */
const DECADE = 6.2;
/** Text that grows past this many to the width would leave no room for the chart. */
const FEWEST_EMS = 14;
/** Radius of a point, em. */
export const DOT = 0.34;
/** From the axis to the name of a line, em. */
const TO_NAME = 0.95;

interface Tick {
  at: number;
  /** It is a power of ten. */
  whole: boolean;
  /** Nothing between the powers of ten, nor where there is no room. */
  text: string;
}

/** A touch current on the sheet. */
export interface LaidPoint {
  figure: string;
  y: number;
  /** Where it would be without the device. */
  x: number;
  /** Where it is. */
  cutX: number;
  /** The middle of its figure, beside the chart. */
  labelY: number;
  quoted: boolean;
}

/** The chart set out on a sheet. */
export interface Laid {
  width: number;
  height: number;
  em: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
  currents: Tick[];
  times: Tick[];
  zones: { id: Zone; area: string; name: string; x: number; y: number }[];
  lines: { id: Curve; path: string; x: number; y: number }[];
  device: { path: string; name: string; y: number } | null;
  points: LaidPoint[];
}

/** Sets the chart out: time from left to right, current upwards, so that worse is up and to the right. */
export function layChart(view: ChartView, sheet: Sheet, guard: Guard | null): Laid {
  const { width } = sheet;
  const em = Math.min(sheet.em, width / FEWEST_EMS);
  const wide = (texts: readonly string[]): number =>
    Math.max(0, ...texts.map((text) => sheet.measure(text, TYPE.label * em, true)));
  const ticks = decades(view.milliamperes);
  const left = wide(ticks.map(String)) + 0.5 * em;
  const lastTime = sheet.measure(writeTime(view.seconds[1]), TYPE.label * em) / 2;
  const right = width - Math.max(wide(view.points.map(({ figure }) => figure)) + 1.3 * em, lastTime);
  const [top, tall] = [1.9 * em, Math.log10(view.milliamperes[1] / view.milliamperes[0]) * DECADE * em];
  const bottom = top + tall;
  const current: Axis = { values: view.milliamperes, places: [bottom, top] };
  const time: Axis = { values: view.seconds, places: [left, right] };
  const at = ([ma, s]: readonly [number, number]): string => `${fine(placeOn(time, s))} ${fine(placeOn(current, ma))}`;
  const device = view.devices.find(({ id }) => id === guard);

  return {
    width,
    height: bottom + 3.1 * em,
    em,
    left,
    right,
    top,
    bottom,
    currents: marks(current, String),
    times: spaced(marks(time, writeTime), (text) => sheet.measure(text, TYPE.label * em) + 0.4 * em),
    zones: view.zones.map(({ id, name, at: [ma, s] }, place) => {
      const half = sheet.measure(name, TYPE.zone * em) / 2 + 0.2 * em;
      const x = Math.min(Math.max(placeOn(time, s), left + half), right - half);
      return { id, name, x, y: placeOn(current, ma), area: area(view, place, at) };
    }),
    lines: view.lines.map(({ id, points }) => {
      const sheetPoints = points.map(([ma, s]) => [placeOn(time, s), placeOn(current, ma)] as const);
      const x = left + TO_NAME * em;
      return { id, path: `M${points.map(at).join('L')}`, x, y: heightAt(sheetPoints, x) };
    }),
    device: device ? layDevice(device, current, at) : null,
    points: layPoints(view.points, current, time, guard, em),
  };
}

/** The zone above the line before it and below its own. */
function area({ lines, milliamperes: [least, most], seconds }: ChartView, place: number, at: (point: [number, number]) => string): string {
  const edge = (ma: number): [number, number][] => seconds.map((s) => [ma, s]);
  const below = lines[place - 1]?.points ?? edge(least);
  const above = lines[place]?.points ?? edge(most);
  return `M${[...below, ...[...above].reverse()].map(at).join('L')}Z`;
}

/** How high a line on the sheet is above a place on it. */
function heightAt(points: readonly (readonly [number, number])[], x: number): number {
  const next = points.findIndex(([px]) => px >= x);
  const [[x0, y0] = [0, 0], [x1, y1] = [0, 0]] = [points[next - 1] ?? points[0], points[next]];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

function layDevice({ name, curve }: ChartDevice, current: Axis, at: (point: [number, number]) => string): Laid['device'] {
  return { name, path: `M${curve.map(at).join('L')}`, y: placeOn(current, curve[0]?.[0] ?? 0) };
}

function layPoints(points: readonly ChartPoint[], current: Axis, time: Axis, guard: Guard | null, em: number): LaidPoint[] {
  const ys = points.map(({ milliamperes }) => placeOn(current, milliamperes));
  const [bottom, top] = current.places;
  const labels = apart(ys, 1.1 * TYPE.label * em, top, bottom);
  return points.map(({ figure, seconds, cuts, quoted }, place) => {
    const cut = cuts.find(({ device }) => device === guard);
    const y = ys[place] ?? 0;
    return {
      figure,
      y,
      x: placeOn(time, seconds),
      cutX: placeOn(time, cut?.seconds ?? seconds),
      labelY: labels[place] ?? y,
      quoted,
    };
  });
}

function marks(axis: Axis, write: (value: number) => string): Tick[] {
  const whole = decades(axis.values).map((value) => ({ at: placeOn(axis, value), whole: true, text: write(value) }));
  const between = betweenDecades(axis.values).map((value) => ({ at: placeOn(axis, value), whole: false, text: '' }));
  return [...whole, ...between];
}

/** Takes the names of ticks away that would run into the one before. */
function spaced(ticks: readonly Tick[], wide: (text: string) => number): Tick[] {
  let end = -Infinity;
  return ticks.map((tick) => {
    const half = wide(tick.text) / 2;
    if (tick.text === '' || tick.at - half < end) return { ...tick, text: '' };
    end = tick.at + half;
    return tick;
  });
}

/** A hundredth of a pixel is enough. */
function fine(px: number): number {
  return Math.round(px * 100) / 100;
}
