// Every place, in both themes: no accessibility violation that axe knows, nothing wider than a 320 px screen, and every
// control large enough for a gloved finger. Pictures of each place go to LASTEGG_PICTURES, if that is set.
import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import AxeBuilder from '@axe-core/playwright';
import { k_desk, k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { drawn, edgesWithState, goTo, k_sofa, openDemo, verdict } from './steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
const k_least_control = 48;
let server, folder, context, page;

const k_places = [
  ['inspect', async () => { await goTo(page, 'inspect'); await page.locator('figure.plan').waitFor(); }],
  ['item', async () => { await goTo(page, 'inspect', k_sofa); await page.locator('.drawing').waitFor(); }],
  ['kit', async () => { await goTo(page, 'kit'); await verdict(page); }],
  ['reading', async () => { await goTo(page, 'kit'); await verdict(page); await page.getByRole('button', { name: 'Add a reading' }).click(); }],
  ['plan', async () => { await goTo(page, 'plan', k_sofa); await edgesWithState(page); }],
  ['edge', async () => {
    await goTo(page, 'plan', k_sofa);
    const edges = await edgesWithState(page);
    await goTo(page, 'plan', k_sofa, edges.find((edge) => edge.state !== 'waiting').id);
    await page.locator('article .answer').waitFor();
  }],
  ['treat', async () => { await goTo(page, 'treat', k_sofa); await page.locator('[data-status] button:not([disabled])').first().waitFor({ timeout: 120000 }); }],
  ['record', async () => { await goTo(page, 'record'); await page.locator('[data-state-code]').waitFor(); }],
];

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, reducedMotion: 'reduce' });
  page = context.pages()[0];
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

async function look(theme) {
  await goTo(page, 'record');
  await page.getByRole('radio', { name: theme === 'day' ? 'Daylight' : 'Dark room' }).check();
  await page.waitForFunction((wanted) => document.documentElement.dataset.look === wanted, theme);
}

async function violations() {
  await drawn(page);
  const found = await new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true).analyze();
  return found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => `${node.target.join(' ')} (${node.any[0]?.message ?? ''})`).slice(0, 3).join(' | ')}`);
}

async function picture(name) {
  if (!k_pictures) return;
  await mkdir(k_pictures, { recursive: true });
  await page.screenshot({ path: join(k_pictures, `${name}.png`) });
}

test('a blank store: axe, width, picture', async () => {
  await page.goto(server.url);
  await page.getByRole('heading', { name: 'Nothing is recorded on this device' }).waitFor();
  assert.deepEqual(await violations(), []);
  await picture('blank-phone');
  await openDemo(page, server.url);
});

for (const theme of ['dark', 'day']) {
  for (const [size, viewport] of [['phone', k_phone], ['desk', k_desk]]) {
    test(`${theme}, ${size}: axe finds nothing`, async () => {
      await page.setViewportSize(viewport);
      await look(theme);
      for (const [name, enter] of k_places) {
        await enter();
        assert.deepEqual(await violations(), [], `${name} in ${theme} at ${size}`);
        await picture(`${name}-${size}-${theme}`);
      }
    });
  }
}

test('320 px: nothing scrolls sideways, at either length of unit', async () => {
  await page.setViewportSize({ width: 320, height: 640 });
  for (const [name, enter] of k_places) {
    await enter();
    const { wide, screen } = await page.evaluate(() => ({ wide: document.scrollingElement.scrollWidth, screen: innerWidth }));
    assert.ok(wide <= screen, `${name} is ${wide} px wide on a screen of ${screen} px`);
  }
});

test('controls are at least 48 px, the field controls 126 px', async () => {
  await page.setViewportSize(k_phone);
  for (const [name, enter] of k_places) {
    await enter();
    const small = await page.evaluate((least) => [...document.querySelectorAll('button, a[href], summary, label:has(input), input:not([type=radio]):not([type=file])')]
      .map((control) => ({ control, box: control.getBoundingClientRect() }))
      .filter(({ control, box }) => box.width > 0 && !control.classList.contains('skip') && (box.height < least - 0.5 || box.width < Math.min(least, 36) - 0.5))
      .map(({ control, box }) => `${control.tagName} "${control.textContent.trim().slice(0, 30)}" ${box.width.toFixed(0)} x ${box.height.toFixed(0)}`), k_least_control);
    assert.deepEqual(small, [], name);
  }
  await k_places.find(([name]) => name === 'reading')[1]();
  const save = await page.getByRole('button', { name: 'Save reading' }).boundingBox();
  assert.ok(save.height >= 126, `the save button is ${save.height} px high`);
});

test('the drawing turns by keyboard, and an edge is chosen by tap and from the list alike', async () => {
  await page.setViewportSize(k_phone);
  await goTo(page, 'inspect', k_sofa);
  const stage = page.locator('.drawing .stage');
  await stage.focus();
  const before = await page.locator('.drawing polygon.face').first().getAttribute('points');
  await page.keyboard.press('ArrowRight');
  await page.waitForFunction((old) => document.querySelector('.drawing polygon.face').getAttribute('points') !== old, before);
  const edge = page.locator('.list button').first();
  await edge.click();
  assert.equal(await edge.getAttribute('aria-pressed'), 'true');
  await edge.click();
  const line = page.locator('.drawing polyline.edge').first();
  const points = (await line.getAttribute('points')).split(' ').map((pair) => pair.split(',').map(Number));
  await page.locator('.drawing').evaluate((drawing) => drawing.scrollIntoView({ block: 'center' }));
  const box = await page.locator('.drawing svg[role=presentation]').boundingBox();
  const [p, q] = points;
  await page.mouse.click(box.x + (p[0] + q[0]) / 2, box.y + (p[1] + q[1]) / 2 + 6);
  await page.locator('.facts').waitFor();
});
