import type { Geometry } from '../geometry/geometry.ts';
import { weldLengthOf } from '../geometry/weld-length-of.ts';
import type { CountedWork } from './cost-of-rates.ts';

/**
 * What has to be cut, drilled, bolted and welded for the panels of a geometry. A bolt is one hole in the panel and, in
 * the tube, two for a bolt that goes through both walls, one for a one-sided fixing or a tapped pad, none for a welded
 * stud or a clamp.
 */
export function countedWork({ panels }: Pick<Geometry, 'panels'>): CountedWork {
  const sum = (of: (panel: Geometry['panels'][number]) => number) =>
    panels.reduce((total, panel) => total + of(panel), 0);
  return {
    plate: sum(({ area, thickness, material }) => area * thickness * material.density),
    cut: sum(({ cutLength }) => cutLength),
    holes: sum(({ bolts, plugs, design: { fixing } }) =>
      fixing.kind === 'bolted' ? bolts.length * (1 + holesInTube[fixing.into]) : plugs.length,
    ),
    bolts: sum(({ bolts }) => bolts.length),
    weld: sum(weldLengthOf),
    panels: panels.length,
  };
}

const holesInTube = {
  'through-bolt with sleeve': 2,
  'one-sided': 1,
  'tapped pad': 1,
  'welded stud': 0,
  clamp: 0,
} as const;
