import type { Figure } from './note.ts';
import { sketchLabel } from './sketch-label.ts';

/** What the loggers record, and which way is positive: a float, the stroke inside it, the line and the plate. No scale. */
export const seaSketch: Figure = {
  kind: 'figure',
  caption: 'Signs: accelerations and pitch as the arrows; the stroke s grows when the plate goes away from the float',
  alt: 'Sketch of a float with an accelerometer, a stroke inside, a line and a plate below',
  box: { x: 0, y: 0, width: 112, height: 60 },
  widthShare: 0.6,
  shapes: [
    { kind: 'path', rings: [[[2, 44], [30, 44]], [[66, 44], [108, 44]]], closed: false, pen: 'hidden' },
    { kind: 'path', rings: [[[32, 41], [64, 41], [64, 50], [32, 50]]], closed: true, pen: 'outline', fill: 'section' },
    { kind: 'path', rings: [[[48, 41], [48, 12]]], closed: false, pen: 'outline' },
    { kind: 'path', rings: [[[30, 8], [66, 8], [66, 12], [30, 12]]], closed: true, pen: 'outline', fill: 'panel' },
    { kind: 'circle', at: [40, 47], radius: 1.2, pen: 'accent', fill: 'accent' },
    { kind: 'arrow', from: [40, 47], to: [40, 57], pen: 'accent' },
    { kind: 'arrow', from: [40, 47], to: [28, 47], pen: 'accent' },
    { kind: 'arrow', from: [51, 40], to: [51, 30], pen: 'accent' },
    { kind: 'arrow', from: [45, 18], to: [45, 26], pen: 'accent' },
    { kind: 'circle', at: [60, 13.5], radius: 1.2, pen: 'accent', fill: 'accent' },
    { kind: 'arrow', from: [60, 13.5], to: [60, 21], pen: 'accent' },
    sketchLabel(42, 54, 'acceleration, up'),
    sketchLabel(4, 49, 'ahead'),
    sketchLabel(53, 33, 's: stroke'),
    sketchLabel(50, 24, 'line angle from the vertical'),
    sketchLabel(18, 21, 'force: pull'),
    sketchLabel(62, 16, 'plate acceleration, pressure'),
  ],
}; // prettier-ignore
