#!/usr/bin/env node
// Runs a program compiled for WASI, with this machine's files and environment. Usage: tools/run_wasi.mjs PROGRAM [ARGUMENT ...]
// There is no unwinding: a C++ throw ends it, as in apps/wasm/lastegg_wasm.mjs.
import { readFileSync } from "node:fs";
import process from "node:process";
import { WASI } from "node:wasi";

const wasi = new WASI({ version: "preview1", args: process.argv.slice(2), env: process.env, preopens: { "/": "/" } });
let memory = null;
const fatal = (text, length) => {
  throw new Error(`a C++ throw of ${Buffer.from(memory.buffer, text, length).toString()}`);
};
const module = await WebAssembly.compile(readFileSync(process.argv[2]));
const instance = await WebAssembly.instantiate(module, { ...wasi.getImportObject(), host: { fatal } });
memory = instance.exports.memory;
process.exitCode = wasi.start(instance);
