// Time of one edge's pace, 1024 samples and the first 128, in the WebAssembly engine under node. A phone is taken as
// four times slower.
import { readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

import { loadEngine } from "../apps/wasm/lastegg_wasm.mjs";

const root = path.join(path.dirname(fileURLToPath(import.meta.url)), "..");
const engine = await loadEngine(readFileSync(path.join(root, "build/wasm/lastegg.wasm")));
const test = { ...JSON.parse(readFileSync(path.join(root, "examples/fold_test.json"), "utf8")) };
const edge = JSON.parse(readFileSync(path.join(root, "examples/pace.json"), "utf8")).edge;
for (const samples of [128, 1024]) {
  const calibration = JSON.parse(engine.ask("fold_test", JSON.stringify({ ...test, samples })).text).calibration;
  const request = JSON.stringify({ calibration, edge });
  const times = [];
  for (let i = 0; i < 5; i += 1) {
    const begin = performance.now();
    engine.ask("pace", request);
    times.push(performance.now() - begin);
  }
  times.sort((a, b) => a - b);
  console.log(`one edge, ${samples} samples, everything the page shows of it: ${times[2].toFixed(0)} ms (median of 5)`);
}
