import { StateEffect, StateField } from '@codemirror/state';
import { Decoration, EditorView } from '@codemirror/view';

/** Marks the lines from the first to the last of a pair; [0, 0] marks none. */
export const setMarked = StateEffect.define();
const markedLine = Decoration.line({ class: 'cm-marked' });

export const markedLines = StateField.define({
  create: () => Decoration.none,
  update(marked, transaction) {
    for (const effect of transaction.effects) {
      if (!effect.is(setMarked)) continue;
      const { doc } = transaction.state;
      const [first, last] = effect.value;
      const starts = [];
      for (let line = first; line > 0 && line <= Math.min(last, doc.lines); line++) starts.push(markedLine.range(doc.line(line).from));
      return Decoration.set(starts);
    }
    return marked.map(transaction.changes);
  },
  provide: (field) => EditorView.decorations.from(field),
});
