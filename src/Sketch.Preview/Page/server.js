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

/** What went wrong, as a problem to tell: what is none comes of an answer that broke off. */
export const asProblem = (reason) => (reason instanceof Problem ? reason : new Problem(gone, 0));

async function ask(address, options) {
  let response;
  try {
    response = await fetch(address, options);
  } catch (reason) {
    throw asProblem(reason);
  }
  if (response.ok) return response;
  const answer = await response.json().catch(() => ({}));
  throw new Problem(answer.problem ?? `The program could not answer (${response.status}).`, response.status, answer);
}

async function json(response) {
  try {
    return await response.json();
  } catch (reason) {
    throw asProblem(reason);
  }
}

export const get = async (address, values = {}) => json(await ask(`${address}?${new URLSearchParams(values)}`));

export const post = async (address, body) => json(await send(address, body));

/** Asks for an answer that comes in parts; `signal` ends it. */
export const send = (address, body, signal) =>
  ask(address, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body), signal });
