// The run along the edges: one mark ends an edge and starts the next. Elapsed time comes from the monotonic clock alone;
// what nobody watched is written down as interrupted. A stroke is shown as saved after it is durable.
import type { Edge, PaceAnswer, Towel } from '../engine/shapes';
import { settings } from '../look/settings.svelte';
import { job } from '../record/job.svelte';
import { uuidv7, wallTime } from '../record/uuid';
import { Attention, type Lost } from './attention';
import { awake } from './awake.svelte';
import { beatsOf, glideBeats, k_practice_metres_per_second, paceSlip, type Beats } from './beats';
import { claim, dropDraft, keepDraft, release } from './draft';
import { adjoins, hasPace, type Stand } from './edge_stand';
import { markKeys } from './mark_keys.svelte';
import { k_count_in_seconds } from './sound/score';
import { voice } from './sound/voice.svelte';
import { headOf, type Work } from './work.svelte';

export type Phase = 'off' | 'before' | 'waiting' | 'ready' | 'running' | 'paused' | 'interrupted' | 'towel' | 'unsaved' | 'finished';
export type TowelStep = { to: Towel; change: boolean };
export interface Last { edge: Edge; stroke: string; saved: boolean; slip: 'fast' | 'slow' | null; bug: boolean; at: number; began: number; beats: Beats }

/** Two presses within this time are one: a bouncing switch, a trembling thumb (judgement). */
const k_bounce_milliseconds = 400;
/** Until then an undone mark never happened and the edge goes on; later the edge is done again. */
const k_undo_milliseconds = 10000;
const k_draft_milliseconds = 1000;

export class Run {
  phase = $state<Phase>('off');
  mode = $state<'all' | 'redo'>('all');
  edge = $state.raw<Edge | null>(null);
  answer = $state.raw<PaceAnswer | null>(null);
  beats = $state.raw<Beats | null>(null);
  /** When the edge begins on the page's monotonic clock, in milliseconds; ahead of now while it is counted in. */
  startedAt = $state(0);
  last = $state.raw<Last | null>(null);
  towelStep = $state.raw<TowelStep | null>(null);
  lost = $state<Lost | 'paused' | null>(null);
  /** The towel on the head as the person last confirmed it. */
  towel = $state<Towel>('none');
  /** The mark that an undo would take back. */
  undoable = $state.raw<{ subject: string; edge: Edge } | null>(null);
  towelIsSoaked: () => boolean = () => false;
  private stroke = '';
  private pressedAt = -Infinity;
  private drafted = 0;
  private bug = false;
  private readonly cautioned = new Set<string>();
  private readonly attention = new Attention((why, last) => this.interrupt(why, last), (now) => this.tick(now));

  constructor(private readonly work: Work) {}

  /** Call from a gesture: it wakes the sound and the headset buttons. */
  open(mode: 'all' | 'redo', edge: string | null = null): void {
    this.mode = mode;
    this.last = this.undoable = this.towelStep = null;
    this.towel = headOf(job.state).towel as Towel;
    this.work.judge.warm(this.work.basis);
    void voice.wake();
    voice.onlost = () => this.interrupt('sound', performance.now());
    awake.hold();
    claim();
    markKeys.listen((at) => this.press(at));
    markKeys.headset(true);
    const first = edge ? this.work.stand(edge) : this.work.next(mode, null);
    const item = this.work.item?.id ?? '';
    this.go(first);
    if (this.phase !== 'finished' && !this.cautioned.has(item)) this.phase = 'before';
  }

  close(): void {
    this.pause();
    this.phase = 'off';
    markKeys.stop();
    voice.silence();
    awake.release();
    release();
  }

  /** The cautions were read. */
  cleared(): void {
    this.cautioned.add(this.work.item?.id ?? '');
    this.go(this.edge ? this.work.stand(this.edge.id) : this.work.next(this.mode, null));
  }

  /** The one big control, a key, a foot switch or a headset button, at a moment of the monotonic clock. */
  press(at: number): void {
    if (at - this.pressedAt < k_bounce_milliseconds) return;
    this.pressedAt = at;
    if (this.phase === 'ready' || this.phase === 'paused' || this.phase === 'interrupted') this.begin(at, true);
    else if (this.phase === 'running') this.finish(at);
    else if (this.phase === 'towel') this.towelDone();
    else if (this.phase === 'unsaved') void this.save();
    else if (this.phase === 'before') this.cleared();
    else if (this.phase === 'finished' && this.work.redo.length > 0) {
      this.mode = 'redo';
      this.go(this.work.next('redo', null));
    }
  }

  /** Looks again for an edge whose pace was still being computed. */
  retry(): void {
    if (this.phase === 'waiting') this.go(this.work.next(this.mode, null));
  }

  private go(next: Stand | 'waiting' | null): boolean {
    this.edge = this.answer = this.beats = null;
    if (next === null || next === 'waiting') {
      this.phase = next === null ? 'finished' : 'waiting';
      voice.silence();
      this.attention.rest();
      return false;
    }
    this.edge = next.edge;
    this.answer = next.answer;
    const length = next.edge.length_metres, unit = settings.units.length;
    this.beats = beatsOf(next.answer, length, headOf(job.state).lengthMetres, unit) ?? glideBeats(k_practice_metres_per_second, length, unit);
    const planned = hasPace(next.answer) ? next.answer!.towel : this.towel;
    const soaked = planned !== 'none' && this.towelIsSoaked();
    this.towelStep = planned !== this.towel || soaked ? { to: planned, change: planned === this.towel } : null;
    this.phase = this.towelStep ? 'towel' : 'ready';
    if (this.towelStep) {
      voice.silence();
      this.attention.rest();
      voice.say('attention');
    }
    return this.towelStep === null;
  }

  private begin(at: number, countIn: boolean): void {
    if (!this.edge || !this.beats) return;
    this.startedAt = at + (countIn ? k_count_in_seconds * 1000 : 0);
    this.stroke = uuidv7(Date.now() + this.startedAt - performance.now());
    this.bug = false;
    this.drafted = 0;
    this.lost = null;
    this.phase = 'running';
    void voice.wake().then(() => { if (this.phase === 'running' && voice.began === null) voice.play(this.beats!, this.startedAt, countIn); });
    voice.play(this.beats, this.startedAt, countIn);
    this.attention.watch();
  }

  private facts(): Record<string, unknown> {
    const head = headOf(job.state);
    const today = wallTime().slice(0, 10);
    const visit = job.state.visits.find((one) => one.on === today)?.id;
    return {
      item: this.work.item!.id, edge: this.edge!.id, length_metres: this.edge!.length_metres, towel: this.towel, style: this.beats!.style,
      ...(head.head ? { head: head.head.id } : {}), ...(head.test ? { fold_test: head.test } : {}), ...(visit ? { visit } : {}),
      ...(hasPace(this.answer) ? { planned_metres_per_second: this.answer!.recommended_metres_per_second } : {}),
    };
  }

  private tick(now: number): void {
    if (this.phase !== 'running' || now < this.startedAt || now - this.drafted < k_draft_milliseconds || !job.id) return;
    this.drafted = now;
    keepDraft({ job: job.id, stroke: this.stroke, elapsedSeconds: (now - this.startedAt) / 1000, data: this.facts() });
  }

  private finish(at: number): void {
    if (!this.attention.look() || !this.edge || !this.beats) return;
    if (at < this.startedAt) {
      this.begin(at, false);
      return;
    }
    const edge = this.edge, seconds = (at - this.startedAt) / 1000, practice = !hasPace(this.answer);
    const slip = paceSlip(edge.length_metres, seconds, this.answer?.window_metres_per_second ?? null);
    this.last = { edge, stroke: this.stroke, saved: false, slip, bug: this.bug, at, began: this.startedAt, beats: this.beats };
    this.undoable = { subject: this.stroke, edge };
    this.lines = [job.fact('stroke/1', this.stroke, { ...this.facts(), seconds })];
    if (practice) this.lines.push(job.fact('edge_mark/1', uuidv7(), { item: this.work.item!.id, edge: edge.id, what: 'treated_by_practice' }));
    this.work.passed(edge.id);
    const done = (this.work.stand(edge.id)?.strokes.filter((one) => one.interrupted !== true).length ?? 0) + 1;
    const again = this.bug || (this.mode === 'all' && done < (this.answer?.passes ?? 1));
    voice.say(slip === 'fast' ? 'too_fast' : slip === 'slow' ? 'too_slow' : 'mark');
    const next = again ? this.work.stand(edge.id) : this.work.next(this.mode, edge.id);
    if (this.go(next)) this.begin(at, again || !adjoins(edge, this.edge!));
    void this.save();
  }

  private lines: { id: string; line: string }[] = [];

  private async save(): Promise<void> {
    const lines = this.lines;
    const saved = lines.length === 0 || (await job.writeLines(lines));
    if (saved) {
      if (this.lines === lines) this.lines = [];
      if (this.last && lines.some((one) => one.line.includes(this.last!.stroke))) this.last = { ...this.last, saved: true };
      if (this.phase === 'unsaved') this.go(this.work.next(this.mode, null));
      else if (this.phase !== 'running') dropDraft();
      return;
    }
    this.stopWatching();
    this.phase = 'unsaved';
    voice.say('attention');
  }

  private stopWatching(): void {
    this.attention.rest();
    voice.silence();
  }

  private interrupt(why: Lost | 'paused', last: number): void {
    if (this.phase !== 'running' || !this.edge) return;
    this.stopWatching();
    this.lost = why;
    const seconds = (last - this.startedAt) / 1000;
    this.phase = why === 'paused' ? 'paused' : 'interrupted';
    if (seconds <= 0) return;
    this.lines = [job.fact('stroke/1', this.stroke, { ...this.facts(), seconds, interrupted: true })];
    this.undoable = null;
    this.work.passed(this.edge.id);
    if (job.id) keepDraft({ job: job.id, stroke: this.stroke, elapsedSeconds: seconds, data: this.facts() });
    void this.save();
    if (document.visibilityState === 'visible' && why !== 'paused') voice.say('attention');
  }

  pause(): void {
    if (this.phase === 'running') this.interrupt('paused', performance.now());
    else if (this.phase === 'ready') this.phase = 'paused';
  }

  private async noteOn(edge: Edge, what: string, more: Record<string, unknown> = {}): Promise<void> {
    const subject = uuidv7();
    this.undoable = { subject, edge };
    await job.write('edge_mark/1', subject, { item: this.work.item!.id, edge: edge.id, what, ...more });
  }

  /** A live bug behind the head: before the edge has begun it belongs to the one before. The edge is put back. */
  sawLiveBug(at: number): void {
    const running = this.phase === 'running' && at >= this.startedAt;
    const edge = running ? this.edge : (this.last?.edge ?? this.edge);
    if (!edge) return;
    if (running) this.bug = true;
    else if (this.last) this.last = { ...this.last, bug: true };
    voice.say('attention');
    void this.noteOn(edge, 'live_bug').then(() => this.work.passed(edge.id));
    if (running || this.phase !== 'running') return;
    this.stopWatching();
    this.go(this.work.stand(edge.id));
  }

  /** Leaves the edge at hand: out of reach, or for later. Nothing of it counts as passed. */
  leave(what: 'could_not_reach' | 'skipped'): void {
    const edge = this.edge;
    if (!edge) return;
    this.stopWatching();
    dropDraft();
    const next = this.work.next(this.mode, edge.id);
    this.go(next);
    void this.noteOn(edge, what);
  }

  towelDone(): void {
    const step = this.towelStep, edge = this.edge;
    if (!step || !edge) return;
    this.towel = step.to;
    this.towelStep = null;
    this.phase = 'ready';
    void this.noteOn(edge, 'towel_changed');
  }

  /** A fresh towel, outside the guide's own prompts. */
  changedTowel(): void {
    if (this.edge) void this.noteOn(this.edge, 'towel_changed');
  }

  /** Takes the last mark back. Within ten seconds it never happened: the edge goes on from where it began. */
  async undo(now: number): Promise<void> {
    const undo = this.undoable, last = this.last;
    if (!undo) return;
    this.undoable = null;
    const stroke = last !== null && undo.subject === last.stroke;
    if (stroke && now - last.at < k_undo_milliseconds) {
      const stand = this.work.stand(undo.edge.id);
      this.edge = undo.edge;
      this.answer = stand?.answer ?? null;
      this.beats = last.beats;
      this.startedAt = last.began;
      this.stroke = uuidv7(Date.now() + last.began - performance.now());
      this.phase = 'running';
      voice.play(last.beats, last.began, false);
      this.attention.watch();
    } else if (this.phase !== 'running') {
      this.stopWatching();
      this.phase = 'waiting';
    }
    if (stroke) this.last = null;
    else if (this.phase === 'running') this.bug = false;
    await job.remove(undo.subject);
    this.retry();
  }
}
