import { requirePositive } from '../refusal.ts';
import type { Bolt } from './rows.ts';

const { PI: π, sqrt, max } = Math;

/** Mass in kg of a bolt with one nut and two washers: an estimate from plain geometry, for weights only.
 *    head and nut: hexagonal prisms (√3/2) s² k, chamfers left in; thread: a cylinder of the pitch diameter d − 0.649519 P
 *    plain shank: length less the thread length of the standard (2d + 6, 12 or 25 mm; inch 2d + 1/4 or 1/2 in)
 *  length: under the head, m; density in kg/m³, 7850 by default. Refuses what is not positive.
 *  Error: a few percent, mostly the chamfers. Source of thread lengths: ISO 4014 and ASME B18.2.1, from memory. */
export function massOfBolt(bolt: Bolt, length: number, density = 7850): number {
  requirePositive({ length, density });
  const d_2 = bolt.diameter - 0.649519 * bolt.pitch;
  const thread = (π / 4) * d_2 ** 2;
  const plain = max(length - threadLength(bolt, length), 0);
  const hexagon = (sqrt(3) / 2) * bolt.headAcrossFlats ** 2;
  const washer = (π / 4) * (bolt.washerOuter ** 2 - bolt.washerInner ** 2) * bolt.washerThickness;
  const volume =
    hexagon * bolt.headHeight +
    bolt.shankArea * plain +
    thread * (length - plain) +
    (hexagon - thread) * bolt.nutHeight +
    2 * washer;
  return density * volume;
}

function threadLength({ series, diameter: d }: Bolt, length: number): number {
  if (series === 'inch') return 2 * d + (length <= 6 * 0.0254 ? 0.25 : 0.5) * 0.0254;
  return 2 * d + (length <= 0.125 ? 0.006 : length <= 0.2 ? 0.012 : 0.025);
}
