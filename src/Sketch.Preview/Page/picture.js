// The pictures of the faces of a card, and the size at which they are shown.
import { pieceIn, takePapers } from './dropping.js';
import { element } from './elements.js';
import { listPieces, makeFace, makeHost, markPieces, redraw, reportSize, unmark } from './face.js';

/**
 * @param hand What changes pieces by hand.
 * @param picked Called with the line of a piece that is picked and cannot be changed.
 * @param asked Called when other pictures are needed.
 */
export function makePicture(panel, { hand, picked, asked }) {
  const empty = element('p', { className: 'empty', hidden: true },
    'No picture yet. It appears once the text has a card line, a base and a piece on the front.');
  const stale = element('p', { className: 'before', hidden: true }, 'Before the error');
  const faces = element('div', { className: 'faces', role: 'group', 'aria-label': 'Pictures' });
  const unfolded = element('input', { type: 'checkbox', id: 'unfolded' });
  unfolded.addEventListener('change', asked);
  const choices = element('div', { className: 'choices' },
    ...sizeChoice(faces),
    element('label', { className: 'check' }, unfolded, ' Unfolded, with the score line'));
  panel.append(choices, ...hand.parts, empty, stale, faces, hand.form);
  measureAbove(faces, panel, choices);

  const shown = new Map();
  let marked = 0;
  const takeClicks = makeTaking(faces, shown, unfolded);

  function remove(name) {
    shown.get(name).hand.remove();
    shown.get(name).figure.remove();
    shown.delete(name);
  }

  /** Puts a picture in its place in the row. */
  function place(picture, at, svg, title) {
    if (!shown.has(picture.name)) shown.set(picture.name, faceWithHand(hand, picked));
    const face = shown.get(picture.name);
    if (faces.children[at] !== face.figure) faces.insertBefore(face.figure, faces.children[at] ?? null);
    redraw(face, svg, picture.title);
    Object.assign(face, { stamp: picture.stamp, pieces: picture.pieces, size: picture });
    face.caption.textContent = picture.title;
    face.caption.dataset.card = title;
    listPieces(face, face.picked);
    reportSize(face.figure, picture);
    face.hand.resized(picture, picture.title);
  }

  takeOnFaces(faces, shown, { unmarked: () => refresh(), hand });
  const refresh = () => shown.forEach((face) => markPieces(face, marked));

  return {
    /** Where the tools that change the card go. */
    tools: choices,
    /** The first picture again, for a panel beside it; it has no pieces to pick. */
    copyOfFirst: (figure) => copy(shown.values().next().value, figure, stale),
    isUnfolded: () => unfolded.checked,
    /** Gives the clicks on pictures to a function, as the face, the line of the piece and the point; null picks pieces again. */
    takeClicks,
    known: () => [...shown.values()].map((f) => f.stamp),
    clear() {
      stale.hidden = true;
      marked = 0;
      [...shown.keys()].forEach(remove);
      faces.replaceChildren();
      faces.scrollTo(0, 0);
    },
    show(pictures, title) {
      // While a mistake prevents a picture, the last one stays, greyed out, rather than flickering with every keystroke.
      stale.hidden = Boolean(pictures) || shown.size === 0;
      faces.classList.toggle('stale', !stale.hidden);
      empty.hidden = pictures ? pictures.length > 0 : shown.size > 0;
      if (!pictures) return;
      [...shown.keys()].filter((name) => !pictures.some((p) => p.name === name)).forEach(remove);
      // Read before any is drawn: a picture that the page already has comes without its SVG, and may have been shown as another face.
      const drawn = pictures.map((p) => drawingOf(p, shown));
      pictures.forEach((picture, at) => place(picture, at, drawn[at], title));
      // Framing measures pieces, which makes the browser lay out the page, so it follows when the pictures are on the screen.
      afterFrame(refresh);
    },
    /** Frames the marked pieces again: what is not visible has no size to frame. */
    refresh,
    mark(line) {
      if (line === marked) return;
      marked = line;
      refresh();
    },
  };
}

/** A picture whose pieces can be changed by hand; other things, such as the base, are only picked. */
function faceWithHand(hand, picked) {
  const chosen = (piece) => {
    if (piece.path) hand.choose(face.hand, piece.path).then(() => face.hand.stage.focus());
    else picked(piece.line);
  };
  const face = makeFace(chosen);
  face.picked = chosen;
  face.hand = hand.attach(face);
  return face;
}

/** Shows a face once more in a figure, and returns its root and its pieces; null for none. */
function copy(face, figure, stale) {
  const { host, root } = makeHost();
  root.innerHTML = face?.root.querySelector('svg')?.outerHTML ?? '';
  unmark(root);
  figure.replaceChildren(stale.cloneNode(true), host, face?.caption.cloneNode(true) ?? '');
  if (face) reportSize(figure, face.size);
  figure.classList.toggle('stale', !stale.hidden);
  figure.hidden = !face;
  return face ? { root, pieces: face.pieces } : null;
}

/** A function that gives the clicks on pictures to another, until it is given null. */
function makeTaking(faces, shown, unfolded) {
  let taker = null;
  // Before the hand takes hold of a piece.
  faces.addEventListener('pointerdown', (event) => { if (taker) event.stopPropagation(); }, { capture: true });
  faces.addEventListener('click', (event) => {
    const spot = taker && spotOf(event, shown);
    if (!spot) return;
    event.stopPropagation();
    taker(spot);
  }, { capture: true });
  return (take) => {
    taker = take;
    if (take && unfolded.checked) unfolded.click();
    faces.classList.toggle('placing', Boolean(take));
  };
}

/** Makes pieces of the papers that are dropped onto them. */
function takeOnFaces(faces, shown, { unmarked, hand }) {
  let under = null;
  takePapers(faces, {
    pieceAt(event) {
      under = [...shown.values()].find((face) => event.composedPath().includes(face.root)) ?? under;
      const piece = under && pieceIn(event, under.pieces);
      return piece?.path ? piece : null;
    },
    marked(piece) {
      unmarked();
      if (piece && under) markPieces(under, piece.line);
    },
    dropped: (piece, paper) => hand.paint(under.hand, piece.path, paper),
  });
}

/** Where an event is on a card: the face, the line of the piece on top, and the point in millimetres; null beside the pictures. */
function spotOf(event, shown) {
  const path = event.composedPath();
  const [name, face] = [...shown].find(([, one]) => path.includes(one.root)) ?? [];
  if (!face) return null;
  const piece = path.map((at) => at.id && face.pieces.find((p) => p.id === at.id)).find(Boolean);
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(face.root.querySelector('svg').getScreenCTM().inverse());
  return { face: name, line: Math.max(0, piece?.line ?? 0), x: at.x, y: at.y };
}

/** Runs a function when the next frame is on the screen. */
const afterFrame = (act) => requestAnimationFrame(() => { setTimeout(act); });

/** What to draw of a picture, or null where it is shown already. */
function drawingOf({ name, stamp, svg }, shown) {
  if (svg) return svg;
  if (shown.get(name)?.stamp === stamp) return null;
  return [...shown.values()].find((face) => face.stamp === stamp)?.svg ?? '';
}

/** The choice of the size of the pictures. Where they are not fitted, their pane scrolls, so it takes the focus. */
function sizeChoice(faces) {
  const size = element('select', { id: 'scale' },
    element('option', { value: 'fit' }, 'Fit to window'),
    element('option', { value: '1' }, 'True size'),
    element('option', { value: '2' }, 'Double size'));
  size.addEventListener('change', () => {
    const isFitted = size.value === 'fit';
    faces.classList.toggle('scaled', !isFitted);
    faces.style.setProperty('--scale', isFitted ? 1 : size.value);
    if (isFitted) faces.removeAttribute('tabindex');
    else faces.tabIndex = 0;
    faces.scrollTo(0, 0);
  });
  return [element('label', { htmlFor: 'scale' }, 'Size '), size];
}

/** A fitted picture takes what the window leaves beneath the tabs and choices, which may wrap to several lines. */
function measureAbove(faces, panel, choices) {
  const pane = panel.closest('.shown');
  const measure = () => {
    if (panel.hidden) return;
    const above = faces.getBoundingClientRect().top - pane.getBoundingClientRect().top;
    faces.style.setProperty('--above', `${above}px`);
  };
  const resized = new ResizeObserver(() => requestAnimationFrame(measure));
  resized.observe(choices);
  resized.observe(pane.querySelector('.tabs'));
}
