// A photograph or scan becomes a paper of the stash: the program copies the file beside the stash and writes the line.
import { dialog } from './dialog.js';
import { takeFiles } from './dropping.js';
import { button, element } from './elements.js';
import { get, sendFile } from './server.js';

/**
 * A panel onto which pictures are dropped, with a button to choose one.
 * @param asked The stash and the window.
 * @param see Sends the current text.
 * @param textKept Takes a text as an edit of the window, and settles when it is shown.
 * @param report Shows a sentence.
 */
export function makeScanning(panel, { asked, see, textNow, textKept, report, reportProblem }) {
  const input = element('input', { type: 'file', accept: 'image/jpeg,image/png,image/webp', hidden: true, tabIndex: -1 });
  const part = element('div', { className: 'drop' },
    element('p', {}, 'Drop a photograph or scan of a paper here to add it to the stash.'),
    button('Choose a picture…', () => input.click()), input);

  async function take(picture) {
    try {
      await get('scan-allowed', { name: picture.name, bytes: picture.size });
      await see();
      const found = await sendFile('scan-size', { ...asked(), name: picture.name }, picture);
      await ask(picture, found);
    } catch (problem) {
      reportProblem(problem);
    }
  }

  async function ask(picture, found) {
    const form = makeForm(found);
    for (;;) {
      if (await dialog('New paper from a picture', form.parts, [['Add to the stash', 'yes'], ['Cancel', '']]) !== 'yes') return;
      const text = textNow();
      const done = await sendFile('scan', { ...asked(), name: picture.name, ...form.values() }, picture);
      if (!done.refused) {
        // Edits made in the meantime are not written over.
        if (text === textNow()) await textKept(done.text);
        report(done.said);
        return;
      }
      form.refuse(done.refused);
    }
  }

  takeFiles(panel, take);
  input.addEventListener('change', () => {
    const [picture] = input.files;
    input.value = '';
    if (picture) take(picture);
  });
  return part;
}

function makeForm({ name, sheet, width, says }) {
  const field = (id, value, more = {}) => element('input', { id, value, required: true, autocomplete: 'off', spellcheck: false, ...more });
  const fields = {
    paper: field('scan-name', name),
    sheet: field('scan-sheet', sheet),
    width: field('scan-width', width, { required: false, placeholder: 'the whole sheet' }),
    stock: field('scan-stock', '1 sheet'),
  };
  const labels = {
    paper: 'Name of the paper', sheet: 'Size of a sheet', width: 'Width that the picture shows, if less than the sheet',
    stock: 'On hand',
  };
  const refused = element('p', { role: 'alert', className: 'refused', hidden: true });
  return {
    parts: [
      element('p', {}, says, ' It is copied into the folder of the stash.'),
      ...Object.entries(fields).flatMap(([key, input]) => [element('label', { htmlFor: input.id }, labels[key]), input]), refused,
    ],
    values: () => Object.fromEntries(Object.entries(fields).map(([key, input]) => [key, input.value])),
    refuse(reason) {
      refused.textContent = reason;
      refused.hidden = false;
    },
  };
}
