// What the buttons above the text do besides saving: create a file, tidy the text, restore an earlier one.
import { dialog } from './dialog.js';
import { element } from './elements.js';
import { get, post } from './server.js';

const kindsOfFile = {
  card: 'A card: its layout',
  stash: 'A stash: your papers and supplies',
  batch: 'A batch: which cards, and how many',
};
const ending = /\.(card|stash|batch)$/i;

/** Asks for a new file and creates it; returns its name, or null when cancelled. */
export async function begin() {
  const field = element('input', { id: 'new-name', required: true, value: 'new', autocomplete: 'off', spellcheck: false });
  const kinds = Object.entries(kindsOfFile).map(([kind, text], i) => element('label', { className: 'check' }, element('input', {
    type: 'radio', name: 'kind', value: kind, checked: i === 0,
    onchange: () => { field.value = field.value.replace(ending, ''); },
  }), ` ${text}`));
  const refused = element('p', { role: 'alert', hidden: true });
  for (;;) {
    const answer = await dialog('New file',
      [element('fieldset', {}, element('legend', {}, 'Kind of file'), ...kinds), element('label', { htmlFor: 'new-name' }, 'File name'),
        field, refused],
      [['Create', 'yes'], ['Cancel', '']]);
    if (answer !== 'yes') return null;
    const name = field.value.trim();
    const file = ending.test(name) ? name : `${name}.${document.querySelector('input[name=kind]:checked').value}`;
    try {
      await post('begin', { file });
      return file;
    } catch (problem) {
      // The name stays in the field, to be changed.
      refused.textContent = problem.message;
      refused.hidden = false;
    }
  }
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
        .toLocaleString([], { dateStyle: 'full', timeStyle: 'medium' }))));
  const answer = await dialog('Earlier versions',
    [element('label', { htmlFor: 'earlier-list' }, 'The version before the save at'), list,
      element('p', {}, 'It opens in the page without being saved; Undo removes it.')],
    [['Restore', 'yes'], ['Cancel', '']]);
  return answer === 'yes' ? (await get('earlier-text', { file, name: list.value })).text : null;
}

/** The text as formatted by the program. */
export const tidy = async (file, text) => (await post('tidy', { file, text })).text;
