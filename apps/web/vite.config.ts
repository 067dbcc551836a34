import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

// The engine and its loader are the two files that the page takes from outside its folder. LASTEGG_ENGINE_MODULE lets a
// developer put another module with the same face in the loader's place; a shipped build never sets it.
const engineModule =
  process.env.LASTEGG_ENGINE_MODULE ?? fileURLToPath(new URL('../wasm/lastegg_wasm.mjs', import.meta.url));
const built = fileURLToPath(new URL('../../build/wasm', import.meta.url));
if (!existsSync(`${built}/lastegg.wasm`)) throw new Error(`${built}/lastegg.wasm is missing. Build it first: cmake --preset wasm && cmake --build --preset wasm`);

export default defineConfig({
  base: './',
  resolve: { alias: { '#built': built, '#engine': engineModule } },
  worker: { format: 'es' },
  build: { target: 'es2022', sourcemap: false, assetsInlineLimit: 0 },
  server: { fs: { allow: ['..', built] } },
  plugins: [
    svelte(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      // The large icons are for the moment of installing: no first visit loads them.
      includeManifestIcons: false,
      manifest: {
        id: '/',
        name: 'Last Egg',
        short_name: 'Last Egg',
        description: 'How fast to move a steam head so that the last bed bug egg dies.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        orientation: 'any',
        background_color: '#101417',
        theme_color: '#101417',
        icons: [
          { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icons/maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,wasm,woff2,svg,png,ndjson,webmanifest}', 'assets/es-*.json'],
        globIgnores: ['**/*latin-ext*', 'icons/*-512.png'],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        navigateFallback: 'index.html',
        navigateFallbackDenylist: [/^\/api\//],
        cleanupOutdatedCaches: true,
      },
    }),
  ],
});
