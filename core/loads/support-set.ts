import type { PlateDocument } from '../document/schema.ts';
import { attachmentPoints, type AttachmentPoint } from '../geometry/attachment-points.ts';
import type { Geometry, Tube } from '../geometry/geometry.ts';
import { refusal } from '../refusal.ts';
import { placeOnTube } from './place-on-tube.ts';
import type { Place } from './plate-loads.ts';

/** Supports that act together: the suspension, the pad eyes or the supports on deck. */
export interface SupportSet {
  readonly name: 'suspension' | 'pad eyes' | 'deck';
  readonly oneWay: boolean;
  /** Legs or slings whose length may differ: four of them do not share by stiffness alone. */
  readonly slings: boolean;
  readonly items: readonly SupportItem[];
}

export interface SupportItem {
  readonly id: string;
  /** Where the force's line of action meets the level of the tubes' axes: past the eye for a leg that leans. */
  readonly place: Place;
  /** Pull in plan towards the apex for 1 N up, x and y; zero for an upright line. */
  readonly lean: readonly [x: number, y: number];
  /** Tubes that take the pull in plan along their axes: a main tube and a cross tube. */
  readonly thrust: readonly [main: number, cross: number];
}

/**
 * The document's supports, on their tubes. A leg to an apex pulls in plan by its lean; its line of action, followed
 * down from the eye's hole to the tube's axis, is where it acts on the grillage (so the eye's height bends the tube).
 * The apex is above the middle of the attachments. Pull across a tube goes to the nearest tube that crosses it.
 * Refuses points beside the tubes, two in one place, and a bridle without apex.
 */
export function supportSets(
  document: PlateDocument,
  geometry: Geometry,
): { suspension: SupportSet; padEyes: SupportSet | null; deck: SupportSet | null } {
  const { units, grid, loads } = document;
  const eyes = attachmentPoints(document, geometry);
  const { suspension, padEyes } = grid;
  if (suspension.kind === 'bridle' && !suspension.apex)
    throw refusal({
      what: 'The bridle has no apex',
      where: { path: 'grid.suspension.apex' },
      mend: 'Give the height of its apex above the attachments.',
    });
  const hung = (
    name: SupportSet['name'],
    what: string,
    path: string,
    points: readonly AttachmentPoint[],
    apex: number | null,
    oneWay: boolean,
  ): SupportSet => {
    refuseDoubles(points, path);
    const middle = [
      points.reduce((s, p) => s + p.x, 0) / points.length,
      points.reduce((s, p) => s + p.y, 0) / points.length,
    ] as const;
    const items = points.map((point): SupportItem => {
      const place = placeOnTube({ what, id: point.id, x: point.x, y: point.y, path }, geometry, units);
      const lean =
        apex === null ? ([0, 0] as const) : ([(middle[0] - point.x) / apex, (middle[1] - point.y) / apex] as const);
      const tube = tubesOf(geometry)[place.tube]!;
      const arm = point.z - (tube.top - tube.section.height / 2);
      return {
        id: point.id,
        place: { ...place, x: point.x - arm * lean[0], y: point.y - arm * lean[1] },
        lean,
        thrust: thrustTubes(geometry, place),
      };
    });
    return { name, oneWay, slings: oneWay, items };
  };
  return {
    suspension: hung(
      'suspension',
      'Attachment',
      'grid.suspension.attachments',
      eyes.filter((e) => e.kind === 'suspension'),
      suspension.kind === 'bridle' ? suspension.apex!.si : null,
      suspension.kind !== 'strut',
    ),
    padEyes: padEyes
      ? hung(
          'pad eyes',
          'Pad eye',
          'grid.padEyes.points',
          eyes.filter((e) => e.kind === 'pad eye'),
          padEyes.apex?.si ?? null,
          true,
        )
      : null,
    deck: loads.deck ? deckSet(document, geometry, loads.deck.supports) : null,
  };
}

function deckSet(
  { units }: PlateDocument,
  geometry: Geometry,
  supports: NonNullable<PlateDocument['loads']['deck']>['supports'],
): SupportSet {
  const path = 'loads.deck.supports';
  const points = supports.map(({ id, x, y }) => ({ id, x: x.si, y: y.si }));
  refuseDoubles(points, path);
  const items = points.map((point): SupportItem => {
    const place = placeOnTube({ what: 'Deck support', ...point, path }, geometry, units);
    return { id: point.id, place, lean: [0, 0], thrust: thrustTubes(geometry, place) };
  });
  return { name: 'deck', oneWay: true, slings: false, items };
}

const tubesOf = ({ mainTubes, crossTubes }: Geometry): Tube[] => [...mainTubes, ...crossTubes];

/** The tube that the point stands on, and the nearest that crosses it. */
function thrustTubes(geometry: Geometry, place: Place): [number, number] {
  const tubes = tubesOf(geometry);
  const own = tubes[place.tube]!;
  const crossing = geometry.crossings.filter((c) => c[own.set] === own.id);
  const away = crossing.map((c) => Math.abs((own.set === 'main' ? c.x : c.y) - place.at));
  const nearest = crossing[away.indexOf(Math.min(...away))]!;
  const other = tubes.findIndex(({ id }) => id === nearest[own.set === 'main' ? 'cross' : 'main']);
  return own.set === 'main' ? [place.tube, other] : [other, place.tube];
}

/** Closer than this, in m, two points are one. */
const onePlace = 0.001;

function refuseDoubles(
  points: readonly { readonly id: string; readonly x: number; readonly y: number }[],
  path: string,
): void {
  points.forEach((p, i) => {
    const twin = points.slice(0, i).find((q) => q.id === p.id || Math.hypot(q.x - p.x, q.y - p.y) < onePlace);
    if (twin)
      throw refusal({
        what: twin.id === p.id ? `Two points have the id ${p.id}` : `${twin.id} and ${p.id} are in the same place`,
        where: { path, attachment: p.id },
        mend: 'Give each its own id and place, or take one away.',
      });
  });
}
