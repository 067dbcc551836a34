// A new version of the page arrives while a visit is running: it stays waiting, and is offered on Record only after the visit.
import assert from 'node:assert/strict';
import { appendFile, cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { k_arguments, k_phone, open, profile } from './browser.mjs';
import { k_dist, serve } from './server.mjs';
import { goTo, k_sofa, openDemo, readyForOffline, saved } from './steps.mjs';
import { begun, guide, k_short_edge, leaveGuide, openTreat, press } from './treat_steps.mjs';

const k_hour_ms = 3600 * 1000;
let root, server, folder, context, page;

before(async () => {
  root = await mkdtemp(join(tmpdir(), 'lastegg-update-'));
  await cp(k_dist, root, { recursive: true });
  server = await serve(`${root}/`);
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, args: [...k_arguments, '--autoplay-policy=no-user-gesture-required'] });
  page = context.pages()[0];
  await openDemo(page, server.url);
  await readyForOffline(page);
  await page.reload();  // from here on the service worker controls the page
  await page.getByRole('link', { name: 'Sofa under the window' }).first().waitFor();
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
  if (root) await rm(root, { recursive: true, force: true });
});

const waits = () => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting?.state ?? null);

async function offer(tab, wanted) {
  await goTo(tab, 'record');
  await tab.locator(`[data-update="${wanted}"]`).waitFor();
  assert.equal(await tab.getByRole('button', { name: 'Use it now' }).count(), wanted === 'offered' ? 1 : 0);
}

test('a new version waits: it is offered on Record and nowhere else, and a reload does not take it', async () => {
  await appendFile(join(root, 'sw.js'), '\n// the next version\n');
  await page.evaluate(async () => { await (await navigator.serviceWorker.getRegistration()).update(); });
  await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.waiting !== null);
  await offer(page, 'offered');
  for (const place of ['inspect', 'kit', 'plan', 'treat', 'prove']) {
    await goTo(page, place);
    await page.locator(`nav a.${place}[aria-current]`).waitFor();
    assert.equal(await page.locator('[data-update]').count(), 0, place);
  }
  await page.reload();
  assert.equal(await waits(), 'installed');
  await offer(page, 'offered');
});

test('while an edge is treated no tab offers it', async () => {
  await openTreat(page);
  await guide(page, k_short_edge);
  await begun(page);
  const other = await context.newPage();
  await other.goto(`${server.url}#/record`);
  await offer(other, 'held');
  await other.close();
  await page.waitForTimeout(1500);
  await press(page);
  await leaveGuide(page);
  assert.equal(await waits(), 'installed');
});

test('nor within hours of the last mark; after that a tap takes it', async () => {
  await offer(page, 'held');
  assert.match(await page.locator('[data-update]').innerText(), /when this visit is over/);
  const count = await saved(page);
  await page.clock.setFixedTime(new Date(Date.now() + 5 * k_hour_ms));
  await goTo(page, 'treat', k_sofa);
  await page.locator('nav a.treat[aria-current]').waitFor();
  await offer(page, 'offered');
  assert.equal(await waits(), 'installed');
  await page.evaluate(() => { window.before = true; });
  await page.getByRole('button', { name: 'Use it now' }).click();
  await page.waitForFunction(() => window.before === undefined && document.querySelector('[data-saved]') !== null);
  assert.equal(await waits(), null);
  assert.equal(await saved(page), count);
});
