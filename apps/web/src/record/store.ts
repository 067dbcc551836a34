// The device's own store: every event as the exact line of text that was written or imported, keyed by its id. Version
// numbers of the schema only grow. Owned by the record worker; nothing else opens it.
import Dexie, { type Table } from 'dexie';

export interface StoredEvent { id: string; job: string; line: string }
export interface StoredJob { id: string; title: string; opened: string }
export interface StoredExport { job: string; stateHash: string; count: number; at: string }
export interface StoredBlob { hash: string; job: string; bytes: Blob; mediaType: string }
export interface StoredNote { key: string; value: unknown }

export class Store extends Dexie {
  events!: Table<StoredEvent, string>;
  jobs!: Table<StoredJob, string>;
  exports!: Table<StoredExport, string>;
  notes!: Table<StoredNote, string>;
  blobs!: Table<StoredBlob, [string, string]>;

  constructor() {
    // Strict: "complete" arrives only after the data was handed to the disk, so that "saved" is said truthfully.
    super('lastegg', { chromeTransactionDurability: 'strict' });
    this.version(1).stores({ events: 'id, job', jobs: 'id', exports: 'job', notes: 'key' });
    this.version(2).stores({ blobs: '[job+hash], job' });
  }
}
