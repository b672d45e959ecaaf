// Of these there are many at a place, so their list opens only once a letter of one is typed, or on request.
const many = new Set(['piece', 'line', 'clause']);

/**
 * A source of completions that the program computes. A list opens by itself where few words fit, else with the first letter; not for a
 * complete word.
 *
 * @param ask Takes the line and the column of the caret and a signal that ends the request. Returns a promise of the `column` and
 * `endColumn` of what an offer replaces on that line, and of the `offers`, each with its `text` and `kind`, the likeliest first.
 */
export function offering(ask) {
  return async (context) => {
    const { from: start, number } = context.state.doc.lineAt(context.pos);
    const caret = new AbortController();
    context.addEventListener('abort', () => caret.abort());
    const answer = await ask(number, context.pos - start + 1, caret.signal).catch(() => null);
    if (!answer) return null;
    const { column, endColumn, offers } = answer;
    const [from, to] = [start + column - 1, start + endColumn - 1];
    const typed = context.state.sliceDoc(from, to).toLowerCase();
    const isEarly = !typed && !context.explicit && offers.some(({ kind }) => many.has(kind));
    if (offers.length === 0 || isEarly || offers.some(({ text }) => text.toLowerCase() === typed)) return null;
    return {
      from,
      to,
      // Among offers that fit equally well, the likeliest comes first.
      options: offers.map(({ text, kind }, i) => ({ label: text, type: kind, sortText: String(i).padStart(4, '0') })),
      validFor: /^[\p{L}\p{N}_-]*$/u,
    };
  };
}

/**
 * The completion that Enter takes: the first that the typed word begins.
 * @returns Its index; -1 where Enter begins a new line, null where the word is complete, so that the list is only in the way.
 */
export function likeliest(typed, labels) {
  const [begun, all] = [typed.toLowerCase(), labels.map((label) => label.toLowerCase())];
  if (all.includes(begun)) return null;
  return begun ? all.findIndex((label) => label.startsWith(begun)) : -1;
}
