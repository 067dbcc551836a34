// Geometry of the plan from above: where items without a place are drawn, and their outline. Pure geometry of a picture.
import type { Entity, Furniture } from '../engine/shapes';
import { outlineOf, placedOf, shelf, type Outline, type Placed } from './items.svelte';

/** A room whose size nobody gave is drawn like this. Source: judgement, an ordinary bedroom. */
export const k_usual_room: Outline = { x_metres: 0, y_metres: 0, width_metres: 3.6, depth_metres: 3.2 };

export interface OnPlan { item: Entity; furniture: Furniture | null; width: number; depth: number; place: Placed; told: boolean }

function sizeOf(furniture: Furniture | null): { width: number; depth: number } {
  if (!furniture || furniture.vertices_metres.length === 0) return { width: 0.8, depth: 0.6 };
  const xs = furniture.vertices_metres.map((point) => point[0]), ys = furniture.vertices_metres.map((point) => point[1]);
  return { width: Math.max(...xs) - Math.min(...xs), depth: Math.max(...ys) - Math.min(...ys) };
}

/** Items of a room with their place in it; those without one stand in rows from the far left corner. */
export function onPlan(room: Entity, items: Entity[], moved: Record<string, Placed> = {}): OnPlan[] {
  const outline = outlineOf(room) ?? k_usual_room;
  let x = 0.1, y = 0.1, row = 0;
  return items.filter((item) => item.room === room.id).map((item) => {
    const furniture = shelf.of(item);
    const { width, depth } = sizeOf(furniture);
    const own = moved[item.id] ?? placedOf(item);
    if (own) return { item, furniture, width, depth, place: own, told: true };
    if (x + width > outline.width_metres && x > 0.1) {
      x = 0.1;
      y += row + 0.1;
      row = 0;
    }
    const place = { x_metres: Math.min(outline.width_metres, x + width / 2), y_metres: Math.min(outline.depth_metres - 0.1, y + depth / 2) };
    x += width + 0.1;
    row = Math.max(row, depth);
    return { item, furniture, width, depth, place, told: false };
  });
}

/** Faces seen from above, low ones first, with the item's front towards the bottom of the plan. */
export function topFaces(furniture: Furniture): string[] {
  const xs = furniture.vertices_metres.map((point) => point[0]), ys = furniture.vertices_metres.map((point) => point[1]);
  const mx = (Math.min(...xs) + Math.max(...xs)) / 2, my = (Math.min(...ys) + Math.max(...ys)) / 2;
  return furniture.faces
    .map((face) => face.vertices.map((index) => furniture.vertices_metres[index]!))
    .map((points) => ({ points, high: Math.max(...points.map((point) => point[2])) }))
    .sort((p, q) => p.high - q.high)
    .map(({ points }) => points.map((point) => `${(point[0] - mx).toFixed(3)},${(my - point[1]).toFixed(3)}`).join(' '));
}
