/** The requests of the screens: which are on their way, and where each one went. */

import type { BrowserContext, Page, Request } from '@playwright/test';

export class Traffic {
  /** The address of each request, in order. */
  readonly asked: string[] = [];
  readonly #underWay = new Set<Request>();

  constructor(context: BrowserContext) {
    context.on('request', (request) => {
      this.asked.push(request.url());
      this.#underWay.add(request);
    });
    context.on('requestfinished', (request) => this.#underWay.delete(request));
    context.on('requestfailed', (request) => this.#underWay.delete(request));
    for (const page of context.pages()) this.#listen(page);
    context.on('page', (page) => this.#listen(page));
  }

  /** A socket is no request. */
  #listen(page: Page): void {
    page.on('websocket', (socket) => this.asked.push(socket.url()));
  }

  get quiet(): boolean {
    return this.#underWay.size === 0;
  }

  /** What was asked of anything but this origin. */
  foreign(origin: string): string[] {
    return this.asked.filter((address) => new URL(address).origin !== origin);
  }
}
