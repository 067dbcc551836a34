// What a fold test was made with, and what it asks of the engine (which says so itself: question `job_requests`).
import type { Entity, FoldTest, JobState, TestRequest } from '../engine/shapes';
import { job } from '../record/job.svelte';
import { elevationGiven } from '../record/elevation';

const find = (list: Entity[], id: unknown): Entity | null => list.find((one) => one.id === id) ?? null;

export interface TestKit { machine: Entity | null; head: Entity | null; towel: Entity | null; probe: Entity | null }

export function kitOf(test: Entity, state: JobState): TestKit {
  return {
    machine: find(state.kit.machines, test.machine), head: find(state.kit.heads, test.head),
    towel: find(state.kit.towels, test.towel), probe: find(state.kit.probes, test.probe),
  };
}

export function elevationOf(state: JobState, test: Entity | null): number {
  return Number(test?.elevation_metres ?? elevationGiven(state) ?? 0);
}

/** The question `fold_test` of a test, with what other tests of the machine say; null while it has no readings. */
export function foldTestRequest(test: FoldTest): TestRequest | null {
  return job.requests?.fold_tests.find((one) => one.id === test.id)?.request ?? null;
}

/** The test the plan uses, if it rests on one. */
export function testInUse(state: JobState): FoldTest | null {
  return state.fold_tests.find((test) => test.id === job.requests?.test_in_use) ?? null;
}

export function layerCount(layers: number | string[] | undefined): number {
  return Array.isArray(layers) ? layers.length : Number(layers ?? 1);
}
