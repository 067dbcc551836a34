// Debian's Chromium for the tests, with a profile folder of its own that the test removes.
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';

export const k_path = process.env.LASTEGG_CHROMIUM ?? '/usr/bin/chromium';
export const k_arguments = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync',
];
export const k_phone = { width: 390, height: 844 };
export const k_desk = { width: 1440, height: 900 };

if (!existsSync(k_path)) throw new Error(`no browser at ${k_path}: install the package chromium, or set LASTEGG_CHROMIUM`);

export async function profile() {
  const folder = await mkdtemp(join(tmpdir(), 'lastegg-browser-'));
  return { folder, remove: () => rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 }) };
}

/** Opens the browser, in US English unless told otherwise, on a profile folder, which keeps what the page stored between openings. */
export async function open(folder, options = {}) {
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: k_path, headless: true, args: k_arguments, viewport: k_phone, acceptDownloads: true, locale: 'en-US', ...options,
  });
  context.setDefaultTimeout(30000);
  return context;
}
