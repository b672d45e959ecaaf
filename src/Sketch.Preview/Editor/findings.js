import { RangeSet, StateField } from '@codemirror/state';
import { EditorView, GutterMarker, ViewPlugin, activateHover, closeHoverTooltips, gutter, hasHoverTooltips,
  keymap } from '@codemirror/view';
import { forEachDiagnostic, linter, nextDiagnostic, previousDiagnostic, setDiagnosticsEffect } from '@codemirror/lint';
import { offset, replace } from './places.js';

/** A CodeMirror diagnostic from a finding of the server. */
export function diagnostic(doc, finding) {
  const from = offset(doc, finding.line, finding.column);
  const to = Math.max(from, offset(doc, finding.endLine, finding.endColumn));
  const { replacement } = finding;
  return {
    from,
    to,
    severity: finding.severity === 'note' ? 'info' : finding.severity,
    message: `${names[finding.severity]}: ${finding.message} ${finding.hint}`,
    renderMessage: () => {
      const reported = document.createElement('span');
      reported.append(sign(finding.severity), paragraph(`${names[finding.severity]}: ${finding.message}`, 'cm-message'),
        paragraph(finding.hint, 'cm-hint'));
      return reported;
    },
    actions: typeof replacement === 'string'
      ? [{ name: actionName(replacement), apply: (view, at, end) => fix(view, at, end, replacement) }] : [],
  };
}

/** The button that was pressed disappears, so the focus returns to the text. */
function fix(view, from, to, replacement) {
  replace(view, from, to, replacement);
  view.focus();
}

const names = { error: 'Error', warning: 'Warning', note: 'Note' };

function actionName(replacement) {
  const shown = replacement.trim();
  if (!shown) return 'Remove it';
  // A replacement with a line of its own goes before the existing text.
  if (shown.includes('\n')) return `Insert ${shown.slice(0, shown.indexOf('\n'))}`;
  return `Change to ${shown.length > 40 ? `${shown.slice(0, 39)}…` : shown}`;
}

function paragraph(text, name) {
  const made = document.createElement('span');
  made.className = name;
  made.textContent = text;
  return made;
}

// Each severity has its own shape, so that colour is not the only cue.
const shapes = {
  error: 'M5 1h6l4 4v6l-4 4H5l-4-4V5zM7.2 4v5h1.6V4zM7.2 10.4V12h1.6v-1.6z',
  warning: 'M8 1l7.5 14H.5zM7.2 6v4.5h1.6V6zM7.2 11.6v1.6h1.6v-1.6z',
  note: 'M8 1a7 7 0 1 0 0 14A7 7 0 1 0 8 1zM7.2 4v1.6h1.6V4zM7.2 7v5h1.6V7z',
};

function sign(severity) {
  const picture = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  picture.setAttribute('viewBox', '0 0 16 16');
  picture.setAttribute('class', `cm-sign cm-sign-${severity}`);
  picture.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  path.setAttribute('d', shapes[severity]);
  path.setAttribute('fill-rule', 'evenodd');
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

const markers = { info: new FindingMarker('note'), warning: new FindingMarker('warning'), error: new FindingMarker('error') };
const weight = (severity) => ['info', 'warning', 'error'].indexOf(severity);

const findingMarks = StateField.define({
  create: () => RangeSet.empty,
  update(marks, transaction) {
    if (!transaction.effects.some((effect) => effect.is(setDiagnosticsEffect))) return marks.map(transaction.changes);
    const worst = new Map();
    forEachDiagnostic(transaction.state, ({ severity }, from) => {
      const line = transaction.state.doc.lineAt(from).from;
      if (weight(severity) > weight(worst.get(line))) worst.set(line, severity);
    });
    return RangeSet.of([...worst].map(([line, severity]) => markers[severity].range(line)), true);
  },
});

/** Escape closes the tooltip first, and only then is free for other uses. */
function putAway(view) {
  if (!hasHoverTooltips(view.state)) return false;
  view.dispatch({ effects: closeHoverTooltips });
  return true;
}

/** The tooltip of a finding is closed when the focus moves elsewhere in the page. */
const putAwayBehind = ViewPlugin.define((view) => {
  const left = ({ relatedTarget }) => { if (relatedTarget && !view.dom.contains(relatedTarget)) putAway(view); };
  view.dom.addEventListener('focusout', left);
  return { destroy: () => view.dom.removeEventListener('focusout', left) };
});

/** Announces the tooltip at the selection to screen readers. */
function say(view) {
  const { from, to } = view.state.selection.main;
  const reported = [];
  forEachDiagnostic(view.state, (found, start, end) => {
    if (start <= to && end >= from) reported.push(found.message);
  });
  view.dispatch({ effects: EditorView.announce.of(reported.join(' ')) });
  return true;
}

/** Selects the worst finding of the line and shows its message. */
function showWorst(view, at) {
  const line = view.state.doc.lineAt(at);
  let worst = null;
  forEachDiagnostic(view.state, ({ severity }, from, to) => {
    if (from < line.from || from > line.to || (worst && weight(worst.severity) >= weight(severity))) return;
    worst = { severity, from, to };
  });
  if (!worst) return false;
  view.focus();
  view.dispatch({ selection: { anchor: worst.from, head: worst.to }, scrollIntoView: true });
  activateHover(view, worst.from, 1, { until: (transaction) => transaction.docChanged || transaction.selection });
  return say(view);
}

const keys = [
  { key: 'F8', run: (view) => nextDiagnostic(view) && say(view) },
  { key: 'Shift-F8', run: (view) => previousDiagnostic(view) && say(view) },
  { key: 'Mod-Shift-m', run: (view) => showWorst(view, view.state.selection.main.head), preventDefault: true },
  { key: 'Escape', run: putAway },
];

/**
 * Underlines, and a gutter with a sign for the worst finding of each line. A click on the sign, or Ctrl-Shift-M in the line, shows the
 * finding; F8 and Shift-F8 move between findings. Tab then moves to the button that fixes it.
 */
export const findingTools = [
  linter(null),
  putAwayBehind,
  keymap.of(keys),
  findingMarks,
  gutter({
    class: 'cm-findings',
    markers: (view) => view.state.field(findingMarks),
    initialSpacer: () => markers.info,
    domEventHandlers: { click: (view, block) => showWorst(view, block.from) },
  }),
];
