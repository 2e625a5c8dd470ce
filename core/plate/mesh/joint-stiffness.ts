import type { Tube } from '../../geometry/geometry.ts';
import type { Model } from '../../model.ts';
import { roundJointFlexibility, roundJointOutside } from '../../solve/round-joint-flexibility.ts';
import type { JointPart } from '../../solve/structure/structure.ts';

/** Which end of the stated range of the joints’ stiffness; `stated` is the value itself. */
export type JointEnd = 'low' | 'stated' | 'high';

export type JointStiffness = JointPart['stiffness'];

/**
 * Stiffness of a cross tube's joint on a main tube along and about x, y, z (main tubes run along x), N/m and N·m/rad; null
 * where it is rigid. What is not stated has the stiffness of the weld itself, drawn or sheared over its own throat: E and G
 * times its length, with the arms of its lines in turning. Stacked: both flanks of the cross tube over the main tube's
 * width; let in: all round the cross tube.
 */
export function jointStiffness(model: Model, main: Tube, cross: Tube, end: JointEnd): JointStiffness | null {
  const { joints, arrangement } = model.document.grid;
  if (!joints || joints.stiffness === 'rigid') return null;
  const factor = end === 'stated' || !joints.range ? 1 : joints.range[end];
  if (factor === 'rigid') return null;
  const weld = weldOf(main, cross, arrangement);
  const given = joints.stiffness === 'stated' ? stated(joints) : published(main, cross, arrangement);
  if (!given) return null;
  const or = (value: number | undefined, own: number): number => (value === undefined ? own : factor * value);
  const [x, y, z, rx, ry, rz] = weld;
  return [
    x,
    arrangement === 'flush' ? or(given.axial, y) : y,
    arrangement === 'stacked' ? or(given.axial, z) : z,
    or(given.outOfPlane, rx),
    or(given.twist, ry),
    or(given.inPlane, rz),
  ];
}

interface Given {
  readonly inPlane: number;
  readonly outOfPlane: number;
  readonly axial?: number | undefined;
  readonly twist?: number | undefined;
}

type Joints = NonNullable<Model['document']['grid']['joints']>;
type Arrangement = Model['document']['grid']['arrangement'];

const stated = ({ inPlane, outOfPlane, axial, twist }: Joints): Given => ({
  inPlane: inPlane!.si,
  outOfPlane: outOfPlane!.si,
  axial: axial?.si,
  twist: twist?.si,
});

function published(main: Tube, cross: Tube, arrangement: Arrangement): Given | null {
  if (whyUnpublished(main, cross, arrangement)) return null;
  const { inPlane, outOfPlane, axial } = roundJointFlexibility({
    D: main.section.width,
    T: main.section.wall,
    d: cross.section.width,
    t: cross.section.wall,
    E: main.material.youngModulus,
  });
  return { inPlane: 1 / inPlane, outOfPlane: 1 / outOfPlane, axial: 1 / axial };
}

/** Why no published formula of ours gives a joint's stiffness; undefined where one does. */
function whyUnpublished(
  { section: main }: Tube,
  { section: cross }: Tube,
  arrangement: Arrangement,
): string | undefined {
  if (arrangement === 'stacked') return 'no published formula covers a tube that runs through on top of another';
  if (main.shape !== 'round' || cross.shape !== 'round')
    return 'for walls that are flat no formula was at hand in print';
  return roundJointOutside({ D: main.width, T: main.wall, d: cross.width });
}

/** What a reader must know of the joints, one sentence each. */
export function jointCautions(model: Model): string[] {
  const { joints, arrangement } = model.document.grid;
  if (!joints || joints.stiffness === 'rigid')
    return [
      'Joints of tube on tube are rigid: the plate is stiffer than it is, and tubes share loads more than they do.',
    ];
  const range = joints.range
    ? [`The joints’ stiffness is uncertain: the plate is solved with ${joints.range.low} and ${joints.range.high === 'rigid' ? 'rigid joints' : `${joints.range.high}`} times it (${joints.range.source}).`] // prettier-ignore
    : ['No range of the joints’ stiffness is stated: results are for one value of it.'];
  if (joints.stiffness === 'stated') return [`Joints give way as stated (${joints.source}).`, ...range];
  const why = new Set(
    model.geometry.crossings.flatMap(({ main, cross }) => {
      const reason = whyUnpublished(model.tubes.get(main)!, model.tubes.get(cross)!, arrangement);
      return reason ? [reason] : [];
    }),
  );
  return [
    'Joints of round tubes give way by Buitrago, Healy and Chang (1993), from memory.',
    ...[...why].map((reason) => `Joints are rigid where ${reason}.`),
    ...range,
  ];
}

/** The welds' own stiffness, from their lines as the outer sizes of the tubes draw them. */
function weldOf(main: Tube, cross: Tube, arrangement: Arrangement): JointStiffness {
  const { youngModulus: E, poisson } = cross.material;
  const G = E / (2 * (1 + poisson));
  const { width: b, height: h } = cross.section;
  if (arrangement === 'stacked') {
    const l = main.section.width;
    const [xx, yy] = [2 * l * (b / 2) ** 2, (2 * l ** 3) / 12];
    return [2 * G * l, 2 * G * l, 2 * E * l, E * yy, E * xx, G * (xx + yy)];
  }
  const l = 2 * (b + h);
  const [xx, zz] = [2 * h * (b / 2) ** 2 + (2 * b ** 3) / 12, 2 * b * (h / 2) ** 2 + (2 * h ** 3) / 12];
  return [G * l, E * l, G * l, E * zz, G * (xx + zz), E * xx];
}
