// The record worker: holds the open job, adds facts and folds them through the engine; it never runs physics. One fact
// is one strictly durable transaction, written under a lock that one tab at a time can hold. Only after the commit is
// the fact folded and called saved.
import { ask, locateEngine } from '../engine/wasm';
import type { FoldedRecord, JobRequests, RecordEvent } from '../engine/shapes';
import { FileRefused, pack, unpack } from './lastegg_file';
import { firmKit, firmSettings, isEmptyKit, k_kit_kinds, testDay, type KitOffer } from './firm_kit';
import { k_channel, k_writer_lock, type Imported, type OpenJob, type Opened, type RequestName, type Requests } from './protocol';
import { Store, type StoredEvent } from './store';

const store = new Store();
const channel = new BroadcastChannel(k_channel);
const k_most_kits = 6;  // to choose among; each is folded to be offered

function alone<T>(work: () => Promise<T>): Promise<T> {
  return navigator.locks.request(k_writer_lock, { mode: 'exclusive' }, work) as Promise<T>;
}

async function fold(job: string): Promise<OpenJob> {
  const rows = await store.events.where('job').equals(job).toArray();
  const outcome = await ask<FoldedRecord>('fold_events', JSON.stringify({ lines: rows.map((row) => row.line) }));
  const asked = outcome.ok ? await ask<JobRequests>('job_requests', JSON.stringify({ state: outcome.answer.state })) : null;
  const kept = await store.exports.get(job);
  return {
    job,
    folded: outcome.ok ? outcome.answer : null,
    requests: asked?.ok ? asked.answer : null,
    foldError: !outcome.ok ? outcome.error : asked?.ok === false ? asked.error : null,
    count: rows.length,
    lastExport: kept ? { stateHash: kept.stateHash, count: kept.count, at: kept.at } : null,
  };
}

async function put(job: string, lines: { id: string; line: string }[]): Promise<{ added: number; already: number; differing: number }> {
  return alone(() =>
    store.transaction('rw', store.events, async () => {
      const there = await store.events.bulkGet(lines.map((one) => one.id));
      const fresh: StoredEvent[] = [];
      let already = 0, differing = 0;
      lines.forEach((one, i) => {
        const old = there[i];
        if (!old) fresh.push({ id: one.id, job, line: one.line });
        else if (old.line === one.line) already++;
        else differing++;
      });
      await store.events.bulkAdd(fresh);
      return { added: fresh.length, already, differing };
    }));
}

async function sha256(bytes: BufferSource): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

async function noteJob(job: string, title: string, at: string): Promise<void> {
  await alone(() => store.transaction('rw', store.jobs, store.notes, async () => {
    if (!(await store.jobs.get(job))) await store.jobs.put({ id: job, title, opened: at });
    await store.notes.put({ key: 'last_job', value: job });
  }));
}

async function deviceId(): Promise<string> {
  const known = await store.notes.get('device');
  if (typeof known?.value === 'string') return known.value;
  return alone(async () => {
    const now = await store.notes.get('device');
    if (typeof now?.value === 'string') return now.value;
    const fresh = crypto.randomUUID();
    await store.notes.put({ key: 'device', value: fresh });
    return fresh;
  });
}

async function offerOf({ id, title, rows }: { id: string; title: string; rows: StoredEvent[] }): Promise<KitOffer[]> {
  const outcome = await ask<FoldedRecord>('fold_events', JSON.stringify({ lines: rows.map((row) => row.line) }));
  if (!outcome.ok || outcome.answer.state.job?.invented === true || isEmptyKit(outcome.answer.state)) return [];
  const { state } = outcome.answer;
  const lines = new Map(rows.map((row) => [row.id, row.line]));
  const facts = firmKit(id, state, (event) => {
    const line = lines.get(event);
    return line ? (JSON.parse(line) as RecordEvent).data : null;
  });
  const days = state.fold_tests.map(testDay).filter((day) => day !== null).sort();
  return [{
    job: id, title: String(state.job?.title ?? title), machines: state.kit.machines.length, heads: state.kit.heads.length,
    tests: state.fold_tests.length, lastTest: days.at(-1) ?? null, facts, settings: firmSettings(state),
  }];
}

const answers: { [Name in RequestName]: (body: Requests[Name]['ask']) => Promise<Requests[Name]['get']> } = {
  locate: async ({ where }) => {
    locateEngine(where);
    return null;
  },
  open: async ({ job }): Promise<Opened> => {
    const count = await store.events.count();
    const jobs = await Promise.all((await store.jobs.toArray()).map(async (one) => (
      { ...one, count: await store.events.where('job').equals(one.id).count() })));
    const last = job ?? ((await store.notes.get('last_job'))?.value as string | undefined);
    const chosen = jobs.find((one) => one.id === last) ?? jobs[0];
    if (job && chosen) await store.notes.put({ key: 'last_job', value: chosen.id });
    return { blank: count === 0, jobs, device: await deviceId(), open: chosen ? await fold(chosen.id) : null };
  },
  start: async ({ job, title, lines }) => {
    const at = lines[0] ? (JSON.parse(lines[0].line) as RecordEvent).at : '';
    await put(job, lines);
    await noteJob(job, title, at);
    channel.postMessage({ job });
    return fold(job);
  },
  append: async ({ job, lines }) => {
    await put(job, lines);
    channel.postMessage({ job });
    return fold(job);
  },
  keepBlob: async ({ job, bytes }) => {
    const hash = await sha256(await bytes.arrayBuffer());
    await alone(() => store.blobs.put({ job, hash, bytes, mediaType: bytes.type }));
    return { hash };
  },
  blobs: async ({ job, hashes }) => (await store.blobs.bulkGet(hashes.map((hash) => [job, hash] as [string, string]))).map((one) => one?.bytes ?? null),
  export: async ({ job, more }) => {
    const stored = await store.events.where('job').equals(job).toArray();
    const rows = [...stored, ...more.filter((one) => !stored.some((row) => row.id === one.id))];
    const outcome = await ask<FoldedRecord>('fold_events', JSON.stringify({ lines: rows.map((row) => row.line) }));
    const folded = outcome.ok ? outcome.answer : null;
    const known = await store.jobs.get(job);
    const title = String(folded?.state.job?.title ?? known?.title ?? 'job');
    const stateHash = folded?.state_hash ?? '';
    const kept = await store.blobs.where('job').equals(job).toArray();
    const blobs = await Promise.all(kept.map(async (one) => ({ hash: one.hash, bytes: new Uint8Array(await one.bytes.arrayBuffer()) })));
    const bytes = pack(rows, blobs, {
      format: 'lastegg', version: 1, job, title, event_count: rows.length, blob_count: blobs.length,
      state_hash: folded?.state_hash ?? null, engine: folded?.engine ?? null,
    });
    const plain = title.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'job';
    return { bytes, name: `${plain}-${stateHash.slice(0, 6) || 'unhashed'}.lastegg`, count: rows.length, stateHash };
  },
  kits: async ({ besides }) => {
    const jobs = (await store.jobs.toArray()).filter((one) => one.id !== besides);
    const held = await Promise.all(jobs.map(async (one) => ({ ...one, rows: await store.events.where('job').equals(one.id).sortBy('id') })));
    const latest = held.filter((one) => one.rows.some((row) => k_kit_kinds.some((kind) => row.line.includes(`"${kind}"`))))
      .sort((p, q) => (p.rows.at(-1)!.id < q.rows.at(-1)!.id ? 1 : -1)).slice(0, k_most_kits);
    const offers: KitOffer[] = [];
    for (const one of latest) offers.push(...(await offerOf(one)));
    return offers;
  },
  exported: async ({ job, stateHash, count, at }) => {
    await alone(() => store.exports.put({ job, stateHash, count, at }));
    return fold(job);
  },
  import: async ({ bytes, at, untitled }): Promise<Imported> => {
    const file = unpack(bytes);
    if (file.lines.length === 0) throw new FileRefused('no_facts');
    const first = file.lines.map((one) => JSON.parse(one.line) as RecordEvent).find((event) => event.kind.startsWith('job/'));
    const job = first?.subject ?? file.manifest.job;
    if (!job) throw new FileRefused('no_job');
    for (const { hash, bytes: content } of file.blobs) {
      if ((await sha256(content)) !== hash) throw new FileRefused('damaged', `blobs/${hash.slice(0, 12)}…`);
    }
    await alone(() => store.blobs.bulkPut(file.blobs.map(({ hash, bytes: content }) => ({ job, hash, bytes: new Blob([content]), mediaType: '' }))));
    const counts = await put(job, file.lines);
    await noteJob(job, String(file.manifest.title ?? (first?.data.title as string | undefined) ?? untitled), at);
    channel.postMessage({ job });
    const { folded } = await fold(job);
    return { job, ...counts, refused: file.refused, blobs: file.blobs.length, stateHash: folded?.state_hash ?? null, promisedHash: file.manifest.state_hash ?? null };
  },
};

channel.onmessage = ({ data }: MessageEvent<{ job: string }>) => self.postMessage({ changed: data.job });

// One request at a time, in the order they came, so that what is shown as saved never runs ahead of the store.
let last: Promise<unknown> = Promise.resolve();
self.onmessage = ({ data }: MessageEvent<{ number: number; name: RequestName; body: never }>) => {
  last = last.then(async () => {
    try {
      const value = await answers[data.name](data.body);
      self.postMessage({ number: data.number, ok: true, value });
    } catch (error) {
      self.postMessage({
        number: data.number, ok: false, message: error instanceof Error ? error.message : String(error),
        ...(error instanceof FileRefused ? { refused: error.code, about: error.about } : {}),
      });
    }
  });
};
