import type { HollowSection } from '../catalogue/rows.ts';
import type { Model } from '../model.ts';
import type { Source } from '../source.ts';
import { openAreaRule, thinPlateCoefficient } from '../water/added-mass-rules.ts';
import { barInCrossFlow } from '../water/bar-in-cross-flow.ts';
import type { PointMass } from '../solve/structure/lumped-mass.ts';
import type { BeamPart, Structure } from '../solve/structure/structure.ts';

/** Water that moves with the plate across its plane by the rule for open areas, lumped at the structure's points. kg. */
export interface AreaRule {
  readonly points: readonly PointMass[];
  readonly total: number;
  /** `open plate`: the closed plate's mass, less for what is open. `each part alone`: more than half is open, where no such
   *  rule holds; tubes and panels are taken each alone, which is the least it can be. */
  readonly method: 'open plate' | 'each part alone';
  /** Part of the outline that is open; coefficient of the closed outline; the rule's reduction (1 for parts alone). */
  readonly openRatio: number;
  readonly coefficient: number;
  readonly reduction: number;
  readonly sources: readonly Source[];
  readonly cautions: readonly string[];
}

/** The water's added mass over panels and tubes in the shares of their solid plan area, up and down only. */
export function addedMassByArea(model: Model, structure: Structure): AreaRule {
  const { geometry, mass, loads } = model;
  const rho = mass.waterDensity;
  const { outline, areas } = geometry;
  const [shorter, longer] = [outline.x1 - outline.x0, outline.y1 - outline.y0].sort((a, b) => a - b) as [
    number,
    number,
  ];
  const coefficient = thinPlateCoefficient(longer / shorter);
  const openRatio = Math.max(areas.openRatio, 0);
  const closed = coefficient * rho * (Math.PI / 4) * shorter ** 2 * longer;
  const { shares } = loads.plate;
  const reduction = openAreaRule(openRatio);
  const alone = reduction === null;
  const points: PointMass[] = [];
  if (alone) {
    shares.tubes.forEach(({ section, from, to }, tube) =>
      layOnTube(points, structure, tube, from, to, rho * perLength(section) * (to - from)),
    );
    structure.panels.forEach((_, index) => {
      const { id } = structure.panels[index]!;
      const { outline: o } = geometry.panels.find((panel) => panel.id === id)!;
      const [s, l] = [o.x1 - o.x0, o.y1 - o.y0].sort((a, b) => a - b) as [number, number];
      layOnCells(points, structure, (shell) => shell.panel === index, thinPlateCoefficient(l / s) * rho * (Math.PI / 4) * s ** 2 * l); // prettier-ignore
    });
  } else {
    const whole = closed * reduction;
    shares.fields.forEach(({ part }, field) =>
      layOnCells(points, structure, (shell) => shell.field === field, whole * part.area),
    );
    for (const { tube, from, to, part } of shares.strips)
      layOnTube(points, structure, tube, from, to, whole * part.area);
  }
  return {
    points,
    total: points.reduce((sum, point) => sum + point.mass, 0),
    method: alone ? 'each part alone' : 'open plate',
    openRatio,
    coefficient,
    reduction: reduction ?? 1,
    sources: alone ? [coefficients] : [coefficients, openPlates],
    cautions: [
      'Water is laid on panels and tubes by their plan area and resists only across the plate.',
      alone
        ? 'More than half of the outline is open: tubes and panels are taken each alone, the least that the water can add.'
        : 'The rule for open plates is from motions about as large as the plate; at the small ones of a mode the water adds less and frequencies lie higher, between those in water and those in air.',
      'Surface and seabed are taken as more than a plate’s breadth away, and the depth of the tubes is left out: it adds about a tenth.',
    ],
  };
}

const coefficients: Source = { document: 'DNV-RP-C205', clause: 'app. D', memory: true };
const openPlates: Source = { document: 'DNV-RP-N103', edition: '2017', clause: 'sec. 4', memory: true };

/** m² of water to a metre of tube. */
const perLength = ({ shape, width, height }: HollowSection): number =>
  barInCrossFlow({ across: width, along: height, round: shape === 'round' }, 1);

/** A mass over the cells that are picked, by area, a quarter of each to its corners. */
function layOnCells(
  points: PointMass[],
  { shells }: Structure,
  picked: (shell: Structure['shells'][number]) => boolean,
  mass: number,
): void {
  const own = shells.filter(picked);
  const area = own.reduce((sum, { a, b }) => sum + a * b, 0);
  const corner = new Map<number, number>();
  for (const { nodes, a, b } of own)
    for (const node of nodes) corner.set(node, (corner.get(node) ?? 0) + (mass * a * b) / (4 * area));
  for (const [node, kg] of corner) points.push({ node, offset: [0, 0, 0], mass: kg });
}

/** A mass along a tube from one place to another on the beams that lie there, half of each part to either end; on the
 *  nearest beam where none does (in a joint). */
function layOnTube(
  points: PointMass[],
  { tubes, beams }: Structure,
  tube: number,
  from: number,
  to: number,
  mass: number,
): void {
  const own = beams.slice(...tubes[tube]!.beams);
  const covered = own.map((beam) => Math.max(0, Math.min(to, beam.to) - Math.max(from, beam.from)));
  const total = covered.reduce((sum, length) => sum + length, 0);
  const lay = ({ nodes, offsets }: BeamPart, kg: number): void => {
    for (const end of [0, 1] as const) points.push({ node: nodes[end], offset: offsets[end], mass: kg / 2 });
  };
  if (total > 0) own.forEach((beam, k) => covered[k]! > 0 && lay(beam, (mass * covered[k]!) / total));
  else {
    const away = ({ from: low, to: high }: BeamPart): number => Math.max(low - to, from - high);
    lay(own.reduce((best, beam) => (away(beam) < away(best) ? beam : best)), mass); // prettier-ignore
  }
}
