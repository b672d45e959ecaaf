// Updates a drawing to match another and leaves untouched what is the same in both,
// so that the browser reads and repaints only the piece of a picture that a keystroke changed, not all of it.
import { markup } from './elements.js';

/**
 * Shows a drawing in place of another.
 * @param root What contains the other.
 * @param before The markup of the other; empty for none. Elements that were added after its own stay there.
 * @param now The markup of the drawing.
 */
export function renew(root, before, now) {
  const [old, wanted] = [partsOf(before), partsOf(now)];
  if (old.start !== wanted.start) {
    root.replaceChildren(markup(`${wanted.start}</svg>`));
    old.parts.clear();
  }
  const svg = root.querySelector('svg');
  const shown = new Map([...old.parts.keys()].map((key, at) => [key, svg.children[at]]));
  shown.forEach((element, key) => { if (!wanted.parts.has(key)) element.remove(); });
  [...wanted.parts].forEach(([key, part], at) => {
    const there = shown.get(key);
    const element = !there ? parsed(part) : part === old.parts.get(key) ? there : matched(there, parsed(part));
    if (svg.children[at] !== element) svg.insertBefore(element, svg.children[at] ?? null);
  });
}

/**
 * The start tag of a drawing, and the elements in its root, each by its tag and id. The program writes one element per line, indented by a
 * blank per level.
 */
function partsOf(svg) {
  const [start, ...elements] = svg.replace(/\s*<\/svg>\s*$/, '').split(/\n (?=<[^/])/);
  const parts = new Map();
  for (const part of elements) {
    let [key] = part.match(/^<\w+( id="[^"]*")?/);
    while (parts.has(key)) key += '+';
    parts.set(key, part);
  }
  return { start, parts };
}

const parsed = (part) => markup(`<svg>${part}</svg>`).firstChild.firstChild;

/** Makes an element match another, which is consumed, and returns what is in its place. */
function matched(there, next) {
  if (there.isEqualNode(next)) return there;
  if (!isKept(there, next)) {
    there.replaceWith(next);
    return next;
  }
  const wanted = [...next.childNodes];
  wanted.forEach((node, at) => {
    if (there.childNodes[at]) matched(there.childNodes[at], node);
    else there.append(node);
  });
  while (there.childNodes.length > wanted.length) there.lastChild.remove();
  return there;
}

// Elements with the same name and attributes that contain others: at most their contents differ.
const isKept = (there, next) => there.nodeName === next.nodeName && next.childElementCount > 0
  && there.cloneNode(false).isEqualNode(next.cloneNode(false));
