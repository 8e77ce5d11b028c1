/** A finger at work on one photo, from taking it to what it measures. */

import type { Locator, Page } from '@playwright/test';

import type { FindingView } from '../../ui/src/lib/types/FindingView';
import type { PhotoView } from '../../ui/src/lib/types/PhotoView';
import type { Bridge } from './bridge';
import { placeAll, pointOnPhoto, tapPhoto } from './placing';
import { corners, edges, middle, photographed, type Pixel, type Scene } from './scene';
import { settle } from './screen';
import type { Traffic } from './traffic';
import { inspect, type Unit } from './units';
import { READING_MS, Walk } from './walk';
import { say } from './words';

export const UNIT: Unit = { name: 'Shelf radio, brown case', place: 'Stall 14' };
export class Table {
  readonly walk: Walk;

  private constructor(
    readonly page: Page,
    readonly bridge: Bridge,
    readonly traffic: Traffic,
    readonly inspection: string,
    readonly photo: string,
  ) {
    this.walk = new Walk(page);
  }

  /** At the photo of a scene, taken at the question about the plug. */
  static async at(page: Page, bridge: Bridge, traffic: Traffic, scene: Scene, unit = UNIT): Promise<Table> {
    const inspection = await inspect(bridge, unit);
    await page.goto('/#/settings');
    const picture = await photographed(page, scene);
    const args = { inspection, finding: 'answers.plug', picture };
    const view = await bridge.call<{ photos: PhotoView[] }>('add_photo', args);
    const table = new Table(page, bridge, traffic, inspection, view.photos[0]?.id ?? '');
    await table.open('');
    return table;
  }

  /** Opens a place below the photo as a link would. */
  async open(below: string): Promise<void> {
    await this.page.goto(`/#/i/${this.inspection}/photo/${this.photo}${below}`);
    await settle(this.page, this.traffic);
  }

  async tap(id: string, args = {}): Promise<void> {
    await this.walk.tap(say(id, args));
    await settle(this.page, this.traffic);
  }

  async corners(scene: Scene): Promise<void> {
    await this.tap('measuring-open');
    await placeAll(this.page, corners(scene));
  }

  /** From the photo to its points. */
  async toBlades(scene: Scene): Promise<void> {
    await this.corners(scene);
    await this.tap('measuring-corners-next');
    await this.choose('blades');
    await tapPhoto(this.page, middle(scene));
  }

  async choose(what: 'blades' | 'length'): Promise<void> {
    await this.page.waitForTimeout(READING_MS);
    await this.page.getByRole('button', { name: say(`measuring-what-${what}`) }).tap();
    await settle(this.page, this.traffic);
  }

  async measure(scene: Scene): Promise<void> {
    await this.toBlades(scene);
    await placeAll(this.page, edges(scene));
    await this.tap('measuring-measure');
  }

  get offer(): Locator {
    return this.page.getByRole('button', { name: say('measuring-answer', { answer: '' }).trim() });
  }

  get alert(): Locator {
    return this.page.getByRole('alert').filter({ hasText: /./ });
  }

  /** What is answered about the plug. */
  async answered(): Promise<string[]> {
    const args = { inspection: this.inspection };
    const { findings } = await this.bridge.call<{ findings: FindingView[] }>('show_inspection', args);
    return findings.flatMap(({ question, answers }) => (question === 'plug' ? answers : []));
  }

  /** Where points are, px of the photo. */
  async points(count = 4): Promise<Pixel[]> {
    const found: Pixel[] = [];
    for (let which = 0; which < count; which += 1) found.push(await pointOnPhoto(this.page, which));
    return found;
  }
}
