import type { Figure } from './note.ts';
import { sketchLabel } from './sketch-label.ts';

/** Which way is positive: a plate that a ram drives by a line, with travel and force as the fit takes them. No scale. */
export const tankSketch: Figure = {
  kind: 'figure',
  caption: 'Signs: travel z counts upwards, force F is what the line pulls at the plate, its weight in water included',
  alt: 'Sketch of a plate hung from a ram by a line: travel counts upwards, the force is the pull of the line',
  box: { x: 0, y: 0, width: 100, height: 42 },
  widthShare: 0.6,
  shapes: [
    { kind: 'path', rings: [[[4, 29], [96, 29]]], closed: false, pen: 'hidden' },
    { kind: 'path', rings: [[[47, 35], [53, 35], [53, 41], [47, 41]]], closed: true, pen: 'outline', fill: 'section' },
    { kind: 'path', rings: [[[50, 35], [50, 12]]], closed: false, pen: 'outline' },
    { kind: 'path', rings: [[[25, 8], [75, 8], [75, 12], [25, 12]]], closed: true, pen: 'outline', fill: 'panel' },
    { kind: 'arrow', from: [50, 14], to: [50, 25], pen: 'accent' },
    { kind: 'arrow', from: [84, 6], to: [84, 22], pen: 'accent' },
    sketchLabel(52, 20, 'F: pull of the line, at the load cell'),
    sketchLabel(86, 14, 'z: up'),
    sketchLabel(5, 31, 'still water'),
    sketchLabel(55, 37, 'ram or winch'),
    sketchLabel(26, 3, 'plate: mass, volume, area'),
  ],
}; // prettier-ignore
