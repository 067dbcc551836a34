// The question `fold_test` from the facts of one test. Values go as recorded; the engine judges them.
import type { Entity, FoldTest, JobState } from '../engine/shapes';

const k_most_relatives = 3;

const find = (list: Entity[], id: unknown): Entity | null => list.find((one) => one.id === id) ?? null;

export interface TestKit { machine: Entity | null; head: Entity | null; towel: Entity | null; probe: Entity | null }

export function kitOf(test: Entity, state: JobState): TestKit {
  return {
    machine: find(state.kit.machines, test.machine), head: find(state.kit.heads, test.head),
    towel: find(state.kit.towels, test.towel), probe: find(state.kit.probes, test.probe),
  };
}

/** The head as the engine takes it: a name, and its size where it was recorded. */
export function headFacts(head: Entity | null): Record<string, unknown> | string {
  const name = String(head?.title ?? 'head');
  if (typeof head?.length_metres !== 'number') return name;
  return { name, length_metres: head.length_metres, ...(typeof head.width_metres === 'number' ? { width_metres: head.width_metres } : {}) };
}

/** The probe by its dip, if it was timed, else by the time constant that was typed. */
function probeFacts(probe: Entity | null): Record<string, unknown> {
  if (probe?.dip && typeof probe.dip === 'object') return { probe: { dip: probe.dip } };
  return typeof probe?.time_constant_seconds === 'number' ? { probe: { time_constant_seconds: probe.time_constant_seconds } } : {};
}

export function elevationOf(state: JobState, test: Entity | null): number {
  return Number(test?.elevation_metres ?? state.dwelling?.elevation_metres ?? state.job?.elevation_metres ?? 0);
}

export function foldTestRequest(test: FoldTest, state: JobState, samples?: number): Record<string, unknown> | null {
  if (test.readings.length === 0) return null;
  const kit = kitOf(test, state);
  return {
    machine: String(kit.machine?.title ?? 'machine'),
    head: headFacts(kit.head),
    towel: String(kit.towel?.use ?? 'none'),
    elevation_metres: elevationOf(state, test),
    ...probeFacts(kit.probe),
    ...(typeof test.start_celsius === 'number' ? { start_celsius: test.start_celsius } : {}),
    ...(typeof test.covering === 'string' ? { covering: test.covering } : {}),
    ...(samples ? { samples } : {}),
    readings: test.readings.map((reading) => ({
      ...(typeof reading.pace_metres_per_second === 'number'
        ? { pace_metres_per_second: reading.pace_metres_per_second }
        : typeof reading.hold_seconds === 'number'
          ? { hold_seconds: reading.hold_seconds }
          : { distance_metres: reading.distance_metres, seconds: reading.seconds }),
      ...(typeof reading.kind === 'string' ? { kind: reading.kind } : {}),
      ...(typeof reading.covering === 'string' ? { covering: reading.covering } : {}),
      ...(reading.kind === 'coupon' ? {} : { layers: reading.layers }),
      peak_celsius: reading.peak_celsius,
    })),
  };
}

/** The same with what other tests of the machine say: the last one of this head and towel, and those of other heads. */
export function foldTestWithOthers(test: FoldTest, state: JobState): Record<string, unknown> | null {
  const request = foldTestRequest(test, state);
  if (!request || !test.machine) return request;
  const place = state.fold_tests.findIndex((one) => one.id === test.id);
  const name = (one: FoldTest) => `${kitOf(one, state).head?.title ?? 'head'}|${kitOf(one, state).towel?.use ?? 'none'}`;
  const others = state.fold_tests.filter((one, i) => i !== place && one.machine === test.machine && one.readings.length > 0);
  const earlier = state.fold_tests.slice(0, Math.max(0, place)).reverse().find((one) => others.includes(one) && name(one) === name(test));
  const relatives = others.filter((one) => name(one) !== name(test)).slice(-k_most_relatives);
  return {
    ...request,
    ...(earlier ? { earlier: foldTestRequest(earlier, state) } : {}),
    ...(relatives.length > 0 ? { same_machine: relatives.map((one) => foldTestRequest(one, state)) } : {}),
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
