// The question `fold_test` from the facts of one test. Values go as recorded; the engine judges them.
import type { Entity, FoldTest, JobState } from '../engine/types';

const find = (list: Entity[], id: unknown): Entity | null => list.find((one) => one.id === id) ?? null;

export interface TestKit { machine: Entity | null; head: Entity | null; towel: Entity | null; probe: Entity | null }

export function kitOf(test: Entity, state: JobState): TestKit {
  return {
    machine: find(state.kit.machines, test.machine), head: find(state.kit.heads, test.head),
    towel: find(state.kit.towels, test.towel), probe: find(state.kit.probes, test.probe),
  };
}

/** Only the keys the engine's head shape knows, from what was recorded of a head. */
function headFacts(head: Entity | null): Record<string, unknown> {
  const facts: Record<string, unknown> = {};
  for (const key of ['length_metres', 'width_metres'] as const) if (typeof head?.[key] === 'number') facts[key] = head[key];
  return facts;
}

export function foldTestRequest(test: FoldTest, state: JobState): Record<string, unknown> | null {
  if (test.readings.length === 0) return null;
  const kit = kitOf(test, state);
  return {
    machine: { title: String(kit.machine?.title ?? '') },
    head: headFacts(kit.head),
    towel: String(kit.towel?.use ?? 'none'),
    elevation_metres: Number(test.elevation_metres ?? state.dwelling?.elevation_metres ?? state.job?.elevation_metres ?? 0),
    probe: { time_constant_seconds: Number(kit.probe?.time_constant_seconds ?? 0.5) },
    start_celsius: Number(test.start_celsius ?? 21),
    readings: test.readings.map((reading) => ({
      ...(typeof reading.pace_metres_per_second === 'number'
        ? { pace_metres_per_second: reading.pace_metres_per_second }
        : { distance_metres: reading.distance_metres, seconds: reading.seconds }),
      layers: Array.from({ length: Number(reading.layers ?? 1) }, () => String(test.cloth ?? 'terry')),
      peak_celsius: reading.peak_celsius,
    })),
  };
}

/** The test the plan uses: the one the settings name, else the last one with readings. */
export function testInUse(state: JobState): FoldTest | null {
  const withReadings = state.fold_tests.filter((test) => test.readings.length > 0);
  return withReadings.find((test) => test.id === state.settings?.fold_test) ?? withReadings.at(-1) ?? null;
}

export function layerCount(layers: number | string[] | undefined): number {
  return Array.isArray(layers) ? layers.length : Number(layers ?? 1);
}
