/** A photo: where it is shown, by itself, over the whole screen, with marks, and beside one of before. */

import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import type { Mark } from '../../ui/src/lib/types/Mark';
import type { Bridge } from './bridge';
import { of, type Screen } from './reached';
import { BACK, inspect, NO_PICTURE, PLUG, SHELF_RADIO, type Unit } from './units';
import { say } from './words';

/** An id of the right form that no record has. */
const NOBODY = '00000000-0000-7000-8000-000000000000';

const PHOTOGRAPHED: Unit = {
  ...SHELF_RADIO,
  photos: [
    { of: 'answers.plug', file: PLUG },
    { of: 'answers.plug', file: BACK },
    { of: null, file: BACK },
  ],
};

const MARKS: Mark[] = [
  { shape: 'pin', x: 0.4, y: 0.3, caption: 'Both blades alike' },
  { shape: 'arrow', x1: 0.8, y1: 0.75, x2: 0.55, y2: 0.5, caption: 'Cracked here' },
  { shape: 'box', x1: 0.15, y1: 0.55, x2: 0.5, y2: 0.85, caption: '' },
];

/** The first photo, with what is done to it first. */
function photo(place = '', first?: (bridge: Bridge, inspection: string, ids: string[]) => Promise<unknown>) {
  return async (bridge: Bridge) => {
    const inspection = await inspect(bridge, PHOTOGRAPHED);
    const view = await bridge.call<InspectionView>('show_inspection', { inspection });
    const ids = view.photos.map(({ id }) => id);
    await first?.(bridge, inspection, ids);
    return `#/i/${inspection}/photo/${ids[0] ?? NOBODY}${place}`;
  };
}

const marked = (bridge: Bridge, inspection: string, [id]: string[]) =>
  bridge.call('mark_photo', { inspection, photo: id, marks: MARKS });
const paired = (bridge: Bridge, inspection: string, [id, other]: string[]) =>
  bridge.call('pair_photo', { inspection, photo: id, before: other });

const time: NonNullable<Screen['varies']> = (page) => page.getByText(/\d\d:\d\d/);

export const PHOTOS: Screen[] = [
  { name: 'photo-at-question', reach: of(PHOTOGRAPHED, 'change/plug'), long: true },
  { name: 'photo-at-review', reach: of(PHOTOGRAPHED, 'found'), long: true },
  { name: 'photo-at-verdict', reach: of(PHOTOGRAPHED, 'verdict'), long: true },
  { name: 'photo', reach: photo(), varies: time },
  { name: 'photo-marked', reach: photo('', marked), varies: time, long: true },
  { name: 'photo-before-after', reach: photo('', paired), varies: time, long: true },
  { name: 'photo-closer', reach: photo('/closer') },
  { name: 'photo-closer-marked', reach: photo('/closer', marked) },
  {
    name: 'photo-closer-chosen',
    reach: photo('/closer', marked),
    act: (_, page) =>
      page.getByRole('dialog').getByRole('list', { name: say('photo-marks') }).getByRole('button').nth(1).tap(),
  },
  {
    name: 'photo-refused',
    reach: of(SHELF_RADIO, 'verdict'),
    act: async (_, page) => {
      await page.locator('input[type=file]').first().setInputFiles(NO_PICTURE);
      await page.getByText(NO_PICTURE.name).first().scrollIntoViewIfNeeded();
    },
  },
  { name: 'photo-gone', reach: of(SHELF_RADIO, `photo/${NOBODY}`) },
];
