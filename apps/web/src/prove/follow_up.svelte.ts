// The return visit of the open job: its day of treatment from the record, the temperature from the person.
import { compute } from '../engine/compute';
import type { FollowUpAnswer } from '../engine/questions';
import type { EngineError, JobState } from '../engine/shapes';

const k_usual_celsius = 20;  // a cool home: the cautious start of the picker

class FollowUp {
  celsius = $state(k_usual_celsius);
  /** The day, where the person has said another than the record's. */
  day = $state<string | null>(null);
  answer = $state.raw<FollowUpAnswer | null>(null);
  error = $state.raw<EngineError | null>(null);
  private generation = 0;

  /** The last day on which the record says that something was treated. */
  treatedOn(state: JobState): string | null {
    if (this.day) return this.day;
    const days = state.visits.filter((visit) => visit.purpose !== 'inspect').map((visit) => visit.on).filter((on): on is string => typeof on === 'string');
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
