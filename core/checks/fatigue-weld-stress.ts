import type { Step } from './check.ts';

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
