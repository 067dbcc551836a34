// Items with the furniture the engine builds for them. One question per distinct item; answers stay while the page lives.
import { compute } from '../engine/compute';
import type { EngineError, Entity, Furniture, FurnitureRequest } from '../engine/shapes';
import { job } from '../record/job.svelte';
export type { Entity } from '../engine/shapes';

/** Changes to the edges of an item, in the order in which they were stated. */
export function changesOf(item: Entity): Entity[] {
  return job.state.edge_changes.filter((one) => one.item === item.id).sort((p, q) => (p.id < q.id ? -1 : 1));
}

/** The request of `furniture` that an item's facts make; null for an item that is on no list. */
export function furnitureRequest(item: Entity): FurnitureRequest | null {
  return job.requests?.furniture.find((one) => one.id === item.id)?.request ?? null;
}

class Shelf {
  private readonly asked = new Set<string>();
  private readonly generation = compute.generation();
  built = $state.raw<Record<string, Furniture>>({});
  failed = $state.raw<Record<string, EngineError>>({});

  /** Asks for what an item looks like, once. Call from an effect; read with `of`. */
  want(item: Entity): void {
    const request = furnitureRequest(item);
    if (request) this.ask(request);
  }

  ask(request: unknown): void {
    const key = JSON.stringify(request);
    if (this.asked.has(key)) return;
    this.asked.add(key);
    void compute.ask<Furniture>('furniture', request, this.generation, 9).then((outcome) => {
      if (outcome.ok) this.built = { ...this.built, [key]: outcome.answer };
      else {
        this.failed = { ...this.failed, [key]: outcome.error };
        this.asked.delete(key);
      }
    });
  }

  of(item: Entity): Furniture | null {
    return this.answerTo(furnitureRequest(item));
  }

  answerTo(request: unknown): Furniture | null {
    return request ? (this.built[JSON.stringify(request)] ?? null) : null;
  }

  errorOf(item: Entity): EngineError | null {
    const request = furnitureRequest(item);
    return request ? (this.failed[JSON.stringify(request)] ?? null) : null;
  }
}

export const shelf = new Shelf();

export interface Placed { x_metres: number; y_metres: number; turn_degrees?: number }
export interface Outline { x_metres: number; y_metres: number; width_metres: number; depth_metres: number }

export function numberOf(value: unknown): number | null {
  return typeof value === 'number' && Number.isFinite(value) ? value : null;
}

export function outlineOf(room: Entity): Outline | null {
  const raw = room.outline as Partial<Outline> | undefined;
  if (!raw || [raw.x_metres, raw.y_metres, raw.width_metres, raw.depth_metres].some((value) => numberOf(value) === null)) return null;
  return raw as Outline;
}

export function placedOf(item: Entity): Placed | null {
  const raw = item.place as Partial<Placed> | undefined;
  if (!raw || numberOf(raw.x_metres) === null || numberOf(raw.y_metres) === null) return null;
  return raw as Placed;
}
