import type { CanisterFields, RecoveryFields, ReleaseFields } from '../document/recovery-field.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { MassReport } from '../mass/mass-report.ts';
import { equipmentOf, lengthOfRope } from './equipment.ts';
import { canisterHeight, stowedVolume } from './rope-stowage.ts';

/** A rope canister and what it must hold. SI. */
export interface CanisterReport {
  readonly release: string;
  readonly canister: CanisterFields;
  /** Of the coiled rope, and the height that it needs with its clearance. */
  readonly stowed: number;
  readonly needed: number;
  /** Diameter by height that would hold it: for the choice of a size. */
  readonly sizes: readonly { readonly diameter: number; readonly height: number }[];
  /** Whether the rope runs out free, and why not. */
  readonly runsFree: readonly string[];
}

/** The canisters of the chosen way. */
export function canistersOf(document: PlateDocument): readonly CanisterReport[] {
  const recovery = document.recovery as RecoveryFields;
  const way = recovery.ways.find(({ id }) => id === recovery.chosen)!;
  const { rope } = recovery;
  const stowed = stowedVolume(rope.diameter.si, lengthOfRope(document), rope.packing.solid);
  return way.releases.flatMap((id) => {
    const release = recovery.releases.find((one) => one.id === id) as ReleaseFields;
    const { canister } = release;
    if (!canister) return [];
    const { diameter, cone, clearance } = canister;
    return [
      {
        release: id,
        canister,
        stowed,
        needed: canisterHeight(stowed, diameter.si, cone.si, clearance.si),
        sizes: [0.3, 0.4, 0.5, 0.6, 0.8].filter((D) => D > cone.si + 0.05).map((D) => ({ diameter: D, height: canisterHeight(stowed, D, cone.si, clearance.si) })), // prettier-ignore
        runsFree: hindrances(recovery, canister),
      },
    ];
  });
}

/** Rope diameters across the middle that a coil keeps open: common practice, no source. */
const tightest = 8;

function hindrances({ rope }: RecoveryFields, { cone, lay, diameter }: CanisterFields): string[] {
  const d = rope.diameter.si;
  return [
    ...(cone.si < tightest * d ? [`The middle of the coil is open to ${(cone.si / d).toFixed(1)} rope diameters: a cone of ${tightest} or more keeps turns from falling in and kinking.`] : []), // prettier-ignore
    ...(diameter.si < 2.5 * tightest * d ? [`The canister is ${(diameter.si / d).toFixed(0)} rope diameters wide: turns lie too tight to run out free.`] : []), // prettier-ignore
    ...(lay === 'against the lay' ? ['The rope is coiled against its lay: it throws kinks as it runs out. Turn it in with the lay, or in figures of eight.'] : []), // prettier-ignore
  ];
}

/** Centre of mass of the plate with the equipment that the document places, and how far that moved it in plan, m. */
export function centreWith(
  document: PlateDocument,
  { total, centre }: Pick<MassReport, 'total' | 'centre'>,
): { readonly centre: readonly [number, number, number]; readonly moved: number } {
  const recovery = document.recovery as RecoveryFields;
  const way = recovery.ways.find(({ id }) => id === recovery.chosen)!;
  const placed = equipmentOf(document, way).flatMap(({ mass, at }) => (at ? [{ mass, at }] : []));
  const mass = total + placed.reduce((sum, item) => sum + item.mass, 0);
  const of = (k: 0 | 1 | 2): number => (total * centre[k] + placed.reduce((sum, item) => sum + item.mass * item.at[k], 0)) / mass; // prettier-ignore
  const moved = [of(0), of(1), of(2)] as const;
  return { centre: moved, moved: Math.hypot(moved[0] - centre[0], moved[1] - centre[1]) };
}
