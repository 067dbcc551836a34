// Units: what is typed, kept and shown again is the same number; known conversions; refusals.
import assert from 'node:assert/strict';
import { fileURLToPath } from 'node:url';
import { after, before, test } from 'node:test';
import { createServer } from 'vite';

let vite, measure;
before(async () => {
  vite = await createServer({ configFile: false, root: fileURLToPath(new URL('..', import.meta.url)), server: { middlewareMode: true, hmr: false, ws: false }, appType: 'custom', logLevel: 'error' });
  measure = await vite.ssrLoadModule('/src/look/measure.ts');
});
after(() => vite?.close());

const us = { temperature: 'F', length: 'in' }, metric = { temperature: 'C', length: 'mm' };

test('fixed points: 32 F = 0 C, 212 F = 100 C, 160 F = 71.1 C, 1 in = 25.4 mm', () => {
  assert.equal(measure.fromTemperature(32, us), 0);
  assert.equal(measure.fromTemperature(212, us), 100);
  assert.ok(Math.abs(measure.fromTemperature(160, us) - 71.1111) < 1e-3);
  assert.equal(measure.fromPace(1, us), 0.0254);
  assert.equal(measure.fromSmall(25.4, metric), 0.0254);
});

test('10,000 typed values come back as typed', () => {
  for (let i = 1; i <= 10000; i++) {
    const typed = i / 100;
    assert.equal(measure.pace(measure.fromPace(typed < 1 ? typed : Math.round(typed * 10) / 10, us), us).text, typed < 1 ? typed.toFixed(2) : (Math.round(typed * 10) / 10).toFixed(1));
    assert.equal(measure.temperature(measure.fromTemperature(i % 213, us), us).text, String(i % 213));
  }
});

test('numbers as people type them, and refusals', () => {
  assert.equal(measure.readNumber(' 12,5 '), 12.5);
  assert.equal(measure.readNumber('.5'), 0.5);
  assert.equal(measure.readNumber('-3'), -3);
  for (const text of ['', 'fast', '1e3', '1 2', '12.5.1', '0x10', 'Infinity', '12 mm']) assert.equal(measure.readNumber(text), null, text);
});

test('a share is never shown as certain', () => {
  assert.equal(measure.inHundred(1), '99 in 100');
  assert.equal(measure.inHundred(0.004), 'under 1 in 100');
  assert.equal(measure.inHundred(0.97), '97 in 100');
});
