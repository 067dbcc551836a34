// A new version of the page, once the browser has it whole: it waits until a person takes it, on Record and between visits.
// Taking it loads the page anew, in every tab.
import { registerSW } from 'virtual:pwa-register';
import { treatingHere } from '../treat/draft';
import { job } from './job.svelte';
import { timeOf } from './uuid';

/** A visit counts as over this long after its last mark (judgement): longer than a meal, shorter than a night. */
const k_visit_milliseconds = 4 * 3600 * 1000;
const k_look_milliseconds = 5000;

class Update {
  waiting = $state(false);
  /** A visit is running: an edge is being treated in some tab, or one was not long ago. */
  visit = $state(true);
  private use: ((reload: boolean) => Promise<void>) | null = null;

  get offered(): boolean {
    return this.waiting && !this.visit;
  }

  listen(): void {
    this.use = registerSW({
      onNeedRefresh: () => { this.waiting = true; },
      // Another tab took it. A tab in which a head is on an edge goes on with what it has loaded.
      onNeedReload: () => void this.look().then(() => { if (!this.visit) location.reload(); }),
    });
  }

  /** Looks whether a visit is running, now and again while the offer may be on the screen. Returns the way to stop. */
  watch(): () => void {
    void this.look();
    const timer = setInterval(() => void this.look(), k_look_milliseconds);
    return () => clearInterval(timer);
  }

  async take(): Promise<void> {
    await this.look();
    if (this.offered) await this.use?.(true);
  }

  private async look(): Promise<void> {
    const marks = [...job.state.strokes, ...job.state.edge_marks, ...job.state.spot_readings];
    const now = Date.now();
    const recent = marks.some((one) => Math.abs(now - timeOf(one.id)) < k_visit_milliseconds);
    this.visit = recent || (await treatingHere());
  }
}

export const update = new Update();
