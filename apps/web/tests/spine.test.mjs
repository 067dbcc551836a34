// From a typed fold test to a pace on an edge, with the server gone half-way.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { edgesWithState, goTo, k_verdicts, openDemo, readyForOffline, saved, startOwnJob, typeReading, verdict } from './steps.mjs';

let server, folder, context, page;
const errors = [];

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone });
  page = context.pages()[0];
  page.on('pageerror', (error) => errors.push(String(error)));
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

test('a blank store is said to be blank', async () => {
  await page.goto(server.url);
  await page.getByRole('heading', { name: 'Nothing is recorded on this device' }).waitFor();
});

test('own job: room, sofa, kit and a typed fold test give a verdict', async () => {
  await startOwnJob(page, server.url, 'Trial of the page');
  await page.getByRole('button', { name: 'Add a room' }).click();
  await page.getByLabel('Name of the room').fill('Den');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('button', { name: 'Add an item: Den' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Seats' }).click();
  await page.locator('[data-kind="sofa"]').click();
  await page.getByRole('link', { name: 'Open', exact: true }).click();
  await page.getByRole('button', { name: 'Change', exact: true }).click();
  await page.getByRole('button', { name: 'One less: Seats' }).click();
  await page.getByRole('radio', { name: 'polyester' }).check();
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await goTo(page, 'inspect');
  await page.getByRole('link', { name: /Sofa/ }).first().waitFor();

  await goTo(page, 'kit');
  await page.getByRole('button', { name: 'New fold test' }).first().click();
  await page.getByRole('button', { name: /^Head/ }).click();
  await page.locator('#gear-title').fill('Wide head');
  await page.locator('#gear-long').fill('3');
  await page.locator('#gear-wide').fill('8');
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^Probe/ }).click();
  await page.locator('#gear-title').fill('Wire probe');
  await page.locator('#gear-seconds').fill('0.3');
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  for (const reading of [{ layers: 1, pace: 0.5, peak: 188 }, { layers: 1, pace: 1, peak: 172 }, { layers: 2, pace: 0.4, peak: 176 }, { layers: 2, pace: 0.8, peak: 150 }]) {
    await typeReading(page, reading);
  }
  assert.ok(k_verdicts.includes(await verdict(page)));
  assert.equal(await page.locator('svg .dot').count(), 2, 'two readings lie under one layer');
});

test('a slip of the finger is refused with words and nothing is stored', async () => {
  const count = await saved(page);
  await page.getByRole('button', { name: 'Add a reading' }).click();
  await page.locator('#reading-pace').fill('fast');
  await page.locator('#reading-peak').fill('170');
  await page.getByRole('button', { name: 'Save reading' }).click();
  await page.getByText('Type a number, such as 12 or 12.5').waitFor();
  await page.locator('#reading-pace').fill('0');
  await page.getByRole('button', { name: 'Save reading' }).click();
  await page.getByText('Must be above zero').waitFor();
  await page.getByRole('button', { name: 'Cancel' }).click();
  assert.equal(await saved(page), count);
});

test('an edge has a pace or a reason', async () => {
  await goTo(page, 'plan');
  const edges = await edgesWithState(page);
  assert.ok(edges.length > 10);
  await page.locator('[data-edge]:not([data-state="waiting"])').first().click();
  await page.locator('article .answer').waitFor();
  const told = await page.locator('article').innerText();
  assert.match(told, /in\/s|no window|hold/);
});

test('server killed, page reloaded: the facts are there and it computes again', async () => {
  await readyForOffline(page);
  const count = await saved(page);
  await server.stop();
  await assert.rejects(page.evaluate((url) => fetch(`${url}?${Math.random()}`, { method: 'POST' }).then(() => true), server.url), 'the server is really gone');
  await page.reload();
  assert.equal(await saved(page), count);
  await goTo(page, 'kit');
  await typeReading(page, { layers: 1, pace: 0.7, peak: 181 });
  assert.ok(k_verdicts.includes(await verdict(page)));
  await goTo(page, 'plan');
  await edgesWithState(page);
  assert.deepEqual(errors, []);
});

test('export, import into an empty browser: the same state code', async () => {
  await goTo(page, 'record');
  await page.locator('[data-state-code]').waitFor();
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export a .lastegg file' }).click();
  const download = await waiting;
  const file = await download.path();
  const code = await page.locator('[data-state-code]').getAttribute('data-state-code');
  assert.match(code, /^[0-9a-f]{6}$/);
  assert.ok(download.suggestedFilename().includes(code));
  await page.locator('[data-kept="safe"]').waitFor();

  const other = await serve();
  const empty = await profile();
  const second = await open(empty.folder);
  try {
    const there = second.pages()[0];
    await there.goto(other.url);
    await there.locator('input[type=file]').setInputFiles({ name: 'trial.lastegg', mimeType: 'application/zip', buffer: await (await import('node:fs/promises')).readFile(file) });
    await there.getByRole('link', { name: /Sofa/ }).first().waitFor();
    await goTo(there, 'record');
    await there.locator(`[data-state-code="${code}"]`).waitFor();
  } finally {
    await second.close();
    await other.stop();
    await empty.remove();
  }
});

test('the demo opens in an empty browser and says that it is invented', async () => {
  const other = await serve();
  const empty = await profile();
  const second = await open(empty.folder);
  try {
    const there = second.pages()[0];
    await openDemo(there, other.url);
    await there.getByText('Invented demo data').waitFor();
  } finally {
    await second.close();
    await other.stop();
    await empty.remove();
  }
});
