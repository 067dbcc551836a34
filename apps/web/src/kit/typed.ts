// Numbers as they are typed under Kit, and why one is refused.
import { readNumber } from '../look/measure';
import { words } from '../words/words';

/** Why a text is no number, or none above zero; null when it is one. */
export function refusal(text: string, positive = true): string | null {
  const value = readNumber(text);
  return value === null ? words.kit.notNumber : positive && value <= 0 ? words.kit.mustBePositive : null;
}

/** The number, with its refusal noted under the field's name. */
export function typedNumber(told: Record<string, string | null>, field: string, text: string, positive = true): number | null {
  told[field] = refusal(text, positive);
  return told[field] ? null : readNumber(text);
}
