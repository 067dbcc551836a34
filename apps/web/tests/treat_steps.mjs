// What a person does at the place Treat, as steps its tests share.
import { goTo, k_sofa, saved } from './steps.mjs';

/** A seam of 0.13 m of the demo sofa, which has a pace. */
export const k_short_edge = 'seat_cushion_1.right_boxing_seam';
export const k_other_edge = 'seat_cushion_2.right_boxing_seam';

export async function openTreat(page) {
  await goTo(page, 'treat', k_sofa);
  await page.waitForFunction((edges) => edges.every((edge) => /\d/.test(document.querySelector(`[data-edge="${edge}"] .pace`)?.textContent ?? '')), [k_short_edge, k_other_edge], { timeout: 120000 });
}

export const status = (page, edge) => page.locator(`ul [data-edge="${edge}"]`).last().getAttribute('data-status');

export async function hasStatus(page, edge, wanted) {
  await page.waitForFunction(({ edge, wanted }) => [...document.querySelectorAll(`[data-edge="${edge}"]`)].some((row) => wanted.includes(row.dataset.status)), { edge, wanted }, { timeout: 120000 });
}

/** Opens the guide on one edge, as far as its start; a towel that is asked for is put on. */
export async function guide(page, edge) {
  await page.locator(`ul [data-edge="${edge}"] button`).last().click();
  await page.locator('dialog').waitFor();
  if ((await phase(page)) === 'before') await page.getByRole('button', { name: 'Ready' }).click();
  await page.locator('dialog[data-phase="towel"], dialog[data-phase="ready"]').waitFor();
  if ((await phase(page)) === 'towel') await press(page);
  await inPhase(page, 'ready');
}

export const phase = (page) => page.locator('dialog[data-phase]').getAttribute('data-phase');
export const inPhase = (page, wanted) => page.locator(`dialog[data-phase="${wanted}"]`).waitFor();
export const now = (page) => page.locator('dialog').evaluate((dialog) => ({ ...dialog.dataset }));
export const press = (page) => page.locator('[data-mark]').click();

/** Starts the edge at hand and waits until it has been counted in. */
export async function begun(page) {
  await page.waitForTimeout(450);  // a second press within 0.4 s is a bounce
  await press(page);
  await page.waitForFunction(() => document.querySelector('dialog')?.dataset.phase === 'running' && document.querySelector('dialog').dataset.counting === undefined, null, { polling: 50 });
}

export async function leaveGuide(page) {
  await page.keyboard.press('Escape');
  await page.locator('dialog').waitFor({ state: 'detached' });
  await saved(page);
}

/** Words of two letters and more that are in sight on the field screen, and its buttons. */
export const glance = (page) => page.locator('[data-field]').evaluate((field) => {
  const seen = (node) => !node.parentElement.closest('.unseen') && node.parentElement.getClientRects().length > 0;
  const words = [];
  const walk = document.createTreeWalker(field, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) if (seen(walk.currentNode)) words.push(...(walk.currentNode.textContent.match(/\p{L}{2,}/gu) ?? []));
  const buttons = [...field.querySelectorAll('button')].map((one) => one.getBoundingClientRect()).filter((box) => box.width > 0);
  const big = field.querySelector('[data-mark]').getBoundingClientRect();
  return { words, buttons: buttons.map((box) => [box.width, box.height]), bigTop: big.top / innerHeight, bottom: Math.max(...buttons.map((box) => box.y + box.height)) };
});
