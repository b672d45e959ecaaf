/** The text editor of the page: CodeMirror, set up for card files. plain-editor.js has the same contract without it. */
import { Annotation, EditorSelection, EditorState, Transaction } from '@codemirror/state';
import { EditorView, highlightActiveLine, highlightActiveLineGutter, highlightSpecialChars, keymap, lineNumbers } from '@codemirror/view';
import { defaultKeymap, history, historyKeymap, isolateHistory, redo, undo } from '@codemirror/commands';
import { indentUnit, syntaxHighlighting } from '@codemirror/language';
import { setDiagnostics } from '@codemirror/lint';
import { search, searchKeymap } from '@codemirror/search';
import { autocompletion, completionKeymap } from '@codemirror/autocomplete';
import { cardLanguage, colours } from './card-language.js';
import { choosing } from './choosing.js';
import { explaining } from './explain.js';
import { diagnostic, findingTools } from './findings.js';
import { theme } from './looks.js';
import { markedLines, setMarked } from './marked.js';
import { offering } from './offers.js';
import { offset, replace } from './places.js';
import { pictures, samples } from './samples.js';

/**
 * Puts an editor into an element that has a height. Lines and columns count from 1, columns in UTF-16 units, ends exclusive; positions
 * outside the text are clamped to it. Line breaks are returned unchanged.
 *
 * - `open(text)` shows another text: nothing to undo, no findings, no marks, the caret at the start; silent.
 * - `changed(text)` is called after each edit by the user, by `apply`, `undo` and `redo`; `replaceAll` is silent, but undoing it is not.
 * - `caretMoved(line)` is called when the caret moves to another line, whatever moved it.
 * - `mark(from, to)` highlights lines and scrolls to them, unless `scrolls` is false; `mark(0, 0)` highlights none. Neither it nor `goTo`
 *   takes the focus.
 * - `showFindings` takes findings with `severity`, `line`, `column`, `endLine`, `endColumn`, `message`, `hint` and `replacement` (or null).
 *
 * @param label The name for screen readers.
 * @param nonce The nonce of the page's content security policy, for styles.
 * @param words What the program says of words: `offers` takes a line, a column and a signal, and returns a promise of the completions
 * there (offers.js), `samples` one of a sample of each kind of lettering, `guide` one of all words with their meanings and pictures, for
 * F1 and the pointer. Without it nothing is offered or explained.
 */
export function createEditor(parent, { text = '', label = '', nonce = '', words, changed = () => {}, caretMoved = () => {} } = {}) {
  let lineBreak = breakOf(text);
  let reported = 1;
  const whole = () => view.state.doc.sliceString(0, view.state.doc.length, lineBreak);

  const extensions = [
    nonce ? EditorView.cspNonce.of(nonce) : [],
    lineNumbers(),
    findingTools,
    history(),
    highlightSpecialChars(),
    highlightActiveLine(),
    highlightActiveLineGutter(),
    EditorView.lineWrapping,
    EditorState.tabSize.of(2),
    indentUnit.of('  '),
    cardLanguage,
    syntaxHighlighting(colours),
    markedLines,
    search({ top: true }),
    EditorState.phrases.of(phrases),
    words ? [completing(words), explaining(words.guide)] : [],
    // Tab is not bound, so it leaves the editor; Ctrl-] and Ctrl-[ indent.
    keymap.of([...completionKeymap, ...searchKeymap, ...historyKeymap, ...defaultKeymap]),
    EditorView.contentAttributes.of(
      { 'aria-label': label, tabindex: '0', spellcheck: 'false', autocapitalize: 'off', autocorrect: 'off', translate: 'no' }),
    theme,
    EditorView.updateListener.of((update) => {
      if (update.docChanged && !update.transactions.some((one) => one.annotation(fromOutside))) changed(whole());
      const line = update.state.doc.lineAt(update.state.selection.main.head).number;
      if (line === reported) return;
      reported = line;
      caretMoved(line);
    }),
  ];
  const begin = (doc) => EditorState.create({ doc, extensions });
  const view = new EditorView({ parent, state: begin(text) });

  return {
    text: whole,
    open(value) {
      lineBreak = breakOf(value);
      reported = 1;
      view.setState(begin(value));
      view.scrollDOM.scrollTo(0, 0);
    },
    replaceAll(value) {
      lineBreak = breakOf(value);
      const change = difference(view.state.doc.toString(), value.replace(/\r\n?/g, '\n'));
      if (change) view.dispatch(
        { changes: change, annotations: [fromOutside.of(true), isolateHistory.of('full'), Transaction.userEvent.of('replace')] });
    },
    apply(edit) {
      const from = offset(view.state.doc, edit.line, edit.column);
      const to = Math.max(from, offset(view.state.doc, edit.endLine, edit.endColumn));
      replace(view, from, to, edit.text);
    },
    showFindings(findings) {
      view.dispatch(setDiagnostics(view.state, findings.map((finding) => diagnostic(view.state.doc, finding))));
    },
    mark(fromLine, toLine, { scrolls = true } = {}) {
      const effects = [setMarked.of([fromLine, Math.max(fromLine, toLine)])];
      if (fromLine > 0 && scrolls) {
        effects.push(EditorView.scrollIntoView(offset(view.state.doc, fromLine, 1), { y: 'nearest', yMargin: 40 }));
      }
      view.dispatch({ effects });
    },
    goTo(line, column) {
      const at = offset(view.state.doc, line, column);
      view.dispatch({ selection: EditorSelection.cursor(at), effects: EditorView.scrollIntoView(at, { y: 'center' }) });
    },
    focus: () => view.focus(),
    undo: () => undo(view),
    redo: () => redo(view),
  };
}

function completing({ offers, samples: read, guide }) {
  return [choosing, autocompletion({
    override: [offering(offers)],
    selectOnOpen: false,
    icons: false,
    addToOptions: [samples(read), pictures(guide)],
  })];
}

const fromOutside = Annotation.define();

// The texts of the search panel in the style of the page.
const phrases = {
  next: 'Next', previous: 'Previous', 'match case': 'Match case', replace: 'Replace', 'replace all': 'Replace all', close: 'Close',
};

function breakOf(text) {
  return text.includes('\r\n') ? '\r\n' : '\n';
}

/** The single change from one text to the other, so that the caret and the marks elsewhere stay in place. */
function difference(before, after) {
  if (before === after) return null;
  const least = Math.min(before.length, after.length);
  let start = 0;
  while (start < least && before[start] === after[start]) start++;
  let end = 0;
  while (end < least - start && before[before.length - 1 - end] === after[after.length - 1 - end]) end++;
  return { from: start, to: before.length - end, insert: after.slice(start, after.length - end) };
}
