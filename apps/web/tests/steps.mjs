// What a person does on the page, as steps the tests share.
export const k_sofa = '0194a3c0-0000-7000-8000-00000000000a';
export const k_verdicts = ['lethal', 'short', 'not_proven'];

/** Waits until what was changed is on the screen: a place follows its address by a picture, then every transition comes to its end; one whose element has gone has none. */
export async function drawn(page) {
  await page.evaluate(async () => {
    for (let i = 0; i < 4; i++) await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    const moving = document.getAnimations().filter((one) => one.effect?.getTiming().iterations !== Infinity);
    await Promise.allSettled(moving.map((one) => one.finished));
  });
}

export async function goTo(page, ...names) {
  await page.evaluate((hash) => { location.hash = hash; }, '#/' + names.map(encodeURIComponent).join('/'));
}

export async function openDemo(page, url) {
  await page.goto(url);
  await page.getByRole('button', { name: 'Open the demo apartment' }).click();
  await page.getByRole('link', { name: 'Sofa under the window' }).first().waitFor();
}

export async function startOwnJob(page, url, title) {
  await page.goto(url);
  await page.getByRole('button', { name: 'Start my own job' }).click();
  await page.getByLabel('Name of the job').fill(title);
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.getByRole('button', { name: 'Add a room' }).waitFor();
}

export async function saved(page) {
  await page.waitForFunction(() => ['saved', 'safe'].includes(document.querySelector('[data-kept]')?.dataset.kept));
  return Number(await page.locator('[data-saved]').getAttribute('data-saved'));
}

/** Types one reading of the open fold test, in the units that the page shows, and waits until it is said to be saved. */
export async function typeReading(page, { layers, pace, peak }) {
  const before = await saved(page);
  await page.getByRole('button', { name: 'Add a reading' }).click();
  await page.locator('form').getByRole('radio', { name: layers === 1 ? '1 layer' : '2 layers' }).check();
  await page.locator('#reading-pace').fill(String(pace));
  await page.locator('#reading-peak').fill(String(peak));
  await page.getByRole('button', { name: 'Save reading' }).click();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]').dataset.saved) > count, before);
  await page.getByRole('button', { name: 'Add a reading' }).waitFor();
}

/** The verdict of the fold test, once it is there and computed for the present readings. */
export async function verdict(page) {
  await page.locator('[aria-busy="false"] [data-verdict]').waitFor({ timeout: 120000 });
  return page.locator('[data-verdict]').getAttribute('data-verdict');
}

/** Waits until an edge of the plan has a state, and gives the ids of those that do. */
export async function edgesWithState(page) {
  await page.waitForFunction(() => document.querySelector('[data-edge]:not([data-state="waiting"])'), null, { timeout: 120000 });
  return page.locator('[data-edge]').evaluateAll((rows) => rows.map((row) => ({ id: row.dataset.edge, state: row.dataset.state })));
}

/** Waits until the service worker holds everything the page needs. */
export async function readyForOffline(page) {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    for (let i = 0; i < 200; i++) {
      const names = (await caches.keys()).filter((name) => name.includes('precache'));
      for (const name of names) {
        const urls = (await (await caches.open(name)).keys()).map((request) => request.url);
        if (urls.some((one) => one.endsWith('.wasm')) && urls.some((one) => one.includes('index.html'))) return;
      }
      await new Promise((wait) => setTimeout(wait, 100));
    }
    throw new Error('the service worker has not stored the page and its engine within 20 s');
  });
}
