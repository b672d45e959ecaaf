/**
 * The page's text editor where the full one could not be had: a text area with line numbers, marks of findings and its own undo. It keeps
 * the same contract as editor.js.
 */
const signs = { error: '✖', warning: '▲', note: '●' };
const weights = ['note', 'warning', 'error'];
const mostSteps = 300;

export function createEditor(parent, { text = '', label = '', nonce = '', changed = () => {}, caretMoved = () => {} } = {}) {
  addStyle(nonce);
  const root = element('div', 'plain-editor', parent);
  const gutter = element('div', 'plain-gutter', root);
  gutter.setAttribute('aria-hidden', 'true');
  const numbers = element('div', 'plain-numbers', gutter);
  const area = element('textarea', 'plain-text', root);
  const attributes = { 'aria-label': label, spellcheck: 'false', autocapitalize: 'off', autocomplete: 'off', autocorrect: 'off',
    wrap: 'off' };
  for (const [name, value] of Object.entries(attributes)) area.setAttribute(name, value);
  area.value = text;

  let lineBreak = breakOf(text);
  let known = { text: area.value, start: 0, end: 0 };
  let typing = '';
  let reported = 1;
  let findings = [];
  let marked = [0, 0];
  const past = [];
  const future = [];

  const lines = () => area.value.split('\n');
  const whole = () => (lineBreak === '\n' ? area.value : area.value.replaceAll('\n', lineBreak));
  const caretLine = () => area.value.slice(0, area.selectionStart).split('\n').length;
  const lineHeight = () => parseFloat(getComputedStyle(area).lineHeight);

  function offset(line, column) {
    const all = lines();
    if (line > all.length) return area.value.length;
    const before = all.slice(0, Math.max(line, 1) - 1).reduce((sum, one) => sum + one.length + 1, 0);
    return before + Math.min(Math.max(column, 1) - 1, all[Math.max(line, 1) - 1].length);
  }

  function drawGutter() {
    const count = lines().length;
    while (numbers.childElementCount > count) numbers.lastChild.remove();
    while (numbers.childElementCount < count) element('div', '', numbers);
    const worst = new Map();
    for (const { line, severity } of findings)
      if (weights.indexOf(severity) > weights.indexOf(worst.get(line))) worst.set(line, severity);
    [...numbers.children].forEach((row, index) => {
      const line = index + 1;
      const severity = worst.get(line);
      const content = `${severity ? signs[severity] : ''} ${line}`;
      const name = `${severity ? `has-${severity}` : ''}${line >= marked[0] && line <= marked[1] ? ' is-marked' : ''}`;
      if (row.textContent !== content) row.textContent = content;
      if (row.className !== name) row.className = name;
    });
    numbers.style.transform = `translateY(${-area.scrollTop}px)`;
  }

  function reportCaret() {
    known = { ...known, start: area.selectionStart, end: area.selectionEnd };
    const line = caretLine();
    if (line === reported) return;
    reported = line;
    caretMoved(line);
  }

  /** Keeps the text as it was before this step, unless the step goes on with the typing before it. */
  function step(sort) {
    if (area.value === known.text) return false;
    if (!sort || sort !== typing) {
      past.push(known);
      if (past.length > mostSteps) past.shift();
    }
    typing = sort;
    future.length = 0;
    known = { text: area.value, start: area.selectionStart, end: area.selectionEnd };
    return true;
  }

  function put(value, start, end) {
    const { scrollTop, scrollLeft } = area;
    area.value = value;
    area.setSelectionRange(start, end);
    area.scrollTop = scrollTop;
    area.scrollLeft = scrollLeft;
    drawGutter();
  }

  function travel(from, to) {
    const next = from.pop();
    if (!next) return false;
    to.push(known);
    known = next;
    typing = '';
    put(next.text, next.start, next.end);
    changed(whole());
    reportCaret();
    return true;
  }

  const undo = () => travel(past, future);
  const redo = () => travel(future, past);

  function scrollTo(line) {
    const height = lineHeight();
    const top = (line - 1) * height;
    if (top < area.scrollTop || top + height > area.scrollTop + area.clientHeight - height) area.scrollTop =
      Math.max(0, top - area.clientHeight / 3);
    drawGutter();
  }

  area.addEventListener('beforeinput', (event) => {
    if (event.inputType !== 'historyUndo' && event.inputType !== 'historyRedo') return;
    event.preventDefault();
    if (event.inputType === 'historyUndo') undo();
    else redo();
  });
  area.addEventListener('input', (event) => {
    const goesOn = /^insert(?:Composition)?Text$/.test(event.inputType) && /\S/.test(event.data ?? '')
      ? 'letters' : event.inputType === 'deleteContentBackward' ? 'back' : '';
    if (!step(goesOn)) return;
    drawGutter();
    changed(whole());
    reportCaret();
  });
  area.addEventListener('keydown', (event) => {
    const key = event.key.toLowerCase();
    const command = (event.ctrlKey || event.metaKey) && !event.altKey;
    if (!command || (key !== 'z' && key !== 'y')) return;
    event.preventDefault();
    if (key === 'y' || event.shiftKey) redo();
    else undo();
  });
  area.addEventListener('scroll', () => { numbers.style.transform = `translateY(${-area.scrollTop}px)`; });
  area.addEventListener('selectionchange', reportCaret);
  for (const name of ['keyup', 'pointerup', 'focus']) area.addEventListener(name, reportCaret);
  area.addEventListener('pointerdown', () => { typing = ''; });
  drawGutter();

  return {
    text: whole,
    open(value) {
      lineBreak = breakOf(value);
      area.value = value;
      area.setSelectionRange(0, 0);
      area.scrollTo(0, 0);
      known = { text: area.value, start: 0, end: 0 };
      typing = '';
      reported = 1;
      findings = [];
      marked = [0, 0];
      past.length = 0;
      future.length = 0;
      drawGutter();
    },
    replaceAll(value) {
      lineBreak = breakOf(value);
      const fresh = value.replace(/\r\n?/g, '\n');
      if (fresh === area.value) return;
      const [line, column] = place(area.value, area.selectionStart);
      area.value = fresh;
      const at = offset(line, column);
      put(fresh, at, at);
      step('');
      reportCaret();
    },
    apply(edit) {
      const from = offset(edit.line, edit.column);
      const to = Math.max(from, offset(edit.endLine, edit.endColumn));
      const fresh = edit.text.replace(/\r\n?/g, '\n');
      put(area.value.slice(0, from) + fresh + area.value.slice(to), from + fresh.length, from + fresh.length);
      if (!step('')) return;
      changed(whole());
      reportCaret();
    },
    showFindings(list) {
      findings = list;
      drawGutter();
    },
    mark(fromLine, toLine) {
      marked = fromLine > 0 ? [fromLine, Math.max(fromLine, toLine)] : [0, 0];
      drawGutter();
      if (fromLine > 0) scrollTo(fromLine);
    },
    goTo(line, column) {
      const at = offset(line, column);
      area.setSelectionRange(at, at);
      scrollTo(line);
      reportCaret();
    },
    focus: () => area.focus(),
    undo,
    redo,
  };
}

function breakOf(text) {
  return text.includes('\r\n') ? '\r\n' : '\n';
}

function place(text, at) {
  const before = text.slice(0, at).split('\n');
  return [before.length, before.at(-1).length + 1];
}

function element(name, className, parent) {
  const made = document.createElement(name);
  if (className) made.className = className;
  parent.append(made);
  return made;
}

function addStyle(nonce) {
  if (document.querySelector('style[data-plain-editor]')) return;
  const style = document.createElement('style');
  style.dataset.plainEditor = '';
  if (nonce) style.nonce = nonce;
  style.textContent = `
.plain-editor { display: flex; height: 100%; min-height: 6em; overflow: hidden;
  color: var(--ink, light-dark(#1f2328, #e8e6e1)); background: var(--paper, light-dark(#fff, #1c1e21)); }
.plain-gutter { flex: none; overflow: hidden; color: var(--quiet, light-dark(#5c636b, #a3a8ae));
  border-right: 1px solid var(--line, light-dark(#c9cdd2, #4a4e54)); }
.plain-numbers { padding: 0.4em 0; text-align: right; }
.plain-numbers, .plain-text { font: inherit; font-family: var(--mono, ui-monospace, Consolas, Menlo, monospace); line-height: 1.5; }
.plain-numbers > div { height: 1.5em; padding: 0 0.5em 0 0.7em; white-space: pre; }
.plain-numbers > .is-marked { padding-left: 0.4em; border-left: 0.3em solid var(--accent, light-dark(#0b5cad, #7db8f5));
  font-weight: bold; }
.plain-numbers > .has-error { color: var(--error, light-dark(#b3261e, #ff8f87)); }
.plain-numbers > .has-warning { color: var(--warning, light-dark(#8a5000, #f2b45c)); }
.plain-numbers > .has-note { color: var(--note, light-dark(#1d5fa6, #8fc1f7)); }
.plain-text { flex: 1; min-width: 0; box-sizing: border-box; margin: 0; padding: 0.4em 0.5em; border: 0;
  resize: none; color: inherit; background: inherit; tab-size: 2; }
.plain-text:focus-visible { outline: 2px solid var(--accent, light-dark(#0b5cad, #7db8f5)); outline-offset: -2px; }
`;
  document.head.append(style);
}
