/** A motion of a flat body as a whole, [w, rx, ry] at a reference point: w up, rx and ry turns about x and y through it,
 *  made comparable by a length: w(x, y) = w + rx (y - y0)/length - ry (x - x0)/length. */
export type RigidMotion = readonly [number, number, number];

export interface RigidFrame {
  readonly x: number;
  readonly y: number;
  readonly length: number;
}

/** What a support freedom (0 w, 1 turn about x, 2 turn about y) at a place feels of the three motions. */
export function feltAt(frame: RigidFrame, freedom: number, x: number, y: number): RigidMotion {
  if (freedom === 0) return [1, (y - frame.y) / frame.length, -(x - frame.x) / frame.length];
  return freedom === 1 ? [0, 1, 0] : [0, 0, 1];
}

/** An orthonormal set that spans the rows; rows that add less than `least` of their length to it are left out. */
export function spanOf(rows: readonly RigidMotion[], least = 1e-8): RigidMotion[] {
  const span: RigidMotion[] = [];
  for (const row of rows) {
    const rest = without(row, span);
    const [left, all] = [Math.hypot(...rest), Math.hypot(...row)];
    if (left > least * all && span.length < 3) span.push(scaled(rest, 1 / left));
  }
  return span;
}

/** The motions, orthonormal, that none of the span feels: those that stay free. */
export function freeMotions(span: readonly RigidMotion[]): RigidMotion[] {
  const free: RigidMotion[] = [];
  const axes: RigidMotion[] = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  while (span.length + free.length < 3) {
    const rests = axes.map((axis) => without(axis, [...span, ...free]));
    const best = rests.reduce((long, rest) => (Math.hypot(...rest) > Math.hypot(...long) + 1e-9 ? rest : long));
    free.push(scaled(best, 1 / Math.hypot(...best)));
  }
  return free;
}

/** A motion in words: sinking as a whole, or turning about a line. */
export function motionInWords(frame: RigidFrame, [w, rx, ry]: RigidMotion): string {
  const turn = Math.hypot(rx, ry);
  if (turn < 1e-6 * Math.abs(w)) return 'move up and down as a whole';
  const away = (-w / turn) * frame.length;
  const [x, y] = [frame.x - (ry / turn) * away, frame.y + (rx / turn) * away].map((value) => tidy(value, frame.length));
  if (Math.abs(ry) < 1e-6 * turn) return `turn about the line y = ${y} m along x`;
  if (Math.abs(rx) < 1e-6 * turn) return `turn about the line x = ${x} m along y`;
  return `turn about the line through x = ${x} m, y = ${y} m in direction (${tidy(rx / turn, 1)}, ${tidy(ry / turn, 1)})`;
}

const tidy = (value: number, scale: number): number =>
  Math.abs(value) < 1e-9 * scale ? 0 : Number(value.toPrecision(4));

const scaled = (motion: RigidMotion, by: number): RigidMotion => [motion[0] * by, motion[1] * by, motion[2] * by];

/** Twice, since once leaves round-off of the part taken away. */
function without(row: RigidMotion, span: readonly RigidMotion[]): RigidMotion {
  let rest = row;
  for (const other of [...span, ...span]) {
    const part = rest[0] * other[0] + rest[1] * other[1] + rest[2] * other[2];
    rest = [rest[0] - part * other[0], rest[1] - part * other[1], rest[2] - part * other[2]];
  }
  return rest;
}
