import assert from 'node:assert/strict';
import { test } from 'node:test';
import { likeliest, offering } from '../../src/Sketch.Preview/Editor/offers.js';

/** What the editor shows at the end of a text where the program offers words of a kind. */
async function shown(text, { kind, words, typed = 0, explicit = false }) {
  const column = text.length - text.lastIndexOf('\n');
  const ask = async () => ({
    column: column - typed, endColumn: column, offers: words.map((word) => ({ text: word, kind })),
  });
  return offering(ask)(contextOf(text, explicit));
}

/** A context as CodeMirror gives it; `leave` moves its caret away. */
function contextOf(text, explicit = false) {
  const before = text.split('\n');
  const doc = { lineAt: () => ({ number: before.length, from: text.lastIndexOf('\n') + 1 }) };
  let leave = null;
  return {
    state: { doc, sliceDoc: (from, to) => text.slice(from, to) }, pos: text.length, explicit,
    addEventListener: (_, listener) => { leave = listener; },
    leave: () => leave(),
  };
}

const labels = (list) => list?.options.map((option) => option.label) ?? null;

test('The program is asked about the line and column of the caret', async () => {
  const asked = [];
  await offering(async (line, column) => { asked.push(line, column); return { column, endColumn: column, offers: [] }; })(
    contextOf('card "Lamp"\nbase '));
  assert.deepEqual(asked, [2, 6]);
});

test('Where few words fit they are offered before a letter is typed', async () => {
  for (const kind of ['lettering', 'size', 'name', 'role', 'paper', 'colour']) {
    assert.deepEqual(labels(await shown('base ', { kind, words: ['A2', 'A6'] })), ['A2', 'A6']);
  }
});

test('Where many words fit they are offered with the first letter or on request', async () => {
  for (const kind of ['piece', 'line', 'clause']) {
    assert.equal(await shown('star 1, ', { kind, words: ['raised'] }), null);
    assert.deepEqual(labels(await shown('star 1, r', { kind, words: ['raised'], typed: 1 })), ['raised']);
    assert.deepEqual(labels(await shown('star 1, ', { kind, words: ['raised'], explicit: true })), ['raised']);
  }
});

test('Nothing is offered for a complete word', async () =>
  assert.equal(await shown('base a2', { kind: 'size', words: ['A2', 'A20'], typed: 2 }), null));

test('An offer replaces what is typed of it, is of its kind, and the likeliest comes first', async () => {
  const list = await shown('card "Lamp"\nbase a', { kind: 'size', words: ['A2', 'A10'], typed: 1 });
  assert.deepEqual([list.from, list.to], [17, 18]);
  assert.deepEqual(list.options.map(({ type, sortText }) => [type, sortText]), [['size', '0000'], ['size', '0001']]);
});

test('A request ends when the caret moves on, and offers nothing when it fails', async () => {
  const context = contextOf('base ');
  const list = offering((_line, _column, signal) => new Promise((_, failed) => {
    signal.addEventListener('abort', () => failed(signal.reason));
  }))(context);
  context.leave();
  assert.equal(await list, null);
});

test('Enter takes the first completion that the typed word begins', () => {
  assert.equal(likeliest('sk', ['dusk', 'Sky', 'skylight']), 1);
});

test('Enter begins a new line where no letter is typed, or no completion begins so', () => {
  assert.equal(likeliest('', ['A2', 'A6']), -1);
  assert.equal(likeliest('usk', ['dusk']), -1);
});

test('The list closes at a complete word, so that Enter begins a new line', () => {
  assert.equal(likeliest('sky', ['sky', 'skylight']), null);
});
