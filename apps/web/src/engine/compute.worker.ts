// The compute worker: stateless and disposable. It answers one question per message; the page numbers them and may end
// the whole worker to stop a question that is no longer wanted.
import type { Language } from '../words/languages';
import { ask, locateEngine } from './wasm';

interface Asked { type: 'ask'; number: number; question: string; request: string }
interface Located { type: 'locate'; url: string; language: Language }

self.onmessage = async ({ data }: MessageEvent<Asked | Located>) => {
  if (data.type === 'locate') {
    locateEngine(data.url, data.language);
    return;
  }
  const outcome = await ask<unknown>(data.question, data.request);
  self.postMessage({ number: data.number, outcome });
};
