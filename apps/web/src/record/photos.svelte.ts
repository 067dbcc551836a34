// Photos on their way into the record, one after the other: made smaller, then kept, then stated. A blob is kept before
// the fact that names it, so that no fact names what is not there. Leaving the screen does not stop them.
import { words } from '../words/words';
import { job } from './job.svelte';
import type { Smaller } from './photo.worker';
import { worker } from './record';
import { uuidv7 } from './uuid';

export interface Where { room?: string; item?: string; edge?: string; of?: string }

class Photos {
  /** Of those handed over together: how many are done, and how many there are. */
  done = $state(0);
  total = $state(0);
  failures = $state.raw<string[]>([]);
  /** How many strips of photos are on the screen: they tell of these themselves. */
  strips = $state(0);
  private readonly queue: { file: File; where: Where; about: string }[] = [];
  private running = false;
  private hand: Worker | null = null;

  get busy(): boolean {
    return this.done < this.total;
  }

  take(files: Iterable<File>, where: Where): void {
    if (!job.id) return;
    if (!this.running) {
      this.done = this.total = 0;
      this.failures = [];
    }
    for (const file of files) {
      this.queue.push({ file, where, about: job.id });
      this.total++;
    }
    void this.run();
  }

  forgetFailures(): void {
    this.failures = [];
  }

  private async run(): Promise<void> {
    if (this.running) return;
    this.running = true;
    addEventListener('beforeunload', warn);
    for (let one = this.queue.shift(); one; one = this.queue.shift()) {
      try {
        await this.keep(one.file, one.where, one.about);
      } catch (error) {
        this.failures = [...this.failures, `${one.file.name}: ${error instanceof Error ? error.message : String(error)}`];
      }
      this.done++;
    }
    removeEventListener('beforeunload', warn);
    this.hand?.terminate();
    this.hand = null;
    this.running = false;
  }

  private async keep(file: Blob, where: Where, about: string): Promise<void> {
    const small = await this.smaller(file);
    if (!small.ok) throw new Error(words.inspect.photos.refused[small.why]);
    if (about !== job.id) throw new Error(words.inspect.photos.otherJob);
    const { hash } = await worker.say('keepBlob', { job: about, bytes: small.bytes });
    await job.write('photo/1', uuidv7(), { ...where, blob: hash, media_type: small.bytes.type, width: small.width, height: small.height, bytes: small.bytes.size });
  }

  private smaller(file: Blob): Promise<Smaller> {
    const hand = (this.hand ??= new Worker(new URL('./photo.worker.ts', import.meta.url), { type: 'module', name: 'photo' }));
    return new Promise((done) => {
      hand.onmessage = ({ data }: MessageEvent<Smaller>) => done(data);
      hand.onerror = () => {  // such as no memory for the picture: the next one gets a fresh worker
        hand.terminate();
        this.hand = null;
        done({ ok: false, why: 'unreadable' });
      };
      hand.postMessage({ file });
    });
  }
}

/** The browser asks before it closes a page that still keeps photos. */
function warn(event: BeforeUnloadEvent): void {
  event.preventDefault();
}

export const photos = new Photos();

/** The pictures behind photos; null for a blob that is not on this device. Asked for together: a fact that is to be saved waits for one question, not for a hundred. */
export async function photoUrls(hashes: string[]): Promise<[string, string | null][]> {
  if (!job.id) return [];
  const blobs = await worker.say('blobs', { job: job.id, hashes });
  return hashes.map((hash, i) => [hash, blobs[i] ? URL.createObjectURL(blobs[i]) : null]);
}
