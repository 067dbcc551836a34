// The page's words in British English: only the entries that differ from en.ts.
import type { Words } from './en';
import type { Overlay } from './overlay';

export const enGb: Overlay<Words> = {
  kinds: { tape_edge: 'tape edge' },
};
