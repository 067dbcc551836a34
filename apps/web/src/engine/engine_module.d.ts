// The face of the engine's loader as the two workers use it; the build chooses the module itself (`#engine`).
declare module '#engine' {
  export interface Engine {
    readonly alive: boolean;
    /** Hands it the sentences of a language it comes without; true when it has taken them. */
    takeWords(tag: string, text: string): boolean;
    ask(question: string, request: string): { ok: boolean; text: string };
  }
  export function loadEngine(source: WebAssembly.Module | BufferSource): Promise<Engine>;
}
