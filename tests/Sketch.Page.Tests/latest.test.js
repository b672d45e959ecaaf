import assert from 'node:assert/strict';
import { test } from 'node:test';
import { latest } from '../../src/Sketch.Preview/Page/latest.js';

/** Something to do that ends when it is told to. */
function work() {
  const ends = [];
  const act = () => new Promise((settled) => { ends.push(settled); });
  return { act, begun: () => ends.length, end: (at) => ends[at]() };
}

test('Many calls during a run lead to one more run', async () => {
  const { act, begun, end } = work();
  const ask = latest(act);
  const all = [ask(), ask(), ask()];
  assert.equal(begun(), 1);
  end(0);
  // The next run starts in a later turn of the event loop.
  await new Promise(setImmediate);
  assert.equal(begun(), 2);
  end(1);
  await Promise.all(all);
  assert.equal(begun(), 2);
});

test('A call after the end starts a new run', async () => {
  let count = 0;
  const ask = latest(async () => { count += 1; });
  await ask();
  await ask();
  assert.equal(count, 2);
});

test('A failure is reported and does not stop later calls', async () => {
  let count = 0;
  const ask = latest(async () => {
    count += 1;
    if (count === 1) throw new Error('first');
  });
  await assert.rejects(ask(), /first/);
  await ask();
  assert.equal(count, 2);
});
