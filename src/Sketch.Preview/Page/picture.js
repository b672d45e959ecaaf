// The pictures of a card's faces. Each lies in a tree of its own, so that ids of one never meet those of another.
import { button, element, markup } from './elements.js';
import { renew } from './renew.js';

const look = new CSSStyleSheet();
look.replaceSync(`
  :host { display: block; }
  svg { display: block; width: 100%; height: auto; background: #fff; }
  g[id] { cursor: pointer; }
  .marked { fill: none; stroke: #fff; stroke-width: 1.2; pointer-events: none; }
  .marked.inner { stroke: #10243e; stroke-width: .6; stroke-dasharray: 2 1.2; }
`);

// What a browser's paper leaves for a picture and its caption within the margins of page.css, on letter and on A4 alike, in millimetres.
const upright = { width: 186, height: 235 };
const lying = { width: 255, height: 178 };

export function makePicture(panel, { picked, asked }) {
  const shown = new Map();
  let marked = 0;

  const size = element('select', { id: 'scale' },
    element('option', { value: 'fit' }, 'Fit to window'),
    element('option', { value: '1' }, 'True size'),
    element('option', { value: '2' }, 'Double size'));
  size.addEventListener('change', scale);
  const unfolded = element('input', { type: 'checkbox', id: 'unfolded' });
  unfolded.addEventListener('change', asked);
  const faces = element('div', { className: 'faces', role: 'group', 'aria-label': 'Pictures' });
  const empty = element('p', { className: 'empty', hidden: true },
    'No picture yet. It appears once the text has a card line, a base and a piece on the front.');
  const stale = element('p', { className: 'before', hidden: true }, 'Before the error');
  const choices = element('div', { className: 'choices' },
    element('label', { htmlFor: 'scale' }, 'Size '), size,
    element('label', { className: 'check' }, unfolded, ' Unfolded, with the score line'));
  panel.append(choices, empty, stale, faces);

  // Above true size a picture is scrolled, so its pane takes the focus and can be scrolled by keys.
  function scale() {
    const isFitted = size.value === 'fit';
    faces.classList.toggle('scaled', !isFitted);
    faces.style.setProperty('--scale', isFitted ? 1 : size.value);
    if (isFitted) faces.removeAttribute('tabindex');
    else faces.tabIndex = 0;
    faces.scrollTo(0, 0);
  }

  const pane = panel.closest('.shown');

  // A fitted picture takes what the window leaves beneath the tabs and choices, which may go over several lines.
  function measure() {
    if (panel.hidden) return;
    const above = faces.getBoundingClientRect().top - pane.getBoundingClientRect().top;
    faces.style.setProperty('--above', `${above}px`);
  }

  const resized = new ResizeObserver(() => requestAnimationFrame(measure));
  resized.observe(choices);
  resized.observe(pane.querySelector('.tabs'));

  /** Says how large a picture is in truth, in millimetres, for the screen and for print. */
  function reportSize(figure, { width, height }) {
    figure.style.setProperty('--width', `${width}mm`);
    figure.style.setProperty('--ratio', width / height);
    const fits = (page) => width <= page.width && height <= page.height;
    const isBeyond = !fits(upright) && !fits(lying);
    figure.classList.toggle('beyond', isBeyond);
    figure.classList.toggle('lying', isBeyond ? width > height : !fits(upright));
  }

  function make(name) {
    const host = element('div', { className: 'picture' });
    const root = host.attachShadow({ mode: 'open' });
    root.adoptedStyleSheets = [look];
    const caption = element('figcaption');
    const list = element('ol');
    const listed = element('details', { className: 'pieces' }, element('summary', {}, 'Pieces, from the bottom up'), list);
    const figure = element('figure', {}, host, caption, listed);
    const face = { name, root, caption, list, listed, figure, stamp: '', pieces: [], size: null };
    listed.addEventListener('toggle', () => listPieces(face));
    host.addEventListener('click', (event) => {
      for (const at of event.composedPath()) {
        const piece = at.id && face.pieces.find((p) => p.id === at.id);
        if (piece) {
          if (piece.line > 0) picked(piece.line);
          break;
        }
      }
    });
    return face;
  }

  // A closed list is not written anew with every key.
  function listPieces(face) {
    if (!face.listed.open) return;
    face.list.replaceChildren(...face.pieces.map((p) => element('li', {},
      p.line > 0 ? button(p.title, () => picked(p.line), { className: 'link' }) : p.title)));
  }

  /** The box of what is seen of a piece: figures of its paper reach past its outline and are cut off there. */
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

  function mark(face) {
    face.root.querySelectorAll('.marked').forEach((m) => m.remove());
    if (marked < 1) return;
    const svg = face.root.querySelector('svg');
    for (const piece of face.pieces.filter((p) => p.line === marked)) {
      const group = face.root.getElementById(piece.id);
      if (!group) continue;
      // Pieces that are alike are drawn once and used in their places.
      const use = group.querySelector(':scope > use');
      const box = boxOf(use ? face.root.getElementById(use.getAttribute('href').slice(1)) : group);
      const matrix = svg.getScreenCTM().inverse().multiply((use ?? group).getScreenCTM());
      for (const kind of ['marked', 'marked inner']) {
        const frame = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
        for (const key of ['x', 'y', 'width', 'height']) frame.setAttribute(key, box[key]);
        frame.setAttribute('class', kind);
        frame.setAttribute('transform', `matrix(${matrix.a} ${matrix.b} ${matrix.c} ${matrix.d} ${matrix.e} ${matrix.f})`);
        svg.append(frame);
      }
    }
  }

  function redraw(root, svg, title) {
    const next = markup(svg);
    next.querySelector('svg')?.setAttribute('aria-label', title);
    next.querySelectorAll('.marked').forEach((m) => m.remove());
    root.querySelectorAll('.marked').forEach((m) => m.remove());
    renew(root, next);
  }

  return {
    /** The first picture once more, for a panel beside it; it has no pieces to pick. */
    copyOfFirst(figure) {
      const [first] = shown.values();
      const host = element('div', { className: 'picture' });
      const root = host.attachShadow({ mode: 'open' });
      root.adoptedStyleSheets = [look];
      root.innerHTML = first?.root.querySelector('svg')?.outerHTML ?? '';
      root.querySelectorAll('.marked').forEach((m) => m.remove());
      figure.replaceChildren(stale.cloneNode(true), host, first?.caption.cloneNode(true) ?? '');
      if (first) reportSize(figure, first.size);
      figure.classList.toggle('stale', !stale.hidden);
      figure.hidden = !first;
    },
    isUnfolded: () => unfolded.checked,
    known: () => [...shown.values()].map((f) => f.stamp),
    clear() {
      stale.hidden = true;
      marked = 0;
      shown.clear();
      faces.replaceChildren();
      faces.scrollTo(0, 0);
    },
    show(pictures, title) {
      empty.hidden = Boolean(pictures?.length);
      // While a mistake leaves no card, the last picture stays, greyed, rather than jumping away with every key.
      stale.hidden = Boolean(pictures) || shown.size === 0;
      faces.classList.toggle('stale', !stale.hidden);
      if (!pictures) {
        empty.hidden = shown.size > 0;
        return;
      }
      for (const name of [...shown.keys()]) {
        if (!pictures.some((p) => p.name === name)) {
          shown.get(name).figure.remove();
          shown.delete(name);
        }
      }
      // What the page has already comes without its SVG: it may have been shown as another face.
      const had = new Map([...shown.values()].map((f) => [f.stamp, f]));
      const drawn = pictures.map((p) => p.svg ?? (shown.get(p.name)?.stamp === p.stamp ? null : had.get(p.stamp)?.root.innerHTML ?? ''));
      pictures.forEach((picture, at) => {
        let face = shown.get(picture.name);
        if (!face) {
          face = make(picture.name);
          shown.set(picture.name, face);
        }
        if (faces.children[at] !== face.figure) faces.insertBefore(face.figure, faces.children[at] ?? null);
        if (drawn[at] !== null) redraw(face.root, drawn[at], picture.title);
        else face.root.querySelector('svg')?.setAttribute('aria-label', picture.title);
        Object.assign(face, { stamp: picture.stamp, pieces: picture.pieces, size: picture });
        face.caption.textContent = picture.title;
        face.caption.dataset.card = title;
        listPieces(face);
        reportSize(face.figure, picture);
        mark(face);
      });
    },
    /** Frames anew what is marked: what is not in sight has no size to frame. */
    refresh() { shown.forEach(mark); },
    mark(line) {
      if (line === marked) return;
      marked = line;
      shown.forEach(mark);
    },
  };
}
