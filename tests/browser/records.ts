/** Records in a file for the checks: with copies beside them, damaged, given from one device to another. */

import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

import type { Page } from '@playwright/test';

import type { Code } from '../../ui/src/lib/types/Code';
import { Bridge } from './bridge';
import { inspect, type Unit } from './units';

/** What SQLite keeps in one page, bytes: its usual size, which the record has. */
const PAGE = 4096;
/** The head of a page, which says how many rows it has: left as it is, the page is read, and makes no sense. */
const HEAD = 8;

/** The file of a record that was started in one. */
export function fileOf(bridge: Bridge): string {
  if (bridge.record === undefined) throw new Error('this record is only in memory');
  return bridge.record;
}

/** As many units, of which only the name is known. */
export async function shop(bridge: Bridge, count: number, name = 'Radio'): Promise<void> {
  for (let unit = 1; unit <= count; unit += 1) await inspect(bridge, { name: `${name} ${unit}` });
}

/** A copy of the record as it is, made at a time, under the name that the app would give it. The app makes one
    beside its window, which the bridge has not. */
export async function keepCopy(bridge: Bridge, number: number, at: string, before = ''): Promise<void> {
  const record = fileOf(bridge);
  // Put together anew, all of it is in the one file: nothing is left in the log beside it.
  const { read } = await bridge.call<{ read: number }>('restore_snapshot', { number: null, readable: true });
  if (read === 0) throw new Error('nothing was read');
  const { length } = await bridge.call<unknown[]>('list_units', { text: null });
  const folder = join(dirname(record), 'snapshots');
  mkdirSync(folder, { recursive: true });
  const copy = join(folder, `${String(number).padStart(6, '0')}-${length}${before}.coldchassis`);
  copyFileSync(record, copy);
  utimesSync(copy, new Date(at), new Date(at));
  rmSync(join(dirname(record), 'damaged'), { recursive: true });
}

/** Writes over each page of a file that a text is in, as a failing disk does; tells how many. */
export function damage(file: string, text: string): number {
  const bytes = readFileSync(file);
  let pages = 0;
  for (let at = 0; at < bytes.length; at += PAGE) {
    if (!bytes.subarray(at, at + PAGE).includes(text)) continue;
    bytes.fill(0x5a, at + HEAD, at + PAGE);
    pages += 1;
  }
  writeFileSync(file, bytes);
  return pages;
}

/** What lies in the folder that a replaced file is kept in. */
export function keptBeside(bridge: Bridge): string[] {
  const folder = join(dirname(fileOf(bridge)), 'damaged');
  return existsSync(folder) ? readdirSync(folder).sort() : [];
}

/** Runs something with another device, which has a record of its own. */
export async function onOther<T>(run: (other: Bridge) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'other-'));
  const other = await Bridge.start(join(folder, 'record.coldchassis'));
  try {
    return await run(other);
  } finally {
    await other.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Puts a bundle of units of another device where this one looks for one; with how much of it, the whole is 1. */
export async function bundleFromOther(bridge: Bridge, units: readonly Unit[], share = 1): Promise<string> {
  const path = join(bridge.given, 'other.coldbundle');
  await onOther(async (other) => {
    for (const unit of units) await inspect(other, unit);
    await other.call('export_bundle', { units: null, path });
  });
  const whole = readFileSync(path);
  writeFileSync(path, whole.subarray(0, Math.floor(whole.length * share)));
  return path;
}

/** Has a command refused from now on. */
export async function refuse(page: Page, command: string, code: Code, sentence: string): Promise<void> {
  const json = { problem: { code, field: null, sentence } };
  await page.route(`**/api/${command}`, (route) => route.fulfill({ json }));
}
