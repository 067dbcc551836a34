// The audio thread: it owns the beats. Every beat is placed by its sample number, counted from the start of the score,
// so that neither timers nor a busy page can move it.
import { k_notes, type Cue, type FromVoice, type NoteName, type Score, type ToVoice } from './notes';

declare const sampleRate: number;
declare const currentFrame: number;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: typeof AudioWorkletProcessor): void;

interface Sounding { from: number; frames: number; step: number; gain: number }

const k_attack_seconds = 0.004;
const k_release_seconds = 0.02;

class Voice extends AudioWorkletProcessor {
  private score: Score | null = null;
  private cycle = 0;
  private next = 0;
  private nextOnce = 0;
  private sounding: Sounding[] = [];
  private hertz = 1000;
  private gain = 0.8;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<ToVoice>) => {
      if (data.type === 'score') this.begin(data.score);
      else if (data.type === 'silence') this.score = null;
      else if (data.type === 'note') this.sound(data.note, currentFrame);
      else {
        this.hertz = data.hertz;
        this.gain = data.gain;
      }
    };
  }

  private begin(score: Score): void {
    this.score = score;
    this.cycle = this.next = this.nextOnce = 0;
    // What lies in the past is left out: a late beat would mislead the hand.
    while (this.frameOf(score) < currentFrame) this.step(score);
    while (this.nextOnce < score.once.length && this.frameAt(score.at + score.once[this.nextOnce]!.after) < currentFrame) this.nextOnce++;
  }

  private frameAt(seconds: number): number {
    return Math.round(seconds * sampleRate);
  }

  private frameOf(score: Score): number {
    return this.frameAt(score.at + this.cycle * score.cycle + score.cues[this.next]!.after);
  }

  private step(score: Score): void {
    this.next++;
    if (this.next < score.cues.length) return;
    this.next = 0;
    this.cycle++;
  }

  private sound(name: NoteName, frame: number): void {
    for (const tone of k_notes[name]) {
      this.sounding.push({
        from: frame + this.frameAt(tone.after), frames: this.frameAt(tone.seconds), gain: tone.gain,
        step: (2 * Math.PI * this.hertz * tone.pitch) / sampleRate,
      });
    }
  }

  private due(end: number): void {
    const score = this.score;
    if (!score) return;
    while (this.nextOnce < score.once.length && this.frameAt(score.at + score.once[this.nextOnce]!.after) < end) {
      const cue = score.once[this.nextOnce++]!;
      this.sound(cue.note, this.frameAt(score.at + cue.after));
    }
    for (let frame = this.frameOf(score); frame < end; frame = this.frameOf(score)) {
      const cue: Cue = score.cues[this.next]!;
      const strong = this.next === 0 && this.cycle % score.strongEvery === 0;
      const note = cue.note === 'beat' && strong ? 'strong' : cue.note;
      this.sound(note, frame);
      this.port.postMessage({ beat: this.cycle, note } satisfies FromVoice);
      this.step(score);
    }
  }

  process(_inputs: Float32Array[][], outputs: Float32Array[][]): boolean {
    const channels = outputs[0]!;
    const mono = channels[0];
    if (!mono) return true;
    this.due(currentFrame + mono.length);
    const attack = k_attack_seconds * sampleRate, release = k_release_seconds * sampleRate;
    for (const one of this.sounding) {
      for (let i = Math.max(0, one.from - currentFrame); i < mono.length; i++) {
        const n = currentFrame + i - one.from;
        if (n >= one.frames) break;
        const shape = Math.min(1, n / attack, (one.frames - n) / release);
        // Two partials a fifth apart: the second still stands out where hiss covers the first.
        mono[i]! += 0.62 * this.gain * one.gain * shape * (Math.sin(n * one.step) + 0.5 * Math.sin(1.5 * n * one.step));
      }
    }
    this.sounding = this.sounding.filter((one) => one.from + one.frames > currentFrame + mono.length);
    for (let c = 1; c < channels.length; c++) channels[c]!.set(mono);
    return true;
  }
}

registerProcessor('voice', Voice);
