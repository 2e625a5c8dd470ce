import { ShaderMaterial, Vector3, Vector4, type DataTexture } from 'three';
import { texelsInRow } from './part-states.ts';

/** What all solids and edges of a scene share; changing a value changes all of them. */
export interface SceneUniforms {
  readonly [name: string]: { value: unknown };
  readonly states: { value: DataTexture };
  readonly apart: { value: number };
  /** Plane of the section: what lies along the normal beyond the distance is taken away. All zero: no section. */
  readonly cut: { value: Vector4 };
  readonly ink: { value: Vector3 };
  readonly fail: { value: Vector3 };
  readonly paper: { value: Vector3 };
  /** Device pixels a CSS pixel, so that hatches keep their width. */
  readonly ratio: { value: number };
}

export const sceneUniforms = (states: DataTexture): SceneUniforms => ({
  states: { value: states },
  apart: { value: 0 },
  cut: { value: new Vector4() },
  ink: { value: new Vector3() },
  fail: { value: new Vector3() },
  paper: { value: new Vector3() },
  ratio: { value: 1 },
});

/** Reads the part's looks and moves it to where it is drawn; lines and solids alike. */
const placing = /* glsl */ `
  attribute float part;
  uniform sampler2D states;
  uniform float apart;
  varying vec3 vPlace;
  flat varying vec4 vLooks;
  vec4 texel(int i) { return texelFetch(states, ivec2(i % ${texelsInRow}, i / ${texelsInRow}), 0); }
  vec4 placed(vec4 position) {
    int number = int(part + 0.5);
    vLooks = texel(2 * number);
    position.z += texel(2 * number + 1).r * apart;
    vPlace = position.xyz;
    return projectionMatrix * viewMatrix * position;
  }`;

const cutting = /* glsl */ `
  uniform vec4 cut;
  varying vec3 vPlace;
  flat varying vec4 vLooks;
  bool isCutAway() { return cut.xyz != vec3(0.0) && dot(vPlace, cut.xyz) > cut.w; }`;

/**
 * Solids. Every direction of a face has its own tone, as in a drawing, and colours are those of the legend: the top is
 * shown in the very colour, so a plan can be read against it. Backs are drawn with a section only (`side`). Behind a section the inside of a solid shows dark: solids are
 * closed, so wherever a back is seen, material was cut through.
 */
export const solidMaterial = (uniforms: SceneUniforms): ShaderMaterial =>
  new ShaderMaterial({
    uniforms,
    vertexShader: /* glsl */ `${placing}
      varying vec3 vNormal;
      flat varying float vEdgeOn;
      void main() {
        float metresInPixel = 2.0 / (800.0 * projectionMatrix[1][1]);
        vEdgeOn = min(0.06, 15.0 * metresInPixel);
        #ifdef USE_INSTANCING
          vEdgeOn = min(0.2, 30.0 * metresInPixel);
          vNormal = mat3(instanceMatrix) * normal;
          gl_Position = placed(instanceMatrix * vec4(position, 1.0));
        #else
          vNormal = normal;
          gl_Position = placed(vec4(position, 1.0));
        #endif
      }`,
    fragmentShader: /* glsl */ `${cutting}
      uniform vec3 ink, fail, paper;
      uniform float ratio;
      varying vec3 vNormal;
      flat varying float vEdgeOn;
      float stripes(vec2 at, float period, float width) {
        float d = abs(mod((at.x + at.y) / (1.41421356 * ratio), period) - 0.5 * period);
        return 1.0 - smoothstep(0.5 * width - 0.4, 0.5 * width + 0.4, d);
      }
      void main() {
        if (isCutAway()) discard;
        vec3 n = normalize(vNormal), s = n * n;
        // Hardware places corners on a raster finer than pixels, but not endlessly: a face seen edge on has a depth that
        // is off by that much times its slope, and would show through what lies before it. It has next to no
        // width to be seen, small bolts far off least of all.
        vec3 face = normalize(cross(dFdx(vPlace), dFdy(vPlace)));
        if (abs(dot(face, vec3(viewMatrix[0][2], viewMatrix[1][2], viewMatrix[2][2]))) < vEdgeOn) discard;
        float tone = s.x * (n.x > 0.0 ? 0.80 : 0.72) + s.y * (n.y > 0.0 ? 0.76 : 0.88) + s.z * (n.z > 0.0 ? 1.0 : 0.92);
        vec3 colour = vLooks.rgb * tone;
        vec2 at = gl_FragCoord.xy, turned = vec2(at.x, -at.y);
        if (vLooks.a > 2.5) {
          if (mod(floor(at.x / (2.0 * ratio)) + floor(at.y / (2.0 * ratio)), 2.0) < 0.5) discard;
          gl_FragColor = vec4(mix(paper, vLooks.rgb, 0.5), 1.0);
          return;
        }
        if (!gl_FrontFacing) {
          colour = mix(vLooks.rgb, ink, 0.8);
        } else if (vLooks.a > 1.5) {
          float grid = max(stripes(at, 7.0, 1.0), stripes(turned, 7.0, 1.0));
          colour = mix(mix(colour, paper * tone, 0.35), ink, 0.85 * grid);
        } else if (vLooks.a > 0.5) {
          colour = mix(colour, fail * tone, stripes(at, 9.0, 4.0));
        }
        gl_FragColor = vec4(colour, 1.0);
      }`,
  });

/** Sharp edges, one pixel wide, in ink; fainter than a letter. */
export const edgeMaterial = (uniforms: SceneUniforms): ShaderMaterial =>
  new ShaderMaterial({
    uniforms,
    vertexShader: /* glsl */ `${placing}
      void main() {
        gl_Position = placed(vec4(position, 1.0));
        // Nearer by a pixel's size (of some 800 down the screen), so that a face does not swallow its own edge.
        gl_Position.z -= abs(projectionMatrix[2][2]) * 2.0 / (800.0 * projectionMatrix[1][1]);
      }`,
    fragmentShader: /* glsl */ `${cutting}
      uniform vec3 ink, fail;
      void main() {
        if (isCutAway()) discard;
        bool isFailing = vLooks.a > 0.5 && vLooks.a < 1.5;
        gl_FragColor = vec4(isFailing ? fail : mix(vLooks.rgb, ink, 0.62), 1.0);
      }`,
  });

export interface Materials {
  readonly solid: ShaderMaterial;
  readonly edge: ShaderMaterial;
}
