import type { WaterShare } from './water-shares.ts';
import type { Finding } from '../finding.ts';
import type { CrossingActions } from './crossing-actions.ts';
import type { PlateLoads } from './plate-loads.ts';
import type { SupportSet } from './support-set.ts';

/** One load case in one direction: what acts, what balances it, and what each panel field and tube gets. SI. */
export interface Situation {
  /** Unique: case and direction, for example "service-up". */
  readonly id: string;
  readonly loadCase: LoadCaseName;
  /** Of the force of the water (or of what loads the plate) on the plate; up is positive. */
  readonly direction: 'up' | 'down';
  readonly title: string;
  /** Sentence: what acts, which way, on which path (plate on tube, or bolts). */
  readonly path: string;
  /** Situations with something lost or broken, judged with the factors of accidents. */
  readonly accidental: boolean;
  /** Load factor applied in `force` and `pressures`, by the design basis; 1 under allowable stress. */
  readonly loadFactor: number;
  /** Total force on the plate, N, up positive, factored. */
  readonly force: number;
  /** Pressure on each panel field, Pa, factored, up positive, by bay id (net of the panel's own weight or inertia where it relieves). */
  readonly pressures: ReadonlyMap<string, number>;
  /** The same pressures with every load factor 1, that of the weight too: what serviceability is judged with. Pa, by bay id. */
  readonly servicePressures: ReadonlyMap<string, number>;
  /** Force on each panel (pressure by area), N, by panel id. */
  readonly panelForces: ReadonlyMap<string, number>;
  /** Forces at attachments, pad eyes or deck supports (up positive on the plate), N, by id; the worst where several
   *  solutions are covered (both shares, each diagonal of four slings, each lost leg). */
  readonly attachmentForces: ReadonlyMap<string, number>;
  /** The same as pulls along the line, leg or sling, by id: empty for supports on deck. */
  readonly legs: ReadonlyMap<string, LegPull>;
  readonly balance: Balance;
  /** Internal forces of tubes, largest along each tube, by tube id. */
  readonly tubes: ReadonlyMap<string, TubeForces>;
  /** What was solved to get this: each set of loads is consistent in itself, and the finite elements take the same. */
  readonly loadings: readonly NamedLoading[];
  /** Null where the case cannot be judged. */
  readonly supports: SupportSet | null;
  /** Supports that are there, as indices into the set's items: one list for each variant solved. */
  readonly present: readonly (readonly number[])[];
  /** Set when the case cannot be judged: what is missing. */
  readonly missing?: string;
}

/** One consistent set of loads on the plate, before anything holds it or its inertia balances it. */
export interface NamedLoading {
  readonly name: string;
  /** Net pressure on each field, Pa up, in the order of `PlateLoads.fields`. */
  readonly pressures: Float64Array;
  /** On the tubes directly, as a load on the cells of `PlateLoads.lines`: N/m up and N·m/m. */
  readonly onTubes: Float64Array;
  /** Panel that is not there, by id. */
  readonly lost: string | null;
}

export type LoadCaseName =
  | 'service'
  | 'crossing the surface'
  | 'lifting out'
  | 'lift in air'
  | 'support on deck'
  | 'lost bolt row'
  | 'lost panel'
  | 'lost leg';

/** Cases of handling: through the surface, in air, on deck. What bends there is no deflection in service. */
export const handlingCases: ReadonlySet<LoadCaseName> = new Set([
  'crossing the surface',
  'lifting out',
  'lift in air',
  'support on deck',
]);

/** Pull of one leg on the plate, N: along the leg (negative pushes: a strut), and its parts in plan, towards the apex. */
export interface LegPull {
  readonly tension: number;
  readonly x: number;
  readonly y: number;
  /** From the vertical, rad. */
  readonly angle: number;
}

/** Equilibrium as a printed line: what acts, what balances it, and what is left over. */
export interface Balance {
  readonly by: 'suspension' | 'weight in water' | 'own inertia' | 'supports on deck' | 'slings';
  readonly terms: readonly { readonly name: string; readonly force: number }[];
  /** Sum of all terms over the largest: zero but for rounding. */
  readonly residual: number;
  /** Sum of the moments of all loads on the tubes over the largest force times the plate's size: zero but for rounding. */
  readonly momentResidual: number;
  /** Upward acceleration when the plate's own inertia balances, m/s². */
  readonly acceleration: number;
}

export interface TubeForces {
  readonly moment: number;
  /** The same by its sign: the tube's top pressed (it sags), and its bottom (it hogs); 0 where it never does. */
  readonly sagging: number;
  readonly hogging: number;
  readonly shear: number;
  readonly torque: number;
  /** From the legs' pull in plan: compression for an apex between the attachments. */
  readonly axial: number;
  /** Moment and shear at the same section, worst pair. */
  readonly momentWithShear: number;
  readonly shearWithMoment: number;
  readonly deflection: number;
  /** Independent bound on the moment: statics of the loads alone, see `MomentBound`. */
  readonly momentBound: number;
  /** Force per length of a panel's edge on the tube's wall, and where it acts: largest. */
  readonly wallLine: number;
}

/** The two ends of a cycle of the stated force, without load factors: what fatigue counts from. */
export interface ServiceSwing {
  readonly up: Situation;
  readonly down: Situation;
  /** Of the stated force, N: the swing is twice as large. */
  readonly amplitude: number;
  /** What acts on each crossing at either end, by its id: one entry for each load that was solved. */
  readonly crossings: Readonly<Record<'up' | 'down', readonly ReadonlyMap<string, CrossingActions>[]>>;
}

export interface LoadReport {
  readonly situations: readonly Situation[];
  readonly swing: ServiceSwing;
  /** The plate as tubes that carry, with its fields, weights and inertia: what the loadings are laid on. */
  readonly plate: PlateLoads;
  /** Sentence on the stated load: amplitude or range, extreme or mean, what it includes, and what the other readings would give. */
  readonly definition: readonly string[];
  /** The stated force of service holds the weight already (half of a range never does): no weight is added to it. */
  readonly forceHoldsWeight: boolean;
  /** Shares of each panel field by plan area and by stated shape, summing to one with the tubes' own share; and the plan
   *  area on which its pressure acts, m². */
  readonly shares: ReadonlyMap<
    string,
    {
      readonly area: number;
      readonly shape: number;
      readonly solid: number;
      /** By the flow, where the document chooses it. */
      readonly flow: WaterShare | null;
    }
  >;
  /** Share of the tubes' own plan area. */
  readonly tubeShare: { readonly area: number; readonly shape: number };
  readonly findings: readonly Finding[];
}
