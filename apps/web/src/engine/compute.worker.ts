// The compute worker: stateless and disposable. It answers one question per message; the page numbers them and may end
// the whole worker to stop a question that is no longer wanted.
import { ask, locateEngine } from './wasm';
import type { Where } from './where';

interface Asked { type: 'ask'; number: number; question: string; request: string }
interface Located { type: 'locate'; where: Where }

self.onmessage = async ({ data }: MessageEvent<Asked | Located>) => {
  if (data.type === 'locate') {
    locateEngine(data.where);
    return;
  }
  const outcome = await ask<unknown>(data.question, data.request);
  self.postMessage({ number: data.number, outcome });
};
