// A `.lastegg` file: a zip of events.ndjson (one event a line, sorted by id), manifest.json and blobs/. Lines are kept
// byte for byte, those of kinds and fields that this version does not know included.
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

export interface Manifest {
  format: 'lastegg'; version: 1; job: string; title: string; event_count: number; blob_count: number; state_hash: string | null; engine: string | null;
}
export interface FileBlob { hash: string; bytes: Uint8Array<ArrayBuffer> }
export interface LasteggFile { manifest: Partial<Manifest>; lines: { id: string; line: string }[]; refused: number; blobs: FileBlob[] }

/** Why a file is not taken, as a key of `words.record.file`, and what it is about. The record worker knows no words. */
export type Refusal = 'too_large' | 'no_archive' | 'no_events' | 'no_facts' | 'no_job' | 'damaged';
export class FileRefused extends Error {
  constructor(readonly code: Refusal, readonly about = '') {
    super(`${code} ${about}`.trim());
  }
}

const k_most_bytes = 64 * 1024 * 1024;
const k_blob_name = /^blobs\/([0-9a-f]{64})$/;

export function pack(lines: { id: string; line: string }[], blobs: FileBlob[], manifest: Manifest): Uint8Array {
  const sorted = [...lines].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const ndjson = sorted.map((one) => one.line + '\n').join('');
  const fixed = { mtime: new Date(1980, 0, 1) };
  return zipSync({
    'manifest.json': [strToU8(JSON.stringify(manifest, null, 1) + '\n'), fixed],
    'events.ndjson': [strToU8(ndjson), fixed],
    ...Object.fromEntries([...blobs].sort((a, b) => (a.hash < b.hash ? -1 : 1)).map(({ hash, bytes }) => (
      [`blobs/${hash}`, [bytes, { ...fixed, level: 0 as const }] as [Uint8Array, { level: 0 }]]))),
  });
}

/** Reads the lines of an `events.ndjson` text; lines that are no event are counted, not kept. */
export function readLines(text: string): { lines: { id: string; line: string }[]; refused: number } {
  const lines: { id: string; line: string }[] = [];
  let refused = 0;
  for (const raw of text.split('\n')) {
    const line = raw.endsWith('\r') ? raw.slice(0, -1) : raw;
    if (!line.trim()) continue;
    try {
      const event = JSON.parse(line) as { id?: unknown };
      if (typeof event.id !== 'string') throw new Error('no id');
      lines.push({ id: event.id, line });
    } catch {
      refused++;
    }
  }
  return { lines, refused };
}

/** Opens a `.lastegg` file. Throws FileRefused when the file is none. */
export function unpack(bytes: Uint8Array): LasteggFile {
  let files: Record<string, Uint8Array>;
  try {
    files = unzipSync(bytes, {
      filter: (file) => {
        if (file.originalSize > k_most_bytes) throw new FileRefused('too_large', file.name);
        return file.name === 'manifest.json' || file.name === 'events.ndjson' || k_blob_name.test(file.name);
      },
    });
  } catch (error) {
    if (error instanceof FileRefused) throw error;
    throw new FileRefused('no_archive', error instanceof Error ? error.message : String(error));
  }
  const events = files['events.ndjson'];
  if (!events) throw new FileRefused('no_events');
  let manifest: Partial<Manifest> = {};
  if (files['manifest.json']) {
    try {
      manifest = JSON.parse(strFromU8(files['manifest.json'])) as Partial<Manifest>;
    } catch {
      manifest = {};
    }
  }
  const blobs = Object.entries(files).flatMap(([name, bytes]) => {
    const hash = k_blob_name.exec(name)?.[1];
    return hash ? [{ hash, bytes: bytes as Uint8Array<ArrayBuffer> }] : [];
  });
  return { manifest, blobs, ...readLines(strFromU8(events)) };
}
