// A photo of 48 megapixels, drawn by the test: made smaller before it is kept.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { goTo, k_sofa, openDemo, saved } from './steps.mjs';

let server, folder, context, page;

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder);
  page = context.pages()[0];
  await openDemo(page, server.url);
  await goTo(page, 'inspect', k_sofa, 'photos');
  await page.locator('.take input[type=file]').waitFor();
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

/** In the page: draws a picture and hands it to the input. */
async function takeOne({ width, height }) {
  const canvas = new OffscreenCanvas(width, height);
  const paint = canvas.getContext('2d');
  paint.fillStyle = '#7a5a2b';
  paint.fillRect(0, 0, width, height);
  paint.fillStyle = '#fff';
  paint.fillRect(width / 3, height / 3, width / 7, height / 9);
  const files = new DataTransfer();
  files.items.add(new File([await canvas.convertToBlob({ type: 'image/jpeg' })], 'large.jpg', { type: 'image/jpeg' }));
  const input = document.querySelector('.take input[type=file]');
  input.files = files.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
}

test('a photo of 48 megapixels is kept at 2048 pixels', async () => {
  await page.evaluate(takeOne, { width: 8000, height: 6000 });
  await saved(page);
  const image = page.locator('.photos img').first();
  await image.waitFor();
  const size = await image.evaluate((one) => one.decode().then(() => [one.naturalWidth, one.naturalHeight]));
  assert.deepEqual(size, [2048, 1536]);
});
