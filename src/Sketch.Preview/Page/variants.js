// The card in many papers: a sheet of pictures, to choose one by a click.
import { moveByArrows } from './arrows.js';
import { button, element } from './elements.js';
import { get } from './server.js';

/**
 * @param asked The file and window whose card is shown.
 * @param chosen Called with the papers of the picture that is clicked, as `role=paper`.
 */
export function makeVariants({ asked, chosen }) {
  let isTrying = false;
  const start = button('Show the card in many papers', show);
  const reported = element('p', { className: 'empty', role: 'status' });
  const notes = element('ul', { className: 'tried', ariaLabel: 'What was tried' });
  const list = element('ul', { className: 'swatches' });
  const arrows = moveByArrows(list);
  const choicesOf = new Map();

  async function show() {
    if (isTrying) return;
    isTrying = true;
    // Not disabled, which would lose the focus.
    start.ariaDisabled = 'true';
    reported.textContent = 'Trying papers …';
    const of = asked();
    try {
      const answer = await get('variants', of);
      if (of.file === asked().file) put(answer);
    } catch (problem) {
      clear();
      reported.textContent = problem.message;
    }
    start.ariaDisabled = null;
    isTrying = false;
  }

  function put({ told: sentence, notes: sentences, variants }) {
    clear();
    reported.textContent = sentence.charAt(0).toUpperCase() + sentence.slice(1);
    notes.replaceChildren(...sentences.map((note) => element('li', {}, note)));
    list.replaceChildren(...variants.map((variant) => {
      const image = element('img', { src: `data:image/png;base64,${variant.picture}`, alt: '' });
      const take = element('button',
        { type: 'button', className: 'variant', 'aria-pressed': 'false', click: () => chosen(variant.choices) },
        image, element('span', { className: 'label' }, variant.name));
      choicesOf.set(take, variant.choices.map((c) => c.split('=')));
      return element('li', {}, take);
    }));
    arrows.renewed();
  }

  function clear() {
    choicesOf.clear();
    list.replaceChildren();
    notes.replaceChildren();
    reported.textContent = '';
  }

  return {
    part: element('div', { className: 'variants' }, element('h3', {}, 'The card in many papers'), element('p', {}, start), reported, notes,
      list),
    clear,
    /** Marks the pictures with the papers that are chosen now. */
    reportChosen(choices) {
      for (const [take, own] of choicesOf) take.setAttribute(
        'aria-pressed', String(own.every(([role, paper]) => choices.get(role) === paper)));
    },
  };
}
