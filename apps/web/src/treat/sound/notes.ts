// The sounds of the guide, and the messages between the page and its audio thread. Times in seconds, pitches as factors
// of the chosen pitch. Why these: docs/decisions/060-beats-on-the-audio-clock.md.
export interface Tone { after: number; seconds: number; pitch: number; gain: number }

export type NoteName = 'beat' | 'strong' | 'count' | 'tick' | 'last' | 'move' | 'end' | 'mark' | 'too_fast' | 'too_slow' | 'attention';

export const k_notes: Record<NoteName, Tone[]> = {
  beat: [{ after: 0, seconds: 0.1, pitch: 1, gain: 0.8 }],
  strong: [{ after: 0, seconds: 0.14, pitch: 1.335, gain: 1 }],
  count: [{ after: 0, seconds: 0.1, pitch: 0.75, gain: 0.8 }],
  tick: [{ after: 0, seconds: 0.04, pitch: 0.75, gain: 0.3 }],
  last: [{ after: 0, seconds: 0.1, pitch: 0.75, gain: 0.8 }],
  move: [{ after: 0, seconds: 0.12, pitch: 1, gain: 1 }, { after: 0.14, seconds: 0.2, pitch: 1.5, gain: 1 }],
  end: [{ after: 0, seconds: 0.1, pitch: 1.335, gain: 1 }, { after: 0.14, seconds: 0.1, pitch: 1.335, gain: 1 }],
  mark: [{ after: 0, seconds: 0.05, pitch: 1.5, gain: 0.6 }],
  too_fast: [{ after: 0.1, seconds: 0.25, pitch: 1.2, gain: 1 }, { after: 0.36, seconds: 0.45, pitch: 0.7, gain: 1 }],
  too_slow: [{ after: 0.1, seconds: 0.25, pitch: 0.7, gain: 1 }, { after: 0.36, seconds: 0.45, pitch: 1.2, gain: 1 }],
  attention: [{ after: 0, seconds: 0.3, pitch: 0.7, gain: 1 }, { after: 0.36, seconds: 0.3, pitch: 0.7, gain: 1 }],
};

export interface Cue { after: number; note: NoteName }

/** A cycle that repeats from `at` on the audio clock; every `strongEvery`th has its first beat strong; `once` besides. */
export interface Score { at: number; cycle: number; cues: Cue[]; strongEvery: number; once: Cue[] }

export type ToVoice =
  | { type: 'score'; score: Score }
  | { type: 'silence' }
  | { type: 'note'; note: NoteName }
  | { type: 'sound'; hertz: number; gain: number };
export interface FromVoice { beat: number; note: NoteName }
