import { bolts } from './bolts.ts';
import { far } from './far.ts';
import type { Bolt } from './rows.ts';

const mm = [1e-3, 'mm'] as const;

/** A bolt's tensile area beside its standard's formula, and its head, nut, washer and holes beside those of the nearest
 *  bolt of its series, scaled by the diameter. Limits: see `comparedWithNearest`. Sources: ISO 898-1, ASME B1.1. */
export function boltSizeFindings(row: Bolt): string[] {
  const { id, series, diameter, pitch, tensileArea } = row;
  const [depth, formula] =
    series === 'metric' ? [0.9382, 'the formula of ISO 898-1'] : [0.9743, 'the formula of ASME B1.1'];
  const apart = (other: Bolt): number => Math.abs(Math.log(other.diameter / diameter));
  const nearest = bolts.filter((other) => other.series === series).reduce((a, b) => (apart(b) < apart(a) ? b : a));
  const scale = diameter / nearest.diameter;
  const against = `that of ${nearest.id}, the nearest of the catalogue${Math.abs(scale - 1) < 1e-6 ? '' : ', in proportion to the diameter'}`;
  const beside = (limit: number, sizes: readonly (readonly [keyof Sizes, string])[]): string[] =>
    sizes.flatMap(([key, name]) => {
      const reference = nearest[key];
      return far(id, name, row[key], reference === null ? null : reference * scale, limit, against, mm);
    });
  return [
    ...far(id, 'tensile area', tensileArea, (Math.PI / 4) * (diameter - depth * pitch) ** 2, 0.01, formula, [
      1e-6,
      'mm²',
    ]),
    ...beside(0.25, [
      ['headAcrossFlats', 'width across flats'],
      ['headAcrossCorners', 'width across corners'],
      ['headHeight', 'height of the head'],
      ['nutHeight', 'height of the nut'],
      ['washerOuter', 'washer'],
      ['washerThickness', 'thickness of the washer'],
    ]),
    ...beside(0.1, [
      ['washerInner', 'bore of the washer'],
      ['holeFine', 'fine hole'],
      ['holeMedium', 'medium hole'],
      ['holeCoarse', 'coarse hole'],
      ['holeNormal', 'normal hole'],
      ['holeOversize', 'oversize hole'],
    ]),
    ...beside(0.25, [
      ['shortSlotLength', 'short slot'],
      ['longSlotLength', 'long slot'],
    ]),
  ];
}

type Sizes = Omit<Bolt, 'id' | 'title' | 'source' | 'also' | 'cautions' | 'series'>;
