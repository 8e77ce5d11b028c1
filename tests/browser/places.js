/** Where the checks find what they run: each can be named from outside. */

import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of these checks. */
export const HERE = dirname(fileURLToPath(import.meta.url));
/** The folder of the whole project. */
export const ROOT = resolve(HERE, '../..');
/** The commands of the app over loopback, built by `cargo build -p coldchassis-tests --bin bridge`. */
export const BRIDGE = resolve(process.env['COLDCHASSIS_BRIDGE'] ?? `${ROOT}/target/debug/bridge`);
/** The built screens. */
export const SCREENS = resolve(process.env['COLDCHASSIS_SCREENS'] ?? `${ROOT}/ui/dist`);
/** The browser of the system: none is ever fetched. */
export const CHROMIUM = process.env['COLDCHASSIS_CHROMIUM'] ?? '/usr/bin/chromium';
/** The pictures that the screens are compared with. */
export const GOLDENS = resolve(process.env['COLDCHASSIS_GOLDENS'] ?? `${HERE}/goldens`);
