// The open job as a file: shared with another app where the platform can, else put among the downloads.
import { job } from './job.svelte';

/** False when there is no job to write. Throws what went wrong. */
export async function saveFile(): Promise<boolean> {
  const file = await job.export();
  if (!file) return false;
  download(new Blob([file.bytes as Uint8Array<ArrayBuffer>], { type: 'application/zip' }), file.name);
  return true;
}

export function download(bytes: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(bytes);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}
