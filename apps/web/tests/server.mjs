// A small static server for the built page, on a free port of this machine's loopback. `stop` ends it at once, open
// connections included, as a pulled plug would.
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const k_types = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.mjs': 'text/javascript', '.css': 'text/css', '.json': 'application/json',
  '.svg': 'image/svg+xml', '.png': 'image/png', '.woff2': 'font/woff2', '.wasm': 'application/wasm', '.ndjson': 'application/x-ndjson',
  '.webmanifest': 'application/manifest+json',
};

export const k_dist = fileURLToPath(new URL('../dist/', import.meta.url));

export async function serve(root = k_dist, port = 0) {
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url, 'http://localhost').pathname));
    let file = join(root, path);
    if (existsSync(file) && statSync(file).isDirectory()) file = join(file, 'index.html');
    if (!file.startsWith(root) || !existsSync(file)) {
      response.writeHead(404).end('not found');
      return;
    }
    response.writeHead(200, { 'Content-Type': k_types[extname(file)] ?? 'application/octet-stream', 'Cache-Control': 'no-cache' });
    createReadStream(file).pipe(response);
  });
  await new Promise((ready) => server.listen(port, '127.0.0.1', ready));
  return {
    url: `http://127.0.0.1:${server.address().port}/`,
    stop: () => new Promise((ended) => {
      server.close(ended);
      server.closeAllConnections();
    }),
  };
}
