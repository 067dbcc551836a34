// What the engine's catalogue offers: kinds by group, what each takes, mattress sizes. Asked once.
import { compute } from '../engine/compute';
import type { CatalogueAnswer } from '../engine/questions';
import type { EngineError } from '../engine/shapes';

export type Kind = CatalogueAnswer['kinds'][number];
export type Group = Kind['group'];
export type Measure = Kind['measures'][number];
export const k_groups: readonly Group[] = ['bed', 'seat', 'storage', 'small', 'room'];

class Catalogue {
  answer = $state.raw<CatalogueAnswer | null>(null);
  error = $state.raw<EngineError | null>(null);
  private asked = false;

  /** Asks once; read the answer with `kind` and `of`. */
  want(): void {
    if (this.asked) return;
    this.asked = true;
    void compute.ask<CatalogueAnswer>('catalogue', {}, compute.generation(), 10).then((outcome) => {
      if (outcome.ok) this.answer = outcome.answer;
      else {
        this.error = outcome.error;
        this.asked = false;
      }
    });
  }

  kind(name: unknown): Kind | null {
    return this.answer?.kinds.find((one) => one.item === name) ?? null;
  }

  of(group: Group): Kind[] {
    return this.answer?.kinds.filter((one) => one.group === group) ?? [];
  }
}

export const catalogue = new Catalogue();

/** Keys of an item that the question furniture takes for its kind. */
export function keysOf(kind: Kind): string[] {
  return [...kind.measures, ...kind.counts, ...kind.options].map((one) => one.key);
}
