// Two hundred photos in one job, handed over in batches as from a gallery: all are kept, also after the page was opened
// again, the page stays usable, and the exported file holds every one.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { strFromU8, unzipSync } from 'fflate';
import { open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { goTo, k_sofa, openDemo } from './steps.mjs';

const k_photos = 200;
const k_batch = 40;
const k_most_ms = 1000;

let server, folder, context, page;

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder);
  page = context.pages()[0];
  await openDemo(page, server.url);
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

/** In the page: pictures of a camera's shape, no two alike, as base64. */
async function draw({ from, count }) {
  const canvas = new OffscreenCanvas(1600, 1200);
  const paint = canvas.getContext('2d');
  const drawn = [];
  for (let i = from; i < from + count; i++) {
    paint.fillStyle = `hsl(${(i * 47) % 360} 40% 45%)`;
    paint.fillRect(0, 0, 1600, 1200);
    paint.fillStyle = '#fff';
    paint.font = '400px sans-serif';
    paint.fillText(String(i), 200, 800);
    const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.8 })).arrayBuffer());
    drawn.push(btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')));
  }
  return drawn;
}

/** The photos of the job by the count that its strip shows. */
const shown = () => page.locator('.photos li').count();

async function opens(name, sign) {
  const milliseconds = await page.evaluate(async ({ hash, selector }) => {
    const begin = performance.now();
    location.hash = hash;
    while (!document.querySelector(selector)) await new Promise((wait) => setTimeout(wait, 5));
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return performance.now() - begin;
  }, { hash: `#/${name}`, selector: sign });
  console.log(`  ${name} opens in ${milliseconds.toFixed(0)} ms`);
  assert.ok(milliseconds <= k_most_ms, `${name} took ${milliseconds.toFixed(0)} ms, more than ${k_most_ms}`);
}

test('two hundred photos are taken in batches, the last batch from another place', async () => {
  for (let from = 0; from < k_photos; from += k_batch) {
    await goTo(page, 'inspect', k_sofa, 'photos');
    const input = page.locator('.choose input[type=file]');
    await input.waitFor({ state: 'attached' });
    const begin = Date.now();
    const pictures = await page.evaluate(draw, { from, count: k_batch });
    await input.setInputFiles(pictures.map((text, i) => ({ name: `photo-${from + i}.jpg`, mimeType: 'image/jpeg', buffer: Buffer.from(text, 'base64') })));
    await page.locator('[data-photos="busy"]').waitFor();
    if (from + k_batch === k_photos) await goTo(page, 'kit');  // leaving the screen loses none
    await page.locator('[data-photos="busy"]').waitFor({ state: 'detached', timeout: 120000 });
    console.log(`  batch up to ${from + k_batch}: ${((Date.now() - begin) / 1000).toFixed(1)} s, drawing and handing over included`);
    assert.equal(await page.getByRole('alert').count(), 0);
  }
  await goTo(page, 'inspect', k_sofa, 'photos');
  await page.locator('.photos li').first().waitFor();
  assert.equal(await shown(), k_photos);
});

test('after the page was opened again all are there, and each can be seen', async () => {
  await page.reload();
  await page.locator('.photos img').nth(k_photos - 1).waitFor();
  assert.equal(await shown(), k_photos);
  const broken = await page.locator('.photos img').evaluateAll(async (images) => {
    let count = 0;
    for (const image of images) {
      image.loading = 'eager';
      await image.decode().catch(() => count++);
      if (image.naturalWidth !== 1600) count++;
    }
    return count;
  });
  assert.equal(broken, 0);
});

test('the page stays usable: Record and Inspect open within a second', async () => {
  await opens('record', '[data-state-code]');
  await opens('inspect', '.list a.room');
  await opens(`inspect/${k_sofa}/photos`, '.photos li');
  await opens('record', '[data-state-code]');
  await opens('inspect', '.list a.room');
});

test('the exported file holds every photo', async () => {
  await goTo(page, 'record');
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export a .lastegg file' }).click();
  const files = unzipSync(await readFile(await (await waiting).path()));
  const photos = strFromU8(files['events.ndjson']).split('\n').filter((line) => line.includes('"photo/1"')).map((line) => JSON.parse(line));
  assert.equal(photos.length, k_photos);
  const blobs = new Set(photos.map((one) => one.data.blob));
  assert.equal(blobs.size, k_photos);
  for (const hash of blobs) {
    const bytes = files[`blobs/${hash}`];
    assert.ok(bytes, `the file has no ${hash}`);
    assert.equal(createHash('sha256').update(bytes).digest('hex'), hash);
  }
});
