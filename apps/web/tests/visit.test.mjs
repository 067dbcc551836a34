// The visit of a job: answers, timetable, methods with a person's choice, minutes left, the printed sheet. The job is the demo with
// two of its items (mattress, leather recliner), so that all paces are there within seconds.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import AxeBuilder from '@axe-core/playwright';
import { strToU8, zipSync } from 'fflate';
import { k_desk, k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { drawn, goTo } from './steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
const k_kinds = ['mattress', 'recliner'];
let server, folder, context, page;
const errors = [];

function smallJob() {
  const lines = readFileSync(new URL('../public/demo/apartment.ndjson', import.meta.url), 'utf8').split('\n').filter(Boolean);
  const events = lines.map((line) => JSON.parse(line));
  const gone = new Set(events.filter((one) => one.kind === 'item/1' && !k_kinds.includes(one.data.kind)).map((one) => one.subject));
  const kept = lines.filter((_, i) => !gone.has(events[i].subject) && !gone.has(events[i].data.item));
  const manifest = { format: 'lastegg', version: 1, job: events.find((one) => one.kind === 'job/1').subject, title: 'Small', event_count: kept.length, blob_count: 0, state_hash: null, engine: null };
  return Buffer.from(zipSync({ 'manifest.json': strToU8(JSON.stringify(manifest)), 'events.ndjson': strToU8(kept.join('\n') + '\n') }));
}

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, reducedMotion: 'reduce' });
  page = context.pages()[0];
  page.on('pageerror', (error) => errors.push(String(error)));
  await page.goto(server.url);
  await page.locator('input[type=file]').first().setInputFiles({ name: 'small.lastegg', mimeType: 'application/zip', buffer: smallJob() });
  await page.getByText('Demo apartment 2B').first().waitFor();
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

async function picture(name, options = {}) {
  if (!k_pictures) return;
  await mkdir(k_pictures, { recursive: true });
  await page.screenshot({ path: join(k_pictures, `${name}.png`), ...options });
}

async function violations() {
  await drawn(page);
  const found = await new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true).analyze();
  return found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).slice(0, 3).join(' | ')}`);
}

const tabs = [['visit', []], ['visit-methods', ['methods']], ['visit-left', ['left']], ['visit-sheet', ['sheet']]];

test('the three answers and a timetable come from the record', async () => {
  await goTo(page, 'plan', 'visit');
  await page.locator('[data-sleep]').waitFor({ timeout: 120000 });
  assert.ok(['yes', 'no', 'not_proven'].includes(await page.locator('[data-sleep]').getAttribute('data-sleep')));
  assert.ok(Number(await page.locator('[data-minutes]').getAttribute('data-minutes')) > 60);
  assert.match(await page.locator('[data-quote]').innerText(), /^\$[\d,]+$/);
  assert.equal(await page.locator('[data-task="hand_over"]').count(), 1);
  assert.equal(await page.locator('[data-task="turn"]').count(), 0, 'one person turns nothing');
  assert.ok((await page.locator('.picture .block').count()) > 8);
  await picture('visit-phone-dark', { fullPage: true });
});

test('a second person turns the mattress, and the visit is kept as a fact', async () => {
  await page.getByRole('radio', { name: '2 people' }).check();
  await page.locator('[data-task="turn"]').first().waitFor({ timeout: 60000 });
  await goTo(page, 'inspect');
  await goTo(page, 'plan', 'visit');
  await page.locator('[data-task="turn"]').first().waitFor({ timeout: 60000 });
  assert.equal(await page.getByRole('radio', { name: '2 people' }).isChecked(), true);
});

test('leather is barred with its source; a choice is kept with its reason and undone', async () => {
  await goTo(page, 'plan', 'visit', 'methods');
  const item = page.locator('[data-item]').filter({ hasText: 'Leather recliner' });
  await item.getByRole('button', { name: /Leather recliner/ }).click();
  const steam = item.locator('[data-offer="steam"]');
  assert.equal(await steam.getAttribute('data-standing'), 'barred');
  assert.match(await steam.innerText(), /conservation science/);
  await picture('visit-methods-phone-dark', { fullPage: true });
  await item.getByRole('button', { name: 'Use: Hot chamber or tent' }).click();
  await page.getByRole('radio', { name: 'the client asked' }).check();
  await page.getByRole('dialog').getByRole('button', { name: 'Use: Hot chamber or tent' }).click();
  await item.locator('[data-override="taken"]').waitFor();
  assert.match(await item.locator('[data-override]').innerText(), /the client asked/);
  assert.equal(await item.getAttribute('data-method'), 'hot_chamber');
  await item.getByRole('button', { name: 'Take what is offered' }).click();
  await page.locator('[data-method="isolate"]').filter({ hasText: 'Leather recliner' }).waitFor();
});

test('fewer minutes left mark fewer edges', async () => {
  await goTo(page, 'plan', 'visit', 'left');
  const marked = page.locator('[data-now="true"]');
  await marked.first().waitFor();
  const forty = await marked.count();
  await picture('visit-left-phone-dark', { fullPage: true });
  await page.getByRole('radio', { name: '10 min', exact: true }).check();
  await page.waitForFunction((count) => document.querySelectorAll('[data-now="true"]').length < count, forty);
  assert.ok((await marked.count()) >= 1);
});

test('the sheet asks what the home needs and prints on A4 and Letter', async () => {
  await goTo(page, 'plan', 'visit', 'sheet');
  await page.locator('[data-sentence="pets_out"]').waitFor();
  assert.equal(await page.locator('[data-sentence="hot_room_out"]').count(), 0);
  assert.match(await page.locator('[data-sentence="wash_hot"]').innerText(), /140 °F/);
  await picture('visit-sheet-phone-dark', { fullPage: true });
  for (const format of ['A4', 'Letter']) {
    const bytes = await page.pdf({ format, preferCSSPageSize: false });
    const pages = bytes.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
    assert.equal(pages, 2, `${format}: one side for the home, one for those who work, not ${pages}`);
    if (k_pictures) await writeFile(join(k_pictures, `sheet-${format}.pdf`), bytes);
  }
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 673, height: 1017 });  // A4 less its margins, at 96 px to the inch
  await picture('visit-sheet-print', { fullPage: true });
  await page.emulateMedia({ media: null });
  await page.setViewportSize(k_phone);
});

for (const [theme, size, viewport] of [['dark', 'phone', k_phone], ['day', 'desk', k_desk]]) {
  test(`${theme}, ${size}: axe finds nothing, nothing scrolls sideways, controls are large enough`, async () => {
    await page.setViewportSize(viewport);
    await goTo(page, 'record');
    await page.getByRole('radio', { name: theme === 'day' ? 'Daylight' : 'Dark room' }).check();
    for (const [name, path] of tabs) {
      await goTo(page, 'plan', 'visit', ...path);
      await page.locator(`[data-tab="${path[0] ?? 'answers'}"] h2, [data-item]`).first().waitFor({ timeout: 60000 });
      assert.deepEqual(await violations(), [], name);
      if (size === 'desk') await picture(`${name}-desk-day`, { fullPage: true });
      if (size === 'phone') {
        await page.setViewportSize({ width: 320, height: 640 });
        const { wide, screen } = await page.evaluate(() => ({ wide: document.scrollingElement.scrollWidth, screen: innerWidth }));
        assert.ok(wide <= screen, `${name} is ${wide} px wide on ${screen} px`);
        const small = await page.locator('main a, main button, main summary, main label').evaluateAll((all) => all.filter((one) => {
          const box = one.getBoundingClientRect();
          return box.width > 0 && box.height < 47.5;
        }).map((one) => one.innerText));
        assert.deepEqual(small, [], `${name}: controls lower than 48 px`);
        await page.setViewportSize(viewport);
      }
    }
  });
}

test('no script has failed', () => assert.deepEqual(errors, []));
