/** A screen that is looked at, and how to reach it. */

import type { Locator, Page } from '@playwright/test';

import type { Bridge } from './bridge';
import { inspect, type Unit } from './units';
import type { Walk } from './walk';

export interface Screen {
  /** Also the name of its picture. */
  name: string;
  /** Puts the record into the state; gives the address. */
  reach: (bridge: Bridge) => Promise<string>;
  /** What the finger does there first. */
  act?: (walk: Walk, page: Page) => Promise<void>;
  /** What is never the same twice, such as a time of day: not compared in pictures. */
  varies?: (page: Page) => Locator;
  /** The introduction is still to come. */
  unwelcomed?: true;
  /** Longer than a phone: pictured whole as well. */
  long?: true;
  /** Where it is not a phone's: a screen with two panes. */
  width?: number;
  /** The record is a file. */
  inFile?: true;
  /** Where it is not as high as a phone held upright. */
  height?: number;
}

/** A screen by its address. */
export const at = (hash: string) => () => Promise.resolve(hash);

/** A screen of the inspection of a unit. */
export const of = (unit: Unit, place: string) => async (bridge: Bridge) =>
  `#/i/${await inspect(bridge, unit)}/${place}`;
