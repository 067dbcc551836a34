// Prepares the picture of one pass: a table of temperatures by time and depth becomes stepped colour bins. Values between
// the table's own are interpolated for the eye only.
import type { PaceAnswer, PassAnswer } from '../engine/shapes';

export interface Layer { thickness_metres?: number; material?: string; title?: string; [more: string]: unknown }
export interface Section { times: number[]; depths: number[]; celsius: number[][]; until: number; lethalDepth: number | null }

/** The request that the engine left with its answer, with the depths of the picture put in; null when it left none. */
export function sectionRequest(answer: PaceAnswer): { request: Record<string, unknown>; layers: Layer[]; deepest: number } | null {
  const left = answer.middle_case;
  if (!left || !Array.isArray(left.stack)) return null;
  const layers = left.stack as Layer[];
  const thick = layers.reduce((sum, layer) => sum + Number(layer.thickness_metres ?? 0), 0);
  const target = answer.target_depth_metres?.p90 ?? 0.003;
  const deepest = Math.max(0.001, Math.min(thick > 0 ? thick * 0.999 : Infinity, Math.max(0.006, target * 2)));
  const depths = Array.from({ length: 41 }, (_, i) => (deepest * i) / 40);
  return { request: { ...left, depths_metres: depths }, layers, deepest };
}

export function sectionOf(answer: PassAnswer, depths: number[]): Section {
  const liftoff = Number((answer as unknown as { liftoff_seconds?: number }).liftoff_seconds ?? 4);
  const last = answer.times_seconds.at(-1) ?? 10;
  const doses = answer.dose as { egg: number }[] | undefined;
  let lethalDepth: number | null = null;
  if (Array.isArray(doses) && doses.length === depths.length) {
    // log10 2: the dose ratio from which the engine calls an egg dead (R >= 2, its mortality room).
    const dead = doses.findIndex((one) => one.egg < 0.30103);
    lethalDepth = dead === -1 ? depths.at(-1)! : dead === 0 ? 0 : depths[dead - 1]!;
  }
  return {
    times: answer.times_seconds, depths, celsius: answer.temperatures_celsius,
    until: Math.min(last, Math.max(8, liftoff * 3)), lethalDepth,
  };
}

/** Temperature at a time and depth of the picture. */
export function celsiusAt(section: Section, seconds: number, share: number): number {
  const { times, celsius } = section;
  let i = 1;
  let low = 1, high = times.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle]! < seconds) low = middle + 1;
    else high = middle;
  }
  i = low;
  const t0 = times[i - 1]!, t1 = times[i]!;
  const u = t1 > t0 ? Math.max(0, Math.min(1, (seconds - t0) / (t1 - t0))) : 0;
  const rows = section.depths.length;
  const d = Math.max(0, Math.min(rows - 1, share * (rows - 1)));
  const j = Math.min(rows - 2, Math.floor(d)), w = d - j;
  const at = (row: number[]) => row[j]! * (1 - w) + row[j + 1]! * w;
  return at(celsius[i - 1]!) * (1 - u) + at(celsius[i]!) * u;
}

export const k_bins_celsius = [35, 45, 55, 65, 75, 85];

export function binOf(celsius: number): number {
  let bin = 0;
  while (bin < k_bins_celsius.length && celsius >= k_bins_celsius[bin]!) bin++;
  return bin;
}
