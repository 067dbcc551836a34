// Notices that the phone stopped watching while an edge ran: hidden page, sleep, a stopped page, a clock that jumped. Time
// in which nobody watched is unknown, so it is never counted as heat.
export type Lost = 'hidden' | 'asleep' | 'clock' | 'sound';

const k_tick_milliseconds = 250;
/** A longer hole between two ticks means that the device slept or the page stood still (judgement: ten ticks). */
export const k_longest_gap_milliseconds = 2500;
/** The wall clock may be set by the network in small steps; a larger one means sleep or a changed clock (judgement). */
const k_largest_step_milliseconds = 2000;

export class Attention {
  private timer: ReturnType<typeof setInterval> | null = null;
  private seen = 0;
  private offset = 0;

  constructor(private readonly onlost: (why: Lost, last: number) => void, private readonly ontick: (now: number) => void) {}

  watch(): void {
    this.rest();
    this.seen = performance.now();
    this.offset = Date.now() - this.seen;
    this.timer = setInterval(() => this.look(), k_tick_milliseconds);
    document.addEventListener('visibilitychange', this.hidden);
    addEventListener('pagehide', this.hidden);
    document.addEventListener('freeze', this.hidden);
  }

  rest(): void {
    if (this.timer !== null) clearInterval(this.timer);
    this.timer = null;
    document.removeEventListener('visibilitychange', this.hidden);
    removeEventListener('pagehide', this.hidden);
    document.removeEventListener('freeze', this.hidden);
  }

  /** Looks now, as every tick does. True when nothing was missed since the last look. */
  look(): boolean {
    if (this.timer === null) return true;
    const now = performance.now(), offset = Date.now() - now, last = this.seen;
    const why: Lost | null = now - last > k_longest_gap_milliseconds ? 'asleep' : Math.abs(offset - this.offset) > k_largest_step_milliseconds ? 'clock' : null;
    this.seen = now;
    this.offset = offset;
    if (why) this.onlost(why, last);
    else this.ontick(now);
    return why === null;
  }

  private readonly hidden = (event: Event): void => {
    if (this.timer === null || (event.type === 'visibilitychange' && document.visibilityState !== 'hidden')) return;
    this.onlost('hidden', performance.now());
  };
}
