// Lengths of furniture and rooms as people read a tape: whole and half inches, or centimeters. Stored in metres.
import { join, readNumber, type Shown, type Units } from '../look/measure';
export { join, readNumber, type Units };

const k_inch_metres = 0.0254;

/** In inches or centimeters whatever the size, so that a field keeps one unit. */
export function length(metres: number, units: Units): Shown {
  const value = units.length === 'in' ? metres / k_inch_metres : metres * 100;
  const rounded = Math.round(value * 10) / 10;
  return { text: Number.isInteger(rounded) ? String(rounded) : rounded.toFixed(1), unit: units.length === 'in' ? 'in' : 'cm' };
}

export function fromLength(value: number, units: Units): number {
  return units.length === 'in' ? value * k_inch_metres : value / 100;
}

/** One press of plus or minus. */
export function lengthStep(units: Units): number {
  return units.length === 'in' ? 1 : 2;
}
