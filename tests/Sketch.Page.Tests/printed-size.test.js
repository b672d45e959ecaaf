import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedAs } from '../../src/Sketch.Preview/Page/printed-size.js';

const inches = (width, height) => ({ width: width * 25.4, height: height * 25.4 });

test('A card that fits an upright page is printed upright', () =>
  assert.deepEqual(printedAs(inches(4.25, 5.5)), { isBeyond: false, isLying: false }));

test('A card that fits only a landscape page is printed in landscape', () =>
  assert.deepEqual(printedAs(inches(8.5, 5.5)), { isBeyond: false, isLying: true }));

test('A wide card that fits no page is printed smaller, in landscape', () =>
  assert.deepEqual(printedAs(inches(18, 10)), { isBeyond: true, isLying: true }));

test('A tall card that fits no page is printed smaller, upright', () =>
  assert.deepEqual(printedAs(inches(9, 12)), { isBeyond: true, isLying: false }));
