// What the ear is told along one edge: for a gliding head a beat for each known stretch, for a slow one the cycle of
// place, hold, move. Pure; times in seconds from the start of the edge.
import type { PaceAnswer } from '../engine/shapes';
import type { LengthUnit } from '../look/measure';

export type Style = 'glide' | 'place_hold_move';
export interface Beats {
  style: Style;
  /** From one beat to the next; of a hold: one whole cycle. */
  cycleSeconds: number;
  /** Way of the head in one cycle. */
  cycleMetres: number;
  /** Every so many beats are stronger: a foot, or 100 mm times ten. */
  strongEvery: number;
  holdSeconds: number;
  /** Planned time of the whole edge, changes of place included. */
  plannedSeconds: number;
}

/** Below this pace no hand glides (judgement, product description: "nobody glides that slowly"). */
export const k_glide_floor_metres_per_second = 0.01;
/** Time to lift the head and set it down one length on, beside the hold (estimate: a lift and a place of a hand). */
export const k_move_seconds = 1;
/** One inch per second: common practice, no source. */
export const k_practice_metres_per_second = 0.0254;
/** Used when neither the plan nor the kit knows the head (estimate, as the engine's own default). */
export const k_usual_head_metres = 0.08;

const k_inch = 0.0254;
const k_stretches: Record<LengthUnit, number[]> = { in: [k_inch / 2, k_inch, 2 * k_inch, 4 * k_inch], mm: [0.01, 0.02, 0.05, 0.1] };
const k_long_stretch: Record<LengthUnit, number> = { in: 12 * k_inch, mm: 0.1 };

/** The stretch whose beats come nearest to one a second, on a log scale. */
export function stretchOfBeat(metresPerSecond: number, unit: LengthUnit): number {
  return k_stretches[unit].reduce((best, one) =>
    Math.abs(Math.log(one / metresPerSecond)) < Math.abs(Math.log(best / metresPerSecond)) ? one : best);
}

export function glideBeats(metresPerSecond: number, lengthMetres: number, unit: LengthUnit): Beats {
  const stretch = stretchOfBeat(metresPerSecond, unit);
  return {
    style: 'glide', cycleSeconds: stretch / metresPerSecond, cycleMetres: stretch,
    strongEvery: Math.max(1, Math.round(k_long_stretch[unit] / stretch)), holdSeconds: 0, plannedSeconds: lengthMetres / metresPerSecond,
  };
}

/** Holds at every head length; the last place is held for as long as every other. */
export function holdBeats(holdSeconds: number, moveMetres: number, lengthMetres: number): Beats {
  const places = Math.max(1, Math.ceil(lengthMetres / moveMetres - 1e-9));
  return {
    style: 'place_hold_move', cycleSeconds: holdSeconds + k_move_seconds, cycleMetres: moveMetres, strongEvery: 1, holdSeconds,
    plannedSeconds: places * holdSeconds + (places - 1) * k_move_seconds,
  };
}

/** The beats that an answer asks for; null when it names no pace. */
export function beatsOf(answer: PaceAnswer | null, lengthMetres: number, headMetres: number, unit: LengthUnit): Beats | null {
  const pace = answer?.recommended_metres_per_second;
  if (!answer || !pace) return null;
  if (answer.style !== 'place_hold_move' && pace >= k_glide_floor_metres_per_second * 0.999) return glideBeats(pace, lengthMetres, unit);
  const move = answer.move_metres ?? headMetres;
  return holdBeats(answer.hold_seconds ?? move / pace, move, lengthMetres);
}

/** Where the head should be, in metres along the edge. */
export function plannedPlace(beats: Beats, seconds: number, lengthMetres: number): number {
  const cycles = beats.style === 'glide' ? seconds / beats.cycleSeconds : Math.floor(seconds / beats.cycleSeconds);
  return Math.min(lengthMetres, Math.max(0, cycles * beats.cycleMetres));
}

/** Seconds of the present hold that are left; the move counts as zero. Null for a gliding head. */
export function holdLeft(beats: Beats, seconds: number): number | null {
  if (beats.style === 'glide') return null;
  const into = seconds % beats.cycleSeconds;
  return Math.max(0, beats.holdSeconds - into);
}

/** A pace as its mark says: outside the window by the hand, and on which side. */
export function paceSlip(lengthMetres: number, seconds: number, window: [number, number] | null): 'fast' | 'slow' | null {
  if (!window || !(seconds > 0)) return null;
  const pace = lengthMetres / seconds;
  return pace > window[1] ? 'fast' : pace < window[0] ? 'slow' : null;
}
