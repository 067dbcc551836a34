// What a small screen shows first: the name of the job whole, the items on one line, the figures without scrolling; and dates of
// a return only as a plan while nothing has been treated.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { drawn, goTo, k_sofa, openDemo } from './steps.mjs';

const k_finger = 75.5;  // px: 12 mm at 160 px to the inch, less rounding
let server, folder, context, page;

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone });
  page = context.pages()[0];
  await openDemo(page, server.url);
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

for (const [width, height] of [[320, 640], [390, 844]]) {
  test(`${width} x ${height}: the job's name is whole, items stand on one line, figures in the upper part`, async () => {
    await page.setViewportSize({ width, height });
    for (const place of ['plan', 'treat']) {
      await goTo(page, place, k_sofa);
      await page.locator('.sums').waitFor();
      await drawn(page);
      const seen = await page.evaluate(() => {
        const name = document.querySelector('header .job'), list = document.querySelector('main .head ul');
        return {
          name: name.textContent, cut: name.scrollHeight > name.clientHeight + 1 || name.scrollWidth > name.clientWidth + 1,
          tabs: [...list.querySelectorAll('a')].map((one) => one.getBoundingClientRect()).map((box) => [box.width, box.height, box.top]),
          figures: document.querySelector('.sums .figure').getBoundingClientRect().bottom / innerHeight, sideways: document.documentElement.scrollWidth > innerWidth,
        };
      });
      assert.ok(!seen.cut, `"${seen.name}" is cut`);
      assert.ok(!seen.sideways, 'nothing scrolls sideways but the items');
      assert.equal(new Set(seen.tabs.map(([, , top]) => Math.round(top))).size, 1, 'one line');
      assert.ok(seen.tabs.length > 5 && seen.tabs.every(([w, h]) => w >= k_finger && h >= k_finger), JSON.stringify(seen.tabs));
      assert.ok(seen.figures < 0.6, `${place}: the figures end at ${(100 * seen.figures).toFixed(0)} of 100 of the screen`);
    }
  });
}

test('the chosen item is brought into sight', async () => {
  const last = page.locator('main .head ul a').last();
  await goTo(page, 'plan', (await last.getAttribute('href')).split('/').at(-1));
  await page.locator('main .head ul a[aria-current]').last().waitFor();
  await drawn(page);
  const box = await last.boundingBox();
  assert.ok(box.x >= 0 && box.x + box.width <= page.viewportSize().width + 1, JSON.stringify(box));
});

test('nothing treated: that comes first, the planned day gives a plan, a day that is said gives dates', async () => {
  await goTo(page, 'prove', 'return');
  await page.locator('[data-planned]').waitFor();
  await page.getByText('If it is treated that day, come back').waitFor();
  const told = await page.locator('main').innerText();
  assert.ok(told.indexOf('Nothing treated yet') >= 0 && told.indexOf('Nothing treated yet') < told.indexOf('Treatment is planned for'), told);
  assert.equal(await page.getByRole('button', { name: 'Save to calendar' }).count(), 0);
  await page.locator('#treated-on').fill('2025-01-27');
  await page.getByRole('button', { name: 'Save to calendar' }).waitFor();
  assert.equal(await page.getByText('Nothing treated yet').count(), 0);
});
