// Where an edge stands: what was done to it, in order of time, and what follows. Times come from the ids of the facts,
// which begin with their milliseconds; a wrong clock can only make passes count one by one.
import type { Edge, Entity, JobState, PaceAnswer, TreatedAnswer } from '../engine/shapes';

export type Status = 'todo' | 'redo' | 'done' | 'unproven' | 'judging' | 'skipped' | 'out_of_reach' | 'left' | 'barred';
export interface EdgeFacts { strokes: Entity[]; marks: Entity[]; notes: Entity[]; readings: Entity[] }
export interface Stand extends EdgeFacts { edge: Edge; status: Status; answer: PaceAnswer | null; verdict: TreatedAnswer | null; waiting: boolean }

export const k_no_facts: EdgeFacts = { strokes: [], marks: [], notes: [], readings: [] };

export function factsByEdge(state: JobState, item: string): Map<string, EdgeFacts> {
  const all = new Map<string, EdgeFacts>();
  const put = (list: Entity[], key: keyof EdgeFacts) => {
    for (const one of [...list].sort((p, q) => (p.id < q.id ? -1 : 1))) {
      if (one.item !== item) continue;
      const edge = String(one.edge);
      const facts = all.get(edge) ?? { strokes: [], marks: [], notes: [], readings: [] };
      facts[key].push(one);
      all.set(edge, facts);
    }
  };
  put(state.strokes, 'strokes');
  put(state.edge_marks, 'marks');
  put(state.redo_notes, 'notes');
  put(state.spot_readings, 'readings');
  return all;
}

/** Which stroke a later fact belongs to: the last one that had begun. -1 when there is none. */
export function strokeBefore(strokes: Entity[], id: string): number {
  let found = -1;
  strokes.forEach((stroke, i) => { if (stroke.id < id) found = i; });
  return found;
}

export function hasPace(answer: PaceAnswer | null): boolean {
  return answer?.recommended_metres_per_second !== null && answer?.recommended_metres_per_second !== undefined;
}

function statusOf(facts: EdgeFacts, answer: PaceAnswer | null, verdict: TreatedAnswer | null, refused: boolean): Status {
  if (answer?.harm_at_recommended === 'barred') return 'barred';
  const last = facts.strokes.at(-1);
  const after = (one: Entity) => !last || one.id > last.id;
  const since = facts.marks.filter(after);
  const closing = since.filter((one) => one.what === 'skipped' || one.what === 'could_not_reach').at(-1);
  if (closing) return closing.what === 'skipped' ? 'skipped' : 'out_of_reach';
  if (last && facts.notes.some(after)) return 'left';
  if (!last) return 'todo';
  if (last.interrupted === true || since.some((one) => one.what === 'live_bug')) return 'redo';
  if (facts.strokes.filter((one) => one.interrupted !== true).length < (answer?.passes ?? 1)) return 'todo';
  if (!verdict) return refused ? 'redo' : 'judging';
  if (verdict.verdict === 'lethal') return 'done';
  return verdict.verdict === 'short' || hasPace(answer) ? 'redo' : 'unproven';
}

export function standOf(edge: Edge, facts: EdgeFacts, answer: PaceAnswer | null, waiting: boolean, verdict: TreatedAnswer | null, refused = false): Stand {
  return { ...facts, edge, answer, waiting, verdict, status: statusOf(facts, answer, verdict, refused) };
}

/** Edges in the order in which the head goes: by height, and as the item lists them at one height. */
export function inOrder(edges: Edge[], order: 'top_to_bottom' | 'bottom_to_top'): Edge[] {
  const sign = order === 'top_to_bottom' ? -1 : 1;
  return [...edges].sort((p, q) => sign * (p.height_metres - q.height_metres));
}

/** The head need not be carried: this edge begins or ends where the last one ended. */
const k_near_metres = 0.05;
export function adjoins(last: Edge | null, next: Edge): boolean {
  const from = last?.points_metres.at(-1);
  if (!from) return false;
  return [next.points_metres[0], next.points_metres.at(-1)].some((to) => to !== undefined && Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]) < k_near_metres);
}
