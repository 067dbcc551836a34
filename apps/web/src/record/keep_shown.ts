// How things are shown: remembered by the device, and a fact of the open job, so that a report can follow it.
import { settings } from '../look/settings.svelte';
import { dataOf } from './facts';
import { job } from './job.svelte';
import { uuidv7 } from './uuid';

// One after the other, so that a second choice corrects the first and the two never stand as rivals.
let last: Promise<unknown> = Promise.resolve();

async function write(): Promise<void> {
  if (!job.id) return;
  const old = job.state.settings;
  const data = { ...(old ? dataOf(old) : {}), temperature: settings.units.temperature, length: settings.units.length, language: settings.language };
  await job.writeEntity('settings/1', old, data, uuidv7());
}

/** Resolves when the fact is stored, or held as unsaved. */
export function keepShown(): Promise<unknown> {
  settings.keep();
  last = last.then(write);
  return last;
}
