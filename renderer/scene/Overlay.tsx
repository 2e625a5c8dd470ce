import { isCutAway } from '../../core/scene/part-at.ts';
import type { Vector } from '../../core/scene/scene.ts';
import { isPlan } from './camera.ts';
import { DimensionLines } from './DimensionLines.tsx';
import { GridNames } from './GridNames.tsx';
import { MeasureLine } from './MeasureLine.tsx';
import type { PlateSceneProps } from './PlateScene.tsx';
import { DepthScale, ScaleBar } from './Scales.tsx';
import { useView } from './use-view.ts';

/** What is written over the picture: real text at projected places. */
export function Overlay({
  scene,
  store,
  dimensions,
  points,
  cut,
}: PlateSceneProps & { readonly points: readonly Vector[] }) {
  const view = useView(store);
  const size = store.size();
  const dimensioned = dimensions && isPlan(view);
  return (
    <svg className="scene-overlay" width={size.width} height={size.height} aria-hidden="true">
      <DepthScale scene={scene} view={view} size={size} />
      {dimensioned ? (
        <DimensionLines dimensions={scene.dimensions} view={view} size={size} />
      ) : (
        <ScaleBar units={scene.units} view={view} size={size} />
      )}
      <GridNames labels={scene.labels.filter(({ at }) => !isCutAway(at, cut))} view={view} size={size} standOff={22} />
      <MeasureLine points={points} units={scene.units} view={view} size={size} />
    </svg>
  );
}
