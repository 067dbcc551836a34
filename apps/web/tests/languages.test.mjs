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
import { jobFile } from './job_files.mjs';
import { overflows } from './overflow.mjs';
import { k_dist, serve } from './server.mjs';
import { glance } from './treat_steps.mjs';
import { drawn, edgesWithState, goTo, k_sofa, readyForOffline, verdict } from './steps.mjs';

const k_pictures = process.env.LASTEGG_PICTURES;
const k_sentences = new URL('../../../words/data/es.json', import.meta.url);
const k_treated = new URL('../../../examples/treated_job.ndjson', import.meta.url);
const k_mattress = '0194a3c0-0000-7000-8000-00000000100a';
const k_bedroom = '0194a3c0-0000-7000-8000-000000000004';
const k_sizes = [{ width: 320, height: 640 }, k_phone, k_desk];
/** Names in the invented jobs, and titles that the engine gives parts and methods of itself. */
const k_typed = new Set(['Bedroom', 'Living room', 'Box spring', 'Night table', 'Dresser', 'Armchair', 'Ottoman', 'Back', 'Steam', 'Vacuum', 'Hot room']);
/** Where text may be cut: names a person typed, in one line of the header; the reason below a pace, of two lines. */
const k_may_be_cut = ['header .job', '.limit'];

let server, words, engine;

before(async () => {
  server = await serve();
  words = await catalogue();
  engine = await engineSays();
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

/** The same screen in daylight and on paper; what is shown otherwise is the dark look. */
async function picturesOfLooks(page, name) {
  if (!k_pictures) return;
  const wear = (look) => page.evaluate((look) => { document.documentElement.dataset.look = look; }, look);
  await wear('day');
  await drawn(page);
  await picture(page, `${name}-day`);
  await wear('dark');
  await page.emulateMedia({ media: 'print' });
  await drawn(page);
  await picture(page, `${name}-print`);
  await page.emulateMedia({ media: 'screen' });
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

test('the engine speaks Spanish, without network too', async () => {
  const { page, errors, end } = await opened('es-MX');
  await page.goto(server.url);
  await page.getByRole('button', { name: words.es.blank.demo }).click();
  await readyForOffline(page);
  await page.context().setOffline(true);
  await page.reload();
  await goTo(page, 'plan', k_sofa);
  const edge = (await edgesWithState(page)).find(({ state }) => state !== 'waiting');
  await goTo(page, 'plan', k_sofa, edge.id);
  await page.locator('article .answer').waitFor(k_first_look);
  assert.notEqual((await heard(page, engine.spanish)).length, 0, 'sentences of the engine in Spanish');
  assert.deepEqual(await heard(page, engine.english), []);
  assert.deepEqual(errors, []);
  await end();
});

test('the report page speaks the language that it states, and asks for no other file', async () => {
  const report = {
    language: 'es', title: { text: 'Informe: cuarto 3A' }, on: '2026-03-02', items: [], counts: {},
    blocks: [{ code: 'summary', heading: 'En breve', lines: [], rows: [] }],
    basis: { state_hash: 'abcdef0123', event_count: 1, engine: '0', samples: 1, effective_samples: null, data: [] },
  };
  const blank = await readFile(join(k_dist, 'report.html'), 'utf8');
  const filled = blank.replace('<html lang="en"', '<html lang="es"')
    .replace(/(<script id="report-data"[^>]*>)null/, (_all, tag) => tag + JSON.stringify({ report, furniture: {}, units: { temperature: 'C', length: 'mm' }, paper: 'A4' }));
  assert.notEqual(filled, blank);
  const { page, errors, end } = await opened('en-US');
  const asked = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.route('http://report.test/', (route) => route.fulfill({ contentType: 'text/html; charset=utf-8', body: filled }));
  await page.goto('http://report.test/');
  await page.getByRole('heading', { name: words.es.report.basis }).waitFor();
  assert.match(await page.locator('header').innerText(), /2 de mar|2 mar/);
  assert.deepEqual(asked.filter((url) => !url.startsWith('data:') && url !== 'http://report.test/'), []);
  assert.deepEqual(errors, []);
  await end();
});

const k_first_look = { timeout: 240000 };
const sheet = (page) => page.locator('dialog[open]');
const close = async (page) => { await page.keyboard.press('Escape'); await sheet(page).waitFor({ state: 'detached' }); };

/** The field screen is read at arm's length, in every language. */
async function atAGlance(page) {
  const { words: seen, buttons } = await glance(page);
  assert.ok(seen.length <= 12, `${seen.length} words: ${seen.join(' ')}`);
  assert.ok(buttons.length <= 3, `${buttons.length} buttons`);
}

function shownTexts(page) {
  return page.evaluate(() => {
    const found = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) if (walk.currentNode.parentElement.checkVisibility()) found.push(walk.currentNode.textContent.trim());
    for (const element of document.querySelectorAll('[aria-label], [title], [placeholder]')) found.push(...['aria-label', 'title', 'placeholder'].map((name) => element.getAttribute(name) ?? ''));
    return [...new Set(found)];
  });
}

/** Texts on the screen that are those of US English where the language has other ones. */
async function leftInEnglish(page, say) {
  const own = new Set(texts(say).map(([, text]) => text));
  const english = new Set(texts(words['en-US']).map(([, text]) => text).filter((text) => !own.has(text) && /\p{L}{3}/u.test(text)));
  return (await shownTexts(page)).filter((text) => english.has(text) && !k_typed.has(text));
}

/** What the engine's sentences say between their values, at least three words of it: how they are known again on the screen. */
async function engineSays() {
  const { sections } = JSON.parse(await readFile(k_sentences, 'utf8'));
  const said = (sentence) => sentence.split(/\{[^}]*\}/).map((part) => part.trim()).filter((part) => /(?:\p{L}{2,}[^\p{L}]+){2}\p{L}{2,}/u.test(part));
  const pairs = Object.values(sections).flatMap((section) => Object.entries(section));
  return { english: pairs.flatMap(([key, value]) => said(key).filter((part) => !value.includes(part))), spanish: pairs.flatMap(([, value]) => said(value)) };
}

/** Texts on the screen in which the engine is heard. Sources, which follow the word for their quality, are not translated. */
async function heard(page, parts) {
  const qualities = Object.values(words.es.qualities);
  return (await shownTexts(page)).filter((text) => !qualities.some((one) => text.startsWith(`${one} · `)) && parts.some((part) => text.includes(part)));
}

/** Places and sheets of the demo: how to come there, and how to leave again. */
const demo = (page, say) => [
  ['inspect', async () => { await goTo(page, 'inspect'); await page.locator('figure.plan').waitFor(); await page.locator('[data-verdict], .verdict').first().waitFor(); }],
  ['inspect-new-room', async () => { await page.getByRole('button', { name: say.inspect.addRoom }).click(); await sheet(page).waitFor(); }, close],
  ['inspect-room', async () => { await goTo(page, 'inspect', 'room', k_bedroom); await page.locator('section.room').waitFor(); }],
  ['inspect-kinds', async () => { await page.getByRole('button', { name: new RegExp(say.inspect.addItem) }).click(); await sheet(page).waitFor(); }, close],
  ['inspect-trap', async () => { await page.getByRole('button', { name: say.inspect.trap.add }).click(); await sheet(page).waitFor(); }, close],
  ['inspect-people', async () => { await goTo(page, 'inspect', 'people'); await page.getByText(say.inspect.people.tap).waitFor(); }],
  ['inspect-risk', async () => { await page.getByRole('button', { name: say.inspect.people.what.fuel_heater }).click(); await sheet(page).waitFor(); await sheet(page).getByText(say.inspect.people.onlyThey).waitFor(); }, close],
  ['inspect-before', async () => { await goTo(page, 'inspect', 'before'); await page.getByText(say.inspect.people.arrival).waitFor(); }],
  ['item-found', async () => { await goTo(page, 'inspect', k_sofa, 'found'); await page.getByText(say.inspect.found.looks).first().waitFor(); }],
  ['item-look', async () => { await page.getByRole('button', { name: say.inspect.found.look }).first().click(); await sheet(page).getByRole('radio', { name: say.inspect.found.results.found }).check(); }],
  ['item-lookalikes', async () => { await sheet(page).getByRole('button', { name: say.inspect.found.compare }).click(); await page.getByText(say.inspect.lookalikes.intro).waitFor(); }, async () => { await page.keyboard.press('Escape'); await page.keyboard.press('Escape'); await sheet(page).first().waitFor({ state: 'detached' }); }],
  ['item-edges', async () => { await goTo(page, 'inspect', k_sofa); await page.locator('.drawing').waitFor(); await page.locator('.list button').first().click(); await page.locator('details summary').last().click(); }],
  ['item-edge-change', async () => { await page.getByRole('button', { name: say.inspect.edge.change }).click(); await sheet(page).waitFor(); }, close],
  ['item-edge-new', async () => { await page.getByRole('button', { name: say.inspect.edge.add }).click(); await sheet(page).waitFor(); }, close],
  ['item-checks', async () => { await goTo(page, 'inspect', k_sofa, 'checks'); await page.getByText(say.inspect.cloth.dropWhy).waitFor(); }],
  ['item-photos', async () => { await goTo(page, 'inspect', k_sofa, 'photos'); await page.getByText(say.inspect.photos.take).first().waitFor(); }],
  ['item-change', async () => { await page.getByRole('button', { name: say.inspect.edit, exact: true }).click(); await sheet(page).waitFor(); }, close],
  ['kit', async () => { await goTo(page, 'kit'); await verdict(page); }],
  ['kit-recipe', async () => { await page.getByText(say.kit.recipe, { exact: true }).first().click(); }],
  ['kit-reading', async () => { await page.getByRole('button', { name: say.kit.addReading }).click(); await page.locator('#reading-pace').waitFor(); }],
  ['kit-reading-surface', async () => { await page.locator('form').getByRole('radio', { name: say.kit.readingKinds.surface }).check(); }, async () => { await page.getByRole('button', { name: say.cancel }).first().click(); }],
  ['kit-probe-gear', async () => { await page.getByRole('button', { name: new RegExp(`^${say.kit.probe}`) }).first().click(); await sheet(page).waitFor(); }, close],
  ['kit-start', async () => { await goTo(page, 'kit', 'start'); await page.getByText(say.kit.start.checks.hose_sound).waitFor(); }],
  ['kit-probe', async () => { await goTo(page, 'kit', 'probe'); await page.getByText(say.kit.probeCheck.how.melting_ice).waitFor(); }],
  ['kit-weigh', async () => { await goTo(page, 'kit', 'weigh'); await page.getByText(say.kit.weighing.how).waitFor(); }],
  ['kit-jet', async () => { await goTo(page, 'kit', 'jet'); await page.getByText(say.kit.jet.how).waitFor(); }],
  ['record', async () => { await goTo(page, 'record'); await page.locator('[data-state-code]').waitFor(); }],
];

/** The same of the invented job that was treated: three items, so that all is computed within a minute. */
const treated = (page, say) => [
  ['plan', async () => { await goTo(page, 'plan', k_mattress); await page.waitForFunction(() => document.querySelectorAll('[data-edge]').length > 0 && !document.querySelector('[data-edge][data-state="waiting"]'), null, k_first_look); }],
  ['plan-edge', async () => { await goTo(page, 'plan', k_mattress, (await edgesWithState(page)).find((edge) => edge.state === 'lethal')?.id ?? 'mattress.top_head_tape'); await page.locator('article .answer').waitFor(k_first_look); }],
  ['visit', async () => { await goTo(page, 'plan', 'visit'); await page.locator('[data-sleep]').waitFor(k_first_look); await page.locator('[data-task]').first().waitFor(k_first_look); }],
  ['visit-circuits', async () => { await page.getByRole('button', { name: `${say.visit.circuits}: ${say.visit.change}` }).click(); await sheet(page).waitFor(); }, close],
  ['visit-rates', async () => { await page.getByRole('button', { name: `${say.visit.quoteRates}: ${say.visit.change}` }).click(); await sheet(page).waitFor(); }, close],
  ['visit-methods', async () => { await goTo(page, 'plan', 'visit', 'methods'); await page.locator('[data-item] .head').first().click(k_first_look); await page.locator('[data-offer] details summary').first().click(); }],
  ['visit-left', async () => { await goTo(page, 'plan', 'visit', 'left'); await page.locator('[data-rank]').first().waitFor(k_first_look); }],
  ['visit-sheet', async () => { await goTo(page, 'plan', 'visit', 'sheet'); await page.locator('[data-sentence]').first().waitFor(k_first_look); }],
  ['treat', async () => { await goTo(page, 'treat', k_mattress); await page.locator('[data-status] button:not([disabled])').first().waitFor(k_first_look); }],
  ['treat-before', async () => { await page.locator('ul [data-edge] button:not([disabled])').last().click(); await page.locator('dialog[data-phase="before"]').waitFor(); }],
  ['treat-field', async () => { await page.getByRole('button', { name: say.treat.before.ready }).click(); await page.locator('[data-field]').waitFor(); await atAGlance(page); }],
  ['treat-more', async () => { await page.getByRole('button', { name: say.treat.field.more, exact: true }).click(); await page.getByText(say.treat.more.leave).waitFor(); }, async () => { await page.keyboard.press('Escape'); await page.keyboard.press('Escape'); await sheet(page).waitFor({ state: 'detached' }); }],
  ['prove', async () => { await goTo(page, 'prove'); await page.waitForFunction(() => document.querySelector('[data-count]') && !document.querySelector('[data-computing]'), null, k_first_look); }],
  ['prove-item', async () => { await goTo(page, 'prove', k_mattress); await page.locator('[data-edge]').first().waitFor(); await page.locator('[data-edge="mattress.top_left_tape"]').click(); }],
  ['prove-redo', async () => { await goTo(page, 'prove', 'redo'); await page.locator('[data-redo]').first().waitFor(); }],
  ['prove-explain', async () => { await page.getByRole('button', { name: say.prove.explain }).first().click(); await sheet(page).waitFor(); }, close],
  ['prove-return', async () => { await goTo(page, 'prove', 'return'); await page.locator('[data-reason]').waitFor(); }],
  ['prove-report', async () => { await goTo(page, 'prove', 'report'); await page.locator('[data-report]').waitFor(k_first_look); }],
];

// US English, in which the other tests work, is walked for its pictures alone: LASTEGG_PICTURES names the folder for them.
for (const [language, locale] of [['es', 'es-MX'], ['en-GB', 'en-GB'], ...(k_pictures ? [['en-US', 'en-US']] : [])]) {
  test(`${language}: every place and the main sheets fit`, async () => {
    const { page, errors, end } = await opened(locale);
    const say = words[language];
    const faults = [];
    async function look(name) {
      for (const size of language === 'es' || k_pictures || process.env.LASTEGG_LONG ? k_sizes : k_sizes.slice(0, 1)) {  // British words are hardly longer
        await page.setViewportSize(size);
        await drawn(page);
        faults.push(...(await overflows(page, k_may_be_cut)).map((one) => `${name} at ${size.width}: ${one}`));
        await picture(page, `${language}-${name}-${size.width}`);
      }
      await page.setViewportSize(k_phone);
      await picturesOfLooks(page, `${language}-${name}`);
      faults.push(...(await leftInEnglish(page, say)).map((one) => `${name}: "${one}" is English of the United States`));
      if (language === 'es') faults.push(...(await heard(page, engine.english)).map((one) => `${name}: "${one}" is the engine's English`));
      if (language === 'es') faults.push(...(await violations(page)).map((one) => `${name}: ${one}`));
    }
    async function walk(steps) {
      for (const [name, enter, leave] of steps) {
        try {
          await enter();
          await look(name);
          await leave?.(page);
        } catch (error) {
          faults.push(`${name}: ${error.message}`);
          await page.reload();
        }
      }
    }
    try {
      await page.goto(server.url);
      await page.getByRole('heading', { name: say.blank.title }).waitFor();
      await look('blank');
      await page.getByRole('button', { name: say.blank.demo }).click();
      await walk(demo(page, say));
      await goTo(page, 'record');
      await page.locator('input[type=file]').setInputFiles(jobFile(await readFile(k_treated, 'utf8')));
      await page.getByText(say.record.sameHash).waitFor();
      await walk(treated(page, say));
    } finally {
      await end();
    }
    assert.equal(faults.length, 0, `\n${faults.join('\n')}`);
    assert.deepEqual(errors, []);
  });
}
