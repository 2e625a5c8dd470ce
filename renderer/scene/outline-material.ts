import { SRGBColorSpace } from 'three';
import { LineMaterial } from 'three/examples/jsm/lines/LineMaterial.js';
import type { Colour } from './colour-map.ts';

/** A thick line of `width` px over the plate: full where it is seen, faint where something lies before it. */
export function outlineMaterial([r, g, b]: Colour, width: number, isSeen: boolean): LineMaterial {
  const material = new LineMaterial({
    linewidth: width,
    depthTest: isSeen,
    depthWrite: false,
    transparent: !isSeen,
    opacity: isSeen ? 1 : 0.35,
    polygonOffset: true,
    polygonOffsetFactor: -1,
    polygonOffsetUnits: -4,
  });
  material.color.setRGB(r, g, b, SRGBColorSpace);
  return material;
}
