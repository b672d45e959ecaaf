// A field of a row: typed, chosen or ticked. What is refused stays to be changed; Escape gives back what is written.
import { element, newId, offer } from './elements.js';

const [fewest, most] = [6, 18];

/** An input as wide as what is usually typed into it. */
const typed = ({ example }) => element('input', {
  placeholder: example, autocomplete: 'off', spellcheck: false, size: Math.min(most, Math.max(fewest, example.length + 3)),
});

export class Cell {
  #changed;
  #written = '';
  #isNew = false;
  // Whether somebody has typed what the program has not got yet.
  #isTyped = false;

  /**
   * @param field The field, as the program describes it.
   * @param changed Called with another value; returns why it is refused. Without it the value is only kept.
   * @param key Tells the input from all others.
   */
  constructor(field, { changed, key }) {
    this.field = field;
    this.#changed = changed;
    const id = newId('refusal');
    this.refusal = element('p', { id, className: 'refused', role: 'alert', hidden: true });
    const isTicked = field.choices.length === 1;
    this.input = isTicked ? element('input', { type: 'checkbox' })
      : this.#isChosen ? element('select') : typed(field);
    if (!isTicked && !this.#isChosen && field.offers !== 'Nothing') this.input.setAttribute('list', `offer-${field.offers}`);
    this.input.setAttribute('aria-describedby', id);
    this.input.dataset.key = key;
    this.input.addEventListener('input', () => { this.#isTyped = true; });
    this.input.addEventListener('change', () => this.#take());
    this.input.addEventListener('keydown', (event) => {
      if (event.key !== 'Escape' || !this.#changed) return;
      this.#set(this.#written);
      this.#refuse('');
    });
  }

  get #isChosen() {
    return this.field.choices.length > 1 || ['Cards', 'Stashes'].includes(this.field.offers);
  }

  get value() {
    return this.input.type === 'checkbox' ? (this.input.checked ? this.field.choices[0] : '') : this.input.value;
  }

  /**
   * Shows what is written.
   * @param name What the row lists, for the name of the input.
   */
  show(written, { name, offers, isLocked = false, isNew = false }) {
    this.input.ariaLabel = `${this.field.title}, ${name}`;
    this.input.disabled = isLocked;
    this.#isNew = isNew;
    if (this.#isChosen) this.#offer(written, offers);
    // What somebody is typing, or what was refused, stays.
    if (!this.#isTyped && this.refusal.hidden) this.#set(written);
    else this.#written = written;
  }

  #offer(written, offers) {
    const listed = this.field.choices.length ? this.field.choices : offers[this.field.offers] ?? [];
    const known = written && !listed.includes(written) ? [written, ...listed] : listed;
    const none = this.field.isNeeded && !this.#isNew ? [] : [['', this.field.isNeeded ? 'Choose' : 'not set']];
    offer(this.input, [...none, ...known.map((value) => [value, value])]);
  }

  #set(written) {
    this.#written = written;
    this.#isTyped = false;
    if (this.input.type === 'checkbox') this.input.checked = Boolean(written);
    else this.input.value = written;
  }

  #refuse(reason) {
    this.refusal.textContent = reason;
    this.refusal.hidden = !reason;
    this.input.setAttribute('aria-invalid', String(Boolean(reason)));
  }

  async #take() {
    if (!this.#changed) return;
    this.#isTyped = false;
    this.#refuse('');
    const reason = await this.#changed(this.value);
    if (reason) this.#refuse(reason);
  }
}
