/** Invented units for the checks: what the inspector of each found. */

import { readFileSync } from 'node:fs';

import type { FeedChoice } from '../../ui/src/lib/backend/backend';
import type { Bridge } from './bridge';
import { HERE } from './places';

/** North America; the other presets are checked in the core. */
const SUPPLY = { volts: 120, hertz: 60, volts_max: 127, feed: 'direct' };

export interface Unit {
  name: string;
  place?: string;
  kind?: string;
  access?: readonly string[];
  /** Where it will be plugged in; else straight at an outlet. */
  fed?: FeedChoice;
  answers?: Readonly<Record<string, string | number | readonly string[]>>;
  values?: Readonly<Record<string, { farads?: number; ohms?: number; measured: boolean }>>;
  tubes?: readonly string[];
  readings?: Readonly<Record<string, number | 'OL'>>;
  rated?: Readonly<Record<string, number>>;
  /** What is kept of a live touch test. */
  live?: Readonly<Record<string, string | number | true>>;
  photos?: readonly { of: string | null; file: string }[];
}

/** Drawn pictures that stand for photos: nobody's, and the same each time. */
export const BACK = `${HERE}/photos/back.jpg`;
export const PLUG = `${HERE}/photos/plug.jpg`;
/** A file that only says that it is one. */
export const NO_PICTURE = { name: 'note.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') };

const ON_BENCH = ['outside', 'cover_off'];
const SCREWS = { bare_metal: ['screws_or_shafts'], back: 'fitted', terminals: ['none'] };

/** Looked at from outside: bare screws, so live is not ruled out. */
export const SHELF_RADIO: Unit = {
  name: 'Shelf radio, brown case',
  place: 'Stall 14',
  kind: 'table_radio',
  answers: { plug: 'two_equal_blades', ...SCREWS },
};

/** The common on the chassis, two equal pins: live, shown. */
export const HOT_CHASSIS: Unit = {
  name: 'Shelf radio, opened',
  kind: 'table_radio',
  access: ON_BENCH,
  answers: { plug: 'two_equal_blades', ...SCREWS, transformer: 'none', common_to_chassis: 'direct' },
};

/** Separate windings and a measured line capacitor: leaks, shown. */
export const LEAKY_AMPLIFIER: Unit = {
  name: 'Combo amplifier, two channels',
  place: 'Backstage, left',
  kind: 'instrument_amplifier',
  access: ON_BENCH,
  answers: {
    plug: 'two_equal_blades',
    ...SCREWS,
    transformer: 'separate_traced',
    switch_leg: 'pin_a',
    line_capacitor: 'pin_b_leg',
    line_capacitor_class: 'ordinary',
  },
  values: { line_capacitor: { farads: 4.7e-8, measured: true } },
};

/** The same on a bench with a meter, its cord looked at. */
export const CORD_SEEN: Unit = {
  ...LEAKY_AMPLIFIER,
  access: [...ON_BENCH, 'meter'],
  answers: { ...LEAKY_AMPLIFIER.answers, cord: 'sound', filter_capacitors: 'sound' },
};

/** Everything that could forbid to plug it in for a test was looked at. */
export const TESTABLE: Unit = { ...CORD_SEEN, rated: { volts: 120, hertz: 60 } };

/** Nothing to touch, seen from outside: one fault, not ruled out. */
export const CLOSED_RADIO: Unit = {
  name: 'Kitchen radio, cream',
  answers: { plug: 'two_equal_blades', bare_metal: ['none_anywhere'], back: 'fitted', terminals: ['none'] },
};

/** Earthed, and separate windings: two faults, shown. */
export const EARTHED_AMPLIFIER: Unit = {
  name: 'House amplifier',
  place: 'Shelf 3',
  access: ON_BENCH,
  answers: {
    plug: 'three_pins',
    earth_wire: 'on_chassis',
    ...SCREWS,
    transformer: 'separate_traced',
    line_capacitor: 'none',
  },
};

/** Batteries only: no line, shown. */
export const PICNIC_PORTABLE: Unit = {
  name: 'Picnic portable',
  kind: 'portable_radio',
  answers: { plug: 'battery_only', rating_plate: 'battery' },
};

/** Traced to the heaters only, against two answers that point to isolation. */
export const CONTRADICTED: Unit = {
  name: 'Record player, school',
  access: ON_BENCH,
  answers: {
    plug: 'two_equal_blades',
    ...SCREWS,
    transformer: 'heaters_only_traced',
    common_to_chassis: 'not_joined',
    common_leg: 'neither',
    line_capacitor: 'none',
  },
};

/** A meter at hand, and enough known of it that a reading is asked next. */
export const METER_AT_HAND: Unit = {
  name: 'Shelf radio, with a meter',
  kind: 'table_radio',
  access: [...ON_BENCH, 'meter'],
  answers: {
    bare_metal: ['none_anywhere'],
    back: 'fitted',
    terminals: ['none'],
    transformer: 'none',
    plug: 'two_equal_blades',
  },
};

/** Windings that are separate, against a reading that joins pin B to the metal. */
export const READ_OTHERWISE: Unit = {
  ...METER_AT_HAND,
  name: 'Shelf radio, read otherwise',
  answers: { plug: 'two_equal_blades', ...SCREWS, transformer: 'separate_traced' },
  readings: { ohms_a_b_on: 120, ohms_a_b_off: 'OL', ohms_b_part_on: 0.4 },
};

/** Puts a unit and what was found of it into the record; gives its inspection. */
export async function inspect(bridge: Bridge, unit: Unit): Promise<string> {
  const { name, place = '', kind = null, access = ['outside'] } = unit;
  const made = { name, place, kind, supply: { ...SUPPLY, ...unit.fed }, access };
  const { id: inspection } = await bridge.call<{ id: string }>('create_unit', { unit: made });
  for (const [question, answer] of Object.entries(unit.answers ?? {})) {
    await bridge.call('answer', { inspection, question, answer });
  }
  for (const [value, reading] of Object.entries(unit.values ?? {})) {
    await bridge.call('set_value', { inspection, value, reading });
  }
  if (unit.tubes) await bridge.call('set_tubes', { inspection, tubes: unit.tubes });
  for (const [reading, value] of Object.entries(unit.readings ?? {})) {
    await bridge.call('set_reading', { inspection, reading, value });
  }
  if (unit.rated) await bridge.call('set_rated', { inspection, rated: unit.rated });
  for (const [part, value] of Object.entries(unit.live ?? {})) {
    await bridge.call('set_live_test', { inspection, part, value });
  }
  for (const { of: finding, file } of unit.photos ?? []) {
    const picture = readFileSync(file).toString('base64');
    await bridge.call('add_photo', { inspection, finding, picture });
  }
  return inspection;
}
