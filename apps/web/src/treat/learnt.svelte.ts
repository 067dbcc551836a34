// What readings of the surface say of this head for the rest of the visit: the engine weighs the samples by them edge by
// edge (`as_treated`), and what is left is paced again with those (`pace`). It can only slow a hand down.
import { prompt } from '../engine/compute';
import type { Calibration, Edge, PaceAnswer, TreatedAnswer } from '../engine/shapes';
import { k_full_samples, paceStand, type Basis, type Source, type Stand } from '../plan/pace_request';
import { hasPace, type EdgeFacts } from './edge_stand';
import { treatedRequest } from './treated_request';

/** The stand with what was learnt in place of what it was; a stand without a test becomes what was learnt. */
function taught(stand: Stand, learnt: Calibration[]): Stand {
  if (learnt.length === 0) return stand;
  const same = (one: Calibration) => learnt.find((other) => other.head_key === one.head_key && other.cloth_key === one.cloth_key);
  return 'calibration' in stand ? { ...stand, calibration: (stand.calibration as Calibration[]).map((one) => same(one) ?? one) } : { calibration: learnt };
}

/** The planned pace, or the one after readings where that is slower or none. */
export function slower(planned: PaceAnswer | null, after: PaceAnswer | null): PaceAnswer | null {
  if (!planned || !after || !hasPace(planned)) return planned;
  return !hasPace(after) || after.recommended_metres_per_second! < planned.recommended_metres_per_second! ? after : planned;
}

export class Learnt {
  /** Where paces after the readings come from; null while nothing was read, or nothing was learnt. */
  source = $state.raw<Source | null>(null);
  private asked = '';
  private generation = 0;

  /** Call from an effect. */
  ask(edges: Edge[], facts: Map<string, EdgeFacts>, basis: Basis): void {
    const read = edges.map((edge) => ({ edge, facts: facts.get(edge.id)! })).filter((one) => one.facts && one.facts.readings.length > 0 && one.facts.strokes.length > 0);
    read.sort((p, q) => (p.facts.readings.at(-1)!.id < q.facts.readings.at(-1)!.id ? -1 : 1));
    const key = read.length > 0 ? JSON.stringify([basis.key, read.map((one) => [one.edge.id, one.facts])]) : '';
    if (key === this.asked) return;
    this.stop();
    this.asked = key;
    if (read.length > 0) void this.learn(read, basis, key);
  }

  private async learn(read: { edge: Edge; facts: EdgeFacts }[], basis: Basis, key: string): Promise<void> {
    const generation = (this.generation = prompt.generation());
    const begin = await paceStand(basis, k_full_samples, generation, 1, prompt);
    if (key !== this.asked || !begin.ok) return;
    let stand = begin.answer;
    for (const { edge, facts } of read) {
      const request = treatedRequest(stand, edge, facts, k_full_samples);
      if (!request || !('spot_readings' in request)) continue;
      const outcome = await prompt.ask<TreatedAnswer>('as_treated', request, generation, 1);
      if (key !== this.asked) return;
      // A reading that is refused teaches nothing; its edge shows why.
      if (outcome.ok) stand = taught(stand, outcome.answer.spot_readings?.calibrations ?? []);
    }
    if (stand === begin.answer) return;
    this.source = { key, looks: [k_full_samples], stand: async () => ({ ok: true, answer: stand }) };
  }

  stop(): void {
    if (this.generation) prompt.drop(this.generation);
    this.generation = 0;
    this.asked = '';
    this.source = null;
  }
}
