// Updates a tree of elements to match another and leaves untouched what is the same in both,
// so that the browser repaints only the piece of a picture that a keystroke changed, not all of it.

/** Makes the children of one element match those of another, which is consumed. */
export function renew(shown, next) {
  const wanted = [...next.childNodes];
  wanted.forEach((node, at) => {
    const there = shown.childNodes[at];
    if (!there) shown.append(node);
    else if (isKept(there, node)) renew(there, node);
    else if (!there.isEqualNode(node)) there.replaceWith(node);
  });
  while (shown.childNodes.length > wanted.length) shown.lastChild.remove();
}

// Elements with the same name and attributes that contain others: at most their contents differ.
const isKept = (there, node) => there.nodeName === node.nodeName && node.childElementCount > 0
  && there.cloneNode(false).isEqualNode(node.cloneNode(false));
