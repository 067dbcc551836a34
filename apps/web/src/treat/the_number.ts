// The one number of the field screen, and what it means to those who hear the screen read.
import { words } from '../words/words';
import { holdLeft, type Beats } from './beats';

/** Minutes and seconds; a leading plus when the planned time is over. */
function clockText(seconds: number): string {
  const whole = Math.ceil(Math.abs(seconds) - 1e-6);
  return `${seconds < -0.5 ? '+' : ''}${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

export interface TheNumber { text: string; means: string; moving: boolean }

/** `seconds` from the start of the edge, negative while it is counted in; null while no edge runs. */
export function theNumber(beats: Beats | null, seconds: number | null): TheNumber {
  const { number, move } = words.treat.field;
  if (!beats) return { text: '', means: '', moving: false };
  if (seconds === null) return { text: clockText(beats.plannedSeconds), means: number.planned, moving: false };
  if (seconds < 0) return { text: String(Math.ceil(-seconds)), means: number.count, moving: false };
  const hold = holdLeft(beats, seconds);
  if (hold === null || seconds >= beats.plannedSeconds) return { text: clockText(beats.plannedSeconds - seconds), means: number.left, moving: false };
  return { text: hold <= 0 ? move : String(Math.ceil(hold)), means: number.hold, moving: hold <= 0 };
}
