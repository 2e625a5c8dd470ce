import { refusal, requirePositive } from '../refusal.ts';

/** A round brace of diameter d and wall t square on a round chord of diameter D and wall T, m; E in Pa. */
export interface RoundJoint {
  readonly D: number;
  readonly T: number;
  readonly d: number;
  readonly t: number;
  readonly E: number;
}

/** How far the chord's wall gives: m/N along the brace, rad/(N·m) in the plane of both tubes and out of it. */
export interface JointFlexibility {
  readonly axial: number;
  readonly inPlane: number;
  readonly outOfPlane: number;
}

/**
 * Local flexibility of a T-joint of round tubes; β = d/D, γ = D/2T, τ = t/T:
 *    axial:        5.69 τ^-0.111 e^(-2.251 β) γ^1.898 / (E D)
 *    in plane:     1.39 τ^-0.238 β^-2.245 γ^1.898 / (E D³)
 *    out of plane: 55 τ^-0.220 e^(-4.076 β) γ^2.417 / (E D³)
 * Source: J. Buitrago, B. E. Healy, T. Y. Chang, Local joint flexibility of tubular joints, OMAE 1993, from memory. A fit to
 * finite elements; an older fit to models of other authors is within 40 % of it in its range (see the test). Refuses β
 * outside 0.3 to 0.8 and γ outside 10 to 20 (from memory): there the fits have no ground.
 */
export function roundJointFlexibility({ D, T, d, t, E }: RoundJoint): JointFlexibility {
  requirePositive({ D, T, d, t, E });
  const [β, γ, τ] = [d / D, D / (2 * T), t / T];
  const outside = roundJointOutside({ D, T, d });
  if (outside) throw refusal({ what: outside, mend: 'State the joint’s stiffness with its source' });
  const { exp } = Math;
  return {
    axial: (5.69 * τ ** -0.111 * exp(-2.251 * β) * γ ** 1.898) / (E * D),
    inPlane: (1.39 * τ ** -0.238 * β ** -2.245 * γ ** 1.898) / (E * D ** 3),
    outOfPlane: (55 * τ ** -0.22 * exp(-4.076 * β) * γ ** 2.417) / (E * D ** 3),
  };
}

/** What is outside the range of the formula, in words; undefined where all is inside. */
export function roundJointOutside({ D, T, d }: Pick<RoundJoint, 'D' | 'T' | 'd'>): string | undefined {
  const [β, γ] = [d / D, D / (2 * T)];
  if (β < 0.3 || β > 0.8) return `The tubes’ diameters are as ${β.toFixed(2)} to 1; the formula holds from 0.3 to 0.8`;
  if (γ < 10 || γ > 20)
    return `The main tube’s radius is ${γ.toFixed(1)} times its wall; the formula holds from 10 to 20`;
  return undefined;
}
