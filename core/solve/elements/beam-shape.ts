import type { Beam } from './beam.ts';

/** Displacements u v w θx θy θz at s in [0, L] (6 × 12 by rows, local axes, over the ends' displacements), or with
 *  `slope` their derivatives along the beam. Exact for a beam with loads at its ends; Φ = 12 E I/(G A_s L²).
 *  Source: J. S. Przemieniecki, Theory of Matrix Structural Analysis (1968), ch. 11, from memory. */
export function beamShape({ input: { section, E, G }, length: L }: Beam, s: number, slope = false): Float64Array {
  const N = new Float64Array(72);
  const ξ = s / L;
  for (const i of [0, 3]) {
    N[13 * i] = slope ? -1 / L : 1 - ξ;
    N[13 * i + 6] = slope ? 1 / L : ξ;
  }
  for (const [w, θ, sign, I, shearArea] of [
    [1, 5, 1, section.Iz, section.Ay],
    [2, 4, -1, section.Iy, section.Az],
  ] as const) {
    const Φ = (12 * E * I) / (G * shearArea * L ** 2);
    const by = 1 / (1 + Φ);
    const across = slope
      ? [
          (-6 * ξ + 6 * ξ ** 2 - Φ) / L,
          1 - 4 * ξ + 3 * ξ ** 2 + (Φ / 2) * (1 - 2 * ξ),
          (6 * ξ - 6 * ξ ** 2 + Φ) / L,
          -2 * ξ + 3 * ξ ** 2 - (Φ / 2) * (1 - 2 * ξ),
        ]
      : [
          1 - 3 * ξ ** 2 + 2 * ξ ** 3 + Φ * (1 - ξ),
          L * (ξ - 2 * ξ ** 2 + ξ ** 3 + (Φ / 2) * (ξ - ξ ** 2)),
          3 * ξ ** 2 - 2 * ξ ** 3 + Φ * ξ,
          L * (ξ ** 3 - ξ ** 2 - (Φ / 2) * (ξ - ξ ** 2)),
        ];
    const turn = slope
      ? [(12 * ξ - 6) / L ** 2, (6 * ξ - 4 - Φ) / L, (6 - 12 * ξ) / L ** 2, (6 * ξ - 2 + Φ) / L]
      : [
          (6 * (ξ ** 2 - ξ)) / L,
          1 - 4 * ξ + 3 * ξ ** 2 + Φ * (1 - ξ),
          (6 * (ξ - ξ ** 2)) / L,
          3 * ξ ** 2 - 2 * ξ + Φ * ξ,
        ];
    [w, θ, w + 6, θ + 6].forEach((freedom, k) => {
      const turned = k % 2 ? sign : 1;
      N[12 * w + freedom] = by * turned * across[k]!;
      N[12 * θ + freedom] = by * turned * sign * turn[k]!;
    });
  }
  return N;
}
