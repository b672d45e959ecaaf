import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';

// The grammar for text editors, read by the library that they use.
const file = new URL('../../src/Sketch.Editors/VsCode/sketch.tmLanguage.json', import.meta.url);
const wasm = readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm'));
await oniguruma.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
const registry = new textmate.Registry({
  onigLib: Promise.resolve({
    createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
    createOnigString: (text) => new oniguruma.OnigString(text),
  }),
  loadGrammar: async () => textmate.parseRawGrammar(readFileSync(file, 'utf8'), file.pathname),
});
const grammar = await registry.loadGrammar('source.sketch');

/** The words of a line that have a scope of their own, each with the beginning of that scope. */
function scopes(line) {
  return grammar.tokenizeLine(line, textmate.INITIAL).tokens
    .map(({ startIndex, endIndex, scopes: [, scope] }) =>
      [line.slice(startIndex, endIndex).trim(), scope?.split('.').slice(0, 2).join('.')])
    .filter(([text, scope]) => text && scope);
}

test('A piece is a name, a kind, numbers and clauses', () => assert.deepEqual(scopes('  lamp: star 1 3/4, of deep, raised 2 mm'), [
  ['lamp', 'entity.name'], [':', 'punctuation.separator'], ['star', 'entity.name'], ['1 3/4', 'constant.numeric'],
  [',', 'punctuation.separator'], ['of', 'keyword.other'], ['deep', 'variable.other'],
  [',', 'punctuation.separator'], ['raised', 'keyword.other'], ['2', 'constant.numeric'], ['mm', 'keyword.other'],
]));

test('What follows "of" is a name', () =>
  assert.deepEqual(scopes('of star'), [['of', 'keyword.other'], ['star', 'variable.other']]));

test('A role is declared with its paper', () => assert.deepEqual(scopes('role sky: waves #d8e9ee'), [
  ['role', 'keyword.control'], ['sky', 'entity.name'], [':', 'punctuation.separator'], ['waves', 'support.constant'],
  ['#d8e9ee', 'constant.other'],
]));

test('Faces, titles and what follows a count have scopes of their own', () => {
  assert.deepEqual(scopes('front'), [['front', 'entity.name']]);
  assert.deepEqual(scopes('card "Lamp"'), [['card', 'keyword.control'], ['"Lamp"', 'string.quoted']]);
  assert.deepEqual(scopes('  3 gem 1/8').slice(0, 2), [['3', 'constant.numeric'], ['gem', 'entity.name']]);
});

test('A comment runs to the end of its line, a colour does not begin one', () => {
  assert.deepEqual(scopes('# lamp: star 1'), [['# lamp: star 1', 'comment.line']]);
  assert.deepEqual(scopes('of navy # as the sea').at(-1), ['# as the sea', 'comment.line']);
});

test('Words in quotes are only words', () => assert.deepEqual(scopes('text "of navy, 3 mm"').at(-1), ['"of navy, 3 mm"', 'string.quoted']));

test('A stash lists its papers by name', () => assert.deepEqual(scopes('paper gulls: 12 x 12').slice(0, 2), [
  ['paper', 'keyword.control'], ['gulls', 'entity.name'],
]));
