// Papers of the shelf: swatches at true scale, put into the roles of a card, and the choice kept as text.
import { moveByArrows } from './arrows.js';
import { button, element, offer } from './elements.js';
import { get, post } from './server.js';
import { makeVariants } from './variants.js';

const picture = (svg) => `data:image/svg+xml;base64,${btoa(String.fromCharCode(...new TextEncoder().encode(svg)))}`;

function swatch(paper, pressed, click) {
  const image = element('img', { className: 'paper', src: picture(paper.svg), alt: '' });
  image.style.width = image.style.height = '1.25in';
  const label = element('span', { className: 'label' }, paper.name, element('small', {}, paper.stock));
  return element('li', {},
    element('button', { type: 'button', className: 'swatch', click, 'aria-pressed': String(pressed) }, image, label));
}

/** The shelf of a stash file: a click on a paper goes to its line. */
export function makeShelf(panel, { asked, goTo }) {
  const list = element('ul', { className: 'swatches' });
  const arrows = moveByArrows(list);
  const reported = element('p', { className: 'empty' });
  panel.append(reported, list);
  return {
    async refresh() {
      const { papers } = await get('shelf', { ...asked(), stash: asked().file });
      reported.textContent = papers.length
        ? 'Each side of each paper, at true size.'
        : 'No paper yet. Write a line such as: paper gulls: 12 x 12, 3 sheets, front waves, back stripes';
      list.replaceChildren(...papers.map((paper) => {
        const item = swatch(paper, false, () => goTo(paper.line));
        item.querySelector('button').removeAttribute('aria-pressed');
        return item;
      }));
      arrows.renewed();
    },
  };
}

/** The papers of a card. */
export function makePapers(panel, { work, asked, chosen, textNow, textKept, report, reportProblem, stashes, stashBegun, copyPicture }) {
  let role = '';
  let age = 0;
  let shelf = { stash: null, age, papers: [] };
  let orders = { file: null, age, found: [] };
  const stash = element('select', { id: 'stash' });
  stash.addEventListener('change', () => { work.stash = stash.value; work.choices.clear(); variants.clear(); chosen(); });
  const roles = element('fieldset', {}, element('legend', {}, 'Choose a role'));
  const rows = element('div', { className: 'choices' });
  roles.append(rows);
  const list = element('ul', { className: 'swatches' });
  const swatchArrows = moveByArrows(list);
  // These are never disabled, which would drop the focus when one of them has done its work.
  const own = button('Reset to the card’s own papers', ifChosen(() => { work.choices.clear(); chosen(); }));
  const keepHere = button('Keep these papers in the card', ifChosen(keepInCard));
  const order = element('select', { id: 'orders' });
  const keepThere = button('Keep them in the batch', ifChosen(keepInBatch));
  const inBatch = element('span', { className: 'check' }, element('label', { htmlFor: 'orders' }, 'or only for '), order, keepThere);
  const variants = makeVariants({ asked, chosen: (choices) => {
    for (const choice of choices) work.choices.set(...choice.split('='));
    chosen();
  } });
  const broken = element('p', { className: 'empty', hidden: true },
    'No paper can be shown: the stash has errors, or holds none. Open it and fix the problems listed there.');
  const none = element('p', { className: 'empty', hidden: true });
  const example = element('code');
  const begin = element('div', { hidden: true },
    element('p', {}, 'This folder has no stash yet. A stash lists the papers on your shelf, so that you can try them here. ',
      'The card names one of them in a role, for example: ', example),
    element('p', {}, button('Begin a stash', () => stashBegun().catch(reportProblem), { className: 'chief' })));
  const trial = element('figure', { className: 'trial' });
  panel.append(
    trial,
    element('div', {},
      element('div', { className: 'choices' }, element('label', { htmlFor: 'stash' }, 'Shelf '), stash), begin, broken, none,
      roles, element('div', { className: 'choices' }, keepHere, inBatch, own), list, variants.part));

  function ifChosen(act) {
    return () => {
      if (work.choices.size > 0) return act();
      return report('No paper is chosen yet: choose a role, then a paper.');
    };
  }

  function showRoles() {
    const all = work.sight?.roles ?? [];
    if (!all.some((r) => r.name === role)) role = all[0]?.name ?? '';
    const focused = rows.contains(document.activeElement) ? document.activeElement.value : null;
    rows.replaceChildren(...all.map((r) => {
      const input = element('input',
        { type: 'radio', name: 'role', value: r.name, checked: r.name === role, onchange: () => { role = r.name; showSwatches(); } });
      if (focused === r.name) queueMicrotask(() => input.focus());
      return element('label', { className: 'check' }, input, ` ${r.name}: ${r.paper}${r.side === 'back' ? ', back' : ''}`);
    }));
    roles.hidden = all.length === 0;
    none.hidden = all.length > 0;
    none.textContent = work.sight?.roles
      ? 'This card has no roles to put papers into. Write a line such as: role sky: navy – and then: of sky.'
      : 'The text has errors. To try papers, first fix the problems listed below the text.';
    for (const control of [own, keepHere, keepThere]) control.ariaDisabled = String(work.choices.size === 0);
  }

  function showSwatches() {
    const current = work.sight?.roles?.find((r) => r.name === role);
    const inUse = work.choices.get(role) ?? (current ? `${current.paper}${current.side === 'back' ? '/back' : ''}` : '');
    const at = [...list.querySelectorAll('button')].indexOf(document.activeElement);
    list.replaceChildren(...shelf.papers.map(
      (paper) => swatch(paper, paper.choice === inUse, () => { work.choices.set(role, paper.choice); chosen(); })));
    list.hidden = !role;
    variants.reportChosen(work.choices);
    swatchArrows.renewed();
    if (at >= 0) list.querySelectorAll('button')[at]?.focus();
  }

  async function keepInCard() {
    const [{ file }, before] = [asked(), textNow()];
    try {
      await chosen();
      const { text } = await post('keep', asked());
      // What was typed meanwhile, or another file, is not written over.
      if (file !== asked().file || before !== textNow()) return;
      work.choices.clear();
      textKept(text);
      report('The papers are now in the text of the card. Save to keep them in the file.');
    } catch (problem) {
      reportProblem(problem);
    }
  }

  async function keepInBatch() {
    const [batch, line] = order.value.split('\n');
    try {
      await chosen();
      await post('keep', { ...asked(), batch, line: Number(line) });
      report(`The papers are kept in ${batch}, for the cards of line ${line}.`);
    } catch (problem) {
      reportProblem(problem);
    }
  }

  /** The lines of batches that make this card; no key that is typed in the card changes them. */
  async function refreshOrders() {
    const { file } = asked();
    if (orders.file === file && orders.age === age) return;
    const asOf = { file, age };
    orders = { ...asOf, found: (await get('orders', asked())).orders };
    offer(order, orders.found.map((o) => [`${o.batch}\n${o.line}`, o.name]));
    inBatch.hidden = orders.found.length === 0;
  }

  return {
    clear() {
      age += 1;
      variants.clear();
    },
    async refresh() {
      begin.hidden = stashes().length > 0;
      example.textContent = `role ${work.sight?.roles?.[0]?.name ?? 'sky'}: waves`;
      offer(stash, [['', 'none: the colours that the card says'], ...stashes().map((s) => [s, s])], work.stash);
      if (shelf.stash !== work.stash || shelf.age !== age) {
        // The file may change again while this answer is on its way; then it is asked for once more.
        const asOf = { stash: work.stash, age };
        shelf = { ...asOf, papers: asOf.stash ? (await get('shelf', { stash: asOf.stash })).papers : [] };
      }
      broken.hidden = !work.stash || shelf.papers.length > 0;
      await refreshOrders();
      showRoles();
      showSwatches();
      copyPicture(trial);
    },
    /** The stash was changed by another window or program. */
    shelfChanged() { age += 1; },
  };
}
