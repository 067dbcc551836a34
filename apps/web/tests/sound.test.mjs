// The beats as they leave the page: a tap on the graph's output keeps every sample, onsets are found in the samples and
// held against the planned times on the audio clock, while long tasks keep the page busy. 30 s; 10 min with LASTEGG_LONG=1.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { k_arguments, k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { openDemo } from './steps.mjs';
import { begun, guide, now, openTreat } from './treat_steps.mjs';

const k_seconds = process.env.LASTEGG_LONG ? 600 : 30;
const k_most_error_ms = 5;
const k_busy_ms = 180, k_rest_ms = 20;
const k_threshold = 0.08, k_silence_seconds = 0.05;
let server, folder, context, page;

/** Runs in the page before anything else: whatever goes to the output also goes through a tap. */
function layTap() {
  const tap = `
    class Tap extends AudioWorkletProcessor {
      constructor() { super(); this.quiet = 1e9; this.count = 0; this.first = null; this.next = null; this.holes = 0; }
      process([input]) {
        if (this.first === null) this.first = currentFrame;
        if (this.next !== null && currentFrame !== this.next) this.holes++;
        this.next = currentFrame + 128;
        const samples = input[0];
        this.count += 128;
        for (let i = 0; i < 128; i++) {
          const loud = samples ? Math.abs(samples[i]) : 0;
          if (loud > ${k_threshold}) {
            if (this.quiet > ${k_silence_seconds} * sampleRate) this.port.postMessage({ frame: currentFrame + i, holes: this.holes });
            this.quiet = 0;
          } else this.quiet++;
        }
        return true;
      }
    }
    registerProcessor('tap', Tap);`;
  const url = URL.createObjectURL(new Blob([tap], { type: 'text/javascript' }));
  window.heard = { onsets: [], holes: 0, rate: 0, context: null };
  const connect = AudioNode.prototype.connect;
  AudioNode.prototype.connect = function (to, ...rest) {
    if (to instanceof AudioDestinationNode) {
      const context = this.context;
      Object.assign(window.heard, { rate: context.sampleRate, context });
      void context.audioWorklet.addModule(url).then(() => {
        const node = new AudioWorkletNode(context, 'tap', { numberOfOutputs: 0 });
        node.port.onmessage = ({ data }) => {
          window.heard.onsets.push(data.frame / context.sampleRate);
          window.heard.holes = data.holes;
        };
        connect.call(this, node);
      });
    }
    return connect.call(this, to, ...rest);
  };
}

/** An edge whose row shows such a pace: `in/s` where the head glides, `hold` where it is placed. */
async function edgeWithPace(word) {
  const found = await page.waitForFunction((wanted) => [...document.querySelectorAll('ul [data-edge]')].find((row) => row.querySelector('.pace').textContent.includes(wanted))?.dataset.edge, word, { timeout: 120000 });
  return found.jsonValue();
}

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone, args: [...k_arguments, '--autoplay-policy=no-user-gesture-required'] });
  page = context.pages()[0];
  const source = layTap.toString().replaceAll('${k_threshold}', String(k_threshold)).replaceAll('${k_silence_seconds}', String(k_silence_seconds));
  await page.addInitScript(`(${source})()`);
  await openDemo(page, server.url);
  await openTreat(page);
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

test(`beats of ${k_seconds} s on a busy page: p99 error at most ${k_most_error_ms} ms, none missing, none added`, async () => {
  await guide(page, await edgeWithPace('in/s'));
  await begun(page);
  const planned = await now(page);
  assert.equal(planned.style, 'glide');
  const began = Number(planned.began), cycle = Number(planned.cycle);
  assert.ok(cycle >= 0.5 && cycle <= 2, `a beat every ${cycle} s`);
  const wall = Date.now(), audio = await page.evaluate(() => window.heard.context.currentTime);
  await page.evaluate(({ busy, rest }) => {
    window.tasks = 0;
    const work = () => {
      for (const from = performance.now(); performance.now() - from < busy;) window.tasks += 1e-9;
      window.tasks += 1;
      window.again = setTimeout(work, rest);
    };
    work();
  }, { busy: k_busy_ms, rest: k_rest_ms });
  await page.waitForTimeout(k_seconds * 1000);
  const heard = await page.evaluate(() => {
    clearTimeout(window.again);
    return { onsets: window.heard.onsets, holes: window.heard.holes, until: window.heard.context.currentTime, tasks: Math.floor(window.tasks) };
  });
  assert.ok(heard.tasks > k_seconds, `the page ran ${heard.tasks} long tasks`);
  const last = Math.floor((heard.until - 0.3 - began) / cycle);
  const ends = Number(planned.planned);
  const errors = [], missing = [];
  for (let beat = 0; beat <= last; beat++) {
    const time = began + beat * cycle;
    const nearest = heard.onsets.reduce((best, one) => (Math.abs(one - time) < Math.abs(best - time) ? one : best), Infinity);
    if (Math.abs(nearest - time) > cycle / 4) missing.push(beat);
    else errors.push(Math.abs(nearest - time) * 1000);
  }
  const extra = heard.onsets.filter((one) => one > began - 0.2 && Math.abs(one - began - Math.round((one - began) / cycle) * cycle) > cycle / 4 && Math.abs(one - began - ends) > 0.4);
  errors.sort((p, q) => p - q);
  const p99 = errors[Math.ceil(errors.length * 0.99) - 1];
  console.log(`# ${errors.length} beats, ${cycle.toFixed(3)} s apart, ${heard.tasks} tasks of ${k_busy_ms} ms: median ${errors[errors.length >> 1].toFixed(2)} ms, p99 ${p99.toFixed(2)} ms, worst ${errors.at(-1).toFixed(2)} ms; ${heard.holes} holes; audio clock ${(heard.until - audio).toFixed(2)} s in ${((Date.now() - wall) / 1000).toFixed(2)} s of wall clock`);
  assert.deepEqual(missing, [], 'beats that were not heard');
  assert.deepEqual(extra, [], 'sounds that nobody planned');
  assert.ok(last * cycle >= 0.9 * (k_seconds - 1), `only ${last} beats: the audio clock stood still`);
  assert.ok(p99 <= k_most_error_ms, `p99 ${p99} ms`);
  assert.ok(Math.abs(heard.until - audio - (Date.now() - wall) / 1000) < 0.02 * k_seconds + 0.5, 'the audio clock keeps time with the wall clock');
});

test('place, hold, move: every place is announced, every move cue comes at the end of the hold', async () => {
  await page.keyboard.press('Escape');
  await page.locator('dialog').waitFor({ state: 'detached' });
  await guide(page, await edgeWithPace('hold'));
  await begun(page);
  const planned = await now(page);
  assert.equal(planned.style, 'place_hold_move');
  const began = Number(planned.began), cycle = Number(planned.cycle);
  await page.waitForTimeout((cycle + 1) * 1000);
  const onsets = await page.evaluate(() => window.heard.onsets);
  const at = (time) => onsets.some((one) => Math.abs(one - time) * 1000 <= k_most_error_ms);
  assert.ok(at(began), 'the first place');
  assert.ok(at(began + cycle - 1), 'the move cue, one second before the next place');
  assert.ok(at(began + cycle), 'the second place');
  for (const left of [3, 2, 1]) assert.ok(at(began + cycle - 1 - left), `the count of the last ${left} s`);
});

test('an output that the system takes away interrupts the edge, and the next start asks for it again', async () => {
  await page.evaluate(() => window.heard.context.suspend());
  await page.locator('dialog[data-phase="interrupted"]').waitFor();
  await page.getByRole('img', { name: 'no sound' }).waitFor();
  await begun(page);
  await page.waitForFunction(() => window.heard.context.state === 'running');
});
