// What the passes did, by the engine's question `as_treated` with the plan's own ensemble: a rough answer from few samples
// at once after a mark, the full one as soon as it is there.
import { prompt } from '../engine/compute';
import type { Edge, EngineError, TreatedAnswer } from '../engine/shapes';
import { k_first_look_samples, k_full_samples, paceStand, type Basis } from '../plan/pace_request';
import type { EdgeFacts } from './edge_stand';
import { treatedRequest } from './treated_request';

export class Judge {
  answers = $state.raw<Record<string, TreatedAnswer>>({});
  errors = $state.raw<Record<string, EngineError>>({});
  /** Edges whose answer is still the rough one. */
  rough = $state.raw<Record<string, boolean>>({});
  private readonly asked = new Map<string, { key: string; generation: number }>();

  /** Asks again when the facts of the edge have changed. `fresh`: a person waits, so a rough answer comes first. */
  want(edge: Edge, facts: EdgeFacts, basis: Basis, fresh: boolean): void {
    const key = JSON.stringify([basis.key, edge.treat, edge.length_metres, facts]);
    const before = this.asked.get(edge.id);
    if (before?.key === key) return;
    if (before) prompt.drop(before.generation);
    const generation = prompt.generation();
    this.asked.set(edge.id, { key, generation });
    this.forget(edge.id);
    if (facts.strokes.length === 0) return;
    const sizes = fresh ? [k_first_look_samples, k_full_samples] : [k_full_samples];
    for (const samples of sizes) void this.ask(edge, facts, basis, samples, generation, fresh);
  }

  /** Has the ensembles ready before the first mark, so that its verdict need not wait for them. */
  warm(basis: Basis): void {
    const generation = prompt.generation();
    for (const samples of [k_first_look_samples, k_full_samples]) void paceStand(basis, samples, generation, samples === k_full_samples ? 1 : 9, prompt);
  }

  stop(): void {
    for (const one of this.asked.values()) prompt.drop(one.generation);
    this.asked.clear();
  }

  private forget(edge: string): void {
    const { [edge]: _answer, ...answers } = this.answers, { [edge]: _error, ...errors } = this.errors;
    this.answers = answers;
    this.errors = errors;
  }

  private async ask(edge: Edge, facts: EdgeFacts, basis: Basis, samples: number, generation: number, fresh: boolean): Promise<void> {
    const rough = samples < k_full_samples;
    const urgent = (fresh ? 6 : 2) + (rough ? 2 : 0);
    const current = () => this.asked.get(edge.id)?.generation === generation;
    const fail = (error: EngineError) => { if (current() && error.kind !== 'cancelled') this.errors = { ...this.errors, [edge.id]: error }; };
    const stand = await paceStand(basis, samples, generation, urgent + 1, prompt);
    if (!current()) return;
    if (!stand.ok) return fail(stand.error);
    const request = treatedRequest(stand.answer, edge, facts, samples);
    if (!request) return;
    const outcome = await prompt.ask<TreatedAnswer>('as_treated', request, generation, urgent);
    if (!current()) return;
    if (!outcome.ok) return fail(outcome.error);
    if (rough && this.answers[edge.id] && !this.rough[edge.id]) return;
    this.answers = { ...this.answers, [edge.id]: outcome.answer };
    this.rough = { ...this.rough, [edge.id]: rough };
  }
}
