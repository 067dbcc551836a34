// The words of the person's language. Those of another language than US English are loaded before anything that uses
// words runs, and only when they are wanted; offline they come from the store of the service worker.
import { en, type Words } from './en';
import { language } from './language';
import { overlaid } from './overlay';

async function chosen(): Promise<Words> {
  if (language === 'es') return (await import('./es')).es;
  if (language === 'en-GB') return overlaid(en, (await import('./en_gb')).enGb);
  return en;
}

export const words: Words = await chosen();

/** A word for a key of an open list; the key itself, spaced, when the list does not hold it. */
export function named(list: Record<string, string>, key: string | null | undefined): string {
  if (!key) return '';
  return list[key] ?? key.replaceAll('_', ' ').replace(/^(\d+)x(\d+)$/, '$1 × $2 cm');
}
