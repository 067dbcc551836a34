// Times what a person's taps and keys lead to, inside the page. "Reaction": from the event to the first picture that
// shows a change of the page. "Paint": the browser's own figure for the interaction (Event Timing), which counts pictures
// even where nothing has changed; it knows nothing under 16 ms.

const k_least_ms = 16;

/** In the page, before anything else runs. */
function watch() {
  const seen = { steps: [], paints: [], now: null };
  window.reactions = seen;
  const record = (list) => {
    for (const one of list.getEntries()) {
      if (one.interactionId) seen.paints.push({ id: one.interactionId, name: one.name, start: one.startTime, duration: one.duration });
    }
  };
  const observer = new PerformanceObserver(record);
  observer.observe({ type: 'event', durationThreshold: 16, buffered: true });
  observer.observe({ type: 'first-input', buffered: true });
  seen.flush = () => { for (const one of [observer.takeRecords()]) record({ getEntries: () => one }); };

  let waiting = null;
  const begin = (event) => {
    if (!event.isTrusted || seen.now === null) return;
    waiting = { step: seen.now, start: event.timeStamp };
  };
  for (const name of ['pointerup', 'keydown']) addEventListener(name, begin, { capture: true, passive: true });
  const changed = () => {
    if (!waiting) return;
    const one = waiting;
    waiting = null;
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => seen.steps.push({ name: one.step, reaction: performance.now() - one.start });
      channel.port2.postMessage(null);
    });
  };
  const start = () => new MutationObserver(changed).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
  start();
  addEventListener('input', changed, { capture: true, passive: true });  // what is typed changes no node of the page
}

export class Reactions {
  constructor(page) {
    this.page = page;
    this.names = [];
  }

  static async start(page) {
    await page.addInitScript(watch);
    return new Reactions(page);
  }

  /** Does one thing under a name, and waits until the page has come to rest after it. */
  async step(name, act) {
    this.names.push(name);
    const begin = await this.page.evaluate((name) => {
      window.reactions.now = name;
      return performance.now();
    }, name);
    await act();
    await this.page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 150)))));
    await this.page.evaluate(({ name, begin }) => {
      window.reactions.flush();
      for (const one of window.reactions.paints) if (one.start >= begin && one.step === undefined) one.step = name;
      window.reactions.now = null;
    }, { name, begin });
  }

  async tap(name, locator) {
    await locator.first().scrollIntoViewIfNeeded();
    await this.step(name, () => locator.first().click());
  }

  /** [{name, reaction}] and [{name, paint}], ms: an interaction under the browser's threshold counts with it. */
  async figures() {
    const { steps, paints } = await this.page.evaluate(() => ({ steps: window.reactions.steps, paints: window.reactions.paints }));
    const largest = new Map();
    for (const { id, step, duration } of paints) {
      if (step === undefined) continue;
      const known = largest.get(id);
      if (!known || known.paint < duration) largest.set(id, { name: step, paint: duration });
    }
    const reported = [...largest.values()];
    const quick = this.names.filter((name) => !reported.some((one) => one.name === name)).map((name) => ({ name, paint: k_least_ms }));
    return { reactions: steps, paints: [...reported, ...quick] };
  }
}

export function share(values, part) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(part * sorted.length) - 1)];
}
