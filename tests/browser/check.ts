/** What each check starts with: a bridge of its own, and a page that may not fail quietly. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { test as base, expect, type Page } from '@playwright/test';

import { Bridge } from './bridge';
import { Traffic } from './traffic';

interface Given {
  /** The record is a file in a folder of its own, where copies of it can lie; else it is only in memory. */
  inFile: boolean;
  bridge: Bridge;
  traffic: Traffic;
  /** What went wrong on a page; must stay empty. */
  failures: string[];
}

export const test = base.extend<Given>({
  inFile: [false, { option: true }],
  bridge: async ({ inFile }, use) => {
    const folder = inFile ? mkdtempSync(join(tmpdir(), 'record-')) : null;
    const bridge = await Bridge.start(folder === null ? undefined : join(folder, 'record.coldchassis'));
    await use(bridge);
    await bridge.stop();
    if (folder !== null) rmSync(folder, { recursive: true, force: true });
    expect(bridge.complaints, 'the bridge complained').toBe('');
  },
  baseURL: async ({ bridge }, use) => {
    await use(bridge.address);
  },
  traffic: async ({ context }, use) => {
    await use(new Traffic(context));
  },
  failures: [
    async ({ context }, use) => {
      const failures: string[] = [];
      context.on('weberror', (failure) => failures.push(failure.error().message));
      context.on('console', (line) => {
        if (line.type() === 'error') failures.push(line.text());
      });
      await use(failures);
      expect(failures, 'errors on the page').toEqual([]);
    },
    { auto: true },
  ],
});

/** Slows the processor down as many times, to that of a cheap phone. */
export async function slow(page: Page, times: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: times });
}

/** The size of text that the browser starts from, as a person sets it; 16 is usual. */
export async function textSize(page: Page, pixels: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Page.setFontSizes', { fontSizes: { standard: pixels, fixed: pixels } });
}

export { expect };
