/** What is typed is shown as the text it is: no markup of it comes alive, nothing of it turns round its neighbours. */

import type { Page } from '@playwright/test';

import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import type { Bridge } from './bridge';
import { expect, test } from './check';
import { settle } from './screen';
import { inspect, LEAKY_AMPLIFIER, PLUG } from './units';

/** Anything that comes alive has this class, or sets this name on the window. */
const PLANTED = 'planted';

const TEXTS = [
  `<i class="${PLANTED}">slanted</i>`,
  `<img class="${PLANTED}" src="x" onerror="window.${PLANTED}=1">`,
  `<script class="${PLANTED}">window.${PLANTED}=1</script>`,
  `"><svg class="${PLANTED}" onload="window.${PLANTED}=1">`,
  '</b></button><h1>Nothing wrong</h1>',
  '&lt;b&gt; &amp; &#x41;',
  `{@html "x"} {name} \${name} {{name}}`,
  '{ $label } { $x -> [one] live *[other] none }',
  `'); DROP TABLE event; --`,
  '\u202egpj.exe turned and never ended',
  'ended\u2069\u2069 twice \u202e more',
  'רדיו ישן 220 V',
  '🔌⚡️👩🏽‍🔧 e\u0301\u0301 plug',
  'x'.repeat(200),
];

/** Puts a text wherever one can be typed; gives the inspection and its photo. */
async function write(bridge: Bridge, text: string): Promise<{ inspection: string; photo: string; label: string }> {
  await bridge.call('set_inspector', { author: text, language: 'en' });
  const tubes = [[...text].slice(0, 40).join('').trim(), '12SK7'];
  const unit = { ...LEAKY_AMPLIFIER, name: text, place: text, tubes, photos: [{ of: 'answers.plug', file: PLUG }] };
  const inspection = await inspect(bridge, unit);
  const view = await bridge.call<InspectionView>('show_inspection', { inspection });
  const photo = view.photos[0]?.id ?? '';
  await bridge.call('caption_photo', { inspection, photo, caption: text });
  const caption = [...text].slice(0, 80).join('').trim();
  const marks = [{ shape: 'pin', x: 0.5, y: 0.5, caption }];
  await bridge.call('mark_photo', { inspection, photo, marks });
  return { inspection, photo, label: view.unit.label };
}

/** What came alive on the page. */
function alive(page: Page, name: string): Promise<string[]> {
  return page.evaluate((planted) => {
    const found = [...document.querySelectorAll(`.${planted}, main script, img[src="x"]`)].map((one) => one.outerHTML);
    const wrong = [...document.querySelectorAll('h1')].filter((one) => one.textContent === 'Nothing wrong');
    if (planted in window) found.push('a script ran');
    return [...found, ...wrong.map((one) => one.outerHTML)];
  }, name);
}

/** Plain words of the screens whose letters do not run from left to right. */
function turned(page: Page, typed: string): Promise<string[]> {
  return page.evaluate((text) => {
    const wrong: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const said = node.textContent ?? '';
      if (node.parentElement?.closest('svg, script, style') || text.includes(said.trim())) continue;
      for (const { 0: word, index } of said.matchAll(/[A-Za-z]{3,}/g)) {
        // A word of the typed text itself may run as that text says.
        if (text.includes(word)) continue;
        const box = (at: number) => {
          const range = document.createRange();
          range.setStart(node, at);
          range.setEnd(node, at + 1);
          return range.getBoundingClientRect();
        };
        const [first, last] = [box(index), box(index + word.length - 1)];
        if (first.top === last.top && first.width > 0 && first.left > last.left) wrong.push(`${word} in ${said}`);
      }
    }
    return wrong;
  }, typed);
}

/** Whether the page has a text, in a field or as words; white space between words aside. */
function shows(page: Page, text: string): Promise<boolean> {
  return page.evaluate((wanted) => {
    const plain = (said: string) => said.replace(/\s+/g, ' ');
    const fields = [...document.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input, textarea')];
    const said = [document.body.textContent, ...fields.map((field) => field.value)];
    return said.some((one) => plain(one).includes(plain(wanted)));
  }, text);
}

for (const text of TEXTS) {
  test(`it is shown as it was typed: ${encodeURI(text.slice(0, 40))}`, async ({ bridge, page, traffic }) => {
    const { inspection, photo, label } = await write(bridge, text);
    const said = new Set<string>();
    for (const hash of [
      '#/',
      '#/queue',
      '#/queue/filters',
      `#/queue/${label}`,
      `#/i/${inspection}`,
      `#/i/${inspection}/found`,
      `#/i/${inspection}/verdict`,
      `#/i/${inspection}/papers`,
      `#/i/${inspection}/heaters`,
      `#/i/${inspection}/photo/${photo}`,
      `#/i/${inspection}/photo/${photo}/closer`,
      '#/settings',
    ]) {
      await page.goto('about:blank');
      await page.goto(`/${hash}`);
      await settle(page, traffic);
      expect(await alive(page, PLANTED), hash).toEqual([]);
      expect(await turned(page, text), hash).toEqual([]);
      if (await shows(page, text)) said.add(hash);
    }
    // The list, the queue and its filters, the unit, what was found, the photo: wherever the whole of it stands.
    for (const hash of ['#/', '#/queue', `#/queue/${label}`, `#/i/${inspection}/found`, `#/i/${inspection}/photo/${photo}`]) {
      expect([...said], `${hash} does not show it`).toContain(hash);
    }
    expect(await page.title()).not.toContain(PLANTED);
  });
}

test('a search box takes any sign for text', async ({ bridge, page, traffic }) => {
  await inspect(bridge, LEAKY_AMPLIFIER);
  await page.goto('/#/queue');
  await settle(page, traffic);
  const box = page.getByRole('searchbox').first();
  for (const text of ['"', '*', 'NEAR(', 'words:x', '-', '<b>', "' OR 1=1", '\u202ex', 'AND']) {
    await box.fill(text);
    await settle(page, traffic);
    await expect(page.getByRole('alert').filter({ hasText: /./ })).toHaveCount(0);
  }
  await box.fill('combo');
  await settle(page, traffic);
  expect(await shows(page, LEAKY_AMPLIFIER.name)).toBe(true);
});
