// Prove, on an invented job that was treated: the map, the redo list, the return visit, the report and its print.
import assert from 'node:assert/strict';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import AxeBuilder from '@axe-core/playwright';
import { k_desk, k_phone, open, profile } from './browser.mjs';
import { importEvents } from './job_files.mjs';
import { facts, pages, paper } from './pdf.mjs';
import { serve } from './server.mjs';
import { drawn, goTo, saved } from './steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
const k_job = fileURLToPath(new URL('../../../examples/treated_job.ndjson', import.meta.url));
const k_mattress = '0194a3c0-0000-7000-8000-00000000100a';
const k_papers = { A4: [595, 842], Letter: [612, 792] };
const k_never_said = ['eradi', '100 %', 'guarantee'];
let server, folder, context, page;
const errors = [];

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, reducedMotion: 'reduce' });
  page = context.pages()[0];
  page.on('pageerror', (error) => errors.push(String(error)));
  await page.goto(server.url);
  await importEvents(page, await readFile(k_job, 'utf8'));
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

async function picture(name, full = false) {
  if (!k_pictures) return;
  await mkdir(k_pictures, { recursive: true });
  await page.screenshot({ path: join(k_pictures, `${name}.png`), fullPage: full });
}

async function computed() {
  await page.waitForFunction(() => document.querySelector('[data-count]') && !document.querySelector('[data-computing]'), null, { timeout: 240000 });
}

async function noSidewaysScroll() {
  await page.setViewportSize({ width: 320, height: 640 });
  await drawn(page);
  const { wide, screen } = await page.evaluate(() => ({ wide: document.scrollingElement.scrollWidth, screen: innerWidth }));
  await page.setViewportSize(k_phone);
  assert.ok(wide <= screen, `${wide} px wide on a screen of ${screen} px`);
}

async function violations() {
  await drawn(page);
  const found = await new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true).analyze();
  return found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => `${node.target.join(' ')} ${node.any[0]?.message ?? ''}`).slice(0, 3).join(' | ')}`);
}

test('the map: every item with its state, treated, measured and modelled apart', async () => {
  await goTo(page, 'prove');
  await computed();
  const count = async (state) => Number(await page.locator(`[data-count="${state}"] .figure`).innerText());
  assert.ok((await count('lethal')) > 0, 'some edges are lethal');
  assert.ok((await count('barred')) > 0, 'leather is barred');
  assert.ok((await count('not_treated')) > 0);
  for (const list of ['treated', 'measured', 'modelled']) assert.equal(await page.locator(`[data-list="${list}"]`).count(), 1);
  assert.match(await page.locator('[data-list="measured"]').innerText(), /165 °F/);
  assert.deepEqual(await violations(), []);
  await picture('prove-map-phone', true);
  await noSidewaysScroll();
});

test('an item: the drawing carries the states, the list says the same', async () => {
  await page.locator(`[data-item="${k_mattress}"]`).click();
  await page.locator('.drawing polyline.edge').first().waitFor();
  const states = await page.locator('[data-edge]').evaluateAll((rows) => Object.fromEntries(rows.map((row) => [row.dataset.edge, row.dataset.state])));
  assert.equal(states['mattress.top_head_tape'], 'lethal');
  assert.notEqual(states['mattress.top_left_tape'], 'lethal');
  assert.equal(states['mattress.bottom_left_tape'], 'not_treated');
  assert.ok((await page.locator('.drawing polyline.edge.lethal').count()) > 0);
  await page.locator('[data-edge="mattress.top_left_tape"]').click();
  await page.getByRole('link', { name: 'Treat again' }).waitFor();
  assert.match(await page.getByRole('link', { name: 'Treat again' }).getAttribute('href'), /treat\/.*mattress\.top_left_tape/);
  assert.deepEqual(await violations(), []);
  await picture('prove-item-phone', true);
  await page.setViewportSize(k_desk);
  await drawn(page);
  const hidden = await page.locator('[data-edge="mattress.top_left_tape"]').evaluate((row) => {
    const frame = row.closest('ul').getBoundingClientRect(), box = row.getBoundingClientRect();
    return Math.max(0, frame.top - box.top, box.bottom - frame.bottom);
  });
  assert.ok(hidden <= 1, `${hidden} px of the chosen row lie outside of its list`);
  await picture('prove-item-desk');
  await page.setViewportSize(k_phone);
  await noSidewaysScroll();
});

test('the redo list: an entry is explained, and the explanation is a fact', async () => {
  await goTo(page, 'prove', 'redo');
  await page.waitForFunction(() => !document.querySelector('[data-computing]'), null, { timeout: 240000 });
  const open = async () => Number(await page.locator('[data-open]').getAttribute('data-open'));
  await page.locator('[data-redo]').first().waitFor();
  const before = await open();
  const facts = await saved(page);
  await picture('prove-redo-phone', true);
  const entry = page.locator('[data-redo$="mattress.top_left_tape"]');
  await entry.getByRole('button', { name: 'Explain' }).click();
  await page.getByRole('button', { name: 'next visit' }).click();
  await page.locator('[data-explained$="mattress.top_left_tape"]').waitFor({ timeout: 120000 });
  assert.equal(await open(), before - 1);
  assert.equal(await saved(page), facts + 1);
  assert.deepEqual(await violations(), []);
  await noSidewaysScroll();
});

test('the return visit: a cool home moves it, and two weeks are called too early', async () => {
  await goTo(page, 'prove', 'return');
  await page.locator('[data-reason="window"]').waitFor();
  assert.equal(await page.locator('#treated-on').inputValue(), '2026-03-02');
  assert.equal(await page.locator('[data-custom]').getAttribute('data-custom'), 'too_early');
  const window20 = await page.locator('[data-reason] .figure').innerText();
  await picture('prove-return-phone', true);
  for (let i = 0; i < 5; i++) await page.getByRole('button', { name: 'Warmer' }).click();
  await page.locator('[data-custom="inside"]').waitFor();
  assert.notEqual(await page.locator('[data-reason] .figure').innerText(), window20);
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to calendar' }).click();
  const file = await (await waiting).path();
  const text = await readFile(file, 'utf8');
  assert.ok(text.startsWith('BEGIN:VCALENDAR\r\n') && text.endsWith('END:VCALENDAR\r\n'));
  assert.deepEqual(await violations(), []);
  await page.setViewportSize(k_desk);
  await picture('prove-return-desk');
  await page.setViewportSize(k_phone);
  await noSidewaysScroll();
  for (let i = 0; i < 12; i++) await page.getByRole('button', { name: 'Colder' }).click();
  await page.locator('[data-reason="too_cold"]').waitFor();
  for (let i = 0; i < 7; i++) await page.getByRole('button', { name: 'Warmer' }).click();
  await page.locator('[data-reason="window"]').waitFor();
});

test('the report prints on A4 and Letter, tagged, with page numbers and pictures', async () => {
  await goTo(page, 'prove', 'report');
  await page.locator('[data-report]').waitFor({ timeout: 120000 });
  const text = await page.locator('[data-report]').innerText();
  for (const heading of ['What was found', 'What was done', 'What was measured', 'What was computed', 'What was not treated, and why', 'What is done again', 'How sure this is'])
    assert.ok(text.includes(heading), heading);
  for (const word of k_never_said) assert.ok(!text.includes(word), word);
  assert.ok((await page.locator('.report svg[role=img] polyline').count()) > 20, 'items are drawn with their edges');
  assert.deepEqual(await violations(), []);
  await picture('prove-report-phone', true);
  await noSidewaysScroll();
  for (const [name, size] of Object.entries(k_papers)) {
    await page.getByRole('radio', { name }).check();
    const pdf = await page.pdf({ preferCSSPageSize: true, tagged: true, outline: true });
    if (k_pictures) await writeFile(join(k_pictures, `report-${name}.pdf`), pdf);
    const said = facts(pdf);
    assert.ok(said.tagged, `${name} is tagged`);
    assert.match(said.language, /^en(-US)?$/);
    assert.equal(said.title, 'Treatment report: Demo room 3A');
    assert.ok(said.headings > 10, `${said.headings} headings`);
    assert.deepEqual(paper(pdf), size, name);
    assert.ok(pages(pdf) >= 2 && pages(pdf) <= 12, `${pages(pdf)} pages on ${name}`);
  }
});

test('daylight: axe finds nothing either', async () => {
  await goTo(page, 'record');
  await page.getByRole('radio', { name: 'Daylight' }).check();
  await page.waitForFunction(() => document.documentElement.dataset.look === 'day');
  for (const view of [[], ['redo'], ['return'], [k_mattress]]) {
    await goTo(page, 'prove', ...view);
    await page.locator('[data-count], [data-open], [data-reason]').first().waitFor();
    assert.deepEqual(await violations(), [], view.join());
    await picture(`prove-day-${view[0] === k_mattress ? 'item' : view[0] ?? 'map'}`);
  }
  await goTo(page, 'record');
  await page.getByRole('radio', { name: 'Dark room' }).check();
  await goTo(page, 'prove', 'report');
  await page.locator('[data-report]').waitFor();
});

test('handing it over is a fact with its answer and the hash of the record', async () => {
  const hash = await page.locator('[data-report]').getAttribute('data-report');
  await page.getByRole('button', { name: 'Hand it over' }).click();
  const told = page.locator('[data-issued]');
  await told.waitFor();
  assert.match(await told.innerText(), new RegExp(hash));
  assert.match(await told.innerText(), /has not changed/);
  assert.deepEqual(errors, []);
});
