// What a report is drawn from. The document is the engine's (question `report`); the furniture gives the pictures.
import type { ReportAnswer } from '../engine/questions';
import type { Furniture } from '../engine/shapes';
import { inUnits, join, length, type Units } from '../look/measure';
import type { EdgeState } from '../plan/edge_state';
import { shownDate } from '../look/days';

export type Paper = 'A4' | 'Letter';
export interface ReportData { report: ReportAnswer; furniture: Record<string, Furniture>; units: Units; paper: Paper }
export type ReportBlock = ReportAnswer['blocks'][number];
export type ReportLine = ReportBlock['rows'][number];
export type TreatedState = 'lethal' | 'short' | 'not_proven' | 'barred' | 'not_treated';
export const k_treated_states: readonly TreatedState[] = ['lethal', 'not_proven', 'short', 'barred', 'not_treated'];

/** The mark of a state; what was not treated has that of something still open. */
export function markOf(state: string | undefined): EdgeState {
  return state === 'lethal' || state === 'short' || state === 'not_proven' || state === 'barred' ? state : 'waiting';
}

export function marksOf(states: Record<string, string>): Record<string, EdgeState> {
  return Object.fromEntries(Object.entries(states).map(([edge, state]) => [edge, markOf(state)]));
}

const k_day = /\b(\d{4}-\d{2}-\d{2})\b/g;
const k_metres = /(\d+(?:\.\d+)?)(?:( of | to | de | a )(\d+(?:\.\d+)?))? m(?![\w/])/g;

/** A sentence of the engine for the reader: its temperatures, lengths and days as the job's units and people have them. */
export function forReader(sentence: string, units: Units): string {
  return inUnits(sentence, units)
    .replace(k_metres, (_all, first: string, joint: string | undefined, second: string | undefined) => {
      const one = join(length(Number(first), units));
      return second === undefined ? one : `${one}${joint}${join(length(Number(second), units))}`;
    })
    .replace(k_day, shownDate);
}
