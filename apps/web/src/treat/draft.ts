// The edge under the head, kept outside the page's memory: when the page dies in the middle, the next opening records that
// edge as interrupted. One tab at a time treats; another one leaves the draft alone.
import { job } from '../record/job.svelte';

export interface Draft { job: string; stroke: string; elapsedSeconds: number; data: Record<string, unknown> }

const k_memory = 'lastegg-running-edge';
const k_lock = 'lastegg-treating';
let letGo: (() => void) | null = null;

export function keepDraft(draft: Draft): void {
  try {
    localStorage.setItem(k_memory, JSON.stringify(draft));
  } catch {
    // Without room the edge still runs; only a death of the page would leave it unrecorded, which counts as not passed.
  }
}

export function dropDraft(): void {
  localStorage.removeItem(k_memory);
}

/** Holds this tab's claim to the running edge until `release`. */
export function claim(): void {
  if (letGo || !navigator.locks) return;
  void navigator.locks.request(k_lock, () => new Promise<void>((done) => { letGo = done; })).catch(() => {});
}

/** Whether some tab of this browser, this one included, has an edge at hand. */
export async function treatingHere(): Promise<boolean> {
  if (!navigator.locks) return letGo !== null;
  return ((await navigator.locks.query()).held ?? []).some((lock) => lock.name === k_lock);
}

export function release(): void {
  letGo?.();
  letGo = null;
}

/** Records an edge that a dead page left behind as interrupted: known to have been begun, for an unknown time. */
export async function recoverDraft(): Promise<void> {
  const look = async (): Promise<void> => {
    let draft: Draft;
    try {
      draft = JSON.parse(localStorage.getItem(k_memory) ?? 'null') as Draft;
    } catch {
      dropDraft();
      return;
    }
    if (!draft || draft.job !== job.id) return;
    const known = job.state.strokes.some((one) => one.id === draft.stroke);
    if (known || (await job.write('stroke/1', draft.stroke, { ...draft.data, seconds: draft.elapsedSeconds, interrupted: true }))) dropDraft();
  };
  if (!navigator.locks) await look();
  else await navigator.locks.request(k_lock, { ifAvailable: true }, async (lock) => { if (lock) await look(); });
}
