import type { Model } from '../model.ts';
import type { Check, Input, Missing, Step } from './check.ts';
import { solvedAtBothEnds, type End } from './fatigue-swing.ts';

/**
 * Stress range that opens the throat of a fillet weld, at one end of the cycle (`at`: up or dn): all stress on the throat
 * that is not along the weld, as one. From forces per length f_z and f_h and, if `root`, the moment m about the weld.
 * Source: EN 1993-1-9:2005, 5(6): σ_wf = √(σ_⊥f² + τ_⊥f²); statics of the throat at 45° derived by hand.
 */
export const throatAtEnd = (at: 'up' | 'dn', root: boolean): readonly Step[] => [
  {
    symbol: `sigma_${at}`,
    expression: `(f_z_${at} + f_h_${at}) / (sqrt(2) * a_w)${root ? ` + 6 * m_${at} / a_w^2` : ''}`,
    unit: 'MPa',
    meaning: `stress square to the throat, force ${at === 'up' ? 'up' : 'down'}`,
  },
  {
    symbol: `tau_${at}`,
    expression: `abs(f_z_${at} - f_h_${at}) / (sqrt(2) * a_w)`,
    unit: 'MPa',
    meaning: 'shear stress across it',
  },
];

/** Force per length along a panel's weld at both ends of the cycle: the whole plate's solution alone has one. */
export const alongWeld = (
  weld: (model: Model, bay: string, end: End) => Check | Missing,
): Readonly<Record<string, Input>> =>
  solvedAtBothEnds(weld, ({ k_r, f_1l }) => k_r! * f_1l!, 'f_l', 'N/mm', 'force per length along the weld');

export const alongWeldCaution =
  'Shear along the weld, where the whole plate’s solution gives one, is counted like stress that opens the throat: on the safe side of EN 1993-1-9, 5(6), which has the better category 80 for it.';
