// Papers that this window tries in a card and has not kept as text yet. A reload of the window does not forget them.

const key = (file) => `papers tried in ${file}`;

/** What was tried in a card: the stash, and a paper for each role that got another; null when nothing was. */
export function papersTried(file) {
  const { stash, choices } = JSON.parse(sessionStorage.getItem(key(file))) ?? {};
  return choices ? { stash, choices: new Map(choices) } : null;
}

export function rememberTried(file, { stash, choices }) {
  sessionStorage.setItem(key(file), JSON.stringify({ stash, choices: [...choices] }));
}
