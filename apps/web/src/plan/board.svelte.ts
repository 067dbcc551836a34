// All paces of one item: a first look with 128 samples for every edge, then the full 1024, top edges first. Edges whose
// facts are equal share one question.
import { compute } from '../engine/compute';
import type { Edge, EngineError, Furniture, PaceAnswer } from '../engine/shapes';
import { edgeState, type EdgeState } from './edge_state';
import { k_first_look_samples, k_full_samples, paceRequest, type Source } from './pace_request';

export class Board {
  answers = $state.raw<Record<string, PaceAnswer>>({});
  errors = $state.raw<Record<string, EngineError>>({});
  /** With how many samples each edge's answer was asked for. */
  looked = $state.raw<Record<string, number>>({});
  private generation = 0;
  private asked = '';
  private edges = $state.raw<Edge[]>([]);

  /** Asks for every edge again when what is asked has changed. Returns the way to stop. */
  ask(furniture: Furniture, source: Source): void {
    const asked = JSON.stringify([source.key, furniture.edges.map((edge) => [edge.id, edge.treat])]);
    if (asked === this.asked) return;
    this.clear();
    this.asked = asked;
    this.edges = [...furniture.edges].sort((p, q) => q.height_metres - p.height_metres);
    const generation = (this.generation = compute.generation());
    const groups = new Map<string, Edge[]>();
    for (const edge of this.edges) {
      const key = JSON.stringify(edge.treat);
      groups.set(key, [...(groups.get(key) ?? []), edge]);
    }
    for (const samples of source.looks) void this.askAll([...groups.values()], source, samples, generation);
  }

  private async askAll(groups: Edge[][], source: Source, samples: number, generation: number): Promise<void> {
    const first = samples === k_first_look_samples;
    const outcome = await source.stand(samples, generation, first ? 6 : 3);
    if (generation !== this.generation) return;
    if (!outcome.ok) {
      this.fail(groups.flat(), outcome.error);
      return;
    }
    const stand = outcome.answer;
    groups.forEach((group, order) => {
      void compute.ask<PaceAnswer>('pace', paceRequest(stand, group[0]!, samples), generation, (first ? 5 : 2) - order / 1000).then((outcome) => {
        if (generation !== this.generation) return;
        if (outcome.ok) this.take(group, outcome.answer, samples);
        else this.fail(group, outcome.error);
      });
    });
  }

  private fail(edges: Edge[], error: EngineError): void {
    if (error.kind === 'cancelled') return;
    this.errors = { ...this.errors, ...Object.fromEntries(edges.map((edge) => [edge.id, error])) };
  }

  private take(group: Edge[], answer: PaceAnswer, asked: number): void {
    const next = { ...this.answers }, looked = { ...this.looked };
    for (const edge of group) {
      if ((looked[edge.id] ?? 0) > asked) continue;
      next[edge.id] = answer;
      looked[edge.id] = asked;
    }
    this.answers = next;
    this.looked = looked;
  }

  /** Forgets everything. */
  clear(): void {
    this.stop();
    this.answers = {};
    this.errors = {};
    this.looked = {};
  }

  stop(): void {
    if (this.generation) compute.drop(this.generation);
    this.generation = 0;
    this.asked = '';
  }

  readonly states: Record<string, EdgeState> = $derived(Object.fromEntries(this.edges.map((edge) => [edge.id, edgeState(this.answers[edge.id])])));

  get counts(): Partial<Record<EdgeState, number>> {
    const counts: Partial<Record<EdgeState, number>> = {};
    for (const state of Object.values(this.states)) counts[state] = (counts[state] ?? 0) + 1;
    return counts;
  }

  get settled(): number {
    return this.edges.filter((edge) => this.errors[edge.id] || (this.looked[edge.id] ?? 0) >= k_full_samples).length;
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
