import { EditorSelection, Transaction } from '@codemirror/state';
import { isolateHistory } from '@codemirror/commands';

/** The offset of a place, clamped to the text. */
export function offset(doc, line, column) {
  if (line > doc.lines) return doc.length;
  const found = doc.line(Math.max(line, 1));
  return Math.min(found.from + Math.max(column, 1) - 1, found.to);
}

/** Replaces a range as one step that can be undone, and leaves the caret after it. */
export function replace(view, from, to, text) {
  const insert = view.state.toText(text);
  view.dispatch({
    changes: { from, to, insert },
    selection: EditorSelection.cursor(from + insert.length),
    annotations: [isolateHistory.of('full'), Transaction.userEvent.of('input.apply')],
    scrollIntoView: true,
  });
}
