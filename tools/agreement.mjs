#!/usr/bin/env node
// Asks the native program and the WebAssembly engine the same questions and compares their answers.
//
// Usage: tools/agreement.mjs [--long] [--count N] [--seed S] [--only QUESTION]
//
// Every example under examples/ is asked as it stands; then N requests (50, with --long 1000) are drawn from the
// examples by a seeded generator, which moves numbers within the ranges of the schemas under schema/ and picks other
// words of closed lists. Numbers must agree to 1e-9 of the larger, or to 1e-12 in their own unit when they are that
// small; everything else, `branches` among it, must be equal. Refusals must agree as well, but a drawn request counts
// only once it is answered. Drawn requests take the smallest ensemble: every sample goes through the same arithmetic.
import { spawn } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import process from "node:process";
import readline from "node:readline";
import { fileURLToPath } from "node:url";

import { EngineFatal, loadEngine } from "../apps/wasm/lastegg_wasm.mjs";

const k_relative_tolerance = 1e-9;
const k_absolute_floor = 1e-12;
const k_most_draws_for_one_answer = 20;
const k_least_samples = 64;
const root = path.join(path.dirname(fileURLToPath(import.meta.url)), "..");

function options(words) {
  const chosen = { count: 50, seed: 1, only: null };
  while (words.length > 0) {
    const word = words.shift();
    if (word === "--long") chosen.count = 1000;
    else if (word === "--count") chosen.count = Number(words.shift());
    else if (word === "--seed") chosen.seed = Number(words.shift());
    else if (word === "--only") chosen.only = words.shift();
    else throw new Error(`unknown option ${word}`);
  }
  return chosen;
}

// Random numbers in [0, 1): a 32-bit counter, mixed by multiplications and shifts (constants from memory of the
// widely used generator "mulberry32"; the quality needed here is slight).
function generator(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

// ---- drawing requests ----

const plain = (schema) => (schema.anyOf ? schema.anyOf.flatMap(plain) : [schema]);

// The schemas that may describe `value` among alternatives: objects are told apart by their one-word choices.
function fitting(schema, value) {
  return plain(schema).filter((candidate) => {
    if (value === null || typeof value !== "object" || Array.isArray(value)) return true;
    return Object.entries(candidate.properties ?? {}).every(
      ([key, property]) => !(property.enum && key in value) || property.enum.includes(value[key]),
    );
  });
}

function moved(number, schemas, factor) {
  const schema = schemas.find((one) => one.type === "number" || one.type === "integer") ?? {};
  let next = number === 0 ? 0 : number * factor;
  if (schema.type === "integer" || (Number.isInteger(number) && schema.type === undefined)) next = Math.round(next);
  const low = schema.minimum ?? schema.exclusiveMinimum;
  const high = schema.maximum ?? schema.exclusiveMaximum;
  const outside = (low !== undefined && next < low) || (high !== undefined && next > high);
  return outside || next === schema.exclusiveMinimum || next === schema.exclusiveMaximum ? number : next;
}

// Lists of numbers are often ascending, so their entries move by one factor together.
function drawn(value, schema, random, common = null) {
  const schemas = fitting(schema, value);
  if (typeof value === "number") {
    if (common !== null) return moved(value, schemas, common);
    return random() < 0.5 ? moved(value, schemas, Math.exp(random() - 0.5)) : value;
  }
  if (typeof value === "string") {
    const words = schemas.find((one) => one.enum?.includes(value))?.enum;
    return words && random() < 0.15 ? words[Math.floor(random() * words.length)] : value;
  }
  if (typeof value === "boolean") return random() < 0.15 ? !value : value;
  if (Array.isArray(value)) {
    const items = { anyOf: schemas.map((one) => one.items ?? {}) };
    const numeric = value.every((entry) => typeof entry === "number");
    const factor = numeric ? (common ?? (random() < 0.5 ? Math.exp(0.5 * (random() - 0.5)) : 1)) : null;
    return value.map((entry) => drawn(entry, items, random, factor));
  }
  if (value === null || typeof value !== "object") return value;
  const next = Object.fromEntries(
    Object.entries(value).map(([key, member]) => {
      const below = schemas.map((one) => one.properties?.[key] ?? one.additionalProperties).filter(Boolean);
      return [key, drawn(member, { anyOf: below.length > 0 ? below : [{}] }, random)];
    }),
  );
  if (schemas.some((one) => one.properties?.samples)) next.samples = k_least_samples;
  return next;
}

// ---- the two engines ----

class Native {
  constructor(program) {
    this.child = spawn(program, ["ask", "--stream"], { stdio: ["pipe", "pipe", "inherit"] });
    this.lines = readline.createInterface({ input: this.child.stdout })[Symbol.asyncIterator]();
    this.exit = new Promise((resolve, reject) => {
      this.child.on("error", reject);
      this.child.on("exit", resolve);
    });
    this.exit.catch(() => {});
  }

  async ask(question, request) {
    this.child.stdin.write(JSON.stringify({ question, request }) + "\n");
    const line = await this.lines.next();
    if (line.done) throw new Error(`the native program ended at ${question} ${JSON.stringify(request)}`);
    return JSON.parse(line.value);
  }

  async close() {
    this.child.stdin.end();
    return this.exit;
  }
}

class Wasm {
  constructor(bytes, words) {
    this.bytes = bytes;
    this.words = words;  // Spanish, which the native program has inside
  }

  async ask(question, request) {
    if (!this.engine?.alive) {
      this.engine = await loadEngine(this.bytes);
      if (!this.engine.takeWords("es", this.words)) throw new Error("the WebAssembly engine does not take its Spanish");
    }
    try {
      return JSON.parse(this.engine.ask(question, JSON.stringify(request)).text);
    } catch (error) {
      if (!(error instanceof EngineFatal)) throw error;
      return { fatal: error.message };
    }
  }
}

// ---- comparing ----

const worst = { gap: 0, where: "" };

function differences(native, wasm, where, found = []) {
  if (typeof native === "number" && typeof wasm === "number") {
    const gap = Math.abs(native - wasm);
    const size = Math.max(Math.abs(native), Math.abs(wasm));
    if (gap > k_absolute_floor && gap / size > worst.gap) Object.assign(worst, { gap: gap / size, where });
    if (!(gap <= Math.max(k_relative_tolerance * size, k_absolute_floor))) found.push(`${where}: ${native} and ${wasm}`);
  } else if (native && wasm && typeof native === "object" && typeof wasm === "object") {
    const keys = new Set([...Object.keys(native), ...Object.keys(wasm)]);
    for (const key of keys) {
      if (key in native && key in wasm) differences(native[key], wasm[key], `${where}/${key}`, found);
      else found.push(`${where}/${key} is only in the ${key in native ? "native" : "WebAssembly"} answer`);
    }
  } else if (native !== wasm) {
    found.push(`${where}: ${JSON.stringify(native)} and ${JSON.stringify(wasm)}`);
  }
  return found;
}

async function main() {
  const { count, seed, only } = options(process.argv.slice(2));
  const examples = readdirSync(path.join(root, "examples"))
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => ({
      name,
      question: name.split(".")[0],
      request: JSON.parse(readFileSync(path.join(root, "examples", name), "utf8")),
    }))
    .filter((example) => only === null || example.question === only);
  if (examples.length === 0) throw new Error("there are no examples to ask");
  const native = new Native(path.join(root, "build/native/lastegg"));
  const wasm = new Wasm(
    readFileSync(path.join(root, "build/wasm/lastegg.wasm")),
    readFileSync(path.join(root, "words/data/es.json"), "utf8"),
  );
  const random = generator(seed);
  const tally = { passed: 0, failed: 0, refused: 0 };

  // True when the native engine answered.
  const compare = async (title, question, request) => {
    const asked = native.ask(question, request);  // at work in its own process while WebAssembly computes here
    const answers = await Promise.all([asked, wasm.ask(question, request)]);
    const found = differences(answers[0], answers[1], "");
    const answered = !("error" in answers[0]);
    if (answers[0].error?.kind === "internal") found.push(`both call it a defect of theirs: ${answers[0].error.message}`);
    if (found.length > 0) {
      tally.failed += 1;
      console.log(`${title} differs:\n  ${found.slice(0, 10).join("\n  ")}\n  request: ${JSON.stringify(request)}`);
    } else if (answered) {
      tally.passed += 1;
    } else {
      tally.refused += 1;
    }
    return answered;
  };

  for (const example of examples) {
    if (await compare(`examples/${example.name}`, example.question, example.request)) continue;
    tally.failed += 1;
    console.log(`examples/${example.name} is refused`);
  }
  for (let i = 0; i < count; i += 1) {
    const { name, question, request } = examples[i % examples.length];
    const schema = JSON.parse(readFileSync(path.join(root, "schema", `${question}.request.json`), "utf8"));
    let answered = false;
    for (let draw = 0; draw < k_most_draws_for_one_answer && !answered; draw += 1)
      answered = await compare(`request ${i} drawn from examples/${name}`, question, drawn(request, schema, random));
    if (answered) continue;
    tally.failed += 1;
    console.log(`no request drawn from examples/${name} was answered`);
  }
  await native.close();
  console.log(
    `seed ${seed}: ${tally.passed} answers and ${tally.refused} refusals alike; largest relative gap ` +
      `${worst.gap.toExponential(1)} at ${worst.where || "none"}`,
  );
  console.log(`agreement: ${tally.passed} passed, ${tally.failed} failed`);
  process.exitCode = tally.failed === 0 ? 0 : 1;
}

await main();
