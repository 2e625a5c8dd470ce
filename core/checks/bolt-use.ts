import type { Model } from '../model.ts';
import type { UseOfFixing } from '../plate/unzipping.ts';
import type { CheckRow } from './check-row.ts';

/**
 * How much of a bolt's resistance it uses, by the resistances of the checks of the panel it holds: tension (of the bolt, and
 * of the panel that its head draws through) and shear, and both together
 *    EN 1993-1-8:2005, Table 3.4:    F_v/F_v_Rd + F_t/(1.4 F_t_Rd) ≤ 1
 *    AISC 360, J3.7, the same rule:  F_t/F_t_a ≤ 1.3 - F_v/F_v_a
 * Resistances are those of a lost row, with the factors of accidents, else those of service. Null for a weld, and where a
 * check could not be judged.
 */
export function boltUse(model: Model, rows: readonly CheckRow[]): UseOfFixing {
  const known = new Map<string, { readonly tension: number; readonly shear: number } | null>();
  const least = (ids: readonly string[], bays: ReadonlySet<string>): number | null => {
    const of = (loadCase: CheckRow['loadCase']): number[] =>
      rows.flatMap(({ id, place, capacity, loadCase: own }) => (ids.includes(id) && bays.has(place) && own === loadCase && capacity !== null ? [capacity] : [])); // prettier-ignore
    const lost = of('lost bolt row');
    const values = lost.length > 0 ? lost : of('service');
    return values.length > 0 ? Math.min(...values) : null;
  };
  const resistance = (panel: string) => {
    const found = known.get(panel);
    if (found !== undefined) return found;
    const bays = new Set(model.panels.get(panel)!.bays);
    const tension = least(['bolt-tension', 'bolt-pull-through'], bays);
    const shear = least(['bolt-shear'], bays);
    const made = tension === null || shear === null ? null : { tension, shear };
    known.set(panel, made);
    return made;
  };
  const together = model.basis.safety === 'partial factors' ? (t: number, v: number): number => v + t / 1.4 : (t: number, v: number): number => (v + t) / 1.3; // prettier-ignore
  return (force) => {
    if (!('shear' in force)) return null;
    const own = resistance(force.panel);
    if (!own) return null;
    const [t, v] = [Math.max(force.pull, 0) / own.tension, force.shear / own.shear];
    return Math.max(t, v, together(t, v));
  };
}
