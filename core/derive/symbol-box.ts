import type { Box } from './box.ts';

/**
 * A declared name as it is set in print: Greek names become letters, what follows the first `_` (or a trailing
 * number) becomes the subscript, its parts joined by commas: `F_t_Rd` is F with "t,Rd", `gamma_M2` is γ with "M2".
 * `Delta_` before another Greek name is a prefix: `Delta_sigma_C` is Δσ with "C".
 */
export function symbolBox(name: string): Box {
  const [head = name, ...rest] = name.split('_').filter((part) => part !== '');
  const [, letters = head, digits = ''] = /^([A-Za-z]+?)(\d*)$/.exec(head) ?? [];
  const prefixed = letters === 'Delta' && digits === '' && rest[0] !== undefined && Object.hasOwn(greek, rest[0]);
  const base: Box = { kind: 'symbol', text: prefixed ? letter(letters) + letter(rest[0]!) : letter(letters) };
  const sub = [...(digits ? [digits] : []), ...rest.slice(prefixed ? 1 : 0).map(letter)].join(',');
  return sub ? { kind: 'script', base, sub: { kind: 'text', text: sub } } : base;
}

const letter = (part: string): string => (Object.hasOwn(greek, part) ? greek[part as keyof typeof greek] : part);

const greek = {
  ...{
    alpha: 'α',
    beta: 'β',
    gamma: 'γ',
    delta: 'δ',
    epsilon: 'ε',
    zeta: 'ζ',
    eta: 'η',
    theta: 'θ',
    iota: 'ι',
    kappa: 'κ',
  },
  ...{
    lambda: 'λ',
    mu: 'μ',
    nu: 'ν',
    xi: 'ξ',
    rho: 'ρ',
    sigma: 'σ',
    tau: 'τ',
    upsilon: 'υ',
    phi: 'φ',
    chi: 'χ',
    psi: 'ψ',
    omega: 'ω',
  },
  ...{ Gamma: 'Γ', Delta: 'Δ', Theta: 'Θ', Lambda: 'Λ', Xi: 'Ξ', Pi: 'Π', Sigma: 'Σ', Phi: 'Φ', Psi: 'Ψ', Omega: 'Ω' },
};
