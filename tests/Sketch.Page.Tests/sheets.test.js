import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lines, progressOf } from '../../src/Sketch.Preview/Page/sheets.js';

const encoder = new TextEncoder();

/** A body that comes in these parts. */
const body = (...parts) => new ReadableStream({
  start(controller) {
    for (const part of parts) controller.enqueue(part);
    controller.close();
  },
});

async function read(...parts) {
  const found = [];
  for await (const line of lines(body(...parts))) found.push(line);
  return found;
}

test('Lines are read correctly however the response is split into chunks', async () => {
  const bytes = encoder.encode('{"paper":"étoile","sheets":2}\n{"done":true}\n');
  const whole = await read(bytes);
  assert.deepEqual(whole, [{ paper: 'étoile', sheets: 2 }, { done: true }]);
  for (let cut = 1; cut < bytes.length; cut += 1) assert.deepEqual(await read(bytes.slice(0, cut), bytes.slice(cut)), whole);
});

test('An unfinished line is not returned', async () =>
  assert.deepEqual(await read(encoder.encode('{"sheets":1}\n{"sheets":')), [{ sheets: 1 }]));

test('A proved number of sheets is called the fewest', () => {
  assert.equal(progressOf('navy', 1, 1), 'navy: 1 sheet, the fewest possible');
  assert.equal(progressOf('navy', 4, 3), 'navy: 4 sheets so far, at least 3');
});
