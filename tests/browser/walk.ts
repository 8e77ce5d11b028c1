/** A way through the app with one finger. */

import { expect, type Locator, type Page } from '@playwright/test';

import { say, sayAnswer } from './words';

/** An inspector's answers: a question, and all that is chosen for it; for a reading, what the meter shows. */
export type Answers = Readonly<Record<string, readonly string[]>>;

/** More questions than the bank has: an inspection that asks more goes in circles. */
const MOST = 40;

/** Nobody has read a question sooner, and a screen may take a tap this early for the second of two. */
export const READING_MS = 500;

export class Walk {
  constructor(readonly page: Page) {}

  /** What can be tapped under exactly this name. */
  named(name: string): Locator {
    const { page } = this;
    const exact = { name, exact: true };
    return page
      .getByRole('button', exact)
      .or(page.getByRole('checkbox', exact))
      .or(page.getByRole('radio', exact))
      .first();
  }

  async tap(name: string): Promise<void> {
    await this.page.waitForTimeout(READING_MS);
    await this.named(name).tap();
  }

  /** The button to what was found carries how many there are. */
  get found(): Locator {
    return this.page.getByRole('button', { name: new RegExp(`^${say('found')}(\\s|$)`) });
  }

  get heading(): Locator {
    return this.page.getByRole('heading', { level: 1 });
  }

  get tag(): Locator {
    return this.page.getByRole('article');
  }

  /** What is still possible, as it is read out. */
  get stillPossible(): Locator {
    const starts = [say('still-possible-all', { classes: '' }), say('still-possible-none')];
    const told = new RegExp(`^\\s*(${starts.map((start) => start.trim()).join('|')})`);
    return this.page.getByRole('status').filter({ hasText: told });
  }

  /** One class on the sign of what is still possible. */
  sign(shortName: string): Locator {
    return this.page.locator('[aria-hidden=true] > *').filter({ hasText: new RegExp(`^${shortName}$`) });
  }

  address(): Promise<string> {
    return this.page.evaluate(() => location.hash);
  }

  /** The question on the screen, out of its address. */
  async question(): Promise<string> {
    const [, head, , turn = '', question = ''] = (await this.address()).split('/');
    const isQuestion = head === 'i' && ['q', 'also', 'hint', 'change'].includes(turn);
    return isQuestion ? decodeURIComponent(question) : '';
  }

  /** The inspection on the screen, out of its address. */
  async inspection(): Promise<string> {
    return (await this.address()).split('/')[2] ?? '';
  }

  /** Waits until another screen is there; gives its address. */
  async leaves(address: string): Promise<string> {
    await expect.poll(() => this.address(), { message: `stays at ${address}` }).not.toBe(address);
    return this.address();
  }

  /** Goes through the screens of the first run to the list of units. */
  async welcome(): Promise<void> {
    for (const name of ['does', 'cannot', 'unplug']) {
      await expect(this.heading).toHaveText(say(`first-${name}-title`));
      await this.tap(say(name === 'unplug' ? 'first-start' : 'continue'));
    }
    await expect(this.page.getByText(say('list-empty-title'))).toBeVisible();
  }

  /** Makes a unit of which only the supply is given, and comes to its first question. */
  async newUnit(): Promise<void> {
    await this.tap(say('list-new'));
    await expect(this.heading).toHaveText(say('new-title'));
    // The phone's own list of choices is not on the page; what is chosen there is set.
    await this.page.getByLabel(say('new-supply'), { exact: true }).selectOption('120v_60hz');
    await this.tap(say('new-start'));
    await expect.poll(() => this.question()).not.toBe('');
    await expect(this.heading).not.toHaveText(say('new-title'));
  }

  /** Answers the question on the screen; gives the address after it. */
  async answer(answers: Answers): Promise<string> {
    const address = await this.address();
    const question = await this.question();
    if (question.startsWith('readings.')) return this.read(answers[question]?.[0] ?? null);
    // What the inspector has not looked at, nobody can tell.
    for (const one of answers[question] ?? ['cant_tell']) await this.tap(sayAnswer(question, one));
    await this.lookEverywhere();
    const next = this.page.getByRole('button', { name: say('next'), exact: true });
    if ((await this.address()) === address && (await next.count()) > 0) await next.tap();
    return this.leaves(address);
  }

  /** Enters what the meter shows, or (null) leaves the reading on the screen open, and goes on from it. */
  async read(figure: string | null): Promise<string> {
    const address = await this.address();
    if (figure === null) {
      await this.tap(say('readings-cannot-take'));
      return this.leaves(address);
    }
    await this.enter(figure);
    const onward = ['readings-next', 'readings-to-question', 'touch-to-verdict', 'readings-done', 'readings-all'];
    const button = onward.map((id) => this.named(say(id))).reduce((one, other) => one.or(other));
    await button.first().tap();
    return this.leaves(address);
  }

  /** Enters what the meter shows in the reading on the screen, and looks at what came of it. */
  async enter(figure: string): Promise<void> {
    const unplugged = this.named(say('readings-is-unplugged'));
    const field = this.page.getByLabel(say('readings-value'), { exact: true });
    await expect(unplugged.or(field).first()).toBeVisible();
    if (await unplugged.isVisible()) await this.tap(say('readings-is-unplugged'));
    await field.fill(figure);
    await this.tap(say('question-keep'));
    await expect(this.named(say('readings-again'))).toBeVisible();
  }

  /** That there is nothing anywhere is an answer only once every place is ticked. */
  async lookEverywhere(): Promise<void> {
    const places = this.page.getByRole('group', { name: say('question-places') }).getByRole('checkbox');
    for (const place of await places.all()) {
      if (!(await place.isChecked())) await place.tap();
    }
  }

  /** Answers until nothing more is asked: the verdict is on the screen then. Gives the questions asked. */
  async toVerdict(answers: Answers): Promise<string[]> {
    const asked: string[] = [];
    while (!(await this.address()).endsWith('/verdict')) {
      asked.push(await this.question());
      expect(asked.length, `the questions go in circles: ${asked.join(' ')}`).toBeLessThan(MOST);
      await this.answer(answers);
    }
    await expect(this.tag).toBeVisible();
    return asked;
  }
}
