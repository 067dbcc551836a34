// The slider that tries a pace: the band of temperatures follows the finger at once, and what the whole ensemble says afterwards is
// near to it. Its time is taken on this machine and stands for a phone four times as slow: the goal is 100 ms there. Absolute times
// depend on the machine: here three times the goal fails, with LASTEGG_LONG=1 the goal.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { k_phone, open, profile } from './browser.mjs';
import { share } from './reactions.mjs';
import { serve } from './server.mjs';
import { edgesWithState, goTo, k_sofa, openDemo } from './steps.mjs';

const k_slower = 4, k_goal_ms = 100;
const k_allowance = process.env.LASTEGG_LONG === '1' ? 1 : 3;
const k_most_of_width = 0.2;  // of the band's own width an end may move when it is refined
const k_whole = '1024';

let server, folder, context, page;

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone });
  page = context.pages()[0];
  await openDemo(page, server.url);
  await goTo(page, 'plan', k_sofa);
  const edge = (await edgesWithState(page)).find(({ state }) => state === 'lethal');
  await goTo(page, 'plan', k_sofa, edge.id);
  await page.locator(`[data-tried][data-samples="${k_whole}"]`).waitFor({ timeout: 240000 });
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

const band = () => page.locator('[data-band]').getAttribute('data-band').then((text) => text.split(' ').map(Number));

/** Moves the slider to a step, and waits until what is shown is of its pace and of so many samples. */
async function look(step, samples) {
  if (step !== null) await page.getByRole('slider').fill(String(step));
  await page.waitForFunction(({ k_slowest, k_fastest, samples }) => {
    const shown = document.querySelector('[data-tried]').dataset, step = Number(document.querySelector('input[type=range]').value);
    return shown.samples === samples && Math.abs(Number(shown.tried) / (k_slowest * (k_fastest / k_slowest) ** (step / 200)) - 1) < 1e-6;
  }, { k_slowest: 0.002, k_fastest: 0.045, samples }, { timeout: 60000 });
  return band();
}

/** Waits until every pace of the plan is computed in full: what is measured is the slider, not a busy machine. */
const planIsWhole = () => page.waitForFunction(() => !/\d+ of \d+ edges/.test(document.querySelector('.list [role="status"]')?.textContent ?? ''), null, { timeout: 240000 });

test('the band follows the finger', { timeout: 300000 }, async () => {
  await planIsWhole();
  const slider = page.getByRole('slider');
  await slider.scrollIntoViewIfNeeded();
  await page.evaluate(() => {
    window.followed = [];
    const slider = document.querySelector('input[type=range]'), shown = document.querySelector('[data-tried]');
    let moved = [];
    slider.addEventListener('input', () => moved.push(performance.now()), { capture: true });
    new MutationObserver(() => {
      const now = performance.now();
      // What is shown answers the first of the moves that were waiting; later ones wait for the next.
      if (moved.length > 0) window.followed.push(now - moved[0]);
      moved = moved.slice(1).slice(-1);
    }).observe(shown, { attributes: true, attributeFilter: ['data-tried'] });
  });
  const box = await slider.boundingBox();
  const x = (part) => box.x + box.width * part, y = box.y + box.height / 2;
  const value = () => slider.inputValue().then(Number);
  const from = (await value()) / 200;
  await page.mouse.move(x(0.08 + 0.84 * from), y);
  await page.mouse.down();
  for (let i = 0; i <= 40; i++) {
    await page.mouse.move(x(0.3 + 0.5 * (0.5 + 0.5 * Math.sin(i / 4))), y);
    await page.waitForTimeout(60);
  }
  await page.mouse.up();
  const followed = await page.evaluate(() => window.followed);
  const at = (part) => k_slower * share(followed, part);
  console.log(`  slider to band, four times as slow: p50 ${at(0.5).toFixed(0)}, p95 ${at(0.95).toFixed(0)} ms of ${followed.length} (goal ${k_goal_ms} ms)`);
  assert.ok(followed.length >= 25, `only ${followed.length} of 41 moves were followed`);
  assert.ok(at(0.95) <= k_goal_ms * k_allowance, `p95 ${at(0.95).toFixed(0)} ms, more than ${k_goal_ms * k_allowance}`);
});

test('what the whole ensemble says is near to the first look', { timeout: 300000 }, async () => {
  for (const step of [40, 90, 140, 175]) {
    const first = await look(step, '128');
    const whole = await look(null, k_whole);
    const width = whole[1] - whole[0];
    for (const end of [0, 1]) assert.ok(Math.abs(first[end] - whole[end]) <= k_most_of_width * width, `step ${step}: ${first} became ${whole}`);
  }
});

test('keys move it, its pace is said, and faster is colder', { timeout: 120000 }, async () => {
  const slider = page.getByRole('slider', { name: 'Try a pace' });
  const slow = await look(60, k_whole);
  assert.match(await slider.getAttribute('aria-valuetext'), /in\/s, [\d.]+ s per foot/);
  await slider.focus();
  for (let i = 0; i < 30; i++) await page.keyboard.press('ArrowRight');
  assert.equal(await slider.inputValue(), '90');
  const fast = await look(null, k_whole);
  assert.ok(fast[0] < slow[0] && fast[1] < slow[1], `${slow} became ${fast}`);
});
