// Runs every *.test.mjs beside it, one file after the other (each drives a browser of its own), and closes with a count.
import { readdirSync } from 'node:fs';
import { run } from 'node:test';
import { spec } from 'node:test/reporters';
import { fileURLToPath } from 'node:url';

const wanted = process.argv.slice(2);
const folder = fileURLToPath(new URL('.', import.meta.url));
const files = readdirSync(folder).filter((name) => name.endsWith('.test.mjs') && (wanted.length === 0 || wanted.some((word) => name.includes(word)))).sort();
let passed = 0, failed = 0, skipped = 0;

const stream = run({ files: files.map((name) => folder + name), concurrency: 1 });
const isFile = (data) => data.name.endsWith('.test.mjs');
stream.on('test:pass', (data) => {
  if (isFile(data)) return;
  if (data.skip !== undefined) skipped++;
  else passed++;
});
stream.on('test:fail', () => failed++);
stream.compose(new spec()).pipe(process.stdout, { end: false });
stream.on('end', () => {
  if (files.length === 0) failed++;
  console.log(`\nweb: ${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
  process.exitCode = failed > 0 ? 1 : 0;
});
