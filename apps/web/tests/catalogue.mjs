// The page's words for a test: the same catalogue the page speaks from, so that a step finds a control in any language.
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

export async function catalogue() {
  const vite = await createServer({
    configFile: false, root: fileURLToPath(new URL('..', import.meta.url)), server: { middlewareMode: true, hmr: false, ws: false }, appType: 'custom', logLevel: 'error', optimizeDeps: { noDiscovery: true },
  });
  const [{ en }, { enGb }, { es }, { overlaid }] = await Promise.all(
    ['en', 'en_gb', 'es', 'overlay'].map((name) => vite.ssrLoadModule(`/src/words/${name}.ts`)));
  await vite.close();
  return { 'en-US': en, 'en-GB': overlaid(en, enGb), es };
}

/** Every text of a catalogue that is no function, with the path to it. */
export function texts(words, path = '') {
  return Object.entries(words).flatMap(([key, value]) => {
    const here = path === '' ? key : `${path}.${key}`;
    if (typeof value === 'string') return [[here, value]];
    return typeof value === 'object' && value !== null ? texts(value, here) : [];
  });
}
