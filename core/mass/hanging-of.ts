import type { PlateDocument } from '../document/schema.ts';
import type { Finding } from '../finding.ts';
import type { AttachmentPoint } from '../geometry/attachment-points.ts';
import { refusal } from '../refusal.ts';
import type { Vector } from './body.ts';
import { centreOf, type Centred } from './centre-of.ts';

/** How the plate hangs: tilt in air and in water, and what restores it. */
export interface Hanging {
  /** Vertical line through the suspension's point of hang, plan. */
  readonly hangX: number;
  readonly hangY: number;
  /** Height of the hang point, m: pin of the eye, or apex of the bridle; mean of several. */
  readonly hangZ: number;
  /** What is free to turn: about a point, about the line through the attachments, or nothing. */
  readonly free: 'about a point' | 'about a line' | 'nothing';
  /** Height of the hang point above the centre of mass, m: negative is unstable. */
  readonly heightAboveMass: number;
  /** Tilt about x and about y, rad, hanging freely; right-handed. In water null when the plate floats. */
  readonly tilt: { readonly air: readonly [number, number]; readonly water: readonly [number, number] | null };
  /** Tilt in water with one panel lost, largest, and the panel whose bay is then open; null without panels or when it floats. */
  readonly worstOpenBay: { readonly bay: string; readonly tilt: number } | null;
}

/** Masses and displaced volumes of the whole and of each panel with all that leaves with it. */
export interface Hung {
  readonly mass: Centred;
  readonly displaced: Centred;
  readonly panels: readonly { readonly id: string; readonly mass: Centred; readonly displaced: Centred }[];
}

/**
 * The plate at rest under its hang point: a plumb line through the hang point meets the centre of mass in air, and in
 * water the point where weight and buoyancy together act, (m G − ρV B) / (m − ρV).
 *   tilt about y = atan2(x_G − x_H, z_H − z_G),   tilt about x = −atan2(y_G − y_H, z_H − z_G)
 * Hang point: pin of a single attachment; apex of a bridle, above the mean of its attachments. Several lines or struts
 * side by side do not meet in a point: two leave it free about the line through both, three or more hold it level.
 * Refuses a bridle without apex.
 */
export function hangingOf(
  document: PlateDocument,
  points: readonly AttachmentPoint[],
  hung: Hung,
  rho: number,
): { readonly hanging: Hanging; readonly findings: readonly Finding[] } {
  const { suspension } = document.grid;
  const eyes = points.filter((p) => p.kind === 'suspension');
  const mean = centreOf(eyes.map(({ x, y, z }) => ({ weight: 1, at: [x, y, z] }))).centre;
  if (suspension.kind === 'bridle' && !suspension.apex)
    throw refusal({
      what: 'The bridle has no apex',
      where: { path: 'grid.suspension.apex' },
      mend: 'Give the height of its apex above the attachments.',
    });
  const apex = suspension.kind === 'bridle' ? suspension.apex!.si : 0;
  const hang: Vector = [mean[0], mean[1], mean[2] + apex];
  const held = suspension.kind === 'bridle' ? [] : eyes;
  const axis = axisThrough(held);
  const free: Hanging['free'] =
    held.length < 2 || axis === 'none' ? 'about a point' : axis === 'spread' ? 'nothing' : 'about a line';

  const tiltOf = (pull: Vector): readonly [number, number] => {
    if (free === 'nothing') return [0, 0];
    const height = hang[2] - pull[2];
    let [dx, dy] = [pull[0] - hang[0], pull[1] - hang[1]];
    if (typeof axis === 'object') {
      const across = dx * -axis[1] + dy * axis[0];
      [dx, dy] = [across * -axis[1], across * axis[0]];
    }
    return [-Math.atan2(dy, height) + 0, Math.atan2(dx, height)];
  };

  const whole = pullIn(hung.mass, hung.displaced, rho);
  const open = hung.panels.flatMap((panel) => {
    const pull = pullIn(less(hung.mass, panel.mass), less(hung.displaced, panel.displaced), rho);
    return pull ? [{ bay: panel.id, tilt: total(tiltOf(pull)) }] : [];
  });
  const worst = open.reduce<Hanging['worstOpenBay']>(
    (most, next) => (most === null || next.tilt > most.tilt ? next : most),
    null,
  );
  const hanging: Hanging = {
    hangX: hang[0],
    hangY: hang[1],
    hangZ: hang[2],
    free,
    heightAboveMass: hang[2] - hung.mass.centre[2],
    tilt: { air: tiltOf(hung.mass.centre), water: whole ? tiltOf(whole) : null },
    worstOpenBay: whole ? worst : null,
  };
  return { hanging, findings: findingsOn(hanging, held, hung.mass.centre, whole) };
}

/** Single tilt of the vertical out of two tilts about x and y. */
export const total = ([aboutX, aboutY]: readonly [number, number]): number => {
  if (Math.abs(aboutX) > Math.PI / 2 || Math.abs(aboutY) > Math.PI / 2)
    return Math.max(Math.abs(aboutX), Math.abs(aboutY));
  return Math.atan(Math.hypot(Math.tan(aboutX), Math.tan(aboutY)));
};

/** Where weight and buoyancy together act; null when the plate floats. */
function pullIn(mass: Centred, displaced: Centred, rho: number): Vector | null {
  const net = less(mass, { sum: rho * displaced.sum, centre: displaced.centre });
  return net.sum > 0 ? net.centre : null;
}

const less = (a: Centred, b: Centred): Centred =>
  centreOf([
    { weight: a.sum, at: a.centre },
    { weight: -b.sum, at: b.centre },
  ]);

/** Unit direction of the line through points; `spread` when they lie on no one line, `none` when they lie in one place. */
function axisThrough(points: readonly AttachmentPoint[]): readonly [number, number] | 'spread' | 'none' {
  const [first] = points;
  if (!first) return 'none';
  const away = points.map((p) => [p.x - first.x, p.y - first.y] as const);
  const far = away.reduce((a, b) => (Math.hypot(...b) > Math.hypot(...a) ? b : a));
  const length = Math.hypot(...far);
  if (length < 1e-6) return 'none';
  const axis = [far[0] / length, far[1] / length] as const;
  return away.some(([x, y]) => Math.abs(x * axis[1] - y * axis[0]) > 1e-6) ? 'spread' : axis;
}

/** Tilt from which rigging and landing need a thought: common practice, no source. */
const noticeable = (5 * Math.PI) / 180;
const degrees = (angle: number): string => `${((angle * 180) / Math.PI).toFixed(1)}°`;

function findingsOn(
  { heightAboveMass, tilt, free, worstOpenBay }: Hanging,
  held: readonly AttachmentPoint[],
  centre: Vector,
  pull: Vector | null,
): Finding[] {
  const place = 'suspension';
  const findings: Finding[] = [];
  if (pull === null)
    findings.push({
      id: 'plate-floats',
      place,
      text: 'The plate weighs less than the water that it displaces: it floats, and the suspension cannot hold it down.',
      mend: 'Flood the tubes, or add weight.',
    });
  if (heightAboveMass <= 0 && free !== 'nothing')
    findings.push({
      id: 'hangs-unstable',
      place,
      text: `The point of hang lies ${(-1000 * heightAboveMass).toFixed(0)} mm below the centre of mass: the plate would turn over.`,
      mend: 'Raise the point of hang: a bridle with a higher apex, or attachments on taller eyes.',
    });
  else if (total(tilt.air) > noticeable || (tilt.water && total(tilt.water) > noticeable))
    findings.push({
      id: 'hangs-tilted',
      place,
      text: `The plate hangs tilted by ${degrees(total(tilt.air))} in air${tilt.water ? ` and ${degrees(total(tilt.water))} in water` : ''}.`,
      mend: 'Move the point of hang over the centre of mass, raise it, or place the panels evenly.',
    });
  else if (worstOpenBay && worstOpenBay.tilt > noticeable)
    findings.push({
      id: 'hangs-tilted-with-open-bay',
      place: worstOpenBay.bay,
      text: `With panel ${worstOpenBay.bay} lost the plate hangs tilted by ${degrees(worstOpenBay.tilt)} in water.`,
      mend: 'Raise the point of hang if the plate must stay usable with a panel lost.',
    });
  if (free !== 'about a point') {
    for (const [where, at] of [
      ['in air', centre],
      ['in water', pull],
    ] as const)
      if (at && !isCarried(held, at))
        findings.push({
          id: 'line-goes-slack',
          place,
          text: `${where === 'in air' ? 'In air' : 'In water'} the weight acts outside the attachments, at x ${at[0].toFixed(3)} m, y ${at[1].toFixed(3)} m: one of them would have to push.`,
          mend: 'Move the attachments so that the weight acts between them.',
        });
  }
  return findings;
}

/** True where a weight at a plan point pulls on all attachments (within rounding): it lies between them. */
function isCarried(points: readonly AttachmentPoint[], at: Vector): boolean {
  const axis = axisThrough(points);
  if (typeof axis === 'object') {
    const along = points.map((p) => (p.x - at[0]) * axis[0] + (p.y - at[1]) * axis[1]);
    return Math.min(...along) <= 1e-6 && Math.max(...along) >= -1e-6;
  }
  // Outside a convex hull there is a direction that sees all corners on one side: the gap between bearings exceeds a half turn.
  const bearings = points.map((p) => Math.atan2(p.y - at[1], p.x - at[0])).sort((a, b) => a - b);
  const gaps = bearings.map((b, i) => (bearings[i + 1] ?? bearings[0]! + 2 * Math.PI) - b);
  return Math.max(...gaps) <= Math.PI + 1e-9;
}
