import assert from 'node:assert/strict';
import { test } from 'node:test';
import { offer } from '../../src/Sketch.Preview/Editor/offers.js';

const words = { starts: { card: ['panel', 'star'], stash: ['paper'] }, clauses: ['raised', 'right'], papers: ['navy', 'waves'] };

/** What is offered at the end of a text, as CodeMirror asks for it. */
function offered(text, { kind = 'card', explicit = false } = {}) {
  const all = text.split('\n');
  const starts = all.map((_, at) => all.slice(0, at).reduce((sum, line) => sum + line.length + 1, 0));
  const line = (number) => ({ number, from: starts[number - 1], text: all[number - 1] });
  const doc = { lineAt: () => line(all.length), line, toString: () => text };
  const state = { doc, sliceDoc: (from, to) => text.slice(from, to) };
  return offer(words, () => kind)({ state, pos: text.length, explicit })?.options.map((option) => option.label) ?? null;
}

test('A line begins with a word of its kind of file', () => {
  assert.deepEqual(offered('  p'), words.starts.card);
  assert.deepEqual(offered('p', { kind: 'stash' }), words.starts.stash);
});

test('A name and its colon are followed by what begins a line', () => assert.deepEqual(offered('  lamp: s'), words.starts.card));

test('A comma is followed by a clause, on the next line too', () => {
  assert.deepEqual(offered('star 1 3/4, r'), words.clauses);
  assert.deepEqual(offered('star 1 3/4, # gold\n  r'), words.clauses);
});

test('After of and ink come the roles of the text and then the papers', () =>
  assert.deepEqual(offered('role sky: waves\npanel, of w'), ['sky', ...words.papers]));

test('Nothing is offered in quotes, in comments and for a word that is complete', () => {
  assert.equal(offered('text "p'), null);
  assert.equal(offered('# p'), null);
  assert.equal(offered('panel'), null);
});

test('Without a letter words are offered only when they are asked for', () => {
  assert.equal(offered(''), null);
  assert.deepEqual(offered('', { explicit: true }), words.starts.card);
});
