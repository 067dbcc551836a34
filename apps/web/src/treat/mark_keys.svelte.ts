// Marks without touching the screen: a key or a foot switch that types a key, and the buttons of a headset.
const k_memory = 'lastegg-mark-keys';
const k_usual = ['Space', 'Enter', 'PageDown'];
const k_silence_seconds = 12;

class MarkKeys {
  codes = $state<string[]>(k_usual);
  /** Set while the next key that is pressed is to become the mark. */
  learning = $state(false);
  private onmark: ((at: number) => void) | null = null;
  private player: HTMLAudioElement | null = null;

  constructor() {
    try {
      const kept = JSON.parse(localStorage.getItem(k_memory) ?? 'null') as unknown;
      if (Array.isArray(kept) && kept.every((one) => typeof one === 'string')) this.codes = kept as string[];
    } catch {
      // An unreadable memory leaves the usual keys.
    }
  }

  listen(onmark: (at: number) => void): void {
    this.stop();
    this.onmark = onmark;
    addEventListener('keydown', this.pressed, true);
  }

  stop(): void {
    removeEventListener('keydown', this.pressed, true);
    this.onmark = null;
    this.headset(false);
  }

  learn(): void {
    this.learning = true;
    addEventListener('keydown', this.learnt, { capture: true, once: true });
  }

  forget(): void {
    this.codes = k_usual;
    localStorage.removeItem(k_memory);
  }

  /** A browser hands headset buttons only to a page that plays something: a silent loop. Call from a gesture. */
  headset(wanted: boolean): void {
    const session = navigator.mediaSession as MediaSession | undefined;
    if (!session) return;
    const act = wanted ? () => this.onmark?.(performance.now()) : null;
    for (const action of ['play', 'pause', 'nexttrack'] as const) {
      try {
        session.setActionHandler(action, act);
      } catch {
        // This browser knows no such button.
      }
    }
    if (!wanted) {
      this.player?.pause();
      return;
    }
    if (!this.player) {
      this.player = new Audio(URL.createObjectURL(silence()));
      this.player.loop = true;
    }
    void this.player.play().catch(() => {});
    session.playbackState = 'playing';
  }

  private readonly pressed = (event: KeyboardEvent): void => {
    if (event.repeat || event.ctrlKey || event.altKey || event.metaKey || !this.codes.includes(event.code)) return;
    // A focused control keeps its own Space and Enter, except the mark itself.
    const focused = document.activeElement;
    const own = event.code === 'Space' || event.code === 'Enter';
    if (own && focused instanceof HTMLElement && focused.matches('button, a, input, select, textarea') && !focused.dataset.mark) return;
    event.preventDefault();
    event.stopPropagation();
    this.onmark?.(event.timeStamp);
  };

  private readonly learnt = (event: KeyboardEvent): void => {
    event.preventDefault();
    event.stopPropagation();
    this.learning = false;
    if (event.code === 'Escape' || event.code === '') return;
    this.codes = [event.code];
    localStorage.setItem(k_memory, JSON.stringify(this.codes));
  };
}

/** A silent sound file, 8-bit mono at 8 kHz: long enough that browsers treat it as media. */
function silence(): Blob {
  const rate = 8000, count = rate * k_silence_seconds;
  const bytes = new Uint8Array(44 + count).fill(128, 44);
  const view = new DataView(bytes.buffer);
  const word = (at: number, text: string) => [...text].forEach((letter, i) => view.setUint8(at + i, letter.charCodeAt(0)));
  word(0, 'RIFF');
  view.setUint32(4, 36 + count, true);
  word(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate, true);
  view.setUint16(32, 1, true);
  view.setUint16(34, 8, true);
  word(36, 'data');
  view.setUint32(40, count, true);
  return new Blob([bytes], { type: 'audio/wav' });
}

export const markKeys = new MarkKeys();
