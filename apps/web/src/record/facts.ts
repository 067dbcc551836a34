// The data of an entity as last recorded, without what the fold added to it.
import type { Entity } from '../engine/shapes';

const k_added = new Set(['id', 'event', 'events', 'at', 'kind_version']);

export function dataOf(entity: Entity, without: string[] = []): Record<string, unknown> {
  return Object.fromEntries(Object.entries(entity).filter(([key]) => !k_added.has(key) && !without.includes(key)));
}
