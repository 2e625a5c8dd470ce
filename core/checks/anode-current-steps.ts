import type { SecondOpinion, Step } from './check.ts';

/** Current that all anodes give, at a length `length` of each and with a part `left` of its alloy: McCoy's and Dwight's bars, or a flush face. */
export function anodeCurrentSteps(length: string, left: string): readonly Step[] {
  return [
    { symbol: 'L_a', expression: length, unit: 'mm', meaning: 'length of an anode then' },
    {
      symbol: 'r_a',
      expression: `sqrt(${left} * m_a / (rho_a * pi * L_a) + (d_k / 2)^2)`,
      unit: 'mm',
      meaning: 'radius of a round bar with what is left of it',
    },
    {
      symbol: 'x_a',
      expression: 'sqrt(1 + (r_a / (2 * L_a))^2)',
      unit: '1',
      meaning: 'for a short bar',
    },
    {
      symbol: 'R_bar',
      expression:
        'k_d * rho_w / (2 * pi * L_a) * (L_a >= 4 * r_a ? log(4 * L_a / r_a) - 1 : log(2 * L_a / r_a * (1 + x_a)) + r_a / (2 * L_a) - x_a)',
      unit: 'ohm',
      meaning: 'resistance of a bar with water all round',
    },
    {
      symbol: 'R_a',
      expression: 'flush > 0 ? rho_w / (L + b) : R_bar',
      unit: 'ohm',
      meaning: 'resistance of an anode; flush: by the mean of length and width, ρ/2S',
    },
    { symbol: 'I_a', expression: 'dE / R_a', unit: 'A', meaning: 'current of one anode' },
    { symbol: 'I_Rd', expression: 'N * I_a', unit: 'A', meaning: 'current of all of them' },
  ];
}

/** No bar resists more than the ball in it, or less than the ball around it; a flush face about as a disc of its area. */
export function anodeCurrentBounds(left: string): SecondOpinion {
  return {
    title: 'between the balls in and around a bar; a flush face between half and twice a disc of its area',
    source: [{ document: 'potential theory: ball ρ/4πr, disc on a wall ρ/4a', clause: 'derived by hand' }],
    steps: [
      {
        symbol: 'r_in',
        expression: `sqrt(${left} * m_a / (rho_a * pi * L) + (d_k / 2)^2)`,
        unit: 'mm',
        meaning: 'radius of the ball in it',
      },
      {
        symbol: 'r_out',
        expression: 'sqrt((L / 2)^2 + m_a / (rho_a * pi * 0.9 * L) + (d_k / 2)^2)',
        unit: 'mm',
        meaning: 'radius of the ball around it',
      },
      {
        symbol: 'R_high',
        expression: 'flush > 0 ? rho_w / (2 * sqrt(L * b / pi)) : k_d * rho_w / (4 * pi * r_in)',
        unit: 'ohm',
        meaning: 'most that one can resist',
      },
      {
        symbol: 'R_low',
        expression: 'flush > 0 ? rho_w / (8 * sqrt(L * b / pi)) : rho_w / (4 * pi * r_out)',
        unit: 'ohm',
        meaning: 'least that one can resist',
      },
      { symbol: 'I_low', expression: 'N * dE / R_high', unit: 'A', meaning: 'lower bound' },
      { symbol: 'I_high', expression: 'N * dE / R_low', unit: 'A', meaning: 'upper bound' },
    ],
    of: 'I_Rd',
    low: 'I_low',
    high: 'I_high',
  };
}
