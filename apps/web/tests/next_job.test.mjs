// The firm's kit in the next job: offered, taken with one tap, nothing of the other home with it; the age of its fold test and
// when that is due. The earlier job is the demo's facts, said not to be invented for the test's sake.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { strFromU8, unzipSync } from 'fflate';
import { k_phone, open, profile } from './browser.mjs';
import { jobFile } from './job_files.mjs';
import { k_dist, serve } from './server.mjs';
import { drawn, edgesWithState, goTo, k_sofa, saved } from './steps.mjs';

const k_demo = '0194a3c0-0000-7000-8000-000000000001';  // the demo's job, and the one made of it here
const k_earlier = '0194a3c0-0000-7000-8000-0000000000f1';
const k_weaker = '0194a3c0-0000-7000-8000-0000000000f2';
const k_fold_test = '0194a3c0-0000-7000-8000-00000000001e';
const k_later_test = '0194a3c5-0000-7000-8000-00000000001e';
const k_test_day = '2025-01-26';
let server, folder, context, page;

before(async () => {
  server = await serve();
  folder = await profile();
  context = await open(folder.folder, { viewport: k_phone });
  page = context.pages()[0];
  await page.clock.setFixedTime(new Date('2025-02-10T12:00:00Z'));
});

after(async () => {
  await context?.close();
  await server?.stop();
  await folder?.remove();
});

async function factsOfTheFile() {
  await goTo(page, 'record');
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export a .lastegg file' }).click();
  const files = unzipSync(await readFile(await (await waiting).path()));
  return strFromU8(files['events.ndjson']).trim().split('\n').map((line) => JSON.parse(line));
}

async function due(wanted) {
  await goTo(page, 'kit');
  await page.locator(`[data-due="${wanted}"]`).waitFor();
}

test('a first job, and a job after an invented one, is offered no kit', async () => {
  await page.goto(server.url);
  await page.getByRole('button', { name: 'Start my own job' }).click();
  await page.getByLabel('Name of the job').fill('First job');
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.getByRole('button', { name: 'Add a room' }).waitFor();
  await goTo(page, 'record');
  await page.getByRole('button', { name: 'Demo job' }).click();
  await page.getByRole('link', { name: 'Sofa under the window' }).first().waitFor();
  await goTo(page, 'record');
  await page.getByRole('button', { name: 'New job' }).click();
  await page.getByLabel('Name of the job').fill('Second job');
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.getByRole('button', { name: 'Add a room' }).waitFor();
  await goTo(page, 'kit');
  await page.getByRole('button', { name: 'New fold test' }).first().waitFor();
  await page.waitForTimeout(500);
  assert.equal(await page.locator('.take-kit').count(), 0);
});

test('a new job takes the kit of the last job with one tap; the home stays behind', async () => {
  const demo = await readFile(`${k_dist}demo/apartment.ndjson`, 'utf8');
  // Other ids than the demo's events, which this browser holds already.
  const events = demo.replaceAll(',"invented":true', '').replaceAll('0194a3c1-', '0194a3c2-').replaceAll(k_demo, k_earlier)
    .replace('"Demo apartment 2B"', '"Elm Street, the attic"').replace('"power_watts"', '"note":"left with the neighbor","power_watts"');
  await goTo(page, 'record');
  await page.locator('input[type=file]').setInputFiles(jobFile(events));
  await page.locator('.jobs li', { hasText: 'Elm Street' }).waitFor();
  await page.getByRole('button', { name: 'New job' }).click();
  await page.getByLabel('Name of the job').fill('Next job');
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.getByRole('button', { name: 'Take the kit from Elm Street, the attic' }).waitFor();
  await drawn(page);
  assert.match(await page.locator('.take-kit').innerText(), /1 machine, 1 head, 1 fold test, the last of Jan 26, 2025/);
  const count = await saved(page);
  await page.getByRole('button', { name: 'Take the kit from Elm Street, the attic' }).click();
  await page.locator('.take-kit').waitFor({ state: 'detached' });
  assert.ok((await saved(page)) > count + 10);

  const facts = await factsOfTheFile();
  const kinds = new Set(facts.map((one) => one.kind));
  assert.deepEqual([...kinds].sort(), ['fold_test/1', 'head/1', 'job/1', 'machine/1', 'probe/1', 'probe_check/1', 'rates/1', 'reading/1', 'settings/1', 'towel/1', 'vacuum/1', 'weighing/1']);
  const [foldTest] = facts.filter((one) => one.kind === 'fold_test/1');
  assert.equal(foldTest.data.on, k_test_day);
  assert.equal(foldTest.data.elevation_metres, 200);
  assert.equal(foldTest.data.taken_from, k_earlier);
  assert.equal(facts.filter((one) => one.kind === 'reading/1').length, events.split('"reading/1"').length - 1);
  const text = JSON.stringify(facts);
  for (const word of ['Elm Street', 'attic', 'sofa', 'Living room', 'neighbor', '"room"', '"item"', 'circuit']) assert.ok(!text.includes(word), `"${word}" has come along`);
});

test('the taken fold test says its day and where it is from, and the plan can rest on it', async () => {
  await due('no');
  const told = await page.locator('.age').innerText();
  assert.match(told, /From the job Elm Street, the attic/);
  assert.match(told, /Made Jan 26, 2025, 15 days ago\. Due again Apr 26, 2025\./);
  await page.locator('[data-verdict]').waitFor({ timeout: 120000 });
  assert.equal(await page.locator('.take-kit').count(), 0);
});

test('due after the firm\'s interval and after service; the caution stands beside the paces', async () => {
  await goTo(page, 'record');
  await page.locator('.jobs li', { hasText: 'Elm Street' }).getByRole('button').click();
  await page.getByRole('link', { name: 'Sofa under the window' }).first().waitFor();
  await goTo(page, 'plan', k_sofa);
  await edgesWithState(page);
  assert.equal(await page.locator('[data-test-caution]').count(), 0, 'fifteen days are no age');

  await page.clock.setFixedTime(new Date('2025-05-01T12:00:00Z'));
  await page.reload();
  await due('age');
  for (const place of ['plan', 'treat']) {
    await goTo(page, place, k_sofa);
    await page.locator('[data-test-caution="age"]').waitFor();
    assert.match(await page.locator('[data-test-caution]').innerText(), /Jan 26, 2025, 95 days ago/);
  }
  await due('age');
  await page.getByText('When it is due again').click();
  await page.getByRole('radio', { name: 'half a year' }).check();
  await due('no');
  await page.getByRole('button', { name: /was serviced today/ }).click();
  await due('service');
  await goTo(page, 'treat', k_sofa);
  await page.locator('[data-test-caution="service"]').waitFor();
});

test('the home\'s height: refused with its limit, kept, and said beside paces that rest on a test made elsewhere', async () => {
  await goTo(page, 'record');
  await page.locator('.jobs li', { hasText: 'Next job' }).getByRole('button').click();
  await page.getByRole('button', { name: 'Add a room' }).waitFor();
  await goTo(page, 'inspect', 'before');
  const height = page.getByLabel('Height above the sea');
  await height.fill('40000');
  const save = page.locator('form', { has: height }).getByRole('button', { name: 'Save' });
  await save.click();
  await page.getByText('Height above the sea: 40000 ft is above the most, 19685 ft.').waitFor();
  await height.fill('7200');
  const before = await saved(page);
  await save.click();
  await page.waitForFunction((count) => Number(document.querySelector('[data-saved]').dataset.saved) > count, before);
  await page.reload();
  await page.waitForFunction(() => document.querySelector('#home-height')?.value === '7200');

  await goTo(page, 'inspect');
  await page.getByRole('button', { name: 'Add a room' }).click();
  await page.getByRole('radio', { name: 'Bedroom' }).check();
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('button', { name: /^Add an item/ }).click();
  await page.locator('[data-kind="mattress"]').click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await goTo(page, 'plan');
  await page.locator('[data-test-caution~="height"]').waitFor();
  assert.match(await page.locator('[data-test-caution]').innerText(), /made at 656 ft; this home lies at 7200 ft/);
  const edge = (await edgesWithState(page)).find(({ state }) => state !== 'waiting');
  await page.locator(`[data-edge="${edge.id}"]`).first().click();
  await page.getByText(/water boils at 199 °F here and did at 211 °F/).waitFor({ timeout: 120000 });
});

test('a machine that got weaker since the test before says so beside its paces', async () => {
  const demo = await readFile(`${k_dist}demo/apartment.ndjson`, 'utf8');
  const facts = demo.trim().split('\n').map((line) => JSON.parse(line.replaceAll('0194a3c1-', '0194a3c3-').replaceAll(k_demo, k_weaker)));
  const title = facts.find((one) => one.kind === 'job/1');
  title.data.title = 'Pine Road';
  const later = facts.filter((one) => ['fold_test/1', 'reading/1'].includes(one.kind)).map((one) => {
    const copy = JSON.parse(JSON.stringify(one).replaceAll(k_fold_test, k_later_test).replaceAll('0194a3c3-', '0194a3c4-'));
    if (one.kind === 'reading/1') copy.data.peak_celsius -= 22;
    return { ...copy, subject: one.kind === 'reading/1' ? one.subject.replace('0194a3c0-', '0194a3c5-') : k_later_test };
  });
  const settings = facts.find((one) => one.kind === 'settings/1');
  settings.data.fold_test = k_later_test;
  await goTo(page, 'record');
  await page.locator('input[type=file]').setInputFiles(jobFile([...facts, ...later].map((one) => JSON.stringify(one)).join('\n')));
  await page.locator('.jobs li', { hasText: 'Pine Road' }).waitFor();
  await page.clock.setFixedTime(new Date('2025-02-10T12:00:00Z'));
  await page.reload();
  await goTo(page, 'plan', k_sofa);
  await page.locator('[data-test-caution="drift"]').waitFor({ timeout: 120000 });
  await page.getByText(/weaker/).first().waitFor();
});
