// How this device shows things: units, daylight, language. Units and language are also facts of the job, so that a report
// can follow them.
import type { Language } from '../words/languages';
import type { Units } from './measure';
import { remember, remembered, type Look } from './remembered';

export type { Look };

class Settings {
  units = $state<Units>({ temperature: 'F', length: 'in' });
  look = $state<Look>('dark');
  /** The one chosen. What the page speaks is `language` of apps/web/src/words/language.ts, until it is opened anew. */
  language = $state<Language>('en-US');

  constructor() {
    const kept = remembered();
    this.units = kept.units;
    this.look = kept.look;
    this.language = kept.language;
    this.show();
  }

  keep(): void {
    this.show();
    remember({ units: $state.snapshot(this.units), look: this.look, language: this.language });
  }

  private show(): void {
    document.documentElement.dataset.look = this.look;
    document.querySelector('meta[name="theme-color"]')?.setAttribute('content', this.look === 'day' ? '#f4eee1' : '#101417');
  }
}

export const settings = new Settings();
