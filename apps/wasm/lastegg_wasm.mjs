// Loads build/wasm/lastegg.wasm in a browser, a worker or node, and asks it questions. No dependencies.

/** The instance has ended: a defect in the engine, or memory used up. Make a new one with loadEngine. */
export class EngineFatal extends Error {
  constructor(message, options) {
    super(message, options);
    this.name = "EngineFatal";
  }
}

const k_head_bytes = 8;

export class Engine {
  #exports;
  #ended = null;
  #encoder = new TextEncoder();
  #decoder = new TextDecoder();

  constructor(exports) {
    this.#exports = exports;
  }

  /** False once a call has thrown EngineFatal. */
  get alive() {
    return this.#ended === null;
  }

  /** Asks a question; both texts as on the command line. Returns {ok, text}; text is JSON in either case. */
  ask(question, requestText) {
    if (this.#ended) throw new EngineFatal(this.#ended.message, { cause: this.#ended });
    try {
      return this.#ask(question, requestText);
    } catch (error) {
      this.#ended = error instanceof EngineFatal ? error : new EngineFatal(String(error?.message ?? error), { cause: error });
      throw this.#ended;
    }
  }

  /**
   * Hands the engine the sentences of a language it comes without: "es" and the text of words/data/es.json. True when it has
   * taken them; until then it answers in English. Once for each instance, before the first question.
   */
  takeWords(tag, text) {
    const [name, nameLength] = this.#write(tag);
    const [words, wordsLength] = this.#write(text);
    const taken = this.#exports.lastegg_words(name, nameLength, words, wordsLength);
    this.#exports.lastegg_free(name);
    this.#exports.lastegg_free(words);
    return taken === 1;
  }

  #ask(question, requestText) {
    const [name, nameLength] = this.#write(question);
    const [request, requestLength] = this.#write(requestText);
    const outcome = this.#exports.lastegg_ask(name, nameLength, request, requestLength) >>> 0;
    this.#exports.lastegg_free(name);
    this.#exports.lastegg_free(request);
    if (outcome === 0) throw new EngineFatal("out of memory");
    // The memory may have grown and its old views with it become empty; so a view is made after each call.
    const memory = this.#exports.memory.buffer;
    const [ok, length] = new Uint32Array(memory, outcome, 2);
    const text = this.#decoder.decode(new Uint8Array(memory, outcome + k_head_bytes, length));
    this.#exports.lastegg_free(outcome);
    return { ok: ok === 1, text };
  }

  #write(text) {
    const bytes = this.#encoder.encode(text);
    const place = this.#exports.lastegg_alloc(bytes.length) >>> 0;
    if (place === 0) throw new EngineFatal("out of memory");
    new Uint8Array(this.#exports.memory.buffer, place, bytes.length).set(bytes);
    return [place, bytes.length];
  }
}

// What the C library may ask of the system: nothing is there, and nothing is written.
function system(memory) {
  const k_bad_descriptor = 8;
  return {
    environ_get: () => 0,
    environ_sizes_get: (count, bytes) => {
      const view = new DataView(memory().buffer);
      view.setUint32(count, 0, true);
      view.setUint32(bytes, 0, true);
      return 0;
    },
    fd_close: () => k_bad_descriptor,
    fd_seek: () => k_bad_descriptor,
    fd_write: () => k_bad_descriptor,
    proc_exit: (code) => {
      throw new EngineFatal(`the engine left with code ${code}`);
    },
  };
}

/** An engine from the bytes of lastegg.wasm, or from a compiled module. */
export async function loadEngine(source) {
  const module = source instanceof WebAssembly.Module ? source : await WebAssembly.compile(source);
  let exports = null;
  const host = {
    fatal: (text, length) => {
      const bytes = new Uint8Array(exports.memory.buffer, text >>> 0, length >>> 0);
      throw new EngineFatal(`the engine threw ${new TextDecoder().decode(bytes)}`);
    },
  };
  const imports = { wasi_snapshot_preview1: system(() => exports.memory), host };
  const instance = await WebAssembly.instantiate(module, imports);
  exports = instance.exports;
  exports._initialize();
  return new Engine(exports);
}
