import { DataTexture, DoubleSide, FloatType, RGBAFormat, ShaderMaterial, Vector3 } from 'three';
import { colourAt } from './colour-map.ts';
import type { Palette } from './palette.ts';
import type { SceneUniforms } from './solid-material.ts';

/** What is the bent plate's own: how far it is drawn moved, and what its colours mean. */
export interface BentUniforms {
  readonly [name: string]: { value: unknown };
  readonly amplitude: { value: number };
  readonly from: { value: number };
  readonly to: { value: number };
  /** 1 where a field is shown: what has no value in it is then as unvalued as in any reading. */
  readonly hasField: { value: number };
}

/** Steps of colour along a tube. */
export const bands = 12;

/** Places and normals are linear in the amplitude, so a swing changes one number and no buffer. */
const bending = /* glsl */ `
  attribute vec3 move, turn;
  attribute vec3 shown;
  attribute float lift;
  uniform float amplitude, apart;
  varying vec3 vPlace;
  vec4 bent() {
    vPlace = position + amplitude * move;
    vPlace.z += lift * apart;
    return projectionMatrix * viewMatrix * vec4(vPlace, 1.0);
  }`;

const cutting = /* glsl */ `
  uniform vec4 cut;
  varying vec3 vPlace;
  bool isCutAway() { return cut.xyz != vec3(0.0) && dot(vPlace, cut.xyz) > cut.w; }`;

export function bentMaterials(shared: SceneUniforms, palette: Palette) {
  const map = new Float32Array(4 * 256);
  for (let i = 0; i < 256; i++) map.set([...colourAt(i / 255, palette.isDark), 1], 4 * i);
  const colours = new DataTexture(map, 256, 1, RGBAFormat, FloatType);
  colours.needsUpdate = true;
  const own: BentUniforms = { amplitude: { value: 0 }, from: { value: 0 }, to: { value: 1 }, hasField: { value: 0 } };
  const { apart, cut, ink, paper, ratio } = shared;
  const uniforms = {
    ...own,
    apart,
    cut,
    ink,
    paper,
    ratio,
    colours: { value: colours },
    panel: { value: new Vector3(...palette.panel) },
    tube: { value: new Vector3(...palette.tube) },
    unvalued: { value: new Vector3(...palette.unvalued) },
  };
  const surface = new ShaderMaterial({
    uniforms,
    side: DoubleSide,
    vertexShader: /* glsl */ `${bending}
      varying vec3 vNormal;
      varying vec3 vShown;
      void main() {
        vNormal = normal + amplitude * cross(turn, normal);
        vShown = shown;
        gl_Position = bent();
      }`,
    fragmentShader: /* glsl */ `${cutting}
      uniform vec3 ink, paper, panel, tube, unvalued;
      uniform float from, to, hasField, ratio;
      uniform sampler2D colours;
      varying vec3 vNormal;
      varying vec3 vShown;
      void main() {
        if (isCutAway()) discard;
        vec3 n = normalize(vNormal), s = n * n;
        // As on the plate that stands still, and on its faces a light from the side: slopes of a bent plate are slight.
        float tone = s.x * (n.x > 0.0 ? 0.80 : 0.72) + s.y * (n.y > 0.0 ? 0.76 : 0.88) + s.z * (n.z > 0.0 ? 1.0 : 0.92);
        float relief = s.z * sign(n.z) * (-0.55 * n.x - 0.85 * n.y);
        tone = clamp(tone + (hasField > 0.5 ? 0.35 : 1.1) * relief, 0.5, 1.12);
        bool isTube = vShown.z > 0.5;
        vec3 colour = hasField > 0.5 ? unvalued : isTube ? tube : panel;
        if (hasField > 0.5 && vShown.y > 1.5) {
          // no measure here: grey, dotted
          vec2 at = mod(gl_FragCoord.xy / ratio, 5.0) - 2.5;
          colour = mix(unvalued, ink, dot(at, at) < 1.6 ? 0.75 : 0.12);
        } else if (hasField > 0.5 && vShown.y > 0.5) {
          float part = clamp((vShown.x - from) / (to - from), 0.0, 1.0);
          if (isTube) part = min(floor(part * ${bands}.0), ${bands - 1}.0) / ${bands - 1}.0;
          colour = texture2D(colours, vec2((part * 255.0 + 0.5) / 256.0, 0.5)).rgb;
        }
        if (!gl_FrontFacing) colour = mix(colour, ink, 0.6);
        gl_FragColor = vec4(colour * tone, 1.0);
      }`,
  });
  const line = new ShaderMaterial({
    uniforms,
    vertexShader: /* glsl */ `${bending}
      void main() {
        gl_Position = bent();
        gl_Position.z -= abs(projectionMatrix[2][2]) * 2.0 / (800.0 * projectionMatrix[1][1]);
      }`,
    fragmentShader: /* glsl */ `${cutting}
      uniform vec3 ink, paper;
      void main() {
        if (isCutAway()) discard;
        gl_FragColor = vec4(mix(paper, ink, 0.66), 1.0);
      }`,
  });
  /** Where the plate was: lines that stay. */
  const still = new ShaderMaterial({
    uniforms,
    vertexShader: /* glsl */ `
      varying vec3 vPlace;
      void main() { vPlace = position; gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0); }`,
    fragmentShader: /* glsl */ `${cutting}
      uniform vec3 ink, paper;
      void main() {
        if (isCutAway()) discard;
        gl_FragColor = vec4(mix(paper, ink, 0.3), 1.0);
      }`,
  });
  return {
    own,
    surface,
    line,
    still,
    dispose: () => {
      for (const made of [colours, surface, line, still]) made.dispose();
    },
  };
}
