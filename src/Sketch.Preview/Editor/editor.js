/** The page's text editor: CodeMirror, set up for card files. plain-editor.js keeps the same contract without it. */
import { Annotation, EditorSelection, EditorState, RangeSet, StateEffect, StateField, Transaction } from "@codemirror/state";
import { Decoration, EditorView, GutterMarker, gutter, highlightActiveLine, highlightActiveLineGutter, highlightSpecialChars, keymap, lineNumbers } from "@codemirror/view";
import { defaultKeymap, history, historyKeymap, isolateHistory, redo, undo } from "@codemirror/commands";
import { HighlightStyle, StreamLanguage, indentUnit, syntaxHighlighting } from "@codemirror/language";
import { forEachDiagnostic, linter, lintKeymap, openLintPanel, setDiagnostics, setDiagnosticsEffect } from "@codemirror/lint";
import { search, searchKeymap } from "@codemirror/search";
import { autocompletion, completionKeymap } from "@codemirror/autocomplete";
import { tags } from "@lezer/highlight";

export const kind = "full";

/**
 * @param words What is offered while typing: `starts` begin a line or follow a name's colon, `clauses` follow a comma, `papers` follow `of`
 *   and `ink`, beside the roles of the text. Nothing is offered without them.
 */
export function createEditor(parent, { text = "", label = "", nonce = "", words, changed = () => {}, caretMoved = () => {} } = {}) {
  let lineBreak = breakOf(text);
  let told = 1;
  const whole = () => view.state.doc.sliceString(0, view.state.doc.length, lineBreak);

  const view = new EditorView({
    parent,
    doc: text,
    extensions: [
      nonce ? EditorView.cspNonce.of(nonce) : [],
      lineNumbers(),
      findingsGutter,
      history(),
      highlightSpecialChars(),
      highlightActiveLine(),
      highlightActiveLineGutter(),
      EditorView.lineWrapping,
      EditorState.tabSize.of(2),
      indentUnit.of("  "),
      cardLanguage,
      syntaxHighlighting(colours),
      markedLines,
      linter(null),
      search({ top: true }),
      words ? autocompletion({ override: [offer(words)], selectOnOpen: false, icons: false }) : [],
      // Tab is left alone, so it leaves the editor; Ctrl-] and Ctrl-[ indent.
      keymap.of([...completionKeymap, ...lintKeymap, ...searchKeymap, ...historyKeymap, ...defaultKeymap]),
      EditorView.contentAttributes.of({ "aria-label": label, tabindex: "0", spellcheck: "false", autocapitalize: "off", autocorrect: "off", translate: "no" }),
      theme,
      EditorView.updateListener.of(update => {
        if (update.docChanged && !update.transactions.some(one => one.annotation(fromOutside))) changed(whole());
        const line = update.state.doc.lineAt(update.state.selection.main.head).number;
        if (line === told) return;
        told = line;
        caretMoved(line);
      }),
    ],
  });

  return {
    text: whole,
    replaceAll(value) {
      lineBreak = breakOf(value);
      const change = difference(view.state.doc.toString(), value.replace(/\r\n?/g, "\n"));
      if (change) view.dispatch({ changes: change, annotations: [fromOutside.of(true), isolateHistory.of("full"), Transaction.userEvent.of("replace")] });
    },
    apply(edit) {
      const from = offset(view.state.doc, edit.line, edit.column);
      const to = Math.max(from, offset(view.state.doc, edit.endLine, edit.endColumn));
      replace(view, from, to, edit.text);
    },
    showFindings(findings) {
      view.dispatch(setDiagnostics(view.state, findings.map(finding => diagnostic(view.state.doc, finding))));
    },
    mark(fromLine, toLine) {
      const effects = [setMarked.of([fromLine, Math.max(fromLine, toLine)])];
      if (fromLine > 0) effects.push(EditorView.scrollIntoView(offset(view.state.doc, fromLine, 1), { y: "nearest", yMargin: 40 }));
      view.dispatch({ effects });
    },
    goTo(line, column) {
      const at = offset(view.state.doc, line, column);
      view.dispatch({ selection: EditorSelection.cursor(at), effects: EditorView.scrollIntoView(at, { y: "center" }) });
    },
    focus: () => view.focus(),
    undo: () => undo(view),
    redo: () => redo(view),
  };
}

const fromOutside = Annotation.define();

function breakOf(text) {
  return text.includes("\r\n") ? "\r\n" : "\n";
}

/** The offset of a place, which is moved into the text where it lies outside. */
function offset(doc, line, column) {
  if (line > doc.lines) return doc.length;
  const found = doc.line(Math.max(line, 1));
  return Math.min(found.from + Math.max(column, 1) - 1, found.to);
}

function replace(view, from, to, text) {
  const insert = view.state.toText(text);
  view.dispatch({
    changes: { from, to, insert },
    selection: EditorSelection.cursor(from + insert.length),
    annotations: [isolateHistory.of("full"), Transaction.userEvent.of("input.apply")],
    scrollIntoView: true,
  });
}

/** The one change that makes one text of the other, so that the caret and the marks elsewhere stay where they are. */
function difference(before, after) {
  if (before === after) return null;
  const least = Math.min(before.length, after.length);
  let start = 0;
  while (start < least && before[start] === after[start]) start++;
  let end = 0;
  while (end < least - start && before[before.length - 1 - end] === after[after.length - 1 - end]) end++;
  return { from: start, to: before.length - end, insert: after.slice(start, after.length - end) };
}

// Findings

function diagnostic(doc, finding) {
  const from = offset(doc, finding.line, finding.column);
  const to = Math.max(from, offset(doc, finding.endLine, finding.endColumn));
  const { replacement } = finding;
  return {
    from,
    to,
    severity: finding.severity === "note" ? "info" : finding.severity,
    message: `${names[finding.severity]}: ${finding.message} ${finding.hint}`,
    renderMessage: () => {
      const told = document.createElement("span");
      told.append(sign(finding.severity), paragraph(`${names[finding.severity]}: ${finding.message}`), paragraph(finding.hint, "cm-hint"));
      return told;
    },
    actions: typeof replacement === "string" ? [{ name: actionName(replacement), apply: (view, at, end) => replace(view, at, end, replacement) }] : [],
  };
}

const names = { error: "Error", warning: "Warning", note: "Note" };
const severities = { info: "note", warning: "warning", error: "error" };

function actionName(replacement) {
  const shown = replacement.trim();
  if (!shown) return "Leave it out";
  return `Change to ${shown.length > 40 ? `${shown.slice(0, 39)}…` : shown}`;
}

function paragraph(text, name = "") {
  const made = document.createElement("span");
  made.className = `cm-said ${name}`;
  made.textContent = text;
  return made;
}

// Each severity has a shape of its own, so that colour only helps.
const shapes = {
  error: "M5 1h6l4 4v6l-4 4H5l-4-4V5zM7.2 4v5h1.6V4zM7.2 10.4V12h1.6v-1.6z",
  warning: "M8 1l7.5 14H.5zM7.2 6v4.5h1.6V6zM7.2 11.6v1.6h1.6v-1.6z",
  note: "M8 1a7 7 0 1 0 0 14A7 7 0 1 0 8 1zM7.2 4v1.6h1.6V4zM7.2 7v5h1.6V7z",
};

function sign(severity) {
  const picture = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  picture.setAttribute("viewBox", "0 0 16 16");
  picture.setAttribute("class", `cm-sign cm-sign-${severity}`);
  picture.setAttribute("aria-hidden", "true");
  const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
  path.setAttribute("d", shapes[severity]);
  path.setAttribute("fill-rule", "evenodd");
  picture.append(path);
  return picture;
}

class FindingMarker extends GutterMarker {
  constructor(severity) {
    super();
    this.severity = severity;
  }

  eq(other) {
    return other.severity === this.severity;
  }

  toDOM() {
    return sign(this.severity);
  }
}

const markers = Object.fromEntries(Object.values(severities).map(severity => [severity, new FindingMarker(severity)]));
const weights = ["note", "warning", "error"];

const findingMarks = StateField.define({
  create: () => RangeSet.empty,
  update(marks, transaction) {
    if (!transaction.effects.some(effect => effect.is(setDiagnosticsEffect))) return marks.map(transaction.changes);
    const worst = new Map();
    forEachDiagnostic(transaction.state, ({ severity }, from) => {
      const line = transaction.state.doc.lineAt(from).from;
      if (weights.indexOf(severities[severity]) > weights.indexOf(worst.get(line))) worst.set(line, severities[severity]);
    });
    return RangeSet.of([...worst].map(([line, severity]) => markers[severity].range(line)), true);
  },
});

const findingsGutter = [
  findingMarks,
  gutter({
    class: "cm-findings",
    markers: view => view.state.field(findingMarks),
    initialSpacer: () => markers.note,
    domEventHandlers: { click: view => openLintPanel(view) },
  }),
];

// The lines of the chosen piece

const setMarked = StateEffect.define();
const markedLine = Decoration.line({ class: "cm-marked" });

const markedLines = StateField.define({
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
  provide: field => EditorView.decorations.from(field),
});

// Colouring: a word is told by where it stands, so no list of words has to follow the language.

const cardLanguage = StreamLanguage.define({
  name: "card",
  startState: () => ({ goesOn: false, comma: false, first: true, after: "" }),
  copyState: state => ({ ...state }),
  token(stream, state) {
    if (stream.sol()) {
      state.goesOn = state.comma;
      state.comma = false;
      if (!state.goesOn) Object.assign(state, { first: true, after: "" });
    }
    if (stream.eatSpace()) return null;
    const begins = stream.string.slice(0, stream.pos).trim() === "";
    const apart = begins || /\s/.test(stream.string[stream.pos - 1]);
    if (stream.match(/^#(?:[0-9a-f]{6}|[0-9a-f]{3})(?![\p{L}\p{N}])/iu)) return "color";
    if (stream.peek() === "#" && (begins || (apart && /^#(?:\s|$)/.test(stream.string.slice(stream.pos))))) {
      // A comment line between does not end a line that goes on.
      if (begins) state.comma = state.goesOn;
      stream.skipToEnd();
      return "comment";
    }
    state.comma = false;
    if (stream.match(/^["“”](?:[^"“”]|"")*["“”]?/)) return "string";
    if (stream.eat(",")) {
      state.comma = true;
      Object.assign(state, { first: true, after: "," });
      return "punctuation";
    }
    if (stream.eat(":")) {
      state.first = true;
      return "punctuation";
    }
    if (stream.match(/^[+\-−]?(?:\d+(?:\.\d+)?(?:[-−]\d+)?(?:[/⁄]\d+)?[¼-¾⅐-⅞]?|[¼-¾⅐-⅞])(?:\s?(?:mm|cm|in)(?![\p{L}\p{N}])|["″](?!\p{L}))?(?![\p{L}])/u)) return "number";
    if (!stream.match(/^[\p{L}\p{N}_'’-]+/u)) {
      stream.next();
      return null;
    }
    const word = stream.current();
    const { after } = state;
    state.after = word.toLowerCase();
    if (/^\s*:/.test(stream.string.slice(stream.pos))) return "variableName.definition";
    if (after === "of" || after === "ink") return "variableName";
    if (word === "of" || word === "ink") {
      state.first = false;
      return "propertyName";
    }
    if (!state.first) return null;
    state.first = false;
    return after === "," ? "propertyName" : "keyword";
  },
});

const colours = HighlightStyle.define([
  { tag: tags.comment, color: "var(--ink-comment, light-dark(#5c636b, #a3a8ae))", fontStyle: "italic" },
  { tag: tags.string, color: "var(--ink-string, light-dark(#7a3e00, #f0b98a))" },
  { tag: [tags.number, tags.color], color: "var(--ink-number, light-dark(#075e6b, #7fd3e0))" },
  { tag: tags.keyword, color: "var(--ink-keyword, light-dark(#1a4f9c, #9cc4ff))", fontWeight: "600" },
  { tag: tags.propertyName, color: "var(--ink-clause, light-dark(#1a4f9c, #9cc4ff))" },
  { tag: tags.definition(tags.variableName), color: "var(--ink-name, light-dark(#6b2a86, #dcaef0))", fontWeight: "600" },
  { tag: tags.variableName, color: "var(--ink-name, light-dark(#6b2a86, #dcaef0))" },
]);

// Words offered while typing

function offer(words) {
  return context => {
    const line = context.state.doc.lineAt(context.pos);
    const before = context.state.sliceDoc(line.from, context.pos);
    const typed = /[\p{L}\p{N}-]*$/u.exec(before)[0];
    if (!typed && !context.explicit) return null;
    const lead = before.slice(0, before.length - typed.length);
    if (inQuotesOrComment(lead)) return null;
    const goesOn = line.number > 1 && /,\s*$/.test(context.state.doc.line(line.number - 1).text);
    const options = /(?:^|[\s,])(?:of|ink)\s+$/i.test(lead)
      ? [...roles(context.state.doc), ...words.papers]
      : /,\s*$/.test(lead) || (goesOn && /^\s*$/.test(lead)) ? words.clauses
        : /^\s*(?:[^\s:,]+\s*:\s*)?$/.test(lead) ? words.starts : [];
    if (options.length === 0 || options.includes(typed.toLowerCase())) return null;
    return { from: context.pos - typed.length, options: [...new Set(options)].map(label => ({ label })), validFor: /^[\p{L}\p{N}-]*$/u };
  };
}

function inQuotesOrComment(lead) {
  return (lead.match(/["“”]/g)?.length ?? 0) % 2 === 1 || /(?:^\s*|\s)#(?:\s|$)/.test(lead);
}

function roles(doc) {
  return [...doc.toString().matchAll(/^\s*role\s+([^\s:,]+)\s*:/gimu)].map(match => match[1]);
}

// Looks: the page sets the custom properties, for dark and for light

const ink = "var(--ink, light-dark(#1f2328, #e8e6e1))";
const paper = "var(--paper, light-dark(#ffffff, #1c1e21))";
const line = "var(--line, light-dark(#868c93, #7d838a))";
const accent = "var(--accent, light-dark(#0b5cad, #7db8f5))";
const quiet = "var(--quiet, light-dark(#5c636b, #a3a8ae))";
const severityColours = {
  error: "var(--error, light-dark(#b3261e, #ff8f87))",
  warning: "var(--warning, light-dark(#8a5000, #f2b45c))",
  note: "var(--note, light-dark(#1d5fa6, #8fc1f7))",
};
const tint = share => `color-mix(in srgb, ${accent} ${share}%, ${paper})`;
const underline = (severity, style) => ({
  backgroundImage: "none",
  paddingBottom: "0",
  textDecoration: `underline ${style} ${severityColours[severity]} 2px`,
  textDecorationSkipInk: "none",
  textUnderlineOffset: "3px",
});
const button = {
  font: "inherit",
  color: ink,
  backgroundColor: paper,
  backgroundImage: "none",
  border: `1px solid ${line}`,
  borderRadius: "4px",
  padding: "0.15em 0.6em",
  cursor: "pointer",
};
const focused = { outline: `2px solid ${accent}`, outlineOffset: "1px" };

const theme = EditorView.theme({
  "&": { height: "100%", color: ink, backgroundColor: paper },
  "&.cm-focused": { outline: `2px solid ${accent}`, outlineOffset: "-2px" },
  ".cm-scroller": { fontFamily: "var(--mono, ui-monospace, Consolas, Menlo, monospace)", lineHeight: "1.5" },
  ".cm-content": { caretColor: ink, padding: "0.4em 0" },
  ".cm-gutters": { color: quiet, backgroundColor: paper, borderRight: `1px solid ${line}` },
  ".cm-activeLine": { backgroundColor: tint(6) },
  ".cm-activeLineGutter": { color: ink, backgroundColor: tint(6) },
  ".cm-line": { borderLeft: "0.3em solid transparent", paddingLeft: "0.3em" },
  ".cm-marked": { borderLeftColor: accent, backgroundColor: tint(14) },
  ".cm-findings .cm-gutterElement": { cursor: "pointer", padding: "0 0.2em", display: "flex", alignItems: "flex-start" },
  ".cm-sign": { width: "1em", height: "1em", flex: "none", marginTop: "0.25em" },
  ".cm-sign-error": { fill: severityColours.error },
  ".cm-sign-warning": { fill: severityColours.warning },
  ".cm-sign-note": { fill: severityColours.note },
  ".cm-lintRange-error": underline("error", "wavy"),
  ".cm-lintRange-warning": underline("warning", "dashed"),
  ".cm-lintRange-info": underline("note", "dotted"),
  ".cm-lintRange-active": { backgroundColor: tint(20) },
  ".cm-lintPoint::after": { display: "none" },
  ".cm-tooltip, .cm-panels": { color: ink, backgroundColor: paper, border: `1px solid ${line}` },
  ".cm-tooltip": { borderRadius: "4px", maxWidth: "min(40em, 90vw)" },
  ".cm-panels button, .cm-tooltip button, .cm-button": button,
  ".cm-panels button:focus-visible, .cm-tooltip button:focus-visible, .cm-panels input:focus-visible": focused,
  ".cm-textfield": { font: "inherit", color: ink, backgroundColor: paper, border: `1px solid ${line}`, padding: "0.15em 0.4em" },
  ".cm-panel.cm-search": { font: "inherit", padding: "0.4em 2em 0.4em 0.5em" },
  ".cm-panel.cm-search label": { font: "inherit" },
  ".cm-panel.cm-search input[type=checkbox]": { accentColor: accent },
  ".cm-searchMatch": { backgroundColor: "transparent", outline: `1px solid ${accent}` },
  ".cm-searchMatch-selected": { backgroundColor: tint(30) },
  ".cm-diagnostic": { borderLeft: "none", padding: "0.4em 0.6em", marginLeft: "0" },
  ".cm-diagnosticText": { display: "block", position: "relative", paddingLeft: "1.5em" },
  ".cm-diagnosticText .cm-sign": { position: "absolute", left: "0" },
  ".cm-said": { display: "block" },
  ".cm-hint": { color: quiet },
  ".cm-diagnosticAction": { ...button, margin: "0.4em 0 0 1.5em" },
  ".cm-panel.cm-panel-lint": { paddingRight: "2em" },
  ".cm-panel.cm-panel-lint ul [aria-selected]": { color: ink, backgroundColor: tint(14) },
  ".cm-panel.cm-panel-lint ul:focus [aria-selected]": { color: ink, backgroundColor: tint(20), outline: `2px solid ${accent}`, outlineOffset: "-2px" },
  ".cm-tooltip.cm-tooltip-autocomplete > ul": { fontFamily: "inherit" },
  ".cm-tooltip.cm-tooltip-autocomplete > ul > li[aria-selected]": { color: ink, backgroundColor: tint(20), outline: `1px solid ${accent}` },
});
