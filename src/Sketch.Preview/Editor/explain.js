import { EditorView, hoverTooltip, keymap, showTooltip } from '@codemirror/view';
import { StateEffect, StateField } from '@codemirror/state';

/**
 * Explains a word of the language while the pointer rests on it, or at the caret with F1; Escape puts that away.
 *
 * @param read Returns a promise of `entries`, each with a `word`, what it `means` and an `example`.
 */
export function explaining(read) {
  const find = async (view, at) => {
    const place = wordAt(view.state, at);
    if (!place) return null;
    const { entries } = await read();
    const entry = entries.find((one) => one.word === place.word);
    return entry ? { ...place, entry } : null;
  };
  const tell = (view) => {
    const at = view.state.selection.main.head;
    find(view, at).then((found) => {
      if (view.state.selection.main.head === at) view.dispatch({ effects: [told.of(found && tooltip(found)), announced(found)] });
    }, () => {});
    return true;
  };
  return [
    hoverTooltip((view, at) => find(view, at).then(
      (found) => (found && !view.state.field(shown) ? tooltip(found) : null), () => null)),
    shown,
    keymap.of([{ key: 'F1', run: tell, preventDefault: true }, { key: 'Escape', run: putAway }]),
  ];
}

const told = StateEffect.define();

/** What a screen reader says about the explained word. */
const announced = (found) => EditorView.announce.of(
  found ? `${found.word}: ${found.entry.means.replaceAll('`', '')}${found.entry.example ? ` For example: ${found.entry.example}` : ''}`
    : 'No word of the language stands here.');

const shown = StateField.define({
  create: () => null,
  update(tip, transaction) {
    for (const effect of transaction.effects) if (effect.is(told)) return effect.value;
    return transaction.docChanged || transaction.selection ? null : tip;
  },
  provide: (field) => showTooltip.from(field),
});

function putAway(view) {
  if (!view.state.field(shown)) return false;
  view.dispatch({ effects: told.of(null) });
  return true;
}

function tooltip({ from, to, entry }) {
  return {
    pos: from,
    end: to,
    above: true,
    create() {
      const dom = document.createElement('div');
      dom.className = 'cm-explained';
      dom.append(...[entry.means, entry.example && `For example: \`${entry.example}\``].filter(Boolean).map(paragraph));
      return { dom };
    },
  };
}

/** A paragraph, with what is typed set apart. */
function paragraph(sentence) {
  const made = document.createElement('p');
  made.append(...sentence.split('`').map((part, i) => {
    if (i % 2 === 0) return part;
    const code = document.createElement('code');
    code.textContent = part;
    return code;
  }));
  return made;
}

/** The word at an offset; null in quotes, in comments and for names, which come after `of` and before a colon. */
function wordAt(state, at) {
  const line = state.doc.lineAt(at);
  const before = /[\p{L}-]*$/u.exec(line.text.slice(0, at - line.from))[0];
  const after = /^[\p{L}-]*/u.exec(line.text.slice(at - line.from))[0];
  const from = at - before.length;
  const lead = line.text.slice(0, from - line.from);
  const isPlain = (lead.match(/["“”]/g)?.length ?? 0) % 2 === 0 && !/(?:^\s*|\s)#(?:\s|$)/.test(lead);
  const isName = /(?:^|[\s,])(?:of|ink|role)\s+$/i.test(lead) || /^\s*:/.test(line.text.slice(at - line.from + after.length));
  const word = (before + after).toLowerCase();
  return word && isPlain && !isName ? { from, to: at + after.length, word } : null;
}
