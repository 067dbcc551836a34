// What the page and the record worker say to each other.
import type { EngineError, FoldedRecord, JobRequests } from '../engine/shapes';
import type { Where } from '../engine/where';
import type { KitOffer } from './firm_kit';

export interface JobInfo { id: string; title: string; opened: string; count: number }
export interface ExportInfo { stateHash: string; count: number; at: string }

/** The open job as the worker last folded it, and what its facts ask of the engine. `folded` is null when the engine could not fold; the facts are kept. */
export interface OpenJob {
  job: string; folded: FoldedRecord | null; requests: JobRequests | null; foldError: EngineError | null; count: number; lastExport: ExportInfo | null;
}
export interface Opened { blank: boolean; jobs: JobInfo[]; device: string; open: OpenJob | null }
export interface Imported { job: string; added: number; already: number; differing: number; refused: number; blobs: number; stateHash: string | null; promisedHash: string | null }

export interface Requests {
  /** Kits of the other jobs on this device, the job with the latest fact first. Invented jobs offer none. */
  kits: { ask: { besides: string }; get: KitOffer[] };
  locate: { ask: { where: Where }; get: null };
  open: { ask: { job?: string }; get: Opened };
  append: { ask: { job: string; lines: { id: string; line: string }[] }; get: OpenJob };
  keepBlob: { ask: { job: string; bytes: Blob }; get: { hash: string } };
  /** In the order asked; null where a blob is not on this device. */
  blobs: { ask: { job: string; hashes: string[] }; get: (Blob | null)[] };
  start: { ask: { job: string; title: string; lines: { id: string; line: string }[] }; get: OpenJob };
  /** `more`: lines that the store has refused and the page still holds. */
  export: { ask: { job: string; more: { id: string; line: string }[] }; get: { bytes: Uint8Array; name: string; count: number; stateHash: string } };
  exported: { ask: { job: string; stateHash: string; count: number; at: string }; get: OpenJob };
  /** `untitled`: what a job is called whose file does not say it. */
  import: { ask: { bytes: Uint8Array; at: string; untitled: string }; get: Imported };
}
export type RequestName = keyof Requests;

/** Said to every tab after facts were added by one of them. */
export const k_channel = 'lastegg-record';
export const k_writer_lock = 'lastegg-record-writer';
