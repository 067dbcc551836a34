// The guide's voice on the page's side: it starts the audio thread inside a person's gesture and hands it scores. What it
// can say of itself goes to the screen: a guide nobody hears must not look as if it worked.
import type { Beats } from '../beats';
import type { FromVoice, NoteName, ToVoice } from './notes';
import { scoreOf } from './score';
import workletUrl from './voice.worklet.ts?worker&url';

export type VoiceState = 'asleep' | 'speaking' | 'unavailable';
const k_memory = 'lastegg-sound';
export const k_pitches_hertz = [700, 1000, 1300] as const;
export const k_loudness = [0.35, 0.65, 1] as const;

function remembered(): { hertz: number; gain: number; vibrate: boolean } {
  try {
    const kept = JSON.parse(localStorage.getItem(k_memory) ?? '{}') as { hertz?: number; gain?: number; vibrate?: boolean };
    return { hertz: kept.hertz ?? 1000, gain: kept.gain ?? 1, vibrate: kept.vibrate !== false };
  } catch {
    return { hertz: 1000, gain: 1, vibrate: true };
  }
}

class Voice {
  state = $state<VoiceState>('asleep');
  hertz = $state(1000);
  gain = $state(1);
  vibrate = $state(true);
  /** Called when the system takes the sound away: a call, or the output is gone. */
  onlost: () => void = () => {};
  /** Where the score that sounds began on the audio clock; null in silence. */
  began = $state<number | null>(null);
  private context: AudioContext | null = null;
  private node: AudioWorkletNode | null = null;

  constructor() {
    Object.assign(this, remembered());
  }

  /** Call from a gesture. True when beats will be heard, as far as the browser can tell. */
  async wake(): Promise<boolean> {
    if (this.state === 'unavailable') return false;
    try {
      if (!this.context) {
        const context = new AudioContext({ latencyHint: 'interactive' });
        await context.audioWorklet.addModule(workletUrl);
        this.node = new AudioWorkletNode(context, 'voice', { numberOfInputs: 0, outputChannelCount: [1] });
        this.node.port.onmessage = ({ data }: MessageEvent<FromVoice>) => this.felt(data.note);
        this.node.connect(context.destination);
        context.onstatechange = () => {
          if (context.state !== 'running' && this.began !== null) this.onlost();
          this.state = context.state === 'running' ? 'speaking' : 'asleep';
        };
        this.context = context;
        this.tell({ type: 'sound', hertz: this.hertz, gain: this.gain });
      }
      if (this.context.state !== 'running') await this.context.resume();
      this.state = this.context.state === 'running' ? 'speaking' : 'asleep';
    } catch {
      this.state = 'unavailable';
    }
    return this.state === 'speaking';
  }

  /** Beats of an edge whose start lies at `startMilliseconds` of the page's monotonic clock, before or after now. */
  play(beats: Beats, startMilliseconds: number, countIn: boolean): void {
    if (!this.context || this.state !== 'speaking') return;
    this.began = this.context.currentTime + (startMilliseconds - performance.now()) / 1000;
    this.tell({ type: 'score', score: scoreOf(beats, this.began, countIn) });
  }

  silence(): void {
    this.began = null;
    this.tell({ type: 'silence' });
  }

  say(note: NoteName): void {
    this.tell({ type: 'note', note });
    if (note !== 'mark') this.felt(note);
  }

  keep(): void {
    localStorage.setItem(k_memory, JSON.stringify({ hertz: this.hertz, gain: this.gain, vibrate: this.vibrate }));
    this.tell({ type: 'sound', hertz: this.hertz, gain: this.gain });
  }

  private tell(message: ToVoice): void {
    this.node?.port.postMessage(message);
  }

  private felt(note: NoteName): void {
    if (!this.vibrate || note === 'tick' || typeof navigator.vibrate !== 'function') return;
    navigator.vibrate(note === 'beat' || note === 'count' || note === 'last' ? 35 : note === 'strong' ? 70 : [90, 60, 140]);
  }
}

export const voice = new Voice();
