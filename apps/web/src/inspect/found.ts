// Evidence as the page shows it: what was said of a place, in words. No rule: what it means is the engine's.
import type { Entity } from '../engine/shapes';
import { job } from '../record/job.svelte';
import { named, words } from '../words/words';

/** Where something is: a room, an item, an edge of it. */
export interface Place { room?: string; item?: string; edge?: string; title: string }

export function lists(one: Entity, { room, item, edge }: Place): boolean {
  if (item) return one.item === item && (edge === undefined || one.edge === edge);
  return room !== undefined && one.room === room && !one.item;
}

export function looksAt(place: Place): Entity[] {
  return job.state.evidence.filter((one) => lists(one, place)).sort((p, q) => (p.id < q.id ? 1 : -1));
}

const k_counts = ['adults', 'nymphs', 'eggs', 'cast_skins'] as const;

/** "2 adults · 5 nymphs · dark spots · light and card". */
export function told(look: Entity): string {
  const said: string[] = [];
  if (look.look !== 'found') said.push(named(words.inspect.found.results, String(look.look)));
  for (const key of k_counts) if (Number(look[key] ?? 0) > 0) said.push(words.inspect.found.counted[key](Number(look[key])));
  if (look.spots === true) said.push(words.inspect.found.spots);
  if (look.dead === true) said.push(words.inspect.found.dead);
  if (look.how) said.push(named(words.inspect.found.hows, String(look.how)));
  if (look.certain === false) said.push(words.inspect.found.certains.no!);
  return said.join(' · ');
}
