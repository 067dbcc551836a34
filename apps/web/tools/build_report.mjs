// Builds dist/report.html: the report page with its script, style and fonts inside, so that it opens from a disk with no
// network. `lastegg report` puts the data of a job into it.
import { readFile, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { build } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = fileURLToPath(new URL('../dist-report/', import.meta.url));
await build({
  root, configFile: false, logLevel: 'warn', plugins: [svelte()], publicDir: false, base: './',
  build: {
    outDir: out, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 1e9, cssCodeSplit: false, modulePreload: false,
    rollupOptions: { input: fileURLToPath(new URL('../report.html', import.meta.url)), output: { codeSplitting: false } },
  },
});
let html = await readFile(`${out}report.html`, 'utf8');
const inline = async (pattern, wrap) => {
  for (const match of [...html.matchAll(pattern)]) {
    const text = await readFile(out + match[1].replace(/^\.?\//, ''), 'utf8');
    html = html.replace(match[0], () => wrap(text));
  }
};
await inline(/<link rel="stylesheet"[^>]*href="([^"]+)"[^>]*>/g, (text) => `<style>${text}</style>`);
let script = '';
await inline(/<script type="module"[^>]*src="([^"]+)"[^>]*><\/script>/g, (text) => {
  script += `<script type="module">${text.replaceAll('</script', '<\\/script')}</script>`;
  return '';
});
html = html.replace('</body>', () => `${script}</body>`);
if (/(?:src|href)="(?!#|data:)/.test(html)) throw new Error('the report page still asks for another file');
await writeFile(new URL('../dist/report.html', import.meta.url), html);
await rm(out, { recursive: true });
console.log(`dist/report.html: ${(html.length / 1024).toFixed(0)} KiB`);
