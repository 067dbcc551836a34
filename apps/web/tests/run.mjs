// Runs every *.test.mjs beside it and closes with a count. Each file drives a browser and a server of its own, so files go
// two at a time; those that hold the page against a clock go alone.
import { readdirSync } from 'node:fs';
import { run } from 'node:test';
import { spec } from 'node:test/reporters';
import { fileURLToPath } from 'node:url';

const k_alone = ['killed', 'reaction', 'slider', 'sound', 'treat.', 'treat_visit'];
const wanted = process.argv.slice(2);
const folder = fileURLToPath(new URL('.', import.meta.url));
const files = readdirSync(folder).filter((name) => name.endsWith('.test.mjs') && (wanted.length === 0 || wanted.some((word) => name.includes(word)))).sort();
const alone = files.filter((name) => k_alone.some((start) => name.startsWith(start)));
const together = files.filter((name) => !alone.includes(name));
let passed = 0, failed = files.length === 0 ? 1 : 0, skipped = 0;

function runFiles(names, concurrency) {
  return new Promise((done) => {
    const stream = run({ files: names.map((name) => folder + name), concurrency });
    const isFile = (data) => data.name.endsWith('.test.mjs');
    stream.on('test:pass', (data) => {
      if (isFile(data)) return;
      if (data.skip !== undefined) skipped++;
      else passed++;
    });
    stream.on('test:fail', () => failed++);
    stream.compose(new spec()).pipe(process.stdout, { end: false });
    stream.on('end', done);
  });
}

if (together.length > 0) await runFiles(together, 2);
if (alone.length > 0) await runFiles(alone, 1);
console.log(`\nweb: ${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed > 0 ? 1 : 0;
