// Days of the calendar as people read them. A day is text, "2026-03-02"; no clock and no time zone is in it.
import { locale } from '../words/language';

const k_day_milliseconds = 86400000;

function shown(day: string | null, parts: Intl.DateTimeFormatOptions): string {
  if (!day) return '–';
  const date = new Date(`${day}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? day : date.toLocaleDateString(locale, { ...parts, timeZone: 'UTC' });
}

/** A day near at hand: "Mon, Mar 2". */
export function shownDay(day: string | null): string {
  return shown(day, { month: 'short', day: 'numeric', weekday: 'short' });
}

/** A day that may lie years back: "Mar 2, 2026". */
export function shownDate(day: string | null): string {
  return shown(day, { year: 'numeric', month: 'short', day: 'numeric' });
}

/** Whole days from one day to another; NaN where one of them is none. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / k_day_milliseconds);
}

export function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * k_day_milliseconds).toISOString().slice(0, 10);
}
