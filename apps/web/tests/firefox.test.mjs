// The short way through the page in a second engine: Debian's Firefox, driven by WebDriver BiDi.
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { after, before, test } from 'node:test';
import puppeteer from 'puppeteer-core';
import { serve } from './server.mjs';
import { k_verdicts } from './steps.mjs';

const k_firefox = process.env.LASTEGG_FIREFOX ?? '/usr/bin/firefox-esr';
const k_wait = { timeout: 60000 };
let server, browser, page;
const errors = [];

before(async () => {
  assert.ok(existsSync(k_firefox), `no browser at ${k_firefox}: install the package firefox-esr, or set LASTEGG_FIREFOX`);
  server = await serve();
  browser = await puppeteer.launch({ browser: 'firefox', executablePath: k_firefox, headless: true, extraPrefsFirefox: { 'intl.accept_languages': 'en-US' } });
  page = await browser.newPage();
  page.on('pageerror', (error) => errors.push(String(error)));
  await page.setViewport({ width: 390, height: 844 });
});

after(async () => {
  await browser?.close();
  await server?.stop();
});

const goTo = (...names) => page.evaluate((hash) => { location.hash = hash; }, '#/' + names.join('/'));
const saved = () => page.$eval('[data-saved]', (mark) => Number(mark.dataset.saved));

test('the demo opens, its facts are saved, the fold test has a verdict', async () => {
  await page.goto(server.url);
  await (await page.waitForSelector('::-p-text(Open the demo apartment)', k_wait)).click();
  await page.waitForSelector('::-p-text(Sofa under the window)', k_wait);
  assert.ok(await saved() > 20);
  await goTo('kit');
  await page.waitForSelector('[aria-busy="false"] [data-verdict]', k_wait);
  assert.ok(k_verdicts.includes(await page.$eval('[data-verdict]', (mark) => mark.dataset.verdict)));
});

test('the plan gives edges a state', async () => {
  await goTo('plan');
  await page.waitForSelector('[data-edge]:not([data-state="waiting"])', k_wait);
});

test('server gone, page loaded again: the facts are there', async () => {
  const count = await saved();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    for (let i = 0; i < 200; i++) {
      const names = (await caches.keys()).filter((name) => name.includes('precache'));
      for (const name of names) {
        if ((await (await caches.open(name)).keys()).some((request) => request.url.endsWith('.wasm'))) return;
      }
      await new Promise((wait) => setTimeout(wait, 100));
    }
    throw new Error('the service worker has not stored the engine within 20 s');
  });
  await server.stop();
  server = null;
  await page.reload();
  await page.waitForSelector('[data-saved]', k_wait);
  await page.waitForFunction((wanted) => Number(document.querySelector('[data-saved]').dataset.saved) === wanted, k_wait, count);
  await goTo('plan');
  await page.waitForSelector('[data-edge]:not([data-state="waiting"])', k_wait);
  assert.deepEqual(errors, []);
});
