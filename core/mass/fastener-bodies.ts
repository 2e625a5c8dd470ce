import type { Catalogue } from '../catalogue/catalogue.ts';
import { massOfBolt } from '../catalogue/mass-of-bolt.ts';
import type { Bolt as BoltRow } from '../catalogue/rows.ts';
import type { BoltedFixing } from '../document/schema.ts';
import type { Bolt, Panel, Tube } from '../geometry/geometry.ts';
import { sleeveOf } from '../geometry/sleeve-of.ts';
import { barInertia, type Body } from './body.ts';
import { tubePartName } from './tube-bodies.ts';

const { PI: π, sqrt } = Math;

/**
 * A panel's bolts with nut and washers, and the steel that their holes take out of the tubes' walls (a negative body of the tubes).
 * Lengths past the nut: two pitches. Sleeve, between the tube's walls: as `sleeveOf` says. Tapped pad: 3d × 3d × d
 * inside the wall, or as stated. Clamp: a bar of the bolt's diameter round the tube, two legs with nut and washer each.
 * Density: 7850 kg/m³, stainless 7900. Common practice, no source.
 */
export function fastenersOn(panel: Panel, tubes: ReadonlyMap<string, Tube>, catalogue: Catalogue): readonly Body[] {
  const { fixing } = panel.design;
  if (fixing.kind !== 'bolted') return [];
  const row = catalogue.bolt(fixing.bolt);
  const density = catalogue.boltClass(fixing.class).family === 'stainless steel' ? 7900 : 7850;
  return panel.bolts.flatMap((bolt) => bodiesOf(panel, bolt, tubes.get(bolt.tube)!, fixing, row, density));
}

function bodiesOf(panel: Panel, bolt: Bolt, tube: Tube, fixing: BoltedFixing, row: BoltRow, density: number): Body[] {
  const { length, volume, inBore, walls } = sizes(panel, bolt, tube, fixing, row);
  const down = panel.pressedBy === 'down' ? -1 : 1;
  const outside = down < 0 ? panel.top : panel.bottom;
  const mass = density * volume;
  const wallVolume = (-π / 4) * bolt.hole ** 2 * tube.section.nominalWall * walls;
  const tubeMiddle = (tube.bottom + tube.top) / 2;
  const nearWall = (down < 0 ? tube.top : tube.bottom) + (down * tube.section.nominalWall) / 2;
  const fastener: Body = {
    name: `Bolts ${row.id}, class ${fixing.class}`,
    kind: 'fasteners',
    mass,
    volume,
    centre: [bolt.x, bolt.y, outside + (down * length) / 2],
    inertia: barInertia('z', mass, length),
    panel: panel.id,
    inBore: { tube: tube.id, volume: inBore },
  };
  if (walls === 0) return [fastener];
  // Two drilled walls stand apart by height less wall: as a bar, √3 times that distance long.
  const hole: Body = {
    name: tubePartName(tube),
    kind: 'tubes',
    mass: tube.material.density * wallVolume,
    volume: wallVolume,
    centre: [bolt.x, bolt.y, walls === 2 ? tubeMiddle : nearWall],
    inertia:
      walls === 2
        ? barInertia(
            'z',
            tube.material.density * wallVolume,
            sqrt(3) * (tube.section.height - tube.section.nominalWall),
          )
        : [0, 0, 0],
  };
  return [fastener, hole];
}

/** Length through panel and tube, volume of metal, the part of it in the bore, and how many walls are drilled. */
function sizes(
  { thickness: t }: Panel,
  { hole, x, y }: Bolt,
  { section, set, at }: Tube,
  fixing: BoltedFixing,
  row: BoltRow,
): { length: number; volume: number; inBore: number; walls: 0 | 1 | 2 } {
  const { into, pad: stated } = fixing;
  const d = row.diameter;
  const wall = section.nominalWall;
  const past = row.nutHeight + 2 * row.pitch;
  const washer = (π / 4) * (row.washerOuter ** 2 - row.washerInner ** 2) * row.washerThickness;
  const hexagon = (sqrt(3) / 2) * row.headAcrossFlats ** 2;
  const thread = (π / 4) * (d - 0.649519 * row.pitch) ** 2;
  const nut = (hexagon - thread) * row.nutHeight;
  const bolt = (grip: number): number => massOfBolt(row, grip + 2 * row.washerThickness + past, 1);
  const clear = section.height - 2 * wall;
  switch (into) {
    case 'through-bolt with sleeve': {
      const { bore, outer } = sleeveOf(fixing, hole, d);
      const sleeve = (π / 4) * (outer ** 2 - bore ** 2) * clear;
      return {
        length: t + section.height,
        volume: bolt(t + section.height) + sleeve,
        inBore: row.shankArea * clear + sleeve,
        walls: 2,
      };
    }
    case 'one-sided':
      return { length: t + wall, volume: bolt(t + wall), inBore: nut + thread * past + washer, walls: 1 };
    case 'welded stud':
      return { length: t, volume: bolt(t) - hexagon * row.headHeight - washer, inBore: 0, walls: 0 };
    case 'tapped pad': {
      const [side, thick] = stated ? [stated.width.si, stated.thickness.si] : [3 * d, d];
      const pad = (side ** 2 - thread) * thick;
      const shank = massOfBolt(row, t + row.washerThickness + wall + thick, 1) - nut - washer;
      return { length: t + wall + thick, volume: shank + pad, inBore: pad + thread * thick, walls: 1 };
    }
    case 'clamp': {
      const legs = 2 * (section.height + d / 2 + t + row.washerThickness + past);
      const across = 2 * Math.abs((set === 'main' ? y : x) - at);
      return {
        length: t + section.height,
        volume: row.shankArea * (legs + across) + 2 * (nut + washer),
        inBore: 0,
        walls: 0,
      };
    }
  }
}
