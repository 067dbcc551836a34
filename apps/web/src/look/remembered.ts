// What this device remembers of how it shows things. Nothing remembered: as the browser is set.
import { firstOf, known, type Language } from '../words/languages';
import type { Units } from './measure';

export type Look = 'dark' | 'day';
export interface Remembered { units: Units; look: Look; language: Language }
const k_memory = 'lastegg-look';

export function remembered(): Remembered {
  let kept: { units?: Partial<Units>; look?: Look; language?: string } = {};
  try {
    kept = (JSON.parse(localStorage.getItem(k_memory) ?? '{}') as typeof kept | null) ?? {};
  } catch {
    // A memory that cannot be read is none.
  }
  return {
    units: { temperature: kept.units?.temperature === 'C' ? 'C' : 'F', length: kept.units?.length === 'mm' ? 'mm' : 'in' },
    look: kept.look === 'day' ? 'day' : 'dark',
    language: known(kept.language) ?? firstOf(navigator.languages ?? [navigator.language]),
  };
}

export function remember(kept: Remembered): void {
  localStorage.setItem(k_memory, JSON.stringify(kept));
}
