import { ultimateOf, yieldOf } from '../catalogue/strength-at-thickness.ts';
import { hollowSection } from '../catalogue/hollow-section.ts';
import type { HollowSection } from '../catalogue/rows.ts';
import type { Tube } from '../geometry/geometry.ts';
import type { Situation, TubeForces } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { missing, type Input, type Reading } from './check.ts';

/** Places of checks on a tube: its id. */
export const tubePlaces = (model: Model): readonly string[] => [...model.tubes.keys()];

export const tubeAt = (model: Model, id: string): Tube => model.tubes.get(id) as Tube;

/** The tube's section at the end of life: outside and, if it is flooded, inside have lost their thickness. A sealed tube
 *  loses nothing inside. Refuses a wall that is gone. */
export function sectionAtEnd(model: Model, id: string): HollowSection {
  const known = atEnd.get(model) ?? new Map<string, HollowSection>();
  atEnd.set(model, known);
  const section = known.get(id) ?? corroded(model, tubeAt(model, id));
  known.set(id, section);
  return section;
}

/** Each tube's section is worked out once for a model, and forgotten with it. */
const atEnd = new WeakMap<Model, Map<string, HollowSection>>();

function corroded(model: Model, { section, flooded }: Tube): HollowSection {
  const { tubeOutside, tubeInside } = model.document.protection.lossPerFace;
  const outside = tubeOutside.si;
  const inside = flooded ? tubeInside.si : 0;
  if (outside === 0 && inside === 0) return section;
  return hollowSection({
    id: `${section.id} at the end of life`,
    shape: section.shape,
    process: section.process,
    height: section.height - 2 * outside,
    width: section.width - 2 * outside,
    wall: section.wall - outside - inside,
    outerRadius: section.outerRadius > outside ? section.outerRadius - outside : 0,
    innerRadius: section.innerRadius + inside,
    source: section.source,
  });
}

/** A row of bolts of one panel along a tube: where it drills the flange, m. */
interface DrilledRow {
  readonly face: 'topside' | 'underside' | 'both';
  readonly across: number;
  readonly from: number;
  readonly to: number;
}

/** Bolts of panels that drill a wall of the tube. Studs and pads are welded on and drill none. */
const drilling = (model: Model, id: string) =>
  [...model.panels.values()].flatMap(({ design, bolts }) => {
    const { fixing, side } = design;
    if (fixing.kind !== 'bolted' || (fixing.into !== 'through-bolt with sleeve' && fixing.into !== 'one-sided'))
      return [];
    const face = fixing.into === 'one-sided' ? side : ('both' as const);
    return [{ face, bolts: bolts.filter(({ tube }) => tube === id) }];
  });

/** Most rows of bolts that drill one flange at one section: those of neighbours beside each other, a staggered hole taken
 *  as in line. */
export function rowsDrilled(model: Model, id: string): number {
  const isMain = tubeAt(model, id).set === 'main';
  const rows: DrilledRow[] = drilling(model, id).flatMap(({ face, bolts }) => {
    const at = new Map<number, number[]>();
    for (const { x, y } of bolts) {
      const across = Math.round((isMain ? y : x) * 1e6);
      at.set(across, [...(at.get(across) ?? []), isMain ? x : y]);
    }
    return [...at].map(([across, along]) => ({ face, across, from: Math.min(...along), to: Math.max(...along) }));
  });
  const atOnce = (flange: 'topside' | 'underside', s: number): number =>
    new Set(
      rows
        .filter(({ face, from, to }) => (face === 'both' || face === flange) && from <= s + 1e-6 && to >= s - 1e-6)
        .map(({ across }) => across),
    ).size;
  return Math.max(0, ...rows.flatMap(({ from }) => [atOnce('topside', from), atOnce('underside', from)]));
}

/** Yield strength of the tube as ordered: EN 1993 and AISC 360 class its walls as carbon steel. */
export function yieldOfTube(model: Model, id: string): Reading {
  const { material, section } = tubeAt(model, id);
  return material.family === 'carbon steel'
    ? yieldOf(material, section.nominalWall)
    : missing(`a rule for tubes of ${material.title}: the section limits held here are for carbon steel`);
}

const ofSection = (unit: string, meaning: string, value: (section: HollowSection) => number): Input => ({
  unit,
  meaning: `${meaning}, end of life`,
  from: 'catalogue: sections; document: corrosion',
  read: (model, id) => value(sectionAtEnd(model, id)),
});

/** Properties of the tube at a place, by symbol. Bending is that of the height. */
export const tubeInputs = {
  round: {
    unit: '1',
    meaning: 'round section (1) or rectangular (0)',
    from: 'catalogue: sections',
    read: (model: Model, id: string) => (tubeAt(model, id).section.shape === 'round' ? 1 : 0),
  },
  H: ofSection('mm', 'height, or outer diameter', (s) => s.height),
  B: ofSection('mm', 'width, or outer diameter', (s) => s.width),
  t: ofSection('mm', 'wall', (s) => s.wall),
  A: ofSection('cm^2', 'area', (s) => s.area),
  A_v: ofSection('cm^2', 'shear area A H/(B + H), round 2 A/pi', (s) => s.shearAreaZ),
  I: ofSection('cm^4', 'second moment of area', (s) => s.inertiaY),
  I_min: ofSection('cm^4', 'least second moment of area', (s) => (s.inertiaY < s.inertiaZ ? s.inertiaY : s.inertiaZ)),
  W_el: ofSection('cm^3', 'elastic modulus', (s) => s.elasticY),
  W_pl: ofSection('cm^3', 'plastic modulus', (s) => s.plasticY),
  W_t: ofSection('cm^3', 'torsion modulus', (s) => s.torsionModulus),
  n_h: {
    unit: '1',
    meaning: 'rows of bolts that drill a flange at one section',
    from: 'geometry',
    read: rowsDrilled,
  },
  d_h: {
    unit: 'mm',
    meaning: 'largest hole in the tube, 0 without',
    from: 'document: fixing',
    read: (model: Model, id: string) =>
      Math.max(0, ...drilling(model, id).flatMap(({ bolts }) => bolts.map(({ hole }) => hole))),
  },
  f_u: {
    unit: 'MPa',
    meaning: 'ultimate strength of the tube',
    from: 'catalogue: materials',
    read: (model: Model, id: string): Reading => {
      const { material, section } = tubeAt(model, id);
      return ultimateOf(material, section.nominalWall);
    },
  },
  E: {
    unit: 'GPa',
    meaning: 'modulus of elasticity',
    from: 'catalogue: materials',
    read: (model: Model, id: string) => tubeAt(model, id).material.youngModulus,
  },
  f_y: { unit: 'MPa', meaning: 'yield strength of the tube', from: 'catalogue: materials', read: yieldOfTube },
} as const satisfies Readonly<Record<string, Input>>;

/** What the grid's solution gives for the tube, or what is missing. */
export function tubeForces(situation: Situation, id: string, value: (forces: TubeForces) => number): Reading {
  const forces = situation.tubes.get(id);
  return forces ? value(forces) : missing(`the forces inside tube ${id}: the grid is not solved in this case`);
}

const force = (unit: string, meaning: string, value: (forces: TubeForces) => number): Input => ({
  unit,
  meaning,
  from: 'loads: grid of tubes',
  read: (_, id, situation) => tubeForces(situation, id, value),
});

/** Forces inside the tube, load factor included, by symbol; sizes. */
export const tubeForceInputs = {
  M: force('kN*m', 'largest bending moment', ({ moment }) => Math.abs(moment)),
  V: force('kN', 'largest shear force, taken at the same section', ({ shear }) => Math.abs(shear)),
  T: force('kN*m', 'largest torque, taken at the same section', ({ torque }) => Math.abs(torque)),
  N: force('kN', 'largest axial force, taken as compression', ({ axial }) => Math.abs(axial)),
  M_statics: force(
    'kN*m',
    'moment by statics of the loads alone: strips cut at their worst, with what acts between cuts; not strict, but held by every grid tried',
    ({ momentBound }) => Math.abs(momentBound),
  ),
} as const satisfies Readonly<Record<string, Input>>;
