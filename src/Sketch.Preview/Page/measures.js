// Lengths on the way of a hand, in whole nanometres: what is near enough to line up with, and how it is written.

const inch = 25_400_000;
const millimetre = 1_000_000;

/** A length as on a ruler: sixteenths of an inch, or half millimetres. */
export function written(length, isMetric) {
  if (isMetric) return `${Math.round(length / millimetre * 2) / 2} mm`;
  const sign = length < 0 ? '-' : '';
  const sixteenths = Math.round(Math.abs(length) * 16 / inch);
  const [whole, rest] = [Math.floor(sixteenths / 16), sixteenths % 16];
  let [top, bottom] = [rest, 16];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const fraction = top ? `${top}/${bottom}` : '';
  return `${sign}${whole || !fraction ? whole : ''}${whole && fraction ? ' ' : ''}${fraction} in`;
}

/** One direction of a box: [left, top, width, height] gives where it begins and ends. */
export const spanOf = (box, axis) => ({ low: box[axis], high: box[axis] + box[axis + 2], middle: box[axis] + box[axis + 2] / 2 });

const overlaps = (one, other) => one.low < other.high && other.low < one.high;

/** The positions of edges and middles, each with what is there. */
function lines(hold, axis) {
  const around = spanOf(hold.reference, axis);
  return [
    { at: around.middle, of: 'middle', kind: 'middle' },
    { at: around.low, of: 'low', kind: 'edge' }, { at: around.high, of: 'high', kind: 'edge' },
    ...hold.others.flatMap((box) => {
      const span = spanOf(box, axis);
      return [{ at: span.low, kind: 'edge' }, { at: span.high, kind: 'edge' }, { at: span.middle, kind: 'middle' }];
    }),
  ];
}

/** The places at which the gap to a neighbour equals another gap. */
function equalGaps(hold, axis, moved) {
  const beside = spanOf(moved, 1 - axis);
  const size = moved[axis + 2];
  const row = hold.others.filter((box) => overlaps(spanOf(box, 1 - axis), beside)).map((box) => spanOf(box, axis))
    .sort((a, b) => a.low - b.low);
  return row.slice(1).flatMap((after, i) => {
    const before = row[i];
    const gap = after.low - before.high;
    return gap <= 0 ? [] : [after.high + gap, before.low - gap - size, ...(gap > size ? [before.high + (gap - size) / 2] : [])];
  }).map((low) => ({ low, kind: 'gap' }));
}

/** The nearest of several candidates within reach; null where there is none. */
function nearest(candidates, reach) {
  return candidates.filter((one) => Math.abs(one.off) <= reach)
    .reduce((best, one) => (best && Math.abs(best.off) <= Math.abs(one.off) ? best : one), null);
}

/**
 * How far a piece moves in one direction when a hand moves it by `by`: to the middle, an edge or an equal gap within reach, else so that
 * its distance is on a mark of the ruler.
 * @param axis 0 from left to right, 1 from top to bottom.
 * @param across How far it moves in the other direction.
 * @returns the way in nanometres, whether it comes to the middle of what it lies on, and the line that it meets, or null.
 */
export function moveAlong(hold, axis, by, across, reach) {
  const moved = [...hold.block];
  moved[axis] += by;
  moved[1 - axis] += across;
  const span = spanOf(moved, axis);
  const met = nearest([
    ...lines(hold, axis).flatMap((line) => (line.kind === 'middle' ? [{ line, off: line.at - span.middle }]
      : [{ line, off: line.at - span.low }, { line, off: line.at - span.high }])),
    ...equalGaps(hold, axis, moved).map((gap) => ({ line: gap, off: gap.low - span.low })),
  ], reach);
  if (met) {
    const isCentred = met.line.kind === 'middle' && met.line.of === 'middle';
    return { by: Math.round(by + met.off), isCentred, line: met.line.at ?? null };
  }
  const around = spanOf(hold.reference, axis);
  const isFromEnd = ['right', 'bottom'].includes(hold[axis ? 'down' : 'across'].held);
  const distance = isFromEnd ? around.high - span.high : span.low - around.low;
  const off = Math.round(distance / hold.step) * hold.step - distance;
  return { by: Math.round(by + (isFromEnd ? -off : off)), isCentred: false, line: null };
}

/**
 * The size of a piece in one direction when a hand pulls one of its edges by `by`; from the middle both edges move.
 * @param axis 0 from left to right, 1 from top to bottom.
 * @param end 1 for the right or lower edge, -1 for the other.
 */
export function sizeAlong(hold, axis, end, by, reach) {
  const times = hold[axis ? 'down' : 'across'].held ? 1 : 2;
  const own = hold.box[axis + 2];
  const size = own + by * end * times;
  const edge = end > 0 ? hold.block[axis] + hold.block[axis + 2] + by : hold.block[axis] + by;
  const met = nearest([
    ...lines(hold, axis).filter((line) => line.kind === 'edge')
      .map(({ at }) => ({ size: size + (at - edge) * end * times, off: at - edge, at })),
    ...hold.others.map((box) => ({ size: box[axis + 2], off: (box[axis + 2] - size) / times, at: null })),
  ], reach);
  const wanted = met ? met.size : Math.round(size / hold.step) * hold.step;
  return { size: Math.max(hold.step, Math.round(wanted)), line: met?.at ?? null };
}

/** A way on the face along the directions of what the piece lies on. */
export function alongGround([a, b, c, d], [x, y]) {
  const area = a * d - b * c;
  return [(d * x - c * y) / area, (a * y - b * x) / area];
}

/** A way along those directions on the face. */
export const onFace = ([a, b, c, d], [x, y]) => [a * x + c * y, b * x + d * y];
