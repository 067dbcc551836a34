// The open job: reactive state for every place of the page. `write` adds one fact and resolves after it is durable.
import { k_no_state, worker, type EngineError, type ExportInfo, type FoldedRecord, type Imported, type JobInfo, type JobState, type OpenJob } from './record';
import { uuidv7, wallTime } from './uuid';

export type SaveStage = 'idle' | 'entered' | 'saved' | 'failed';
const k_memory = 'lastegg-facts-kept';

class Job {
  ready = $state(false);
  failure = $state<string | null>(null);
  /** The store holds no fact at all. `lostCount` is how many this browser once held, when it says so itself. */
  blank = $state(false);
  lostCount = $state(0);
  id = $state<string | null>(null);
  jobs = $state.raw<JobInfo[]>([]);
  folded = $state.raw<FoldedRecord | null>(null);
  foldError = $state.raw<EngineError | null>(null);
  count = $state(0);
  lastExport = $state.raw<ExportInfo | null>(null);
  stage = $state<SaveStage>('idle');
  persisted = $state<boolean | null>(null);
  private device = '';
  private pending = 0;

  get state(): JobState {
    return this.folded?.state ?? k_no_state;
  }

  get code(): string {
    return this.folded?.state_hash.slice(0, 6) ?? '';
  }

  get safeElsewhere(): boolean {
    return this.lastExport !== null && this.lastExport.stateHash === this.folded?.state_hash;
  }

  async open(job?: string): Promise<void> {
    try {
      const opened = await worker.say('open', job ? { job } : {});
      this.blank = opened.blank;
      this.jobs = opened.jobs;
      this.device = opened.device;
      const kept = Number(localStorage.getItem(k_memory) ?? 0);
      this.lostCount = opened.blank ? kept : 0;
      if (opened.open) this.take(opened.open);
      else this.id = null;
      this.failure = null;
    } catch (error) {
      this.failure = error instanceof Error ? error.message : String(error);
    }
    this.ready = true;
    void this.askPersisted(false);
  }

  /** Makes the line of one fact; nothing is stored yet. */
  fact(kind: string, subject: string, data: Record<string, unknown>, corrects?: string): { id: string; line: string } {
    const id = uuidv7();
    const event = { id, kind, subject, device: this.device, actor: 'technician', at: wallTime(), data, ...(corrects ? { corrects } : {}) };
    return { id, line: JSON.stringify(event) };
  }

  async write(kind: string, subject: string, data: Record<string, unknown>, corrects?: string): Promise<boolean> {
    return this.writeLines([this.fact(kind, subject, data, corrects)]);
  }

  /** Writes an entity: a new one under `fresh`, or a correction of the fact that last described `old`. */
  async writeEntity(kind: string, old: { id: string; event?: unknown } | null, data: Record<string, unknown>, fresh: string): Promise<boolean> {
    const corrects = typeof old?.event === 'string' ? old.event : undefined;
    return this.write(kind, old?.id ?? fresh, data, corrects);
  }

  /** Takes an entity off the lists; its facts stay in the record. */
  async remove(subject: string): Promise<boolean> {
    return this.write('removed/1', subject, {});
  }

  async writeLines(lines: { id: string; line: string }[]): Promise<boolean> {
    if (!this.id) return false;
    this.stage = 'entered';
    this.pending++;
    try {
      const open = await worker.say('append', { job: this.id, lines });
      this.pending--;
      if (open.job === this.id) this.take(open);
      if (this.pending === 0) this.stage = 'saved';
      void this.askPersisted(true);
      return true;
    } catch (error) {
      this.pending--;
      this.stage = 'failed';
      this.failure = error instanceof Error ? error.message : String(error);
      return false;
    }
  }

  async start(title: string, lines?: { id: string; line: string }[], job = uuidv7()): Promise<void> {
    const first = lines ?? [this.fact('job/1', job, { title })];
    try {
      await worker.say('start', { job, title, lines: first });
      await this.open(job);
    } catch (error) {
      this.failure = error instanceof Error ? error.message : String(error);
    }
  }

  async export(): Promise<{ bytes: Uint8Array; name: string } | null> {
    if (!this.id) return null;
    const file = await worker.say('export', { job: this.id });
    this.take(await worker.say('exported', { job: this.id, stateHash: file.stateHash, count: file.count, at: wallTime() }));
    return file;
  }

  async import(bytes: Uint8Array): Promise<Imported> {
    const imported = await worker.say('import', { bytes, at: wallTime() });
    await this.open(imported.job);
    return imported;
  }

  private take(open: OpenJob): void {
    this.id = open.job;
    this.folded = open.folded;
    this.foldError = open.foldError;
    this.count = open.count;
    this.lastExport = open.lastExport;
    this.blank = false;
    try {
      localStorage.setItem(k_memory, String(open.count));
    } catch {
      // A browser that refuses even this much storage still runs; the facts themselves are in the record's store.
    }
  }

  private async askPersisted(request: boolean): Promise<void> {
    if (!navigator.storage?.persisted) return;
    this.persisted = (await navigator.storage.persisted()) || (request && (await navigator.storage.persist()));
  }

  listen(): void {
    worker.onchange = (changed) => {
      if (changed === this.id) void this.open(changed);
    };
  }
}

export const job = new Job();
