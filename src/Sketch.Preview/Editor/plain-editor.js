/**
 * The text editor of the page where the full one is unavailable: a text area with line numbers, marks of findings and its own undo. It has
 * the same contract as editor.js.
 */
const signs = { error: '✖', warning: '▲', note: '●' };
const weights = ['note', 'warning', 'error'];
const mostSteps = 300;

export const createEditor = (parent, options = {}) => new PlainEditor(parent, options);

class PlainEditor {
  #area;
  #gutter;
  #changed;
  #caretMoved;
  #lineBreak;
  // The text and selection after the last step, the steps before it, the undone steps, and the kind of typing that may continue.
  #known;
  #past = [];
  #future = [];
  #typing = '';
  #reported = 1;

  constructor(parent, { text = '', label = '', nonce = '', changed = () => {}, caretMoved = () => {} }) {
    addStyle(nonce);
    const root = element('div', 'plain-editor', parent);
    this.#gutter = new Gutter(root);
    this.#area = textArea(root, label, text);
    [this.#changed, this.#caretMoved] = [changed, caretMoved];
    this.#lineBreak = breakOf(text);
    this.#known = this.#state();
    this.#listen();
    this.#drawGutter();
  }

  // Passed around as functions.
  undo = () => this.#travel(this.#past, this.#future);
  redo = () => this.#travel(this.#future, this.#past);

  text() {
    return this.#lineBreak === '\n' ? this.#area.value : this.#area.value.replaceAll('\n', this.#lineBreak);
  }

  open(value) {
    this.#lineBreak = breakOf(value);
    this.#area.value = value;
    this.#area.setSelectionRange(0, 0);
    this.#area.scrollTo(0, 0);
    this.#known = this.#state();
    this.#typing = '';
    this.#reported = 1;
    this.#past.length = 0;
    this.#future.length = 0;
    this.#gutter.findings = [];
    this.#gutter.marked = [0, 0];
    this.#drawGutter();
  }

  replaceAll(value) {
    this.#lineBreak = breakOf(value);
    const fresh = value.replace(/\r\n?/g, '\n');
    if (fresh === this.#area.value) return;
    const [line, column] = place(this.#area.value, this.#area.selectionStart);
    this.#area.value = fresh;
    const at = offset(fresh, line, column);
    this.#put(fresh, at, at);
    this.#step('');
    this.#reportCaret();
  }

  apply(edit) {
    const { value } = this.#area;
    const from = offset(value, edit.line, edit.column);
    const to = Math.max(from, offset(value, edit.endLine, edit.endColumn));
    const fresh = edit.text.replace(/\r\n?/g, '\n');
    this.#put(value.slice(0, from) + fresh + value.slice(to), from + fresh.length, from + fresh.length);
    if (this.#step('')) this.#reportEdit();
  }

  showFindings(list) {
    this.#gutter.findings = list;
    this.#drawGutter();
  }

  mark(fromLine, toLine, { scrolls = true } = {}) {
    this.#gutter.marked = fromLine > 0 ? [fromLine, Math.max(fromLine, toLine)] : [0, 0];
    this.#drawGutter();
    if (fromLine > 0 && scrolls) this.#scrollTo(fromLine);
  }

  goTo(line, column) {
    const at = offset(this.#area.value, line, column);
    this.#area.setSelectionRange(at, at);
    this.#scrollTo(line);
    this.#reportCaret();
  }

  focus() {
    this.#area.focus();
  }

  #listen() {
    const area = this.#area;
    area.addEventListener('beforeinput', (event) => {
      if (event.inputType !== 'historyUndo' && event.inputType !== 'historyRedo') return;
      event.preventDefault();
      if (event.inputType === 'historyUndo') this.undo();
      else this.redo();
    });
    area.addEventListener('input', (event) => {
      if (!this.#step(sortOf(event))) return;
      this.#drawGutter();
      this.#reportEdit();
    });
    area.addEventListener('keydown', (event) => {
      const key = event.key.toLowerCase();
      const command = (event.ctrlKey || event.metaKey) && !event.altKey;
      if (!command || (key !== 'z' && key !== 'y')) return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) this.redo();
      else this.undo();
    });
    area.addEventListener('scroll', () => this.#gutter.follow(area));
    for (const name of ['selectionchange', 'keyup', 'pointerup', 'focus']) area.addEventListener(name, () => this.#reportCaret());
    area.addEventListener('pointerdown', () => { this.#typing = ''; });
  }

  #state() {
    return { text: this.#area.value, start: this.#area.selectionStart, end: this.#area.selectionEnd };
  }

  #drawGutter() {
    this.#gutter.draw(this.#area);
  }

  #reportEdit() {
    this.#changed(this.text());
    this.#reportCaret();
  }

  #reportCaret() {
    this.#known = { ...this.#state(), text: this.#known.text };
    const [line] = place(this.#area.value, this.#area.selectionStart);
    if (line === this.#reported) return;
    this.#reported = line;
    this.#caretMoved(line);
  }

  /** Stores the text as it was before this step, unless the step continues the typing before it. */
  #step(sort) {
    if (this.#area.value === this.#known.text) return false;
    if (!sort || sort !== this.#typing) {
      this.#past.push(this.#known);
      if (this.#past.length > mostSteps) this.#past.shift();
    }
    this.#typing = sort;
    this.#future.length = 0;
    this.#known = this.#state();
    return true;
  }

  #put(value, start, end) {
    const { scrollTop, scrollLeft } = this.#area;
    this.#area.value = value;
    this.#area.setSelectionRange(start, end);
    this.#area.scrollTop = scrollTop;
    this.#area.scrollLeft = scrollLeft;
    this.#drawGutter();
  }

  #travel(from, to) {
    const next = from.pop();
    if (!next) return false;
    to.push(this.#known);
    this.#known = next;
    this.#typing = '';
    this.#put(next.text, next.start, next.end);
    this.#reportEdit();
    return true;
  }

  #scrollTo(line) {
    const area = this.#area;
    const height = parseFloat(getComputedStyle(area).lineHeight);
    const top = (line - 1) * height;
    const isInSight = top >= area.scrollTop && top + 2 * height <= area.scrollTop + area.clientHeight;
    if (!isInSight) area.scrollTop = Math.max(0, top - area.clientHeight / 3);
    this.#drawGutter();
  }
}

/** The line numbers, with the sign of the worst finding of each line. */
class Gutter {
  findings = [];
  marked = [0, 0];
  #numbers;

  constructor(root) {
    const gutter = element('div', 'plain-gutter', root);
    gutter.setAttribute('aria-hidden', 'true');
    this.#numbers = element('div', 'plain-numbers', gutter);
  }

  draw(area) {
    const count = area.value.split('\n').length;
    while (this.#numbers.childElementCount > count) this.#numbers.lastChild.remove();
    while (this.#numbers.childElementCount < count) element('div', '', this.#numbers);
    const worst = new Map();
    for (const { line, severity } of this.findings) {
      if (weights.indexOf(severity) > weights.indexOf(worst.get(line))) worst.set(line, severity);
    }
    [...this.#numbers.children].forEach((row, index) => {
      const line = index + 1;
      const severity = worst.get(line);
      const content = `${severity ? signs[severity] : ''} ${line}`;
      const name = `${severity ? `has-${severity}` : ''}${line >= this.marked[0] && line <= this.marked[1] ? ' is-marked' : ''}`;
      if (row.textContent !== content) row.textContent = content;
      if (row.className !== name) row.className = name;
    });
    this.follow(area);
  }

  follow(area) {
    this.#numbers.style.transform = `translateY(${-area.scrollTop}px)`;
  }
}

function textArea(parent, label, text) {
  const area = element('textarea', 'plain-text', parent);
  const attributes = { 'aria-label': label, spellcheck: 'false', autocapitalize: 'off', autocomplete: 'off', autocorrect: 'off',
    wrap: 'off' };
  for (const [name, value] of Object.entries(attributes)) area.setAttribute(name, value);
  area.value = text;
  return area;
}

/** The kind of typing that is undone as one step, or nothing for an edit that is a step by itself. */
function sortOf({ inputType, data }) {
  if (/^insert(?:Composition)?Text$/.test(inputType) && /\S/.test(data ?? '')) return 'letters';
  return inputType === 'deleteContentBackward' ? 'back' : '';
}

/** The offset of a place, clamped to the text. */
function offset(text, line, column) {
  const lines = text.split('\n');
  if (line > lines.length) return text.length;
  const before = lines.slice(0, Math.max(line, 1) - 1).reduce((sum, one) => sum + one.length + 1, 0);
  return before + Math.min(Math.max(column, 1) - 1, lines[Math.max(line, 1) - 1].length);
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
