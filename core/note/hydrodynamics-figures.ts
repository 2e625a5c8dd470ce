import type { HydrodynamicsReport } from '../hydrodynamics/hydrodynamics-of.ts';
import type { Print } from '../print-in.ts';
import type { Figure, Shape } from './note.ts';

type Point = readonly [number, number];
const label = (x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'middle'): Shape => ({ kind: 'label', at: [x, y], text, size: 7, anchor }); // prettier-ignore
const line = (points: readonly Point[], pen: 'outline' | 'thin' | 'hidden' | 'accent'): Shape => ({ kind: 'path', rings: [points], closed: false, pen }); // prettier-ignore
const [width, tall] = [60, 30];

/** Added mass (left scale) and drag coefficient (right scale) against the amplitude; both scales begin at zero. */
export function coefficientFigure({ curve, report }: HydrodynamicsReport, print: Print): Figure | null {
  if (curve.length < 2) return null;
  const solid = report.quantities['addedMass.solid']!.value;
  const mass = Math.max(solid, ...curve.map(({ addedMass }) => addedMass));
  const dragged = curve.flatMap(({ amplitude, drag }) => (drag === null ? [] : [[amplitude, drag] as const]));
  const most = Math.max(1, ...dragged.map(([, drag]) => drag));
  const far = curve.at(-1)!.amplitude;
  const at = (amplitude: number, part: number): Point => [(width * amplitude) / far, tall * part];
  const shapes: Shape[] = [line([[0, tall], [0, 0], [width, 0], [width, tall]], 'thin')]; // prettier-ignore
  for (const part of [0, 0.25, 0.5, 0.75, 1])
    shapes.push(
      line([at(0, part), at(far, part)], 'hidden'),
      label(-1, tall * part - 0.6, print.quantity(part * mass, 'kg', 3), 'end'),
      label(width + 1, tall * part - 0.6, (part * most).toFixed(1), 'start'),
      label(width * part, -3, print.quantity(part * far, 'm', 2)),
    );
  shapes.push(
    line([at(0, solid / mass), at(far, solid / mass)], 'thin'),
    line(curve.map(({ amplitude, addedMass }) => at(amplitude, addedMass / mass)), 'outline'),
    line(dragged.map(([amplitude, drag]) => at(amplitude, drag / most)), 'accent'),
  ); // prettier-ignore
  return {
    kind: 'figure',
    caption: 'Added mass (dark, left) and drag coefficient (coloured, right) against the amplitude of heave. Thin: added mass of the solid plate. Best values; the spread is a factor of two or more', // prettier-ignore
    alt: 'Curves of added mass and drag coefficient against amplitude',
    box: { x: -14, y: -5, width: width + 24, height: tall + 7 },
    widthShare: 0.8,
    shapes,
  };
}

/** Pressure that presses with the acceleration, on the plan: each square as filled as the pressure there is of the largest. */
export function pressureFigure({ pressure }: HydrodynamicsReport): Figure | null {
  if (!pressure) return null;
  const { frame, jump } = pressure;
  const largest = jump.reduce((most, value) => Math.max(most, value), 0);
  if (!(largest > 0)) return null;
  const shapes: Shape[] = [];
  // A square stands for two by two cells: more would be too fine to print.
  const [nx, ny] = [Math.ceil(frame.nx / 2), Math.ceil(frame.ny / 2)];
  for (let j = 0; j < ny; j++)
    for (let i = 0; i < nx; i++) {
      let [sum, count] = [0, 0];
      for (const y of [2 * j, 2 * j + 1])
        for (const x of [2 * i, 2 * i + 1])
          if (x < frame.nx && y < frame.ny) [sum, count] = [sum + jump[y * frame.nx + x]!, count + 1];
      const half = 0.5 * Math.sqrt(Math.max(0, sum / count / largest));
      if (half < 0.05) continue;
      const [x, y] = [i + 0.5, j + 0.5];
      shapes.push({ kind: 'path', rings: [[[x - half, y - half], [x + half, y - half], [x + half, y + half], [x - half, y + half]]], closed: true, pen: 'none', fill: 'accent' }); // prettier-ignore
    }
  return {
    kind: 'figure',
    caption: 'Pressure of the inertia on the plan at the stated motion: the part of a square that is filled is the pressure over the largest', // prettier-ignore
    alt: 'Map of the inertia pressure over the plan, largest where the squares are full',
    box: { x: -1, y: -1, width: nx + 2, height: ny + 2 },
    widthShare: 0.55,
    shapes,
  };
}

/** What is left of the surface's rise, down to the bed or to half a wave length. */
export function decayFigure({ sea }: HydrodynamicsReport, plateDepth: number, print: Print): Figure | null {
  if (!sea) return null;
  const deepest = sea.decay.at(-1)![0];
  const at = (part: number, depth: number): Point => [width * part, tall * (1 - depth / deepest)];
  const shapes: Shape[] = [line([[0, 0], [0, tall], [width, tall]], 'thin')]; // prettier-ignore
  for (const part of [0, 0.25, 0.5, 0.75, 1])
    shapes.push(
      line([at(part, 0), at(part, deepest)], 'hidden'),
      label(width * part, tall + 1.2, `${100 * part} %`),
      label(-1, at(0, part * deepest)[1] - 0.6, print.quantity(part * deepest, 'm', 3), 'end'),
    );
  shapes.push(
    line(sea.decay.map(([depth, part]) => at(part, depth)), 'outline'),
    line([at(0, plateDepth), at(1, plateDepth)], 'accent'),
    label(width, at(0, plateDepth)[1] + 0.6, 'plate', 'end'),
  ); // prettier-ignore
  return {
    kind: 'figure',
    caption: 'Vertical motion of the water under a wave of the peak period, as a part of that at the surface, by depth',
    alt: 'Curve of the wave motion that is left against depth, with the plate’s depth marked',
    box: { x: -14, y: -1, width: width + 20, height: tall + 5 },
    widthShare: 0.7,
    shapes,
  };
}
