// What the page asks of the program. Addresses are relative: the random word before them stays where it is.

/** An answer that is a problem, with a sentence for the person. */
export class Problem extends Error {
  constructor(sentence, status, answer) {
    super(sentence);
    this.status = status;
    this.answer = answer;
  }
}

const gone = 'The program has stopped, so nothing is drawn or saved any more, and what you type from now on is in this window alone. Start it again with sketch open: what you typed until then will be offered to you.';

async function ask(address, options) {
  let response;
  try {
    response = await fetch(address, options);
  } catch (reason) {
    if (options?.signal?.aborted) throw reason;
    throw new Problem(gone, 0);
  }
  if (response.ok) return response;
  const answer = await response.json().catch(() => ({}));
  throw new Problem(answer.problem ?? `The program could not answer (${response.status}).`, response.status, answer);
}

export const get = async (address, values = {}) => (await ask(`${address}?${new URLSearchParams(values)}`)).json();

export const post = async (address, body) => (await send(address, body)).json();

export const send = (address, body) =>
  ask(address, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) });
