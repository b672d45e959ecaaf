// What the buttons above the text do besides saving: create a file, tidy the text, restore an earlier one.
import { dialog } from './dialog.js';
import { element, offer } from './elements.js';
import { get, post } from './server.js';

const kindsOfFile = {
  card: 'A card: its layout',
  stash: 'A stash: your papers and supplies',
  batch: 'A batch: which cards, and how many',
};
const ending = /\.(card|stash|batch)$/i;

/**
 * Asks for a new file and creates it; returns its name, or null when cancelled.
 *
 * @param files The files of the folder.
 * @param beside The name of a file in whose folder it begins.
 * @param stash The stash that a batch uses unless another is chosen.
 */
export async function begin({ files, beside, stash }) {
  const field = element('input', { id: 'new-name', required: true, value: 'new', autocomplete: 'off', spellcheck: false });
  const folder = beside.slice(0, beside.lastIndexOf('/') + 1);
  const here = files.filter((file) => file.startsWith(folder)).map((file) => file.slice(folder.length));
  const first = { stash: firstStash(), batch: firstBatch(here, beside.slice(folder.length), stash.slice(folder.length)) };
  const chosen = (kind) => {
    for (const [of, { part }] of Object.entries(first)) part.hidden = of !== kind;
  };
  const kinds = Object.entries(kindsOfFile).map(([kind, text], i) => element('label', { className: 'check' }, element('input', {
    type: 'radio', name: 'kind', value: kind, checked: i === 0,
    onchange: () => { field.value = field.value.replace(ending, ''); chosen(kind); },
  }), ` ${text}`));
  const refused = element('p', { role: 'alert', hidden: true });
  chosen('card');
  for (;;) {
    const answer = await dialog('New file',
      [element('fieldset', {}, element('legend', {}, 'Kind of file'), ...kinds), element('label', { htmlFor: 'new-name' }, 'File name'),
        field, ...Object.values(first).map(({ part }) => part), refused],
      [['Create', 'yes'], ['Cancel', '']]);
    if (answer !== 'yes') return null;
    const { value: kind } = document.querySelector('input[name=kind]:checked');
    const name = field.value.trim();
    const file = `${name.includes('/') ? '' : folder}${ending.test(name) ? name : `${name}.${kind}`}`;
    try {
      await post('begin', { file, ...(file.endsWith(`.${kind}`) ? first[kind]?.chosen() : {}) });
      return file;
    } catch (problem) {
      // The name stays in the field, to be changed.
      refused.textContent = problem.message;
      refused.hidden = false;
    }
  }
}

/** What a new stash begins with. */
function firstStash() {
  const from = element('select', { id: 'new-papers' });
  offer(from, [['usual', 'A few common papers'], ['samples', 'The papers of the samples'], ['empty', 'Nothing']]);
  const units = element('select', { id: 'new-units' });
  offer(units, [['in', 'Inches'], ['mm', 'Millimetres']]);
  return {
    part: element('div', { className: 'choices' },
      element('span', { className: 'check' }, element('label', { htmlFor: 'new-papers' }, 'Begin with'), from),
      element('span', { className: 'check' }, element('label', { htmlFor: 'new-units' }, 'Measured in'), units)),
    chosen: () => ({ from: from.value, isMetric: units.value === 'mm' }),
  };
}

/** What a new batch begins with: a stash, and a number for each card. */
function firstBatch(files, open, nearest) {
  const stash = element('select', { id: 'new-stash' });
  const stashes = files.filter((file) => file.endsWith('.stash'));
  offer(stash, [['', 'none yet'], ...stashes.map((file) => [file, file])], stashes.includes(nearest) ? nearest : stashes[0] ?? '');
  const cards = files.filter((file) => file.endsWith('.card'));
  const counts = cards.map((file) => element('input', {
    type: 'number', className: 'few', min: 0, max: 1_000_000, value: file === (cards.includes(open) ? open : cards[0]) ? 12 : 0,
  }));
  return {
    part: element('div', {},
      element('p', { className: 'check' }, element('label', { htmlFor: 'new-stash' }, 'Papers from'), stash),
      element('fieldset', {}, element('legend', {}, 'How many of each card'),
        element('div', { className: 'counts' }, ...(cards.length
          ? cards.map((file, i) => element('label', { className: 'check' }, counts[i], file))
          : ['There is no card in this folder yet.'])))),
    chosen: () => ({
      stash: stash.value,
      makes: cards.map((card, i) => ({ card, count: Number(counts[i].value) })).filter(({ count }) => count > 0),
    }),
  };
}

/** Asks for an earlier version of a file; null when there is none or when cancelled. */
export async function bringBack(file) {
  const { earlier } = await get('earlier', { file });
  if (earlier.length === 0) {
    await dialog('Earlier versions', [
      element('p', {}, 'None yet. Sketch keeps the previous version each time you save.'),
    ], [['OK', 'yes']]);
    return null;
  }
  const list = element('select', { size: Math.min(8, Math.max(2, earlier.length)), id: 'earlier-list' },
    ...earlier.map((e, i) =>
      element('option', { value: e.name, selected: i === 0 }, new Date(e.time)
        .toLocaleString([], { dateStyle: 'medium', timeStyle: 'medium' }))));
  const answer = await dialog('Earlier versions',
    [element('label', { htmlFor: 'earlier-list' }, 'The version before the save at'), list,
      element('p', {}, 'It opens in the page without being saved; Undo removes it.')],
    [['Restore', 'yes'], ['Cancel', '']]);
  return answer === 'yes' ? (await get('earlier-text', { file, name: list.value })).text : null;
}

/** The text as formatted by the program. */
export const tidy = async (file, text) => (await post('tidy', { file, text })).text;
