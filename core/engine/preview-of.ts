import { readDocument, readDocumentText } from '../document/read-document.ts';
import { valueAt } from '../document/edit.ts';
import { planFigure } from '../note/drawing-section.ts';
import { modelOfOption } from '../options/model-of-option.ts';
import { printIn } from '../print-in.ts';
import { Refusal } from '../refusal.ts';
import type { PreviewView } from './messages.ts';

/** A document at a glance, as it is chosen: its plan and a few facts, no check judged. What is wrong in it comes as faults. */
export function previewOf(text: string): PreviewView {
  const raw = readDocumentText(text);
  const said = (path: readonly string[]): string => {
    const value = valueAt(raw, path);
    return typeof value === 'string' ? value : '';
  };
  const named = { name: said(['project', 'name']), subject: said(['project', 'subject']) };
  try {
    const model = modelOfOption(raw, readDocument(raw), said(['chosen']) || null);
    const { document, geometry, mass } = model;
    const print = printIn(document.units);
    const { mainTubes, crossTubes, bays, panels, outline } = geometry;
    const [long, wide] = [outline.x1 - outline.x0, outline.y1 - outline.y0].map((side) => print.quantity(side, 'm', 3));
    return {
      ...named,
      plan: planFigure(model),
      facts: [
        ['Outline', `${long} × ${wide}`],
        ['Tubes', `${mainTubes.length} main, ${crossTubes.length} cross`],
        ['Bays', `${bays.length}, ${panels.reduce((n, panel) => n + panel.bays.length, 0)} closed`],
        ['Mass in air', print.quantity(mass.total, 'kg', 3)],
        ['Weight in water as built', print.quantity(mass.submergedWeight.asBuilt, 'kN', 3)],
      ],
      faults: [],
    };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ...named, plan: null, facts: [], faults: error.all };
  }
}
