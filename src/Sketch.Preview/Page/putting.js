// Putting something on the card: choose what, then where. The program writes the line; one undo takes it back.
import { moveByArrows } from './arrows.js';
import { dialog } from './dialog.js';
import { button, drawn, element, offer } from './elements.js';
import { get, post } from './server.js';

const capital = (word) => word.charAt(0).toUpperCase() + word.slice(1);

/**
 * A button that puts something on the card, with the question where it goes.
 *
 * @param asked The file and window whose card is shown.
 * @param see Sends the current text.
 * @param sight The last answer of the program about the text.
 * @param textNow The current text.
 * @param chosenLine The line at which the caret is.
 * @param picture The pictures, whose `spotOf` gives the face, the piece and the point of a click.
 * @param apply Applies a change to the text.
 */
export function makePutting(place, { asked, see, sight, textNow, chosenLine, picture, apply, reportProblem }) {
  let kind = null;
  const start = button('Put something on…', () => chooseKind().then(choose).catch(reportProblem));
  const told = element('span');
  const on = element('select', { id: 'put-on' });
  const middle = button('Put it in the middle', () => put({ ...spotChosen() }).catch(reportProblem), { className: 'chief' });
  const where = element('div', { className: 'putting', hidden: true, role: 'group', 'aria-label': 'Where it goes' },
    element('p', { role: 'status' }, told),
    element('span', { className: 'check' }, element('label', { htmlFor: 'put-on' }, 'Put it on '), on), middle,
    button('Cancel', () => stop()));
  place.append(start, where);
  where.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    stop();
  });

  async function choose(wanted) {
    if (!wanted) return;
    kind = wanted;
    // The picture may be clicked before the program has the text.
    const isSeen = see();
    picture.takeClicks((spot) => isSeen.then(() => put(spot)).catch(reportProblem));
    await isSeen;
    if (kind !== wanted) return;
    told.textContent = `Click the picture where the ${kind} goes, or choose what it goes on.`;
    offerGrounds();
    where.hidden = false;
    middle.focus();
  }

  /** Lists the faces and their pieces; the piece at whose line the caret is comes first to mind. */
  function offerGrounds() {
    const grounds = (sight()?.pictures ?? []).flatMap((face) => [
      [`${face.name}\n0`, face.title.split(',')[0]],
      ...onceEach(face.pieces).map((piece) => [`${face.name}\n${piece.line}`, piece.title]),
    ]);
    const line = chosenLine();
    offer(on, grounds, grounds.find(([value]) => value.endsWith(`\n${line}`))?.[0] ?? grounds[0]?.[0]);
  }

  function spotChosen() {
    const [face, line] = on.value.split('\n');
    return { face, line: Number(line) };
  }

  async function put(spot) {
    const [wanted, text] = [kind, textNow()];
    const edit = await post('put', { ...asked(), ...spot, kind: wanted });
    // Edits made in the meantime are not written over.
    if (text !== textNow()) return;
    stop();
    apply(edit);
  }

  function stop() {
    kind = null;
    const hadFocus = where.contains(document.activeElement);
    where.hidden = true;
    picture.takeClicks(null);
    if (hadFocus) start.focus();
  }

  return { choose, stop };
}

/** Asks what to put on; null when cancelled. */
async function chooseKind() {
  const { additions } = await get('additions');
  const box = document.getElementById('ask');
  const list = element('ul', { className: 'starts small', ariaLabel: 'Things to put on' }, ...additions.map(({ kind, svg }) => {
    const made = button('', () => box.close(kind), { className: 'start' });
    made.append(element('img', { src: drawn(svg), alt: '' }), element('span', {}, capital(kind)));
    return element('li', {}, made);
  }));
  moveByArrows(list).renewed();
  return dialog('Put something on', [list], [['Cancel', '']], { isWide: true });
}

/** Copies of a line are listed once. */
const onceEach = (pieces) => pieces.filter((p, at) => p.line > 0 && pieces.findIndex((q) => q.line === p.line) === at);
