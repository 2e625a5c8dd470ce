import type { Model } from '../model.ts';
import type { Section } from './note.ts';
import type { Print } from './print-in.ts';

/** Plan and sections, drawn from the geometry. */
export function drawingSection(_model: Model, _print: Print): Section {
  return { title: 'Drawings', blocks: [] };
}
