import { crossProduct, minus, plus, times, type Vector } from '../vector.ts';
import type { CrossingShape, CrossingWalls } from './crossing-walls.ts';

/**
 * Unit forces at a crossing, in N and N·m, moments counted about the axes' crossing. Right-handed about x (the main tube's
 * axis), y (the cross tube's) and z (up), on the arm at larger x or y. M0 V0 T0 N0: bending, shear, torque and pull that go in
 * at one arm of the main tube and out at the other; M1 V1 T1 N1 likewise of the cross tube (of one arm alone N1 goes over into
 * the main tube). P, D1, D0, I1 go over from the cross tube's arms, in equal parts, into both arms of the main tube: a force up,
 * and moments about x, y and z.
 */
export const crossingCases = ['M0', 'V0', 'T0', 'N0', 'M1', 'V1', 'T1', 'N1', 'P', 'D1', 'D0', 'I1'] as const;
export type CrossingCase = (typeof crossingCases)[number];
export type CrossingForces = Readonly<Record<CrossingCase, number>>;

/** Force and moment on an arm's end, the moment counted about the place where the axes cross in plan, at the arm's own level. */
export interface EndLoad {
  readonly of: 'main' | 'cross';
  readonly way: 1 | -1;
  readonly force: Vector;
  readonly moment: Vector;
}

const zero: Vector = [0, 0, 0];
const forces: Partial<Record<CrossingCase, Vector>> = { N0: [1, 0, 0], V0: [0, 0, 1], V1: [0, 0, 1], N1: [0, 1, 0], P: [0, 0, 1] }; // prettier-ignore
const moments: Partial<Record<CrossingCase, Vector>> = { M0: [0, 1, 0], T0: [1, 0, 0], M1: [1, 0, 0], T1: [0, 1, 0], D1: [1, 0, 0], D0: [0, 1, 0], I1: [0, 0, 1] }; // prettier-ignore
const through0: readonly CrossingCase[] = ['M0', 'V0', 'T0', 'N0'];
const handedOver: readonly CrossingCase[] = ['P', 'D1', 'D0', 'I1'];

/** The loads of one unit case, in balance; none where a tube of one arm has no such case. */
export function endLoads(name: CrossingCase, { arms }: CrossingShape, walls: CrossingWalls): readonly EndLoad[] {
  const [F, M] = [forces[name] ?? zero, moments[name] ?? zero];
  const at = (of: EndLoad['of'], way: 1 | -1, part: number): EndLoad => ({
    of,
    way,
    force: times(F, part),
    moment: times(M, part),
  });
  if (through0.includes(name)) return [at('main', 1, 1), at('main', -1, -1)];
  if (!handedOver.includes(name)) {
    if (arms === 2) return [at('cross', 1, 1), at('cross', -1, -1)];
    return name === 'N1' ? balanced([at('cross', 1, 1)], walls) : [];
  }
  return balanced(arms === 2 ? [at('cross', 1, 1 / 2), at('cross', -1, 1 / 2)] : [at('cross', 1, 1)], walls);
}

/** Adds what the main tube's two ends bring against loads of the cross tube, in equal parts. */
function balanced(given: readonly EndLoad[], { axis }: CrossingWalls): readonly EndLoad[] {
  let [F, M]: [Vector, Vector] = [zero, zero];
  for (const { force, moment } of given) {
    F = plus(F, force);
    M = plus(M, plus(moment, crossProduct([0, 0, axis[1] - axis[0]], force)));
  }
  const half = { of: 'main', force: times(F, -1 / 2), moment: times(M, -1 / 2) } as const;
  return [...given, { ...half, way: 1 }, { ...half, way: -1 }];
}

/** The same moment counted about the arm's own end. */
export const aboutEnd = ({ of, way, force, moment }: EndLoad, { reach }: CrossingWalls): Vector =>
  minus(moment, crossProduct(of === 'main' ? [way * reach[0], 0, 0] : [0, way * reach[1], 0], force));
