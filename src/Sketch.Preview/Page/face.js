// One picture, of a face of a card. It has its own shadow tree, so that its ids never clash with those of another picture.
import { button, element } from './elements.js';
import { printedAs } from './printed-size.js';
import { renew } from './renew.js';

const look = new CSSStyleSheet();
look.replaceSync(`
  :host { display: block; }
  svg { display: block; width: 100%; height: auto; background: #fff; }
  g[id] { cursor: pointer; }
  .marked { fill: none; stroke: #fff; stroke-width: 1.2; pointer-events: none; }
  .marked.inner { stroke: #10243e; stroke-width: .6; stroke-dasharray: 2 1.2; }
`);

/** Passes the true size of a picture in millimetres to the style sheet, for the screen and for print. */
export function reportSize(figure, size) {
  figure.style.setProperty('--width', `${size.width}mm`);
  figure.style.setProperty('--ratio', size.width / size.height);
  const { isBeyond, isLying } = printedAs(size);
  figure.classList.toggle('beyond', isBeyond);
  figure.classList.toggle('lying', isLying);
}

/** An element that holds a drawing, and the root of its shadow tree. */
export function makeHost() {
  const host = element('div', { className: 'picture' });
  const root = host.attachShadow({ mode: 'open' });
  root.adoptedStyleSheets = [look];
  return { host, root };
}

export const unmark = (root) => root.querySelectorAll('.marked').forEach((frame) => frame.remove());

/** @param picked Called with a piece that is picked in the list. */
export function makeFace(picked) {
  const { host, root } = makeHost();
  const caption = element('figcaption');
  const list = element('ol');
  const listed = element('details', { className: 'pieces' }, element('summary', {}, 'Pieces, from the bottom up'), list);
  const figure = element('figure', {}, host, caption, listed);
  const face = { host, root, caption, list, listed, figure, svg: '', stamp: '', pieces: [], size: null };
  listed.addEventListener('toggle', () => listPieces(face, picked));
  return face;
}

/** Lists the pieces; a closed list is not rewritten with every keystroke. */
export function listPieces(face, picked) {
  if (!face.listed.open) return;
  face.list.replaceChildren(...face.pieces.map((p) => element('li', {},
    p.line > 0 ? button(p.title, () => picked(p), { className: 'link' }) : p.title)));
}

/** Shows a drawing in place of the previous one; null leaves that unchanged. */
export function redraw(face, svg, title) {
  if (svg !== null) {
    renew(face.root, face.svg, svg);
    face.svg = svg;
  }
  face.root.querySelector('svg')?.setAttribute('aria-label', title);
}

/** Frames the pieces of a line, and no others; line 0 has none. */
export function markPieces({ root, pieces }, line) {
  const frames = line < 1 ? [] : pieces.filter((p) => p.line === line).flatMap((piece) => framesOf(root, piece));
  const shown = [...root.querySelectorAll('.marked')];
  if (frames.length === shown.length && frames.every((frame, at) => frame.isEqualNode(shown[at]))) return;
  unmark(root);
  root.querySelector('svg')?.append(...frames);
}

function framesOf(root, piece) {
  const group = root.getElementById(piece.id);
  if (!group) return [];
  // Identical pieces are drawn once and referenced where they occur.
  const use = group.querySelector(':scope > use');
  const box = boxOf(use ? root.getElementById(use.getAttribute('href').slice(1)) : group);
  return framesAround(box, root.querySelector('svg').getScreenCTM().inverse().multiply((use ?? group).getScreenCTM()));
}

/** The box of the visible part of a piece: the pattern of its paper extends past its outline and is clipped there. */
function boxOf(group) {
  const seen = [...group.querySelectorAll('path, rect, circle, ellipse, polygon, image')].filter((part) => !part.closest('[clip-path]'));
  const boxes = (seen.length ? seen : [group]).map((part) => part.getBBox());
  const [left, top] = [Math.min(...boxes.map((b) => b.x)), Math.min(...boxes.map((b) => b.y))];
  return {
    x: left, y: top,
    width: Math.max(...boxes.map((b) => b.x + b.width)) - left,
    height: Math.max(...boxes.map((b) => b.y + b.height)) - top,
  };
}

/** Two frames on top of each other, so that they are visible on light and on dark papers. */
function framesAround(box, matrix) {
  return ['marked', 'marked inner'].map((kind) => {
    const frame = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
    for (const key of ['x', 'y', 'width', 'height']) frame.setAttribute(key, box[key]);
    frame.setAttribute('class', kind);
    frame.setAttribute('transform', `matrix(${matrix.a} ${matrix.b} ${matrix.c} ${matrix.d} ${matrix.e} ${matrix.f})`);
    return frame;
  });
}
