import { Canvas, type RootState } from '@react-three/fiber';
import { useCallback, useEffect, useId, useMemo, useRef, useState, type KeyboardEvent } from 'react';
import { partAt, type Cut } from '../../core/scene/part-at.ts';
import type { Reading } from '../../core/scene/reading.ts';
import type { Scene, Vector } from '../../core/scene/scene.ts';
import { rayThrough } from './camera.ts';
import { viewAfterKey, viewKeys } from './key-moves.ts';
import { Named } from './Named.tsx';
import { Overlay } from './Overlay.tsx';
import { usePalette } from './palette.ts';
import { Programs } from './Programs.tsx';
import { Plate } from './Plate.tsx';
import { titleWithValue } from './title-with-value.ts';
import { sceneTexts as texts } from './scene-texts.ts';
import { canDraw, SceneUnavailable } from './SceneUnavailable.tsx';
import { showFitted, showNamed } from './show-views.ts';
import { snapped } from './snapped.ts';
import { usePointer } from './use-pointer.ts';
import { useSizeOf } from './use-size-of.ts';
import type { BentPicture } from './bent-picture.ts';
import type { ViewStore } from './view-store.ts';
import './scene.css';

export interface PlateSceneProps {
  readonly scene: Scene;
  readonly store: ViewStore;
  readonly reading: Reading | null;
  readonly bent: BentPicture | null;
  /** Part ids. */
  readonly selection: string | null;
  readonly hover: string | null;
  readonly onSelect: (part: string | null) => void;
  readonly onHover: (part: string | null) => void;
  /** How far panels are pulled off their tubes, m. */
  readonly apart: number;
  readonly cut: Cut | null;
  /** Clicks measure instead of selecting. */
  readonly measuring: boolean;
  /** Id of the situation whose arrows are shown. */
  readonly load: string | null;
  readonly dimensions: boolean;
  readonly slings: boolean;
  /** Called once with three's renderer, scene and camera: for pictures of the view, and for tests. */
  readonly onReady?: (root: RootState) => void;
}

/** The plate in its water: drawn when something changes, never otherwise. */
export function PlateScene(props: PlateSceneProps) {
  const [drawable] = useState(canDraw);
  return drawable ? <DrawnScene {...props} /> : <SceneUnavailable />;
}

function DrawnScene(props: PlateSceneProps) {
  const { scene, store, reading, selection, hover, onSelect, onHover, apart, cut, measuring } = props;
  const frame = useRef<HTMLDivElement>(null);
  const palette = usePalette(frame);
  const [lost, setLost] = useState(false);
  const [broken, setBroken] = useState(false);
  const [points, setPoints] = useState<readonly Vector[]>([]);
  const helpId = useId();
  const ready = useRef(props.onReady);
  useSizeOf(frame, store, scene);
  useEffect(() => {
    if (!measuring) setPoints([]);
  }, [measuring, scene]);

  const actions = useMemo(() => {
    const hitAt = (x: number, y: number) => partAt(scene, rayThrough(x, y, store.view(), store.size()), apart, cut);
    const idOf = (hit: ReturnType<typeof hitAt>): string | null => (hit ? scene.parts[hit.part]!.id : null);
    let asked: { x: number; y: number } | null = null;
    return {
      // The pointer moves more often than a picture is drawn: the last place counts.
      onPoint: (x: number, y: number): void => {
        if (!asked)
          requestAnimationFrame(() => {
            if (asked) onHover(idOf(hitAt(asked.x, asked.y)));
            asked = null;
          });
        asked = { x, y };
      },
      onLeave: (): void => {
        asked = null;
        onHover(null);
      },
      onPress: (x: number, y: number): void => {
        const hit = hitAt(x, y);
        if (!measuring) return onSelect(idOf(hit));
        if (!hit) return;
        const point = snapped(hit, x, y, store.view(), store.size());
        setPoints((before) => (before.length === 1 ? [before[0]!, point] : [point]));
      },
    };
  }, [scene, store, apart, cut, measuring, onSelect, onHover]);
  usePointer(frame, store, actions);

  const onKey = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target !== frame.current) return;
    const next = viewAfterKey(event.key, event.shiftKey, store.view(), store.size());
    const name = viewKeys[event.key.toLowerCase()];
    if (next) store.show(next);
    else if (name) showNamed(store, scene, name, apart);
    else if (event.key.toLowerCase() === 'f') showFitted(store, scene, apart);
    else if (event.key === 'Escape') {
      setPoints([]);
      onSelect(null);
    } else return;
    event.preventDefault();
  };

  const created = useCallback((root: RootState): void => {
    // `Programs` asks later, when the answer holds nobody up.
    root.gl.debug.checkShaderErrors = false;
    const canvas = root.gl.domElement;
    canvas.addEventListener('webglcontextlost', () => setLost(true));
    canvas.addEventListener('webglcontextrestored', () => {
      setLost(false);
      root.invalidate();
    });
    ready.current?.(root);
  }, []);

  return (
    <div
      ref={frame}
      className={`plate-scene${measuring ? ' measuring' : ''}`}
      tabIndex={0}
      role="group"
      aria-label={texts.picture}
      aria-describedby={helpId}
      onKeyDown={onKey}
    >
      {palette && (
        <Canvas
          orthographic
          flat
          frameloop="demand"
          dpr={[1, 2]}
          gl={{ antialias: true, powerPreference: 'default' }}
          onCreated={created}
          fallback={<SceneUnavailable />}
        >
          <Programs palette={palette} onBroken={setBroken}>
            <Plate {...props} palette={palette} />
          </Programs>
        </Canvas>
      )}
      <Overlay {...props} points={points} />
      <p id={helpId} className="scene-help">
        {texts.help}
      </p>
      {measuring && points.length < 2 && (
        <p className="scene-notice" role="status">
          {points.length === 0 ? texts.measureFirst : texts.measureSecond}
        </p>
      )}
      {lost && (
        <p className="scene-notice" role="status">
          {texts.lost}
        </p>
      )}
      {broken && (
        <p className="scene-notice" role="alert">
          {texts.broken}
        </p>
      )}
      <p className="scene-said" aria-live="polite">
        {titleWithValue(scene, reading, selection)}
      </p>
      {hover && hover !== selection && <Named scene={scene} reading={reading} store={store} apart={apart} id={hover} />}
      {selection && <Named scene={scene} reading={reading} store={store} apart={apart} id={selection} isSelected />}
    </div>
  );
}
