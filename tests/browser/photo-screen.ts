/** A photo by itself and over the whole screen, as fingers and keys reach it. */

import { expect, type Locator, type Page } from '@playwright/test';

import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import type { Mark } from '../../ui/src/lib/types/Mark';
import type { PhotoView } from '../../ui/src/lib/types/PhotoView';
import type { Bridge } from './bridge';
import { settle } from './screen';
import type { Traffic } from './traffic';
import { BACK, inspect, PLUG, SHELF_RADIO, type Unit } from './units';
import { say } from './words';

/** A plug upright, then a back that lies on its side: two shapes of photo. */
export const PHOTOGRAPHED: Unit = {
  ...SHELF_RADIO,
  photos: [
    { of: 'answers.plug', file: PLUG },
    { of: null, file: BACK },
  ],
};

/** The first photo of an inspection, and what the record says of it. */
export class PhotoScreen {
  private constructor(
    readonly page: Page,
    readonly bridge: Bridge,
    readonly inspection: string,
    readonly id: string,
  ) {}

  static async open(bridge: Bridge, page: Page, traffic: Traffic, marks: Mark[] = [], place = ''): Promise<PhotoScreen> {
    const inspection = await inspect(bridge, PHOTOGRAPHED);
    const { photos } = await bridge.call<InspectionView>('show_inspection', { inspection });
    const shown = new PhotoScreen(page, bridge, inspection, photos[0]?.id ?? '');
    if (marks.length > 0) await bridge.call('mark_photo', { inspection, photo: shown.id, marks });
    await page.goto(`/#/i/${inspection}/${place || `photo/${shown.id}`}`);
    await settle(page, traffic);
    return shown;
  }

  async view(): Promise<InspectionView> {
    return this.bridge.call<InspectionView>('show_inspection', { inspection: this.inspection });
  }
  async photos(): Promise<PhotoView[]> {
    return (await this.view()).photos;
  }
  async photo(): Promise<PhotoView | undefined> {
    return (await this.photos()).find(({ id }) => id === this.id);
  }
  async marks(): Promise<Mark[]> {
    return (await this.photo())?.marks ?? [];
  }

  get viewer(): Locator {
    return this.page.getByRole('dialog');
  }
  get sheet(): Locator {
    return this.viewer.getByRole('img');
  }
  /** The words of the chosen mark. */
  get words(): Locator {
    return this.viewer.getByRole('textbox');
  }
  /** The marks, one beside the other. */
  get list(): Locator {
    return this.viewer.getByRole('list', { name: say('photo-marks') }).getByRole('button');
  }
  button(id: string): Locator {
    return this.viewer.getByRole('button', { name: say(id), exact: true });
  }

  async look(): Promise<void> {
    await this.page.getByRole('main').getByRole('button', { name: say('photo-closer') }).last().tap();
    await expect(this.sheet).toBeVisible();
  }

  /** Takes up a tool, or lays it down. */
  async turn(tool: string, taken: boolean): Promise<void> {
    await this.button(tool).tap();
    await expect(this.button(tool)).toHaveAttribute('aria-pressed', String(taken));
  }

  /** Fingers that go from their first places to their last, in shares of the photo. */
  async fingers(ways: readonly [from: Place, to: Place][]): Promise<void> {
    await this.send('pointerdown', ways, 0);
    for (const share of [0.25, 0.5, 0.75, 1]) await this.send('pointermove', ways, share);
    await this.send('pointerup', ways, 1);
  }

  /** One event of each finger, so far on its way. */
  async send(type: string, ways: readonly [from: Place, to: Place][], share: number): Promise<void> {
    const box = await this.sheet.boundingBox();
    if (!box) throw new Error('no photo');
    for (const [id, [from, to]] of ways.entries()) {
      await this.sheet.dispatchEvent(type, {
        pointerId: id + 2,
        pointerType: 'touch',
        isPrimary: id === 0,
        bubbles: true,
        clientX: box.x + box.width * (from[0] + (to[0] - from[0]) * share),
        clientY: box.y + box.height * (from[1] + (to[1] - from[1]) * share),
      });
    }
  }

  drag(from: Place, to: Place): Promise<void> {
    return this.fingers([[from, to]]);
  }
  touch(at: Place): Promise<void> {
    return this.drag(at, at);
  }

  /** A place of the photo, as shares of it, where that is on the screen: as shares of the sheet. */
  async on([x, y]: Place): Promise<Place> {
    return this.sheet.evaluate(
      (sheet, [shareX, shareY]) => {
        const image = sheet.querySelector('image');
        if (!image) throw new Error('no picture');
        const [of, on] = [image.getBoundingClientRect(), sheet.getBoundingClientRect()];
        return [
          (of.x + of.width * shareX - on.x) / on.width,
          (of.y + of.height * shareY - on.y) / on.height,
        ] as [number, number];
      },
      [x, y] as [number, number],
    );
  }

  /** The same, so many CSS px beside it. */
  async beside(at: Place, right: number, down: number): Promise<Place> {
    const box = await this.sheet.boundingBox();
    const [x, y] = await this.on(at);
    return [x + right / (box?.width ?? 1), y + down / (box?.height ?? 1)];
  }

  /** How much of the photo is in sight, px of it. */
  async wide(): Promise<number> {
    return Number((await this.sheet.getAttribute('viewBox'))?.split(' ')[2]);
  }
}

/** Shares of the width and height of what it is a place of. */
export type Place = [x: number, y: number];

const CODES: Readonly<Record<string, number>> = { Escape: 27, ArrowLeft: 37, ArrowRight: 39, ArrowDown: 40, Delete: 46, Enter: 13 };

/** A key of the keyboard beside a tablet, or of a switch that stands for one. */
export async function key(page: Page, name: string): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const event = { key: name, code: name, windowsVirtualKeyCode: CODES[name] ?? 0 };
  // A key that also writes is one that a button hears.
  const down = name === 'Enter' ? ({ type: 'keyDown', text: '\r' } as const) : ({ type: 'rawKeyDown' } as const);
  await session.send('Input.dispatchKeyEvent', { ...down, ...event });
  await session.send('Input.dispatchKeyEvent', { type: 'keyUp', ...event });
  await session.detach();
}

/** Letters that are typed one after the other into a field, which nothing ends yet. */
export async function type(page: Page, field: Locator, text: string): Promise<void> {
  await field.tap();
  const session = await page.context().newCDPSession(page);
  await session.send('Input.insertText', { text });
  await session.detach();
  await expect(field).toHaveValue(text);
}

/** The names that a screen reader hears for the pictures of the page. What lies in a button is only its label, and
    is not among them. */
export async function pictureNames(page: Page): Promise<string[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('Accessibility.enable');
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  const inButton = (id: string | undefined): boolean => {
    const above = nodes.find(({ nodeId }) => nodeId === id);
    return above !== undefined && (above.role?.value === 'button' || inButton(above.parentId));
  };
  const isHeard = ({ ignored, role, parentId }: (typeof nodes)[number]): boolean =>
    !ignored && role?.value === 'image' && !inButton(parentId);
  const pictures = nodes.filter(isHeard);
  return pictures.map(({ name }) => String(name?.value ?? ''));
}

/** Holds back a command until it is let go. */
export async function hold(page: Page, command: string): Promise<() => void> {
  let release = (): void => undefined;
  const held = new Promise<void>((done) => (release = done));
  await page.route(`**/api/${command}`, async (route) => {
    await held;
    await route.continue();
  });
  return release;
}

/** Has a command refused with a sentence, until what it gives is called. */
export async function refuse(page: Page, command: string, sentence: string): Promise<() => Promise<void>> {
  const address = `**/api/${command}`;
  const json = { problem: { code: 'storage', field: null, sentence } };
  await page.route(address, (route) => route.fulfill({ json }));
  return () => page.unroute(address);
}
