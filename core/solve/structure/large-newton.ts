import type { LargeShell } from '../elements/shell-large.ts';
import { elementProduct } from '../sparse/element-product.ts';
import { Mechanism } from '../sparse/mechanism.ts';
import type { StiffnessSystem } from '../sparse/stiffness-system.ts';
import { contactElement, openElement, opening } from './contact.ts';
import type { ElementStiffness } from './element-stiffness.ts';
import type { Factorise } from './factorise.ts';
import type { ContactPart } from './structure.ts';

/** A panel with what fastens it, on nodes of its own. held: 6n, 1 where the motion is given (tubes, edges). */
export interface LargePart {
  readonly coordinates: Float64Array;
  readonly shells: readonly { readonly nodes: readonly number[]; readonly shell: LargeShell }[];
  readonly ties: readonly ElementStiffness[];
  readonly contacts: readonly ContactPart[];
  readonly held: Uint8Array;
}

export interface LargeAnswer {
  /** Displacements, 6n: those of the last load that was balanced. */
  readonly u: Float64Array;
  /** True where the whole load is balanced to rounding; otherwise the part of it that was. */
  readonly converged: boolean;
  readonly reached: number;
  readonly steps: number;
  readonly iterations: number;
  /** What stopped it: the tangent lost its stiffness (the panel snaps or wrinkles), or Newton’s method did not settle. */
  readonly stopped: 'tangent' | 'rounds' | null;
}

/**
 * Balances a panel that deflects beyond small deflections by Newton's method in load steps: loads f and given motions grow
 * together from nothing; a step that fails is halved, one that went lightly makes the next one twice as long.
 *    K_T Δu = s f - F(u),   u ← u + Δu,   until |s f - F| is rounding beside what cancels in F
 * `near`: an answer that is close, as of a moment ago; it is tried first. Contact opens and closes within the iteration, each point by its own opening. `flat` is taken off the shells' motion
 * before it stretches them: a tilt of the whole panel is no slope of it (von Kármán's strain would take it for one).
 */
export function largeNewton(
  part: LargePart,
  { f, given, flat, steps, near, factorise }: { readonly f: Float64Array; readonly given: Float64Array; readonly flat: Float64Array; readonly steps: number; readonly near?: Float64Array; readonly factorise: Factorise },
): LargeAnswer {
  const { held } = part;
  const withGiven = (own: Float64Array, s: number): Float64Array =>
    own.map((value, i) => (held[i] === 1 ? s * given[i]! : value));
  let [reached, step, done, iterations] = [0, 1 / steps, 0, 0];
  if (near) {
    const u = withGiven(near, 1);
    const { rounds, stopped } = balanced(part, u, 1, f, flat, factorise);
    if (stopped === null) return { u, converged: true, reached: 1, steps: 1, iterations: rounds, stopped };
    iterations += rounds;
  }
  let u: Float64Array = new Float64Array(f.length);
  let stopped: LargeAnswer['stopped'] = null;
  while (reached < 1) {
    const s = Math.min(1, reached + step);
    const v = withGiven(u, s);
    const attempt = balanced(part, v, s, f, flat, factorise);
    iterations += attempt.rounds;
    if (attempt.stopped === null) {
      u = v;
      reached = s > 1 - 1e-12 ? 1 : s;
      done++;
      if (attempt.rounds <= lightly) step *= 2;
    } else {
      step /= 2;
      if (step < leastStep) {
        stopped = attempt.stopped;
        break;
      }
    }
  }
  return { u, converged: stopped === null, reached, steps: done, iterations, stopped };
} // prettier-ignore

const leastStep = 1 / 256;
const mostRounds = 25;
const lightly = 5;
/** Of what cancels at the busiest freedom. */
const balance = 1e-10;

/** Newton's method at one load, on v in place. */
function balanced(
  part: LargePart,
  v: Float64Array,
  s: number,
  f: Float64Array,
  flat: Float64Array,
  factorise: Factorise,
): { readonly rounds: number; readonly stopped: LargeAnswer['stopped'] } {
  const { held, coordinates } = part;
  for (let rounds = 1; rounds <= mostRounds; rounds++) {
    const { force, gross, elements } = largeForces(part, v, flat, s);
    let [rest, scale] = [0, 0];
    const r = new Float64Array(f.length);
    for (let i = 0; i < f.length; i++) {
      scale = Math.max(scale, gross[i]!, Math.abs(s * f[i]!));
      if (held[i] === 1) continue;
      r[i] = s * f[i]! - force[i]!;
      rest = Math.max(rest, Math.abs(r[i]!));
    }
    if (!Number.isFinite(rest)) return { rounds, stopped: 'rounds' };
    try {
      // at balance once more: a state that the next nudge would leave is no answer
      const tangent = factorise({ coordinates, elements, held });
      if (rest <= balance * scale) return { rounds, stopped: null };
      const Δu = tangent.solve(r);
      for (let i = 0; i < v.length; i++) v[i]! += Δu[i]!;
    } catch (error) {
      if (error instanceof Mechanism) return { rounds, stopped: 'tangent' };
      throw error;
    }
  }
  return { rounds: mostRounds, stopped: 'rounds' };
}

/** Internal forces of the part under v with `flat`, grown to the share s, taken off its shells; the sum of what is added up
 *  at each freedom without its sign; and the tangent's elements. */
export function largeForces(
  { shells, ties, contacts }: Omit<LargePart, 'coordinates' | 'held'>,
  v: Float64Array,
  flat: Float64Array,
  s = 1,
): { readonly force: Float64Array; readonly gross: Float64Array; readonly elements: readonly ElementStiffness[] } {
  const force = new Float64Array(v.length);
  const gross = new Float64Array(v.length);
  const elements: ElementStiffness[] = [];
  const add = (nodes: readonly number[], own: ArrayLike<number>): void =>
    nodes.forEach((n, a) => {
      for (let k = 0; k < 6; k++) {
        force[6 * n + k]! += own[6 * a + k]!;
        gross[6 * n + k]! += Math.abs(own[6 * a + k]!);
      }
    });
  const motion = (nodes: readonly number[], less: number): Float64Array => {
    const own = new Float64Array(6 * nodes.length);
    nodes.forEach((n, a) => {
      for (let k = 0; k < 6; k++) own[6 * a + k] = v[6 * n + k]! - less * flat[6 * n + k]!;
    });
    return own;
  };
  for (const { nodes, shell } of shells) {
    const { force: own, tangent } = shell.respond(motion(nodes, s));
    add(nodes, own);
    elements.push({ nodes, stiffness: tangent });
  }
  const linear = (element: ElementStiffness): void => {
    const own = motion(element.nodes, 0);
    const size = own.length;
    const { stiffness } = element;
    add(
      element.nodes,
      own.map((_, i) => own.reduce((sum, value, j) => sum + stiffness[i * size + j]! * value, 0)),
    );
    elements.push(element);
  };
  ties.forEach(linear);
  for (const contact of contacts) {
    if (opening(contact, v) >= 0) {
      elements.push(openElement(contact));
      continue;
    }
    linear(contactElement(contact));
    // the gap's part of the force, k gap along the opening: panel by `side`, tube against it
    const { nodes, offset: [rx, ry], side, gap, stiffness } = contact; // prettier-ignore
    const push = stiffness * gap * side;
    const own = new Float64Array(12);
    [own[2], own[8], own[9], own[10]] = [push, -push, -push * ry, push * rx];
    add(nodes, own);
  }
  return { force, gross, elements };
}

/** K u of linear elements, 6n. */
export const linearForces = (
  coordinates: Float64Array,
  elements: readonly ElementStiffness[],
  u: Float64Array,
): Float64Array => {
  const system: StiffnessSystem = { coordinates, elements, held: new Uint8Array(u.length) };
  return elementProduct(system, u, new Float64Array(u.length));
};
