import assert from 'node:assert/strict';
import { mock, test } from 'node:test';
import { makeSeeing } from '../../src/Sketch.Preview/Page/seeing.js';
import { post } from '../../src/Sketch.Preview/Page/server.js';

/** A page with a text, and a program that answers when it is told to. */
function page() {
  const asked = [];
  const found = { text: 'one', shown: [], problems: [], asked };
  mock.method(globalThis, 'fetch', (address, { body }) => new Promise((settled) => {
    asked.push({ address, text: JSON.parse(body).text, answer: (status) => settled(Response.json({ problem: 'full' }, { status })) });
  }));
  found.seeing = makeSeeing({
    ask: (said) => post('see', said),
    sheet: () => ({ file: 'watch.card', text: found.text }),
    wanted: () => ({}),
    shown: (_, text) => found.shown.push(text),
    reportProblem: (problem) => found.problems.push(problem.message),
  });
  return found;
}

const turn = () => new Promise(setImmediate);

test('One text is sent at a time, and then the latest', async () => {
  const found = page();
  const done = found.seeing.see();
  await turn();
  for (const text of ['two', 'three']) {
    found.text = text;
    found.seeing.see();
  }
  await turn();
  assert.deepEqual(found.asked.map((a) => a.text), ['one']);
  assert.equal(found.seeing.isHandedOver(), false);
  found.asked[0].answer(200);
  await turn();
  found.asked[1].answer(200);
  await done;
  assert.deepEqual(found.asked.map((a) => a.text), ['one', 'three']);
  assert.deepEqual(found.shown, ['one', 'three']);
  assert.equal(found.seeing.isHandedOver(), true);
});

test('A text that the program rejects is reported, sent again and not taken as delivered', async () => {
  mock.timers.enable({ apis: ['setTimeout'] });
  const found = page();
  const done = found.seeing.see();
  await turn();
  found.asked[0].answer(500);
  await done;
  assert.deepEqual([found.problems, found.shown, found.seeing.isHandedOver()], [['full'], [], false]);
  // Once until it is sent again, once more until typing is sent.
  for (let waits = 0; waits < 2; waits += 1) {
    mock.timers.tick(1000);
    await turn();
  }
  assert.deepEqual(found.asked.map((a) => a.address), ['see', 'typed']);
  found.asked[1].answer(200);
  await turn();
  assert.equal(found.seeing.isHandedOver(), true);
  mock.timers.reset();
});
