import { test } from './check';
import { settle } from './screen';
import { HOT_CHASSIS, LEAKY_AMPLIFIER, CLOSED_RADIO, EARTHED_AMPLIFIER, inspect } from './units';
test('shots', async ({ bridge, page, traffic }) => {
  for (const [n, u] of Object.entries({ hot: HOT_CHASSIS, leaky: LEAKY_AMPLIFIER, closed: CLOSED_RADIO, earthed: EARTHED_AMPLIFIER })) {
    const id = await inspect(bridge, u);
    await page.goto(`/#/i/${id}/circuit`);
    await settle(page, traffic);
    await page.screenshot({ path: `/tmp/c-${n}.png`, fullPage: n === 'hot' });
  }
});
