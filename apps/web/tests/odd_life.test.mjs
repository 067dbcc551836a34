// What goes wrong in real life: wrong clocks, changed time zones, broken files, facts of a newer version, a second tab,
// a full device. Nothing entered is lost, and the page says what is.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { strToU8, zipSync } from 'fflate';
import { open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { goTo, saved, startOwnJob } from './steps.mjs';

const k_ten_years = 10 * 365.25 * 86400 * 1000;
let server, folder;

before(async () => {
  server = await serve();
  folder = await profile();
});

after(async () => {
  await server?.stop();
  await folder?.remove();
});

async function addRoom(page, name) {
  const before = await saved(page);
  await goTo(page, 'inspect');
  await page.getByRole('button', { name: 'Add a room' }).click();
  await page.getByLabel('Name of the room').fill(name);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]').dataset.saved) > count, before);
}

const code = async (page) => {
  await goTo(page, 'record');
  return page.locator('[data-state-code]').getAttribute('data-state-code');
};

async function chooseFile(page, name, buffer) {
  await goTo(page, 'record');
  await page.locator('.import input[type=file]').setInputFiles({ name, mimeType: 'application/zip', buffer });
}

function shiftClock(milliseconds) {
  const Real = Date;
  globalThis.Date = class extends Real {
    constructor(...given) {
      super(...(given.length === 0 ? [Real.now() + milliseconds] : given));
    }
    static now() {
      return Real.now() + milliseconds;
    }
  };
}

test('a clock ten years behind, then ten years ahead: everything is kept, nobody wins by it', async () => {
  let context = await open(folder.folder);
  await context.addInitScript(shiftClock, -k_ten_years);
  let page = context.pages()[0];
  await startOwnJob(page, server.url, 'Wrong clocks');
  await addRoom(page, 'Behind');
  await context.close();

  context = await open(folder.folder);
  await context.addInitScript(shiftClock, k_ten_years);
  page = context.pages()[0];
  await page.goto(server.url);
  await addRoom(page, 'Ahead');
  await context.close();

  context = await open(folder.folder);
  page = context.pages()[0];
  await page.goto(server.url);
  await addRoom(page, 'Right');
  for (const name of ['Behind', 'Ahead', 'Right']) await page.getByRole('heading', { name, exact: true }).waitFor();
  assert.equal(await saved(page), 4);
  await context.close();
});

test('another time zone: the same facts, the same state code', async () => {
  const codes = [];
  for (const timezoneId of ['America/Denver', 'Asia/Kolkata', 'Pacific/Apia']) {
    const context = await open(folder.folder, { timezoneId });
    const page = context.pages()[0];
    await page.goto(server.url);
    await saved(page);
    codes.push(await code(page));
    await context.close();
  }
  assert.match(codes[0], /^[0-9a-f]{6}$/);
  assert.deepEqual(new Set(codes).size, 1);
});

test('files that are none are refused in words, and nothing changes', async () => {
  const context = await open(folder.folder);
  const page = context.pages()[0];
  await page.goto(server.url);
  const count = await saved(page), before = await code(page);
  const sound = Buffer.from(zipSync({ 'manifest.json': strToU8('{}'), 'events.ndjson': strToU8('') }));
  const damaged = Buffer.from(zipSync({
    'events.ndjson': strToU8('{"id":"0194a3c1-0000-7000-8000-0000000000ff","kind":"job/1","subject":"0194a3c0-0000-7000-8000-0000000000ff","device":"d","actor":"a","at":"2025-01-01T00:00:00Z","data":{"title":"x"}}\n'),
    [`blobs/${'0'.repeat(64)}`]: strToU8('not what the name says'),
  }));
  for (const [name, bytes, told] of [
    ['photo.lastegg', Buffer.from('no zip at all'), /not a \.lastegg file/],
    ['cut.lastegg', sound.subarray(0, sound.length / 2), /not a \.lastegg file/],
    ['empty.lastegg', sound, /holds no facts/],
    ['other.lastegg', Buffer.from(zipSync({ 'letter.txt': strToU8('hello') })), /holds no events\.ndjson/],
    ['damaged.lastegg', damaged, /damaged/],
  ]) {
    await chooseFile(page, name, bytes);
    await page.locator('.import [role=alert]').getByText(told).waitFor();
  }
  assert.equal(await saved(page), count);
  assert.equal(await code(page), before);
  await context.close();
});

test('facts of a newer version are kept and shown as such', async () => {
  const context = await open(folder.folder);
  const page = context.pages()[0];
  await page.goto(server.url);
  const waiting = page.waitForEvent('download');
  await goTo(page, 'record');
  await page.getByRole('button', { name: 'Export a .lastegg file' }).click();
  const exported = await readFile(await (await waiting).path());
  const { unzipSync, strFromU8 } = await import('fflate');
  const lines = strFromU8(unzipSync(exported)['events.ndjson']);
  const first = JSON.parse(lines.split('\n')[0]);
  const future = JSON.stringify({ ...first, id: '0194a3c1-0000-7000-8000-00000000abcd', kind: 'smell/1', subject: '0194a3c0-0000-7000-8000-00000000abcd', data: { strength: 3 }, since: 'a later version' });
  await chooseFile(page, 'newer.lastegg', Buffer.from(zipSync({ 'events.ndjson': strToU8(lines + future + '\n') })));
  await page.getByText(/smell\/1 \(1\)/).waitFor();
  const again = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export a .lastegg file' }).click();
  const kept = strFromU8(unzipSync(await readFile(await (await again).path()))['events.ndjson']);
  assert.ok(kept.split('\n').includes(future), 'the line is kept byte for byte');
  await context.close();
});

test('a second tab is told, and both write to the one record', async () => {
  const context = await open(folder.folder);
  const first = context.pages()[0];
  await first.goto(server.url);
  const count = await saved(first);
  const second = await context.newPage();
  await second.goto(server.url);
  await saved(second);
  await goTo(first, 'record');
  await first.getByText('Open in another tab too').waitFor();
  await addRoom(second, 'Seen by both');
  await first.waitForFunction((wanted) => Number(document.querySelector('[data-saved]').dataset.saved) > wanted, count);
  await goTo(first, 'inspect');
  await first.getByRole('heading', { name: 'Seen by both' }).waitFor();
  assert.equal(await code(first), await code(second));
  await context.close();
});

test('a full device: said in large letters, held, and saved once there is room', async () => {
  const context = await open(folder.folder);
  const page = context.pages()[0];
  await page.goto(server.url);
  const count = await saved(page);
  const session = await context.newCDPSession(page);
  await session.send('Storage.overrideQuotaForOrigin', { origin: new URL(server.url).origin, quotaSize: 1 });
  await goTo(page, 'inspect');
  await page.getByRole('button', { name: 'Add a room' }).click();
  await page.getByLabel('Name of the room').fill('No room for it');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.locator('[data-kept="failed"]').waitFor();
  await page.getByText('1 fact is not saved.').waitFor();
  await session.send('Storage.overrideQuotaForOrigin', { origin: new URL(server.url).origin });
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Save again' }).click();
  await page.waitForFunction((wanted) => Number(document.querySelector('[data-saved]').dataset.saved) === wanted, count + 1);
  await page.getByRole('heading', { name: 'No room for it' }).waitFor();
  await context.close();
});
