import type { Shape } from './note.ts';

/** Words beside a part of a sketch, begun at a point. */
export const sketchLabel = (x: number, y: number, text: string): Shape => ({
  kind: 'label',
  at: [x, y],
  text,
  size: 7,
  anchor: 'start',
});
