// The demo apartment: facts made up for this project, shipped as lines with fixed ids, so that it is one and the same
// job on every device. Every measured value in it is invented and says so.
import { readLines } from './lastegg_file';
import { job } from './job.svelte';

export async function openDemo(): Promise<void> {
  const response = await fetch(new URL('demo/apartment.ndjson', document.baseURI));
  const { lines } = readLines(await response.text());
  const first = lines.map((one) => JSON.parse(one.line) as { kind: string; subject: string; data: { title?: string } }).find((event) => event.kind === 'job/1');
  if (first) await job.start(first.data.title ?? 'Demo', lines, first.subject);
}
