// The requests of the page to the program. Addresses are relative, so that the random word before them is kept.

/** An answer that is a problem, with a sentence for the user. */
export class Problem extends Error {
  constructor(sentence, status, answer) {
    super(sentence);
    this.status = status;
    this.answer = answer;
  }
}

/** The problem while the program does not respond. */
export const gone = 'Sketch does not answer. Nothing is drawn or saved, and what you type is in this window only, so leave it open. '
  + 'The page continues by itself when Sketch answers again. If Sketch has stopped, start it with sketch open, '
  + 'and copy from here what the new page does not offer to restore.';

/** An error as a problem to show: any other error comes from an answer that was cut off. */
export const asProblem = (reason) => (reason instanceof Problem ? reason : new Problem(gone, 0));

async function ask(address, options) {
  let response;
  try {
    response = await fetch(address, options);
  } catch (reason) {
    throw asProblem(reason);
  }
  if (response.ok) return response;
  const answer = await response.json().catch(() => null);
  // An answer in another form is not from the program that served this page: that was restarted, under another address.
  if (!answer) throw new Problem(gone, 0);
  throw new Problem(answer.problem ?? `Sketch could not answer (${response.status}).`, response.status, answer);
}

async function json(response) {
  try {
    return await response.json();
  } catch (reason) {
    throw asProblem(reason);
  }
}

export const get = async (address, values = {}) => json(await ask(`${address}?${new URLSearchParams(values)}`));

/** Whether the program responds; while it hangs, so does this. */
export const isAnswering = () => get('answers').then(() => true, (problem) => problem.status !== 0);

export const post = async (address, body, signal) => json(await send(address, body, signal));

/** Sends a file with values in the address. */
export const sendFile = async (address, values, file) => json(await ask(`${address}?${new URLSearchParams(values)}`, {
  method: 'POST', headers: { 'Content-Type': 'application/octet-stream' }, body: file,
}));

/** Sends a request whose answer is streamed; `signal` ends it. */
export const send = (address, body, signal) =>
  ask(address, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body), signal });

/**
 * A function that asks one question at a time over a socket that stays open: a message takes several milliseconds less than a request.
 * While the socket is not open, the question is sent as a request; once that is answered, the socket is opened.
 */
export function askOver({ request, socket: relative }) {
  const address = new URL(relative, location);
  address.protocol = 'ws:';
  let socket = null;

  const answerTo = (question) => new Promise((answered, failed) => {
    const closed = () => failed(new Problem(gone, 0));
    socket.addEventListener('close', closed, { once: true });
    socket.onmessage = ({ data, target }) => {
      target.removeEventListener('close', closed);
      answered(JSON.parse(data));
    };
    socket.send(JSON.stringify(question));
  });

  return async (question) => {
    if (socket?.readyState !== WebSocket.OPEN) {
      const answer = await post(request, question);
      if (!socket || socket.readyState === WebSocket.CLOSED) socket = new WebSocket(address);
      return answer;
    }
    const answer = await answerTo(question);
    if (answer.problem) throw new Problem(answer.problem, 400, answer);
    return answer;
  };
}
