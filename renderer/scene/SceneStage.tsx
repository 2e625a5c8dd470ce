import { useMemo, useRef, useState } from 'react';
import type { RootState } from '@react-three/fiber';
import type { FieldTitle } from '../../core/scene/field.ts';
import type { Reading } from '../../core/scene/reading.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { directions } from './camera.ts';
import { BentLegends } from './BentLegends.tsx';
import type { BentPicture } from './bent-picture.ts';
import { Legend } from './Legend.tsx';
import { LoadLegend } from './LoadLegend.tsx';
import { usePalette } from './palette.ts';
import { PartList } from './PartList.tsx';
import { PlateScene } from './PlateScene.tsx';
import { firstSettings, SceneTools, type SceneSettings } from './SceneTools.tsx';
import { viewStore, type ViewStore } from './view-store.ts';

/** A view store for a stage; keep it outside to turn the plate from elsewhere (`showPart`, `showNamed`). */
export const usePlateView = (): ViewStore =>
  useMemo(() => viewStore({ ...directions.oblique, target: [0, 0, 0], scale: 100 }), []);

/** Picture, tools, legends and list of parts, with settings of its own unless they are given. */
export function SceneStage({
  scene,
  readings,
  fields,
  bent = null,
  store,
  selection,
  onSelect,
  settings: given,
  onSettings,
  onReady,
}: {
  readonly scene: Scene;
  readonly readings: readonly Reading[];
  readonly fields?: readonly FieldTitle[];
  /** What the solver found, to be drawn in the place of the plate that stands still. */
  readonly bent?: BentPicture | null;
  readonly store: ViewStore;
  /** Part id. */
  readonly selection: string | null;
  readonly onSelect: (part: string | null) => void;
  readonly settings?: SceneSettings;
  readonly onSettings?: (settings: SceneSettings) => void;
  readonly onReady?: (root: RootState) => void;
}) {
  const [own, setOwn] = useState(firstSettings);
  const [hover, setHover] = useState<string | null>(null);
  const stage = useRef<HTMLDivElement>(null);
  const palette = usePalette(stage);
  const settings = given ?? own;
  const reading = readings.find(({ id }) => id === settings.reading) ?? null;
  const load = scene.loads.find(({ id }) => id === settings.load) ?? null;
  return (
    <div className="scene-stage" ref={stage}>
      <SceneTools
        scene={scene}
        readings={readings}
        fields={fields}
        store={store}
        settings={settings}
        onChange={onSettings ?? setOwn}
      />
      <div className="scene-ground">
        <PlateScene
          scene={scene}
          store={store}
          reading={reading}
          bent={bent}
          selection={selection}
          hover={hover}
          onSelect={onSelect}
          onHover={setHover}
          apart={settings.apart}
          cut={settings.cut}
          measuring={settings.measuring}
          load={settings.load}
          dimensions={settings.dimensions}
          slings={settings.slings}
          onReady={onReady}
        />
      </div>
      <aside className="scene-legends">
        {bent && palette && <BentLegends bent={bent} scene={scene} isDark={palette.isDark} onSelect={onSelect} />}
        {reading && palette && (!bent || bent.scale === null) && (
          <Legend reading={reading} scene={scene} isDark={palette.isDark} onSelect={onSelect} />
        )}
        {load && <LoadLegend load={load} units={scene.units} />}
      </aside>
      <PartList scene={scene} reading={reading} selection={selection} onSelect={onSelect} />
    </div>
  );
}
