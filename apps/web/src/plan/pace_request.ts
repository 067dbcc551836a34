// The question `pace` for an edge: the fold test in use (or the head as described), the edge's own facts, the place.
import type { Edge, JobState } from '../engine/types';
import { foldTestRequest, kitOf, testInUse } from '../kit/fold_request';

export const k_first_look_samples = 128;
export const k_full_samples = 1024;

export function paceBasis(state: JobState): Record<string, unknown> {
  const test = testInUse(state);
  const elevation = Number(state.dwelling?.elevation_metres ?? state.job?.elevation_metres ?? test?.elevation_metres ?? 0);
  const request = test ? foldTestRequest(test, state) : null;
  if (test && request) return { fold_test: request, elevation_metres: elevation };
  const any = state.fold_tests.at(-1);
  const kit = any ? kitOf(any, state) : null;
  const head = kit?.head ?? state.kit.heads.at(-1) ?? null;
  const described: Record<string, unknown> = {};
  for (const key of ['length_metres', 'width_metres'] as const) if (typeof head?.[key] === 'number') described[key] = head[key];
  described.towel = String(kit?.towel?.use ?? 'none');
  return { head: described, elevation_metres: elevation };
}

export function paceRequest(basis: Record<string, unknown>, edge: Edge, samples: number): Record<string, unknown> {
  return { ...basis, edge: edge.treat, samples };
}
