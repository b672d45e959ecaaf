// A stash or batch as tables. Each cell writes into its line; the program writes the text, and the window takes it as one edit.
import { Cell } from './cell.js';
import { button, drawn, element, newId, offer } from './elements.js';
import { get, post } from './server.js';

const changedMeanwhile = 'The text was changed at the same time. Try again.';

/**
 * @param sheet The text and its file, as the program gets them.
 * @param textKept Takes a text as an edit of the window, and settles when it is shown.
 * @param goTo Goes to a line of the text.
 * @param openFile Opens a file.
 */
export function makeRows(panel, { asked, sheet, textKept, goTo, reportProblem }) {
  const said = element('p', { className: 'spoken', role: 'status' });
  const lists = element('div');
  const missing = element('p', { className: 'refused', hidden: true });
  const place = element('div', { className: 'rows' });
  panel.append(said, missing, lists, place);
  // What is done, one after the other; and the tables as they are shown.
  let pending = Promise.resolve();
  let shape = '';
  let tables = [];

  /** Lets the program change the text, and returns why it did not; empty where it did. */
  function act(change) {
    const done = pending.then(async () => {
      const now = sheet();
      const answer = await post('row', { sheet: now, ...change() });
      if (sheet().file !== now.file || sheet().text !== now.text) return changedMeanwhile;
      said.textContent = answer.said;
      if (answer.text !== now.text) {
        await textKept(answer.text);
        await refresh();
      }
      return answer.refused;
    });
    pending = done.catch(() => {});
    return done.catch((problem) => { reportProblem(problem); return ''; });
  }

  async function refresh() {
    const { file } = asked();
    const found = await get('rows', asked());
    if (file !== asked().file) return;
    const offers = Object.fromEntries(found.offers.map(({ name, values }) => [name, values]));
    showOffers(lists, offers);
    missing.textContent = found.missing;
    missing.hidden = !found.missing;
    // Tables of the same shape keep their elements, so that nothing typed and no focus is lost.
    const now = JSON.stringify([file, found.tables.map((t) => t.rows.map((r) => [r.kind, Boolean(r.locked)]))]);
    if (now !== shape) rebuild(found);
    shape = now;
    found.tables.forEach((table, i) => tables[i].show(table, offers));
  }

  function rebuild(found) {
    const focused = place.contains(document.activeElement) ? document.activeElement.dataset.key : '';
    tables = found.tables.map((table) => new Table(table, { act, goTo }));
    place.replaceChildren(...tables.map((table) => table.part));
    if (focused) keepFocus(place, focused);
  }

  return {
    refresh,
    /** Shows nothing until the tables of another file are here. */
    clear() {
      shape = '';
      tables = [];
      place.replaceChildren();
      said.textContent = '';
      missing.hidden = true;
    },
    /** Puts the focus into the first cell, as after a file is begun. */
    focus: () => place.querySelector('input, select')?.focus(),
  };
}

/** Returns the focus: to where it was, and after a row is added or the last one is deleted to the row that adds one. */
function keepFocus(place, key) {
  const parts = [...place.querySelectorAll('[data-key]')];
  const table = key.replace(/ (\d+|new|add)( [^ ]+)?$/, '');
  const isAdded = /( new [^ ]+| add)$/.test(key);
  (parts.find((part) => !isAdded && part.dataset.key === key)
    ?? parts.find((part) => part.dataset.key.startsWith(`${table} new `)))?.focus();
}

/** Lists of values that fields offer to be typed. */
function showOffers(place, offers) {
  place.replaceChildren(...Object.entries(offers).map(([name, values]) =>
    element('datalist', { id: `offer-${name}` }, ...values.map((value) => element('option', { value })))));
}

class Table {
  #rows;
  #kinds;
  #adding;

  constructor(table, page) {
    this.#kinds = new Map(table.kinds.map((kind) => [kind.word, kind]));
    const title = newId('rows');
    const columns = this.#columns(table);
    this.#rows = table.rows.map((row, at) => new Row(this.#kinds.get(row.kind), columns, `${table.title} ${at}`, page, table.isList));
    this.#adding = table.isList ? new Adding(table, columns, page) : null;
    this.part = element('section', { 'aria-labelledby': title, className: table.isList ? '' : 'own' },
      element('h3', { id: title }, table.title),
      element('table', { 'aria-labelledby': title },
        element('thead', {}, element('tr', {}, ...columns.map((column) => element('th', { scope: 'col' }, column.title)),
          element('td'))),
        ...this.#rows.map((row) => row.part), ...(this.#adding ? [this.#adding.part] : [])));
  }

  /** The fields shown in the row itself. Where rows of several kinds share a table, the first column says which a row is. */
  #columns({ kinds, isList }) {
    const fields = kinds.flatMap((kind) => kind.fields.filter((field) => field.isMain || !isList));
    const columns = fields.filter((field, at) => fields.findIndex((other) => other.name === field.name) === at);
    return kinds.length > 1 ? [{ name: '', title: 'Kind' }, ...columns] : columns;
  }

  show(table, offers) {
    this.#rows.forEach((row, at) => row.show(table.rows[at], offers));
    this.#adding?.show(offers);
  }
}

/** The fields that a row does not show itself, and the button that shows them. */
function moreOf(cells, columns, key, ...parts) {
  const others = cells.filter((cell) => !columns.some((column) => column.name === cell.field.name));
  const part = element('tr', { className: 'more', hidden: true }, element('td', { colSpan: columns.length + 1 },
    element('div', {}, ...others.map((cell) => element('label', { className: 'field' }, element('span', {}, cell.field.title), cell.input)),
      ...parts)));
  const shows = button('More', () => {
    part.hidden = !part.hidden;
    shows.ariaExpanded = String(!part.hidden);
  }, { ariaExpanded: 'false' });
  shows.dataset.key = `${key} more`;
  return { part, shows: others.length ? [shows] : [] };
}

class Row {
  #cells;
  #line = 0;
  #swatches = element('span', { className: 'chips' });
  #locked = element('p', { className: 'refused', hidden: true });
  #buttons;

  constructor(kind, columns, key, { act, goTo }, isListed) {
    this.#cells = kind.fields.map((field) => new Cell(field, {
      key: `${key} ${field.name}`,
      changed: (value) => act(() => ({ action: 'change', line: this.#line, values: [{ field: field.name, value }] })),
    }));
    const main = columns.map((column, at) => {
      const cell = this.#cells.find((one) => one.field.name === column.name);
      return element('td', { 'data-title': column.title }, ...(column.name ? [] : [kind.title]), ...(at === 0 ? [this.#swatches] : []),
        ...(cell ? [cell.input] : []));
    });
    const more = moreOf(this.#cells, columns, key, button('Show in the text', () => goTo(this.#line)));
    const remove = button('Delete', () => act(() => ({ action: 'delete', line: this.#line })));
    remove.dataset.key = `${key} delete`;
    this.#buttons = isListed ? [...more.shows, remove] : [];
    this.part = element('tbody', {},
      element('tr', {}, ...main, element('td', { className: 'actions' }, ...this.#buttons)), more.part,
      element('tr', {}, element('td', { colSpan: columns.length + 1 }, this.#locked, ...this.#cells.map((cell) => cell.refusal))));
  }

  show(row, offers) {
    this.#line = row.line;
    const [name] = row.cells;
    this.#cells.forEach((cell, at) => cell.show(row.cells[at], { name, isLocked: Boolean(row.locked), offers }));
    for (const each of this.#buttons) each.ariaLabel = `${each.textContent}: ${name}`;
    this.#locked.textContent = row.locked ?? '';
    this.#locked.hidden = !row.locked;
    this.#swatches.replaceChildren(...row.swatches.map((svg) => element('img', { src: drawn(svg), alt: '' })));
  }
}

/** The last row of a table, which adds one. */
class Adding {
  #table;
  #kind;
  #columns;
  #cells = [];
  #refused = element('p', { className: 'refused', role: 'alert', hidden: true });
  #offers = {};
  #act;

  constructor(table, columns, { act }) {
    this.#table = table;
    this.#columns = columns;
    this.#act = act;
    this.#kind = element('select', { ariaLabel: 'Kind of a new supply', onchange: () => { this.#fill(); this.show(this.#offers); } });
    this.#kind.dataset.key = `${table.title} new kind`;
    offer(this.#kind, table.kinds.map((kind) => [kind.word, kind.title]));
    this.part = element('tbody', { className: 'adding' });
    this.part.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter' || event.target.matches('button, select')) return;
      event.preventDefault();
      this.#add();
    });
    this.#fill();
  }

  get #chosen() {
    return this.#table.kinds.find((kind) => kind.word === this.#kind.value);
  }

  #fill() {
    const hadFocus = document.activeElement === this.#kind;
    const { title, one } = this.#table;
    this.#cells = this.#chosen.fields.map((field) => new Cell(field, { key: `${title} new ${field.name}` }));
    const more = moreOf(this.#cells, this.#columns, `${title} new`);
    const add = button(`Add ${one}`, () => this.#add());
    add.dataset.key = `${title} add`;
    for (const each of more.shows) each.ariaLabel = `More: new ${this.#chosen.title.toLowerCase()}`;
    this.part.replaceChildren(
      element('tr', {},
        ...this.#columns.map((column) => element('td', { 'data-title': column.title }, ...(column.name
          ? this.#cells.filter((cell) => cell.field.name === column.name).map((cell) => cell.input) : [this.#kind]))),
        element('td', { className: 'actions' }, ...more.shows, add)),
      more.part, element('tr', {}, element('td', { colSpan: this.#columns.length + 1 }, this.#refused)));
    if (hadFocus) this.#kind.focus();
  }

  show(offers) {
    this.#offers = offers;
    for (const cell of this.#cells) cell.show('', { name: `new ${this.#chosen.title.toLowerCase()}`, isNew: true, offers });
  }

  async #add() {
    const values = this.#cells.map((cell) => ({ field: cell.field.name, value: cell.value }));
    const refused = await this.#act(() => ({ action: 'add', kind: this.#chosen.word, values }));
    // Added, the table has another shape, and its new last row has the focus.
    this.#refused.textContent = refused;
    this.#refused.hidden = !refused;
    const missing = this.#cells.find((cell) => cell.field.isNeeded && !cell.value);
    if (refused) (missing ?? this.#cells[0]).input.focus();
  }
}
