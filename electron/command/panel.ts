import type { Kind } from '../../core/quantity/kinds.ts';
import { printedUnit, quantityText } from '../../core/quantity/format-quantity.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { panelByElements, type EdgeSupport, type PanelAnswer } from '../../core/solve/panel-by-elements.ts';
import { heldPlate } from '../../core/solve/held-plate.ts';
import { hingedPlate } from '../../core/solve/hinged-plate.ts';
import { pointSupportedPlate } from '../../core/solve/point-supported-plate.ts';
import type { PlateAnswer } from '../../core/solve/plate-answer.ts';
import { twoSidedPlate } from '../../core/solve/two-sided-plate.ts';
import type { UniformPlate } from '../../core/solve/uniform-plate.ts';
import { exit } from './terminal.ts';
import { optionsOf } from './options-of.ts';
import { positiveOption, quantityOption } from './quantity-option.ts';
import type { Verb } from './verbs.ts';

const usage =
  'panel --size AxB --thickness T --young E --poisson NU --pressure Q --support KIND [--washer D] [--yield FY] [--solver] [--json]';
const options = {
  size: { type: 'string' },
  thickness: { type: 'string' },
  young: { type: 'string' },
  poisson: { type: 'string' },
  yield: { type: 'string' },
  pressure: { type: 'string' },
  support: { type: 'string' },
  washer: { type: 'string' },
  solver: { type: 'boolean' },
  json: { type: 'boolean' },
} as const;

/** One panel by itself, without a document: for a quick look, or to hold against a handbook. */
export const panelVerb: Verb = {
  usage,
  purpose: 'bends one panel by itself, for a quick look or to compare with a handbook',
  help: [
    '  --size 600mmx900mm     first size along x, second along y; any unit of length',
    '  --thickness 6mm        --young 210GPa    --poisson 0.3    --pressure 5kPa',
    '  --support hinged       all four edges hinged;  held: all four clamped',
    '            two-sides    the edges at the ends of x hinged, the other two free',
    '            corners      on its four corners only',
    '            points:"-250mm,-400mm;250mm,-400mm;0mm,400mm"   on points, counted from the centre',
    '            resting      edges bear on a rigid frame and may lift off it (with --solver)',
    '  --solver               also bends it by finite elements: lines that begin with “solver”, with an error of their own',
    '  --washer 30mm          moments are read outside discs of this diameter round points; 4 thicknesses by default',
    '  --yield 355MPa         also says at what pressure the panel first yields',
    '  --json                 one object with everything, SI (schema stillplate-result/1)',
    '',
    'Moments are for a unit width; moment.x bends strips along x. stress.largest is the largest principal bending stress;',
    'stress.vonMises takes the twist into account and can be larger at a hinged corner. Thin plate, small deflection.',
    '',
    'Example: stillplate panel --size 600mmx900mm --thickness 6mm --young 210GPa --poisson 0.3 --pressure 5kPa --support hinged',
  ].join('\n'),
  run: async (args, on) => {
    const { values } = optionsOf(withNegativeValues(args), options, usage, 0);
    const read = (name: 'thickness' | 'young' | 'yield' | 'washer', kind: Kind): number =>
      positiveOption(`--${name}`, given(name, values[name]), kind);
    const [a, b] = sizes(given('size', values.size));
    const plate: UniformPlate = {
      a,
      b,
      t: read('thickness', 'length'),
      E: read('young', 'stress'),
      nu: poisson(given('poisson', values.poisson)),
      q: quantityOption('--pressure', given('pressure', values.pressure), 'stress'),
    };
    if (plate.q === 0)
      throw refusal({
        what: 'A pressure of zero bends nothing',
        where: { option: '--pressure' },
        mend: 'Write a pressure such as 5kPa.',
      });
    const support = given('support', values.support);
    const washer = values.washer === undefined ? 4 * plate.t : read('washer', 'length');
    const yieldStress = values.yield === undefined ? undefined : read('yield', 'stress');
    if (support === 'resting' && !values.solver)
      throw refusal({
        what: 'Edges that may lift have no series here',
        where: { option: '--support' },
        mend: 'Add --solver: they are solved by finite elements.',
      });
    const kind = edgeSupport(plate, support, washer / 2);
    const answer = kind.kind === 'resting' ? null : bySeries(plate, kind);
    const elements = values.solver ? panelByElements(plate, kind) : null;
    const quantities = {
      ...(answer ? seriesQuantities(plate, answer, yieldStress) : {}),
      ...(elements ? solverQuantities(plate, elements, kind, yieldStress) : {}),
    };
    const deflection = Math.abs((answer ?? elements!).deflectionLargest);
    const cautions = [
      ...(deflection > plate.t / 2 ? [largeDeflection] : []),
      ...(plate.t > Math.min(a, b) / 10 ? [thickPlate] : []),
      ...(Math.max(answer?.error ?? 0, elements?.error ?? 0) > 0.02 ? [roughAnswer] : []),
      ...(elements && !elements.settled ? [unsettled] : []),
    ];
    const system = inches(values.size ?? '') ? 'inch' : 'metric';
    if (values.json)
      on.out(JSON.stringify({ schema: 'stillplate-result/1', programVersion, support, quantities, cautions }, null, 2));
    else
      for (const [id, { value, unit, title }] of Object.entries(quantities))
        on.out(`${id.padEnd(26)} ${quantityText(value, printedUnit(shown(unit), system), 5).padStart(14)}   ${title}`);
    if (!values.json) for (const caution of cautions) on.out(caution);
    return exit.passes;
  },
};

const largeDeflection =
  'The deflection is more than half the thickness: a panel with edges that cannot slide is stiffer than this; its edges then carry an in-plane pull.';

const thickPlate =
  'The thickness is more than a tenth of the shorter side: thin-plate theory leaves out the shear deformation, and the deflection is larger than this.';
const roughAnswer =
  'The estimated error is more than 2 %: moments and stresses near the supports are rough; do not size a panel by them.';

const unsettled =
  'The edges’ contact did not settle: some bearing points still pull or overlap. Do not use these numbers.';

function seriesQuantities(
  plate: UniformPlate,
  answer: PlateAnswer,
  yieldStress: number | undefined,
): Record<string, ReturnType<typeof named>> {
  const principal = (6 * answer.momentLargest) / plate.t ** 2;
  return {
    'deflection.centre': named(answer.deflectionCentre, 'm', 'Deflection at the centre'),
    'deflection.largest': named(answer.deflectionLargest, 'm', 'Largest deflection'),
    'moment.x.centre': named(answer.momentXCentre, 'N', 'Moment for a unit width at the centre, strips along x'),
    'moment.y.centre': named(answer.momentYCentre, 'N', 'Moment for a unit width at the centre, strips along y'),
    'moment.largest': named(answer.momentLargest, 'N', 'Largest principal moment for a unit width'),
    'stress.largest': named(principal, 'Pa', 'Largest principal bending stress'),
    'stress.vonMises': named(answer.stressLargest, 'Pa', 'Largest von Mises stress of bending and twisting'),
    'error.estimate': named(answer.error, '1', 'Estimated relative error of the series or polynomials'),
    ...firstYield('pressure.firstYield', plate, answer.stressLargest, yieldStress),
  };
}

function solverQuantities(
  plate: UniformPlate,
  answer: PanelAnswer,
  { kind }: EdgeSupport,
  yieldStress: number | undefined,
): Record<string, ReturnType<typeof named>> {
  const by = (value: number, unit: string, title: string) => ({ ...named(value, unit, title), source: elementSource });
  return {
    'solver.deflection.centre': by(answer.deflectionCentre, 'm', 'Deflection at the centre, by elements'),
    'solver.deflection.largest': by(answer.deflectionLargest, 'm', 'Largest deflection, by elements'),
    'solver.moment.x.centre': by(answer.momentXCentre, 'N', 'Moment for a unit width at the centre, strips along x'),
    'solver.moment.y.centre': by(answer.momentYCentre, 'N', 'Moment for a unit width at the centre, strips along y'),
    'solver.moment.largest': by(answer.momentLargest, 'N', 'Largest principal moment for a unit width'),
    'solver.stress.vonMises': by(answer.stressLargest, 'Pa', 'Largest von Mises stress of bending and twisting'),
    ...(kind === 'resting'
      ? {
          'solver.corner.rise': by(answer.cornerRise, 'm', 'Rise of the corners off the frame'),
          'solver.bearing.x': by(answer.bearing[0], '1', 'Part of the edges along x that bears, from their middle'),
          'solver.bearing.y': by(answer.bearing[1], '1', 'Part of the edges along y that bears, from their middle'),
        }
      : {}),
    'solver.error.estimate': by(answer.error, '1', 'Estimated relative error of the mesh, from one half as fine'),
    'solver.reactions': by(answer.reactionRatio, '1', 'Sum of the reactions over the load'),
    ...firstYield('solver.pressure.firstYield', plate, answer.stressLargest, yieldStress),
  };
}

const elementSource =
  'thin plate, small deflection, discrete Kirchhoff elements: Batoz and Ben Tahar, Int. J. Num. Meth. Eng. 18 (1982) 1655, from memory';

const firstYield = (id: string, { q }: UniformPlate, stress: number, yieldStress: number | undefined) =>
  yieldStress === undefined
    ? {}
    : {
        [id]: named((Math.abs(q) * yieldStress) / stress, 'Pa', 'Pressure at first yield, von Mises, small deflection'),
      };

const named = (value: number, unit: string, title: string) => ({
  value,
  unit,
  title,
  source: 'thin plate, small deflection: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed.',
});
const shown = (unit: string) => ({ m: 'mm', Pa: 'MPa', N: 'N*m/m', 1: '1' })[unit] ?? unit;

/** Whether a size is typed in inches or feet: the answer is then printed in inches, ksi and lbf·in/in. */
const inches = (size: string): boolean => /in|ft|feet|foot|["'′″]/i.test(size);

/** Arguments with `--thickness -3mm` joined to `--thickness=-3mm`, which the reader would take for two options. */
function withNegativeValues(args: readonly string[]): readonly string[] {
  return args.flatMap((arg, i) => {
    if (/^-[\d.,]/.test(arg) && takesText(args[i - 1])) return [];
    const next = args[i + 1];
    return next !== undefined && /^-[\d.,]/.test(next) && takesText(arg) ? [`${arg}=${next}`] : [arg];
  });
}

const takesText = (arg: string | undefined): boolean =>
  Object.entries(options).some(([name, { type }]) => arg === `--${name}` && type === 'string');

function given(name: string, value: string | undefined): string {
  if (value === undefined || value === '')
    throw refusal({ what: `--${name} is missing`, mend: `Usage: stillplate ${usage}` });
  return value;
}

function poisson(text: string): number {
  const nu = /^\d*[.,]?\d+$/.test(text) ? Number(text.replace(',', '.')) : NaN;
  if (nu >= 0 && nu < 0.5) return nu;
  throw refusal({
    what: `“${text}” is no Poisson's ratio`,
    where: { option: '--poisson' },
    mend: 'Write a number from 0 to below 0.5: 0.3 for steel.',
  });
}

function sizes(text: string): readonly [number, number] {
  const match = /^(.+?[^\d\s.,])\s*[x×]\s*(\d.*)$/.exec(text);
  if (!match)
    throw refusal({
      what: `“${text}” is no size`,
      where: { option: '--size' },
      mend: 'Write two lengths with an x between them, each with its unit: 600mmx900mm.',
    });
  return [
    positiveOption('--size', match[1] as string, 'length'),
    positiveOption('--size', match[2] as string, 'length'),
  ];
}

/** Half a side, in inches where the coordinate beside it is typed in inches. */
const reach = (side: number, typed: string): string => quantityText(side / 2, inches(typed) ? 'in' : 'mm');

function bySeries(plate: UniformPlate, support: Exclude<EdgeSupport, { kind: 'resting' }>): PlateAnswer {
  if (support.kind === 'points') return pointSupportedPlate(plate, support);
  if (support.kind === 'hinged') return hingedPlate(plate);
  return support.kind === 'held' ? heldPlate(plate) : twoSidedPlate(plate, 'hinged');
}

function edgeSupport({ a, b }: UniformPlate, support: string, exclusionRadius: number): EdgeSupport {
  if (support === 'hinged' || support === 'held' || support === 'two-sides' || support === 'resting')
    return { kind: support };
  if (support === 'corners')
    return { kind: 'points', points: [[0, 0], [a, 0], [a, b], [0, b]], exclusionRadius }; // prettier-ignore
  if (support.startsWith('points:')) {
    // A shell may hand the quotes of the example on.
    const points = support
      .slice('points:'.length)
      .trim()
      .replace(/^(["'])(.*)\1$/, '$2')
      .split(';')
      .filter((point) => point.trim() !== '')
      .map((point) => {
        const [x, y, more] = point.split(',');
        if (x === undefined || y === undefined || more !== undefined)
          throw refusal({
            what: `“${point}” is no point`,
            where: { option: '--support' },
            mend: 'Write x,y with units, points parted by semicolons: points:"-250mm,-400mm;250mm,-400mm;0mm,400mm".',
          });
        const [dx, dy] = [quantityOption('--support', x, 'length'), quantityOption('--support', y, 'length')];
        const slack = 1e-9 * Math.min(a, b);
        if (Math.abs(dx) > a / 2 + slack || Math.abs(dy) > b / 2 + slack)
          throw refusal({
            what: `The point “${point.trim()}” lies outside the plate, which reaches ${reach(a, x)} along x and ${reach(b, y)} along y to either side of its centre`,
            where: { option: '--support' },
            mend: 'Count x and y from the centre of the plate.',
          });
        return [dx + a / 2, dy + b / 2] as const;
      });
    return { kind: 'points', points, exclusionRadius };
  }
  throw refusal({
    what: `“${support}” is no kind of support`,
    where: { option: '--support' },
    mend: 'Write hinged, held, two-sides, corners, resting or points:"x,y;x,y;x,y".',
  });
}
