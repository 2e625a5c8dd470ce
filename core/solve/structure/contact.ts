import type { ElementStiffness } from './element-stiffness.ts';
import { addPointForce } from './point-force.ts';
import type { ContactPart, Structure } from './structure.ts';

/** How far a point's faces have come apart, m: negative where they overlap by the elastic squeeze of the parts. Its rows:
 *  the panel's uz, and the tube's uz + θx r_y - θy r_x. */
export function opening({ nodes: [panel, tube], offset: [rx, ry], side, gap }: ContactPart, u: Float64Array): number {
  const wall = u[6 * tube + 2]! + u[6 * tube + 3]! * ry - u[6 * tube + 4]! * rx;
  return side * (u[6 * panel + 2]! - wall) + gap;
}

/** Force that presses a closed point together, N. */
export const contactForce = (part: ContactPart, u: Float64Array): number => -part.stiffness * opening(part, u);

/** A closed point as an element: k g gᵀ with g the rows of its opening. A part has one, as long as it lives. */
export const contactElement = (part: ContactPart): ElementStiffness => pairOf(part).closed;

/** An open point: no stiffness, but its place in the pattern, so that one order of elimination serves every contact set. */
export const openElement = (part: ContactPart): ElementStiffness => pairOf(part).open;

interface ContactPair {
  readonly closed: ElementStiffness;
  readonly open: ElementStiffness;
}

const pairs = new WeakMap<ContactPart, ContactPair>();
const nothing = new Float64Array(144);

function pairOf(part: ContactPart): ContactPair {
  const found = pairs.get(part);
  if (found) return found;
  const { nodes, offset: [rx, ry], stiffness } = part; // prettier-ignore
  const g = new Float64Array(12);
  [g[2], g[8], g[9], g[10]] = [1, -1, -ry, rx];
  const k = new Float64Array(144);
  for (let i = 0; i < 12; i++) for (let j = 0; j < 12; j++) k[12 * i + j] = stiffness * g[i]! * g[j]!;
  const made = { closed: { nodes, stiffness: k }, open: { nodes, stiffness: nothing, pattern: k } };
  pairs.set(part, made);
  return made;
}

/** Elements with those of contact behind them, closed or open; open where none is said to be closed. */
export const withContact = (
  elements: readonly ElementStiffness[],
  { contacts }: Pick<Structure, 'contacts'>,
  closed?: Uint8Array,
): ElementStiffness[] => [
  ...elements,
  ...contacts.map((part, i) => (closed?.[i] ? contactElement(part) : openElement(part))),
];

/** Loads, 6N, by which closed points with a gap or a preload push or pull at no displacement: -k gap along the opening. */
export function contactLoads({ contacts, coordinates }: Structure, closed: Uint8Array): Float64Array {
  const f = new Float64Array(2 * coordinates.length);
  contacts.forEach(({ nodes: [panel, tube], offset, side, gap, stiffness }, i) => {
    if (!closed[i] || gap === 0) return;
    const push = -stiffness * gap * side;
    addPointForce(f, panel, [0, 0, 0], [0, 0, push]);
    addPointForce(f, tube, offset, [0, 0, -push]);
  });
  return f;
}

/** What a set of closed points leaves wrong: closed ones that pull, open ones that overlap. All forces and overlaps are
 *  compared with the largest of their kind, so that round-off neither opens nor closes a point. */
export function contactFaults(
  { contacts }: Structure,
  closed: Uint8Array,
  u: Float64Array,
): { readonly pulling: number[]; readonly overlapping: number[] } {
  const force = contacts.map((part) => contactForce(part, u));
  const most = force.reduce((m, value, i) => (closed[i] ? Math.max(m, Math.abs(value)) : m), 0);
  const pulling: number[] = [];
  const overlapping: number[] = [];
  force.forEach((value, i) => {
    if (closed[i] && value < -roundOff * most) pulling.push(i);
    if (!closed[i] && value > roundOff * most) overlapping.push(i);
  });
  return { pulling, overlapping };
}

const roundOff = 1e-9;
