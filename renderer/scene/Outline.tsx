import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js';
import type { Colour } from './colour-map.ts';
import { outlineMaterial } from './outline-material.ts';

/** Edges drawn over the plate as a thick line: full where they are seen, faint where something lies before them. */
export function Outline({
  edges,
  colour,
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
      const line = new LineSegments2(geometry, outlineMaterial(colour, width, isSeen));
      line.name = 'outline';
      line.frustumCulled = false;
      line.renderOrder = isSeen ? 2 : 3;
      return line;
    });
  }, [edges, colour, width]);
  useEffect(() => {
    invalidate();
    return () => {
      for (const { geometry, material } of lines) {
        geometry.dispose();
        material.dispose();
      }
      invalidate();
    };
  }, [lines, invalidate]);
  if (edges.length === 0) return null;
  return lines.map((line, i) => <primitive key={i} object={line} />);
}
