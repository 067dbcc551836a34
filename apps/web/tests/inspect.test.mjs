// Inspect as a technician uses it: an item in three taps, its edges changed and changed back, looks counted without typing,
// a photo kept, traps and hazards; nothing wider than 320 px and nothing axe finds, in both looks.
import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { deflateSync } from 'node:zlib';
import AxeBuilder from '@axe-core/playwright';
import { k_desk, k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { drawn, goTo, k_sofa, openDemo, saved, startOwnJob } from './steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
const k_bedroom = '0194a3c0-0000-7000-8000-000000000004';
let server, folder, context, page;
const errors = [];

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, reducedMotion: 'reduce' });
  page = context.pages()[0];
  page.on('pageerror', (error) => errors.push(String(error)));
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

/** A PNG of two colors, written here byte by byte: RFC 2083. */
function png(width, height) {
  const table = Array.from({ length: 256 }, (_, n) => { let c = n; for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1; return c >>> 0; });
  const crc = (bytes) => { let c = 0xffffffff; for (const byte of bytes) c = table[(c ^ byte) & 0xff] ^ (c >>> 8); return (c ^ 0xffffffff) >>> 0; };
  const chunk = (type, data) => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
    const out = Buffer.alloc(body.length + 8);
    out.writeUInt32BE(data.length, 0);
    body.copy(out, 4);
    out.writeUInt32BE(crc(body), body.length + 4);
    return out;
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const rows = Buffer.alloc(height * (1 + 3 * width));
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) rows.set(x + y > width ? [214, 180, 120] : [60, 40, 30], y * (1 + 3 * width) + 1 + 3 * x);
  return Buffer.concat([Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]), chunk('IHDR', head), chunk('IDAT', deflateSync(rows)), chunk('IEND', Buffer.alloc(0))]);
}

/** Taps and counts. */
function tapping() {
  let taps = 0;
  return { tap: async (locator) => { taps++; await locator.click(); }, get taps() { return taps; } };
}

async function picture(name) {
  if (!k_pictures) return;
  await mkdir(k_pictures, { recursive: true });
  await page.screenshot({ path: join(k_pictures, `${name}.png`), fullPage: !(await page.getByRole('dialog').count()) });
}

test('an item is added in three taps and opens with its edges', async () => {
  await startOwnJob(page, server.url, 'Trial of Inspect');
  await page.getByRole('button', { name: 'Add a room' }).click();
  await page.getByRole('radio', { name: 'Bedroom' }).check();
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  const before = await saved(page);
  const hand = tapping();
  await hand.tap(page.getByRole('button', { name: 'Add an item: Bedroom' }));
  await hand.tap(page.getByRole('button', { name: 'Seats' }));
  await hand.tap(page.locator('[data-kind="armchair"]'));
  await page.getByRole('link', { name: /Armchair/ }).first().waitFor();
  assert.ok(hand.taps <= 3, `${hand.taps} taps`);
  assert.equal(await saved(page), before + 1, 'one fact');
});

test('every kind of the catalogue stands on a tile of 20 mm with a drawing', async () => {
  await page.getByRole('button', { name: 'Add an item: Bedroom' }).click();
  let count = 0;
  for (const group of ['Beds', 'Seats', 'Storage', 'Small things', 'Room parts']) {
    await page.getByRole('dialog').getByRole('button', { name: group }).click();
    await page.waitForFunction(() => [...document.querySelectorAll('[data-kind]')].every((tile) => tile.querySelector('polygon')));
    count += await page.locator('[data-kind]').count();
    for (const height of await page.locator('[data-kind]').evaluateAll((tiles) => tiles.map((tile) => tile.getBoundingClientRect().height))) assert.ok(height >= 126, `${height} px`);
    await picture(`inspect-add-${group.toLowerCase().replace(' ', '-')}-phone-dark`);
  }
  assert.equal(count, 36);
  await page.getByRole('button', { name: 'Close' }).click();
});

test('a measure outside its limits is refused with value, limit, unit and place', async () => {
  await page.locator('.list li').getByRole('link', { name: /Armchair/ }).click();
  await page.locator('.drawing').waitFor();
  await page.getByRole('button', { name: 'Change', exact: true }).click();
  await picture('inspect-change-phone-dark');
  await page.locator('#width_metres').fill('900');
  const told = await page.locator('#width_metres-hint').innerText();
  assert.match(told, /Width: 900 in is above the most, [\d.]+ in\./);
  assert.ok(await page.getByRole('dialog').getByRole('button', { name: 'Save' }).isDisabled());
  await page.locator('#width_metres').fill('');
  await page.getByRole('button', { name: 'More: Width' }).click();
  assert.match(await page.locator('#width_metres').inputValue(), /^\d+(\.\d)?$/);
  await page.getByRole('radio', { name: 'cotton' }).check();
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
});

test('edges: added, split, left out, and undone', async () => {
  const count = () => page.locator('.list ul li button[aria-pressed]').count();
  const settled = (number) => page.waitForFunction((wanted) => document.querySelectorAll('.list ul li button[aria-pressed]').length === wanted, number);
  await page.getByRole('button', { name: /^Show all/ }).click();
  const own = await count();
  assert.ok(own > 10);
  await page.getByRole('button', { name: 'Add an edge' }).click();
  await page.getByRole('radio', { name: 'zip', exact: true }).check();
  await page.locator('#edge-title').fill('Zip of a cover');
  await page.getByRole('dialog').getByRole('button', { name: 'Add an edge' }).click();
  await settled(own + 1);
  await page.getByRole('button', { name: /^Zip of a cover/ }).click();
  await page.locator('.facts').waitFor();
  await page.getByRole('button', { name: /^Zip of a cover/ }).click();
  await page.locator('.list ul li button[aria-pressed]').first().click();
  await page.getByRole('button', { name: 'Change edge' }).click();
  await picture('inspect-edge-phone-dark');
  await page.getByRole('button', { name: 'Split in two' }).click();
  await settled(own + 2);
  const lines = await page.locator('.drawing polyline.edge').count();
  await page.locator('.list ul li button[aria-pressed]').nth(5).click();
  await page.getByRole('button', { name: 'Change edge' }).click();
  await page.getByRole('button', { name: 'Leave out' }).click();
  await settled(own + 1);
  assert.ok(lines > 0);
  for (let left = 3; left > 0; left--) {
    await page.getByRole('button', { name: /^Undo:/ }).last().click();
    await page.waitForFunction((wanted) => [...document.querySelectorAll('button')].filter((one) => one.getAttribute('aria-label')?.startsWith('Undo:')).length === wanted, left - 1);
  }
  await settled(own);
});

test('a look at an edge: counted with buttons, and the survey follows', async () => {
  await page.locator('.list ul li button[aria-pressed]').first().click();
  await page.getByRole('button', { name: 'What did you find?' }).click();
  await page.getByRole('radio', { name: 'Found', exact: true }).check();
  await page.getByRole('button', { name: 'One more: Adults' }).click();
  for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'One more: Nymphs' }).click();
  await page.getByRole('radio', { name: 'Sure', exact: true }).check();
  await page.getByRole('button', { name: 'Compare look-alikes' }).click();
  await page.getByRole('heading', { name: 'Bat bug' }).waitFor();
  await picture('inspect-lookalikes-phone-dark');
  assert.deepEqual(await violations(), []);
  await page.getByRole('button', { name: 'Close' }).last().click();
  await picture('inspect-look-phone-dark');
  await page.getByRole('button', { name: 'Save look' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.getByText('1 adult · 3 nymphs').first().waitFor();
  await goTo(page, 'inspect');
  await page.locator('[data-level="confirmed"]').waitFor();
  assert.match(await page.locator('.verdict').innerText(), /12 or fewer counted/);
});

test('a photo is kept, shown again, and said to show damage', async () => {
  await page.locator('.list li').getByRole('link', { name: /Armchair/ }).click();
  await page.getByRole('link', { name: 'Photos' }).click();
  await page.locator('.take input[type=file]').setInputFiles({ name: 'seat.png', mimeType: 'image/png', buffer: png(320, 240) });
  const photo = page.locator('.photos img');
  await photo.waitFor();
  assert.ok(await photo.evaluate((image) => image.decode().then(() => image.naturalWidth === 320)));
  await page.getByText('Note damage').click();
  await page.getByRole('button', { name: 'torn' }).click();
  await page.getByText('Damage from before: torn').waitFor();
  await picture('inspect-photo-kept-phone-dark');
  await page.locator('.take input[type=file]').setInputFiles({ name: 'no.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
  await page.getByRole('alert').getByText('not a picture').waitFor();
});

test('the water drop: the watch runs, what follows is said', async () => {
  await page.getByRole('link', { name: 'Checks' }).click();
  await page.getByRole('button', { name: 'Drop is on: start' }).click();
  await page.getByRole('timer').waitFor();
  assert.ok(await page.getByRole('button', { name: 'It still stands' }).isDisabled(), 'a minute has to pass');
  await page.getByRole('button', { name: 'It soaked in' }).click();
  await page.getByRole('heading', { name: 'What follows' }).waitFor();
  await page.getByRole('radio', { name: 'Film, foam or glue' }).check();
  await page.getByText('the back is coated').waitFor();
  await picture('inspect-drop-phone-dark');
});

test('a room: moved by buttons as by drag, a trap placed by tap and checked', async () => {
  await goTo(page, 'inspect');
  await page.getByRole('link', { name: 'Open Bedroom' }).click();
  const before = await saved(page);
  await page.getByRole('button', { name: 'Move Armchair' }).click();
  for (let i = 0; i < 4; i++) await page.getByRole('button', { name: 'To the near wall' }).click();
  await page.getByRole('button', { name: 'Turn a quarter' }).click();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]').dataset.saved) > count, before);
  assert.equal(await saved(page), before + 1, 'five presses, one fact');
  await page.evaluate(() => scrollTo(0, 0));
  const box = await page.locator('.plan [data-item] .item').first().boundingBox();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 40, box.y + box.height / 2 + 20, { steps: 4 });
  await page.mouse.up();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]').dataset.saved) > count, before + 1);
  await page.getByRole('button', { name: 'Place a trap on the plan' }).click();
  await page.evaluate(() => scrollTo(0, 0));
  const seen = await page.locator('.plan .floor').boundingBox();
  await page.mouse.click(seen.x + seen.width * 0.8, seen.y + seen.height * 0.85);
  await page.getByRole('button', { name: 'Save trap' }).click();
  await page.getByRole('button', { name: 'Check this trap: Trap 1' }).click();
  await page.getByRole('button', { name: 'One more: Nymphs' }).click();
  await page.getByRole('button', { name: 'Save check' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.locator('.traps').getByText('1 nymph').waitFor();
});

test('a hazard says who decides and is shown as a hard stop', async () => {
  await goTo(page, 'inspect', 'people');
  await page.getByRole('button', { name: 'Sprinklers' }).click();
  await page.getByRole('dialog').getByText('Who decides').waitFor();
  assert.match(await page.getByRole('dialog').innerText(), /135 °F to 171 °F|135 to 171 °F|fire authority/);
  assert.equal(await page.getByRole('dialog').getByRole('radio', { name: 'occupant' }).count(), 0, 'the occupant cannot settle a sprinkler');
  await picture('inspect-hazard-phone-dark');
  await page.getByRole('button', { name: 'Done' }).click();
  await goTo(page, 'inspect');
  await page.locator('.caution.hard').waitFor();
  await goTo(page, 'inspect', 'before');
  await page.getByRole('radio', { name: 'Not prepared' }).check();
  await page.getByRole('radio', { name: 'Come again' }).check();
  await page.getByRole('group', { name: 'Heat a room' }).getByRole('radio', { name: 'No', exact: true }).check();
  await page.getByText('Refused: Heat a room').waitFor();
  assert.deepEqual(errors, []);
});

async function violations() {
  await drawn(page);
  const found = await new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true).analyze();
  return found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).slice(0, 3).join(' | ')}`);
}

const k_screens = [
  ['home', ['inspect'], '.verdict'], ['room', ['inspect', 'room', k_bedroom], '.traps'], ['edges', ['inspect', k_sofa], '.drawing'], ['found', ['inspect', k_sofa, 'found'], 'h2'],
  ['checks', ['inspect', k_sofa, 'checks'], 'h2'], ['photos', ['inspect', k_sofa, 'photos'], '.take'], ['people', ['inspect', 'people'], '.pick'], ['before', ['inspect', 'before'], '.before'],
];

async function enter([, names, wanted]) {
  await goTo(page, ...names);
  await page.locator(wanted).first().waitFor();
  await page.waitForTimeout(150);
}

test('the demo: axe finds nothing, in both looks, on phone and desk; 320 px do not scroll sideways; controls are large', async () => {
  const other = await serve();
  try {
    await openDemo(page, other.url);
    for (const theme of ['dark', 'day']) {
      await goTo(page, 'record');
      await page.getByRole('radio', { name: theme === 'day' ? 'Daylight' : 'Dark room' }).check();
      for (const [size, viewport] of [['phone', k_phone], ['desk', k_desk], ['small', { width: 320, height: 640 }]]) {
        await page.setViewportSize(viewport);
        for (const screen of k_screens) {
          await enter(screen);
          const { wide, room } = await page.evaluate(() => ({ wide: document.scrollingElement.scrollWidth, room: innerWidth }));
          assert.ok(wide <= room, `${screen[0]} is ${wide} px wide on ${room} px`);
          if (size === 'small') continue;
          // The desk holds the same parts in other columns: one look of it is enough for axe.
          if (size === 'phone' || theme === 'dark') assert.deepEqual(await violations(), [], `${screen[0]} in ${theme} at ${size}`);
          await picture(`inspect-${screen[0]}-${size}-${theme}`);
        }
      }
    }
  } finally {
    await other.stop();
  }
  assert.deepEqual(errors, []);
});
