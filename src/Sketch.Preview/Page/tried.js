// Papers that this window tries in a card and has not kept as text yet. They survive a reload of the window.

const key = (file) => `papers tried in ${file}`;

/** What is tried in a card: the stash, and the paper of each changed role; null when there is nothing. */
export function papersTried(file) {
  const { stash, choices } = JSON.parse(sessionStorage.getItem(key(file))) ?? {};
  return choices ? { stash, choices: new Map(choices) } : null;
}

export function rememberTried(file, { stash, choices }) {
  sessionStorage.setItem(key(file), JSON.stringify({ stash, choices: [...choices] }));
}
