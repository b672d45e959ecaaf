import assert from 'node:assert/strict';
import { mock, test } from 'node:test';
import { askOver, gone } from '../../src/Sketch.Preview/Page/server.js';

/** A stand-in for WebSocket that opens, answers and closes when a test says so. */
class Socket extends EventTarget {
  static made = [];
  static CONNECTING = 0;
  static OPEN = 1;
  static CLOSED = 3;
  readyState = Socket.CONNECTING;
  sent = [];

  constructor(address) {
    super();
    this.address = String(address);
    Socket.made.push(this);
  }

  set onmessage(heard) {
    this.removeEventListener('message', this.heard);
    this.heard = heard;
    this.addEventListener('message', heard);
  }

  send(said) {
    this.sent.push(JSON.parse(said));
  }

  answer(answer) {
    this.dispatchEvent(new MessageEvent('message', { data: JSON.stringify(answer) }));
  }

  close() {
    this.readyState = Socket.CLOSED;
    this.dispatchEvent(new Event('close'));
  }
}

/** What asks, and the bodies of its requests, which are all answered. */
function asking() {
  const requested = [];
  Socket.made = [];
  globalThis.location = new URL('http://127.0.0.1:4000/word/');
  globalThis.WebSocket = Socket;
  mock.method(globalThis, 'fetch', async (_, { body }) => {
    requested.push(JSON.parse(body));
    return Response.json({ by: 'request' });
  });
  return { ask: askOver({ request: 'see', socket: 'seeing' }), requested };
}

async function withOpenSocket() {
  const found = asking();
  await found.ask('first');
  const [socket] = Socket.made;
  socket.readyState = Socket.OPEN;
  return { ...found, socket };
}

test('The first question goes as a request, and opens the socket', async () => {
  const { ask, requested } = asking();
  assert.deepEqual(await ask('first'), { by: 'request' });
  assert.deepEqual(requested, ['first']);
  assert.deepEqual(Socket.made.map((s) => s.address), ['ws://127.0.0.1:4000/word/seeing']);
});

test('A question goes as a request while the socket is being opened', async () => {
  const { ask, requested } = asking();
  await ask('first');
  await ask('second');
  assert.deepEqual(requested, ['first', 'second']);
  assert.equal(Socket.made.length, 1);
});

test('Questions go over the open socket, each with its own answer', async () => {
  const { ask, requested, socket } = await withOpenSocket();
  for (const question of ['second', 'third']) {
    const answered = ask(question);
    socket.answer({ to: question });
    assert.deepEqual(await answered, { to: question });
  }
  assert.deepEqual(requested, ['first']);
  assert.deepEqual(socket.sent, ['second', 'third']);
});

test('A problem over the socket is one to show', async () => {
  const { ask, socket } = await withOpenSocket();
  const answered = ask('second');
  socket.answer({ problem: 'The request names no window.' });
  await assert.rejects(answered, { message: 'The request names no window.' });
});

test('A socket that is closed before the answer means that the program is gone', async () => {
  const { ask, socket } = await withOpenSocket();
  const answered = ask('second');
  socket.close();
  await assert.rejects(answered, { message: gone, status: 0 });
});

test('After the socket is closed, the next question goes as a request and opens another', async () => {
  const { ask, requested, socket } = await withOpenSocket();
  socket.close();
  await ask('second');
  assert.deepEqual(requested, ['first', 'second']);
  assert.equal(Socket.made.length, 2);
});
