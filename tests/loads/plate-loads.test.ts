import { expect, it } from 'vitest';
import { plateLoads } from '../../core/loads/plate-loads.ts';
import { resultant } from '../../core/loads/tube-lines.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { loadedPlate } from './loaded-plate.ts';
import { plates } from './plates.ts';

const even = ({ x0, x1, y0, y1 }: { x0: number; x1: number; y0: number; y1: number }) => (x1 - x0) * (y1 - y0);
const g = 9.80665;

it.each(Object.entries(plates))(
  'lays the weight of the mass report on tubes and panels, sum and centre: %s',
  (_, document) => {
    const { geometry, mass } = loadedPlate(document);
    const plate = plateLoads(geometry, mass, even, []);
    for (const medium of ['air', 'water'] as const) {
      const [F, X, Y] = resultant(plate.lines, plate.weightOfRest[medium].load);
      let [force, x, y] = [F, X, Y];
      for (const { weight, area, outline } of plate.fields) {
        const own = -weight[medium] * area;
        force += own;
        x += (own * (outline.x0 + outline.x1)) / 2;
        y += (own * (outline.y0 + outline.y1)) / 2;
      }
      const buoyancy = medium === 'water' ? g * mass.waterDensity * mass.displaced.asBuilt : 0;
      const weight = g * mass.total;
      const near = (value: number, expected: number) => expect(Math.abs(value - expected)).toBeLessThan(1e-8 * weight);
      near(force, buoyancy - weight);
      near(x, buoyancy * mass.centreOfBuoyancy[0] - weight * mass.centre[0]);
      near(y, buoyancy * mass.centreOfBuoyancy[1] - weight * mass.centre[1]);
    }
  },
);

it('lets a sealed tube float up by its bore beside flooded ones: g (ρ_s A − ρ (A + A_i)) against g (ρ_s − ρ) A for a metre', () => {
  const { geometry, mass } = loadedPlate(
    demoDocument({ grid: { mainTubes: { flooding: 'sealed' } }, mass: { weld: 0 }, panels: { A1: null, A3: null, B1: null, B3: null } }),
  ); // prettier-ignore
  const { lines, weightOfRest } = plateLoads(geometry, mass, even, []);
  const { nominalArea: A, innerArea } = lines.tubes[0]!.section;
  const perMetre = (tube: number): number => -weightOfRest.water.load[4 * lines.firstCell[tube]!]!;
  const rho = mass.waterDensity;
  // attachments, coating and the ends of tubes are spread over all tubes alike: they fall out of the difference
  const difference = perMetre(3) - perMetre(0);
  expect(Math.abs(difference / (g * rho * innerArea) - 1)).toBeLessThan(0.05);
  expect(perMetre(0)).toBeLessThan(0.7 * g * (7850 - rho) * A);
});
