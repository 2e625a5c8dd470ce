import { describe, expect, it } from 'vitest';
import { contactToBegin } from '../../core/plate/solve-plate.ts';
import { plateSupports } from '../../core/plate/plate-supports.ts';
import { beam } from '../../core/solve/elements/beam.ts';
import { shellStiffness, shellUnits } from '../../core/solve/elements/shell-stiffness.ts';
import { elementProduct } from '../../core/solve/sparse/element-product.ts';
import { factorise } from '../../core/solve/sparse/factorise.ts';
import { contactFaults, contactForce, contactLoads, withContact } from '../../core/solve/structure/contact.ts';
import type { ElementStiffness } from '../../core/solve/structure/element-stiffness.ts';
import { heldStructure, type HeldAnswer } from '../../core/solve/structure/held-structure.ts';
import { holdFreedoms } from '../../core/solve/structure/hold-freedoms.ts';
import type { Vector } from '../../core/solve/vector.ts';
import { ready, sampleModel, solvedLoading } from './results/support/solved-sample.ts';

/** A rotation without a zero entry: no axis of the plate stays along one of space. */
const Q = [[2 / 3, 1 / 3, -2 / 3], [-2 / 3, 2 / 3, -1 / 3], [1 / 3, 2 / 3, 2 / 3]] as const; // prettier-ignore
const turn = (v: ArrayLike<number>, i = 0): [number, number, number] =>
  Q.map((row) => row[0] * v[i]! + row[1] * v[i + 1]! + row[2] * v[i + 2]!) as [number, number, number];
const back = (v: ArrayLike<number>, i = 0): [number, number, number] =>
  [0, 1, 2].map((c) => Q[0][c]! * v[i]! + Q[1][c]! * v[i + 1]! + Q[2][c]! * v[i + 2]!) as [number, number, number];
const each = (by: typeof turn, v: Float64Array): Float64Array => {
  const out = new Float64Array(v.length);
  for (let i = 0; i < v.length; i += 3) out.set(by(v, i), i);
  return out;
};
const vector = (v: Vector): Vector => turn(v);

/** A matrix whose freedoms come in threes: R K Rᵀ with R the rotation on each. */
function turnedMatrix({ nodes, stiffness }: ElementStiffness): ElementStiffness {
  const n = 6 * nodes.length;
  const half = new Float64Array(n * n);
  const full = new Float64Array(n * n);
  for (let i = 0; i < n; i++) half.set(each(turn, stiffness.slice(i * n, (i + 1) * n)), i * n);
  for (let j = 0; j < n; j++) {
    const column = each(
      turn,
      Float64Array.from({ length: n }, (_, i) => half[i * n + j]!),
    );
    column.forEach((value, i) => (full[i * n + j] = value));
  }
  return { nodes, stiffness: full };
}

describe('a whole plate turned in space', () => {
  const plate = ready(sampleModel('small'), 0.25);
  const { model, structure } = plate;
  const xyz = each(turn, structure.coordinates);

  // Beams and shells are made anew where they stand; springs of ties and contact, which know no axes but the plate's, are turned.
  const beams = structure.beams.map(({ nodes: [a, b], offsets, section }): ElementStiffness => ({
    nodes: [a, b],
    stiffness: beam({
      xyz: Float64Array.from([...xyz.subarray(3 * a, 3 * a + 3), ...xyz.subarray(3 * b, 3 * b + 3)]),
      section,
      E: section.E,
      G: section.G,
      orientation: turn([0, 0, 1]),
      start: { offset: vector(offsets[0]) },
      end: { offset: vector(offsets[1]) },
    }).stiffness,
  })); // prettier-ignore
  const shells = structure.shells.map(({ nodes, E, nu, thickness }): ElementStiffness => ({
    nodes,
    stiffness: shellStiffness(shellUnits(Float64Array.from(nodes.flatMap((n) => [...xyz.subarray(3 * n, 3 * n + 3)])), { E, nu }), thickness), // prettier-ignore
  }));
  const springs = plate.elements.slice(beams.length + shells.length).map(turnedMatrix);
  const elements = [...beams, ...shells, ...springs];
  const masses = plate.masses.map(({ node, offset, mass }) => ({ node, offset: vector(offset), mass }));
  const held = holdFreedoms({ ...structure, coordinates: xyz });

  for (const id of model.loads.situations
    .filter(({ loadCase, supports }) => loadCase === 'service' && supports)
    .map((one) => one.id))
    // prettier-ignore
    it(`gives the same contact, forces and shape: ${id}`, () => {
      const situation = model.loads.situations.find((one) => one.id === id)!;
      const flat = solvedLoading(plate, id);
      const set = situation.supports!;
      const supports = plateSupports(structure, set).map((one) => ({ ...one, offset: vector(one.offset), direction: vector(one.direction) })); // prettier-ignore
      const closed = contactToBegin(plate, situation);
      const contacts = withContact([], structure, new Uint8Array(closed.length).fill(1)).map(turnedMatrix);
      let answer: HeldAnswer;
      let u: Float64Array;
      for (let steps = 1; ; steps++) {
        const system = { coordinates: xyz, elements: [...elements, ...contacts.filter((_, i) => closed[i])], held };
        const { solve } = factorise(system);
        const applied = each(turn, contactLoads(structure, closed).map((value, i) => value + flat.applied[i]!)); // prettier-ignore
        answer = heldStructure({ coordinates: xyz, masses, solve }, applied, supports, situation.present[0]!, set.oneWay); // prettier-ignore
        u = each(back, answer.u);
        const { pulling, overlapping } = contactFaults(structure, closed, u);
        if (pulling.length + overlapping.length === 0) break;
        expect(steps).toBeLessThan(30);
        for (const i of pulling) closed[i] = 0;
        for (const i of overlapping) closed[i] = 1;
      }
      expect(flat.answer.settled).toBe(true);
      expect(closed).toEqual(flat.answer.closed);
      const open = closed.reduce((count, one) => count + (one ? 0 : 1), 0);
      expect(open).toBeGreaterThan(0);
      expect(open).toBeLessThan(closed.length);

      const near = (a: ArrayLike<number>, b: ArrayLike<number>, within = 1e-8): void => {
        const most = Array.from(b).reduce((m, value) => Math.max(m, Math.abs(value)), 0);
        for (let i = 0; i < b.length; i++) expect(Math.abs(a[i]! - b[i]!)).toBeLessThanOrEqual(within * most);
      };
      near(answer.forces, flat.answer.forces);
      near(each(back, answer.loads), flat.answer.loads);
      near(structure.contacts.map((part, i) => (closed[i] ? contactForce(part, u) : 0)), flat.answer.pressing, 1e-7); // prettier-ignore
      // what is left between the two is a rigid motion that nothing resists: it costs no energy
      const system = { coordinates: structure.coordinates, elements: withContact(plate.elements, structure, closed), held }; // prettier-ignore
      const energy = (v: Float64Array): number => {
        const f = elementProduct(system, v, new Float64Array(v.length));
        return v.reduce((sum, value, i) => sum + value * f[i]!, 0);
      };
      const apart = u.map((value, i) => value - flat.answer.u[i]!);
      expect(energy(apart)).toBeLessThan(1e-12 * energy(flat.answer.u));
    });
});
