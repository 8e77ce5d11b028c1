/** Measuring on a photo: its steps, what it tells, and where it leads. */

import type { Page } from '@playwright/test';

import type { Bridge } from './bridge';
import { drag, grip, middleOf, placeAll, send, tapPhoto } from './placing';
import { HERE } from './places';
import type { Screen } from './reached';
import { corners, edges, middle, type Pixel, POLARISED } from './scene';
import { atRest } from './screen';
import { inspect } from './units';
import { READING_MS, type Walk } from './walk';
import { say } from './words';

/** The scene of a polarised plug, as `photographed` draws it. */
export const CARD_AND_PLUG = `${HERE}/photos/card-and-plug.jpg`;

/** A place below that photo of a unit of which nothing is answered. */
const below = (place: string) => async (bridge: Bridge) => {
  const unit = { name: 'Shelf radio, brown case', place: 'Stall 14' };
  const inspection = await inspect(bridge, { ...unit, photos: [{ of: 'answers.plug', file: CARD_AND_PLUG }] });
  const { photos } = await bridge.call<{ photos: { id: string }[] }>('show_inspection', { inspection });
  return place === 'question' ? `#/i/${inspection}/q/plug` : `#/i/${inspection}/photo/${photos[0]?.id}${place}`;
};

type Act = (walk: Walk, page: Page) => Promise<void>;

/** One after the other, each once the one before has come to rest. */
const then =
  (...acts: Act[]): Act =>
  async (walk, page) => {
    for (const act of acts) {
      await act(walk, page);
      await atRest(page);
    }
  };

const next: Act = (walk) => walk.tap(say('measuring-corners-next'));
const measure: Act = (walk) => walk.tap(say('measuring-measure'));
const place =
  (places: readonly Pixel[]): Act =>
  (_, page) =>
    placeAll(page, places);
/** Tapped once the screen has been there for a while, as by somebody who has read it. */
const tapNamed =
  (name: string): Act =>
  async (_, page) => {
    await page.getByRole('button', { name: name.trim() }).waitFor();
    await page.waitForTimeout(READING_MS);
    await page.getByRole('button', { name: name.trim() }).tap();
  };
const choose = (what: 'blades' | 'length'): Act => tapNamed(say(`measuring-what-${what}`));

const toWhat = then(place(corners(POLARISED)), next);
const toBlades = then(toWhat, choose('blades'));
const placed = then(toBlades, (_, page) => tapPhoto(page, middle(POLARISED)), place(edges(POLARISED)));
/** The second blade's points too near each other for any blade. */
const [A, B, C, D] = edges(POLARISED);
const narrow: readonly Pixel[] = A && B && C && D ? [A, B, C, [C[0] + (D[0] - C[0]) / 2, C[1] + (D[1] - C[1]) / 2]] : [];

/** A finger that stays on a grip. */
const held: Act = async (_, page) => {
  const from = await middleOf(grip(page, 0));
  await send(grip(page, 0), 'pointerdown', from);
  await send(grip(page, 0), 'pointermove', { x: from.x - 20, y: from.y + 14 });
};

export const MEASURES: readonly Screen[] = [
  { name: 'measure-corners', reach: below('/measure') },
  { name: 'measure-corners-held', reach: below('/measure'), act: held },
  { name: 'measure-corners-open', reach: below('/measure'), act: next },
  {
    name: 'measure-card-trouble',
    reach: below('/measure'),
    act: then(async (_, page) => {
      for (const which of [0, 1, 2, 3]) {
        await drag(grip(page, which), await middleOf(grip(page, which)), { x: which % 2 === 0 ? 70 : -70, y: 0 });
      }
    }, next),
  },
  { name: 'measure-what', reach: below('/measure'), act: toWhat },
  { name: 'measure-blades', reach: below('/measure'), act: toBlades },
  { name: 'measure-blades-placed', reach: below('/measure'), act: placed },
  { name: 'measure-length', reach: below('/measure'), act: then(toWhat, choose('length')) },
  { name: 'measure-offers', reach: below('/measure'), act: then(placed, measure), long: true },
  {
    name: 'measure-cannot-tell',
    reach: below('/measure'),
    act: then(toBlades, (_, page) => tapPhoto(page, middle(POLARISED)), place(narrow), measure),
    long: true,
  },
  {
    name: 'measure-tells-length',
    reach: below('/measure'),
    act: then(toWhat, choose('length'), place(corners(POLARISED).slice(0, 2)), measure),
    long: true,
  },
  {
    name: 'measure-at-question',
    reach: below('/measure'),
    act: then(placed, measure, tapNamed(say('measuring-answer', { answer: '' }))),
    long: true,
  },
  {
    name: 'measure-how',
    reach: below('question'),
    act: (_, page) => page.locator('summary', { hasText: say('measuring-how') }).tap(),
    long: true,
  },
  { name: 'measure-help', reach: below('/measure'), act: (walk) => walk.tap(say('measuring-help')) },
];
