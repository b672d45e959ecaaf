/**
 * Offers words for the place of the caret; none in quotes and comments.
 *
 * @param kind Returns the kind of the open file.
 */
export function offer(words, kind) {
  return (context) => {
    const line = context.state.doc.lineAt(context.pos);
    const before = context.state.sliceDoc(line.from, context.pos);
    const typed = /[\p{L}\p{N}-]*$/u.exec(before)[0];
    const lead = before.slice(0, before.length - typed.length);
    const isLettering = /(?:^|[\s,])lettering\s+$/i.test(lead);
    // The kinds of lettering are few and are chosen by their look, so they are offered before a letter is typed.
    if (!typed && !context.explicit && !isLettering) return null;
    if (inQuotesOrComment(lead)) return null;
    const goesOn = line.number > 1 && /,\s*(?:#\s.*)?$/.test(context.state.doc.line(line.number - 1).text);
    const options = /(?:^|[\s,])(?:of|ink)\s+$/i.test(lead) ? [...roles(context.state.doc), ...words.papers]
      : isLettering ? words.lettering
      : /,\s*$/.test(lead) || (goesOn && /^\s*$/.test(lead)) ? words.clauses
      : /^\s*(?:[^\s:,]+\s*:\s*)?$/.test(lead) ? (words.starts[kind()] ?? []) : [];
    const type = isLettering ? 'lettering' : options === words.clauses || options === words.starts[kind()] ? 'word' : undefined;
    if (options.length === 0 || options.includes(typed.toLowerCase())) return null;
    return {
      from: context.pos - typed.length,
      options: [...new Set(options)].map((label) => ({ label, type })),
      validFor: /^[\p{L}\p{N}-]*$/u,
    };
  };
}

function inQuotesOrComment(lead) {
  return (lead.match(/["“”]/g)?.length ?? 0) % 2 === 1 || /(?:^\s*|\s)#(?:\s|$)/.test(lead);
}

function roles(doc) {
  return [...doc.toString().matchAll(/^\s*role\s+([^\s:,]+)\s*:/gimu)].map((match) => match[1]);
}
