// Sources beside figures: a work stands as it is cited, in its own language; that there is none is said in the reader's words.
import { named, words } from '../words/words';

export function sourceTold(source: string, locator: string): string {
  return `${named(words.sources, source)}, ${words.noSource[locator] ?? locator}`;
}
