export interface AskOutcome {
  ok: boolean;
  /** JSON: the answer, or {"error":{...}}. */
  text: string;
}

/** The instance has ended: a defect in the engine, or memory used up. Make a new one with loadEngine. */
export class EngineFatal extends Error {}

export class Engine {
  /** False once a call has thrown EngineFatal. */
  readonly alive: boolean;
  /** Asks a question; both texts as on the command line. Throws EngineFatal when the instance has ended. */
  ask(question: string, requestText: string): AskOutcome;
  /** Hands it the sentences of a language it comes without ("es", the text of words/data/es.json); true when taken. */
  takeWords(tag: string, text: string): boolean;
}

/** An engine from the bytes of lastegg.wasm, or from a compiled module. */
export function loadEngine(source: BufferSource | WebAssembly.Module): Promise<Engine>;
