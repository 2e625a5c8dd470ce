import type { Model } from '../model.ts';
import type { Point } from '../geometry/geometry.ts';
import type { CanisterReport } from '../recovery/canisters-of.ts';
import type { RecoveryReport } from '../recovery/recovery-report.ts';
import type { Print } from '../print-in.ts';
import type { Figure, Pen, Shape } from './note.ts';

const line = (points: readonly Point[], pen: Pen): Shape => ({ kind: 'path', rings: [points], closed: false, pen });
const label = (x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'start'): Shape => ({ kind: 'label', at: [x, y], text, size: 7, anchor }); // prettier-ignore
const box = (x: number, y: number, width: number, height: number): readonly Point[] => [[x, y], [x + width, y], [x + width, y + height], [x, y + height]]; // prettier-ignore

/** The plate at its depth with what is on it, the rope as it stands once a float is up, the circle in which that lies, and the bed where it is given. To scale, metres. */
export function riggingFigure(
  { document, geometry }: Model,
  { float, canisters, rope }: RecoveryReport,
  print: Print,
): Figure {
  const depth = document.water.depth.si;
  const bed = document.recovery?.lift?.bed?.si ?? null;
  const { x0, x1 } = geometry.outline;
  const middle = (x0 + x1) / 2;
  const at = (x: number): number => x - middle;
  const reach = Math.max(float.searchRadius, x1 - x0, 0.5 * depth);
  const deepest = bed ?? 1.15 * depth;
  const thick = Math.max(0.01 * depth, 0.1);
  const canister = canisters[0]?.canister;
  const from: Point = [canister ? at(canister.x.si) : 0, -depth + thick];
  const diameter = Math.max(document.recovery!.float.diameter.si, 0.02 * depth);
  const up: Point = [from[0] + float.watchCircle, 0];
  const water: Shape[] = [
    line([[-reach, 0], [1.25 * reach, 0]], 'thin'),
    label(-reach, 0.02 * depth, 'surface'),
    ...(bed === null ? [] : [line([[-reach, -bed], [1.25 * reach, -bed]], 'outline'), label(-reach, -bed + 0.02 * depth, 'bed')]),
  ]; // prettier-ignore
  const plate: Shape[] = [
    { kind: 'path', rings: [box(at(x0), -depth, x1 - x0, thick)], closed: true, pen: 'outline', fill: 'section' },
    line([[at(x0), -depth + thick], [0, 0]], 'hidden'),
    line([[at(x1), -depth + thick], [0, 0]], 'hidden'),
    { kind: 'path', rings: [box(-0.06 * depth, -0.02 * depth, 0.12 * depth, 0.04 * depth)], closed: true, pen: 'outline', fill: 'panel' },
    ...canisters.map(({ canister: one }): Shape => {
      const wide = Math.max(one.diameter.si, 0.02 * depth);
      return { kind: 'path', rings: [box(at(one.x.si) - wide / 2, -depth + thick, wide, Math.max(one.height.si, 0.015 * depth))], closed: true, pen: 'outline', fill: 'accent' };
    }),
  ]; // prettier-ignore
  const risen: Shape[] = [
    line([from, up], 'accent'),
    { kind: 'circle', at: up, radius: diameter / 2, pen: 'accent', fill: 'paper' },
    label((from[0] + up[0]) / 2 + 0.05 * depth, -depth / 2 - 0.06 * depth, `rope, ${print.quantity(rope.length, 'm', 3)}`),
    label(up[0], 0.03 * depth, `float: within ${print.quantity(float.watchCircle, 'm', 3)} on its rope`, 'middle'),
  ]; // prettier-ignore
  return {
    kind: 'figure',
    caption:
      'Rigging in elevation, to scale: plate under its float, canisters on it, and the rope taut from its canister to the float that was let go, at the edge of its watch circle',
    alt: 'Elevation of plate, float, canisters and the rope to the risen float',
    box: { x: -reach * 1.05, y: -deepest * 1.08, width: 2.5 * reach, height: 1.08 * deepest + 0.12 * depth },
    widthShare: 0.8,
    shapes: [
      ...water,
      ...plate,
      ...risen,
      { kind: 'dimension', from: [at(x0), 0], to: [at(x0), -depth], offset: 16, text: print.quantity(depth, 'm', 3) },
    ],
  };
}

/** A canister cut through its middle: coil, cone and the room over them. To scale, metres. */
export function canisterFigure({ release, canister, needed }: CanisterReport, print: Print): Figure {
  const [D, H] = [canister.diameter.si, canister.height.si];
  const [cone, coil] = [canister.cone.si, needed - canister.clearance.si];
  const wall = 0.015 * D;
  return {
    kind: 'figure',
    caption: `Canister of release ${release} cut through its middle: the coil stands ${print.length(coil)} high around a cone of ${print.length(cone)}, and needs ${print.length(needed)} of ${print.length(H)} with the room over it${needed > H ? ': TOO LOW' : ''}`,
    alt: `Section of the rope canister of release ${release}`,
    box: { x: -0.85 * D, y: -0.3 * H, width: 1.7 * D, height: 1.5 * Math.max(H, coil) },
    widthShare: 0.5,
    shapes: [
      { kind: 'path', rings: [box(-D / 2 - wall, -wall, wall, H + wall), box(D / 2, -wall, wall, H + wall), box(-D / 2, -wall, D, wall)], closed: true, pen: 'thin', fill: 'section' },
      { kind: 'path', rings: [box(-D / 2, 0, (D - cone) / 2, coil), box(cone / 2, 0, (D - cone) / 2, coil)], closed: true, pen: 'outline', fill: 'panel' },
      label(-D / 4 - cone / 4, coil / 2, 'rope', 'middle'),
      ...(cone > 0 ? [{ kind: 'path', rings: [box(-cone / 2, 0, cone, coil)], closed: true, pen: 'thin', fill: 'paper' } as const] : []),
      { kind: 'dimension', from: [-D / 2, 0], to: [D / 2, 0], offset: 18, text: print.drawn(D) },
      { kind: 'dimension', from: [D / 2, 0], to: [D / 2, H], offset: 22, text: print.drawn(H) },
    ],
  }; // prettier-ignore
}
