import { useMemo } from 'react';
import { printedUnit, quantityText, significant } from '../../core/quantity/format-quantity.ts';
import { fieldOf, fieldTitles, type FieldTitle } from '../../core/scene/field.ts';
import type { Scene } from '../../core/scene/scene.ts';
import type { BentPicture } from '../scene/bent-picture.ts';
import { niceStep } from '../scene/nice-step.ts';
import { fieldReading, usePicture } from '../state/picture.ts';
import { shownLoading, shownMotion, shownSet, useSolver } from '../state/solver.ts';
import { texts } from '../texts.ts';

const t = texts.whole;

/** Fields that can be laid over the plate now: those of a loading of the plate as it stands. */
export const useFields = (): readonly FieldTitle[] => (useSolver(shownLoading) ? fieldTitles : noFields);
const noFields: readonly FieldTitle[] = [];

/** What the solver found, as it is to be drawn: a motion where one is chosen, else the loading with its field and forces. */
export function useBentPicture(scene: Scene | null): BentPicture | null {
  const set = useSolver(shownSet);
  const edit = useSolver((state) => state.edit);
  const loading = useSolver((state) => state.loading);
  const direction = useSolver((state) => state.direction);
  const envelope = useSolver((state) => state.envelope);
  const isShaped = useSolver((state) => state.shape);
  const own = useSolver((state) => state.scale);
  const kind = useSolver((state) => state.marks);
  const isPlaying = useSolver((state) => state.playing);
  const chosen = useSolver((state) => state.motion);
  const motions = useSolver((state) => state.motions);
  const reading = usePicture((state) => state.reading);
  const motion = useMemo(() => shownMotion({ ...useSolver.getState(), motion: chosen, motions }), [chosen, motions]);

  const view = set?.views[Math.min(loading, set.views.length - 1)] ?? null;
  const isNow = set?.edit === edit;
  const field = useMemo(() => {
    const title = fieldTitles.find(({ id }) => fieldReading(id) === reading);
    if (!title || !view || !set || !isNow || motion) return null;
    const of = envelope
      ? set.views.filter((other) => (!direction || other.direction === direction) && hasMeshOf(other, view))
      : [view];
    return { field: fieldOf(title.id, of), loadings: of.map((one) => `${one.title}, ${one.loading}`) };
  }, [reading, view, set, isNow, envelope, direction, motion]);

  return useMemo(() => {
    if (!scene) return null;
    const { low, high } = scene.box;
    const reach = Math.hypot(high[0] - low[0], high[1] - low[1]);
    const fitting = (largest: number): number => (largest > 0 ? niceStep(reach / 20 / largest) : 1);
    if (motion) {
      const scale = own === null ? fitting(motion.view.shape.largest) : own * fitting(motion.view.shape.largest);
      return {
        shape: motion.view.shape,
        scale,
        isSwinging: isPlaying,
        field: null,
        marks: null,
        title: motion.view.title,
        said: [motion.view.said, ...(motion.edit === edit ? [] : [t.stale])].join(' '),
        size: t.freeSize(quantityText(scale, printedUnit('mm', scene.units), 2)),
        loadings: [],
        loadCase: '',
      };
    }
    if (!view || !set) return null;
    const marks = (isNow && view.marks.find((each) => each.kind === kind)) || null;
    if (!isShaped && !field && !marks) return null;
    const scale = isShaped ? (own ?? fitting(view.shape.largest)) : null;
    const largest = quantityText(view.shape.largest, printedUnit('mm', scene.units), 3);
    return {
      shape: view.shape,
      scale,
      isSwinging: false,
      field: field?.field ?? null,
      marks,
      title: `${view.title}, ${view.loading}`,
      said: [`${t.sets[view.stage]}.`, ...(isNow ? [] : [t.stale]), ...(view.settled ? [] : [t.unsettled])].join(' '),
      size: `${scale === 1 ? t.trueScale : `${t.scale} ${significant(scale ?? 0, 3)}`}, ${t.atMost(largest)}`,
      loadings: field?.loadings ?? [],
      loadCase: `${view.title}, ${view.loading}`,
    };
  }, [scene, view, set, isNow, field, kind, isShaped, own, motion, isPlaying, edit]);
}

type Meshed = { readonly shape: BentPicture['shape'] };

/** With a part lost there is another mesh: its values lie elsewhere. */
const hasMeshOf = (one: Meshed, other: Meshed): boolean =>
  one.shape.panels.length === other.shape.panels.length &&
  one.shape.panels.every(({ places }, i) => places.length === other.shape.panels[i]!.places.length) &&
  one.shape.tubes.every(({ at }, i) => at.length === other.shape.tubes[i]!.at.length);
