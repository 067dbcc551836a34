// What the plan asks the engine. With a fold test the question `fold_test` comes first, and what it found (`calibration`)
// goes unchanged into every `pace`; without one, `pace` answers from the prior.
import type { Edge, JobState } from '../engine/shapes';
import { elevationOf, foldTestRequest, kitOf, testInUse } from '../kit/fold_request';

export const k_first_look_samples = 128;
export const k_full_samples = 1024;

export type Basis =
  | { test: (samples: number) => Record<string, unknown>; key: string }
  | { prior: Record<string, unknown>; key: string };

export function paceBasis(state: JobState): Basis {
  const test = testInUse(state);
  if (test) {
    const ask = (samples?: number) => foldTestRequest(test, state, samples)!;
    return { test: ask, key: JSON.stringify(ask()) };
  }
  const any = state.fold_tests.at(-1) ?? null;
  const kit = any ? kitOf(any, state) : null;
  const head = kit?.head ?? state.kit.heads.at(-1) ?? null;
  const prior = {
    prior: {
      machine: String(kit?.machine?.title ?? state.kit.machines.at(-1)?.title ?? 'machine'), head: String(head?.title ?? 'head'),
      towel: String(kit?.towel?.use ?? 'none'), ...(typeof head?.length_metres === 'number' ? { length_metres: head.length_metres } : {}),
    },
    elevation_metres: elevationOf(state, any),
  };
  return { prior, key: JSON.stringify(prior) };
}

export function paceRequest(stand: Record<string, unknown>, edge: Edge, samples: number): Record<string, unknown> {
  return 'calibration' in stand ? { ...stand, edge: edge.treat } : { ...stand, edge: edge.treat, samples };
}
