// What the inspection so far amounts to, as the engine's question `survey` answers it. Asked again when a fact it rests on
// has changed; the last answer stays on the screen until the next is there.
import { compute } from '../engine/compute';
import type { SurveyAnswer } from '../engine/questions';
import type { EngineError, Entity, JobState } from '../engine/shapes';
import { job } from '../record/job.svelte';
import { catalogue } from './catalogue.svelte';
import { placedOf, shelf } from './items.svelte';

export type Level = SurveyAnswer['level'];
export type Caution = SurveyAnswer['cautions'][number];

const pick = (from: Entity, keys: string[]): Record<string, unknown> =>
  Object.fromEntries(keys.filter((key) => from[key] !== undefined && from[key] !== null).map((key) => [key, from[key]]));

/** The request, with what speaks of rooms and items that are still listed. Null until the catalogue is there. */
export function surveyRequest(state: JobState): Record<string, unknown> | null {
  if (!catalogue.answer) return null;
  const rooms = new Set(state.rooms.map((one) => one.id));
  const listed = state.items.filter((one) => catalogue.kind(one.kind));
  const items = new Set(listed.map((one) => one.id));
  const stands = (one: Entity) => (!one.item || items.has(String(one.item))) && (!one.room || rooms.has(String(one.room)));
  const tried = state.prior_treatments;
  return {
    rooms: state.rooms.map((one) => ({ id: one.id })),
    items: listed.map((one) => {
      const place = placedOf(one), built = shelf.of(one);
      return {
        id: one.id, kind: one.kind, ...(rooms.has(String(one.room)) ? { room: one.room } : {}),
        ...(place ? { x_metres: place.x_metres, y_metres: place.y_metres } : {}), ...(one.sleeps_here === true ? { sleeps_here: true } : {}),
        ...(built && built.edges.length > 0 ? { edges: built.edges.length } : {}),
      };
    }),
    evidence: state.evidence.filter(stands).map((one) => pick(one, ['item', 'room', 'edge', 'look', 'adults', 'nymphs', 'eggs', 'cast_skins', 'spots', 'dead', 'how', 'certain'])),
    traps: state.trap_checks.flatMap((check) => {
      const trap = state.traps.find((one) => one.id === check.trap);
      return trap && stands(trap) ? [{ ...pick(trap, ['item', 'room']), ...pick(check, ['adults', 'nymphs', 'missing', 'certain']) }] : [];
    }),
    risks: state.risks.filter(stands).map((one) => ({ id: one.id, what: one.what, ...pick(one, ['room', 'item', 'settled', 'settled_by']) })),
    treated_before: tried.some((one) => one.what !== 'not_known') ? 'yes' : 'not_known',
  };
}

class Survey {
  answer = $state.raw<SurveyAnswer | null>(null);
  error = $state.raw<EngineError | null>(null);
  private asked = '';
  private generation = 0;

  /** Call from an effect: it follows the job's facts. */
  want(): void {
    catalogue.want();
    const request = surveyRequest(job.state);
    if (!request) return;
    const asked = JSON.stringify(request);
    if (asked === this.asked) return;
    this.asked = asked;
    if (this.generation) compute.drop(this.generation);
    this.generation = compute.generation();
    void compute.ask<SurveyAnswer>('survey', request, this.generation, 8).then((outcome) => {
      if (this.asked !== asked) return;
      this.answer = outcome.ok ? outcome.answer : this.answer;
      this.error = outcome.ok ? null : outcome.error;
    });
  }

  item(id: string): SurveyAnswer['items'][number] | null {
    return this.answer?.items.find((one) => one.id === id) ?? null;
  }

  level(id: string): Level {
    return this.item(id)?.level ?? this.answer?.rooms.find((one) => one.id === id)?.level ?? 'not_looked';
  }

  /** Cautions of the whole home, and of the room or item that is shown. */
  cautionsAt(room: string | null, item: string | null): Caution[] {
    return (this.answer?.cautions ?? []).filter((one) => (!one.room || one.room === room) && (!one.item || one.item === item));
  }
}

export const survey = new Survey();
