import { inertiaForces } from '../../solve/structure/lumped-mass.ts';
import { tieForce } from '../../solve/structure/tie.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { levelled } from './levelled.ts';
import { partKinds, workOfParts, type PartKind } from './work-of-parts.ts';

/** How the panels' load reaches one set of tubes: in all, and by what. Bolts that hold a panel down beside an edge that
 *  presses harder count against the load, so one part may be below zero and another above the whole. */
export interface PanelsToTubes {
  readonly all: number;
  readonly contact: number;
  readonly bolts: number;
  readonly welds: number;
}

/** Where the applied load goes, as parts of the load on panels and the load on tubes together, each by size: 0.4 is 40 %.
 *  Positive along the panels' load; the ways sum to one where tubes are loaded the same way as the panels. */
export interface LoadPath {
  /** Applied upward forces, N. */
  readonly onPanels: number;
  readonly onTubes: number;
  readonly toMainTubes: PanelsToTubes;
  readonly toCrossTubes: PanelsToTubes;
  /** Never reaches a tube: the panels' own inertia balances it. */
  readonly byInertia: number;
  /** On the tubes themselves. */
  readonly tubes: number;
  /** Work stored in each kind of part over all of it. */
  readonly energy: Readonly<Record<PartKind, number>>;
}

export function loadPath(plate: ReadyPlate, solved: SolvedLoading): LoadPath {
  const { structure, masses } = plate;
  const { u, acceleration, pressing, closed } = solved.answer;
  const onPanel = new Uint8Array(structure.coordinates.length / 3);
  for (const { nodes } of structure.shells) for (const n of nodes) onPanel[n] = 1;
  const upOn = (f: Float64Array, panels: 0 | 1): number =>
    onPanel.reduce((sum, is, n) => (is === panels ? sum + f[6 * n + 2]! : sum), 0);
  const [onPanels, onTubes] = [upOn(solved.applied, 1), upOn(solved.applied, 0)];
  const gross = Math.abs(onPanels) + Math.abs(onTubes);
  const scale = gross > 0 ? ((onPanels || onTubes) < 0 ? -1 : 1) / gross : 0;
  const to = (set: 'main' | 'cross'): PanelsToTubes => {
    const { ties, contacts, tubes } = structure;
    const by = (kind: 'bolt' | 'weld'): number =>
      ties.reduce((sum, part) => (part.kind === kind && tubes[part.tube]!.set === set ? sum - tieForce(part, u).z : sum), 0);
    const [bolts, welds] = [scale * by('bolt'), scale * by('weld')];
    const contact = scale * contacts.reduce((sum, { tube, side }, i) => (tubes[tube]!.set === set ? sum - side * pressing[i]! : sum), 0);
    return { all: bolts + welds + contact, contact, bolts, welds };
  }; // prettier-ignore
  const v = levelled(plate, solved);
  const work = workOfParts(plate, closed, v, v);
  const stored = partKinds.reduce((sum, kind) => sum + work[kind], 0);
  return {
    onPanels,
    onTubes,
    toMainTubes: to('main'),
    toCrossTubes: to('cross'),
    byInertia: -scale * upOn(inertiaForces(structure, masses, acceleration), 1),
    tubes: scale * onTubes,
    energy: Object.fromEntries(partKinds.map((kind) => [kind, stored > 0 ? work[kind] / stored : 0])) as Record<PartKind, number>, // prettier-ignore
  };
}
