// What a visit brings besides edges in a row: towel and tank, pause, out of reach, for later, a reading of the surface, a
// key learnt by pressing it, minutes left, a screen that cannot be kept on. The demo is served with a wrapped towel and
// the facts of its steamer, all invented.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { k_arguments, k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { k_sofa, openDemo, saved } from './steps.mjs';
import { begun, guide, hasStatus, inPhase, k_other_edge, k_short_edge, leaveGuide, now, openTreat, press } from './treat_steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
const k_soaking_seconds = 3600;
let server, folder, context, page;

/** The demo's lines with a towel round the head, a known tank, and an hour of steam that this towel has taken. */
function wrappedDemo() {
  const lines = readFileSync(new URL('../public/demo/apartment.ndjson', import.meta.url), 'utf8').trim().split('\n').map((line) => JSON.parse(line));
  const first = lines[0];
  for (const { kind, data } of lines) {
    if (kind === 'towel/1') data.use = 'wrapped';
    if (kind === 'machine/1') Object.assign(data, { tank: 'pressurised', water_kilograms: 1.6, gauge_pascal: 350000 });
  }
  const facts = { item: k_sofa, edge: 'underside.staples_back', length_metres: 2, seconds: k_soaking_seconds, towel: 'wrapped', invented: true };
  lines.push({ ...first, id: '0194a3c9-0000-7000-8000-000000000001', kind: 'stroke/1', subject: '0194a3c9-0000-7000-8000-000000000002', data: facts });
  return lines.map((line) => JSON.stringify(line)).join('\n') + '\n';
}

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, serviceWorkers: 'block', args: [...k_arguments, '--autoplay-policy=no-user-gesture-required'] });
  page = context.pages()[0];
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'wakeLock', { value: { request: () => Promise.reject(new Error('not here')) } });
  });
  await page.route('**/demo/apartment.ndjson', (route) => route.fulfill({ body: wrappedDemo(), contentType: 'application/x-ndjson' }));
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

test('with the facts of the steamer the place forecasts water and towel', async () => {
  await page.getByText(/The tank (wants water after about \d+ min|lasts)/).waitFor({ timeout: 60000 });
  await page.getByText(/Change the towel after \d+ min of steam/).waitFor();
});

test('a soaked towel is asked for before the next edge; a changed one is on record', async () => {
  await page.locator(`ul [data-edge="${k_short_edge}"] button`).last().click();
  await page.getByRole('button', { name: 'Ready' }).click();
  await page.locator('dialog[data-phase="towel"], dialog[data-phase="ready"]').waitFor();
  assert.equal((await now(page)).phase, 'towel');
  await page.getByText(/Fresh towel|Towel off/).waitFor();
  await picture('towel');
  const facts = Number((await now(page)).keptCount);
  await press(page);
  await inPhase(page, 'ready');
  await page.waitForFunction((count) => Number(document.querySelector('dialog').dataset.keptCount) === count + 1, facts);
});

test('a screen that cannot be kept on is said on the field screen and in the place', async () => {
  await page.getByRole('img', { name: 'the screen may go dark' }).waitFor();
});

test('paused in the middle: the time is unknown, and the edge starts again', async () => {
  await begun(page);
  await page.waitForTimeout(800);
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('button', { name: 'Pause' }).click();
  await inPhase(page, 'paused');
  await picture('paused');
  await begun(page);
  assert.equal((await now(page)).edgeNow, k_short_edge);
  await page.waitForTimeout(1000);
  await press(page);
});

test('a reading of the surface: the hand is withheld, the gun is kept and judged', async () => {
  await page.waitForFunction(() => !['saving', undefined].includes(document.querySelector('[data-last]')?.dataset.last));
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('button', { name: 'Read the surface' }).click();
  await page.getByText(/The hand only from \d+ s|Not with the hand/).waitFor();
  assert.equal(await page.getByRole('button', { name: 'warm', exact: true }).count(), 0, 'no palm before the engine allows it');
  await page.locator('#gun').fill('500');
  await page.getByRole('button', { name: 'Save reading' }).click();
  await page.getByText(/Between -4 and 302 °F/).waitFor();
  const facts = Number((await now(page)).keptCount);
  await page.locator('#gun').fill('120');
  await page.getByRole('button', { name: 'Save reading' }).click();
  await page.waitForFunction((count) => Number(document.querySelector('dialog').dataset.keptCount) === count + 1, facts);
});

test('out of reach and for later leave the edge and stay on record', async () => {
  for (const [name, wanted] of [['Could not reach', 'out_of_reach'], ['Leave for later', 'skipped']]) {
    const edge = (await now(page)).edgeNow;
    await page.getByRole('button', { name: 'More' }).click();
    await page.getByRole('button', { name }).click();
    await page.waitForFunction((was) => document.querySelector('dialog').dataset.edgeNow !== was, edge);
    await hasStatus(page, edge, [wanted]);
  }
  await leaveGuide(page);
  await page.getByText('This browser cannot keep the screen on').waitFor();
});

test('what the cold surface said has slowed what is left', async () => {
  await page.locator('[data-slowed]').waitFor({ timeout: 60000 });
  assert.ok(Number(await page.locator('[data-slowed]').getAttribute('data-slowed')) > 0);
  await picture('slowed');
});

test('a key is learnt by pressing it once, and marks', async () => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.getByText('Sound and keys').click();
  await page.getByRole('button', { name: 'Set another key or foot switch' }).click();
  await page.keyboard.press('b');
  await page.getByText(/Mark with: KeyB/).waitFor();
  await guide(page, k_other_edge);
  await page.waitForTimeout(450);
  await page.keyboard.press('b');
  await inPhase(page, 'running');
  assert.equal(await page.locator('.track .head').count(), 0, 'with reduced motion nothing travels');
  await leaveGuide(page);
  await page.getByRole('button', { name: 'Usual keys again' }).click();
  await page.getByText(/Mark with: Space, Enter, PageDown/).waitFor();
});

test('forty minutes left: the edges that matter most, by the engine', async () => {
  await saved(page);
  await page.getByRole('radio', { name: '40', exact: true }).check();
  await page.locator('[data-chosen]').waitFor({ timeout: 180000 });
  assert.ok(Number(await page.locator('[data-chosen]').getAttribute('data-chosen')) > 0);
  await picture('forty');
});

test('an edge without a pace is done by practice, and never counts as lethal', async () => {
  const found = await page.waitForFunction(() => {
    const inches = (row) => { const [, number, unit] = row.textContent.match(/([\d.]+) (in|ft)/); return Number(number) * (unit === 'ft' ? 12 : 1); };
    const rows = [...document.querySelectorAll('ul [data-edge][data-status="todo"]')].filter((row) => row.querySelector('.pace').textContent === 'no pace');
    return rows.sort((p, q) => inches(p) - inches(q))[0]?.dataset.edge;
  }, null, { timeout: 180000 });
  const edge = await found.jsonValue();
  await guide(page, edge);
  await picture('practice');
  assert.match(await page.locator('[data-field] .title').innerText(), /practice/);
  assert.ok(Math.abs(Number((await now(page)).cycle) * 0.0254 - 0.0254) < 1e-6, 'one inch per second');
  const facts = Number((await now(page)).keptCount);
  await begun(page);
  await page.waitForTimeout(Math.min(Number((await now(page)).planned), 8) * 1000);
  await press(page);
  await page.waitForFunction((count) => Number(document.querySelector('dialog').dataset.keptCount) === count + 2, facts);
  await leaveGuide(page);
  await hasStatus(page, edge, ['unproven', 'redo']);
});
