import assert from 'node:assert/strict';
import { test } from 'node:test';
import { stateOf } from '../../src/Sketch.Preview/Page/state.js';

const saved = { name: 'watch.card', isThere: true, isChanged: false, inMemoryOnly: [] };

test('A text equal to the file is saved', () => assert.equal(stateOf(saved), 'Saved'));

test('A changed text is not saved', () => assert.equal(stateOf({ ...saved, isChanged: true }), 'Not saved'));

test('Typing that cannot be written to the disk is named', () =>
  assert.equal(stateOf({ ...saved, isChanged: true, inMemoryOnly: ['watch.card'] }), 'Not saved, and not on the disk'));

test('A file that was just saved is not named as missing from the disk', () =>
  assert.equal(stateOf({ ...saved, inMemoryOnly: ['watch.card'] }), 'Saved'));

test('Another file whose typing cannot be written is named too', () =>
  assert.equal(stateOf({ ...saved, inMemoryOnly: ['lamp.card'] }), 'Saved; lamp.card is not on the disk'));

test('A program that does not respond takes precedence over every other state', () => {
  const lost = { ...saved, isThere: false, inMemoryOnly: ['watch.card'] };
  assert.equal(stateOf(lost), 'Sketch does not answer');
  assert.equal(stateOf({ ...lost, isChanged: true }), 'Not saved: Sketch does not answer');
});
