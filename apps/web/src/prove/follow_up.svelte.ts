// The return visit of the open job: its day of treatment from the record, the temperature from the person.
import { compute } from '../engine/compute';
import type { FollowUpAnswer } from '../engine/questions';
import type { EngineError, JobState } from '../engine/shapes';
import { job } from '../record/job.svelte';
import { dayOf } from '../record/today';
import { timeOf } from '../record/uuid';

/** Days of passes without a visit, by the time in their ids. */
function strokeDays(state: JobState): string[] {
  return state.strokes.map((one) => timeOf(one.id)).filter((time) => !Number.isNaN(time)).map((time) => dayOf(new Date(time)));
}

const k_usual_celsius = 20;  // a cool home: the cautious start of the picker

class FollowUp {
  celsius = $state(k_usual_celsius);
  private said = $state.raw<{ job: string | null; day: string | null } | null>(null);
  answer = $state.raw<FollowUpAnswer | null>(null);
  error = $state.raw<EngineError | null>(null);
  private generation = 0;

  /** The day, where the person has said another for this job than its record does. */
  get day(): string | null {
    return this.said?.job === job.id ? this.said.day : null;
  }

  set day(day: string | null) {
    this.said = { job: job.id, day };
  }

  /** Neither a pass on record nor a day that the person has said: what follows is a plan. */
  planned(state: JobState): boolean {
    return this.day === null && state.strokes.length === 0;
  }

  /** The last day of treatment by the record; that of the planned visit while nothing has been treated. */
  treatedOn(state: JobState): string | null {
    if (this.day) return this.day;
    const passed = new Set(state.strokes.map((one) => one.visit));
    const visits = state.visits.filter((visit) => visit.purpose !== 'inspect' && (state.strokes.length === 0 || passed.has(visit.id)));
    const days = visits.map((visit) => visit.on).filter((on): on is string => typeof on === 'string');
    if (state.strokes.length > 0 && days.length === 0) days.push(...strokeDays(state));
    return days.sort().at(-1) ?? null;
  }

  ask(state: JobState): void {
    const treatedOn = this.treatedOn(state);
    const celsius = this.celsius;
    if (this.generation) compute.drop(this.generation);
    const generation = (this.generation = compute.generation());
    if (!treatedOn) {
      this.answer = null;
      return;
    }
    const title = String(state.job?.title ?? '');
    void compute.ask<FollowUpAnswer>('follow_up', { temperature_celsius: celsius, treated_on: treatedOn, ...(title ? { title } : {}) }, generation, 8).then((outcome) => {
      if (generation !== this.generation) return;
      this.answer = outcome.ok ? outcome.answer : null;
      this.error = outcome.ok || outcome.error.kind === 'cancelled' ? null : outcome.error;
    });
  }
}

export const followUp = new FollowUp();
