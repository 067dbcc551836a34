// What the first visit takes through the network, packed as `lastegg serve` packs it: everything until the page works
// offline, the service worker's store included, with the demo open and every place seen once.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { open, profile } from './browser.mjs';
import { countedServer } from './counted_server.mjs';
import { edgesWithState, goTo, openDemo, readyForOffline } from './steps.mjs';

const k_most_bytes = 1.2e6;
const k_places = ['inspect', 'kit', 'plan', 'treat', 'prove', 'record'];
const k_quiet_ms = 2000;

let server, folder, context;

before(async () => {
  server = await countedServer();
  folder = await profile();
  context = await open(folder.folder);
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

/** Resolves when nothing has been asked for a while. */
async function quiet() {
  for (let seen = -1; seen !== server.answers.length;) {
    seen = server.answers.length;
    await new Promise((wait) => setTimeout(wait, k_quiet_ms));
  }
}

test('the first visit takes at most 1.2 MB through the network', async () => {
  const page = context.pages()[0];
  await openDemo(page, server.url);
  await readyForOffline(page);
  for (const name of k_places) {
    await goTo(page, name);
    await page.locator(`nav a.${name}[aria-current]`).waitFor({ state: 'attached' });
  }
  await goTo(page, 'plan');
  await edgesWithState(page);
  await quiet();

  const files = new Map();
  for (const { path, bytes } of server.answers) {
    const known = files.get(path) ?? { bytes: 0, times: 0 };
    files.set(path, { bytes: known.bytes + bytes, times: known.times + 1 });
  }
  const rows = [...files].sort(([, a], [, b]) => b.bytes - a.bytes);
  for (const [path, { bytes, times }] of rows) console.log(`  ${String(bytes).padStart(8)} B  ${times} x  ${path}`);
  const sum = rows.reduce((total, [, { bytes }]) => total + bytes, 0);
  console.log(`  ${String(sum).padStart(8)} B  in ${server.answers.length} answers`);

  const asked = (part) => rows.some(([path]) => path.includes(part));
  for (const part of ['.wasm', 'sw.js', '.css', 'record.worker', 'compute.worker', 'apartment.ndjson', '.woff2']) assert.ok(asked(part), `${part} was never asked for: this was no first visit`);
  assert.ok(sum <= k_most_bytes, `the first visit took ${sum} bytes, more than ${k_most_bytes}`);
});
