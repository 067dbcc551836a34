// What a pace under the finger would do on one edge. A first look with 128 samples follows the finger, one question at a time and
// always for where it is now; once it rests, the whole ensemble is asked, by the worker of the plan.
import { compute, prompt } from '../engine/compute';
import type { AtPaceAnswer, Edge } from '../engine/shapes';
import { k_first_look_samples, k_full_samples, paceRequest, paceStand, type Basis, type Stand } from './pace_request';

const k_rest_ms = 250;
const k_urgent = 8;
const k_whole_urgent = 4;  // after the plan's first looks, before its own whole ensembles

export class TriedPace {
  answer = $state.raw<AtPaceAnswer | null>(null);
  private readonly first = prompt.generation();
  private readonly whole = compute.generation();
  private readonly stand: Promise<Stand | null>;
  private wanted: number | null = null;
  private asking = false;
  /** The pace whose whole answer is shown: a first look that comes late does not replace it. */
  private wholeOf: number | null = null;
  private rest: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly basis: Basis, private readonly edge: Edge) {
    this.stand = paceStand(basis, k_first_look_samples, this.first, k_urgent, prompt).then((outcome) => (outcome.ok ? outcome.answer : null));
  }

  look(pace: number): void {
    this.wanted = pace;
    if (this.wholeOf !== pace) this.wholeOf = null;
    clearTimeout(this.rest);
    this.rest = setTimeout(() => void this.lookWhole(pace), k_rest_ms);
    if (!this.asking) void this.follow();
  }

  stop(): void {
    clearTimeout(this.rest);
    this.wanted = null;
    prompt.drop(this.first);
    compute.drop(this.whole);
  }

  private async follow(): Promise<void> {
    this.asking = true;
    const stand = await this.stand;
    for (let asked: number | null = null; stand && this.wanted !== null && asked !== this.wanted;) {
      asked = this.wanted;
      const outcome = await prompt.ask<AtPaceAnswer>('at_pace', request(stand, this.edge, k_first_look_samples, asked), this.first, k_urgent);
      if (outcome.ok && this.wanted !== null && this.wholeOf !== asked) this.answer = outcome.answer;
    }
    this.asking = false;
  }

  private async lookWhole(pace: number): Promise<void> {
    const stand = await paceStand(this.basis, k_full_samples, this.whole, k_whole_urgent);
    if (!stand.ok || this.wanted !== pace) return;
    const outcome = await compute.ask<AtPaceAnswer>('at_pace', request(stand.answer, this.edge, k_full_samples, pace), this.whole, k_whole_urgent);
    if (!outcome.ok || this.wanted !== pace) return;
    this.answer = outcome.answer;
    this.wholeOf = pace;
  }
}

function request(stand: Stand, edge: Edge, samples: number, pace: number): Record<string, unknown> {
  return { ...paceRequest(stand, edge, samples), pace_metres_per_second: pace };
}
