// How high above the sea the home lies, if anybody said; and heights as they are typed.
import type { JobState } from '../engine/shapes';
import { readNumber, type Units } from '../look/measure';
import { words } from '../words/words';

const k_foot_metres = 0.3048;
/** What the record takes (job/record/kind_builders.cpp). */
const k_lowest_metres = -450, k_highest_metres = 6000;

export function elevationGiven(state: JobState): number | null {
  const given = state.dwelling?.elevation_metres ?? state.job?.elevation_metres;
  return typeof given === 'number' ? given : null;
}

export const elevationUnit = (units: Units): string => (units.length === 'mm' ? 'm' : 'ft');

export function elevationText(metres: number, units: Units): string {
  return String(Math.round(units.length === 'mm' ? metres : metres / k_foot_metres));
}

export function elevationShown(metres: number, units: Units): string {
  return `${elevationText(metres, units)} ${elevationUnit(units)}`;
}

/** Metres of what was typed, or why it is refused. */
export function readElevation(label: string, text: string, units: Units): { metres: number } | { refused: string } {
  const value = readNumber(text);
  if (value === null) return { refused: words.inspect.notANumber(label) };
  const metres = units.length === 'mm' ? value : value * k_foot_metres;
  const said = `${text.trim()} ${elevationUnit(units)}`;
  if (metres < k_lowest_metres) return { refused: words.inspect.refusedMeasure(label, said, elevationShown(k_lowest_metres, units), true) };
  if (metres > k_highest_metres) return { refused: words.inspect.refusedMeasure(label, said, elevationShown(k_highest_metres, units), false) };
  return { metres };
}
