// Papers of the stash: swatches at true scale, to assign to the roles of a card.
import { moveByArrows } from './arrows.js';
import { button, drawn, element, offer } from './elements.js';
import { carries, pieceIn, takePapers } from './dropping.js';
import { makeKeeping } from './keeping.js';
import { markPieces } from './face.js';
import { get, post } from './server.js';
import { makeScanning } from './scan.js';
import { makeVariants } from './variants.js';

function swatch(paper, pressed, click) {
  const image = element('img', { className: 'paper', src: drawn(paper.svg), alt: '' });
  image.style.width = image.style.height = '1.25in';
  const label = element('span', { className: 'label' }, paper.name, element('small', {}, paper.stock));
  const made = element('button', { type: 'button', className: 'swatch', click, 'aria-pressed': String(pressed) }, image, label);
  carries(made, paper.choice);
  return element('li', {}, made);
}

/** The papers of a stash file: a click on a paper goes to its line, and a picture that is dropped becomes one. */
export function makeStash(panel, page) {
  const { asked, goTo } = page;
  const list = element('ul', { className: 'swatches' });
  const arrows = moveByArrows(list);
  const reported = element('p', { className: 'empty' });
  panel.append(makeScanning(panel, page), reported, list);
  return {
    async refresh() {
      const { papers } = await get('stash', { ...asked(), stash: asked().file });
      reported.textContent = papers.length
        ? 'Each side of each paper, at true size.'
        : 'No paper yet. Add one in the table, or drop a picture of it above.';
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
export function makePapers(panel, page) {
  const { work, asked, chosen, textNow, textKept, report, reportProblem, stashes, stashBegun, copyPicture, chosenPiece } = page;
  let role = '';
  let [age, loaded] = [0, { stash: null, age: 0, papers: [] }];
  const stash = element('select', { id: 'stash' });
  stash.addEventListener('change', () => { work.stash = stash.value; work.choices.clear(); variants.clear(); chosen(); });
  const roles = makeRoles((name) => { role = name; showSwatches(); });
  const list = element('ul', { className: 'swatches' });
  const swatchArrows = moveByArrows(list);
  const keeping = makeKeeping({ work, asked, chosen, textNow, textKept, report, reportProblem });
  const variants = makeVariants({ asked, chosen: (choices) => {
    for (const choice of choices) work.choices.set(...choice.split('='));
    chosen();
  } });
  const broken = element('p', { className: 'empty', hidden: true },
    'No paper can be shown: the stash has errors or lists no papers. Open it and fix the problems listed there.');
  const beginning = makeBeginning(() => stashBegun().catch(reportProblem));
  const trial = element('figure', { className: 'trial' });
  panel.append(
    trial,
    element('div', {},
      element('div', { className: 'choices' }, element('label', { htmlFor: 'stash' }, 'Stash '), stash), beginning.part, broken,
      roles.none, roles.part, keeping.part, list, variants.part));

  function showSwatches() {
    const current = work.sight?.roles?.find((r) => r.name === role);
    const inUse = work.choices.get(role) ?? (current ? `${current.paper}${current.side === 'back' ? '/back' : ''}` : '');
    const at = [...list.querySelectorAll('button')].indexOf(document.activeElement);
    list.replaceChildren(...loaded.papers.map(
      (paper) => swatch(paper, paper.choice === inUse, () => take(paper.choice))));
    list.hidden = !role;
    variants.reportChosen(work.choices);
    swatchArrows.renewed();
    if (at >= 0) list.querySelectorAll('button')[at]?.focus();
  }

  /** Tries a paper in the role, or writes it into the line of the piece. */
  function take(choice) {
    if (role !== ofPiece) {
      work.choices.set(role, choice);
      return chosen();
    }
    return paint(chosenPiece()?.line ?? 0, choice);
  }

  const paint = makePainting(page);
  // The picture beside the swatches, onto which they can be dropped.
  let copied = null;
  takePapers(trial, {
    pieceAt: (event) => (copied ? pieceIn(event, copied.pieces) : null),
    marked: (piece) => markPieces(copied, piece?.line ?? 0),
    dropped: (piece, paper) => paint(piece.line, paper),
  });

  return {
    clear() {
      age += 1;
      variants.clear();
    },
    async refresh() {
      beginning.refresh(stashes().length > 0, work.sight?.roles?.[0]?.name ?? 'sky');
      offer(stash, [['', 'none: the colours named in the card'], ...stashes().map((s) => [s, s])], work.stash);
      if (loaded.stash !== work.stash || loaded.age !== age) {
        // The file may change again while this answer is on its way; then it is requested again.
        const asOf = { stash: work.stash, age };
        loaded = { ...asOf, papers: asOf.stash ? (await get('stash', { stash: asOf.stash })).papers : [] };
      }
      broken.hidden = !work.stash || loaded.papers.length > 0;
      await keeping.refresh(age);
      const piece = chosenPiece();
      role = roles.refresh(work.sight?.roles && [
        ...work.sight.roles, ...(piece ? [{ name: ofPiece, label: `only this piece: ${piece.title.split(',')[0]}` }] : [])], role);
      showSwatches();
      copied = copyPicture(trial);
    },
    /** Called when the stash was changed by another window or program. */
    stashChanged() { age += 1; },
  };
}

/** A function that writes a paper into the line of a piece. */
function makePainting({ asked, chosen, textNow, applied, reportProblem }) {
  return async (line, paper) => {
    try {
      await chosen();
      const text = textNow();
      const edit = await post('paint', { ...asked(), line, paper });
      if (text === textNow()) applied(edit);
    } catch (problem) {
      reportProblem(problem);
    }
  };
}

/** Stands for the piece at the caret among the roles; no role has such a name. */
const ofPiece = '\n';

/** The roles of a card, with one selected to receive papers, and the reason where there are none. */
function makeRoles(picked) {
  const rows = element('div', { className: 'choices' });
  const part = element('fieldset', {}, element('legend', {}, 'Choose a role, or only the piece at the caret'), rows);
  const none = element('p', { className: 'empty', hidden: true });

  function row({ name, paper, side, label = `${name}: ${paper}${side === 'back' ? ', back' : ''}` }, role) {
    const input = element('input', { type: 'radio', name: 'role', value: name, checked: name === role, onchange: () => picked(name) });
    return element('label', { className: 'check' }, input, ` ${label}`);
  }

  return {
    part,
    none,
    /** Shows the roles, none where the text has errors; returns the selected one: the first where `role` no longer exists. */
    refresh(found, role) {
      const all = found ?? [];
      const current = all.some((r) => r.name === role) ? role : all[0]?.name ?? '';
      const focused = rows.contains(document.activeElement) ? document.activeElement.value : null;
      rows.replaceChildren(...all.map((r) => row(r, current)));
      if (focused !== null) queueMicrotask(() => [...rows.querySelectorAll('input')].find((input) => input.value === focused)?.focus());
      part.hidden = all.length === 0;
      none.hidden = all.length > 0;
      none.textContent = found
        ? 'This card has no roles to put papers into. Write a line such as: role sky: navy – and use it in a piece: of sky.'
        : 'The text has errors. To try papers, first fix the problems listed below the text.';
      return current;
    },
  };
}

/** What is shown for a folder without a stash. */
function makeBeginning(begin) {
  const example = element('code');
  const part = element('div', { hidden: true },
    element('p', {}, 'This folder has no stash yet. A stash lists the papers on your shelf, so that you can try them here. ',
      'To use one of them in a card, name it in a role, for example: ', example),
    element('p', {}, button('Create a stash', begin, { className: 'chief' })));
  return {
    part,
    refresh(hasStash, role) {
      part.hidden = hasStash;
      example.textContent = `role ${role}: waves`;
    },
  };
}
