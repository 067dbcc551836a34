// Which edges matter most in the minutes that are left: the question `plan` ranks them by bugs killed per minute.
import { compute } from '../engine/compute';
import type { Entity, JobState } from '../engine/shapes';
import { furnitureRequest } from '../inspect/items.svelte';
import { k_first_look_samples, paceStand, sampled, type Basis } from '../plan/pace_request';

interface PlanAnswer { edges: { id: string }[]; in_minutes_left?: { edges: number[] } }

/** What looks found on one item, as the question takes it: live bugs, or only signs (eggs too). */
export function seenOn(state: JobState, item: string): { item_index: number; id?: string; what: 'live' | 'signs' }[] {
  const some = (value: unknown) => typeof value === 'number' && value > 0;
  return state.evidence.filter((one) => one.item === item && one.look === 'found').map((one) => ({
    item_index: 0, ...(typeof one.edge === 'string' ? { id: one.edge } : {}),
    what: some(one.adults) || some(one.nymphs) ? 'live' as const : 'signs' as const,
  }));
}

export class Ranking {
  busy = $state(false);
  failed = $state<string | null>(null);
  private generation = 0;

  /** Ids of the edges to treat, most per minute first; null when it was refused or another question came after. */
  async ask(item: Entity, state: JobState, basis: Basis, minutes: number): Promise<string[] | null> {
    this.stop();
    const generation = (this.generation = compute.generation());
    this.busy = true;
    this.failed = null;
    const stand = await paceStand(basis, k_first_look_samples, generation, 9);
    if (generation !== this.generation) return null;
    if (!stand.ok) return this.refuse(stand.error.message);
    const seen = seenOn(state, item.id);
    const request = { ...sampled(stand.answer, k_first_look_samples), items: [furnitureRequest(item)], minutes_left: minutes, ...(seen.length > 0 ? { seen } : {}) };
    const outcome = await compute.ask<PlanAnswer>('plan', request, generation, 9);
    if (generation !== this.generation) return null;
    if (!outcome.ok) return this.refuse(outcome.error.message);
    this.busy = false;
    return (outcome.answer.in_minutes_left?.edges ?? []).map((index) => outcome.answer.edges[index]!.id);
  }

  private refuse(why: string): null {
    this.busy = false;
    this.failed = why;
    return null;
  }

  stop(): void {
    if (this.generation) compute.drop(this.generation);
    this.generation = 0;
    this.busy = false;
  }
}
