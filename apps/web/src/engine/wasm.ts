// Loads the engine inside a worker and speaks JSON with it. A trap kills an instance, so the next question after one
// starts a fresh instance.
import { loadEngine, type Engine } from '#engine';
import type { Language } from '../words/languages';
import type { EngineError, Outcome } from './shapes';

let engine: Promise<Engine> | null = null;
let module: Promise<WebAssembly.Module> | null = null;
let engineUrl = '';
let language: Language = 'en-US';

export function locateEngine(url: string, spoken: Language): void {
  engineUrl = url;
  language = spoken;
}

/** The request as the engine gets it: the one place where the language joins it. English of the United States is what it speaks unasked. */
function spoken(request: string): string {
  if (language === 'en-US' || !request.startsWith('{')) return request;
  const rest = request.slice(1).trimStart();
  return `{"language":${JSON.stringify(language)}${rest.startsWith('}') ? '' : ','}${rest}`;
}

async function compiled(): Promise<WebAssembly.Module> {
  const response = await fetch(engineUrl);
  if (!response.ok) throw new Error(`engine file: HTTP ${response.status}`);
  return WebAssembly.compileStreaming(response);
}

async function instance(): Promise<Engine> {
  try {
    module ??= compiled();
    engine ??= module.then(loadEngine);
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
