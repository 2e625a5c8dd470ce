import { refusal } from '../refusal.ts';

/**
 * Gamma(a) in two parts at x: lower = ∫ from 0 to x, upper = ∫ from x on, of t^(a-1) e^(-t) dt; not normalised.
 * Refuses a that is not positive, x that is negative. Error: a few units of the 14th digit for 0.5 < a < 60.
 * Source: the series and the continued fraction of Abramowitz & Stegun, 6.5.29 and 6.5.31, the latter by the method of
 * Lentz; Gamma(a) by the coefficients of Lanczos with g = 7.
 */
export function incompleteGamma(a: number, x: number): { readonly lower: number; readonly upper: number } {
  if (!(a > 0 && x >= 0 && Number.isFinite(a)))
    throw refusal({
      what: `The incomplete gamma function is asked for at a = ${a}, x = ${x}`,
      where: { a, x },
      mend: 'Take a positive a and an x that is not negative',
    });
  const whole = gamma(a);
  if (x === 0) return { lower: 0, upper: whole };
  if (x === Infinity) return { lower: whole, upper: 0 };
  const head = Math.exp(a * Math.log(x) - x);
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; Math.abs(term) > 1e-17 * sum; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return { lower: head * sum, upper: whole - head * sum };
  }
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let fraction = d;
  for (let n = 1; n < 1000; n++) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / (Math.abs(an * d + b) < tiny ? tiny : an * d + b);
    c = Math.abs(b + an / c) < tiny ? tiny : b + an / c;
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return { lower: whole - head * fraction, upper: head * fraction };
}

const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

function gamma(a: number): number {
  if (a < 0.5) return Math.PI / (Math.sin(Math.PI * a) * gamma(1 - a));
  let sum = lanczos[0]!;
  for (let i = 1; i < lanczos.length; i++) sum += lanczos[i]! / (a - 1 + i);
  const t = a + 6.5;
  return Math.sqrt(2 * Math.PI) * t ** (a - 0.5) * Math.exp(-t) * sum;
}
