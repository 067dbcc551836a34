// The page's side of the compute worker: a queue of numbered questions in generations. Leaving a screen drops its
// generation; a question of a dropped generation that is already running is stopped by ending the worker.
import { words } from '../words/words';
import type { Outcome } from './shapes';
import { where } from './where';

interface Waiting {
  number: number; question: string; request: string; generations: Set<number>; urgent: number;
  settle: ((outcome: Outcome<unknown>) => void)[];
}

export const k_cancelled = { kind: 'cancelled', message: 'no longer asked' } as const;
const k_cache_size = 600;

export class Compute {
  private worker: Worker | null = null;
  private queue: Waiting[] = [];
  private running: Waiting | null = null;
  private nextNumber = 1;
  private nextGeneration = 1;
  private readonly cache = new Map<string, Outcome<unknown>>();

  /** A fresh generation: hand it to `ask`, drop it when its answers are no longer wanted. */
  generation(): number {
    return this.nextGeneration++;
  }

  drop(generation: number): void {
    const dropped = (one: Waiting) => {
      one.generations.delete(generation);
      return one.generations.size === 0;
    };
    const gone = this.queue.filter(dropped);
    this.queue = this.queue.filter((one) => one.generations.size > 0);
    for (const one of gone) this.settle(one, { ok: false, error: { ...k_cancelled } });
    if (this.running && dropped(this.running)) {
      const stopped = this.running;
      this.running = null;
      this.worker?.terminate();
      this.worker = null;
      this.settle(stopped, { ok: false, error: { ...k_cancelled } });
      this.next();
    }
  }

  /**
   * Asks the engine, which answers in the language of the page (apps/web/src/engine/wasm.ts adds it). Equal questions share one answer: the page
   * speaks one language from its opening on, so answers of two never meet here. Higher `urgent` goes first.
   */
  ask<T>(question: string, body: unknown, generation: number, urgent = 0): Promise<Outcome<T>> {
    const request = JSON.stringify(body);
    const key = `${question} ${request}`;
    const known = this.cache.get(key);
    if (known) return Promise.resolve(known as Outcome<T>);
    return new Promise((resolve) => {
      const same = [...this.queue, ...(this.running ? [this.running] : [])].find(
        (one) => one.question === question && one.request === request);
      if (same) {
        same.generations.add(generation);
        same.urgent = Math.max(same.urgent, urgent);
        same.settle.push(resolve as (outcome: Outcome<unknown>) => void);
        return;
      }
      this.queue.push({
        number: this.nextNumber++, question, request, generations: new Set([generation]), urgent,
        settle: [resolve as (outcome: Outcome<unknown>) => void],
      });
      this.next();
    });
  }

  private start(): Worker {
    const worker = new Worker(new URL('./compute.worker.ts', import.meta.url), { type: 'module', name: 'compute' });
    worker.postMessage({ type: 'locate', where });
    worker.onmessage = ({ data }: MessageEvent<{ number: number; outcome: Outcome<unknown> }>) => {
      const done = this.running;
      if (worker !== this.worker || !done || done.number !== data.number) return;
      this.running = null;
      if (data.outcome.ok) this.remember(`${done.question} ${done.request}`, data.outcome);
      this.settle(done, data.outcome);
      this.next();
    };
    worker.onerror = (event) => {
      const failed = this.running;
      if (worker !== this.worker) return;
      this.running = null;
      this.worker = null;
      worker.terminate();
      if (failed) this.settle(failed, { ok: false, error: { kind: 'internal', message: event.message || words.error.stopped } });
      this.next();
    };
    return worker;
  }

  private next(): void {
    if (this.running || this.queue.length === 0) return;
    let best = 0;
    for (let i = 1; i < this.queue.length; i++) {
      if (this.queue[i]!.urgent > this.queue[best]!.urgent) best = i;
    }
    this.running = this.queue.splice(best, 1)[0]!;
    this.worker ??= this.start();
    const { number, question, request } = this.running;
    this.worker.postMessage({ type: 'ask', number, question, request });
  }

  private settle(one: Waiting, outcome: Outcome<unknown>): void {
    for (const give of one.settle) give(outcome);
  }

  private remember(key: string, outcome: Outcome<unknown>): void {
    this.cache.set(key, outcome);
    if (this.cache.size > k_cache_size) this.cache.delete(this.cache.keys().next().value!);
  }
}

export const compute = new Compute();

/** A worker of its own for what a person waits for with a head in the hand: it never queues behind a plan. */
export const prompt = new Compute();
