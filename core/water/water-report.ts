import { refusal } from '../refusal.ts';
import { addedMass, cellsFor, type AddedMass } from './added-mass.ts';
import { openAreaRule, screenLength, screenOf, thinPlateCoefficient } from './added-mass-rules.ts';
import { steadyDrag } from './edge-drag.ts';
import { nearImages } from './gap-and-rim.ts';
import { heaveSpreads, type HeaveSpread } from './heave-spread.ts';
import { outlineOf, type Plan, type Rectangle } from './lattice/plan.ts';
import { plateLattice, plateProblem, type PlateLattice } from './lattice/plate-lattice.ts';
import { solvePair } from './lattice/solve-pair.ts';
import { wellPlaced } from './lattice/well-placed.ts';
import { forceOfMotion } from './motion-force.ts';
import { openPart } from './openings-of.ts';
import { panelShares } from './panel-shares.ts';
import { screenLoss } from './screen-loss.ts';

/** In what water and motion a plate is asked about; SI. */
export interface WaterConditions {
  readonly density: number;
  /** Heave amplitude, m; zero: potential flow. */
  readonly amplitude: number;
  /** s; without it there is no force. */
  readonly period: number | null;
  /** Water above the plate and below it, m; null: without end. */
  readonly depth: number | null;
  readonly aboveBed: number | null;
  /** Parts whose shares are wanted. */
  readonly parts?: Readonly<Record<string, Rectangle>>;
  /** Cells along the longer side of the finest lattice; chosen by the plan without it. */
  readonly cells?: number;
}

export interface WaterQuantity {
  readonly value: number;
  readonly unit: string;
  readonly title: string;
  readonly source: string;
  /** What it may be, where a coefficient's spread carries through. */
  readonly low?: number;
  readonly high?: number;
  /** Estimated part of the value by which the lattice may be off. */
  readonly error?: number;
}

export interface WaterReport {
  readonly quantities: Readonly<Record<string, WaterQuantity>>;
  /** What is asked for and has no answer, with the reason. */
  readonly unjudged: readonly { readonly id: string; readonly reason: string }[];
  readonly cautions: readonly string[];
  readonly potential: AddedMass;
}

const ours = 'doublet lattice, extrapolated';

/** Added mass, drag and force of a plan, with the common rules beside them. Refuses an amplitude below zero. */
export function waterReport(plan: Plan, conditions: WaterConditions): WaterReport {
  const { density, amplitude, period, depth, aboveBed, parts = {} } = conditions;
  if (!(amplitude >= 0))
    throw refusal({ what: `An amplitude of ${amplitude} m is none`, where: { field: 'amplitude' }, mend: 'Give zero or more.' }); // prettier-ignore
  const o = outlineOf(plan);
  const [a, b] = [Math.min(o.x1 - o.x0, o.y1 - o.y0), Math.max(o.x1 - o.x0, o.y1 - o.y0)];
  const S = a * b;
  const unjudged: { id: string; reason: string }[] = [];
  const images = nearImages(b, depth, aboveBed);
  const n = conditions.cells ?? cellsFor(plan);
  const potential = addedMass(plan, density, { n, images });
  const shallow = depth !== null && depth < a;
  if (shallow)
    unjudged.push({ id: 'addedMass.heave', reason: 'the plate hangs less than its breadth below the surface: the waves that it makes are not computed' }); // prettier-ignore

  const lattice = plateLattice(plan, wellPlaced(plan, Math.min(100, Math.round(n / 2))), images);
  const { cover, grip, D } = plateProblem(plan, lattice.frame);
  const solid = potential.solid.value;
  const still = potential.heave.value;
  const moved: HeaveSpread | null = amplitude > 0 ? heaveSpreads(plan, lattice, { density, solid, still }, [amplitude])[0]! : null; // prettier-ignore
  const heave = moved ? moved.addedMass.best : still;
  const open = openPart(plan, cover.patches);
  const KC = (2 * Math.PI * amplitude) / a;
  const quantities: Record<string, WaterQuantity> = {};
  const put = (
    id: string,
    value: number,
    unit: string,
    title: string,
    source: string,
    more: Partial<WaterQuantity> = {},
  ) => {
    // prettier-ignore
    quantities[id] = { value, unit, title, source, ...more };
  };

  put('water.density', density, 'kg/m^3', 'Density of the water', 'given, or EOS-80');
  put(
    'addedMass.heave',
    heave,
    'kg',
    moved ? 'Added mass in heave at this amplitude' : 'Added mass in heave, potential flow',
    ours,
    {
      // prettier-ignore
      error: potential.heave.error,
      ...(moved ? { low: moved.addedMass.low, high: moved.addedMass.high } : {}),
    },
  );
  put('addedMass.still', potential.heave.value, 'kg', 'Added mass in heave at zero amplitude', ours, { error: potential.heave.error }); // prettier-ignore
  put('addedMass.solid', solid, 'kg', 'Added mass of the solid plate of the same outline and edge height', ours, { error: potential.solid.error }); // prettier-ignore
  put('addedMass.ratio', heave / solid, '1', 'Added mass over that of the solid plate', ours, { error: potential.ratio.error }); // prettier-ignore
  put('addedMass.roll', potential.roll.value, 'kg*m^2', 'Added inertia in roll, about x through the middle', ours, { error: potential.roll.error }); // prettier-ignore
  put('addedMass.pitch', potential.pitch.value, 'kg*m^2', 'Added inertia in pitch, about y through the middle', ours, { error: potential.pitch.error }); // prettier-ignore
  put('addedMass.heaveRoll', potential.heaveRoll, 'kg*m', 'Heave with roll', ours);
  put('addedMass.heavePitch', potential.heavePitch, 'kg*m', 'Heave with pitch', ours);
  const thin = thinPlateCoefficient(b / a) * density * (Math.PI / 4) * a * a * b;
  put(
    'addedMass.byAspect',
    thin,
    'kg',
    'Solid thin plate by its aspect ratio',
    'DNV-RP-C205, appendix D (from memory)',
  );
  put('ratio.open', open, '1', 'Open part of the outline', 'plan');
  const rule = openAreaRule(open);
  if (rule === null) unjudged.push({ id: 'addedMass.byOpenArea', reason: 'more than half of the outline is open: the rule ends there' }); // prettier-ignore
  else put('addedMass.byOpenArea', rule * thin, 'kg', 'Open-area rule, for motions as large as in the tests behind it', 'DNV-RP-N103, simplified method (from memory)'); // prettier-ignore
  const screen = screenOf(plan, cover.patches);
  if (screen) {
    const C = screenLength(screen.kind, screen.side, screen.pitch) + (plan.thickness / 2) * (1 / open - 1);
    put('addedMass.byScreen', density * screened(plan, lattice, C), 'kg', 'Uniform screen of the same inertial length, no loss', 'inertial screen on the lattice of the outline'); // prettier-ignore
  } else if (open > 0) unjudged.push({ id: 'addedMass.byScreen', reason: 'the openings lie in no row: no uniform screen is near them' }); // prettier-ignore

  put('drag.referenceArea', S, 'm^2', 'Area of the outline, to which drag coefficients refer', 'plan');
  put('drag.kc', KC, '1', `Keulegan–Carpenter number 2π A / b with b = ${a.toPrecision(4)} m, the outline’s shorter side`, 'motion'); // prettier-ignore
  put('drag.kcWidth', a, 'm', 'Width b in the Keulegan–Carpenter number', 'plan');
  const steady = steadyDrag(screenLoss(plan, cover.patches), b / a);
  put('drag.steady', steady.best, '1', 'Drag coefficient in steady flow, on the outline: current, lowering, raising', 'screen loss and DNV-RP-C205 (from memory)', steady); // prettier-ignore
  if (moved) {
    const { drag, outside } = moved;
    if (outside) unjudged.push({ id: 'drag.edge', reason: outside });
    put('drag.coefficient', drag.best, '1', 'Drag coefficient of the motion, on the outline: gaps and edges', 'gap losses on the lattice; Graham 1980 (from memory)', drag); // prettier-ignore
    put('drag.gaps', moved.gaps, '1', 'Part of the gaps', 'Idelchik (from memory), Molin 2001'); // prettier-ignore
    put('drag.edge', moved.edge, '1', 'Part of the edges', 'Graham 1980 (from memory)');
    put('drag.area', drag.best * S, 'm^2', 'Drag coefficient times area', 'product', { low: drag.low * S, high: drag.high * S }); // prettier-ignore
    put('damping.gaps', moved.ways.best.damping, 'kg', 'Damping of the gaps over the angular frequency', ours);
  } else {
    const reason = 'without an amplitude there is no drag of a motion';
    unjudged.push({ id: 'drag.coefficient', reason }, { id: 'drag.area', reason });
  }
  if (moved && period !== null) {
    const { drag, addedMass: mass } = moved;
    const at = (mass: number, Cd: number) => forceOfMotion(mass, Cd * S, density, amplitude, period);
    const best = at(heave, drag.best);
    put(
      'force.peak',
      best.peak,
      'N',
      'Peak force of the water on the plate',
      'inertia and drag, a quarter cycle apart',
      {
        low: at(mass.low, drag.low).peak,
        high: at(mass.high, drag.high).peak,
      },
    );
    put('force.inertia', best.inertia, 'N', 'Amplitude of the inertia force', 'added mass times acceleration');
    put('force.drag', best.drag, 'N', 'Amplitude of the drag force', 'drag area');
    put('force.phase', best.phase, 'rad', 'Peak after that of inertia', 'Morison’s sum');
  } else unjudged.push({ id: 'force.peak', reason: 'the motion’s amplitude and period are not both given' });

  if (Object.keys(parts).length > 0) {
    const [{ mu }] = solvePair(lattice.lattice, [{ D, v: grip }, { D, v: grip }]); // prettier-ignore
    const felt = grip.map((part, k) => part * (moved ? moved.ways.best.jump.re[k]! : mu[k]!));
    for (const [id, share] of Object.entries(panelShares(lattice.frame, felt, cover.open, parts))) {
      put(
        `panel.${id}.shareOfInertia`,
        share.inertia,
        '1',
        'Part of the inertia force that this bay carries',
        'potential flow',
      );
      put(`panel.${id}.shareOfDrag`, share.drag, '1', 'Part of the drag force: the larger of area and edge-weighted area', 'bound'); // prettier-ignore
      put(`panel.${id}.shareOfArea`, share.byArea, '1', 'Part of the solid area', 'plan');
    }
  }
  return { quantities, unjudged, cautions: cautionsFor(potential, shallow), potential };
}

/** Σ μ h² of the solid outline with the jump 2 C w everywhere. */
function screened(plan: Plan, { frame, lattice }: PlateLattice, C: number): number {
  const solid = plateProblem({ rectangles: [outlineOf(plan)], holes: [], thickness: plan.thickness }, frame);
  const D = solid.D.map((d) => d + 1 / (2 * C));
  const problem = { D, v: solid.grip };
  const [{ mu }] = solvePair(lattice, [problem, problem]);
  return frame.h ** 2 * mu.reduce((sum, value, k) => sum + value * solid.grip[k]!, 0);
}

const cautionsFor = ({ heave, residual }: AddedMass, shallow: boolean): string[] => [
  'Coefficients of a plate with gaps are uncertain to a factor of two or more without tests at the right Keulegan–Carpenter number; use the range.',
  'Closing gaps raises the reaction, and lifting, slamming and snap loads with it: a lift plan for the open grid does not cover the closed one.',
  'For a licensed engineer to judge; local codes, class and lifting rules take precedence.',
  ...(heave.error > 0.02 ? [`The lattice’s estimated error is ${(100 * heave.error).toFixed(1)} %: gaps or bars are narrow for it.`] : []), // prettier-ignore
  ...(residual > 1e-6 ? ['The equations were not solved to their tolerance: do not use these numbers.'] : []),
  ...(shallow ? ['So near the surface the added mass depends on the period and can fall far below this.'] : []),
];
