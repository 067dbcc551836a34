// How quickly the page answers a finger, and how quickly it stands without a network, with the main thread slowed four times
// as for a phone. Absolute times depend on the machine: here three times the goal fails, with LASTEGG_LONG=1 the goal.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { k_arguments, k_phone, open, profile } from './browser.mjs';
import { Reactions, share } from './reactions.mjs';
import { serve } from './server.mjs';
import { goTo, k_sofa, openDemo, readyForOffline } from './steps.mjs';
import { begun, guide, k_short_edge, openTreat } from './treat_steps.mjs';

const k_slower = 4;
const k_allowance = process.env.LASTEGG_LONG === '1' ? 1 : 3;
const k_reaction_ms = 100, k_paint_ms = 200, k_cold_ms = 2500;

let server, folder, context;

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, args: [...k_arguments, '--autoplay-policy=no-user-gesture-required'] });
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

async function slowDown(page) {
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: k_slower });
}

function told(what, values, goal, part) {
  const at = (one) => share(values, one).toFixed(0);
  console.log(`  ${what}: p50 ${at(0.5)}, p75 ${at(0.75)}, p95 ${at(0.95)} ms of ${values.length} (goal p${part * 100} ${goal} ms)`);
}

const slowest = (list, key) => [...list].sort((a, b) => b[key] - a[key]).slice(0, 8).map((one) => `    ${one[key].toFixed(0).padStart(5)} ms  ${one.name}`).join('\n');

test('a walk through all places: tap to reaction, interaction to next paint', { timeout: 400000 }, async () => {
  const page = context.pages()[0];
  const walk = await Reactions.start(page);
  await openDemo(page, server.url);
  await openTreat(page);  // the paces of the sofa are known: a technician walks with a plan that stands
  await goTo(page, 'inspect');
  await page.locator('.list a.room').first().waitFor();
  await slowDown(page);

  const nav = (name) => page.locator(`nav a.${name}`);
  const button = (name) => page.getByRole('button', { name, exact: true });
  const dialog = page.getByRole('dialog');
  const type = async (name, locator, text) => {
    await locator.focus();
    for (const key of text) await walk.step(`${name}: key ${key}`, () => page.keyboard.press(key));
  };

  for (const name of ['kit', 'plan', 'treat', 'prove', 'inspect']) await walk.tap(`place ${name}`, nav(name));

  await walk.tap('inspect: a room', page.locator('.list a.room'));
  await walk.tap('inspect: back to the home', nav('inspect'));
  await walk.tap('inspect: add an item', page.getByRole('button', { name: /^Add an item/ }));
  await walk.tap('inspect: kinds of seats', dialog.getByRole('button', { name: 'Seats' }));
  await walk.tap('inspect: close the kinds', dialog.getByRole('button', { name: 'Close' }));
  await walk.tap('inspect: the sofa', page.locator('.list li').getByRole('link', { name: /Sofa under the window/ }));
  for (const name of ['Found', 'Checks', 'Photos', 'Edges']) await walk.tap(`inspect: ${name}`, page.getByRole('main').getByRole('link', { name, exact: true }));
  await walk.tap('inspect: change the sofa', button('Change'));
  await walk.tap('inspect: one seat less', dialog.getByRole('button', { name: 'One less: Seats' }));
  await walk.tap('inspect: close the change', dialog.getByRole('button', { name: 'Close' }));

  await walk.tap('place kit again', nav('kit'));
  await walk.tap('kit: conditions', page.getByRole('button', { name: /^Start \d/ }));
  await walk.tap('kit: close the conditions', dialog.getByRole('button', { name: 'Close' }));
  await walk.tap('kit: the head', page.getByRole('button', { name: /^Head/ }));
  await walk.tap('kit: close the head', dialog.getByRole('button', { name: 'Close' }));
  await walk.tap('kit: add a reading', button('Add a reading'));
  await type('kit: pace', page.locator('#reading-pace'), '0.7');
  await type('kit: peak', page.locator('#reading-peak'), '181');
  await walk.tap('kit: save the reading', button('Save reading'));
  await button('Add a reading').waitFor();
  await walk.tap('kit: check at the start', page.locator('nav a[href="#/kit/start"]'));
  await walk.tap('kit: hose is sound', page.locator('section.stack button[aria-pressed]'));
  await walk.tap('kit: close the check', page.getByRole('main').getByRole('link', { name: 'Close' }));

  await walk.tap('place plan again', nav('plan'));
  await goTo(page, 'plan', k_sofa);
  await page.locator('[data-edge]:not([data-state="waiting"])').first().waitFor({ timeout: 120000 });
  for (let i = 0; i < 3; i++) {
    await walk.tap(`plan: edge ${i + 1}`, page.locator('[data-edge]').nth(i));
    await walk.step('plan: back from an edge', () => page.locator('article').getByRole('link').first().click());
  }
  await walk.tap('plan: the visit', page.locator('nav a[href="#/plan/visit"]'));
  await walk.tap('plan: the edges', page.locator('nav a[href="#/plan"]').last());
  await walk.tap('plan: the second item', page.locator('ul a[href^="#/plan/"]').nth(1));
  await walk.tap('plan: the first item', page.locator('ul a[href^="#/plan/"]').nth(0));

  await openTreat(page);
  await walk.tap('treat: forty minutes left', page.getByRole('radio', { name: /40/ }).locator('xpath=..'));
  await walk.tap('treat: all the time', page.locator('input[name="minutes-left"]').first().locator('xpath=..'));
  await guide(page, k_short_edge);
  await begun(page);
  for (let i = 0; i < 6; i++) {
    await page.waitForTimeout(1500);
    await walk.tap(`treat: mark ${i + 1}`, page.locator('[data-mark]'));
  }
  await walk.tap('treat: more', button('More'));
  await walk.step('treat: leave', () => page.keyboard.press('Escape'));
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });

  for (const view of ['prove/redo', 'prove/return', 'prove/report', 'prove']) {
    if (view === 'prove/redo') await walk.tap('place prove again', nav('prove'));
    await walk.tap(view, page.getByRole('main').locator(`a[href="#/${view}"]`));
  }
  await walk.tap('the record', page.locator('header a[data-kept]'));
  for (const value of ['C', 'F']) await walk.tap(`record: ${value}`, page.locator(`input[name="temperature"][value="${value}"]`).locator('xpath=..'));
  for (const value of ['day', 'dark']) await walk.tap(`record: ${value}`, page.locator(`input[name="look"][value="${value}"]`).locator('xpath=..'));

  const { reactions, paints } = await walk.figures();
  told('tap to reaction', reactions.map((one) => one.reaction), k_reaction_ms, 0.95);
  console.log(slowest(reactions, 'reaction'));
  told('interaction to next paint', paints.map((one) => one.paint), k_paint_ms, 0.75);
  console.log(slowest(paints, 'paint'));
  assert.ok(reactions.length >= walk.names.length * 0.8, `only ${reactions.length} of ${walk.names.length} steps changed the page`);
  const reaction = share(reactions.map((one) => one.reaction), 0.95), paint = share(paints.map((one) => one.paint), 0.75);
  assert.ok(reaction <= k_reaction_ms * k_allowance, `tap to reaction p95 ${reaction.toFixed(0)} ms, more than ${k_reaction_ms * k_allowance}`);
  assert.ok(paint <= k_paint_ms * k_allowance, `interaction to next paint p75 ${paint.toFixed(0)} ms, more than ${k_paint_ms * k_allowance}`);
});

test('a cold start without a network: the first place is readable', { timeout: 120000 }, async () => {
  await readyForOffline(context.pages()[0]);
  await server.stop();
  await context.setOffline(true);
  const times = [];
  for (let i = 0; i < 3; i++) {
    const page = await context.newPage();
    for (const other of context.pages()) if (other !== page) await other.close();
    await page.addInitScript(() => {
      window.folding = { begun: null, took: null };
      window.Worker = class extends Worker {
        constructor(url, options) {
          super(url, options);
          if (options?.name !== 'record') return;
          window.folding.begun = performance.now();
          this.addEventListener('message', ({ data }) => { if (data.value?.open) window.folding.took ??= performance.now() - window.folding.begun; });
        }
      };
      const look = () => {
        const room = document.querySelector('.list a.room h3'), facts = document.querySelector('.list li .title');
        if (!room?.textContent || !facts?.textContent || !/\d/.test(document.querySelector('.list')?.textContent ?? '')) return requestAnimationFrame(look);
        const channel = new MessageChannel();
        channel.port1.onmessage = () => { window.readable = performance.now(); };
        requestAnimationFrame(() => channel.port2.postMessage(null));
      };
      requestAnimationFrame(look);
    });
    await slowDown(page);
    await page.goto(`${server.url}#/inspect`);
    await page.waitForFunction(() => window.readable !== undefined && window.folding.took !== null, null, { timeout: 30000 });
    const { readable, took } = await page.evaluate(() => ({ readable: window.readable, took: window.folding.took }));
    // Workers run at full speed however much the page is slowed: what the page waits for there counts four times.
    const all = readable + (k_slower - 1) * took;
    console.log(`  readable after ${readable.toFixed(0)} ms, ${took.toFixed(0)} ms of it in the worker of the record: ${all.toFixed(0)} ms with both slowed (goal ${k_cold_ms})`);
    times.push(all);
  }
  const usual = share(times, 0.5);
  assert.ok(usual <= k_cold_ms * k_allowance, `readable after ${usual.toFixed(0)} ms, more than ${k_cold_ms * k_allowance}`);
});
