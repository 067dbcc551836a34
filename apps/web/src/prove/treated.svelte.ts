// The open job as it was treated: one question an item, so that items show as they are computed and a new fact asks only its
// own item again.
import { compute } from '../engine/compute';
import type { TreatedAnswer } from '../engine/questions';
import type { Conflict, EngineError, Entity, JobState } from '../engine/shapes';
import { k_full_samples } from '../plan/pace_request';

export type TreatedItem = TreatedAnswer['items'][number];
export type TreatedEdge = TreatedItem['edges'][number];
export type TreatedCounts = TreatedAnswer['counts'];

const k_of_item = ['strokes', 'edge_marks', 'spot_readings', 'redo_notes', 'methods', 'edge_changes'] as const;
const k_shared = ['job', 'dwelling', 'rooms', 'visits', 'kit', 'fold_tests', 'settings'] as const;

/** What of the state the question reads for one item. */
function stateOf(item: Entity, state: JobState): Record<string, unknown> {
  return {
    ...Object.fromEntries(k_shared.map((key) => [key, state[key]])),
    ...Object.fromEntries(k_of_item.map((key) => [key, state[key].filter((one) => one.item === item.id)])),
    items: [item],
  };
}

class TreatedBoard {
  answers = $state.raw<Record<string, TreatedAnswer>>({});
  errors = $state.raw<Record<string, EngineError>>({});
  private asked: Record<string, string> = {};
  private generation = 0;

  ask(state: JobState, conflicts: Conflict[]): void {
    this.generation ||= compute.generation();
    const generation = this.generation;
    const subjects = conflicts.map(({ subject, kind }) => ({ subject, kind }));
    const ids = new Set(state.items.map((item) => item.id));
    if (Object.keys(this.asked).some((id) => !ids.has(id))) {
      this.asked = Object.fromEntries(Object.entries(this.asked).filter(([id]) => ids.has(id)));
      this.answers = Object.fromEntries(Object.entries(this.answers).filter(([id]) => ids.has(id)));
    }
    for (const item of state.items) {
      const request = { state: stateOf(item, state), conflicts: subjects, samples: k_full_samples };
      const key = JSON.stringify(request);
      if (this.asked[item.id] === key) continue;
      this.asked[item.id] = key;
      // What an earlier answer computed is handed back, so that a new fact costs only its own edge.
      const known = this.answers[item.id]?.items[0]?.edges.flatMap((edge) => (edge.modelled ? [edge.modelled] : [])) ?? [];
      const passed = state.strokes.filter((one) => one.item === item.id).length;
      void compute.ask<TreatedAnswer>('treated', { ...request, known }, generation, 4 - passed / 1e6).then((outcome) => {
        if (this.asked[item.id] !== key || generation !== this.generation) return;
        if (outcome.ok) this.answers = { ...this.answers, [item.id]: outcome.answer };
        else if (outcome.error.kind !== 'cancelled') this.errors = { ...this.errors, [item.id]: outcome.error };
      });
    }
  }

  stop(): void {
    if (this.generation) compute.drop(this.generation);
    this.generation = 0;
    this.asked = Object.fromEntries(Object.entries(this.asked).filter(([id]) => this.answers[id]));
  }

  of(id: string): TreatedItem | null {
    return this.answers[id]?.items[0] ?? null;
  }

  /** Answers of all items in the order of the record; null while one is still computed. */
  all(items: Entity[]): TreatedAnswer[] | null {
    const all = items.map((item) => this.answers[item.id]);
    return all.every((one) => one !== undefined) ? (all as TreatedAnswer[]) : null;
  }
}

export const treated = new TreatedBoard();

export type CountKey = 'lethal' | 'short' | 'not_proven' | 'barred' | 'not_treated' | 'edges' | 'redo_open' | 'redo_explained' | 'spot_readings';

/** Sums of counts that the engine made item by item. */
export function sum(counts: TreatedCounts[], key: CountKey): number {
  return counts.reduce((total, one) => total + one[key], 0);
}
