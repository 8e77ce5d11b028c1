/** Puts all goldens of a theme side by side in one picture, for people to look at: sheets/<theme>.png. */

import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

import { chromium } from '@playwright/test';

import { CHROMIUM, GOLDENS, HERE } from './places.js';

const KINDS = ['light', 'dark', 'whole'];
const SHEETS = `${HERE}/sheets`;
/** Wide enough for eight phones in a row. */
const WIDTH = 8 * (390 + 24) + 24;

const STYLE = `
  body { margin: 24px; background: #777; font: 700 20px/1.4 sans-serif; color: #fff }
  body { display: flex; flex-wrap: wrap; align-items: flex-start; gap: 24px }
  figure { margin: 0; max-width: 100% }
  img { display: block; max-width: 100% }
`;

/** @param {string[]} names */
function page(names) {
  const figures = names.map((name) => {
    const address = pathToFileURL(`${GOLDENS}/${name}`);
    return `<figure><figcaption>${name.replace('.png', '')}</figcaption><img src="${address}"></figure>`;
  });
  return `<!doctype html><meta charset="utf-8"><style>${STYLE}</style>${figures.join('\n')}`;
}

mkdirSync(SHEETS, { recursive: true });
const all = readdirSync(GOLDENS).sort();
const browser = await chromium.launch({
  executablePath: CHROMIUM,
  args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
});
try {
  for (const kind of KINDS) {
    const names = all.filter((name) => name.endsWith(`-${kind}.png`));
    if (names.length === 0) continue;
    const file = `${SHEETS}/${kind}.html`;
    writeFileSync(file, page(names));
    const tab = await browser.newPage({ viewport: { width: WIDTH, height: 1000 } });
    await tab.goto(pathToFileURL(file).href);
    await tab.screenshot({ path: `${SHEETS}/${kind}.png`, fullPage: true });
    await tab.close();
    console.log(`${SHEETS}/${kind}.png: ${names.length} screens`);
  }
} finally {
  await browser.close();
}
