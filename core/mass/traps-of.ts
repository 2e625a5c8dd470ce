import { compartmentsOf } from '../geometry/compartments-of.ts';
import type { Geometry } from '../geometry/geometry.ts';
import { g } from '../water/sea-water.ts';
import { drainTime } from './drain-time.ts';
import { heldVolume } from './held-volume.ts';

/** Water held on a panel like on a tray, or air under it like in a bell. */
export interface Trap {
  readonly bay: string;
  /** Volume when level and at the stated tilt, m³. */
  readonly level: number;
  readonly tilted: number;
  /** Mass of trapped water, kg, or lost weight in N for air; level. */
  readonly effect: number;
  /** Time to drain (or vent) through holes and gaps, s; null when nothing lets it out. */
  readonly drainTime: number | null;
}

/** Air at 15 °C and one atmosphere, kg/m³. Source: ISO 2533, from memory. */
const airDensity = 1.225;

/**
 * Trays and bells of a plate (which bays are closed: see `compartmentsOf`). Volume: opening × height of the walls; with
 * a panel on the other side nothing spills on tilting. Time: Torricelli through the panel's open area; in a bell the
 * head of water drives air out. Nothing drains where the other side lets nothing in. Seams between panel and tube are
 * taken as tight. Tilt in rad; density of water in kg/m³.
 */
export function trapsOf(
  geometry: Geometry,
  tilt: number,
  rho: number,
): { readonly trays: readonly Trap[]; readonly bells: readonly Trap[] } {
  const traps = compartmentsOf(geometry).map(({ kind, bay, a, b, height, holes, otherHoles }) => {
    const level = a * b * height;
    const lets = holes > 0 && otherHoles !== 0;
    const trap: Trap = {
      bay: bay.id,
      level,
      tilted: otherHoles === null ? heldVolume(a, b, height, tilt) : level,
      effect: kind === 'tray' ? rho * level : rho * g * level,
      drainTime: lets
        ? drainTime({ area: a * b, hole: holes, height, drive: kind === 'tray' ? g : (g * rho) / airDensity })
        : null,
    };
    return { kind, trap };
  });
  const of = (kind: 'tray' | 'bell'): Trap[] => traps.filter((t) => t.kind === kind).map(({ trap }) => trap);
  return { trays: of('tray'), bells: of('bell') };
}
