import { refusal } from '../../refusal.ts';
import { oneNorm } from './condition.ts';
import { elementProduct, normBound } from './element-product.ts';
import { elimination, serves, type Elimination } from './elimination.ts';
import { factorFronts, type FactoredFronts } from './factor-fronts.ts';
import type { MakeKernels } from './front-kernels.ts';
import { frontKernels } from './wasm-kernels.ts';
import { requireSystem, type StiffnessSystem } from './stiffness-system.ts';
import { solveLower, solveUpper } from './triangular-solve.ts';

export interface FactoriseOptions {
  /** How the dense work is done; WebAssembly where it may run, unless told. */
  readonly kernels?: MakeKernels;
  /** The elimination of an earlier system with the same nodes, elements and held freedoms: only stiffness has
   *  changed. Where it does not serve (freedoms meet now that did not), another is found. */
  readonly elimination?: Elimination;
}

/** A stiffness matrix ready to be solved with. Vectors have 6N entries: forces in N and N·m, displacements in m and rad. */
export interface Factorisation {
  /** u of K u = f: zero at held freedoms, where f counts for nothing. Refined on the elements' matrices until the scaled
   *  residual is at rounding or no longer falls. f must be of finite numbers. */
  solve(f: Float64Array): Float64Array;
  /** Scaled residual ‖f - K u‖∞ / (‖K‖∞ ‖u‖∞ + ‖f‖∞) over free freedoms. */
  residual(u: Float64Array, f: Float64Array): number;
  /** ‖K‖₁ ‖K⁻¹‖₁, estimated from below within about a factor of three; N and N·m as they are. Takes some solves when first read. */
  readonly conditionEstimate: number;
  readonly elimination: Elimination;
  /** Multiplications and additions of the factorisation. */
  readonly flops: number;
  /** All memory it holds, and that of the factor alone. */
  readonly bytes: number;
  readonly factorBytes: number;
}

/** Factorises K. Refuses a system that does not fit together; throws a Mechanism if something is not held. */
export function factorise(system: StiffnessSystem, options: FactoriseOptions = {}): Factorisation {
  requireSystem(system);
  const given = options.elimination;
  const order = given && serves(given, system) ? given : elimination(system);
  const factored = factorFronts(order, system, options.kernels ?? frontKernels);
  return factorisationOf(system, {
    solveOnce: (f) => solveOnce(factored, f),
    freedoms: order.freedoms,
    elimination: order,
    flops: order.flops,
    bytes: factored.kernels.doubles.byteLength,
    factorBytes: factored.factorBytes,
  });
}

/** K taken apart in whatever way: one pass through its factors, and the free freedoms in any order. */
interface TakenApart extends Pick<Factorisation, 'elimination' | 'flops' | 'bytes' | 'factorBytes'> {
  readonly solveOnce: (f: Float64Array) => Float64Array;
  readonly freedoms: Int32Array;
}

/** Solves, refines and estimates by the elements of a system and the factors of its matrix. */
export function factorisationOf(system: StiffnessSystem, apart: TakenApart): Factorisation {
  const norm = normBound(system);
  const { held } = system;
  const product = new Float64Array(held.length);
  /** f - K u at free freedoms, into product. */
  const unbalanced = (u: Float64Array, f: Float64Array): Float64Array => {
    elementProduct(system, u, product);
    for (let i = 0; i < held.length; i++) product[i] = held[i] === 0 ? f[i]! - product[i]! : 0;
    return product;
  };
  const scaled = (r: Float64Array, u: Float64Array, f: Float64Array): number => {
    const scale = norm * largest(u, held) + largest(f, held);
    return scale > 0 ? largest(r, held) / scale : 0;
  };
  let condition: number | undefined;
  return {
    solve(f) {
      requireForces(f, held);
      return refined(apart.solveOnce, f, unbalanced, scaled);
    },
    residual: (u, f) => scaled(unbalanced(u, f), u, f),
    get conditionEstimate() {
      return (condition ??= conditionOf(system, apart));
    },
    elimination: apart.elimination,
    flops: apart.flops,
    bytes: apart.bytes,
    factorBytes: apart.factorBytes,
  };
}

function requireForces(f: Float64Array, held: Uint8Array): void {
  if (f.length !== held.length)
    throw refusal({ what: `There are ${f.length} forces for ${held.length} freedoms`, mend: 'Give six for each node' });
  for (let i = 0; i < f.length; i++) {
    if (Number.isFinite(f[i])) continue;
    throw refusal({
      what: `The force at freedom ${i % 6} of node ${Math.floor(i / 6)} is ${f[i]}`,
      where: { node: Math.floor(i / 6) },
      mend: 'Look for a load without a size',
    });
  }
}

/** A residual this small is rounding: a further step would only stir it. */
const atRounding = 2 ** -53;
const mostSteps = 3;

function refined(
  pass: (f: Float64Array) => Float64Array,
  f: Float64Array,
  unbalanced: (u: Float64Array, f: Float64Array) => Float64Array,
  scaled: (r: Float64Array, u: Float64Array, f: Float64Array) => number,
): Float64Array {
  let u = pass(f);
  let r = unbalanced(u, f);
  let error = scaled(r, u, f);
  for (let step = 0; step < mostSteps && error > atRounding; step++) {
    const correction = pass(r);
    const better = u.map((value, i) => value + correction[i]!);
    r = unbalanced(better, f);
    const now = scaled(r, better, f);
    if (!(now < error)) break;
    u = better;
    error = now;
  }
  return u;
}

/** u ← L⁻ᵀ L⁻¹ f, in and out of the order of elimination. */
export function solveOnce(factored: FactoredFronts, f: Float64Array): Float64Array {
  const { elimination, kernels, x } = factored;
  const { freedoms, size } = elimination;
  const M = kernels.doubles;
  for (let i = 0; i < size; i++) M[x + i] = f[freedoms[i]!]!;
  solveLower(factored);
  solveUpper(factored);
  const u = new Float64Array(f.length);
  for (let i = 0; i < size; i++) u[freedoms[i]!] = M[x + i]!;
  return u;
}

function conditionOf(system: StiffnessSystem, { freedoms, solveOnce: pass }: TakenApart): number {
  const size = freedoms.length;
  const whole = new Float64Array(system.held.length);
  const spread = (x: Float64Array): Float64Array => {
    for (let i = 0; i < size; i++) whole[freedoms[i]!] = x[i]!;
    return whole;
  };
  const out = new Float64Array(system.held.length);
  const gathered = (y: Float64Array): Float64Array => Float64Array.from(freedoms, (freedom) => y[freedom]!);
  const K = oneNorm(size, (x) => gathered(elementProduct(system, spread(x), out)));
  const inverse = oneNorm(size, (x) => gathered(pass(spread(x))));
  return K * inverse;
}

const largest = (values: Float64Array, held: Uint8Array): number => {
  let most = 0;
  for (let i = 0; i < values.length; i++) if (held[i] === 0) most = Math.max(most, Math.abs(values[i]!));
  return most;
};
