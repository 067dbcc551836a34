import { en, type Words } from './en';

/** The words of the person's language; English is the only one so far. */
export const words: Words = en;

/** A word for a key of an open list; the key itself, spaced, when the list does not hold it. */
export function named(list: Record<string, string>, key: string | null | undefined): string {
  if (!key) return '';
  return list[key] ?? key.replaceAll('_', ' ').replace(/^(\d+)x(\d+)$/, '$1 × $2 cm');
}
