// What the plan asks the engine. Fold tests are fitted once, by the question `fold_test`, and what they found
// (`calibration`) goes unchanged into every `pace`: those of the asked head and towel as they are, those of the machine's
// others beside the prior.
import { compute, type Compute } from '../engine/compute';
import type { Edge, FoldTestAnswer, Outcome, PaceKit, TestRequest } from '../engine/shapes';
import { job } from '../record/job.svelte';

export const k_first_look_samples = 128;
export const k_full_samples = 1024;
const k_relative_samples = 256;

export interface Basis { kit: PaceKit; word: 'fold_test' | 'same_machine' | 'prior'; key: string }

export function paceBasis(): Basis {
  const kit = job.requests?.pace ?? { prior: {} };
  return { kit, word: kit.fold_test ? 'fold_test' : kit.prior?.same_machine ? 'same_machine' : 'prior', key: JSON.stringify(kit) };
}

export type Stand = Record<string, unknown>;

/** What stands behind every pace: the basis with its tests fitted, by the worker that is asked. */
export async function paceStand(basis: Basis, samples: number, generation: number, urgent: number, worker: Compute = compute): Promise<Outcome<Stand>> {
  const { fold_test: own, prior, ...place } = basis.kit;
  const found: unknown[] = [];
  const tests: TestRequest[] = own ?? prior?.same_machine ?? [];
  for (const test of tests) {
    const size = own ? samples : Math.min(samples, k_relative_samples);
    const outcome = await worker.ask<FoldTestAnswer>('fold_test', { ...test, samples: size }, generation, urgent);
    if (!outcome.ok) return outcome;
    found.push(outcome.answer.calibration, ...(own ? (outcome.answer.edge_calibrations ?? []) : []));
  }
  if (own) return { ok: true, answer: { ...place, calibration: found } };
  return { ok: true, answer: { ...place, prior: found.length > 0 ? { ...prior, same_machine: found } : prior } };
}

/** Where the paces of a board come from, and in which looks. */
export interface Source { key: string; looks: readonly number[]; stand: (samples: number, generation: number, urgent: number) => Promise<Outcome<Stand>> }

/** As the plan has it: roughly first, then in full. */
export function asPlanned(basis: Basis): Source {
  return { key: basis.key, looks: [k_first_look_samples, k_full_samples], stand: (samples, generation, urgent) => paceStand(basis, samples, generation, urgent) };
}

/** A stand as a question takes it that draws its own samples without a test. */
export function sampled(stand: Stand, samples: number): Stand {
  return 'calibration' in stand ? stand : { ...stand, samples };
}

export function paceRequest(stand: Stand, edge: Edge, samples: number): Record<string, unknown> {
  return { ...sampled(stand, samples), edge: edge.treat };
}
