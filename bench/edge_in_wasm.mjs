// Time of one edge's pace in the WebAssembly engine under node and in a worker of Debian's chromium, unthrottled. A
// phone is taken as four times slower. Exits 1 when node misses its floor.
import { existsSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";

import { loadEngine } from "../apps/wasm/lastegg_wasm.mjs";
import { printed, timeEdge } from "./edge.mjs";

const k_floor_ms = 150;
const k_goal_ms = 60;
const root = path.join(path.dirname(fileURLToPath(import.meta.url)), "..");
const text = (name) => readFileSync(path.join(root, name), "utf8");
const test = JSON.parse(text("examples/fold_test.json"));
const { edge } = JSON.parse(text("examples/pace.json"));

const engine = await loadEngine(readFileSync(path.join(root, "build/wasm/lastegg.wasm")));
const inNode = timeEdge(engine, test, edge);
console.log("\nOne edge in WebAssembly");
console.log(printed("node", inNode).join("\n"));
const least = inNode[1].least;
const held = least <= k_floor_ms;
console.log(`  one edge x 1024 samples in node, ms (goal ${k_goal_ms}): ${least.toFixed(0)}, at most ${k_floor_ms}: ${held ? "held" : "MISSED"}`);

const worker = `
import { loadEngine } from "./apps/wasm/lastegg_wasm.mjs";
import { timeEdge } from "./bench/edge.mjs";
const bytes = await (await fetch("./build/wasm/lastegg.wasm")).arrayBuffer();
const engine = await loadEngine(new Uint8Array(bytes));
postMessage(timeEdge(engine, ${JSON.stringify(test)}, ${JSON.stringify(edge)}));`;

async function inChromium() {
  const browserPath = process.env.LASTEGG_CHROMIUM ?? "/usr/bin/chromium";
  const packages = path.join(root, "apps/web/package.json");
  if (!existsSync(browserPath)) return console.log("  chromium: not installed, not measured");
  let chromium;
  try {
    ({ chromium } = createRequire(packages)("playwright-core"));
  } catch {
    return console.log("  chromium: not measured, apps/web has no packages yet (npm ci)");
  }
  const types = { ".mjs": "text/javascript", ".js": "text/javascript", ".wasm": "application/wasm", ".html": "text/html" };
  const server = createServer((request, response) => {
    const name = decodeURIComponent(new URL(request.url, "http://x").pathname).slice(1);
    response.setHeader("content-type", types[path.extname(name)] ?? "text/plain");
    if (name === "page.html") response.end("<!doctype html>");
    else if (name === "worker.js") response.end(worker);
    else if (/^(apps\/wasm|bench|build\/wasm)\/[a-z_]+\.(mjs|wasm)$/.test(name)) response.end(readFileSync(path.join(root, name)));
    else response.writeHead(404).end();
  });
  await new Promise((done) => server.listen(0, "127.0.0.1", done));
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  try {
    const page = await browser.newPage();
    await page.goto(`http://127.0.0.1:${server.address().port}/page.html`);
    const times = await page.evaluate(
      () =>
        new Promise((done, failed) => {
          const runner = new Worker("worker.js", { type: "module" });
          runner.onmessage = (event) => done(event.data);
          runner.onerror = (event) => failed(new Error(event.message));
        }),
    );
    console.log(printed("worker in chromium", times).join("\n"));
  } finally {
    await browser.close();
    server.close();
  }
}
await inChromium();
process.exitCode = held ? 0 : 1;
