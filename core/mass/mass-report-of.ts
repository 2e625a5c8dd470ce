import type { Catalogue } from '../catalogue/catalogue.ts';
import type { PlateDocument } from '../document/schema.ts';
import { attachmentPoints } from '../geometry/attachment-points.ts';
import type { Geometry } from '../geometry/geometry.ts';
import { once } from '../once.ts';
import { g, waterDensityOf } from '../water/sea-water.ts';
import { attachmentBodies } from './attachment-bodies.ts';
import { scaled, type Body, type Vector } from './body.ts';
import { centreOf, type Centred } from './centre-of.ts';
import { coatingBodies } from './coating-bodies.ts';
import { corrodedBodies } from './corroded-bodies.ts';
import { fastenersOn } from './fastener-bodies.ts';
import { growthOn } from './growth-on.ts';
import { hangingOf } from './hanging-of.ts';
import { leastWeight } from './least-weight.ts';
import type { MassPart, MassReport } from './mass-report.ts';
import { panelBodies } from './panel-bodies.ts';
import { trapsOf } from './traps-of.ts';
import { boresOf, tubeBodies, type Bore } from './tube-bodies.ts';
import { asWeighed } from './as-weighed.ts';
import { weldBodies } from './weld-bodies.ts';

/**
 * Mass, volumes, centres, inertia, weight in water, hanging and trapped water of a plate; SI, g 9.80665 m/s².
 * Refuses a document without the water's density, and a bridle without apex. Parts, inertia and the weights all flooded and all
 * sealed are summed when they are first asked for. `fastenersFor`: `fastenersOn`, or the same remembered.
 */
export function massReport(
  document: PlateDocument,
  geometry: Geometry,
  catalogue: Catalogue,
  fastenersFor = fastenersOn,
): MassReport {
  const rho = waterDensityOf(document);
  const points = attachmentPoints(document, geometry);
  const bodies = asWeighed(document, bodiesOf(document, geometry, catalogue, points, fastenersFor));
  const bores = boresOf(geometry);
  const inBore = fillOf(bodies);

  const mass = centreOf(bodies.map((b) => ({ weight: b.mass, at: b.centre })));
  const volume = (sealed: (bore: Bore) => boolean): Centred => displaced(bodies, bores.filter(sealed), inBore);
  const asBuilt = volume(({ tube }) => !tube.flooded);
  const others = once(() => ({ flooded: volume(() => false), sealed: volume(() => true) }));
  const parts = once(() => partsOf(bodies));
  const inertia = once(() => inertiaAbout(bodies, mass.centre));
  const flooding = new Map(bores.map(({ tube }) => [tube.id, tube.flooded]));
  const entrained =
    bores.reduce((sum, { tube, volume }) => sum + (tube.flooded ? volume : 0), 0) -
    [...inBore].reduce((sum, [tube, v]) => sum + (flooding.get(tube) ? v : 0), 0);

  const weight = ({ sum }: Centred): number => (mass.sum - rho * sum) * g;
  const mayBeMissing = [
    ...bodies.filter(({ allowance }) => allowance),
    ...corrodedBodies(
      document,
      geometry,
      bodies.filter(({ kind }) => kind === 'panels'),
    ),
  ];
  const least = (density: number) => leastWeight({ mass, displaced: asBuilt }, mayBeMissing, density);
  const { hanging, findings } = hangingOf(
    document,
    points,
    { mass, displaced: asBuilt, panels: leaving(bodies, flooding) },
    rho,
  );
  return {
    get parts() {
      return parts();
    },
    total: mass.sum,
    panels: bodies.reduce((sum, b) => sum + (b.kind === 'panels' ? b.mass : 0), 0),
    waterDensity: rho,
    centre: mass.centre,
    get inertia() {
      return inertia();
    },
    entrainedWater: rho * entrained,
    growth: growthOn(document, geometry),
    displaced: {
      asBuilt: asBuilt.sum,
      get flooded() {
        return others().flooded.sum;
      },
      get sealed() {
        return others().sealed.sum;
      },
    },
    centreOfBuoyancy: asBuilt.centre,
    submergedWeight: {
      asBuilt: weight(asBuilt),
      get flooded() {
        return weight(others().flooded);
      },
      get sealed() {
        return weight(others().sealed);
      },
    },
    least: { air: least(0), water: least(rho) },
    hanging,
    ...trapsOf(geometry, document.loads.liftOut?.tilt?.si ?? 0, rho),
    findings,
  };
}

function bodiesOf(
  document: PlateDocument,
  geometry: Geometry,
  catalogue: Catalogue,
  points: ReturnType<typeof attachmentPoints>,
  fastenersFor: typeof fastenersOn,
): Body[] {
  const byId = new Map([...geometry.mainTubes, ...geometry.crossTubes].map((tube) => [tube.id, tube]));
  const { weld, tolerance, extras } = document.mass;
  const tubes = tubeBodies(geometry);
  const panels = panelBodies(geometry);
  const tubeMass = tubes.reduce((sum, b) => sum + b.mass, 0);
  const more: Body[] = extras.map((extra) => ({
    name: extra.name,
    kind: 'extras',
    mass: extra.mass.si,
    volume: extra.volume.si,
    centre: [extra.x.si, extra.y.si, extra.z.si],
    inertia: [0, 0, 0],
  }));
  // A thicker wall or plate is heavier and displaces more: mass, volume and inertia go up together.
  const rolled =
    tolerance === 0
      ? []
      : [...tubes, ...panels].map((body) =>
          scaled(body, tolerance, { name: 'Rolling tolerance', kind: 'tolerance', allowance: true }),
        );
  return [
    ...tubes,
    ...panels,
    ...geometry.panels.flatMap((panel) => fastenersFor(panel, byId, catalogue)),
    ...weldBodies(geometry, tubeMass, weld),
    ...coatingBodies(document, geometry, panels),
    ...attachmentBodies(points, catalogue),
    ...more,
    ...rolled,
  ];
}

/** Volume of bolts and sleeves in each tube's bore. */
function fillOf(bodies: readonly Body[]): ReadonlyMap<string, number> {
  const fill = new Map<string, number>();
  for (const { inBore } of bodies) if (inBore) fill.set(inBore.tube, (fill.get(inBore.tube) ?? 0) + inBore.volume);
  return fill;
}

/** Displaced volume with the given bores full of air. What stands in such a bore displaces nothing of its own: its volume
 *  is taken off where it is. */
function displaced(bodies: readonly Body[], airFilled: readonly Bore[], inBore: ReadonlyMap<string, number>): Centred {
  const sealed = new Set(airFilled.map(({ tube }) => tube.id).filter((id) => inBore.has(id)));
  return centreOf([
    ...bodies.map((b) => ({
      weight: b.volume - (b.inBore && sealed.has(b.inBore.tube) ? b.inBore.volume : 0),
      at: b.centre,
    })),
    ...airFilled.map(({ volume, centre }) => ({ weight: volume, at: centre })),
  ]);
}

/** What each panel takes with it when it is lost: itself, its bolts, welds and coating. */
function leaving(
  bodies: readonly Body[],
  flooding: ReadonlyMap<string, boolean>,
): { id: string; mass: Centred; displaced: Centred }[] {
  const groups = new Map<string, Body[]>();
  for (const body of bodies) {
    if (body.panel === undefined) continue;
    const group = groups.get(body.panel);
    if (group) group.push(body);
    else groups.set(body.panel, [body]);
  }
  return [...groups].map(([id, group]) => ({
    id,
    mass: centreOf(group.map((b) => ({ weight: b.mass, at: b.centre }))),
    displaced: centreOf(
      group.map((b) => ({
        weight: b.volume - (b.inBore && flooding.get(b.inBore.tube) === false ? b.inBore.volume : 0),
        at: b.centre,
      })),
    ),
  }));
}

function partsOf(bodies: readonly Body[]): MassPart[] {
  const groups = new Map<string, Body[]>();
  for (const body of bodies) {
    const key = `${body.kind}\n${body.name}`;
    const group = groups.get(key);
    if (group) group.push(body);
    else groups.set(key, [body]);
  }
  return [...groups.values()].map((group) => {
    const { name, kind } = group[0]!;
    const { sum, centre } = centreOf(group.map((b) => ({ weight: b.mass, at: b.centre })));
    return {
      name,
      kind,
      mass: sum,
      volume: group.reduce((v, b) => v + b.volume, 0),
      centre: sum === 0 ? group[0]!.centre : centre,
    };
  });
}

/** Diagonal of the inertia tensor about a point, by the parallel-axis theorem. */
function inertiaAbout(bodies: readonly Body[], [x, y, z]: Vector): Vector {
  const sum: [number, number, number] = [0, 0, 0];
  for (const { mass, centre, inertia } of bodies) {
    const [dx, dy, dz] = [centre[0] - x, centre[1] - y, centre[2] - z];
    sum[0] += inertia[0] + mass * (dy ** 2 + dz ** 2);
    sum[1] += inertia[1] + mass * (dx ** 2 + dz ** 2);
    sum[2] += inertia[2] + mass * (dx ** 2 + dy ** 2);
  }
  return sum;
}
