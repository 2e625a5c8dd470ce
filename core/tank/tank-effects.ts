import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';

/** The tank about a plate: SI, null where not stated. */
export interface TankAround {
  /** Of the plate and of the tank, m. */
  readonly plateWidth: number;
  readonly tankWidth: number | null;
  readonly tankLength: number | null;
  /** Of the plate under the surface and over the floor, m. */
  readonly plateDepth: number | null;
  readonly aboveFloor: number | null;
}

/** What the tank may do to the numbers, as parts of them: 0.03 is three percent more. */
export interface TankEffects {
  /** At most, by the side walls: of added mass and of drag; null where the tank is not stated. */
  readonly walls: number | null;
  readonly drag: number | null;
  /** Of added mass, by floor and surface. */
  readonly floor: number | null;
  readonly surface: number | null;
}

/**
 * Estimates, not corrections.
 * Walls, added mass: at most that of a strip across a channel as wide as the tank's narrower side,
 *   m / m_0 = −8 ln cos(πβ/2) / (π² β²),  β = plate's over tank's width,
 * drag: at most 1 / (1 − S / A_tank)², by the water that has to come back past the plate.
 * Floor (rigid) and surface (short waves: no pressure): the plate's far field, a doublet, at its image a height 2h away,
 *   ΔA / A = ± (A + ρV)² / (A · 2π ρ (2h)³),
 * + for the floor, − for the surface. Error: first order in (size / 2h)³; not for h under the plate's width.
 * Source: potential flow past a row of strips by conformal mapping, and a doublet's field, H. Lamb, Hydrodynamics (from memory).
 */
export function tankEffects(
  { plateWidth, tankWidth, tankLength, plateDepth, aboveFloor }: TankAround,
  { area, volume, density }: { readonly area: number; readonly volume: number; readonly density: number },
  addedMass: number,
): TankEffects {
  const sides = [tankWidth, tankLength].filter((side): side is number => side !== null);
  const beta = sides.length === 0 ? null : plateWidth / Math.min(...sides);
  const blocked = tankWidth !== null && tankLength !== null ? area / (tankWidth * tankLength) : null;
  const image = (height: number | null): number | null =>
    height === null
      ? null
      : (addedMass + density * volume) ** 2 / (addedMass * 2 * Math.PI * density * (2 * height) ** 3);
  const surface = image(plateDepth);
  return {
    walls: beta === null || beta >= 1 ? null : (-8 * Math.log(Math.cos((Math.PI * beta) / 2))) / (Math.PI * beta) ** 2 - 1, // prettier-ignore
    drag: blocked === null || blocked >= 1 ? null : 1 / (1 - blocked) ** 2 - 1,
    floor: image(aboveFloor),
    surface: surface === null ? null : -surface,
  };
}

/** From this part on, an effect is a finding. */
const told = 0.02;

/** The effects in words: as a step where they are small, as a finding where they are not; that the tank is not stated. */
export function tankEffectWords(effects: TankEffects): {
  readonly steps: readonly string[];
  readonly findings: readonly Finding[];
} {
  // prettier-ignore
  const { walls, drag, floor, surface } = effects;
  const percent = (part: number): string => `${part < 0 ? '' : '+'}${significant(100 * part, 2)} %`;
  const parts = [
    ...(walls === null ? [] : [`its walls at most ${percent(walls)} of added mass`]),
    ...(drag === null ? [] : [`at most ${percent(drag)} of drag`]),
    ...(floor === null ? [] : [`its floor ${percent(floor)} of added mass`]),
    ...(surface === null ? [] : [`the surface ${percent(surface)}`]),
  ];
  if (parts.length === 0)
    return { steps: ['The tank’s walls, floor and surface are not stated: what they do is not estimated.'], findings: [] }; // prettier-ignore
  const text = `What the tank does, estimated and not taken off: ${parts.join(', ')}.`;
  const large = [walls, drag, floor, surface].some((part) => part !== null && Math.abs(part) > told);
  return large
    ? { steps: [], findings: [{ id: 'tank-effects', place: 'tank', text, mend: 'Test in a larger tank or with a smaller model, or keep a margin of that size.' }] } // prettier-ignore
    : { steps: [text], findings: [] };
}
