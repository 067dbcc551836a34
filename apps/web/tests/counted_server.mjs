// `lastegg serve` as ./run starts it, behind a relay that counts the bytes of every answer by the path asked for. The
// relay sees what the page, its workers and its service worker fetch alike; what a browser takes from its cache passes
// it by.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createServer, request as ask } from 'node:http';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { k_dist } from './server.mjs';

const k_program = process.env.LASTEGG_PROGRAM ?? fileURLToPath(new URL('../../../build/native/lastegg', import.meta.url));

if (!existsSync(k_program)) throw new Error(`no program at ${k_program}: build it (cmake --build --preset native), or set LASTEGG_PROGRAM`);

async function startProgram() {
  const child = spawn(k_program, ['serve', '--listen', '127.0.0.1:0', '--web', k_dist], { stdio: ['ignore', 'pipe', 'inherit'] });
  const address = await new Promise((found, failed) => {
    createInterface(child.stdout).once('line', (line) => {
      const match = /^Last Egg is at (http:\/\/127\.0\.0\.1:\d+)\//.exec(line);
      if (match) found(match[1]);
      else failed(new Error(`lastegg serve said: ${line}`));
    });
    child.once('exit', (code) => failed(new Error(`lastegg serve ended with ${code}`)));
  });
  return { child, address };
}

export async function countedServer() {
  const { child, address } = await startProgram();
  const answers = [];  // { path, bytes }: head and body as they went over the wire
  const relay = createServer((asked, answered) => {
    const onward = ask(address + asked.url, { method: asked.method, headers: asked.headers }, (answer) => {
      const one = { path: asked.url, bytes: answer.rawHeaders.join('    ').length + 'HTTP/1.1 200 OK\r\n\r\n'.length };
      answers.push(one);
      answered.writeHead(answer.statusCode, answer.headers);
      answer.on('data', (chunk) => { one.bytes += chunk.length; });
      answer.pipe(answered);
    });
    onward.on('error', () => answered.destroy());
    asked.pipe(onward);
  });
  await new Promise((ready) => relay.listen(0, '127.0.0.1', ready));
  return {
    url: `http://127.0.0.1:${relay.address().port}/`,
    answers,
    stop: async () => {
      await new Promise((ended) => {
        relay.close(ended);
        relay.closeAllConnections();
      });
      const gone = new Promise((done) => child.once('exit', done));
      child.kill('SIGINT');
      await gone;
    },
  };
}
