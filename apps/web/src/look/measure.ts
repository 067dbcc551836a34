// Showing and reading quantities. Stored in SI; converted only here, at the edge of the screen. A temperature difference
// converts without the offset of 32.
import { words } from '../words/words';

export type TemperatureUnit = 'C' | 'F';
export type LengthUnit = 'mm' | 'in';
export interface Units { temperature: TemperatureUnit; length: LengthUnit }

const k_inch_metres = 0.0254;
const k_foot_metres = 0.3048;

/** A number as people type it: point or comma; null when it is no number. */
export function readNumber(text: string): number | null {
  const plain = text.trim().replace(',', '.');
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain)) return null;
  const value = Number(plain);
  return Number.isFinite(value) ? value : null;
}

// One formatter for each count of places, kept: to make one takes longer than to draw a row.
const formatters: Intl.NumberFormat[] = [];
/** A number with a decimal point in every language: as it is stored, and as the engine's own sentences have it beside it. */
function digits(value: number, places: number): string {
  formatters[places] ??= new Intl.NumberFormat('en-US', { minimumFractionDigits: places, maximumFractionDigits: places, useGrouping: false });
  return formatters[places].format(value);
}

export interface Shown { text: string; unit: string }
export const join = ({ text, unit }: Shown): string => `${text} ${unit}`;

export function temperature(celsius: number, units: Units, places = 0): Shown {
  return units.temperature === 'C' ? { text: digits(celsius, places), unit: '°C' } : { text: digits(celsius * 1.8 + 32, places), unit: '°F' };
}

/** How far apart two temperatures are; no offset of 32. */
export function difference(kelvin: number, units: Units, places = 1): Shown {
  return units.temperature === 'C' ? { text: digits(kelvin, places), unit: '°C' } : { text: digits(kelvin * 1.8, places), unit: '°F' };
}

export function fromTemperature(value: number, units: Units): number {
  return units.temperature === 'C' ? value : (value - 32) / 1.8;
}

export function pace(metresPerSecond: number, units: Units): Shown {
  if (units.length === 'mm') {
    const value = metresPerSecond * 1000;
    return { text: digits(value, value < 10 ? 1 : 0), unit: 'mm/s' };
  }
  const value = metresPerSecond / k_inch_metres;
  return { text: digits(value, value < 1 ? 2 : 1), unit: 'in/s' };
}

export function fromPace(value: number, units: Units): number {
  return units.length === 'mm' ? value / 1000 : value * k_inch_metres;
}

/** Seconds for a stretch people can see: a foot, or 30 cm. */
export function stretch(metresPerSecond: number, units: Units): Shown {
  const length = units.length === 'in' ? k_foot_metres : 0.3;
  const seconds = length / metresPerSecond;
  return { text: digits(seconds, seconds < 10 ? 1 : 0), unit: units.length === 'in' ? words.measure.perFoot : words.measure.perThirty };
}

/** A length of the order of a thing (head, edge, room). */
export function length(metres: number, units: Units): Shown {
  if (units.length === 'mm') return metres < 1 ? { text: digits(metres * 100, 0), unit: 'cm' } : { text: digits(metres, 2), unit: 'm' };
  const inches = metres / k_inch_metres;
  if (inches < 36) return { text: digits(inches, inches < 10 ? 1 : 0), unit: 'in' };
  return { text: digits(metres / k_foot_metres, 1), unit: 'ft' };
}

/** A small length: head width, depth in the cloth. */
export function small(metres: number, units: Units): Shown {
  if (units.length === 'mm') return { text: digits(metres * 1000, metres < 0.01 ? 1 : 0), unit: 'mm' };
  const inches = metres / k_inch_metres;
  return { text: digits(inches, inches < 1 ? 2 : 1), unit: 'in' };
}

export function fromSmall(value: number, units: Units): number {
  return units.length === 'mm' ? value / 1000 : value * k_inch_metres;
}

const k_pound_kilograms = 0.45359237;

/** What a scale shows. */
export function mass(kilograms: number, units: Units, places = 2): Shown {
  return units.length === 'mm' ? { text: digits(kilograms, places), unit: 'kg' } : { text: digits(kilograms / k_pound_kilograms, places), unit: 'lb' };
}

export function fromMass(value: number, units: Units): number {
  return units.length === 'mm' ? value : value * k_pound_kilograms;
}

export function minutes(seconds: number): Shown {
  return seconds < 90 ? { text: String(Math.round(seconds)), unit: 's' } : { text: String(Math.round(seconds / 60)), unit: 'min' };
}

/** A probability as people count: "97 in 100", never 100 in 100 and never above 99. */
export function inHundred(share: number): string {
  const count = Math.round(share * 100);
  if (share > 0 && count < 1) return words.measure.underOne;
  return words.measure.inHundred(Math.min(99, Math.max(0, count)));
}

const k_quantity = /(-?\d+(?:\.\d+)?)(?:( to | and | a | y |[-\u2013])(-?\d+(?:\.\d+)?))? (C|mm\/s|mm)(?![\w/\u00b2])/g;

/** A sentence of the engine, which speaks in C, mm/s and mm in every language, with its quantities in the person's units. */
export function inUnits(sentence: string, units: Units): string {
  const shown = (value: string, unit: string): Shown =>
    unit === 'C' ? temperature(Number(value), units) : unit === 'mm' ? small(Number(value) / 1000, units) : pace(Number(value) / 1000, units);
  return sentence.replace(k_quantity, (_all, first: string, joint: string | undefined, second: string | undefined, unit: string) => {
    const one = shown(first, unit);
    return second === undefined ? join(one) : `${one.text}${joint}${join(shown(second, unit))}`;
  });
}
