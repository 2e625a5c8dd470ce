import type { HollowSection } from '../catalogue/rows.ts';
import type { Field } from '../geometry/geometry.ts';
import type { TubeForces } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { missing, type Check, type Input, type Reading, type Step } from './check.ts';
import { fieldAt, fieldInputs, fieldPlaces, panelAt } from './field-inputs.ts';
import { bucklingInputs, bucklingResistance, bucklingSources } from './panel-buckling-steps.ts';
import { partLost } from './solved-inputs.ts';
import { sectionAtEnd } from './tube-inputs.ts';

const { t, E, nu } = fieldInputs;

/**
 * A panel is pressed in its plane by the tubes that it is fixed to. Fixed without slip, tube and panel bend as one beam: by
 * that the panel gets most, and its mean stress is no larger however its fixings give or its stress lags: the force N of a
 * panel whose fixings give follows N'' = κ² (N - N_f), N_f that of the one beam, and is 0 at its ends, so that nowhere is it
 * more than the largest N_f along the tube, nor is it pressed where N_f is pulled all along (maximum principle).
 */
export const panelBucklingByHand: Check = {
  id: 'panel-buckling-by-hand',
  title: 'Panel buckling in its plane, by hand',
  limitState: 'stability',
  source: [
    ...bucklingSources,
    { document: 'Timoshenko and Gere, Theory of Elastic Stability', edition: '2nd', clause: 'ch. 9, hinged edges', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, _, situation) =>
    model.solved === null || partLost(model, situation) !== undefined || 'the whole plate is solved: its own buckling factor judges',
  inputs: {
    ...beam('main', '0'),
    ...beam('cross', '1'),
    a: span('a', 'span between cross tubes, along x: the larger of pressed and pulled'),
    b: span('b', 'span between main tubes, along y: the larger of pressed and pulled'),
    four: {
      unit: '1',
      meaning: 'held on four sides (1) or on two (0)',
      from: 'geometry',
      read: (model, bay) => (onFourSides(fieldAt(model, bay)) ? 1 : 0),
    },
    t,
    E,
    nu,
    ...bucklingInputs,
  },
  steps: {
    'partial factors': [...pressed(), ...bucklingResistance['partial factors']],
    'allowable stress': [...pressed(), ...bucklingResistance['allowable stress']],
  },
  demand: 'sigma_m',
  capacity: 'sigma_Rd',
  range: [
    {
      holds: 'sigma_m <= sigma_Rd',
      otherwise: 'what tubes and panel can hand over as one beam is more than the panel bears by hand: that is a bound, no verdict. Solve the plate as one structure (“forces.from”, or check with --solver), or take a thicker panel or narrower bays',
    },
  ],
  second: {
    title: 'a skin strained as the tubes by themselves are at its height: more than any panel that carries with them',
    source: [{ document: 'derived by hand: plane sections, the tube alone' }],
    steps: [
      { symbol: 'sigma_xs', expression: 'M_0 * e_0 / I_0 + N_0 / A_0', unit: 'MPa', meaning: 'by the main tube alone' },
    ],
    of: 'sigma_x',
    high: 'sigma_xs',
  },
  cautions: [
    'The largest forces along the tubes beside the field are taken, bending by the sign that presses the panel’s side, as if both tubes pressed the panel at once; what panels change in the sharing between tubes is not counted: solve the plate as one structure where this is close.',
    'Elastic, from a flat start. The buckling curve stands for first bow and welding stress; no strength after buckling is used.',
    'Side pressure bends the panel besides and is judged as panel stress.',
  ],
}; // prettier-ignore

/** The tube of a set beside the field that has the larger moment. */
function beam(set: 'main' | 'cross', k: '0' | '1'): Readonly<Record<string, Input>> {
  const words = `of the ${set} tubes beside the field`;
  const force = (unit: string, meaning: string, of: (forces: TubeForces, height: number) => number): Input => ({
    unit,
    meaning: `largest ${meaning} ${words}`,
    from: 'loads: grid of tubes',
    read: (model, bay, situation): Reading =>
      besides(model, bay, set).reduce((most: Reading, id) => {
        const forces = situation.tubes.get(id);
        if (typeof most !== 'number') return most;
        return forces ? Math.max(most, Math.abs(of(forces, heightOver(model, bay, id)))) : missing(`the forces inside tube ${id}`);
      }, 0),
  });
  const size = (unit: string, meaning: string, of: (section: HollowSection) => number): Input => ({
    unit,
    meaning: `${meaning} ${words}, end of life: the smallest`,
    from: 'catalogue: sections; document: corrosion',
    read: (model, bay) => Math.min(...besides(model, bay, set).map((id) => of(sectionAtEnd(model, id)))),
  });
  return {
    [`M_${k}`]: force('kN*m', 'bending moment that presses the panel’s side', ({ sagging, hogging }, height) => (height > 0 ? sagging : hogging)),
    [`N_${k}`]: force('kN', 'axial force, taken as compression', ({ axial }) => axial),
    [`T_${k}`]: force('kN*m', 'torque', ({ torque }) => torque),
    [`A_${k}`]: size('cm^2', 'area', ({ area }) => area),
    [`I_${k}`]: size('cm^4', 'second moment of area', ({ inertiaY }) => inertiaY),
    [`J_${k}`]: size('cm^4', 'torsion constant', ({ torsion }) => torsion),
    [`e_${k}`]: {
      unit: 'mm',
      meaning: `height of the panel’s middle over the axis ${words}`,
      from: 'geometry',
      read: (model, bay) => Math.max(...besides(model, bay, set).map((id) => Math.abs(heightOver(model, bay, id)))),
    },
  };
} // prettier-ignore

/** Height of the panel's middle over a tube's axis, m; below it: negative. */
function heightOver(model: Model, bay: string, id: string): number {
  const { bottom, top } = panelAt(model, bay);
  const tube = model.tubes.get(id)!;
  return (bottom + top - tube.bottom - tube.top) / 2;
}

const besides = (model: Model, bay: string, set: 'main' | 'cross'): readonly string[] => model.bays.get(bay)![set];

function span(of: 'a' | 'b', meaning: string): Input {
  return {
    unit: 'mm',
    meaning,
    from: 'geometry',
    read: (model, bay) => {
      const { pressed, pulled } = fieldAt(model, bay);
      return Math.max(pressed[of], pulled[of]);
    },
  };
}

/** Held all round whichever way the water pushes: on four tubes, or by bolts along all of them. */
const onFourSides = ({ pressed, pulled }: Field): boolean =>
  [pressed, pulled].every(({ supports, boltsAlongX, boltsAlongY }) => supports === 'four sides' || (supports === 'bolts' && boltsAlongX > 2 && boltsAlongY > 2)); // prettier-ignore

function pressed(): readonly Step[] {
  const strip = (k: '0' | '1', axis: 'x' | 'y', width: 'a' | 'b', words: string): readonly Step[] => [
    { symbol: `A_p${k}`, expression: `t * ${width} / 2`, unit: 'cm^2', meaning: `half of the field, which ${words} has as its flange` },
    { symbol: `mu_${k}`, expression: `A_${k} * A_p${k} / (A_${k} + A_p${k})`, unit: 'cm^2', meaning: 'of both, as of two masses' },
    { symbol: `sigma_${axis}`, expression: `M_${k} * e_${k} * mu_${k} / (I_${k} + e_${k}^2 * mu_${k}) / A_p${k} + N_${k} / (A_${k} + A_p${k})`, unit: 'MPa', meaning: `mean stress along ${axis}: ${words} and its flange as one beam` },
  ];
  return [
    ...strip('0', 'x', 'b', 'a main tube'),
    ...strip('1', 'y', 'a', 'a cross tube'),
    { symbol: 'tau', expression: 'max(2 * e_0 * T_0 / J_0, 2 * e_1 * T_1 / J_1)', unit: 'MPa', meaning: 'shear in the plane where the panel turns with the tubes: 2 G e times their twist T/(G J)' },
    { symbol: 'sigma_m', expression: 'sqrt(sigma_x^2 + sigma_x * sigma_y + sigma_y^2 + 3 * tau^2)', unit: 'MPa', meaning: 'equivalent stress, signs as they are worst' },
    { symbol: 'sigma_1', expression: 'pi^2 * E / (12 * (1 - nu^2)) * (t / min(a, b))^2', unit: 'MPa', meaning: 'Euler stress of a strip across the shorter span' },
    { symbol: 'r', expression: 'min(a, b) / max(a, b)', unit: '1', meaning: 'shorter span over the longer' },
    { symbol: 'sigma_2', expression: 'pi^2 * E / (12 * (1 - nu^2)) * (t / max(a, b))^2', unit: 'MPa', meaning: 'Euler stress of a strip over the longer span' },
    { symbol: 'sigma_xcr', expression: 'four > 0 ? (a < b ? (1 + r^2)^2 : 4) * sigma_1 : sigma_2', unit: 'MPa', meaning: 'buckling stress along x alone' },
    { symbol: 'sigma_ycr', expression: 'four > 0 ? (a < b ? 4 : (1 + r^2)^2) * sigma_1 : sigma_2', unit: 'MPa', meaning: 'buckling stress along y alone' },
    { symbol: 'tau_cr', expression: 'four > 0 ? (5.34 + 4 * r^2) * sigma_1 : sigma_2', unit: 'MPa', meaning: 'buckling stress in shear alone' },
    { symbol: 'r_c', expression: 'sigma_x / sigma_xcr + sigma_y / sigma_ycr', unit: '1', meaning: 'both ways: a straight line lies inside of all that a plate can bear' },
    { symbol: 'alpha_cr', expression: '1 / (r_c / 2 + sqrt(r_c^2 / 4 + (tau / tau_cr)^2))', unit: '1', meaning: 'buckling factor, pressed and sheared: r_c + r_t^2 = 1' },
  ];
} // prettier-ignore
