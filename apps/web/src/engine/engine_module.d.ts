// The face of the engine's loader as the two workers use it; the build chooses the module itself (`#engine`).
declare module '#engine' {
  export interface Engine {
    readonly alive: boolean;
    ask(question: string, request: string): { ok: boolean; text: string };
  }
  export function loadEngine(source: WebAssembly.Module | BufferSource): Promise<Engine>;
}
