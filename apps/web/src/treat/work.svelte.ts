// The work on one item: paces, what was done, what is left and in which order.
import type { Entity, Furniture, JobState } from '../engine/shapes';
import { shelf } from '../inspect/items.svelte';
import { kitOf, testInUse } from '../kit/fold_request';
import { Board } from '../plan/board.svelte';
import { asPlanned, k_full_samples, paceBasis } from '../plan/pace_request';
import { job } from '../record/job.svelte';
import { k_usual_head_metres } from './beats';
import { factsByEdge, hasPace, inOrder, k_no_facts, standOf, type Stand } from './edge_stand';
import { Judge } from './judge.svelte';
import { Learnt, slower } from './learnt.svelte';

export type Order = 'top_to_bottom' | 'bottom_to_top';
export interface Left { edges: number; metres: number; seconds: number }

/** What is on the head that the plan rests on. */
export function headOf(state: JobState): { test: string | null; head: Entity | null; towel: string; lengthMetres: number } {
  const test = testInUse(state);
  const kit = test ? kitOf(test, state) : null;
  const head = kit?.head ?? state.kit.heads.at(-1) ?? null;
  return {
    test: test?.id ?? null, head, towel: String(kit?.towel?.use ?? 'none'),
    lengthMetres: typeof head?.length_metres === 'number' ? head.length_metres : k_usual_head_metres,
  };
}

export class Work {
  readonly board = new Board();
  readonly judge = new Judge();
  readonly learnt = new Learnt();
  /** Paces after readings of the surface. */
  private readonly after = new Board();
  item = $state.raw<Entity | null>(null);
  /** Edges without a pace are treated as practice has it, and count as not proven. */
  practice = $state(false);
  /** Edges chosen for the minutes that are left, most per minute first; null: all, by height. */
  chosen = $state.raw<string[] | null>(null);
  /** Edges marked in this sitting: their verdicts are waited for. */
  private readonly fresh = new Set<string>();

  readonly furniture: Furniture | null = $derived(this.item ? shelf.of(this.item) : null);
  readonly basis = $derived(paceBasis());
  readonly order: Order | null = $derived((job.state.edge_orders.filter((one) => one.item === this.item?.id).at(-1)?.order as Order | undefined) ?? null);
  private readonly facts = $derived(factsByEdge(job.state, this.item?.id ?? ''));
  readonly stands: Stand[] = $derived.by(() => inOrder(this.furniture?.edges ?? [], this.order ?? 'top_to_bottom').map((edge) => {
    const answer = slower(this.board.answers[edge.id] ?? null, this.after.answers[edge.id] ?? null);
    const settled = this.board.errors[edge.id] !== undefined || (this.board.looked[edge.id] ?? 0) >= k_full_samples || hasPace(answer);
    return standOf(edge, this.facts.get(edge.id) ?? k_no_facts, answer, !settled, this.judge.answers[edge.id] ?? null, this.judge.errors[edge.id] !== undefined);
  }));
  /** How many edges still to do a reading of the surface has slowed. */
  readonly slowed: number = $derived(this.stands.filter((one) => one.status === 'todo' && one.answer !== null && one.answer === this.after.answers[one.edge.id]).length);
  readonly redo: Stand[] = $derived(this.stands.filter((one) => one.status === 'redo'));
  /** Still to do with a pace. */
  readonly left: Left = $derived(sum(this.stands.filter((one) => one.status === 'todo' && hasPace(one.answer))));
  readonly withoutPace: Stand[] = $derived(this.stands.filter((one) => one.status === 'todo' && !one.waiting && !hasPace(one.answer)));

  /** Call from effects: asks for paces, and for verdicts of edges that were passed. */
  ask(): void {
    if (this.furniture) this.board.ask(this.furniture, asPlanned(this.basis));
  }

  learn(): void {
    if (!this.furniture) return;
    this.learnt.ask(this.furniture.edges, this.facts, this.basis);
    if (this.learnt.source) this.after.ask(this.furniture, this.learnt.source);
    else this.after.clear();
  }

  judgeAll(): void {
    for (const edge of this.furniture?.edges ?? []) {
      this.judge.want(edge, this.facts.get(edge.id) ?? k_no_facts, this.basis, this.fresh.has(edge.id));
    }
  }

  passed(edge: string): void {
    this.fresh.add(edge);
  }

  stand(edge: string): Stand | null {
    return this.stands.find((one) => one.edge.id === edge) ?? null;
  }

  /** The next edge to treat, `besides` the one that was just passed. 'waiting' while its pace is still computed. */
  next(mode: 'all' | 'redo', besides: string | null): Stand | 'waiting' | null {
    const wanted = mode === 'redo' ? 'redo' : 'todo';
    const pool = this.chosen && mode === 'all' ? this.chosen.map((id) => this.stand(id)).filter((one) => one !== null) : this.stands;
    const open = pool.filter((one) => one.status === wanted && one.edge.id !== besides);
    const ready = open.find((one) => !one.waiting && (hasPace(one.answer) || this.practice || mode === 'redo'));
    return ready ?? (open.some((one) => one.waiting) ? 'waiting' : null);
  }

  stop(): void {
    this.board.stop();
    this.after.clear();
    this.learnt.stop();
    this.judge.stop();
  }
}

function sum(stands: Stand[]): Left {
  return stands.reduce((left, { edge, answer, strokes }) => {
    const pace = answer?.recommended_metres_per_second ?? null;
    const passes = Math.max(1, (answer?.passes ?? 1) - strokes.length);
    return { edges: left.edges + 1, metres: left.metres + edge.length_metres, seconds: left.seconds + (pace ? (edge.length_metres / pace) * passes : 0) };
  }, { edges: 0, metres: 0, seconds: 0 });
}

