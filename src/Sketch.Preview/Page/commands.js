// What the buttons above the text ask or do beside saving: begin a file, tidy the text, bring an earlier one back.
import { dialog } from './dialog.js';
import { element } from './elements.js';
import { get, post } from './server.js';

const ending = /\.(card|stash|batch)$/i;

/** Asks for a new file and begins it; returns its name, or null when it was left. */
export async function begin() {
  const field = element('input', { id: 'new-name', required: true, value: 'new', autocomplete: 'off', spellcheck: false });
  const kinds = [['card', 'A card'], ['stash', 'A stash: what is on the shelf'], ['batch', 'A batch: which cards, and how many']].map(([kind, text], i) =>
    element('label', { className: 'check' }, element('input', {
      type: 'radio', name: 'kind', value: kind, checked: i === 0,
      onchange: () => { field.value = field.value.replace(ending, ''); },
    }), ` ${text}`));
  const refused = element('p', { role: 'alert', hidden: true });
  for (;;) {
    const answer = await dialog('Begin a new file',
      [element('fieldset', {}, element('legend', {}, 'What shall it be?'), ...kinds), element('label', { htmlFor: 'new-name' }, 'Name of the file'), field, refused],
      [['Begin it', 'yes'], ['Leave it', '']]);
    if (answer !== 'yes') return null;
    const name = field.value.trim();
    const file = ending.test(name) ? name : `${name}.${document.querySelector('input[name=kind]:checked').value}`;
    try {
      await post('begin', { file });
      return file;
    } catch (problem) {
      // The name stays, to be changed.
      refused.textContent = problem.message;
      refused.hidden = false;
    }
  }
}

/** Asks for an earlier text of a file; null when there is none or it was left. */
export async function bringBack(file) {
  const { earlier } = await get('earlier', { file });
  if (earlier.length === 0) {
    await dialog('Earlier texts', [element('p', {}, 'None yet: the first is kept when you save over it.')], [['Good', 'yes']]);
    return null;
  }
  const list = element('select', { size: Math.min(8, Math.max(2, earlier.length)), id: 'earlier-list' },
    ...earlier.map((e, i) => element('option', { value: e.name, selected: i === 0 }, new Date(e.time).toLocaleString([], { dateStyle: 'full', timeStyle: 'medium' }))));
  const answer = await dialog('Earlier texts',
    [element('label', { htmlFor: 'earlier-list' }, 'The text as it was until you saved over it at'), list,
      element('p', {}, 'It is put into the page and not saved; Undo takes it away again.')],
    [['Bring it back', 'yes'], ['Leave it', '']]);
  return answer === 'yes' ? (await get('earlier-text', { file, name: list.value })).text : null;
}

/** The text, tidied by the program. */
export const tidy = async (file, text) => (await post('tidy', { file, text })).text;
