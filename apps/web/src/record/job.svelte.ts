// The open job: reactive state for every place of the page. `write` adds one fact and resolves after it is durable.
import { k_no_state, worker, type EngineError, type ExportInfo, type FoldedRecord, type Imported, type JobInfo, type JobRequests, type JobState, type OpenJob } from './record';
import { words } from '../words/words';
import { uuidv7, wallTime } from './uuid';

export type SaveStage = 'idle' | 'entered' | 'saved' | 'failed';
type Line = { id: string; line: string };
const k_memory = 'lastegg-facts-kept';
const k_waiting = 'lastegg-unsaved-';

function waitingLines(about: string): Line[] {
  try {
    return JSON.parse(localStorage.getItem(k_waiting + about) ?? '[]') as Line[];
  } catch {
    return [];
  }
}

const tabs = new BroadcastChannel('lastegg-tabs');

class Job {
  ready = $state(false);
  failure = $state<string | null>(null);
  /** The store holds no fact at all. `lostCount` is how many this browser once held, when it says so itself. */
  blank = $state(false);
  lostCount = $state(0);
  id = $state<string | null>(null);
  jobs = $state.raw<JobInfo[]>([]);
  folded = $state.raw<FoldedRecord | null>(null);
  /** What the job's facts ask of the engine, as the engine says. */
  requests = $state.raw<JobRequests | null>(null);
  foldError = $state.raw<EngineError | null>(null);
  count = $state(0);
  lastExport = $state.raw<ExportInfo | null>(null);
  stage = $state<SaveStage>('idle');
  persisted = $state<boolean | null>(null);
  /** Another tab of this browser has the program open. Both write to the one record. */
  otherTab = $state(false);
  /** Facts that the store refused, such as when it is full: held here and beside the store until it takes them. */
  unsaved = $state.raw<Line[]>([]);
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
    if (this.id && (this.unsaved = waitingLines(this.id)).length > 0) void this.saveAgain();
  }

  /** Makes the line of one fact; nothing is stored yet. */
  fact(kind: string, subject: string, data: Record<string, unknown>, corrects?: string): Line {
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

  /** Writes lines durably. False: the store refused them; they are held as `unsaved` and tried again with the next. */
  async writeLines(lines: Line[]): Promise<boolean> {
    if (!this.id) return false;
    const about = this.id;
    const all = [...this.unsaved, ...lines];
    this.stage = 'entered';
    this.pending++;
    try {
      const open = await worker.say('append', { job: about, lines: all });
      this.pending--;
      if (open.job === this.id) this.take(open);
      this.hold(about, this.unsaved.filter((one) => !all.includes(one)));
      if (this.pending === 0) this.stage = this.unsaved.length > 0 ? 'failed' : 'saved';
      void this.askPersisted(true);
      return true;
    } catch (error) {
      this.pending--;
      this.stage = 'failed';
      this.failure = error instanceof Error ? error.message : String(error);
      this.hold(about, [...this.unsaved, ...lines.filter((one) => !this.unsaved.includes(one))]);
      return false;
    }
  }

  saveAgain(): Promise<boolean> {
    return this.writeLines([]);
  }

  private hold(about: string, lines: Line[]): void {
    this.unsaved = lines;
    try {
      if (lines.length > 0) localStorage.setItem(k_waiting + about, JSON.stringify(lines));
      else localStorage.removeItem(k_waiting + about);
    } catch {
      // Storage is full to the last byte: the page itself still holds them, and says that they are not saved.
    }
  }

  async start(title: string, lines?: Line[], job = uuidv7()): Promise<void> {
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
    const file = await worker.say('export', { job: this.id, more: $state.snapshot(this.unsaved) });
    try {
      this.take(await worker.say('exported', { job: this.id, stateHash: file.stateHash, count: file.count, at: wallTime() }));
    } catch (error) {  // a full store: the file is there all the same
      this.failure = error instanceof Error ? error.message : String(error);
    }
    return file;
  }

  async import(bytes: Uint8Array): Promise<Imported> {
    const imported = await worker.say('import', { bytes, at: wallTime(), untitled: words.record.importedJob });
    await this.open(imported.job);
    return imported;
  }

  private take(open: OpenJob): void {
    this.id = open.job;
    this.folded = open.folded;
    this.requests = open.requests;
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
    tabs.onmessage = ({ data }: MessageEvent<'here?' | 'here'>) => {
      this.otherTab = true;
      if (data === 'here?') tabs.postMessage('here');
    };
    tabs.postMessage('here?');
  }
}

export const job = new Job();
