// A score for the audio thread from the beats of an edge.
import { k_move_seconds, type Beats } from '../beats';
import type { Cue, Score } from './notes';

/** Seconds of counting-in before an edge that does not begin where the last one ended (judgement: time to reach it). */
export const k_count_in_seconds = 3;
const k_last_ticks = 3;

export function scoreOf(beats: Beats, at: number, countIn: boolean): Score {
  const once: Cue[] = [];
  if (countIn) for (let left = k_count_in_seconds; left >= 1; left--) once.push({ after: -left, note: 'count' });
  if (beats.style === 'glide') {
    once.push({ after: beats.plannedSeconds, note: 'end' });
    return { at, cycle: beats.cycleSeconds, cues: [{ after: 0, note: 'beat' }], strongEvery: beats.strongEvery, once };
  }
  const cues: Cue[] = [{ after: 0, note: 'beat' }];
  for (let left = Math.ceil(beats.holdSeconds) - 1; left >= 1; left--) {
    cues.push({ after: beats.holdSeconds - left, note: left <= k_last_ticks ? 'last' : 'tick' });
  }
  cues.push({ after: beats.holdSeconds, note: 'move' });
  once.push({ after: beats.plannedSeconds + k_move_seconds / 2, note: 'end' });
  return { at, cycle: beats.cycleSeconds, cues, strongEvery: 1, once };
}
