// Dragging: a paper onto a piece of a picture, and picture files from outside onto the stash.
const paperKind = 'text/x-sketch-paper';

/** Lets a swatch be dragged. */
export function carries(part, paper) {
  part.draggable = true;
  part.addEventListener('dragstart', (event) => {
    event.dataTransfer.setData(paperKind, paper);
    event.dataTransfer.effectAllowed = 'copy';
  });
}

/**
 * Lets papers be dropped onto pieces.
 * @param pieceAt Returns the piece at an event, or null.
 * @param marked Called with the piece under the paper, and with null when there is none any more.
 * @param dropped Called with a piece and the paper.
 */
export function takePapers(place, { pieceAt, marked, dropped }) {
  let over = null;
  const mark = (piece) => {
    if (piece === over) return;
    over = piece;
    marked(piece);
  };
  place.addEventListener('dragover', (event) => {
    if (!event.dataTransfer.types.includes(paperKind)) return;
    const piece = pieceAt(event);
    if (piece) event.preventDefault();
    mark(piece);
  });
  place.addEventListener('dragleave', () => mark(null));
  place.addEventListener('drop', (event) => {
    const paper = event.dataTransfer.getData(paperKind);
    const piece = pieceAt(event);
    mark(null);
    if (!paper || !piece) return;
    event.preventDefault();
    dropped(piece, paper);
  });
}

/** The piece with a line of its own that an event is on, of pieces whose groups have ids. */
export function pieceIn(event, pieces) {
  return event.composedPath().map((at) => at.id && pieces.find((piece) => piece.id === at.id && piece.line > 0)).find(Boolean) ?? null;
}

/** Keeps the page where files are dropped beside such a place: a browser would show the file instead. */
export function refuseFiles() {
  for (const kind of ['dragover', 'drop']) {
    addEventListener(kind, (event) => {
      if (event.defaultPrevented || !event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      event.dataTransfer.dropEffect = 'none';
    });
  }
}

/** Lets files be dropped; `taken` is called with the first of them. */
export function takeFiles(place, taken) {
  const holdsFiles = (event) => event.dataTransfer.types.includes('Files');
  place.addEventListener('dragover', (event) => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    place.classList.add('over');
  });
  place.addEventListener('dragleave', () => place.classList.remove('over'));
  place.addEventListener('drop', (event) => {
    place.classList.remove('over');
    if (!holdsFiles(event)) return;
    event.preventDefault();
    const [file] = event.dataTransfer.files;
    if (file) taken(file);
  });
}
