// What of a job is the firm's own and goes along to the next: its equipment, what was measured of it, its rates. What is of
// the home stays: circuits, dryers, rooms, every note. docs/record.md says the same in words. Pure.
import type { Entity, FoldTest, JobState } from '../engine/shapes';
import { elevationGiven } from './elevation';
import { dayOf } from './today';
import { timeOf } from './uuid';

export interface KitFact { kind: string; subject: string; data: Record<string, unknown> }
/** The kit of one job: its facts to be stated again, and what they are of, to be shown. */
export interface KitOffer { job: string; title: string; machines: number; heads: number; lastTest: string | null; tests: number; facts: KitFact[]; settings: Record<string, unknown> }

/** Keys that speak of a home or of the moment, wherever they stand. */
const k_of_the_home = new Set(['note', 'room', 'item', 'edge', 'dwelling', 'place']);
export const k_kit_kinds = ['machine/1', 'head/1', 'towel/1', 'probe/1', 'fold_test/1'];

/** The day on which a fold test was made: as stated, else that of its last reading, by the time in its id. */
export function testDay(test: FoldTest): string | null {
  if (typeof test.on === 'string') return test.on;
  const times = [test, ...test.readings].map((one) => timeOf(one.id)).filter((time) => !Number.isNaN(time));
  return times.length > 0 ? dayOf(new Date(Math.max(...times))) : null;
}

export function isEmptyKit(state: JobState): boolean {
  return state.fold_tests.length === 0 && (['machines', 'heads', 'towels', 'probes'] as const).every((list) => state.kit[list].length === 0);
}

/**
 * The facts, in an order in which nothing names what comes later. `statements` gives the data of an event by its id: where rival
 * statements stand, all are stated again, so that none is settled by the way.
 */
export function firmKit(job: string, state: JobState, statements: (event: string) => Record<string, unknown> | null): KitFact[] {
  const elevation = elevationGiven(state);
  const here = elevation === null ? {} : { elevation_metres: elevation };
  const facts: KitFact[] = [];
  const take = (kind: string, list: Entity[], more: (data: Record<string, unknown>, one: Entity) => Record<string, unknown> = () => ({})): void => {
    for (const one of list) {
      for (const event of one.events as string[]) {
        const data = statements(event);
        if (!data) continue;
        const kept = Object.fromEntries(Object.entries(data).filter(([key]) => !k_of_the_home.has(key)));
        facts.push({ kind, subject: one.id, data: { ...kept, ...more(kept, one) } });
      }
    }
  };
  take('machine/1', state.kit.machines);
  take('head/1', state.kit.heads);
  take('towel/1', state.kit.towels);
  take('probe/1', state.kit.probes);
  take('vacuum/1', state.kit.vacuums);
  take('weighing/1', state.weighings);
  // How water boils at a place, and how a test came out there, hangs on its height above the sea, not on the next home's.
  take('probe_check/1', state.probe_checks, (data) => (data.in === 'boiling_water' ? { ...here, ...pick(data, 'elevation_metres') } : {}));
  take('jet_check/1', state.jet_checks);
  take('rates/1', state.rates.slice(-1));
  take('fold_test/1', state.fold_tests, (data, test) => ({
    ...here, ...pick(data, 'elevation_metres'), ...given('on', testDay(test as FoldTest)), taken_from: data.taken_from ?? job,
  }));
  for (const test of state.fold_tests) take('reading/1', test.readings);
  return facts;
}

/** What the firm has settled for its kit, of all that is settled for a job. */
export function firmSettings(state: JobState): Record<string, unknown> {
  const old = state.settings;
  return old ? { ...pick(old, 'fold_test'), ...pick(old, 'fold_test_days') } : {};
}

function pick(data: Record<string, unknown>, key: string): Record<string, unknown> {
  return given(key, data[key]);
}

function given(key: string, value: unknown): Record<string, unknown> {
  return value === undefined || value === null ? {} : { [key]: value };
}
