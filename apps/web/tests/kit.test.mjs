// The checks of the kit: start of the job, a probe in ice and in boiling water, steam by weighing, the tissue, circuits.
import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import AxeBuilder from '@axe-core/playwright';
import { k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { drawn, goTo, openDemo, saved } from './steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
let server, folder, context, page;
const errors = [];

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, reducedMotion: 'reduce' });
  page = context.pages()[0];
  page.on('pageerror', (error) => errors.push(String(error)));
  await openDemo(page, server.url);
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

/** What must hold of the page in sight: axe finds nothing, nothing is wider than 320 px; and its picture. */
async function sound(name) {
  await page.mouse.move(0, 0);
  await drawn(page);
  const found = await new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true).analyze();
  assert.deepEqual(found.violations.map((one) => `${one.id}: ${one.nodes[0].target.join(' ')}`), [], name);
  await page.setViewportSize({ width: 320, height: 640 });
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `${name}: nothing scrolls sideways`);
  await page.setViewportSize(k_phone);
  if (!k_pictures) return;
  await mkdir(k_pictures, { recursive: true });
  await page.screenshot({ path: join(k_pictures, `kit-${name}.png`), fullPage: true });
}

async function save() {
  const before = await saved(page);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]').dataset.saved) > count, before);
}

test('every check is reached from Kit', async () => {
  await goTo(page, 'kit');
  for (const title of ['Before you start', 'Is the probe right?', 'Steam by weighing', 'Does it blow them away?']) {
    await page.getByRole('link', { name: title }).click();
    await page.getByRole('heading', { level: 1, name: title }).waitFor();
    await page.getByRole('link', { name: 'Close' }).click();
  }
});

test('start of the job: what was not looked at stays unsaid', async () => {
  await goTo(page, 'kit', 'start');
  await page.getByRole('button', { name: 'Hose: no leak, no crack' }).click();
  await page.getByText('5 of 6 not checked').waitFor();
  await sound('start');
  const before = await saved(page);
  await page.getByRole('button', { name: 'Save the check' }).click();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]').dataset.saved) > count, before);
});

test('a probe in ice: right, wrong, and no number refused', async () => {
  await goTo(page, 'kit', 'probe');
  await page.locator('#probe-shown').fill('cold');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Type a number, such as 12 or 12.5').waitFor();
  await page.locator('#probe-shown').fill('32.4');
  await save();
  await page.locator('[data-probe-verdict="sound"]').nth(1).waitFor({ timeout: 30000 });
  await page.locator('#probe-shown').fill('38');
  await save();
  const off = page.locator('[data-probe-verdict="off"]');
  await off.waitFor({ timeout: 30000 });
  assert.match(await off.innerText(), /6\.0 °F too hot/, 'a difference converts without the offset of 32');
  await sound('probe');
});

test('a probe in boiling water at sea level without a barometer is not proven when it is near', async () => {
  await page.getByRole('radio', { name: 'Boiling water' }).check();
  await page.locator('#probe-shown').fill('210');
  await save();
  await page.locator('[data-probe-verdict="not_proven"]').first().waitFor({ timeout: 30000 });
  await sound('probe-boiling');
});

test('weighing: steam a second; a machine that gained weight is refused', async () => {
  await goTo(page, 'kit', 'weigh');
  await page.locator('#weigh-before').fill('16.0');
  await page.locator('#weigh-after').fill('16.4');
  await page.locator('#weigh-minutes').fill('5');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('After must be less than before').waitFor();
  await page.locator('#weigh-after').fill('15.6');
  await save();
  await page.getByText('16.00 lb → 15.60 lb, 5 min').waitFor();
  const supply = page.locator('[data-supply]');
  await supply.waitFor({ timeout: 30000 });
  // 0.4 lb of 453.6 g in 300 s
  assert.match(await supply.innerText(), /^0\.60 g/);
  await sound('weigh');
});

test('the tissue, and a circuit', async () => {
  await goTo(page, 'kit', 'jet');
  await page.locator('#jet-distance').fill('1.5');
  await page.getByRole('radio', { name: 'is blown away' }).check();
  await save();
  await page.getByText('Loose bugs are blown away alive').waitFor();
  await sound('jet');
  await goTo(page, 'kit');
  await page.getByRole('button', { name: 'Circuits' }).click();
  await page.getByRole('radio', { name: '20 A' }).check();
  const before = await saved(page);
  await page.getByRole('button', { name: 'Add a circuit' }).click();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]').dataset.saved) > count, before);
  await page.getByRole('button', { name: 'Close' }).click();
});

test('no script has failed', () => assert.deepEqual(errors, []));
