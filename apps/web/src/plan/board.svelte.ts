// All paces of one item: a first look with 128 samples for every edge, then the full 1024, nearest to the eye first.
// Edges whose facts are equal share one question.
import { compute } from '../engine/compute';
import type { Edge, EngineError, Furniture, PaceAnswer } from '../engine/types';
import { edgeState, type EdgeState } from './edge_state';
import { k_first_look_samples, k_full_samples, paceRequest } from './pace_request';

export class Board {
  answers = $state.raw<Record<string, PaceAnswer>>({});
  errors = $state.raw<Record<string, EngineError>>({});
  private generation = 0;
  private asked = '';
  private edges: Edge[] = [];

  /** Asks for every edge again when what is asked has changed. Returns the way to stop. */
  ask(furniture: Furniture, basis: Record<string, unknown>): void {
    const asked = JSON.stringify([basis, furniture.edges.map((edge) => [edge.id, edge.treat])]);
    if (asked === this.asked) return;
    this.stop();
    this.asked = asked;
    this.answers = {};
    this.errors = {};
    this.edges = [...furniture.edges].sort((p, q) => q.height_metres - p.height_metres);
    const generation = (this.generation = compute.generation());
    const groups = new Map<string, Edge[]>();
    for (const edge of this.edges) {
      const key = JSON.stringify(edge.treat);
      groups.set(key, [...(groups.get(key) ?? []), edge]);
    }
    let rank = 0;
    for (const group of groups.values()) {
      const order = rank++;
      for (const samples of [k_first_look_samples, k_full_samples]) {
        const urgent = (samples === k_first_look_samples ? 5 : 2) - order / 1000;
        void compute.ask<PaceAnswer>('pace', paceRequest(basis, group[0]!, samples), generation, urgent).then((outcome) => {
          if (generation !== this.generation) return;
          if (outcome.ok) this.take(group, outcome.answer);
          else if (outcome.error.kind !== 'cancelled') {
            this.errors = { ...this.errors, ...Object.fromEntries(group.map((edge) => [edge.id, outcome.error])) };
          }
        });
      }
    }
  }

  private take(group: Edge[], answer: PaceAnswer): void {
    const next = { ...this.answers };
    for (const edge of group) {
      if ((next[edge.id]?.samples ?? 0) <= answer.samples) next[edge.id] = answer;
    }
    this.answers = next;
  }

  stop(): void {
    if (this.generation) compute.drop(this.generation);
    this.generation = 0;
    this.asked = '';
  }

  get states(): Record<string, EdgeState> {
    return Object.fromEntries(this.edges.map((edge) => [edge.id, edgeState(this.answers[edge.id])]));
  }

  get settled(): number {
    return this.edges.filter((edge) => this.errors[edge.id] || (this.answers[edge.id]?.samples ?? 0) >= k_full_samples).length;
  }

  get withWindow(): number {
    return this.edges.filter((edge) => this.answers[edge.id]?.window_metres_per_second).length;
  }

  /** Seconds that the head is on the edges that have a pace: length over pace, times passes; no setting up, no drying. */
  get steamingSeconds(): number {
    return this.edges.reduce((sum, edge) => {
      const answer = this.answers[edge.id];
      const pace = answer?.recommended_metres_per_second;
      return sum + (answer && pace ? (edge.length_metres / pace) * answer.passes : 0);
    }, 0);
  }
}
