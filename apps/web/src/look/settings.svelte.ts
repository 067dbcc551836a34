// How this device shows things: units and daylight. Units are also a fact of the job, so that a report can follow them.
import type { Units } from './measure';

export type Look = 'dark' | 'day';
const k_memory = 'lastegg-look';

function remembered(): { units: Units; look: Look } {
  try {
    const kept = JSON.parse(localStorage.getItem(k_memory) ?? '{}') as { units?: Partial<Units>; look?: Look };
    return {
      units: { temperature: kept.units?.temperature === 'C' ? 'C' : 'F', length: kept.units?.length === 'mm' ? 'mm' : 'in' },
      look: kept.look === 'day' ? 'day' : 'dark',
    };
  } catch {
    return { units: { temperature: 'F', length: 'in' }, look: 'dark' };
  }
}

class Settings {
  units = $state<Units>({ temperature: 'F', length: 'in' });
  look = $state<Look>('dark');

  constructor() {
    const kept = remembered();
    this.units = kept.units;
    this.look = kept.look;
    this.show();
  }

  keep(): void {
    this.show();
    localStorage.setItem(k_memory, JSON.stringify({ units: this.units, look: this.look }));
  }

  private show(): void {
    document.documentElement.dataset.look = this.look;
    document.querySelector('meta[name="theme-color"]')?.setAttribute('content', this.look === 'day' ? '#f4eee1' : '#101417');
  }
}

export const settings = new Settings();
