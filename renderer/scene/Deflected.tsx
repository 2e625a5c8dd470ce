import { useMemo } from 'react';
import type { DeflectedShape } from '../../core/engine/solver-view.ts';
import { quantityText, printedUnit, significant } from '../../core/quantity/format-quantity.ts';
import type { Box, Scene } from '../../core/scene/scene.ts';
import { shownSet, useSolver } from '../state/solver.ts';
import { texts } from '../texts.ts';
import type { Colour } from './colour-map.ts';
import { niceStep } from './nice-step.ts';
import { Outline } from './Outline.tsx';

/** The solved loading that is chosen, as lines displaced by the stated scale: cells of panels, axes of tubes. */
export function Deflected({ box, colour }: { readonly box: Box; readonly colour: Colour }) {
  const shown = useDeflected(box);
  const edges = useMemo(() => (shown ? deflectedEdges(shown.shape, shown.scale) : null), [shown]);
  if (!edges) return null;
  return (
    <>
      <Outline edges={edges.panels} colour={colour} width={1} />
      <Outline edges={edges.tubes} colour={colour} width={3} />
    </>
  );
}

/** What is drawn and how much larger than true. */
export function DeflectedLegend({ scene }: { readonly scene: Scene }) {
  const shown = useDeflected(scene.box);
  if (!shown) return null;
  const { view, scale, stale } = shown;
  return (
    <section className="scene-legend load" aria-label={texts.whole.shape}>
      <div className="what">
        <h3>{texts.whole.shape}</h3>
        <p>
          <b>{scale === 1 ? texts.whole.trueScale : `${texts.whole.scale} ${significant(scale, 3)}`}</b>,{' '}
          {quantityText(shown.shape.largest, printedUnit('mm', scene.units), 3)} at most
        </p>
      </div>
      <p className="path">
        {view.title}, {view.loading}. {texts.whole.sets[view.stage]}. {stale ? texts.whole.stale : ''}
        {view.settled ? '' : texts.whole.unsettled}
      </p>
    </section>
  );
}

function useDeflected({ low, high }: Box) {
  const set = useSolver(shownSet);
  const edit = useSolver((state) => state.edit);
  const loading = useSolver((state) => state.loading);
  const wanted = useSolver((state) => state.shape);
  const own = useSolver((state) => state.scale);
  return useMemo(() => {
    const view = set?.views[Math.min(loading, set.views.length - 1)];
    if (!wanted || !set || !view) return null;
    const { shape } = view;
    const reach = Math.hypot(high[0] - low[0], high[1] - low[1]);
    const scale = own ?? (shape.largest > 0 ? niceStep(reach / 20 / shape.largest) : 1);
    return { view, shape, scale, stale: set.edit !== edit };
  }, [set, edit, loading, wanted, own, low, high]);
}

function deflectedEdges({ panels, tubes }: DeflectedShape, scale: number) {
  const put = (out: number[], { places, moves }: { places: Float32Array; moves: Float32Array }, k: number): void => {
    for (let axis = 0; axis < 3; axis++) out.push(places[3 * k + axis]! + scale * moves[3 * k + axis]!);
  };
  const ofPanels: number[] = [];
  for (const panel of panels)
    // a cell's triangles are a b c and a c d: its four sides are a b c d
    for (let p = 0; p < panel.triangles.length; p += 6) {
      const [a, b, c, d] = [0, 1, 2, 5].map((i) => panel.triangles[p + i]!) as [number, number, number, number];
      for (const k of [a, b, b, c, c, d, d, a]) put(ofPanels, panel, k);
    }
  const ofTubes: number[] = [];
  for (const tube of tubes)
    for (let k = 0; 3 * (k + 1) < tube.places.length; k++) {
      put(ofTubes, tube, k);
      put(ofTubes, tube, k + 1);
    }
  return { panels: ofPanels, tubes: ofTubes };
}
