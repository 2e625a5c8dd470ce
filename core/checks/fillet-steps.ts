import type { Step } from './check.ts';

/** Whether a force runs along the weld, and whether a moment opens its root (one fillet alone; two at a plate do not open). */
interface Fillet {
  readonly along: boolean;
  readonly root: boolean;
}

/**
 * Stresses on the throat of a fillet weld between two faces at a right angle, its throat at 45°, from forces per length:
 * f_z square to the face that is welded on (a pull opens the root), f_h across the weld, towards the part that pulls,
 * f_l along the weld; m_r a moment about the weld's own axis that opens the root.
 * Source: EN 1993-1-8:2005, 4.5.3.2 and Figure 4.5; statics of the throat derived by hand.
 */
export const throatStressSteps = ({ along, root }: Fillet): readonly Step[] => [
  {
    symbol: 'sigma_s',
    expression: root ? '(f_z + f_h) / (sqrt(2) * a_w) + 6 * m_r / a_w^2' : '(f_z + f_h) / (sqrt(2) * a_w)',
    unit: 'MPa',
    meaning: 'stress square to the throat',
  },
  {
    symbol: 'tau_s',
    expression: 'abs(f_z - f_h) / (sqrt(2) * a_w)',
    unit: 'MPa',
    meaning: 'shear stress across the throat',
  },
  ...(along ? [{ symbol: 'tau_l', expression: 'f_l / a_w', unit: 'MPa', meaning: 'shear stress along the weld' }] : []),
  {
    symbol: 'sigma_v',
    expression: along ? 'sqrt(sigma_s^2 + 3 * (tau_s^2 + tau_l^2))' : 'sqrt(sigma_s^2 + 3 * tau_s^2)',
    unit: 'MPa',
    meaning: 'equivalent stress',
  },
];

/** The same as one force per length, direction left aside: f_w. */
export const lineForceSteps = ({ along, root }: Fillet): readonly Step[] => [
  {
    symbol: 'f_r',
    expression: along ? 'sqrt(f_z^2 + f_h^2 + f_l^2)' : 'sqrt(f_z^2 + f_h^2)',
    unit: 'N/mm',
    meaning: 'resultant force per length',
  },
  ...(root
    ? [
        {
          symbol: 'f_w',
          expression: 'f_r + 6 * m_r / a_w',
          unit: 'N/mm',
          meaning: 'with the moment about the weld as a force on the throat',
        },
      ]
    : []),
];

/** Resistance per length by the simplified method: f_Rd. EN 1993-1-8:2005, 4.5.3.3. */
export const simplifiedResistance: Step = {
  symbol: 'f_Rd',
  expression: 'f_u / (sqrt(3) * beta_w * gamma_M2) * a_w',
  unit: 'N/mm',
  meaning: 'resistance per length, whatever the direction',
};

/** Both conditions of the directional method as one ratio: u. EN 1993-1-8:2005, 4.5.3.2(6). */
export const directionalSteps: readonly Step[] = [
  {
    symbol: 'sigma_v_Rd',
    expression: 'f_u / (beta_w * gamma_M2)',
    unit: 'MPa',
    meaning: 'limit of the equivalent stress',
  },
  {
    symbol: 'sigma_s_Rd',
    expression: '0.9 * f_u / gamma_M2',
    unit: 'MPa',
    meaning: 'limit of the stress square to the throat',
  },
  {
    symbol: 'u',
    expression: 'max(sigma_v / sigma_v_Rd, sigma_s / sigma_s_Rd)',
    unit: '1',
    meaning: 'the larger of both',
  },
  { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
];
