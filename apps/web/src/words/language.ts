// Which language the page speaks, decided once, before a word is shown. A change takes effect by opening the page anew, so
// every part of it, and every answer of the engine, speaks the same language.
import { remembered } from '../look/remembered';
import { known, type Language } from './languages';

/** A report carries its language in its page; the page itself has it among the settings of the device. */
function asked(): Language {
  if (typeof document === 'undefined') return 'en-US';
  if (document.getElementById('report-data')) return known(document.documentElement.lang) ?? 'en-US';
  return remembered().language;
}

export const language: Language = asked();

function browserLanguages(): readonly string[] {
  return typeof navigator === 'undefined' ? [] : navigator.languages ?? [];
}

/** The one locale of dates and money: the person's own country where the language has several. */
export const locale: string = language === 'es' ? browserLanguages().find((tag) => /^es-/i.test(tag)) ?? 'es-419' : language;
