// Chooses a completion as one types, so that Enter takes it. What is chosen with the arrow keys stays chosen.
import {
  closeCompletion, completionStatus, currentCompletions, selectedCompletionIndex, setSelectedCompletion,
} from '@codemirror/autocomplete';
import { EditorView } from '@codemirror/view';
import { likeliest } from './offers.js';

const lastWord = /\p{L}[\p{L}\p{N}_-]*$/u;

function typedWord({ doc, selection }) {
  const { from } = doc.lineAt(selection.main.head);
  return lastWord.exec(doc.sliceString(from, selection.main.head))?.[0] ?? '';
}

export const choosing = EditorView.updateListener.of(({ view, state }) => {
  if (completionStatus(state) !== 'active') return;
  const at = likeliest(typedWord(state), currentCompletions(state).map(({ label }) => label));
  if (at === null) closeCompletion(view);
  else if (at >= 0 && selectedCompletionIndex(state) === null) view.dispatch({ effects: setSelectedCompletion(at) });
});
