// A tab, or the whole browser, killed at random moments while facts are being written: whatever the page had said was
// saved is there afterwards. 500 moments with LASTEGG_LONG=1, else 25; LASTEGG_KILLS asks for another count. The moments come
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { test } from 'node:test';
import { chromium } from 'playwright-core';
import { k_arguments, k_path, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { goTo, saved, startOwnJob } from './steps.mjs';

const k_moments = Number(process.env.LASTEGG_KILLS ?? (process.env.LASTEGG_LONG === '1' ? 500 : 25));
const k_seed = Number(process.env.LASTEGG_SEED ?? 20260302);

function generator(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

async function start(folder) {
  const child = spawn(k_path, [...k_arguments, '--headless=new', '--remote-debugging-port=0', `--user-data-dir=${folder}`, 'about:blank'], { stdio: ['ignore', 'ignore', 'pipe'] });
  const address = await new Promise((found, failed) => {
    let told = '';
    child.stderr.on('data', (data) => {
      told += data;
      const match = /DevTools listening on (ws:\S+)/.exec(told);
      if (match) found(match[1]);
    });
    child.once('exit', () => failed(new Error(`the browser ended: ${told.slice(-400)}`)));
  });
  const browser = await chromium.connectOverCDP(address);
  const context = browser.contexts()[0];
  return { child, browser, context, page: context.pages()[0] ?? (await context.newPage()) };
}

async function end(child) {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((done) => child.once('exit', done));
  child.kill('SIGKILL');
  await gone;
}

/** In the page: writes readings as fast as it says they are saved, and tells every count that was said to be saved. */
function writeFast() {
  const set = (id, text) => {
    const input = document.getElementById(id);
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
  };
  const said = () => Number(document.querySelector('[data-saved]').dataset.saved);
  const named = (name) => [...document.querySelectorAll('main button')].find((button) => button.textContent.trim() === name);
  const until = async (ready) => {
    while (!ready()) await new Promise((wait) => setTimeout(wait, 1));
  };
  window.writing = (async () => {
    for (let i = 0; ; i++) {
      await until(() => named('Add a reading'));
      named('Add a reading').click();
      await until(() => document.getElementById('reading-pace'));
      set('reading-pace', String(1 + (i % 9) / 10));
      set('reading-peak', String(150 + (i % 30)));
      const count = said();
      named('Save reading').click();
      await until(() => said() > count);
      console.log(`said-saved ${said()}`);
    }
  })();
}

test(`${k_moments} kills at random moments: no fact that was said to be saved is lost`, { timeout: 1800000 }, async (t) => {
  const random = generator(k_seed);
  const server = await serve();
  const folder = await profile();
  let running = await start(folder.folder);
  let lost = 0, most = 0, tabs = 0, browsers = 0;
  try {
    await startOwnJob(running.page, server.url, 'Killed often');
    await goTo(running.page, 'kit');
    await running.page.getByRole('button', { name: 'New fold test' }).first().click();
    await running.page.getByRole('button', { name: 'Add a reading' }).waitFor();
    most = await saved(running.page);
    for (let moment = 0; moment < k_moments; moment++) {
      const { page, context } = running;
      page.on('console', (message) => {
        const match = /^said-saved (\d+)$/.exec(message.text());
        if (match) most = Math.max(most, Number(match[1]));
      });
      await page.evaluate(writeFast);
      await new Promise((wait) => setTimeout(wait, 20 + random() * 700));
      if (moment % 2 === 0) {
        tabs++;
        const session = await context.newCDPSession(page);
        session.send('Page.crash').catch(() => {});
        await page.waitForEvent('crash', { timeout: 20000 });
        running = { ...running, page: await context.newPage() };
        await page.close().catch(() => {});
      } else {
        browsers++;
        await end(running.child);
        running = await start(folder.folder);
      }
      await running.page.goto(`${server.url}#/kit`);
      const there = await saved(running.page);
      if (there < most) lost += most - there;
      most = Math.max(most, there);
      await running.page.getByRole('button', { name: 'Add a reading' }).waitFor();
    }
    t.diagnostic(`${tabs} tabs and ${browsers} browsers killed; ${most} facts at the end; ${lost} lost`);
    assert.equal(lost, 0);
    assert.ok(most > k_moments, 'facts were written between the kills');
  } finally {
    await end(running.child);
    await server.stop();
    await folder.remove();
  }
});
