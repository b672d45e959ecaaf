// The form of the chosen piece: what it is and how it is written. Each field writes into its line.
import { carries } from './dropping.js';
import { button, element, newId, offer } from './elements.js';

const capital = (text) => text[0].toUpperCase() + text.slice(1);
const controls = 'input, select, textarea, button, summary';

/** A field with the value that the line gives it. */
function written(field, value) {
  field.value = field.defaultValue = value;
  field.addEventListener('change', () => { field.defaultValue = field.value; });
  return field;
}

/** What is selected in a field, and typed but not yet written; a function that brings both into the field that takes its place. */
function typingIn(field) {
  if (!field?.matches('input, textarea')) return () => {};
  const { value, defaultValue, selectionStart, selectionEnd } = field;
  const isAll = selectionEnd > selectionStart && selectionEnd - selectionStart === value.length;
  return (next) => {
    if (value !== defaultValue) next.value = value;
    if (isAll) next.select();
    else next.setSelectionRange(selectionStart, selectionEnd);
  };
}

export class PieceForm {
  #page;
  #title = element('h3', { className: 'piece-title' });
  #line = element('code', { className: 'piece-line' });
  #refused = element('p', { className: 'refused', hidden: true });
  #fields = element('div', { className: 'fields' });
  #empty = element('p', { className: 'empty' }, 'Click a piece in the picture to move it, change its size, and see how it is written.');
  #whole = element('div', { hidden: true }, this.#title, this.#line, this.#refused, this.#fields);
  #shown = null;
  #known = '';
  // While a pointer is pressed in the form, its parts stay, so that a click or a drag ends where it begins.
  #isPressed = false;
  #waiting = null;

  /**
   * @param page What it needs of the page:
   * - `changed` is called with a change, and with the path of another piece if it is for that;
   * - `goTo` goes to a line of the text;
   * - `left` is called when the focus goes back to the picture;
   * - `letGo` is called when no piece is to be chosen any more.
   */
  constructor(page) {
    this.#page = page;
    this.part = element('section', { className: 'piece-form', 'aria-label': 'The chosen piece' }, this.#empty, this.#whole);
    this.part.addEventListener('keydown', (event) => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      page.left();
    });
    this.part.addEventListener('pointerdown', () => { this.#isPressed = true; });
    // A drag takes the pointer over and cancels it.
    let isDragged = false;
    this.part.addEventListener('dragstart', () => { isDragged = true; });
    this.part.addEventListener('dragend', () => { isDragged = false; this.#release(); });
    for (const kind of ['pointerup', 'pointercancel', 'keydown']) addEventListener(kind, () => { if (!isDragged) this.#release(); });
    this.part.addEventListener('change', () => this.#release());
  }

  /** Where the piece lies, as a sentence. */
  get place() {
    return this.#shown ? `${capital(this.#shown.form.place)}.` : '';
  }

  focus() {
    this.#fields.querySelector('input:not([readonly]), select, textarea, button')?.focus();
  }

  /** Shows why something cannot be done; an empty reason takes that away. */
  refuse(reason, offered) {
    this.#refused.replaceChildren(...(reason ? this.#reason({ reason, offer: offered }).childNodes : []));
    this.#refused.hidden = !reason;
  }

  /** Shows what came while a pointer was pressed, after its click. */
  #release() {
    if (!this.#isPressed) return;
    this.#isPressed = false;
    setTimeout(() => {
      if (this.#isPressed || !this.#waiting) return;
      const { hold } = this.#waiting;
      this.show(hold);
    });
  }

  /** Shows a piece; null for none. */
  show(hold) {
    this.#waiting = this.#isPressed ? { hold } : null;
    if (this.#waiting) return;
    this.#empty.hidden = Boolean(hold);
    this.#whole.hidden = !hold;
    this.#shown = hold;
    const now = JSON.stringify(hold);
    if (!hold || now === this.#known) return;
    this.#known = now;
    this.#title.textContent = hold.form.title;
    this.#line.textContent = hold.form.text;
    const at = [...this.#fields.querySelectorAll(controls)].indexOf(document.activeElement);
    const resume = typingIn(document.activeElement);
    const open = [...this.#fields.querySelectorAll('details')].map((details) => details.open);
    this.#fields.replaceChildren(
      ...this.#measures(hold), ...this.#material(hold.form), ...hold.form.mats.flatMap((mat, i) => this.#mat(hold.form, mat, i)),
      this.#actions(hold));
    [...this.#fields.querySelectorAll('details')].forEach((details, i) => { details.open = open[i] ?? false; });
    // The field that has the focus keeps it, with what is typed in it since.
    const field = at >= 0 && this.#fields.querySelectorAll(controls)[at];
    if (field) {
      field.focus();
      resume(field);
    }
  }

  /** A field that asks for a change of its piece when it is changed. */
  #field(label, value, change, { path = null, ...properties } = {}) {
    const id = newId('piece');
    const input = written(element('input', { id, autocomplete: 'off', spellcheck: false, ...properties }), value);
    input.addEventListener('change', () => this.#page.changed(change(input.value), path));
    return element('div', { className: 'field' }, element('label', { htmlFor: id }, label), input);
  }

  #measures({ form, across, down }) {
    const refusals = [across.size, down.size, across.move, down.move].filter(Boolean);
    const reasons = [...new Map(refusals.map((refusal) => [refusal.reason, refusal])).values()];
    return [
      element('div', { className: 'pair' },
        this.#field('Width', form.width, (text) => ({ kind: 'size', measure: 'width', text }), { readOnly: Boolean(across.size) }),
        this.#field('Height', form.height, (text) => ({ kind: 'size', measure: 'height', text }), { readOnly: Boolean(down.size) })),
      ...reasons.map((refusal) => this.#reason(refusal)),
      element('p', { className: 'place' }, this.place),
      element('div', { className: 'pair' }, ...form.distances.map(({ edge, distance }) => this.#field(
        `From the ${edge}`, distance, (text) => ({ kind: 'place', measure: edge, text })))),
      ...(form.showing === null ? [] : [this.#field('Shows on each side', form.showing, (text) => ({ kind: 'showing', text }))]),
    ];
  }

  #material(form) {
    return [
      ...(form.paper === null ? [] : [this.#papers(form, form.paper, 'Paper')]),
      ...(form.words ? this.#words(form) : []),
      ...(form.foam === null ? []
        : [this.#field('Foam beneath, mm', form.foam, (text) => ({ kind: 'foam', text }), { placeholder: 'none' })]),
      ...(form.turn === null ? [] : [this.#field('Turned, degrees', form.turn, (text) => ({ kind: 'turn', text }))]),
    ];
  }

  #words(form) {
    const id = newId('piece');
    const words = written(element('textarea', { id, rows: Math.max(1, form.words.length), spellcheck: false }), form.words.join('\n'));
    words.addEventListener('change', () => this.#page.changed(
      { kind: 'words', lines: words.value.split('\n').filter((text) => text.trim()) }));
    const field = element('div', { className: 'field' }, element('label', { htmlFor: id }, 'Words, one line each'), words);
    if (form.words.length === 0) return [field];
    return [field,
      this.#field('Height of letters', form.letters, (text) => ({ kind: 'letters', text }), { placeholder: 'usual' }),
      this.#lettering(form)];
  }

  #lettering({ lettering, letterings }) {
    const id = newId('piece');
    const select = element('select', { id });
    const kinds = [['', 'as the card'], ...letterings.map((word) => [word, word])];
    offer(select, kinds.some(([of]) => of === lettering) ? kinds : [[lettering, lettering], ...kinds], lettering);
    select.addEventListener('change', () => this.#page.changed({ kind: 'lettering', text: select.value }));
    return element('div', { className: 'field' }, element('label', { htmlFor: id }, 'Lettering'), select);
  }

  #mat(form, mat, at) {
    const name = form.mats.length > 1 ? `Mat ${at + 1}` : 'Mat';
    return [
      this.#field(`${name} shows on each side`, mat.border ?? mat.shown, (text) => ({ kind: 'border', text }),
        { path: mat.piece, readOnly: mat.border === null }),
      this.#papers(form, mat.paper, `${name}, paper`, mat.piece),
    ];
  }

  #papers(form, value, label, path = null) {
    const list = element('div', { className: 'chips', role: 'group', 'aria-label': label });
    for (const { name, colour, isRole } of form.papers) {
      const blob = element('span', { className: 'blob' });
      blob.style.background = colour;
      const chip = element('button', {
        type: 'button', className: 'chip', 'aria-pressed': String(name === value), title: isRole ? `${name}, a role` : name,
        click: () => this.#page.changed({ kind: 'paper', text: name }, path),
      }, blob, element('span', { className: isRole ? '' : 'unseen' }, name));
      carries(chip, name);
      list.append(chip);
    }
    return element('details', { className: 'papers-of' }, element('summary', {}, `${label}: ${value || 'none'}`), list);
  }

  #reason({ reason, offer: offered }) {
    const made = element('p', { className: 'reason' }, reason);
    if (offered) {
      const { label, piece, width, height, letsGo } = offered;
      made.append(' ', button(label, () => this.#page.changed({ kind: 'size', width, height, letsGo, held: [] }, piece)));
    }
    return made;
  }

  #actions(hold) {
    const { changed, goTo, letGo } = this.#page;
    return element('div', { className: 'actions' },
      button('Up', () => changed({ kind: 'up' }), { title: 'Lay it over the next piece' }),
      button('Down', () => changed({ kind: 'down' }), { title: 'Lay it under the piece before' }),
      button('Copy', () => changed({ kind: 'copy' })),
      button('Delete', () => changed({ kind: 'delete' })),
      button('Its line', () => goTo(hold.line), { title: 'Go to its line in the text' }),
      button('Let go', letGo));
  }
}
