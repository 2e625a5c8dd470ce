import { drawingSection } from '../../core/note/drawing-section.ts';
import type { Figure } from '../../core/note/note.ts';
import type { Model } from '../../core/model.ts';

/** How many slots the plan and the first panel's figure draw, and that figure's caption. */
export function modelFigures(model: Model): { plan: number; panel: number; caption: string } {
  const figures = drawingSection(model).blocks.filter((block): block is Figure => block.kind === 'figure');
  const slots = ({ shapes }: Figure): number =>
    shapes.filter((shape) => shape.kind === 'path' && shape.fill === 'paper').length;
  return { plan: slots(figures[0]!), panel: slots(figures[1]!), caption: figures[1]!.caption };
}
