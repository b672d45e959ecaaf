// A pointer on the chosen piece: the picture follows at once, and the program is asked for the change when it lets go.
import { drawDistances, drawHold, drawSize } from './holding.js';
import { alongGround, moveAlong, onFace, sizeAlong } from './measures.js';

const nanometres = 1e6;
// Pixels: below this a press is a click, and within that a line is met.
const still = 4;
const reach = 7;
const degreesStep = 5;

export class Dragging {
  #face;
  #page;
  // What is being done since when: `kind` is move, size or turn, `end` the corner or side that is pulled.
  #drag = null;

  /**
   * @param face The picture: `stage`, `root`, `overlay`, and `groupsOf(hold)`, the groups of a piece and of all that goes with it.
   * @param page What it needs of the page: `held` returns the chosen piece, or null until the program has answered; `ready` settles when it
   * has; `done` is called with a change, `refused` with why something cannot be done.
   */
  constructor(face, page) {
    this.#face = face;
    this.#page = page;
    face.stage.addEventListener('pointermove', (event) => this.#move(event));
    face.stage.addEventListener('pointerup', (event) => this.#end(event, this.#drag));
    face.stage.addEventListener('pointercancel', () => this.cancel());
  }

  get isActive() {
    return Boolean(this.#drag?.isMoving);
  }

  begin(event, kind, end) {
    this.#drag = { kind, end, id: event.pointerId, from: [event.clientX, event.clientY], isMoving: false, change: null, hold: null };
    this.#face.stage.setPointerCapture(event.pointerId);
  }

  /** Puts everything back where it was. */
  cancel() {
    this.#drag = null;
    this.settle();
    this.redraw();
  }

  /** Takes the temporary way of the pieces away once the picture shows where they are. */
  settle() {
    for (const group of this.#face.root.querySelectorAll('g[style]')) {
      group.style.translate = '';
      if (!group.getAttribute('style')) group.removeAttribute('style');
    }
  }

  redraw() {
    if (this.isActive) return;
    const hold = this.#page.held();
    if (hold) drawHold(this.#face.overlay, hold, this.#scale());
    else this.#face.overlay.replaceChildren();
  }

  /** Millimetres of the card in a pixel of the screen. */
  #scale() {
    return 1 / (this.#face.overlay.getScreenCTM()?.a || 1);
  }

  /** The distance in which lines are met; with Alt none are. */
  #reach(event) {
    return event.altKey ? 0 : reach * this.#scale() * nanometres;
  }

  #move(event) {
    const drag = this.#drag;
    if (!drag || event.pointerId !== drag.id) return;
    const way = [event.clientX - drag.from[0], event.clientY - drag.from[1]];
    if (!drag.isMoving && Math.hypot(...way) < still) return;
    drag.hold ??= this.#page.held();
    if (!drag.hold) return;
    drag.isMoving = true;
    event.preventDefault();
    const onGround = alongGround(drag.hold.ground, way.map((pixels) => pixels * this.#scale())).map((length) => length * nanometres);
    if (drag.kind === 'turn') this.#turn(event);
    else if (drag.kind === 'size') this.#pull(onGround, event);
    else this.#carry(onGround, event);
  }

  #carry([x, y], event) {
    const { hold } = this.#drag;
    const { overlay } = this.#face;
    const stays = { by: 0, isCentred: false, line: null };
    const across = hold.across.move ? stays : moveAlong(hold, 0, x, y, this.#reach(event));
    const down = hold.down.move ? stays : moveAlong(hold, 1, y, across.by, this.#reach(event));
    const way = onFace(hold.ground, [across.by / nanometres, down.by / nanometres]);
    for (const group of this.#face.groupsOf(hold)) group.style.translate = `${way[0]}px ${way[1]}px`;
    const [a, b, c, d, e, f] = hold.turning;
    drawHold(overlay, { ...hold, turning: [a, b, c, d, e + way[0], f + way[1]] }, this.#scale());
    const block = [hold.block[0] + across.by, hold.block[1] + down.by, hold.block[2], hold.block[3]];
    drawDistances(overlay, hold, block, [across.line, down.line], this.#scale());
    this.#drag.change = { kind: 'move', across: across.by, down: down.by, centredAcross: across.isCentred, centredDown: down.isCentred };
  }

  #pull(way, event) {
    const { hold, end } = this.#drag;
    const { overlay } = this.#face;
    const box = [...hold.box];
    const change = { kind: 'size', held: [] };
    const met = way.map((by, axis) => {
      if (!end[axis]) return null;
      const { size, line } = sizeAlong(hold, axis, end[axis], by, this.#reach(event));
      change[axis ? 'height' : 'width'] = size;
      change.held.push((axis ? ['top', 'bottom'] : ['left', 'right'])[end[axis] > 0 ? 0 : 1]);
      const grown = size - box[axis + 2];
      if (!hold[axis ? 'down' : 'across'].held) box[axis] -= grown / 2;
      else if (end[axis] < 0) box[axis] -= grown;
      box[axis + 2] = size;
      return line;
    });
    drawHold(overlay, hold, this.#scale(), box);
    drawDistances(overlay, hold, hold.block, met, this.#scale());
    drawSize(overlay, hold, box, this.#scale());
    this.#drag.change = change;
  }

  #turn(event) {
    const { hold } = this.#drag;
    const [left, top, width, height] = hold.box.map((length) => length / nanometres);
    const [x, y] = [left + width / 2, top + height / 2];
    const turning = new DOMMatrix(hold.turning);
    const middle = new DOMPoint(x, y).matrixTransform(turning).matrixTransform(this.#face.overlay.getScreenCTM());
    const ground = Math.atan2(hold.ground[1], hold.ground[0]);
    const angle = Math.atan2(event.clientX - middle.x, middle.y - event.clientY) - ground;
    const step = event.altKey ? 1 : degreesStep;
    const degrees = Math.round(((angle * 180 / Math.PI + 540) % 360 - 180) / step) * step;
    const turned = turning.multiply(
      new DOMMatrix().translate(x, y).rotate(degrees - Number(hold.form.turn)).translate(-x, -y));
    drawHold(this.#face.overlay, { ...hold, turning: [turned.a, turned.b, turned.c, turned.d, turned.e, turned.f] }, this.#scale());
    this.#drag.change = { kind: 'turn', text: String(degrees) };
  }

  async #end(event, drag) {
    if (!drag || event.pointerId !== drag.id) return;
    if (!drag.hold) {
      // A quick hand is there before the program has said what it holds.
      await this.#page.ready();
      if (this.#drag !== drag) return;
      this.#move(event);
    }
    this.#drag = null;
    const { change, hold } = drag;
    if (!change) return;
    const stuck = [hold.across.move, hold.down.move].find(Boolean);
    if (change.kind === 'move' && !change.across && !change.down && stuck) this.#page.refused(stuck);
    if (change.kind !== 'move' || change.across || change.down || change.centredAcross || change.centredDown) this.#page.done(change);
    else this.cancel();
  }
}
