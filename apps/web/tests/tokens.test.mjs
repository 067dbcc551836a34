// The colours as shipped: text at 7:1 and graphics at 3:1 on every ground they stand on, in both themes; the three signals
// stay apart under simulated colour-vision deficiency (CIEDE2000, full-strength Machado simulation as culori has it).
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { differenceCiede2000, filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit, parse, wcagContrast } from 'culori';

const css = readFileSync(new URL('../src/look/tokens.css', import.meta.url), 'utf8');

function block(selector) {
  const start = css.indexOf(`${selector} {`);
  return Object.fromEntries([...css.slice(start, css.indexOf('}', start)).matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map((match) => [match[1], match[2]]));
}

const day = block(':root');
const themes = { dark: { ...day, ...block(":root:not([data-look='day'])") }, day, print: { ...day, ...block('@media print {\n  :root') } };
const k_least_difference = 23; // what the naive red/amber/green falls below under deuteranopia is 14

for (const [name, colours] of Object.entries(themes)) {
  const grounds = ['ink', 'ink-raised', 'ink-high'];
  test(`${name}: text reaches 7:1`, () => {
    for (const text of ['bone', 'bone-dim']) {
      for (const ground of grounds) {
        const contrast = wcagContrast(colours[text], colours[ground]);
        assert.ok(contrast >= 7, `${text} on ${ground} is ${contrast.toFixed(2)}`);
      }
    }
    assert.ok(wcagContrast(colours.ink, colours.bone) >= 7, 'a pressed button');
  });
  test(`${name}: graphics reach 3:1`, () => {
    for (const graphic of ['line', 'blue', 'vermillion', ...(name === 'dark' ? ['yellow'] : ['signal-outline'])]) {
      for (const ground of grounds) {
        const contrast = wcagContrast(colours[graphic], colours[ground]);
        assert.ok(contrast >= 3, `${graphic} on ${ground} is ${contrast.toFixed(2)}`);
      }
    }
  });
  test(`${name}: the signals stay apart for every kind of colour vision`, () => {
    const difference = differenceCiede2000();
    const eyes = { usual: (colour) => colour, protan: filterDeficiencyProt(1), deutan: filterDeficiencyDeuter(1), tritan: filterDeficiencyTrit(1) };
    const signals = ['blue', 'yellow', 'vermillion'];
    for (const [eye, see] of Object.entries(eyes)) {
      for (let i = 0; i < 3; i++) {
        for (let k = i + 1; k < 3; k++) {
          const apart = difference(see(parse(colours[signals[i]])), see(parse(colours[signals[k]])));
          assert.ok(apart >= k_least_difference, `${signals[i]} and ${signals[k]} for ${eye}: ${apart.toFixed(1)}`);
        }
      }
    }
  });
}

test('temperature bins are ordered by lightness, strictly', () => {
  for (const [name, colours] of Object.entries(themes)) {
    const lights = Array.from({ length: 7 }, (_, i) => wcagContrast(colours[`heat-${i}`], '#000000'));
    for (let i = 1; i < 7; i++) {
      assert.ok(name === 'dark' ? lights[i] > lights[i - 1] * 1.15 : lights[i] < lights[i - 1] / 1.15, `${name}: bin ${i}`);
    }
  }
});
