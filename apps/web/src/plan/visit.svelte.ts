// The visit of the open job. Paces come edge by edge through the same queue as the edges view (so they are shared and can be
// dropped); with them `plan` is quick, and `visit_requests` makes of plan and record what `method`, `visit` and `preparation` take.
import { compute } from '../engine/compute';
import type {
  Edge, EngineError, Furniture, JobState, MethodAnswer, Outcome, PaceAnswer, PlanAnswer, PreparationAnswer, VisitAnswer, VisitRequests,
} from '../engine/shapes';
import { furnitureRequest } from '../inspect/items.svelte';
import { k_first_look_samples, k_full_samples, paceRequest, paceStand, sampled, type Basis, type Stand } from './pace_request';

/** What of the state the engine's mapping reads; the rest (photos, strokes) stays here. */
const k_read_lists = [
  'rooms', 'items', 'evidence', 'methods', 'consents', 'risks', 'prior_treatments', 'circuits', 'visits', 'rates', 'weighings', 'kit', 'job', 'dwelling', 'settings',
] as const;

export interface Wishes { minutes_left: number; waits_for_bed: boolean }

export class VisitBoard {
  method = $state.raw<MethodAnswer | null>(null);
  visit = $state.raw<VisitAnswer | null>(null);
  sheet = $state.raw<PreparationAnswer | null>(null);
  requests = $state.raw<VisitRequests | null>(null);
  error = $state.raw<EngineError | null>(null);
  settled = $state(0);
  total = $state(0);
  full = $state(false);
  private generation = 0;
  private asked = '';

  ask(state: JobState, furniture: Furniture[], basis: Basis, wishes: Wishes): void {
    const read = Object.fromEntries(k_read_lists.map((list) => [list, state[list]]));
    const tests = state.fold_tests.map(({ id, machine }) => ({ id, machine }));
    const job = { ...read, fold_tests: tests };
    const asked = JSON.stringify([basis.key, job, furniture.length, wishes]);
    if (asked === this.asked || furniture.length === 0) return;
    const before = this.generation;
    this.asked = asked;
    this.error = null;
    const generation = (this.generation = compute.generation());
    void this.run(job, state, furniture, basis, wishes, generation);
    if (before) compute.drop(before);
  }

  stop(): void {
    if (this.generation) compute.drop(this.generation);
    this.generation = 0;
    this.asked = '';
  }

  private async run(job: unknown, state: JobState, furniture: Furniture[], basis: Basis, wishes: Wishes, generation: number): Promise<void> {
    const items = state.items.map(furnitureRequest);
    const seen = await this.one<VisitRequests>('visit_requests', { state: job, plan_items: items }, generation, 7);
    if (!seen) return;
    if (!this.visit) await this.take(job, items, null, wishes, generation);
    const treats = new Map<string, Edge>();
    for (const one of furniture) for (const edge of one.edges) treats.set(JSON.stringify(edge.treat), edge);
    for (const samples of [k_first_look_samples, k_full_samples]) {
      const first = samples === k_first_look_samples;
      const stand = await this.stand(basis, samples, generation, first);
      if (!stand) return;
      this.settled = 0;
      this.total = treats.size;
      this.full = !first;
      const known: { treat: unknown; pace: PaceAnswer }[] = [];
      const answers = await Promise.all([...treats.values()].map(async (edge) => {
        const pace = await this.one<PaceAnswer>('pace', paceRequest(stand, edge, samples), generation, first ? 5 : 2);
        if (pace && generation === this.generation) {
          this.settled++;
          known.push({ treat: edge.treat, pace });
        }
        return pace !== null;
      }));
      if (generation !== this.generation || answers.includes(false)) return;
      const kit = sampled(stand, samples);
      const plan = await this.one<PlanAnswer>('plan', { ...kit, items, seen: seen.seen, known_paces: known, minutes_left: wishes.minutes_left }, generation, 6);
      if (!plan) return;
      await this.take(job, items, plan, wishes, generation);
    }
  }

  private async take(job: unknown, items: unknown[], plan: PlanAnswer | null, wishes: Wishes, generation: number): Promise<void> {
    const requests = await this.one<VisitRequests>('visit_requests', { state: job, plan_items: items, ...(plan ? { plan: brief(plan) } : {}), ...wishes }, generation, 7);
    if (!requests?.method || !requests.visit || !requests.preparation) return;
    const [method, visit, sheet] = await Promise.all([
      this.one<MethodAnswer>('method', requests.method, generation, 7), this.one<VisitAnswer>('visit', requests.visit, generation, 7),
      this.one<PreparationAnswer>('preparation', requests.preparation, generation, 7),
    ]);
    if (generation !== this.generation || !method || !visit || !sheet) return;
    this.method = method;
    if (plan) {
      this.requests = requests;
      this.visit = visit;
    }
    this.sheet = sheet;
  }

  private async stand(basis: Basis, samples: number, generation: number, first: boolean): Promise<Stand | null> {
    const outcome = await paceStand(basis, samples, generation, first ? 6 : 3);
    return this.answerOf(outcome, generation);
  }

  /** One answer; null when it was dropped or refused (then `error` says why). */
  private async one<T>(question: string, body: unknown, generation: number, urgent: number): Promise<T | null> {
    return this.answerOf(await compute.ask<T>(question, body, generation, urgent), generation);
  }

  private answerOf<T>(outcome: Outcome<T>, generation: number): T | null {
    if (generation !== this.generation) return null;
    if (outcome.ok) return outcome.answer;
    if (outcome.error.kind !== 'cancelled') this.error = outcome.error;
    return null;
  }
}

export const visitBoard = new VisitBoard();

/** What the mapping reads of a plan: curves and explanations stay here. */
function brief(plan: PlanAnswer): Record<string, unknown> {
  return { edges: plan.edges, paces: plan.paces.map(({ kill_by_stage, dry_minutes }) => ({ kill_by_stage, dry_minutes })) };
}

/** Hours and minutes of a count of minutes. */
export function split(minutes: number): [number, number] {
  return [Math.floor(minutes / 60), Math.round(minutes % 60)];
}
