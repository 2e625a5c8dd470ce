import { ShaderMaterial, Vector3 } from 'three';
import type { Colour } from './colour-map.ts';

/** One colour; solids toned by the direction of their faces, lines plain. `dashed`: one half of a dash of so many metres. */
export const plainMaterial = (colour: Colour, isSolid: boolean, dashed = 0): ShaderMaterial =>
  new ShaderMaterial({
    uniforms: { colour: { value: new Vector3(...colour) }, dash: { value: dashed } },
    vertexShader: /* glsl */ `
      varying vec3 vNormal;
      varying float vAlong;
      ${isSolid ? '' : 'attribute float along;'}
      void main() {
        vec4 place = vec4(position, 1.0);
        vNormal = vec3(0.0, 0.0, 1.0);
        ${isSolid ? 'vNormal = normal;' : ''}
        #ifdef USE_INSTANCING
          place = instanceMatrix * place;
          vNormal = mat3(instanceMatrix) * vNormal;
        #endif
        vAlong = ${isSolid ? '0.0' : 'along'};
        gl_Position = projectionMatrix * viewMatrix * place;
      }`,
    fragmentShader: /* glsl */ `
      uniform vec3 colour;
      uniform float dash;
      varying vec3 vNormal;
      varying float vAlong;
      void main() {
        if (dash > 0.0 && mod(vAlong, dash) > 0.5 * dash) discard;
        vec3 n = normalize(vNormal), s = n * n;
        gl_FragColor = vec4(colour * ${isSolid ? '(s.x * 0.8 + s.y * 0.88 + s.z)' : '1.0'}, 1.0);
      }`,
  });
