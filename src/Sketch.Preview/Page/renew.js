// Brings a tree of elements to what another says and leaves alone what is the same in both,
// so that the browser draws anew only the piece of a picture that a key changed, not the whole of it.

/** Makes the children of one element those of another, which is used up. */
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

// Elements of the same name and attributes that hold others: at most what they hold is different.
const isKept = (there, node) => there.nodeName === node.nodeName && node.childElementCount > 0
  && there.cloneNode(false).isEqualNode(node.cloneNode(false));
