/** Nothing leaves the device: during a whole walk no request goes anywhere but to the app itself. */

import { expect, test } from './check';
import { settle } from './screen';
import { screenNamed } from './screens';
import { Walk } from './walk';
import { say } from './words';

const ANSWERS = { plug: ['two_equal_blades'], bare_metal: ['screws_or_shafts'], back: ['fitted'], terminals: ['none'] };

test('no request leaves the app', async ({ bridge, page, traffic }) => {
  const walk = new Walk(page);
  await page.goto('/');
  await walk.welcome();
  await walk.newUnit();
  await walk.toVerdict(ANSWERS);
  await walk.found.tap();
  for (const name of ['found', 'readings', 'settings', 'shocked', 'list']) {
    await page.goto(`/${await screenNamed(name).reach(bridge)}`);
    await settle(page, traffic);
  }
  expect(traffic.asked.length).toBeGreaterThan(10);
  expect(traffic.foreign(bridge.address)).toEqual([]);
});

test.describe('without the policy of the app, which would bar it', () => {
  test.use({ bypassCSP: true });

  test('a request that leaves would be noticed', async ({ bridge, failures, page, traffic }) => {
    await page.goto('/');
    await expect(page.getByText(say('first-does-title'))).toBeVisible();
    // Addresses kept for documents, RFC 5737: nobody has them.
    await page.evaluate(async () => {
      await fetch('http://192.0.2.1/fetched', { mode: 'no-cors' }).catch(() => null);
      new Image().src = 'http://192.0.2.1/pictured.png';
      new WebSocket('ws://192.0.2.1/socket');
    });
    await expect.poll(() => traffic.foreign(bridge.address).length).toBe(3);
    // The browser tells that it could not reach them, as it should.
    await expect.poll(() => failures.length).toBeGreaterThan(0);
    failures.length = 0;
  });
});
