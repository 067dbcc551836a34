// Loads the engine inside a worker and speaks JSON with it. A trap kills an instance, so the next question after one
// starts a fresh instance.
import { loadEngine, type Engine } from '#engine';
import type { EngineError, Outcome } from './shapes';
import type { Where } from './where';

let engine: Promise<Engine> | null = null;
let module: Promise<WebAssembly.Module> | null = null;
let sentences: Promise<string | null> | null = null;
let where: Where = { url: '', words: null, language: 'en-US' };

export function locateEngine(told: Where): void {
  where = told;
}

/** The request as the engine gets it: the one place where the language joins it. English of the United States is what it speaks unasked. */
function spoken(request: string): string {
  if (where.language === 'en-US' || !request.startsWith('{')) return request;
  const rest = request.slice(1).trimStart();
  return `{"language":${JSON.stringify(where.language)}${rest.startsWith('}') ? '' : ','}${rest}`;
}

async function fetched(url: string, what: string): Promise<Response> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${what}: HTTP ${response.status}`);
  return response;
}

async function compiled(): Promise<WebAssembly.Module> {
  return WebAssembly.compileStreaming(await fetched(where.url, 'engine file'));
}

/** The sentences to hand over, or null: an engine that cannot be handed them answers in English, which is better than not at all. */
async function loadedSentences(): Promise<string | null> {
  if (where.words === null) return null;
  try {
    return await (await fetched(where.words, 'words of the engine')).text();
  } catch {
    return null;
  }
}

/** A fresh engine that speaks the language: each instance is handed what it comes without. */
async function speaking(): Promise<Engine> {
  module ??= compiled();
  sentences ??= loadedSentences();
  const [fresh, words] = [await loadEngine(await module), await sentences];
  if (words === null) sentences = null;
  else fresh.takeWords(where.language, words);
  return fresh;
}

async function instance(): Promise<Engine> {
  try {
    engine ??= speaking();
    return await engine;
  } catch (error) {
    module = null;
    engine = null;
    throw error;
  }
}

function readError(text: string): EngineError {
  try {
    const parsed = JSON.parse(text) as { error?: EngineError } & EngineError;
    return parsed.error ?? parsed;
  } catch {
    return { kind: 'internal', message: text };
  }
}

/** Asks one question; `request` is JSON text. Never rejects: a trap or a missing engine is an error of kind `internal`. */
export async function ask<T>(question: string, request: string): Promise<Outcome<T>> {
  try {
    const { ok, text } = (await instance()).ask(question, spoken(request));
    return ok ? { ok: true, answer: JSON.parse(text) as T } : { ok: false, error: readError(text) };
  } catch (error) {
    engine = null;
    return { ok: false, error: { kind: 'internal', message: error instanceof Error ? error.message : String(error) } };
  }
}
