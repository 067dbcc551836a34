// The guided run on the demo sofa, with real short edges: a lethal one, a rushed one, undo, a live bug, a hidden page, a
// page that stood still, a reload in the middle; and what a glance at the field screen finds.
import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import AxeBuilder from '@axe-core/playwright';
import { k_arguments, k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { drawn, goTo, k_sofa, openDemo, saved } from './steps.mjs';
import { begun, glance, guide, hasStatus, inPhase, k_other_edge, k_short_edge, leaveGuide, now, openTreat, press } from './treat_steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
let server, folder, context, page;
const errors = [];

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, args: [...k_arguments, '--autoplay-policy=no-user-gesture-required'] });
  page = context.pages()[0];
  page.on('pageerror', (error) => errors.push(String(error)));
  await page.addInitScript(() => {
    window.headset = {};
    navigator.mediaSession.setActionHandler = (action, act) => { window.headset[action] = act; };
  });
  await openDemo(page, server.url);
  await openTreat(page);
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

async function picture(name) {
  if (!k_pictures) return;
  await mkdir(k_pictures, { recursive: true });
  await page.screenshot({ path: join(k_pictures, `treat-${name}.png`) });
}

async function noViolations(what) {
  await drawn(page);
  const found = await new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true).analyze();
  assert.deepEqual(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).slice(0, 3).join(' | ')}`), [], what);
}

test('before the first edge: cautions, practice named as such, both orders with their reasons', async () => {
  await page.locator(`ul [data-edge="${k_short_edge}"] button`).click();
  await inPhase(page, 'before');
  const told = await page.locator('dialog').innerText();
  for (const word of [/steam burns/i, /outlets/i, /needles/i, /smoke detector/i, /tilted a little/i, /laid flat/i, /towel/i, /common practice, no source/i, /bugs above would scatter/i, /weak dose/i]) assert.match(told, word);
  assert.equal(await page.locator('dialog').evaluate((dialog) => dialog.scrollTop), 0, 'read from the top');
  await noViolations('before');
  await picture('before');
  await page.getByRole('radio', { name: 'Bottom to top' }).check();
  await page.getByRole('button', { name: 'Ready' }).click();
  await inPhase(page, 'ready');
});

test('a glance: twelve words, three buttons, controls of 20 mm, the big one in the lower half, at every size and theme', async () => {
  for (const [width, height] of [[390, 844], [320, 640], [844, 390], [1440, 900]]) {
    await page.setViewportSize({ width, height });
    for (const theme of ['dark', 'day']) {
      await page.evaluate((look) => { document.documentElement.dataset.look = look; }, theme);
      const seen = await glance(page);
      assert.ok(seen.words.length <= 12, `${width} x ${height}: ${seen.words.join(' ')}`);
      assert.ok(seen.buttons.length <= 3, `${seen.buttons.length} buttons`);
      assert.ok(seen.buttons.every(([w, h]) => w >= 126 && h >= 126), `${width} x ${height}: ${JSON.stringify(seen.buttons)}`);
      assert.ok(seen.bigTop < 0.58 && seen.bottom <= height + 0.5, `${width} x ${height}: ${seen.bigTop} ${seen.bottom}`);
      assert.ok(await page.evaluate(() => document.querySelector('dialog').scrollWidth <= innerWidth), `${width} px: nothing scrolls sideways`);
      if (width === 390 || theme === 'day') await noViolations(`field ${width} x ${height} ${theme}`);
      await picture(`ready-${width}-${theme}`);
    }
  }
  await page.evaluate(() => { document.documentElement.dataset.look = 'dark'; });
  await page.setViewportSize(k_phone);
});

test('an edge passed at its planned pace is lethal, and shown after it is saved', async () => {
  const facts = await saved(page);
  const planned = Number((await now(page)).planned);
  assert.ok(planned > 5 && planned < 40, `${planned} s`);
  await begun(page);
  assert.ok(Number((await now(page)).began) > 0, 'the beats sound');
  await page.waitForTimeout(planned * 700);  // gliding, or on the second of the places of a hold
  await picture('running');
  const place = Number(await page.locator('.track').getAttribute('data-place'));
  assert.ok(place > 0.03 && place < 0.12, `the mark stands at ${place} m of 0.13 m`);
  await page.waitForTimeout(planned * 300);
  await page.keyboard.press('PageDown');
  await page.locator('[data-last="lethal"]').waitFor({ timeout: 120000 });
  assert.equal((await now(page)).phase, 'running', 'one mark ends an edge and starts the next');
  assert.notEqual((await now(page)).edgeNow, k_short_edge);
  await picture('lethal');
  assert.ok((await glance(page)).words.length <= 12, (await glance(page)).words.join(' '));
  await leaveGuide(page);
  assert.ok((await saved(page)) > facts);
  await hasStatus(page, k_short_edge, ['done']);
});

test('a rushed edge joins the redo list with its cause; left with a reason it goes', async () => {
  await guide(page, k_other_edge);
  await begun(page);
  await page.waitForTimeout(900);
  await press(page);
  await page.locator('[data-last="short"], [data-last="not_proven"]').waitFor({ timeout: 120000 });
  await page.getByRole('img', { name: 'too fast' }).waitFor();
  await leaveGuide(page);
  await page.locator(`[data-redo] [data-edge="${k_other_edge}"]`).waitFor();
  assert.match(await page.locator(`[data-redo] [data-edge="${k_other_edge}"]`).innerText(), /to do again( \(first look\))?: too fast/);
  await picture('redo');
  await noViolations('redo list');
  await page.getByRole('button', { name: /Leave it as it is: Seam at the end of the zip strip, back right, seat cushion 2/ }).click();
  await page.getByRole('button', { name: 'No time left' }).click();
  await hasStatus(page, k_other_edge, ['left']);
});

test('a mark undone within ten seconds never happened; a live bug puts the edge back', async () => {
  await guide(page, k_other_edge);
  await begun(page);
  await page.waitForTimeout(700);
  await page.keyboard.press('Space');
  await page.waitForFunction((edge) => document.querySelector('dialog').dataset.edgeNow !== edge, k_other_edge);
  await page.getByRole('button', { name: 'More' }).click();
  await picture('more');
  await noViolations('more');
  await page.getByRole('button', { name: 'Undo the last mark' }).click();
  const back = await now(page);
  assert.deepEqual([back.phase, back.edgeNow], ['running', k_other_edge]);
  await page.getByRole('button', { name: 'Live bug' }).click();
  await page.waitForTimeout(500);
  await page.evaluate(() => window.headset.nexttrack());
  await page.waitForFunction(() => document.querySelector('dialog').dataset.counting !== undefined);
  assert.equal((await now(page)).edgeNow, k_other_edge, 'the same edge again, behind a headset mark');
  await leaveGuide(page);
  await hasStatus(page, k_other_edge, ['redo']);
});

test('a hidden page and a page that stood still are recorded as interrupted', async () => {
  await guide(page, k_other_edge);
  for (const part of ['hidden', 'still']) {
    const facts = Number((await now(page)).keptCount);
    await begun(page);
    await page.waitForTimeout(600);
    if (part === 'hidden') {
      await page.evaluate(() => {
        Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => 'hidden' });
        document.dispatchEvent(new Event('visibilitychange'));
        delete document.visibilityState;
      });
    } else {
      await page.evaluate(() => { for (const from = performance.now(); performance.now() - from < 3000;); });
    }
    await inPhase(page, 'interrupted');
    await page.waitForFunction((count) => Number(document.querySelector('dialog').dataset.keptCount) === count + 1, facts);
  }
  await picture('interrupted');
  await page.keyboard.press('Escape');
  await page.locator('dialog').waitFor({ state: 'detached' });
  await page.waitForFunction((edge) => document.querySelector(`[data-redo] [data-edge="${edge}"]`)?.textContent.includes('time not known'), k_other_edge, { timeout: 120000 });
});

test('a reload in the middle of an edge: it is on record as interrupted', async () => {
  const edge = 'seat_cushion_3.right_boxing_seam';
  await guide(page, edge);
  await begun(page);
  await page.waitForTimeout(1600);
  const facts = Number((await now(page)).keptCount);
  await page.evaluate(() => { window.onpagehide = null; addEventListener('pagehide', (event) => event.stopImmediatePropagation(), true); });
  await page.reload();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]')?.dataset.saved) > count, facts, { timeout: 30000 });
  await goTo(page, 'treat', k_sofa);
  await hasStatus(page, edge, ['redo']);
  assert.deepEqual(errors, []);
});
