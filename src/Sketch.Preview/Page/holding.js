// What is drawn over a picture for the chosen piece: its frame, its handles, and the distances while it is moved. Millimetres of the face.
import { spanOf, written } from './measures.js';

const svgName = 'http://www.w3.org/2000/svg';
const nanometres = 1e6;

export function svgElement(name, attributes, text = '') {
  const made = document.createElementNS(svgName, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.textContent = text;
  return made;
}

const inMillimetres = (box) => box.map((length) => length / nanometres);
const matrix = (turning) => `matrix(${turning.join(' ')})`;

/** The ends of a box that can be pulled: -1, 0 or 1 across and down. */
function endsOf(hold) {
  const [across, down] = [!hold.across.size, !hold.down.size];
  return [-1, 0, 1].flatMap((x) => [-1, 0, 1].map((y) => [x, y]))
    .filter(([x, y]) => (x || y) && (across || !x) && (down || !y));
}

/** How a handle points, for the shape of the pointer. */
const pointing = ([x, y]) => (x && y ? (x === y ? 'nwse-resize' : 'nesw-resize') : x ? 'ew-resize' : 'ns-resize');

/**
 * Draws frame and handles of a piece.
 * @param overlay The SVG over the picture.
 * @param scale Millimetres of the card in a pixel of the screen.
 * @param box Its box, in nanometres; that of the hold unless it is being pulled.
 */
export function drawHold(overlay, hold, scale, box = hold.box) {
  const [x, y, width, height] = inMillimetres(box);
  const group = svgElement('g', { transform: matrix(hold.turning) });
  for (const kind of ['frame', 'frame inner']) group.append(svgElement('rect', { class: kind, x, y, width, height }));
  const radius = 6 * scale;
  for (const end of endsOf(hold)) {
    const place = { cx: x + width * (end[0] + 1) / 2, cy: y + height * (end[1] + 1) / 2 };
    // A finger needs more room than the eye.
    const grip = svgElement('circle', { class: 'grip', ...place, r: radius * 2.2 });
    grip.dataset.end = end.join(' ');
    grip.style.cursor = pointing(end);
    group.append(svgElement('circle', { class: 'handle', ...place, r: radius }), grip);
  }
  if (hold.form.turn !== null) {
    const place = { cx: x + width / 2, cy: y - 22 * scale };
    const grip = svgElement('circle', { class: 'grip', ...place, r: radius * 2.2 });
    grip.dataset.turn = 'turn';
    grip.style.cursor = 'grab';
    group.append(
      svgElement('line', { class: 'stem', x1: place.cx, y1: y, x2: place.cx, y2: place.cy }),
      svgElement('circle', { class: 'handle turner', ...place, r: radius }), grip);
  }
  overlay.replaceChildren(group);
}

/** Draws the lines that a piece meets, and its distances from the nearer edges of what it lies on. */
export function drawDistances(overlay, hold, block, met, scale) {
  const group = svgElement('g', { class: 'distances', transform: matrix(hold.ground) });
  const [left, top, width, height] = inMillimetres(hold.reference);
  met.forEach((at, axis) => {
    if (at === null || at === undefined) return;
    const place = at / nanometres;
    group.append(svgElement('line', axis ? { class: 'met', x1: left, x2: left + width, y1: place, y2: place }
      : { class: 'met', y1: top, y2: top + height, x1: place, x2: place }));
  });
  for (const axis of [0, 1]) group.append(...distance(hold, block, axis, scale));
  overlay.append(group);
}

/** The distance from the nearer edge in one direction, as a line with its length. */
function distance(hold, block, axis, scale) {
  const [own, around] = [spanOf(block, axis), spanOf(hold.reference, axis)];
  const isLow = own.low - around.low <= around.high - own.high;
  const [from, to] = isLow ? [around.low, own.low] : [own.high, around.high];
  const beside = spanOf(block, 1 - axis).middle / nanometres;
  const [start, end] = [from / nanometres, to / nanometres];
  const line = svgElement('line', axis ? { class: 'distance', x1: beside, x2: beside, y1: start, y2: end }
    : { class: 'distance', y1: beside, y2: beside, x1: start, x2: end });
  const middle = (start + end) / 2;
  const size = 13 * scale;
  const text = svgElement('text', {
    class: 'length', 'font-size': size, x: axis ? beside + size / 2 : middle, y: axis ? middle + size / 3 : beside - size / 2,
    'text-anchor': axis ? 'start' : 'middle',
  }, written(to - from, hold.isMetric));
  return [line, text];
}

/** Says a size next to the box that is pulled. */
export function drawSize(overlay, hold, box, scale) {
  const [x, y, width, height] = inMillimetres(box);
  const size = 13 * scale;
  overlay.append(svgElement('text', {
    class: 'length', 'font-size': size, 'text-anchor': 'middle', x: x + width / 2, y: y + height + size * 2,
    transform: matrix(hold.turning),
  }, `${written(box[2], hold.isMetric)} x ${written(box[3], hold.isMetric)}`));
}
