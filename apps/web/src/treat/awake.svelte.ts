// Keeps the screen on while a person treats, where the browser can; asks again whenever the page comes back into view.
class Awake {
  /** 'off' until asked for; 'refused' when this browser cannot, so that the screen can say so. */
  state = $state<'off' | 'held' | 'refused'>('off');
  private lock: WakeLockSentinel | null = null;
  private wanted = false;

  constructor() {
    document.addEventListener('visibilitychange', () => {
      if (this.wanted && document.visibilityState === 'visible') void this.ask();
    });
  }

  hold(): void {
    this.wanted = true;
    void this.ask();
  }

  release(): void {
    this.wanted = false;
    if (this.state === 'held') this.state = 'off';
    void this.lock?.release().catch(() => {});
    this.lock = null;
  }

  private async ask(): Promise<void> {
    try {
      if (this.lock && !this.lock.released) return;
      this.lock = await navigator.wakeLock.request('screen');
      this.state = this.wanted ? 'held' : 'off';
      if (!this.wanted) await this.lock.release();
    } catch {
      this.state = 'refused';
    }
  }
}

export const awake = new Awake();
