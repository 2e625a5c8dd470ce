import { expect, it } from 'vitest';
import { sumOf, loaded } from '../../core/loads/loaded.ts';
import { plateLoads, type Place, type PlateLoads } from '../../core/loads/plate-loads.ts';
import { Supports, type Held } from '../../core/loads/supports.ts';
import { TubeEnvelope } from '../../core/loads/tube-envelope.ts';
import { cellResultant, layLoads, type LineLoad } from '../../core/loads/tube-lines.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { loadedPlate } from './loaded-plate.ts';

// A square frame: two main tubes and two cross tubes, L between centre lines, no overhang, no panels.
const L = 2;
const frameOf = (places: readonly Place[], over: object = {}): PlateLoads => {
  const document = demoDocument({
    grid: {
      mainTubes: { count: 2, spacing: `${L} m`, overhang: '0 m' },
      crossTubes: { count: 2, spacing: `${L} m`, overhang: '0 m' },
      suspension: { kind: 'strut', apex: null, attachments: [{ id: 'S', x: '0 m', y: '0 m' }] },
    },
    panels: { A1: null, A3: null, B1: null, B3: null },
  }, over); // prettier-ignore
  const { geometry, mass } = loadedPlate(document);
  return plateLoads(geometry, mass, ({ x0, x1, y0, y1 }) => (x1 - x0) * (y1 - y0), places);
};
const onMain = (tube: 0 | 1, at: number): Place => ({
  tube,
  at,
  crossing: at === 0 || at === L ? `${'AB'[tube]}/${at === 0 ? 1 : 2}` : null,
  x: at,
  y: tube * L,
});

const w = 3000;
/** w N/m down on both main tubes, from crossing to crossing. */
const both = (first: number, last: number, offset = 0): LineLoad[] =>
  [0, 1].map((tube) => ({ tube, from: 0, to: L, first: -first, last: -last, offset: (tube ? -1 : 1) * offset }));

function hold(
  plate: PlateLoads,
  loads: readonly LineLoad[],
  oneWay = false,
): { held: Held; tubes: ReturnType<TubeEnvelope['forces']> } {
  const load = layLoads(plate.lines, loads, new Float64Array(4 * plate.lines.from.length));
  const supports = new Supports(
    plate.points.map((point, i) => ({ id: `S${i}`, point })),
    plate.frame,
    plate.spread,
  );
  const [held] = supports.hold(loaded(plate.frame, load), { present: plate.points.map((_, i) => i), oneWay, skew: 1 });
  const envelope = new TubeEnvelope(plate.frame);
  envelope.add(held!.motion, held!.load, held!.plane);
  return { held: held!, tubes: envelope.forces() };
}
const near = (value: number, expected: number, tolerance = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThan(tolerance * Math.abs(expected) + 1e-9);

const corners = [onMain(0, 0), onMain(0, L), onMain(1, L), onMain(1, 0)];

it('bends tubes between four corner supports as simple beams under even load: w L²/8, w L/2, 5 w L⁴/384 E I + w L²/8 G A (any beam table)', () => {
  const plate = frameOf(corners);
  const { held, tubes } = hold(plate, both(w, w));
  const { section, material } = plate.lines.tubes[0]!;
  const EI = material.youngModulus * section.inertiaY;
  const GA = (material.youngModulus / 2.6) * section.shearAreaZ;
  for (const id of ['A', 'B']) {
    near(tubes.get(id)!.moment, (w * L ** 2) / 8);
    near(tubes.get(id)!.shear, (w * L) / 2);
    near(tubes.get(id)!.deflection, (5 * w * L ** 4) / (384 * EI) + (w * L ** 2) / (8 * GA), 2e-3); // read at ends of cells, of which one is the middle's peak
    near(tubes.get(id)!.torque, 0);
  }
  for (const id of ['1', '2']) near(tubes.get(id)!.moment, 0);
  for (const V of held.forces) near(V, (w * L) / 2);
});

it('gives 2 W L/(9 √3) for a load that rises from nothing to one end, 0.1283 W L (Roark, Table 8.1, simple beam)', () => {
  const { tubes } = hold(frameOf(corners), both(0, w));
  const W = (w * L) / 2;
  near(tubes.get('A')!.moment, (2 * W * L) / (9 * Math.sqrt(3)));
  near(tubes.get('A')!.shear, (2 * W) / 3);
});

it('bends tubes hung at their middles as cantilevers: w (L/2)²/2 (any beam table)', () => {
  const { held, tubes } = hold(frameOf([onMain(0, L / 2), onMain(1, L / 2)]), both(w, w), true);
  near(tubes.get('A')!.moment, (w * (L / 2) ** 2) / 2);
  near(tubes.get('A')!.shear, (w * L) / 2);
  for (const V of held.forces) near(V, w * L);
  near(Math.hypot(...held.couple), 0);
});

it('carries a load beside the tubes’ axes into the cross tubes: an even moment q d L/2 in each (statics)', () => {
  const d = 0.06;
  const { tubes } = hold(frameOf(corners), both(w, w, d));
  for (const id of ['1', '2']) {
    near(tubes.get(id)!.moment, (w * d * L) / 2);
    near(tubes.get(id)!.shear, 0);
  }
  near(tubes.get('A')!.torque, (w * d * L) / 2);
  near(tubes.get('A')!.moment, (w * L ** 2) / 8);
});

it('twists a shaft under torque that grows to one end between springs of k = 2 E I/L, as integrated by hand', () => {
  const d = 0.06;
  const plate = frameOf(corners);
  const { tubes } = hold(plate, both(0, w, d));
  const { section, material } = plate.lines.tubes[0]!;
  const GJ = (material.youngModulus / 2.6) * section.torsion;
  const k = (2 * material.youngModulus * plate.lines.tubes[2]!.section.inertiaY) / L;
  // T_1 + T_2 = w d L/2 and (T_2 − T_1)/k = (T_1 L − w d L²/6)/G J
  const T_1 = ((w * d * L) / (2 * k) + (w * d * L ** 2) / (6 * GJ)) / (2 / k + L / GJ);
  near(tubes.get('1')!.moment, T_1);
  near(tubes.get('2')!.moment, (w * d * L) / 2 - T_1);
});

it('balances a free square frame by its own inertia: w on two sides is w/2 of inertia on all four, so M = w L²/16 (statics)', () => {
  const plate = frameOf([]);
  const load = layLoads(plate.lines, both(w, w), new Float64Array(4 * plate.lines.from.length));
  const free = loaded(plate.frame, load);
  const balanced = sumOf(free, [[free, 1], [plate.rising, 2 * w * L]]); // prettier-ignore
  const [held] = new Supports([], plate.frame, plate.spread).hold(balanced, { present: [], oneWay: true, skew: 1 });
  const envelope = new TubeEnvelope(plate.frame);
  envelope.add(held!.motion, held!.load, held!.plane);
  const tubes = envelope.forces();
  near(tubes.get('A')!.moment, (w * L ** 2) / 16);
  near(tubes.get('1')!.moment, (w * L ** 2) / 16);
  near(Math.hypot(...held!.couple), 0);
});

it('shares between one more support than statics needs by stiffness: three on a beam get 3/16, 5/8, 3/16 of w 2l (any beam table)', () => {
  // shear stiffness is left in, so the middle gets a little less than 5/8: two spans l = L/2 with Φ = 12 E I/(G A l²)
  const { held } = hold(frameOf([...corners, onMain(0, L / 2), onMain(1, L / 2)]), both(w, w));
  const plate = frameOf(corners);
  const { section, material } = plate.lines.tubes[0]!;
  const EI = material.youngModulus * section.inertiaY;
  const GA = (material.youngModulus / 2.6) * section.shearAreaZ;
  // force method: sag of the simple beam over what a unit force in the middle lifts
  const middle = ((5 * w * L ** 4) / (384 * EI) + (w * L ** 2) / (8 * GA)) / (L ** 3 / (48 * EI) + L / (4 * GA));
  near(held.forces[4]!, middle);
  near(held.forces[5]!, middle);
  near(held.forces[0]!, (w * L - middle) / 2);
  expect(Math.abs(middle / (w * L) - 5 / 8)).toBeLessThan(0.02);
});

it('lets a one-way support go slack and gives its part to the others', () => {
  // loads near one end only: the far support of three in a row would have to push
  const { held } = hold(frameOf([...corners, onMain(0, L / 2), onMain(1, L / 2)]), [0, 1].map((tube) => ({ tube, from: 0, to: L, first: -w, last: 0, offset: 0 })), true); // prettier-ignore
  expect(Math.min(...held.forces)).toBeGreaterThanOrEqual(0);
  near(
    held.forces.reduce((sum, V) => sum + V, 0),
    w * L,
  );
  const bent = hold(frameOf([...corners, onMain(0, L / 4), onMain(1, L / 4)]), [{ tube: 0, from: 0, to: L, first: -w, last: w / 3, offset: 0 }, { tube: 1, from: 0, to: L, first: -w, last: w / 3, offset: 0 }], true).held; // prettier-ignore
  expect(bent.slack.length).toBeGreaterThan(0);
  for (const i of bent.slack) expect(bent.forces[i]).toBe(0);
});

it('holds Σ of the main tubes’ moments to the moment of all on one side of any cut (statics), whatever the stiffness', () => {
  const { geometry, mass } = loadedPlate(demoDocument({ loads: { service: { includes: ['drag'] } } }));
  const places = [onMain(0, 0.4), onMain(0, 3.1), { tube: 2, at: 1.9, crossing: null, x: 1.9, y: 2.6 }].map((p, i) => ({ ...p, crossing: null, y: i === 2 ? 2.6 : 0 })); // prettier-ignore
  const plate = plateLoads(geometry, mass, ({ x0, x1, y0, y1 }) => (x1 - x0) * (y1 - y0), places);
  const { lines } = plate;
  const supports = new Supports(plate.points.map((point, i) => ({ id: `${i}`, point })), plate.frame, plate.spread); // prettier-ignore
  const load = sumOf(plate.rising, [[plate.weightOfRest.air, 1], [plate.onTubes.area, -40_000]]); // prettier-ignore
  const [held] = supports.hold(load, { present: [0, 1, 2], oneWay: false, skew: 1 });
  let cuts = 0;
  for (const x of new Set(lines.from)) {
    const inCell = lines.firstCell
      .slice(0, 3)
      .every((first, tube) =>
        Array.from({ length: lines.firstCell[tube + 1]! - first }, (_, k) => lines.to[first + k]).includes(x),
      );
    if (!inCell || geometry.crossTubes.some(({ at }) => at === x) || places.some(({ at }) => at === x)) continue;
    const moments = new Map<number, number>();
    plate.frame.walk(held!.motion, held!.load, (tube, place, M) => tube < 3 && place === x && moments.set(tube, M));
    if (moments.size < 3) continue;
    let statics = 0;
    const part = new Float64Array(3);
    for (let e = 0; e < lines.from.length; e++) {
      const own = lines.tubeOf[e]! < 3;
      if ((own ? lines.to[e]! : lines.tubes[lines.tubeOf[e]!]!.at) > x) continue;
      part.fill(0);
      cellResultant(lines, held!.load, e, part);
      statics += part[0]! * x - part[1]!;
    }
    places.forEach((place, i) => (statics += place.x <= x ? held!.forces[i]! * (x - place.x) : 0));
    near(
      [...moments.values()].reduce((sum, M) => sum + M, 0),
      statics,
      1e-7,
    );
    cuts++;
  }
  expect(cuts).toBeGreaterThanOrEqual(3);
});
