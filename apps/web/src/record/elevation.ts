// How high above the sea the home lies, if anybody said.
import type { JobState } from '../engine/shapes';
import type { Units } from '../look/measure';

export function elevationGiven(state: JobState): number | null {
  const given = state.dwelling?.elevation_metres ?? state.job?.elevation_metres;
  return typeof given === 'number' ? given : null;
}

export function elevationShown(metres: number, units: Units): string {
  return units.length === 'mm' ? `${Math.round(metres)} m` : `${Math.round(metres / 0.3048)} ft`;
}
