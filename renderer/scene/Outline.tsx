import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { LineMaterial } from 'three/examples/jsm/lines/LineMaterial.js';
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js';
import { SRGBColorSpace } from 'three';
import type { Colour } from './colour-map.ts';
import { disposeSoon } from './dispose-soon.ts';

/** Edges drawn over the plate as a thick line: full where they are seen, faint where something lies before them. */
export function Outline({
  edges,
  colour: [r, g, b],
  width,
}: {
  readonly edges: readonly number[];
  readonly colour: Colour;
  /** px */
  readonly width: number;
}) {
  const invalidate = useThree((state) => state.invalidate);
  const lines = useMemo(() => {
    const geometry = new LineSegmentsGeometry().setPositions([...edges]);
    return [true, false].map((isSeen) => {
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
      const line = new LineSegments2(geometry, material);
      line.name = 'outline';
      line.frustumCulled = false;
      line.renderOrder = isSeen ? 2 : 3;
      return line;
    });
  }, [edges, r, g, b, width]);
  useEffect(() => {
    invalidate();
    return () => {
      for (const { geometry, material } of lines) disposeSoon(geometry, material);
      invalidate();
    };
  }, [lines, invalidate]);
  if (edges.length === 0) return null;
  return lines.map((line, i) => <primitive key={i} object={line} />);
}
