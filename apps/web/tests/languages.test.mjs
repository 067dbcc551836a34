// The page in Spanish and in British English: chosen by the browser or by the person, kept, there without network; every
// place and the main sheets on narrow and wide screens, with nothing cut off, nothing wider than the screen, nothing that
// axe finds, and no word of US English left where the language has its own.
import assert from 'node:assert/strict';
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import AxeBuilder from '@axe-core/playwright';
import { k_desk, k_phone, open, profile } from './browser.mjs';
import { catalogue, texts } from './catalogue.mjs';
import { importEvents } from './job_files.mjs';
import { overflows } from './overflow.mjs';
import { serve } from './server.mjs';
import { drawn, edgesWithState, goTo, k_sofa, readyForOffline, verdict } from './steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
const k_treated = new URL('../../../examples/treated_job.ndjson', import.meta.url);
const k_mattress = '0194a3c0-0000-7000-8000-00000000100a';
const k_sizes = [{ width: 320, height: 640 }, k_phone, k_desk];
/** Where text may be cut: names a person typed, in one line of the header; the reason below a pace, of two lines. */
const k_may_be_cut = ['header .job', '.limit'];

let server, words;

before(async () => {
  server = await serve();
  words = await catalogue();
});
after(() => server?.stop());

/** The language's words, whose values the steps look for. */
async function opened(locale) {
  const folder = await profile();
  const context = await open(folder.folder, { viewport: k_phone, reducedMotion: 'reduce', locale });
  const page = context.pages()[0];
  const errors = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  return { page, context, errors, end: async () => { await context.close(); await folder.remove(); } };
}

const spoken = (page) => page.evaluate(() => document.documentElement.lang);

async function violations(page) {
  await drawn(page);
  const found = await new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true).analyze();
  return found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => `${node.target.join(' ')} ${node.any[0]?.message ?? ''}`).slice(0, 3).join(' | ')}`);
}

async function picture(page, name) {
  if (!k_pictures) return;
  await mkdir(k_pictures, { recursive: true });
  await page.screenshot({ path: join(k_pictures, `${name}.png`), fullPage: true });
}

test('the first opening follows the browser, a choice follows the person and is kept', async () => {
  for (const [locale, language] of [['en-US', 'en-US'], ['de-DE', 'en-US'], ['en-AU', 'en-GB'], ['es-MX', 'es']]) {
    const { page, end } = await opened(locale);
    const asked = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));
    await page.goto(server.url);
    await page.getByRole('heading', { name: words[language].blank.title }).waitFor();
    assert.equal(await spoken(page), language, locale);
    if (locale === 'en-US') {
      assert.ok(!asked.some((path) => /\/es-|\/en_gb-/.test(path)), `${asked.join(' ')}: US English asks for no other language`);
      await page.getByRole('button', { name: words['en-US'].blank.own }).click();
      await page.locator('#job-title').fill('Casa azul');
      await page.getByRole('radio', { name: 'Español' }).check();
      await page.getByRole('heading', { name: words.es.blank.title }).waitFor();
      assert.equal(await page.locator('#job-title').inputValue(), 'Casa azul', 'a name that was typed is not lost');
      await page.getByRole('button', { name: words.es.blank.start, exact: true }).click();
      await page.getByRole('button', { name: words.es.inspect.addRoom }).waitFor();
      await readyForOffline(page);
      await page.context().setOffline(true);
      await page.reload();
      await page.getByRole('button', { name: words.es.inspect.addRoom }).waitFor();
      await goTo(page, 'record');
      await page.getByRole('radio', { name: 'English (UK)' }).check();
      await page.getByText(words['en-GB'].record.codeNote).waitFor();
      assert.equal(await spoken(page), 'en-GB', 'without network');
      await page.waitForFunction(() => ['saved', 'safe'].includes(document.querySelector('[data-kept]')?.dataset.kept) && document.querySelector('[data-saved]').dataset.saved === '2');
    }
    await end();
  }
});

/** Places and sheets of the demo: what is looked at there, and how to come there. */
const demo = (page, say) => [
  ['inspect', async () => { await goTo(page, 'inspect'); await page.locator('figure.plan').waitFor(); }],
  ['kit', async () => { await goTo(page, 'kit'); await verdict(page); }],
];

for (const [language, locale] of [['es', 'es-MX'], ['en-GB', 'en-GB']]) {
  test(`${language}: every place and the main sheets fit`, async () => {
    const { page, errors, end } = await opened(locale);
    const say = words[language];
    const faults = [];
    async function look(name) {
      await drawn(page);
      for (const size of k_sizes) {
        await page.setViewportSize(size);
        await drawn(page);
        faults.push(...(await overflows(page, k_may_be_cut)).map((one) => `${name} at ${size.width}: ${one}`));
        await picture(page, `${language}-${name}-${size.width}`);
      }
      await page.setViewportSize(k_phone);
      faults.push(...(await violations(page)).map((one) => `${name}: ${one}`));
    }
    await page.goto(server.url);
    await page.getByRole('heading', { name: say.blank.title }).waitFor();
    await look('blank');
    await page.getByRole('button', { name: say.blank.demo }).click();
    for (const [name, enter] of demo(page, say)) {
      await enter();
      await look(name);
    }
    await end();
    assert.deepEqual(faults, []);
    assert.deepEqual(errors, []);
  });
}
