// The question `as_treated` for one edge from what is on record. Passes carry their times only when the clock can have
// been right: in order and apart. Else the engine judges them one by one, which earns less.
import type { Edge, Entity } from '../engine/shapes';
import { timeOf } from '../record/uuid';
import { strokeBefore, type EdgeFacts } from './edge_stand';

/** Faster than this the head was not treating, and the engine's own range ends: such a stroke earns nothing. */
const k_fastest_metres_per_second = 0.5;
const treated = (stroke: Entity): boolean => stroke.interrupted === true || Number(stroke.length_metres) <= k_fastest_metres_per_second * Number(stroke.seconds);

function passTimes(strokes: Entity[]): number[] | null {
  const first = timeOf(strokes[0]?.id ?? '');
  const times = strokes.map((stroke) => (timeOf(stroke.id) - first) / 1000);
  const apart = times.every((time, i) => Number.isFinite(time) && (i === 0 || time >= times[i - 1]! + Number(strokes[i - 1]!.seconds)));
  return apart ? times : null;
}

function passOf(stroke: Entity, at: number | undefined, bug: boolean): Record<string, unknown> {
  const length = Number(stroke.length_metres), seconds = Math.max(0.001, Number(stroke.seconds));
  const marks = Array.isArray(stroke.marks) && stroke.marks.length >= 2 ? stroke.marks : null;
  const way = marks ? { marks }
    : stroke.interrupted === true
      ? { marks: [{ at_metres: 0, seconds: 0 }, { at_metres: length, seconds, interrupted: true }] }
      : { length_metres: length, seconds };
  return {
    ...way, ...(typeof stroke.towel === 'string' ? { towel: stroke.towel } : {}), ...(at === undefined ? {} : { at }),
    ...(bug ? { saw_live_bug: true } : {}),
  };
}

function readingOf(reading: Entity, pass: number): Record<string, unknown> {
  const { gun_celsius, palm, seconds_after, at_metres } = reading;
  return {
    ...(typeof gun_celsius === 'number' ? { gun_celsius } : { palm }), seconds_after,
    ...(typeof at_metres === 'number' ? { at_metres } : {}), ...(pass >= 0 ? { pass: pass + 1 } : {}),
  };
}

export function treatedRequest(stand: Record<string, unknown>, edge: Edge, facts: EdgeFacts, samples: number): Record<string, unknown> | null {
  const { marks, readings } = facts;
  if (facts.strokes.length === 0) return null;
  const strokes = facts.strokes.filter(treated);
  const times = passTimes(strokes);
  const bugs = new Set(marks.filter((one) => one.what === 'live_bug').map((one) => strokeBefore(strokes, one.id)));
  const spots = readings.map((one) => readingOf(one, strokeBefore(strokes, one.id))).filter((one) => 'pass' in one);
  return {
    ...stand, edge: edge.treat, length_metres: edge.length_metres,
    ...('calibration' in stand ? {} : { samples }),
    passes: strokes.map((stroke, i) => passOf(stroke, times?.[i], bugs.has(i))),
    ...(spots.length > 0 ? { spot_readings: spots } : {}),
  };
}
