import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo } from 'react';
import { DoubleSide, FrontSide } from 'three';
import type { Material, Scene } from '../../core/scene/scene.ts';
import { isCutAway, type Cut } from '../../core/scene/part-at.ts';
import { Bolts } from './Bolts.tsx';
import type { Colour } from './colour-map.ts';
import { BentSurface } from './BentSurface.tsx';
import { drawnEdges } from './drawn-edges.ts';
import { ForceMarks } from './ForceMarks.tsx';
import { Holes } from './Holes.tsx';
import { LoadArrows } from './LoadArrows.tsx';
import { Outline } from './Outline.tsx';
import type { Palette } from './palette.ts';
import { looksUnder, statesTexture, writeStates } from './part-states.ts';
import type { PlateSceneProps } from './PlateScene.tsx';
import { Rig } from './Rig.tsx';
import { Ropes } from './Ropes.tsx';
import { Solid } from './Solid.tsx';
import { Struts } from './Struts.tsx';
import { edgeMaterial, sceneUniforms, solidMaterial, type SceneUniforms } from './solid-material.ts';

/** All that three draws. */
export function Plate(props: PlateSceneProps & { readonly palette: Palette }) {
  const { scene, store, reading, selection, hover, apart, cut, load, slings, palette, bent } = props;
  const invalidate = useThree((state) => state.invalidate);
  const ratio = useThree((state) => state.viewport.dpr);

  const { states, uniforms, materials } = useMemo(() => {
    const states = statesTexture(scene);
    const uniforms = sceneUniforms(states);
    return { states, uniforms, materials: { solid: solidMaterial(uniforms), edge: edgeMaterial(uniforms) } };
  }, [scene]);
  useEffect(
    () => () => {
      for (const made of [states, materials.solid, materials.edge]) made.dispose();
    },
    [states, materials],
  );
  useLayoutEffect(() => {
    writeStates(states, scene.parts, looksUnder(reading, palette));
    invalidate();
  }, [states, scene, reading, palette, invalidate]);
  useLayoutEffect(() => {
    setUniforms(uniforms, palette, apart, cut, ratio);
    const side = cut ? DoubleSide : FrontSide;
    if (materials.solid.side !== side) {
      materials.solid.side = side;
      materials.solid.needsUpdate = true;
    }
    invalidate();
  }, [uniforms, materials, palette, apart, cut, ratio, invalidate]);

  const shownLoad = scene.loads.find(({ id }) => id === load);
  const ropes = useMemo(() => scene.ropes.filter(({ from }) => !isCutAway(from, cut)), [scene, cut]);
  const suspension = useMemo(() => ropes.filter(({ role, width }) => role === 'suspension' && width === 0), [ropes]);
  const struts = useMemo(() => ropes.filter(({ width }) => width > 0), [ropes]);
  const lifting = useMemo(() => ropes.filter(({ role }) => role === 'lifting sling'), [ropes]);
  const failing = useMemo(
    () =>
      scene.parts.flatMap((part) =>
        // A bolt is too small for a line around it: its hatch and its colour must do.
        part.kind !== 'bolt' && reading?.verdicts.get(part.id) === 'fails' ? drawnEdges(scene, part, apart, cut) : [],
      ),
    [scene, reading, apart, cut],
  );
  const selected = useEdgesOf(scene, selection, apart, cut);
  // What panels and washers cover.
  const isOpen = apart > 0 || cut !== null;
  const isMoved = bent !== null && bent.scale !== null;
  const hovered = useEdgesOf(scene, hover === selection ? null : hover, apart, cut);
  return (
    <>
      <Rig store={store} reach={reachOf(scene)} />
      {!isMoved &&
        scene.meshes.map((mesh) => (
          <Solid key={mesh.material} mesh={mesh} materials={materials} isBare={isLaidOn(mesh.material, bent)} />
        ))}
      {!isMoved && scene.bolts.map((set, i) => <Bolts key={i} set={set} materials={materials} isOpen={isOpen} />)}
      {bent && (isMoved || bent.field) && (
        <BentSurface bent={bent} scene={scene} uniforms={uniforms} palette={palette} />
      )}
      {bent?.marks && (
        <ForceMarks marks={bent.marks} box={scene.box} scale={bent.scale ?? 0} apart={apart} colour={palette.accent} />
      )}
      {!isMoved && isOpen && <Holes holes={scene.holes} cut={cut} colour={palette.ink} />}
      <Ropes ropes={suspension} colour={palette.ink} />
      <Struts struts={struts} colour={palette.attachment} />
      {slings && <Ropes ropes={lifting} colour={palette.quiet} dashed />}
      {shownLoad && shownLoad.arrows.length > 0 && (
        <LoadArrows load={shownLoad} box={scene.box} colour={palette.accent} rim={palette.paper} apart={apart} />
      )}
      <Outline edges={isMoved ? none : failing} colour={palette.fail} width={2.25} />
      <Outline edges={hovered} colour={palette.accent} width={1.75} />
      <Outline edges={selected} colour={palette.accent} width={3.5} />
    </>
  );
}

const none: readonly number[] = [];

/** A field has surfaces of its own: of the solids under it the edges stay. */
const isLaidOn = (material: Material, bent: PlateSceneProps['bent']): boolean =>
  bent?.field != null && (material === 'panel' || material === 'tube');

function useEdgesOf(scene: Scene, id: string | null, apart: number, cut: Cut | null): readonly number[] {
  return useMemo(() => {
    const part = scene.parts.find((other) => other.id === id);
    return part ? drawnEdges(scene, part, apart, cut) : none;
  }, [scene, id, apart, cut]);
}

/** Nothing lies further from what is looked at than the plate's size and twice the depth. m */
const reachOf = ({ box: { low, high }, water }: Scene): number =>
  50 + 2 * (Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]) + water.surface);

function setUniforms(uniforms: SceneUniforms, palette: Palette, apart: number, cut: Cut | null, ratio: number): void {
  const put = (uniform: { value: { set: (x: number, y: number, z: number) => unknown } }, [r, g, b]: Colour) =>
    uniform.value.set(r, g, b);
  put(uniforms.ink, palette.ink);
  put(uniforms.fail, palette.fail);
  put(uniforms.paper, palette.paper);
  uniforms.apart.value = apart;
  uniforms.ratio.value = ratio;
  const { value } = uniforms.cut;
  if (!cut) value.set(0, 0, 0, 0);
  else {
    const way = cut.away === 'above' ? 1 : -1;
    value.set(cut.axis === 'x' ? way : 0, cut.axis === 'y' ? way : 0, cut.axis === 'z' ? way : 0, way * cut.at);
  }
}
