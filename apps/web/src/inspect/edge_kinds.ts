// Kinds of an added edge, in the order of a picker. The compiler holds the list against the engine's own.
import type { FurnitureRequest } from '../engine/questions';

type Change = NonNullable<FurnitureRequest['changes']>[number];
export type EdgeKind = NonNullable<Change['kind']>;
export const k_edge_kinds: readonly EdgeKind[] = [
  'seam', 'welt', 'tape_edge', 'fold', 'tuft', 'quilting', 'pleat', 'skirt', 'zip', 'handle', 'label', 'vent', 'staple_line', 'dust_cover_edge', 'leg_joint',
  'gap', 'wood_joint', 'metal_joint', 'screw_hole', 'drawer_runner', 'headboard_back', 'skirting_gap', 'carpet_edge', 'curtain_heading', 'wall_joint',
  'heap', 'electrical_cover',
];
