// The page's words are whole: Spanish has every entry of English with the same values in it and repeats no English text save
// those listed here; British English says only what differs; no word is written in a component or a script in place of the
// catalogue. `--test` checks the check.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'svelte/compiler';
import ts from 'typescript';
import { createServer } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Texts that Spanish and English share: names, symbols, units, words that are the same in both. */
const k_same = [
  'app.name', 'places.plan', 'sizes.queen', 'sizes.king', 'inspect.usual', 'inspect.no', 'inspect.levels.probable', 'inspect.people.answers.refused',
  'inspect.cloth.gramsPerM2', 'plan.inch', 'prove.papers.A4',
  'visit.hours', 'visit.amperes', 'visit.voltsOf', 'visit.energy',
  'inspect.lookalikes.kinds.*.key',
];

/** Every leaf of a catalogue with its path; entries of lists are numbered. */
export function leaves(words, path = '') {
  return Object.entries(words).flatMap(([key, value]) => {
    const here = path === '' ? key : `${path}.${key}`;
    return typeof value === 'object' && value !== null ? leaves(value, here) : [[here, value]];
  });
}

/** Lists that each language makes for itself: the words that a short name can do without. */
const k_own_lists = ['treat.field.fillers'];
const isOwn = (path) => k_own_lists.some((list) => path.startsWith(`${list}.`));

const k_arguments = [21, 34, 55, 89, 144];
const numbers = (text) => [...new Set(text.match(/\d+/g) ?? [])].sort().join(' ');
/** What an entry says: a function is asked twice, with values that can be told apart and with ones. */
const said = (value) => (typeof value === 'function' ? [value(...k_arguments), value(1, 1, 1, 1, 1)].map(String) : [value]);
const isListed = (path) => k_same.includes(path.replace(/\.\d+(?=\.|$)/g, '.*'));

/** What is wrong with `other` as a translation of `en`. */
export function complaintsAboutTranslation(en, other, language) {
  const [from, to] = [new Map(leaves(en)), new Map(leaves(other))];
  const wrong = [];
  for (const [path, value] of from) {
    if (isOwn(path)) continue;
    if (!to.has(path)) wrong.push(`${language}: ${path} is missing`);
    else {
      const [english, foreign] = [said(value), said(to.get(path))];
      if (english.some((text, i) => text === foreign[i] && /\p{L}/u.test(text)) && !isListed(path)) wrong.push(`${language}: ${path} is the English text: "${foreign[0]}"`);
      if (typeof value === 'function' && numbers(english[0]) !== numbers(foreign[0])) wrong.push(`${language}: ${path} says other values: "${english[0]}", "${foreign[0]}"`);
      if (foreign.some((text) => text.trim() === '') && english.every((text) => text.trim() !== '')) wrong.push(`${language}: ${path} says nothing`);
    }
  }
  for (const path of to.keys()) if (!from.has(path) && !isOwn(path)) wrong.push(`${language}: ${path} is no entry of English`);
  return wrong;
}

/** An overlay says only what differs, and only what there is. A list stands as a whole, so one of its texts has to differ. */
export function complaintsAboutOverlay(whole, over, path = '') {
  return Object.entries(over).flatMap(([key, value]) => {
    const here = path === '' ? key : `${path}.${key}`;
    if (!(key in whole)) return [`en-GB: ${here} is no entry of English`];
    if (typeof value === 'object' && !Array.isArray(value)) return complaintsAboutOverlay(whole[key], value, here);
    const one = (entry) => JSON.stringify(leaves({ entry }).map(([, leaf]) => said(leaf)));
    return one(value) === one(whole[key]) ? [`en-GB: ${here} does not differ`] : [];
  });
}

/** Symbols that are the same in every language. */
const k_symbols = /(?<!\p{L})(?:s|min|h|d|mm|cm|m|in|ft|kg|lb|g|l|W|kWh|V|A|C|F|px|mm\/s|in\/s|g\/m²|°C|°F|SHA)(?!\p{L})/gu;
const hasWord = (text) => /\p{L}/u.test(text.replace(k_symbols, ''));
const k_shown_attributes = /^(aria-label|aria-description|aria-roledescription|aria-valuetext|title|alt|placeholder|label|text|question|unit|hint|what)$/;

/** Literals that an expression gives as its value: branches and joined parts, not what it compares. */
function given(node) {
  if (!node) return [];
  if (node.type === 'Literal') return typeof node.value === 'string' ? [[node.start, node.value]] : [];
  if (node.type === 'TemplateLiteral') return [...node.quasis.map((part) => [part.start, part.value.cooked]), ...node.expressions.flatMap(given)];
  if (node.type === 'ConditionalExpression') return [...given(node.consequent), ...given(node.alternate)];
  if (node.type === 'LogicalExpression') return [...given(node.left), ...given(node.right)];
  if (node.type === 'BinaryExpression' && node.operator === '+') return [...given(node.left), ...given(node.right)];
  return [];
}

/** Words written in a component's template in place of the catalogue. */
export function wordsInTemplate(source, name) {
  const found = [];
  const line = (position) => source.slice(0, position).split('\n').length;
  const tell = (position, text) => { if (hasWord(text)) found.push(`${name}:${line(position)}: "${text.trim()}" belongs in the catalogue`); };
  const walk = (node) => {
    if (Array.isArray(node)) return node.forEach(walk);
    if (!node || typeof node !== 'object') return;
    if (node.type === 'Text') return tell(node.start, node.data);
    if (node.type === 'StyleDirective') return;
    if (node.type === 'Attribute') {
      const parts = Array.isArray(node.value) ? node.value : [node.value];
      for (const part of parts) {
        if (part?.type === 'Text') { if (k_shown_attributes.test(node.name)) tell(part.start, part.data); }
        else if (part?.type === 'ExpressionTag' && k_shown_attributes.test(node.name)) for (const [position, text] of given(part.expression)) tell(position, text);
        else if (part?.type === 'ExpressionTag') walk(part.expression);
      }
      return;
    }
    if (node.type === 'ExpressionTag') for (const [position, text] of given(node.expression)) tell(position, text);
    if (node.type === 'Property' && /^(text|label|title)$/.test(node.key?.name ?? '')) for (const [position, text] of given(node.value)) tell(position, text);
    for (const key of Object.keys(node)) if (key !== 'parent' && key !== 'loc' && key !== 'css') walk(node[key]);
  };
  walk(parse(source, { modern: true, filename: name }).fragment);
  return found;
}

/** Sentences written in a script: a text of two words, save what no person reads. */
export function sentencesInScript(source, name) {
  const found = [];
  const file = ts.createSourceFile(name, source, ts.ScriptTarget.Latest, true);
  const walk = (node) => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isLiteralTypeNode(node)) return;
    let text = null;
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) text = node.text;
    else if (ts.isTemplateExpression(node)) text = node.head.text + node.templateSpans.map((span) => ` 0 ${span.literal.text}`).join('');
    if (text && /\p{L}{2,}[,:]? \p{L}{2,}/u.test(text.replace(k_symbols, '')) && !k_no_sentence.some((pattern) => pattern.test(text))) {
      found.push(`${name}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}: "${text}" belongs in the catalogue`);
    }
    ts.forEachChild(node, walk);
  };
  walk(file);
  return found;
}
/** Texts of scripts that no person reads: queries of style sheets, rules of a page, indexes of the store, what is said between parts of the program. */
const k_no_sentence = [/^\(prefers-/, /@page|@bottom/, /^\[?job\+?/, /^id, job$/, /^no (?:id|longer asked)$/, /^button, a, /];

const files = (folder) => readdirSync(folder, { withFileTypes: true }).flatMap((one) => (
  one.isDirectory() ? files(`${folder}/${one.name}`) : [`${folder}/${one.name}`]));

function complaintsAboutSource() {
  return files(`${root}src`).flatMap((path) => {
    const name = path.slice(root.length);
    if (/^src\/(words|engine)\//.test(name)) return [];
    const source = readFileSync(path, 'utf8');
    if (name.endsWith('.ts')) return sentencesInScript(source, name);
    if (!name.endsWith('.svelte')) return [];
    const script = /<script[^>]*>([\s\S]*?)<\/script>/.exec(source);
    return [...wordsInTemplate(source, name), ...(script ? sentencesInScript('\n'.repeat(source.slice(0, script.index).split('\n').length - 1) + script[1], name) : [])];
  });
}

function selfTest() {
  const must = (held, what) => { if (!held) throw new Error(`the check misses: ${what}`); };
  const en = { a: 'one thing', b: (n, m) => `${n} of ${m}`, c: { d: 'x y' } };
  must(complaintsAboutTranslation(en, { a: 'una cosa', b: (n, m) => `${n} de ${m}`, c: { d: 'z' } }, 'es').length === 0, 'a sound translation');
  must(complaintsAboutTranslation(en, { a: 'one thing', b: (n, m) => `${n} de ${m}`, c: { d: 'z' } }, 'es').length === 1, 'English left standing');
  must(complaintsAboutTranslation(en, { a: 'una cosa', b: (n) => `${n} de algo`, c: { d: 'z' } }, 'es').length === 1, 'a value left out');
  must(complaintsAboutTranslation(en, { a: 'una cosa', b: (n, m) => `${n} de ${m}`, c: {} }, 'es').length === 1, 'a missing entry');
  must(complaintsAboutTranslation(en, { a: '', b: (n, m) => `${n} de ${m}`, c: { d: 'z' } }, 'es').length === 1, 'an empty entry');
  must(complaintsAboutOverlay(en, { a: 'one thing' }).length === 1 && complaintsAboutOverlay(en, { z: 'one' }).length === 1, 'a needless overlay');
  must(wordsInTemplate('<p>Save it</p>', 'x').length === 1, 'a text');
  must(wordsInTemplate('<p aria-label="Save it">{a} s</p>', 'x').length === 1, 'an attribute');
  must(wordsInTemplate("<p title={a === 'full' ? 'Save it' : b}>{a}</p>", 'x').length === 1, 'a text in an attribute');
  must(wordsInTemplate("<p>{a ? `${b} left` : ''}</p>", 'x').length === 1, 'a text in an expression');
  must(wordsInTemplate("<p class=\"row\" style:width=\"{w}px\">{a === 'full' ? b : c} min</p>", 'x').length === 0, 'what is no word');
  must(wordsInTemplate("<C options={[{ value: 'dark', text: 'Dark room' }]} />", 'x').length === 1, 'a text of an option');
  must(sentencesInScript("throw new Error('This file is none.');", 'x').length === 1, 'a sentence in a script');
}

selfTest();
const vite = await createServer({
  configFile: false, root, server: { middlewareMode: true, hmr: false, ws: false }, appType: 'custom', logLevel: 'error', optimizeDeps: { noDiscovery: true },
});
const [{ en }, { enGb }, { es }] = await Promise.all(['en', 'en_gb', 'es'].map((name) => vite.ssrLoadModule(`/src/words/${name}.ts`)));
await vite.close();
const english = new Map(leaves(en));
const spanish = new Map(leaves(es));
const shared = new Set([...english].filter(([path, value]) => spanish.has(path) && said(value).some((text, i) => /\p{L}/u.test(text) && text === said(spanish.get(path))[i]))
  .map(([path]) => path.replace(/\.\d+(?=\.|$)/g, '.*')));
const unused = k_same.filter((path) => !shared.has(path));
const wrong = [
  ...complaintsAboutTranslation(en, es, 'es'), ...complaintsAboutOverlay(en, enGb), ...complaintsAboutSource(),
  ...unused.map((path) => `the list of shared texts names ${path}, which is none`),
];
for (const one of wrong) console.error(one);
console.log(`words: ${english.size} entries, ${wrong.length} complaints`);
process.exitCode = wrong.length > 0 ? 1 : 0;
