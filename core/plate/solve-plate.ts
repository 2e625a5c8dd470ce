import type { Model } from '../model.ts';
import type { Situation } from '../loads/situation.ts';
import type { JointEnd } from './mesh/joint-stiffness.ts';
import { plateStructure } from './mesh/plate-structure.ts';
import { factorise, type Factorisation } from '../solve/sparse/factorise.ts';
import type { MakeKernels } from '../solve/sparse/front-kernels.ts';
import { Mechanism } from '../solve/sparse/mechanism.ts';
import { FreeMotion } from './free-motion.ts';
import { frontKernels } from '../solve/sparse/wasm-kernels.ts';
import { solverSession, type SolverSession } from '../solve/sparse/solver-session.ts';
import { alike } from '../solve/structure/alike.ts';
import type { Factorise } from '../solve/structure/factorise.ts';
import { loadVector } from './load-vector.ts';
import { movingMasses } from './plate-masses.ts';
import { partElements } from '../solve/structure/part-elements.ts';
import { plateSupports } from './plate-supports.ts';
import { solveStructure, type ReadyStructure, type StructureAnswer } from '../solve/structure/solve-structure.ts';
import type { Beam } from '../solve/elements/beam.ts';

/** The meshed plate of a model, ready for its load cases. */
export interface ReadyPlate extends ReadyStructure {
  readonly model: Model;
  readonly beams: readonly Beam[];
  readonly size: number;
}

/** One loading of one load case on one set of supports, solved. */
export interface SolvedLoading {
  readonly situation: Situation;
  /** Name of the loading, index of the variant of supports among `situation.present`. */
  readonly loading: string;
  readonly variant: number;
  readonly applied: Float64Array;
  readonly answer: StructureAnswer;
  /** `linear`: contact as pressed or pulled by the load's direction; `contact`: contact settled. */
  readonly stage: 'linear' | 'contact';
}

/** What plates have in common is solved once: a plate after an edit, a panel like its neighbour, the next set of closed
 *  points. It remembers and gives the same bits as one that is new (see SolverSession). */
const shared = solverSession();

/** Meshes the model with cells no wider than `size`, m; panels, bolts and crossings of `without` are left out, by id; joints
 *  of tubes at the given end of their range. */
export function readyPlate(
  model: Model,
  {
    size,
    without,
    joints,
    session = shared,
  }: { readonly size: number; readonly without?: ReadonlySet<string>; readonly joints?: JointEnd; readonly session?: SolverSession }, // prettier-ignore
): ReadyPlate {
  const structure = alike(
    plateStructure(model, {
      size,
      levels: 'as built',
      ...(without ? { without } : {}),
      ...(joints ? { joints } : {}),
    }),
  );
  const { beams, elements } = partElements(structure);
  return {
    model,
    structure,
    beams,
    elements,
    masses: movingMasses(model, structure),
    factorise: (system, parts) => (parts ? session.factorise(system, parts) : factorise(system)),
    size,
  };
}

/** Factors one system after another that have the same pattern: the order of elimination is found once. */
export function factoriser(kernels: MakeKernels = frontKernels): Factorise {
  let elimination: Factorisation['elimination'] | undefined;
  return (system) => {
    const factored = factorise(system, { kernels, ...(elimination ? { elimination } : {}) });
    elimination = factored.elimination;
    return factored;
  };
}

/** Closed points to begin with: those of panels that the load's direction presses onto their tubes, and what preload presses. */
export function contactToBegin({ model, structure }: ReadyPlate, { direction }: Situation): Uint8Array {
  const pressed = new Map(model.geometry.panels.map(({ id, pressedBy }) => [id, pressedBy === direction]));
  return Uint8Array.from(structure.contacts, ({ panel, gap }) =>
    gap < 0 || pressed.get(structure.panels[panel]!.id) ? 1 : 0,
  );
}

/** Solves one loading of a case on one variant of its supports; yields after each set of closed points. */
export function* solveLoading(
  plate: ReadyPlate,
  situation: Situation,
  { loading: index, variant, stage, start }: { readonly loading: number; readonly variant: number; readonly stage: SolvedLoading['stage']; readonly start?: Uint8Array }, // prettier-ignore
): Generator<number, SolvedLoading> {
  const loading = situation.loadings[index]!;
  const set = situation.supports!;
  const applied = loadVector(plate, plate.model.loads.plate, loading);
  let answer: StructureAnswer;
  try {
    answer = yield* solveStructure(
      plate,
      applied,
      {
        supports: plateSupports(plate.structure, set),
        present: situation.present[variant]!,
        oneWay: set.oneWay,
      },
      start ?? contactToBegin(plate, situation),
      stage === 'linear' ? 'as begun' : 'settled',
    );
  } catch (error) {
    throw error instanceof Mechanism ? new FreeMotion(plate, error) : error;
  }
  return { situation, loading: loading.name, variant, applied, answer, stage };
}
