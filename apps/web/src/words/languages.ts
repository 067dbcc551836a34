// The languages there are, each named in itself, and which of them a browser asks for.
export type Language = 'en-US' | 'en-GB' | 'es';

export const k_languages: readonly { value: Language; text: string }[] = [
  { value: 'en-US', text: 'English (US)' }, { value: 'en-GB', text: 'English (UK)' }, { value: 'es', text: 'Español' },
];

/** The language a tag asks for, or null for one that is not there. English of other countries has the words of the UK. */
export function known(tag: unknown): Language | null {
  if (typeof tag !== 'string') return null;
  const [name, ...rest] = tag.toLowerCase().split('-');
  if (name === 'es') return 'es';
  if (name !== 'en') return null;
  return rest.length === 0 || rest.includes('us') || rest.includes('ca') ? 'en-US' : 'en-GB';
}

/** The first language of the browser that is there. */
export function firstOf(tags: readonly string[]): Language {
  for (const tag of tags) {
    const language = known(tag);
    if (language) return language;
  }
  return 'en-US';
}
