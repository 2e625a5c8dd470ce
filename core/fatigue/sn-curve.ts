import { refusal } from '../refusal.ts';
import type { Source } from '../source.ts';

export type Environment = 'air' | 'protected' | 'free';

export const environmentWords: Readonly<Record<Environment, string>> = {
  air: 'in air',
  protected: 'in seawater with cathodic protection',
  free: 'in seawater, free to corrode',
};

/**
 * Two straight lines in log N over log S that meet at the knee: N = N_k (S_k / S)^m_1 above it, with m_2 below it.
 * One slope where both are the same. SI: stress ranges in Pa.
 */
export interface SnCurve {
  /** As a person names it: "D", or a detail category such as "90". */
  readonly name: string;
  readonly environment: Environment;
  readonly source: Source;
  /** Stress range, Pa, and cycles at the knee. */
  readonly S_k: number;
  readonly N_k: number;
  readonly m_1: number;
  readonly m_2: number;
  /** Range below which a cycle does no damage, Pa; 0 without. */
  readonly cutOff: number;
  /** A part thicker than t_ref, m, multiplies its range by (t / t_ref)^k. */
  readonly t_ref: number;
  readonly k: number;
}

/** Row: slope and log10 a in air, log10 a below the knee (slope 5), under protection, free to corrode (slope 3), k. MPa. */
type Row = readonly [m: number, air: number, low: number, protectedOne: number, free: number, k: number];

const rows: Readonly<Record<string, Row>> = {
  B1: [4, 15.117, 17.146, 14.917, 12.436, 0],
  B2: [4, 14.885, 16.856, 14.685, 12.262, 0],
  C: [3, 12.592, 16.32, 12.192, 12.115, 0.05],
  C1: [3, 12.449, 16.081, 12.049, 11.972, 0.1],
  C2: [3, 12.301, 15.835, 11.901, 11.824, 0.15],
  D: [3, 12.164, 15.606, 11.764, 11.687, 0.2],
  E: [3, 12.01, 15.35, 11.61, 11.533, 0.2],
  F: [3, 11.855, 15.091, 11.455, 11.378, 0.25],
  F1: [3, 11.699, 14.832, 11.299, 11.222, 0.25],
  F3: [3, 11.546, 14.576, 11.146, 11.068, 0.25],
  G: [3, 11.398, 14.33, 10.998, 10.921, 0.25],
  W1: [3, 11.261, 14.101, 10.861, 10.784, 0.25],
  W2: [3, 11.107, 13.845, 10.707, 10.63, 0.25],
  W3: [3, 10.97, 13.617, 10.57, 10.493, 0.25],
};

const categories = [160, 140, 125, 112, 100, 90, 80, 71, 63, 56, 50, 45, 40, 36];

/** Names of all curves held, those for the sea first. */
export const snCurveNames: readonly string[] = [...Object.keys(rows), ...categories.map(String)];

const tables = { air: '2-1', protected: '2-2', free: '2-4' } as const;
const MPa = 1e6;

/**
 * S-N curve by name: a class of DNV-RP-C203 (B1 to W3), or a detail category of EN 1993-1-9 (160 to 36), which holds in
 * air only. Refuses a name that is not held, and a category in the sea.
 * Sources: DNV-RP-C203, edition 2016 amended 2019, tables 2-1, 2-2 and 2-4, read in two public copies of its numbers;
 * EN 1993-1-9:2005, 7.1. The exponents of C and C1 differ between editions.
 */
export function snCurve(name: string, environment: Environment): SnCurve {
  const known = `${name}|${environment}`;
  const kept = made.get(known);
  if (kept) return kept;
  const curve = Object.hasOwn(rows, name)
    ? marine(name, rows[name]!, environment)
    : categories.includes(Number(name))
      ? category(Number(name), environment)
      : undefined;
  if (!curve)
    throw refusal({
      what: `No S-N curve “${name}” is held`,
      where: { curve: name },
      mend: `Name one of ${snCurveNames.join(', ')}`,
    });
  made.set(known, curve);
  return curve;
}
const made = new Map<string, SnCurve>();

function marine(name: string, row: Row, environment: Environment): SnCurve {
  const [m, air, low, protectedOne, free, k] = row;
  const common = {
    name,
    environment,
    source: {
      document: 'DNV-RP-C203',
      edition: '2016',
      clause: `Table ${tables[environment]}, class ${name}, read in two public copies of its numbers`,
    },
    cutOff: 0,
    t_ref: 0.025,
    k,
  };
  if (environment === 'free') {
    // One slope has no knee: any point of the line stands for it.
    const N_k = 1e7;
    return { ...common, S_k: MPa * 10 ** ((free - 7) / 3), N_k, m_1: 3, m_2: 3 };
  }
  // Where both lines meet: within 0.1 % of the 10⁷ cycles (10⁶ under protection) that the table names.
  const first = environment === 'air' ? air : protectedOne;
  const knee = (low - first) / (5 - m);
  return { ...common, S_k: MPa * 10 ** knee, N_k: 10 ** (first - m * knee), m_1: m, m_2: 5 };
}

/** Slope 3 through the category at 2 million cycles, 5 from 5 million, nothing below the range of 100 million. */
function category(of: number, environment: Environment): SnCurve {
  if (environment !== 'air')
    throw refusal({
      what: `Detail category ${of} of EN 1993-1-9 holds in air, not ${environmentWords[environment]}`,
      where: { curve: String(of), environment },
      mend: 'Take a class of DNV-RP-C203, B1 to W3',
    });
  const S_k = MPa * of * (2 / 5) ** (1 / 3);
  return {
    name: String(of),
    environment,
    source: { document: 'EN 1993-1-9', edition: '2005', clause: `7.1(2) and (3), category ${of}` },
    S_k,
    N_k: 5e6,
    m_1: 3,
    m_2: 5,
    cutOff: S_k * (5 / 100) ** (1 / 5),
    t_ref: 0.025,
    k: 0.2,
  };
}
