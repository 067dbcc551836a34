// Days of the calendar as people read them. A day is text, "2026-03-02"; no clock and no time zone is in it.
import { locale } from '../words/language';

export function shownDay(day: string | null): string {
  if (!day) return '–';
  const date = new Date(`${day}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? day : date.toLocaleDateString(locale, { month: 'short', day: 'numeric', weekday: 'short', timeZone: 'UTC' });
}

/** A day with its year, as a sentence has it. */
export function shownDate(day: string): string {
  const date = new Date(`${day}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? day : date.toLocaleDateString(locale, { year: 'numeric', month: 'short', day: 'numeric', timeZone: 'UTC' });
}
