// The page's side of the record worker: the open job as reactive state, and the one way to write a fact.
import { k_kit_lists, k_lists, type EngineError, type Entity, type FoldedRecord, type JobRequests, type JobState, type RecordEvent } from '../engine/shapes';
import { where } from '../engine/where';
import { words } from '../words/words';
import type { Refusal } from './lastegg_file';
import type { ExportInfo, Imported, JobInfo, OpenJob, RequestName, Requests } from './protocol';
export type { JobInfo } from './protocol';

const empty = <Name extends string>(names: readonly Name[]) =>
  Object.fromEntries(names.map((name) => [name, []])) as unknown as Record<Name, Entity[]>;
export const k_no_state: JobState = {
  ...empty(k_lists), kit: empty(k_kit_lists), job: null, dwelling: null, fold_tests: [], settings: null,
};

class RecordWorker {
  private readonly worker = new Worker(new URL('./record.worker.ts', import.meta.url), { type: 'module', name: 'record' });
  private readonly waiting = new Map<number, { done: (value: never) => void; failed: (error: Error) => void }>();
  private nextNumber = 1;
  /** Called when another tab added facts to a job. */
  onchange: (job: string) => void = () => {};

  constructor() {
    this.worker.onmessage = ({ data }: MessageEvent<{ number: number; ok: boolean; value: never; message: string; refused?: Refusal; about?: string; changed?: string }>) => {
      if (data.changed) {
        this.onchange(data.changed);
        return;
      }
      const one = this.waiting.get(data.number);
      this.waiting.delete(data.number);
      if (data.ok) one?.done(data.value);
      else one?.failed(new Error(data.refused ? words.record.file[data.refused](data.about ?? '') : data.message));
    };
    void this.say('locate', { where });
  }

  say<Name extends RequestName>(name: Name, body: Requests[Name]['ask']): Promise<Requests[Name]['get']> {
    return new Promise((done, failed) => {
      const number = this.nextNumber++;
      this.waiting.set(number, { done: done as (value: never) => void, failed });
      this.worker.postMessage({ number, name, body });
    });
  }
}

export const worker = new RecordWorker();
export type { EngineError, Entity, ExportInfo, FoldedRecord, Imported, JobRequests, JobState, OpenJob, RecordEvent };
