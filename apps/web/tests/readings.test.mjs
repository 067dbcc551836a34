// Every kind of reading has its picture and is kept; a surface is read by gun or palm; an untested head asks as the same
// machine. Pictures go to LASTEGG_PICTURES, if that is set.
import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { k_desk, k_phone, open, profile } from './browser.mjs';
import { serve } from './server.mjs';
import { edgesWithState, goTo, k_sofa, openDemo, saved } from './steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
const k_kinds = { pass: 'Pass', stationary: 'Head at rest', coupon: 'Plate', under_real_edge: 'Real edge', surface: 'Surface' };
let server, folder, context, page;

before(async () => {
  if (k_pictures) await mkdir(k_pictures, { recursive: true });
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone });
  page = context.pages()[0];
  await openDemo(page, server.url);
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

async function look(theme) {
  await goTo(page, 'record');
  await page.getByRole('radio', { name: theme === 'day' ? 'Daylight' : 'Dark room' }).check();
  await page.waitForFunction((wanted) => document.documentElement.dataset.look === wanted, theme);
}

async function openForm() {
  await goTo(page, 'kit');
  await page.getByRole('button', { name: 'Add a reading' }).click();
  return page.locator('form');
}

async function keep(form) {
  const count = await saved(page);
  await form.getByRole('button', { name: 'Save reading' }).click();
  await page.waitForFunction((known) => Number(document.querySelector('[data-saved]').dataset.saved) > known, count);
}

for (const theme of ['dark', 'day']) {
  test(`${theme}: each kind shows its own picture and fits the screen`, async () => {
    for (const [size, viewport] of [['phone', k_phone], ['desk', k_desk]]) {
      await page.setViewportSize(viewport);
      await look(theme);
      const form = await openForm();
      for (const [kind, word] of Object.entries(k_kinds)) {
        await form.getByRole('radio', { name: word, exact: true }).check();
        await form.locator(`svg[data-picture="${kind}"]`).waitFor();
        const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        assert.ok(overflow <= 0, `${kind} at ${size} is ${overflow} px too wide`);
        if (k_pictures) await form.screenshot({ path: join(k_pictures, `reading-${kind}-${size}-${theme}.png`) });
      }
      await form.getByRole('button', { name: 'Cancel' }).click();
    }
    await page.setViewportSize(k_phone);
  });
}

test('a surface is read by gun, and by palm with a caution', async () => {
  let form = await openForm();
  await form.getByRole('radio', { name: 'Surface' }).check();
  await form.locator('#reading-pace').fill('0.6');
  await form.locator('#reading-after').fill('8');
  await form.locator('#reading-peak').fill('126');
  await keep(form);
  await page.locator('li', { hasText: 'surface, 8 s after' }).getByText('126').waitFor();

  form = await openForm();
  await form.getByRole('radio', { name: 'Surface' }).check();
  await form.getByRole('radio', { name: 'Back of the hand' }).check();
  await form.getByText('Wet cloth scalds').waitFor();
  await form.locator('#reading-pace').fill('0.6');
  await form.locator('#reading-after').fill('60');
  await form.getByRole('radio', { name: 'warm' }).check();
  await keep(form);
  const row = page.locator('li', { hasText: 'surface, 60 s after' });
  await row.getByText('warm').waitFor();
  if (k_pictures) await page.locator('.readings').screenshot({ path: join(k_pictures, 'readings-phone.png') });
  await page.locator('[data-verdict]').waitFor({ timeout: 120000 });
  assert.equal(await page.locator('[role=alert]').count(), 0, 'the engine took both');
});

test('a plan for a head without a test says that it leans on another of the machine', async () => {
  await goTo(page, 'kit');
  await page.getByRole('button', { name: 'New fold test' }).first().click();
  await page.getByRole('button', { name: /^Head/ }).click();
  await page.getByRole('dialog').getByRole('button', { name: /^Add/ }).click();
  await page.locator('#gear-title').fill('Floor head');
  await page.locator('#gear-long').fill('4');
  await page.locator('#gear-wide').fill('12');
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Use this test for the plan' }).click();
  await page.getByText('It has no readings yet').waitFor();
  await goTo(page, 'plan', k_sofa);
  const edges = await edgesWithState(page);
  await goTo(page, 'plan', k_sofa, edges.find((edge) => edge.state !== 'waiting').id);
  await page.getByText('This head is not tested').first().waitFor();
});
