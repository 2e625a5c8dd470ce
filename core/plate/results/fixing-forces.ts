import type { Structure, TiePart } from '../../solve/structure/structure.ts';
import { tieForce } from '../../solve/structure/tie.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { activeSupports } from './active-supports.ts';

/** Forces between a panel and a tube, of the panel on the fixing. N and N·m. */
export interface BoltForce {
  readonly id: string;
  readonly panel: string;
  readonly tube: string;
  readonly x: number;
  readonly y: number;
  /** What the joint carries along the bolt: positive pulls. Negative where the panel's edge presses at the bolt itself:
   *  contact beside it takes that. A preloaded bolt: less what its own faces still press, so that it is the load's part. */
  readonly pull: number;
  /** Tension in the bolt itself: with its preload the pull and what the faces press. */
  readonly inBolt: number;
  readonly preload: number;
  /** A preloaded joint whose faces have come apart. */
  readonly parted: boolean;
  readonly shearX: number;
  readonly shearY: number;
  /** Of both shears. */
  readonly shear: number;
  /** Bending of the bolt, resultant about x and y, and torsion about its axis. */
  readonly bending: number;
  readonly torsion: number;
}

/** Force per length at a point of a weld, N/m. */
export interface WeldForce {
  /** Panel and side, as the structure names the run. */
  readonly id: string;
  readonly panel: string;
  readonly tube: string;
  readonly x: number;
  readonly y: number;
  /** Length of weld that the point stands for, m. */
  readonly length: number;
  readonly along: number;
  readonly across: number;
  /** Positive draws the panel off the tube. */
  readonly pull: number;
  readonly resultant: number;
  /** Moment about the weld's line, N·m/m. */
  readonly opening: number;
}

/** Where a panel presses on one tube. */
export interface ContactForce {
  readonly panel: string;
  readonly tube: string;
  /** N in all, and points that are closed of all. */
  readonly force: number;
  readonly closed: number;
  readonly points: number;
  /** Largest mean pressure over the area of one point, Pa, and its place. It grows towards an edge as the mesh gets finer:
   *  the sum is what to judge with. */
  readonly pressure: number;
  readonly x: number;
  readonly y: number;
}

/** What a support carries: positive pulls the plate up. */
export interface SupportForce {
  readonly id: string;
  readonly vertical: number;
  /** Along the line, leg or strut: positive pulls. */
  readonly along: number;
  readonly inPlan: readonly [x: number, y: number];
  readonly state: 'carries' | 'slack' | 'not there';
}

export interface FixingForces {
  readonly bolts: readonly BoltForce[];
  readonly welds: readonly WeldForce[];
  readonly contacts: readonly ContactForce[];
  readonly supports: readonly SupportForce[];
  /** Largest of each kind; null where there is none. */
  readonly largest: {
    readonly pull: BoltForce | null;
    readonly shear: BoltForce | null;
    readonly weld: WeldForce | null;
    readonly contact: ContactForce | null;
    readonly support: SupportForce | null;
  };
}

/** Forces in bolts, welds, contact and supports of a solved loading, in the structure's order. */
export function fixingForces(plate: ReadyPlate, solved: SolvedLoading): FixingForces {
  const { structure } = plate;
  const bolts: BoltForce[] = [];
  const welds: WeldForce[] = [];
  for (const part of structure.ties) {
    if (part.kind === 'bolt') bolts.push(boltForce(plate, part, solved, pressedAt(structure, part, solved)));
    else welds.push(weldForce(plate, part, solved));
  }
  const contacts = contactForces(structure, solved);
  const supports = supportForces(plate, solved);
  return {
    bolts,
    welds,
    contacts,
    supports,
    largest: {
      pull: mostOf(bolts, ({ pull }) => pull),
      shear: mostOf(bolts, ({ shear }) => shear),
      weld: mostOf(welds, ({ resultant }) => resultant),
      contact: mostOf(contacts, ({ force }) => force),
      support: mostOf(supports, ({ along }) => Math.abs(along)),
    },
  };
}

const mostOf = <T>(items: readonly T[], of: (item: T) => number): T | null =>
  items.reduce<T | null>((best, item) => (best === null || of(item) > of(best) ? item : best), null);

/** +1 where the panel lies on its tubes, -1 where it hangs under them: the way in which it comes off. */
const offTubes = ({ model }: ReadyPlate, panel: string): 1 | -1 =>
  model.panels.get(panel)!.pressedBy === 'down' ? 1 : -1;

function place({ coordinates }: Structure, { nodes, offsets }: TiePart): { readonly x: number; readonly y: number } {
  return { x: coordinates[3 * nodes[0]]! + offsets[0][0], y: coordinates[3 * nodes[0] + 1]! + offsets[0][1] };
}

/** What presses the faces together at a preloaded bolt, N. */
function pressedAt({ contacts }: Structure, { preload, nodes, tube }: TiePart, { answer }: SolvedLoading): number {
  if (preload === undefined) return 0;
  return answer.pressing[contacts.findIndex((c) => c.gap < 0 && c.nodes[0] === nodes[0] && c.tube === tube)]!;
}

function boltForce(plate: ReadyPlate, part: TiePart, { answer: { u } }: SolvedLoading, pressed: number): BoltForce {
  const { structure } = plate;
  const panel = structure.panels[part.panel]!.id;
  // the tie tells the tube's force on the panel; a fixing feels the panel's
  const { x, y, z, mx, my, mz } = tieForce(part, u);
  const inBolt = -offTubes(plate, panel) * z;
  return {
    id: part.id,
    panel,
    tube: structure.tubes[part.tube]!.id,
    ...place(structure, part),
    pull: inBolt - pressed,
    inBolt,
    preload: Math.abs(part.preload ?? 0),
    parted: part.preload !== undefined && pressed <= 0,
    shearX: -x,
    shearY: -y,
    shear: Math.hypot(x, y),
    bending: Math.hypot(mx, my),
    torsion: -mz,
  };
}

function weldForce(plate: ReadyPlate, part: TiePart, { answer: { u } }: SolvedLoading): WeldForce {
  const { structure } = plate;
  const panel = structure.panels[part.panel]!.id;
  const { id: tube, set } = structure.tubes[part.tube]!;
  const { x, y, z, mx, my } = tieForce(part, u);
  const [along, across, opening] = set === 'main' ? [-x, -y, -mx] : [-y, -x, -my];
  const per = 1 / part.length;
  return {
    id: part.id,
    panel,
    tube,
    ...place(structure, part),
    length: part.length,
    along: per * along,
    across: per * across,
    pull: -per * offTubes(plate, panel) * z,
    resultant: per * Math.hypot(x, y, z),
    opening: per * opening,
  };
}

function contactForces({ contacts, panels, tubes, coordinates }: Structure, { answer }: SolvedLoading): ContactForce[] {
  const sums = new Map<string, { -readonly [K in keyof ContactForce]: ContactForce[K] }>();
  contacts.forEach(({ panel, tube, nodes: [node], area }, i) => {
    const key = `${panel} ${tube}`;
    const [force, x, y] = [answer.pressing[i]!, coordinates[3 * node]!, coordinates[3 * node + 1]!];
    const own = sums.get(key) ?? { panel: panels[panel]!.id, tube: tubes[tube]!.id, force: 0, closed: 0, points: 0, pressure: 0, x, y }; // prettier-ignore
    sums.set(key, own);
    own.force += force;
    own.points++;
    if (!answer.closed[i]) return;
    own.closed++;
    if (force / area > own.pressure) [own.pressure, own.x, own.y] = [force / area, x, y];
  });
  return [...sums.values()];
}

function supportForces(plate: ReadyPlate, solved: SolvedLoading): SupportForce[] {
  const { parts, present, active } = activeSupports(plate, solved);
  return parts.map(({ id, direction: [x, y, z] }, i) => {
    const V = solved.answer.forces[i]!;
    return {
      id,
      vertical: V,
      along: V * Math.hypot(x, y, z),
      inPlan: [V * x, V * y],
      state: active.includes(i) ? 'carries' : present.includes(i) ? 'slack' : 'not there',
    };
  });
}
