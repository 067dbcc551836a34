// How old a fold test is, and whether it is due again: after the firm's own interval, or once its machine was serviced.
import type { FoldTest, JobState } from '../engine/shapes';
import { dayAfter, daysBetween } from '../look/days';
import { testDay } from '../record/firm_kit';

/** A season. Common practice, no source: test again each season and after service. */
export const k_usual_test_days = 90;

export interface TestAge { made: string; days: number; dueOn: string; due: 'age' | 'service' | null; servicedOn: string | null }

export function testDays(state: JobState): number {
  const given = state.settings?.fold_test_days;
  return typeof given === 'number' ? given : k_usual_test_days;
}

/** Null where the day of the test is not known. A day that lies ahead, by a wrong clock, counts as today. */
export function ageOf(test: FoldTest, state: JobState, now: string): TestAge | null {
  const made = testDay(test);
  if (!made || Number.isNaN(daysBetween(made, now))) return null;
  const dueOn = dayAfter(made, testDays(state));
  const serviced = state.kit.machines.find((one) => one.id === test.machine)?.serviced_on;
  const servicedOn = typeof serviced === 'string' && serviced > made ? serviced : null;
  return { made, days: Math.max(0, daysBetween(made, now)), dueOn, due: servicedOn ? 'service' : now >= dueOn ? 'age' : null, servicedOn };
}
