import type { Kernel } from '../solve/kernels.ts';
import { clampedStiffness } from './clamped-stiffness.ts';
import { largeSquareWithin } from './large-square-within.ts';
import { rowLostCoefficient } from './row-lost-coefficient.ts';
import { rowLostInPlane } from './row-lost-in-plane.ts';
import { rowLostEdgeMoment, rowLostReaction, rowLostStress } from './row-lost-plate.ts';
import { rowLostTension } from './row-lost-tension.ts';
import { weldGroupLength } from './weld-group-length.ts';
import { sideLostAcross, sideLostInPlane, sideLostLength, type WeldedSides } from './weld-side-lost.ts';

type Arguments = Readonly<Record<string, string>>;

const plate: Arguments = { a: 'm', b: 'm', t: 'm', E: 'Pa', nu: '1', q: 'Pa' };
const rows: Arguments = { nx: '1', ny: '1' };
const overhang: Arguments = { ix: 'm', iy: 'm' };

const timoshenko = (clause: string): Kernel['source'] => [
  { document: 'Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells', edition: '2nd ed.', clause, memory: true },
];
const elasticGroup: Kernel['source'] = [
  { document: 'Shigley, Mechanical Engineering Design', clause: 'joints with eccentric loading', memory: true },
];

const weldedSides: Arguments = { a: 'm', b: 'm', lx: 'm', ly: 'm', nx: '1', ny: '1', rx: 'm', ry: 'm' };
const sidesOf = ([a, b, lx, ly, nx, ny, rx, ry]: readonly number[]): WeldedSides => ({
  ...{ a: a!, b: b!, lx: lx!, ly: ly!, nx: nx!, ny: ny!, rx: rx!, ry: ry! },
});
const elasticWelds = (clause: string): Kernel['source'] => [
  { document: 'Shigley, Mechanical Engineering Design', clause, memory: true },
];
const centreOfWelds: Kernel['source'] = [
  { document: 'AISC 360', edition: '2016', clause: 'J2.4, deformations of fillet welds', memory: true },
  { document: 'AISC Manual', clause: 'Part 8, tables of C (read for two parallel runs)' },
];

function kernel(
  title: string,
  takes: Arguments,
  unit: string,
  source: Kernel['source'],
  error: string,
  run: (...args: number[]) => number,
): Kernel {
  return { title, run, unit, argumentUnits: Object.values(takes), argumentNames: Object.keys(takes), source, error };
}

/** Every kernel of fixings that a check may name. Arguments in SI, in the order of `argumentNames`. */
export const fixingKernels: Readonly<Record<string, Kernel>> = {
  'plate.largeSquareWithin': kernel(
    'Square of the shorter side, held on edges that cannot move: lower bound of the deflection',
    plate,
    'm',
    [{ document: 'Levy, NACA Report', edition: '1942', clause: '740', memory: true }],
    'a lower bound, zero where the curve of large deflections is not tabled',
    (...[a, b, t, E, nu, q]) => largeSquareWithin({ a: a!, b: b!, t: t!, E: E!, nu: nu!, q: q! }),
  ),
  'bolts.rowLost.group': kernel(
    'Bolts with one row lost: largest tension, elastic group',
    { a: 'm', b: 'm', ...rows, ...overhang, q: 'Pa' },
    'N',
    elasticGroup,
    'exact for a rigid plate; a thin plate puts more on the bolts beside the gap, see bolts.rowLost.plate',
    (...[a, b, nx, ny, ix, iy, q]) => rowLostTension({ a: a!, b: b!, nx: nx!, ny: ny! }, { q: q!, ix: ix!, iy: iy! }),
  ),
  'bolts.rowLost.plate': kernel(
    'Bolts with one row lost: largest tension, plate bending between them',
    { ...plate, ...rows, ...overhang },
    'N',
    timoshenko('arts. 51 to 53'),
    '0.5 %; bolts as rigid points; thin plate, small deflections',
    (...[a, b, t, E, nu, q, nx, ny, ix, iy]) =>
      rowLostReaction({ a: a!, b: b!, t: t!, E: E!, nu: nu!, q: q!, nx: nx!, ny: ny!, ix: ix!, iy: iy! }),
  ),
  'bolts.rowLost.stress': kernel(
    'Bolts with one row lost: largest stress of the plate bending between those that are left',
    { ...plate, ...rows, ...overhang, exclusionRadius: 'm' },
    'Pa',
    timoshenko('arts. 51 to 53'),
    '0.5 % between bolts, 10 % on the rims of the excluded discs; bolts as rigid points; thin plate, small deflections',
    (...[a, b, t, E, nu, q, nx, ny, ix, iy, exclusionRadius]) =>
      rowLostStress({
        ...{ a: a!, b: b!, t: t!, E: E!, nu: nu!, q: q!, nx: nx!, ny: ny!, ix: ix!, iy: iy! },
        exclusionRadius: exclusionRadius!,
      }),
  ),
  'bolts.rowLost.edgeMoment': kernel(
    'Plate with three edges held and one free: largest moment across the middle of an edge, per width',
    plate,
    'N*m/m',
    timoshenko('art. 48'),
    '0.5 % at the middle; larger moments near the ends of the free edge, over a short length',
    (...[a, b, t, E, nu, q]) => rowLostEdgeMoment({ a: a!, b: b!, t: t!, E: E!, nu: nu!, q: q! }),
  ),
  'bolts.rowLost.inPlane': kernel(
    'Bolts with one row lost: largest shear of a weight that hangs in the plane at the centre',
    { a: 'm', b: 'm', ...rows, W: 'N' },
    'N',
    elasticGroup,
    'exact for a rigid plate on equal bolts',
    (...[a, b, nx, ny, W]) => rowLostInPlane({ a: a!, b: b!, nx: nx!, ny: ny! }, W!),
  ),
  'bolts.rowLost.coefficient': kernel(
    'Bolts with one row lost: number of bolts that the rest is worth under a weight in the plane at the centre',
    { a: 'm', b: 'm', ...rows },
    '1',
    [
      { document: 'Crawford and Kulak, Eccentrically loaded bolted connections', edition: '1971', memory: true },
      { document: 'AISC Manual', clause: 'Part 7, instantaneous centre of rotation', memory: true },
    ],
    '1e-6 of equilibrium; the bolt law is that of tests on bolts of 3/4 in',
    (...[a, b, nx, ny]) => rowLostCoefficient({ a: a!, b: b!, nx: nx!, ny: ny! }),
  ),
  'bolts.clampedStiffness': kernel(
    'Stiffness of two plates clamped by a bolt, frusta of 30 degrees from washer and nut',
    { t: 'm', E: 'Pa', tw: 'm', Ew: 'Pa', D: 'm', d: 'm' },
    'N/m',
    [{ document: 'Shigley, Mechanical Engineering Design', clause: 'joints: member stiffness', memory: true }],
    'no free edge within the frustum; the wall as if it were backed',
    (...[t, E, tw, Ew, D, d]) => clampedStiffness([{ l: t!, E: E! }, { l: tw!, E: Ew! }], { D: D!, d: d! }), // prettier-ignore
  ),
  'welds.sideLost.inPlane': kernel(
    'Weld with one side lost: largest force per length of a weight that hangs in the plane at the middle',
    { ...weldedSides, W: 'N' },
    'N/m',
    elasticWelds('welded joints in torsion'),
    'exact for a rigid panel on an equal weld',
    (...args) => sideLostInPlane(sidesOf(args), args[8]!),
  ),
  'welds.sideLost.across': kernel(
    'Weld with one side lost: largest force per length of a weight square to the plane at the middle',
    { ...weldedSides, W: 'N' },
    'N/m',
    elasticWelds('welded joints in bending'),
    'exact for a rigid panel on an equal weld',
    (...args) => sideLostAcross(sidesOf(args), args[8]!),
  ),
  'welds.sideLost.length': kernel(
    'Weld with one side lost: length that the rest is worth under a weight in the plane at the middle, by the instantaneous centre',
    { ...weldedSides, rise: '1' },
    'm',
    centreOfWelds,
    '0.2 % against the tables of C',
    (...args) => sideLostLength(sidesOf(args), args[8]!),
  ),
  'welds.foot.length': kernel(
    'Straight weld under a pull off it and along it at a height above it: length that it is worth, by the instantaneous centre',
    { l: 'm', h: 'm', Fz: 'N', Fl: 'N', rise: '1' },
    'm',
    centreOfWelds,
    '0.2 % against the tables of C; taken for a load square to the face as the tables do',
    (...[l, h, Fz, Fl, rise]) =>
      weldGroupLength([[[-l! / 2, 0], [l! / 2, 0]]], { direction: [Fl!, Fz!], at: [0, h!] }, rise!), // prettier-ignore
  ),
};
