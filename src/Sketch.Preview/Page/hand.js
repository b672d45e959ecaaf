// Changing a piece by hand: choosing it in a picture, moving, sizing and turning it by pointer or keys. The program writes each change into
// the text; the window takes it as one edit, so one Undo takes it back.
import { Dragging } from './dragging.js';
import { element } from './elements.js';
import { svgElement } from './holding.js';
import { PieceForm } from './piece-form.js';
import { post } from './server.js';

const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const keys = 'Arrow keys move the piece, with Shift further. Control and an arrow key makes it larger or smaller. Tab goes to the next '
  + 'piece, Enter to its form, Delete takes it away, Escape lets go.';

export class Hand {
  #page;
  #form;
  #faces = new Set();
  #spoken = element('p', { className: 'spoken', role: 'status' });
  // The chosen piece: its picture, its path, and what the program knows of it, which is null until it answers.
  #chosen = null;
  // What is being done, one after the other, and the way of arrow keys that wait for it.
  #pending = Promise.resolve();
  #way = null;
  #isDoing = false;
  #looking = null;

  /**
   * @param page What it needs of the page:
   * - `sheet` returns the text and its file, as the program gets them;
   * - `textKept` takes a text as an edit of the window, and settles when its picture is shown;
   * - `marked` is called with the line of the chosen piece, or 0;
   * - `picked` is called with the line of what is clicked but is no piece that can be changed;
   * - `goTo` goes to a line of the text;
   * - `reportProblem` is called with what went wrong.
   */
  constructor(page) {
    this.#page = page;
    this.#form = new PieceForm({
      changed: (change, path) => this.#act(change, path),
      goTo: page.goTo,
      left: () => this.#chosen?.face.stage.focus(),
      letGo: () => this.letGo(),
    });
  }

  /** What stands above the pictures: the keys, for screen readers, and what was done. */
  get parts() {
    return [element('p', { id: 'hand-keys', className: 'keys' }, keys), this.#spoken];
  }

  get form() {
    return this.#form.part;
  }

  choose(face, path) {
    const isSame = this.#chosen?.face === face && this.#chosen.path === path;
    this.#chosen = { face, path, hold: isSame ? this.#chosen.hold : null };
    for (const other of this.#faces) {
      other.stage.classList.toggle('held', other === face);
      if (other !== face) other.overlay.replaceChildren();
    }
    return this.#look().then(() => {
      const hold = this.#chosen?.path === path ? this.#chosen.hold : null;
      if (hold && !isSame) this.#say(`${hold.form.title}. ${this.#form.place}`);
    });
  }

  /** Makes a piece of another paper, as its form does. */
  paint(face, path, paper) {
    this.choose(face, path);
    return this.#act({ kind: 'paper', text: paper }, path);
  }

  letGo() {
    if (!this.#chosen) return;
    this.#chosen = null;
    for (const face of this.#faces) {
      face.stage.classList.remove('held');
      face.drag.redraw();
    }
    this.#form.show(null);
    this.#page.marked(0);
  }

  /** Looks at the chosen piece again after the text has changed. */
  shown() {
    return this.#chosen && !this.#chosen.face.drag.isActive && !this.#isDoing ? this.#look() : null;
  }

  /** Makes the pieces of a picture changeable. */
  attach(picture) {
    const overlay = svgElement('svg', { class: 'overlay', 'aria-hidden': 'true' });
    const stage = element('div', { className: 'stage', tabIndex: 0, role: 'application', 'aria-describedby': 'hand-keys' });
    picture.host.replaceWith(stage);
    stage.append(picture.host, overlay);
    const face = {
      stage, overlay, root: picture.root, pieces: () => picture.pieces,
      groupsOf: (hold) => groupsOf(picture, hold),
      resized({ width, height }, title) {
        overlay.setAttribute('viewBox', `0 0 ${width} ${height}`);
        stage.setAttribute('aria-label', `${title}. Press Enter to choose a piece.`);
      },
      remove: () => { if (this.#chosen?.face === face) this.letGo(); this.#faces.delete(face); },
    };
    face.drag = new Dragging(face, {
      held: () => (this.#chosen?.face === face ? this.#chosen.hold : null),
      ready: () => this.#looking,
      done: (change) => this.#act(change),
      refused: (refusal) => this.#refuse(refusal),
    });
    stage.addEventListener('keydown', (event) => this.#pressed(event, face));
    stage.addEventListener('pointerdown', (event) => this.#taken(event, face));
    stage.addEventListener('dblclick', () => { if (this.#chosen?.hold) this.#page.goTo(this.#chosen.hold.line); });
    // Handles keep their size on the screen.
    new ResizeObserver(() => face.drag.redraw()).observe(stage);
    this.#faces.add(face);
    return face;
  }

  /** Asks what the program knows of the chosen piece. */
  #look() {
    this.#looking = this.#ask();
    return this.#looking;
  }

  async #ask() {
    const mine = this.#chosen;
    if (!mine) return;
    try {
      const hold = await post('hold', { sheet: this.#page.sheet(), piece: mine.path });
      if (this.#chosen !== mine) return;
      mine.hold = hold;
      mine.path = hold.piece;
      mine.face.drag.redraw();
      this.#form.show(hold);
      this.#page.marked(hold.line);
    } catch (problem) {
      if (this.#chosen !== mine) return;
      if (problem.status === 422) this.#say(problem.message);
      else if (problem.status !== 404) this.#page.reportProblem(problem);
      this.letGo();
    }
  }

  #say(sentence) {
    this.#spoken.textContent = sentence;
  }

  #refuse({ reason, offer }) {
    this.#say(reason);
    this.#form.refuse(reason, offer);
  }

  /** Does something to a piece; one after the other, each with the text that the one before left. */
  #act(change, path = null) {
    this.#pending = this.#pending.then(() => this.#do(change, path)).catch(this.#page.reportProblem);
    return this.#pending;
  }

  async #do(change, path) {
    if (!this.#chosen) return;
    this.#isDoing = true;
    try {
      await this.#write(this.#chosen, change, path);
    } finally {
      this.#isDoing = false;
    }
  }

  /** Lets the program write a change into the text, and shows what came of it. */
  async #write(mine, change, path) {
    const asked = this.#page.sheet();
    const answer = await post('hand', { sheet: asked, piece: path ?? mine.path, change })
      .catch((problem) => { mine.face.drag.cancel(); throw problem; });
    const now = this.#page.sheet();
    // What was typed in the meantime takes precedence.
    if (now.file !== asked.file || now.text !== asked.text) {
      mine.face.drag.cancel();
      this.#say('The text was changed at the same time. Try again.');
      return;
    }
    if (answer.text !== asked.text) {
      if (!path) mine.path = answer.piece;
      await this.#page.textKept(answer.text);
    }
    mine.face.drag.settle();
    if (answer.said) this.#say(answer.said);
    this.#form.refuse('', null);
    answer.refusals.forEach((refusal) => this.#refuse(refusal));
    if (this.#chosen !== mine) return;
    if (!mine.path) this.letGo();
    else await this.#look();
  }

  /** Moves or sizes by keys; those pressed while the program is busy are added up. */
  #step(kind, x, y) {
    if (this.#way?.kind === kind) {
      this.#way.x += x;
      this.#way.y += y;
      return;
    }
    const way = { kind, x, y };
    this.#way = way;
    this.#pending = this.#pending.then(() => {
      this.#way = null;
      const hold = this.#chosen?.hold;
      if (!hold) return null;
      return this.#do(kind === 'move' ? { kind, across: way.x, down: way.y } : {
        kind, held: [], width: way.x ? hold.box[2] + way.x : null, height: way.y ? hold.box[3] + way.y : null,
      }, null);
    }).catch(this.#page.reportProblem);
  }

  /** Chooses the next or the previous piece; false at the end, where Tab leaves the picture. */
  #chooseNext(face, by) {
    const all = face.pieces().filter((p) => p.path && p.line > 0 && !/\/(mat\d*|shadow)$/.test(p.path));
    const at = this.#chosen?.face === face ? all.findIndex((p) => p.path === this.#chosen.path) : by > 0 ? -1 : all.length;
    const next = all[at + by];
    if (!next) return false;
    this.choose(face, next.path);
    return true;
  }

  #pressed(event, face) {
    if (event.altKey || event.metaKey) return;
    if (this.#chosen?.face !== face) {
      if ((event.key === 'Enter' || event.key === ' ') && this.#chooseNext(face, 1)) event.preventDefault();
    } else if (this.#does(event, face)) {
      event.preventDefault();
    }
  }

  /** Does what a key says; false where the browser is to do it. */
  #does(event, face) {
    const arrow = arrows[event.key];
    if (arrow) {
      const { hold } = this.#chosen;
      const by = event.shiftKey ? hold?.longStep : hold?.step;
      if (hold) this.#step(event.ctrlKey ? 'size' : 'move', arrow[0] * by, arrow[1] * by);
      return true;
    }
    switch (event.key) {
      case 'Tab':
        if (this.#chooseNext(face, event.shiftKey ? -1 : 1)) return true;
        this.letGo();
        return false;
      case 'Escape':
        if (face.drag.isActive) face.drag.cancel();
        else this.letGo();
        return true;
      case 'Enter':
        this.#form.focus();
        return true;
      case 'Delete':
        this.#act({ kind: 'delete' });
        return true;
      default:
        return false;
    }
  }

  #taken(event, face) {
    if (event.button !== 0) return;
    const path = event.composedPath();
    face.stage.focus({ preventScroll: true });
    const grip = path.find((at) => at.classList?.contains('grip'));
    if (grip) {
      event.preventDefault();
      if (grip.dataset.turn) face.drag.begin(event, 'turn');
      else face.drag.begin(event, 'size', grip.dataset.end.split(' ').map(Number));
      return;
    }
    const piece = path.map((at) => at.id && face.pieces().find((p) => p.id === at.id)).find(Boolean);
    if (!piece?.path || !piece.line) {
      this.letGo();
      if (piece?.line) this.#page.picked(piece.line);
      return;
    }
    const isChosen = this.#chosen?.face === face && isPartOf(piece.path, this.#chosen.path);
    if (!isChosen) this.choose(face, piece.path);
    // A finger that is not yet on the chosen piece may scroll the page.
    if (event.pointerType !== 'touch' || isChosen) {
      event.preventDefault();
      face.drag.begin(event, 'move');
    }
  }
}

/** Whether a path is that of a piece or of one of its mats. */
const isPartOf = (path, piece) =>
  path === piece || (path.startsWith(`${piece}/`) && /^(mat\d*|shadow)$/.test(path.slice(piece.length + 1)));

/** The groups of a piece, of all copies of its line, and of what goes with them. */
function groupsOf({ root, pieces }, hold) {
  const line = pieces.find((p) => p.path === hold.piece)?.line;
  const own = pieces.filter((p) => p.line === line && p.path).map((p) => p.path);
  return pieces.filter((p) => own.some((path) => p.path === path || p.path?.startsWith(`${path}/`)))
    .map((p) => root.getElementById(p.id)).filter(Boolean);
}
