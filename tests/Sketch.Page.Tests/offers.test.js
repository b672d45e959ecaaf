import assert from 'node:assert/strict';
import { test } from 'node:test';
import { offer } from '../../src/Sketch.Preview/Editor/offers.js';

const words = {
  starts: { card: ['panel', 'star'], stash: ['paper'] },
  clauses: ['raised', 'right'],
  papers: ['navy', 'waves'],
  lettering: ['script', 'slab'],
};

/** What is offered at the end of a text, as CodeMirror asks for it. */
function offered(text, asked) {
  return completions(text, asked)?.options.map((option) => option.label) ?? null;
}

/** The types of what is offered. */
function types(text) {
  return completions(text).options.map((option) => option.type);
}

function completions(text, { kind = 'card', explicit = false } = {}) {
  const all = text.split('\n');
  const starts = all.map((_, at) => all.slice(0, at).reduce((sum, line) => sum + line.length + 1, 0));
  const line = (number) => ({ number, from: starts[number - 1], text: all[number - 1] });
  const doc = { lineAt: () => line(all.length), line, toString: () => text };
  const state = { doc, sliceDoc: (from, to) => text.slice(from, to) };
  return offer(words, () => kind)({ state, pos: text.length, explicit });
}

test('At the start of a line the words of its kind of file are offered', () => {
  assert.deepEqual(offered('  p'), words.starts.card);
  assert.deepEqual(offered('p', { kind: 'stash' }), words.starts.stash);
});

test('After a name and its colon the words that start a line are offered', () => assert.deepEqual(offered('  lamp: s'), words.starts.card));

test('After a comma clauses are offered, on the next line too', () => {
  assert.deepEqual(offered('star 1 3/4, r'), words.clauses);
  assert.deepEqual(offered('star 1 3/4, # gold\n  r'), words.clauses);
});

test('After "of" and "ink" the roles of the text are offered, then the papers', () =>
  assert.deepEqual(offered('role sky: waves\npanel, of w'), ['sky', ...words.papers]));

test('After "lettering" its kinds are offered', () => {
  assert.deepEqual(offered('text "ahoy", lettering s'), words.lettering);
  assert.deepEqual(offered('lettering s'), words.lettering);
});

test('Kinds of lettering are marked to be shown in their own letters, other words with their pictures', () => {
  assert.deepEqual(types('lettering s'), ['lettering', 'lettering']);
  assert.deepEqual(types('star 1, r'), ['word', 'word']);
});

test('Nothing is offered in quotes, in comments or for a complete word', () => {
  assert.equal(offered('text "p'), null);
  assert.equal(offered('# p'), null);
  assert.equal(offered('panel'), null);
});

test('Before the first letter words are offered only on request', () => {
  assert.equal(offered(''), null);
  assert.deepEqual(offered('', { explicit: true }), words.starts.card);
});
