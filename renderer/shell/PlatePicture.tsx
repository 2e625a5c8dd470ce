import { useEffect, useMemo } from 'react';
import type { Scene, ScenePart } from '../../core/scene/scene.ts';
import { SceneStage, usePlateView } from '../scene/SceneStage.tsx';
import { showPart } from '../scene/show-views.ts';
import { shownLoading, useSolver } from '../state/solver.ts';
import { usePicture } from '../state/picture.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { useBentPicture, useFields } from './use-bent-picture.ts';

/** The plate as it is built, in step with the sheet: what is selected in one is selected in the other. */
export function PlatePicture() {
  const scene = useWorkbench((state) => state.scene);
  const checked = useWorkbench((state) => state.readings);
  const solved = useSolver((state) => shownLoading(state)?.readings);
  const readings = useMemo(() => [...checked, ...(solved ?? [])], [checked, solved]);
  const selection = useWorkbench((state) => state.selection);
  const openCheck = useWorkbench((state) => state.openCheck);
  const fields = useFields();
  const settings = usePicture();
  const bent = useBentPicture(scene);
  const store = usePlateView();
  const selected = scene && selection !== null ? partOf(scene, selection) : undefined;
  // A check that is opened turns the picture to its place.
  useEffect(() => {
    const part = scene && openCheck ? partOf(scene, openCheck.place) : undefined;
    if (scene && part) showPart(store, scene, part.id);
  }, [store, scene, openCheck]);
  if (!scene) return <p className="quiet">{texts.headline.noResult}</p>;
  return (
    <SceneStage
      scene={scene}
      readings={readings}
      fields={fields}
      bent={bent}
      settings={settings}
      onSettings={usePicture.setState}
      store={store}
      selection={selected?.id ?? null}
      onSelect={(id) => select(scene, id)}
    />
  );
}

/** The part that a place means: its panel where there is one. */
function partOf({ parts }: Scene, place: string): ScenePart | undefined {
  const here = parts.filter((part) => part.place === place || part.bays.includes(place));
  return here.find(({ kind }) => kind === 'panel') ?? here[0] ?? parts.find(({ id }) => id === place);
}

/** A click on a part selects its place, chooses its bays and opens the sheet where its inputs are. */
function select({ parts }: Scene, id: string | null): void {
  const part = parts.find((other) => other.id === id);
  if (!part) return useWorkbench.setState({ selection: null });
  const { kind, place, bays } = part;
  const bay = kind === 'bay' ? place : bays[0];
  useWorkbench.setState({
    selection: kind === 'bolt' || (kind === 'weld' && bay !== undefined) || kind === 'panel' ? (bay ?? place) : place,
    sheet:
      kind === 'bolt' || (kind === 'weld' && bay !== undefined)
        ? 'fixings'
        : kind === 'panel' || kind === 'bay'
          ? 'panels'
          : 'grid',
    ...(kind === 'panel' || kind === 'bay' ? { bays: kind === 'bay' ? [place] : bays } : {}),
  });
}
