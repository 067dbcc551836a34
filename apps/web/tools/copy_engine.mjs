// Copies the engine that the native build left at build/wasm/lastegg.wasm into public/, where the page loads it from.
import { copyFile, mkdir, stat } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

const from = fileURLToPath(new URL('../../../build/wasm/lastegg.wasm', import.meta.url));
const to = fileURLToPath(new URL('../public/lastegg.wasm', import.meta.url));

try {
  const { size } = await stat(from);
  await mkdir(new URL('../public/', import.meta.url), { recursive: true });
  await copyFile(from, to);
  console.log(`engine: ${(size / 1024).toFixed(0)} kB copied to public/lastegg.wasm`);
} catch (error) {
  if (process.env.LASTEGG_ENGINE_MODULE) {
    console.log('engine: not built; another engine module was asked for');
  } else {
    console.error(`engine: ${from} is missing. Build it first: cmake --preset wasm && cmake --build --preset wasm`);
    console.error(String(error));
    process.exit(1);
  }
}
