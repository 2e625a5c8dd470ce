import { boltRing } from './bolt-ring.ts';
import { edgeBeamStiffness, type EdgeBeamAnswer } from './edge-beam-stiffness.ts';
import { heldPlate } from './held-plate.ts';
import { hingedPlate } from './hinged-plate.ts';
import { inPlanePull } from './in-plane-pull.ts';
import { largeDeflection, type LargeDeflectionAnswer } from './large-deflection.ts';
import type { PlateAnswer } from './plate-answer.ts';
import { plateBuckling } from './plate-buckling.ts';
import { pointSupportedPlate, type PointSupportedAnswer } from './point-supported-plate.ts';
import { slidingPlate, type SlidingAnswer } from './sliding-plate.ts';
import { stripPull, type StripAnswer } from './strip-pull.ts';
import { twoSidedPlate } from './two-sided-plate.ts';
import type { UniformPlate } from './uniform-plate.ts';
import { wallUnderLine } from './wall-under-line.ts';
import { wallCollapseUnderPoint, wallDeflectionUnderPoint } from './wall-under-point.ts';
import { yieldLine } from './yield-line.ts';

/** A step of a check that is no expression: a pure function of plain numbers in SI that gives one number in SI. */
export interface Kernel {
  readonly title: string;
  readonly run: (...args: number[]) => number;
  /** Unit of the result and of each argument, SI, in mathjs words; `1` for a pure number. */
  readonly unit: string;
  readonly argumentUnits: readonly string[];
  /** Names of the arguments, in order, as the doc comments use them. */
  readonly argumentNames: readonly string[];
  readonly source: readonly KernelSource[];
  /** How accurate it is, in words. */
  readonly error: string;
}

/** Where a kernel comes from. `memory` marks a document that was not at hand. */
export interface KernelSource {
  readonly document: string;
  readonly edition?: string;
  readonly clause?: string;
  readonly memory?: boolean;
}

type Arguments = Readonly<Record<string, string>>;

const plate: Arguments = { a: 'm', b: 'm', t: 'm', E: 'Pa', nu: '1', q: 'Pa' };
const strip: Arguments = { a: 'm', t: 'm', E: 'Pa', nu: '1', q: 'Pa' };
const ring: Arguments = { ...plate, nx: '1', ny: '1', insetX: 'm', insetY: 'm', exclusionRadius: 'm' };

const timoshenko = (clause: string): KernelSource[] => [
  { document: 'Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells', edition: '2nd ed.', clause, memory: true },
];
const roark: KernelSource = {
  document: "Roark's Formulas for Stress and Strain",
  edition: '7th ed.',
  clause: 'Table 11.4, case 1a',
};
const johansen: KernelSource[] = [{ document: 'Johansen, Yield-line Theory', edition: '1962', memory: true }];
const beamTables: KernelSource[] = [{ document: 'beam tables, common practice' }];

const asPlate = ([a, b, t, E, nu, q]: readonly number[]): UniformPlate => ({
  a: a!,
  b: b!,
  t: t!,
  E: E!,
  nu: nu!,
  q: q!,
});
const asStrip = ([a, t, E, nu, q]: readonly number[]) => ({ a: a!, t: t!, E: E!, nu: nu!, q: q! });

function kernel(
  title: string,
  takes: Arguments,
  unit: string,
  run: Kernel['run'],
  source: KernelSource[],
  error: string,
): Kernel {
  const names = Object.keys(takes);
  return { title, run, unit, argumentUnits: Object.values(takes), argumentNames: names, source, error };
}

type Readings<Answer> = Readonly<
  Record<string, readonly [title: string, unit: string, read: (answer: Answer) => number]>
>;

/** One entry `name.reading` for each number that a kernel answers. */
function readings<Answer>(
  name: string,
  title: string,
  takes: Arguments,
  answer: (args: readonly number[]) => Answer,
  read: Readings<Answer>,
  source: KernelSource[],
  error: string,
): [string, Kernel][] {
  return Object.entries(read).map(([reading, [what, unit, of]]) => [
    `${name}.${reading}`,
    kernel(`${title}: ${what}`, takes, unit, (...args) => of(answer(args)), source, error),
  ]);
}

const plateReadings: Readings<PlateAnswer> = {
  deflection: ['largest deflection', 'm', (p) => p.deflectionLargest],
  deflectionCentre: ['deflection at the centre', 'm', (p) => p.deflectionCentre],
  moment: ['largest principal moment per width', 'N*m/m', (p) => p.momentLargest],
  momentXCentre: ['moment along x at the centre, per width', 'N*m/m', (p) => p.momentXCentre],
  momentYCentre: ['moment along y at the centre, per width', 'N*m/m', (p) => p.momentYCentre],
  stress: ['largest von Mises stress of bending and twisting', 'Pa', (p) => p.stressLargest],
};
const edgeReaction: Readings<PlateAnswer> = {
  reaction: ['largest edge reaction per length', 'N/m', (p) => p.edgeReactionLargest],
};
const heldEdges: Readings<PlateAnswer> = {
  momentEdge: [
    'largest moment across a held edge, at its middle, per width, as a magnitude',
    'N*m/m',
    (p) => Math.max(Math.abs(p.momentEdgeX), Math.abs(p.momentEdgeY)),
  ],
};
const corner: Readings<PlateAnswer> = { cornerForce: ['force that holds a corner down', 'N', (p) => p.cornerForce] };
const boltReadings: Readings<PointSupportedAnswer> = {
  ...plateReadings,
  boltForce: ['largest force on a bolt, as a magnitude', 'N', (p) => Math.max(...p.reactions.map(Math.abs))],
  boltPush: [
    'largest force of a bolt against q, in the direction of support',
    'N',
    (p) => p.reactions.reduce((most, r) => Math.max(most, r), 0),
  ],
  boltPull: [
    'largest force of a bolt along q, that keeps the plate from lifting',
    'N',
    (p) => p.reactions.reduce((most, r) => Math.max(most, -r), 0),
  ],
  error: ['estimate of the relative error of the largest stress', '1', (p) => p.error],
};
const stripReadings: Readings<StripAnswer> = {
  pull: ['in-plane pull per length', 'N/m', (s) => s.pull],
  moment: ['largest moment per width, as a magnitude', 'N*m/m', (s) => s.momentLargest],
  deflection: ['deflection at the middle', 'm', (s) => s.deflection],
  stress: ['largest stress, membrane and bending', 'Pa', (s) => s.stressLargest],
};
const largeReadings: Readings<LargeDeflectionAnswer> = {
  deflection: ['deflection at the centre', 'm', (p) => p.deflectionCentre],
  membrane: ['membrane stress at the centre', 'Pa', (p) => p.membraneCentre],
  stress: ['largest stress, membrane and bending', 'Pa', (p) => p.stressLargest],
};
const slidingReadings: Readings<SlidingAnswer> = {
  deflection: ['deflection at the centre', 'm', (p) => p.deflection],
  deflectionRatio: ['that over the deflection of the theory of small deflections', '1', (p) => p.ratio],
};
const beamReadings: Readings<EdgeBeamAnswer> = {
  g: ['stiffness of the edge beams over that of the plate, E I / (s D) with s the shorter side', '1', (p) => p.g],
  deflection: ['deflection at the centre', 'm', (p) => p.deflectionCentre],
  moment: ['larger moment at the centre, per width', 'N*m/m', (p) => p.momentCentre],
  deflectionRatio: ['centre deflection over that on edges that do not sink', '1', (p) => p.deflectionAmplification],
  momentRatio: ['centre moment over that on edges that do not sink', '1', (p) => p.momentAmplification],
};

const wall: Arguments = { b: 'm', t: 'm', E: 'Pa', nu: '1' };
const asWall = ([b, t, E, nu]: readonly number[]) => ({ b: b!, t: t!, E: E!, nu: nu! });
const collapse: Arguments = { a: 'm', b: 'm', t: 'm', fy: 'Pa' };
const asCollapse = ([a, b, t, fy]: readonly number[]) => ({ a: a!, b: b!, t: t!, fy: fy! });
const panel: Arguments = { a: 'm', b: 'm', t: 'm', E: 'Pa', nu: '1' };
const asPanel = ([a, b, t, E, nu]: readonly number[]) => ({ a: a!, b: b!, t: t!, E: E!, nu: nu! });

const thin = 'thin plate, small deflections (w below t/2)';
const exact = `below 1e-6 relative (edge reaction 1e-4); ${thin}`;
const ritz = `1e-4 relative on moments; ${thin}`;
const either = ['hinged', 'held'] as const;

/** Every kernel a check may name. Arguments in SI, in the order of `argumentNames`. */
export const kernels: Readonly<Record<string, Kernel>> = Object.fromEntries([
  ...readings(
    'plate.hinged',
    'Plate hinged on four edges',
    plate,
    (args) => hingedPlate(asPlate(args)),
    { ...plateReadings, ...edgeReaction, ...corner },
    [...timoshenko('art. 30, Table 8'), roark],
    exact,
  ),
  ...readings(
    'plate.held',
    'Plate held on four edges',
    plate,
    (args) => heldPlate(asPlate(args)),
    { ...plateReadings, ...edgeReaction, ...heldEdges },
    timoshenko('art. 44, Table 35'),
    ritz,
  ),
  ...either.flatMap((ends) =>
    readings(
      `plate.twoSided.${ends}`,
      `Plate ${ends} at x = 0 and x = a, other edges free`,
      plate,
      (args) => twoSidedPlate(asPlate(args), ends),
      ends === 'held' ? { ...plateReadings, ...heldEdges } : { ...plateReadings, ...edgeReaction },
      timoshenko('art. 48'),
      ends === 'held'
        ? `0.3 % outside corner discs of a twentieth of the shorter side, inside which the moment is unbounded; ${thin}`
        : ritz,
    ),
  ),
  ...readings(
    'plate.bolted',
    'Plate on a ring of bolts, edges free',
    ring,
    (args) => {
      const [nx, ny, insetX, insetY, exclusionRadius] = args.slice(6) as [number, number, number, number, number];
      const of = asPlate(args);
      return pointSupportedPlate(of, { points: boltRing(of, { nx, ny, insetX, insetY }), exclusionRadius });
    },
    boltReadings,
    timoshenko('arts. 51 to 53'),
    `deflections and bolt forces typically 0.1 to 1 %, moments between bolts 0.5 %, on the rims of the excluded discs 10 % (plate.bolted.error estimates it); bolts as rigid points; ${thin}`,
  ),
  ...either.flatMap(
    (edges) =>
      [
        ...readings(
          `stripPull.${edges}`,
          `Strip of a long plate, ${edges} edges that cannot move`,
          strip,
          (args) => stripPull(asStrip(args), edges),
          stripReadings,
          timoshenko('arts. 2 and 3'),
          'exact within the theory of the strip; edges that cannot slide',
        ),
        ...readings(
          `plate.large.${edges}`,
          `Square plate of large deflection, ${edges} edges that cannot move`,
          plate,
          (args) => largeDeflection(asPlate(args), edges),
          largeReadings,
          [{ document: 'Levy, NACA Report', edition: '1942', clause: edges === 'held' ? '740' : '737', memory: true }],
          '0.5 % on deflection, 1 % on stress, at ν = 0.3; squares only',
        ),
        [
          `inPlanePull.${edges}`,
          kernel(
            `In-plane pull of a plate on ${edges} edges that cannot move, per length, upper estimate`,
            plate,
            'N/m',
            (...args) => inPlanePull(asPlate(args), edges),
            timoshenko('arts. 2 and 3'),
            'bounds the pull averaged along an edge; at the middle of the long edge the pull can be 6 % higher',
          ),
        ],
        [
          `yieldLine.${edges}`,
          kernel(
            `Collapse pressure of a plate ${edges} on four edges, by yield lines`,
            collapse,
            'Pa',
            (...args) => yieldLine(asCollapse(args), edges),
            johansen,
            'an upper bound, up to 11 % high on a held square; never a capacity alone',
          ),
        ],
        [
          `wall.line.${edges}.moment`,
          kernel(
            `Tube wall under a line load, corners ${edges}: moment per length`,
            { ...wall, p: 'N/m' },
            'N*m/m',
            (...args) => wallUnderLine(asWall(args), args[4]!, edges).moment,
            beamTables,
            'exact for the strip; the true wall lies between hinged and held',
          ),
        ],
        [
          `wall.line.${edges}.deflection`,
          kernel(
            `Tube wall under a line load, corners ${edges}: deflection`,
            { ...wall, p: 'N/m' },
            'm',
            (...args) => wallUnderLine(asWall(args), args[4]!, edges).deflection,
            beamTables,
            'exact for the strip; the true wall lies between hinged and held',
          ),
        ],
        [
          `wall.point.${edges}.collapse`,
          kernel(
            `Tube wall under a point force, fan with ${edges} rim: collapse force`,
            { t: 'm', fy: 'Pa' },
            'N',
            (t, fy) => wallCollapseUnderPoint({ t, fy }, edges),
            johansen,
            'an upper bound of plastic theory, without punching',
          ),
        ],
        [
          `wall.point.${edges}.deflection`,
          kernel(
            `Tube wall under a point force, corners ${edges}: deflection`,
            { ...wall, P: 'N' },
            'm',
            (...args) => wallDeflectionUnderPoint(asWall(args), args[4]!, edges),
            timoshenko('Tables 23 and 37'),
            '0.3 %; the true wall lies between hinged and held',
          ),
        ],
        ...(['compression', 'shear'] as const).map((load): [string, Kernel] => [
          `plate.buckling.${load}.${edges}`,
          kernel(
            `Buckling stress of a plate in ${load}${load === 'compression' ? ' along a' : ''}, edges ${edges}`,
            panel,
            'Pa',
            (...args) => plateBuckling(asPanel(args), load, edges),
            [
              {
                document: 'Timoshenko & Gere, Theory of Elastic Stability',
                edition: '2nd ed.',
                clause: 'ch. 9',
                memory: true,
              },
            ],
            load === 'shear' ? 'about 1 %; elastic' : edges === 'held' ? 'a lower bound; elastic' : 'exact; elastic',
          ),
        ]),
      ] as [string, Kernel][],
  ),
  ...readings(
    'plate.sliding',
    'Plate of large deflection, hinged on four edges that slide in its plane',
    plate,
    (args) => slidingPlate(asPlate(args)),
    slidingReadings,
    [
      ...timoshenko('art. 102'),
      { document: 'ASTM E1300', edition: '2016', clause: 'app. X1', memory: true },
      { document: 'Levy, NACA Report', edition: '1942', clause: '737', memory: true },
    ],
    '0.1 % up to sides of 1 : 5; small deflections beyond, where sliding edges add up to 2 %',
  ),
  ...readings(
    'plate.onEdgeBeams',
    'Plate on edge beams that sink, corners rigid',
    { ...plate, EI: 'N*m^2' },
    (args) => edgeBeamStiffness({ ...asPlate(args), EI: args[6]! }),
    beamReadings,
    timoshenko('art. 49'),
    `0.1 %; beams without torsion stiffness; ${thin}`,
  ),
]);
