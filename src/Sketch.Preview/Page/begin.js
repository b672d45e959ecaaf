// A new card: its title, a pictured layout, its size and fold; and the samples to look at.
import { moveByArrows } from './arrows.js';
import { dialog } from './dialog.js';
import { button, drawn, element, newId, offer } from './elements.js';
import { get, post } from './server.js';

/**
 * Asks for a new card and creates it; returns the name of its file, or null when cancelled.
 *
 * @param stash The stash in whose papers it is drawn and made; empty for none.
 * @param hasStash Whether the folder has a stash at all; else a sample is offered.
 * @param beside The name of a file in whose folder the card begins.
 */
export async function beginCard({ stash, hasStash, beside }) {
  const form = makeForm(await get('layouts', { stash }), hasStash, async (shelf) => (await get('layouts', { stash, shelf })).layouts);
  for (;;) {
    const answer = await dialog('New card', form.parts,
      [['Create the card', 'yes'], ['Look at samples…', 'samples'], ['Cancel', '']], { isWide: true });
    if (answer === 'samples') {
      const copied = await lookAtSamples();
      if (copied) return copied;
      continue;
    }
    if (answer !== 'yes') return null;
    try {
      return (await post('start', { ...form.chosen(), stash, beside })).file;
    } catch (problem) {
      // What was chosen stays, to be changed.
      form.refuse(problem.message);
    }
  }
}

function makeForm({ layouts }, hasStash, redrawn) {
  const title = element('input', { id: 'new-title', required: true, maxLength: 100, autocomplete: 'off', placeholder: 'Fair winds' });
  const size = element('select', { id: 'new-size' });
  const fold = element('select', { id: 'new-fold' });
  const shelf = element('input', { type: 'checkbox' });
  const refused = element('p', { role: 'alert', hidden: true });
  const pictures = new Map(layouts.map((layout) => [layout.name, element('img', { src: drawn(layout.svg), alt: '' })]));
  let chosen = layouts[0];

  function choose(layout) {
    chosen = layout;
    offer(size, layout.sizes.map((s) => [s.value, s.title]));
    offer(fold, layout.folds.map((f) => [f.value, f.title]));
  }

  const choices = layouts.map((layout) => element('label', { className: 'start' },
    element('input', { type: 'radio', name: 'layout', value: layout.name, checked: layout === chosen, onchange: () => choose(layout) }),
    pictures.get(layout.name), element('span', {}, layout.says)));
  shelf.addEventListener('change', async () => {
    for (const layout of await redrawn(shelf.checked)) pictures.get(layout.name).src = drawn(layout.svg);
  });
  choose(chosen);

  return {
    parts: [
      element('label', { htmlFor: 'new-title' }, 'Title of the card'), title,
      element('fieldset', {}, element('legend', {}, 'Layout'), element('div', { className: 'starts' }, ...choices)),
      element('div', { className: 'choices' },
        element('span', { className: 'check' }, element('label', { htmlFor: 'new-size' }, 'Size, closed'), size),
        element('span', { className: 'check' }, element('label', { htmlFor: 'new-fold' }, 'Fold'), fold)),
      ...(hasStash ? [] : [element('label', { className: 'check' }, shelf,
        ' Start a stash with sample papers, and make the card in them')]),
      refused,
    ],
    chosen: () => ({ layout: chosen.name, title: title.value, size: size.value, fold: fold.value, shelf: shelf.checked }),
    refuse(sentence) {
      refused.textContent = sentence;
      refused.hidden = false;
    },
  };
}

/** Shows the samples; returns the name of the file when one is copied into the folder, else null. */
async function lookAtSamples() {
  const { samples } = await get('samples');
  const shown = element('div', { className: 'sample', hidden: true });
  const list = element('ul', { className: 'starts', ariaLabel: 'Samples' });
  let picked = null;

  async function look(sample, pressed) {
    const { text } = await get('sample', { name: sample.name });
    picked = sample;
    for (const one of list.querySelectorAll('button')) one.setAttribute('aria-pressed', String(one === pressed));
    const name = newId('sample');
    shown.replaceChildren(
      element('h3', { id: name }, sample.title),
      element('img', { src: drawn(sample.svg), alt: `The front of ${sample.title}` }),
      element('pre', { tabIndex: 0, role: 'region', 'aria-labelledby': name }, text));
    shown.hidden = false;
    shown.scrollIntoView({ block: 'nearest' });
  }

  list.append(...samples.map((sample) => {
    const made = button('', () => look(sample, made), { className: 'start', 'aria-pressed': 'false' });
    made.append(element('img', { src: drawn(sample.svg), alt: '' }), element('span', {}, sample.title));
    return element('li', {}, made);
  }));
  moveByArrows(list).renewed();
  const refused = element('p', { role: 'alert', hidden: true });
  for (;;) {
    const answer = await dialog('Samples',
      [element('p', {}, 'Cards of a lighthouse museum. Choose one to read its text. Nothing is written into your folder unless you save '
        + 'a copy.'), list, shown, refused],
      [['Save a copy and open it', 'yes'], ['Back', '']], { isWide: true });
    if (answer !== 'yes') return null;
    try {
      if (picked) return (await post('copy', { sample: picked.name })).file;
      refused.textContent = 'Choose a sample first.';
    } catch (problem) {
      refused.textContent = problem.message;
    }
    refused.hidden = false;
  }
}
