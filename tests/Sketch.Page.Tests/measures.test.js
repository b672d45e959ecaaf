// What a hand lines up with, and how lengths are written on the way.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { alongGround, moveAlong, onFace, sizeAlong, written } from '../../src/Sketch.Preview/Page/measures.js';

const inch = 25_400_000;
const inches = (...lengths) => lengths.map((length) => length * inch);
const near = inch / 16;

/** A panel of 1 x 1 in, 1/2 in from the left and top of a face of 4 x 6 in. */
const hold = (change = {}) => ({
  box: inches(0.5, 0.5, 1, 1), block: inches(0.5, 0.5, 1, 1), reference: inches(0, 0, 4, 6), others: [], step: inch / 16,
  across: { held: 'left' }, down: { held: 'top' }, ...change,
});

test('Lengths are written as on a ruler', () => {
  assert.deepEqual(inches(0, 0.5, 1, 2.3125, -0.25).map((length) => written(length, false)),
    ['0 in', '1/2 in', '1 in', '2 5/16 in', '-1/4 in']);
  assert.equal(written(12_500_000, true), '12.5 mm');
});

test('Away from everything a piece comes to a mark of the ruler', () => {
  assert.deepEqual(moveAlong(hold(), 0, 0.26 * inch, 0, near), { by: 0.25 * inch, isCentred: false, line: null });
});

test('From the right its distance to the right is on a mark', () => {
  const odd = hold({ block: inches(2.53, 0.5, 1, 1), across: { held: 'right' } });
  const { by } = moveAlong(odd, 0, 0, 0, 0);
  assert.equal(Math.round((4 - 2.53 - 1) * inch - by), 0.5 * inch);
});

test('Near the middle it is centred', () => {
  assert.deepEqual(moveAlong(hold(), 0, 1.02 * inch, 0, near), { by: inch, isCentred: true, line: 2 * inch });
});

test('It lines up with the edge of another piece', () => {
  const { by, line } = moveAlong(hold({ others: [inches(2.11, 3, 0.3, 1)] }), 0, 0.6 * inch, 0, near);
  assert.deepEqual([by, line], [0.61 * inch, 2.11 * inch].map(Math.round));
});

test('It keeps the gap that two others have', () => {
  const others = [inches(2, 0.5, 0.5, 1), inches(2.77, 0.5, 0.5, 1)];
  assert.equal(moveAlong(hold({ others }), 0, 0.24 * inch, 0, near).by, Math.round(0.23 * inch));
});

test('It comes to the middle between two others', () => {
  const others = [inches(0.1, 0.5, 0.3, 1), inches(2.93, 0.5, 0.5, 1)];
  assert.equal(moveAlong(hold({ others }), 0, 0.66 * inch, 0, near).by, Math.round(0.665 * inch));
});

test('A pulled edge makes the size that of the ruler, of an edge or of another piece', () => {
  assert.equal(sizeAlong(hold(), 0, 1, 0.26 * inch, 0).size, 1.25 * inch);
  assert.equal(sizeAlong(hold(), 0, -1, 0.26 * inch, 0).size, 0.75 * inch);
  assert.equal(sizeAlong(hold({ others: [inches(0, 4, 1.33, 1)] }), 0, 1, 0.35 * inch, near).size, 1.33 * inch);
});

test('A centred piece grows on both sides', () => {
  assert.equal(sizeAlong(hold({ across: { held: null } }), 0, 1, 0.25 * inch, 0).size, 1.5 * inch);
});

test('On a turned piece a way follows its sides', () => {
  const quarter = [0, 1, -1, 0, 0, 0];
  assert.deepEqual(alongGround(quarter, [0, 5]), [5, 0]);
  assert.deepEqual(onFace(quarter, [5, 0]), [0, 5]);
});
