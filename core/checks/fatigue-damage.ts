import { historyDamage } from '../fatigue/history-damage.ts';
import { cyclesOf } from '../fatigue/load-history.ts';
import { environmentWords, snCurve, type SnCurve } from '../fatigue/sn-curve.ts';
import type { CycleResponse } from '../fatigue/cycle-response.ts';
import type { Model } from '../model.ts';
import type { Safety, Source } from '../source.ts';
import { missing, type Check, type Input, type Missing, type Reading, type SecondOpinion, type Step } from './check.ts';
import { compiled } from './generated.ts';
import { apartOf, environmentOf, factorOf, historyOf } from './fatigue-history.ts';
import { kernels } from './kernels.ts';

/** A detail's class: the detail category of EN 1993-1-9 and the curve of DNV-RP-C203 through the same strength at 2 million cycles. */
export interface DetailClass {
  readonly category: keyof typeof curveOfCategory;
  /** Part that the thickness effect looks at, m. */
  readonly thickness: number;
}

export const curveOfCategory = {
  125: 'C', 112: 'C1', 100: 'C2', 90: 'D', 80: 'E', 71: 'F', 63: 'F1', 56: 'F3', 50: 'G', 45: 'W1', 40: 'W2', 36: 'W3',
} as const; // prettier-ignore

type ClassAt = (model: Model, place: string) => DetailClass | Missing;

/** The detail's S-N curve in the sea, or why there is none. */
export function curveAt(model: Model, place: string, classAt: ClassAt): SnCurve | Missing {
  const environment = environmentOf(model.document);
  if (environment === 'air')
    return missing(
      'an S-N curve in the sea: the document says that the details are in air, but the plate hangs under water, and curves in air are refused there. Say “protected” or “free”',
    );
  const detail = classAt(model, place);
  return 'missing' in detail ? detail : snCurve(curveOfCategory[detail.category], environment);
}

const ofCurve = (classAt: ClassAt, unit: string, meaning: string, value: (curve: SnCurve) => number): Input => ({
  unit,
  meaning,
  from: 'DNV-RP-C203, by class and environment',
  read: (model, place) => {
    const curve = curveAt(model, place, classAt);
    return 'missing' in curve ? curve : value(curve);
  },
});

/** Inputs of the damage at a detail beside its stresses. `check`: the check itself, asked when it is read. */
export function damageInputs(
  classAt: ClassAt,
  sides: CycleResponse['sides'],
  check: () => Check,
): Readonly<Record<string, Input>> {
  return {
    sigma_C: {
      unit: 'MPa',
      meaning: 'detail category: range at 2 million cycles in air',
      from: 'EN 1993-1-9',
      read: (model, place) => {
        const detail = classAt(model, place);
        return 'missing' in detail ? detail : 1e6 * detail.category;
      },
    },
    S_k: ofCurve(classAt, 'MPa', 'stress range at the knee of the S-N curve', ({ S_k }) => S_k),
    N_k: ofCurve(classAt, '1', 'cycles at the knee', ({ N_k }) => N_k),
    m_1: ofCurve(classAt, '1', 'slope above the knee', ({ m_1 }) => m_1),
    m_2: ofCurve(classAt, '1', 'slope below it', ({ m_2 }) => m_2),
    t_d: {
      unit: 'mm',
      meaning: 'thickness at the detail',
      from: 'geometry, as ordered',
      read: (model, place) => {
        const detail = classAt(model, place);
        return 'missing' in detail ? detail : detail.thickness;
      },
    },
    t_ref: ofCurve(classAt, 'mm', 'thickness up to which the curve holds', ({ t_ref }) => t_ref),
    k_x: ofCurve(classAt, '1', 'exponent of the thickness effect', ({ k }) => k),
    n_eq: {
      unit: '1',
      meaning: 'cycles of the stated swing that do the damage of the whole history of the life',
      from: 'document: fatigue, loads (see the section on fatigue)',
      read: (model, place) => equivalentCycles(check(), classAt, sides, model, place),
    },
    n_s: {
      unit: '1',
      meaning: 'slams and snaps in the life',
      from: 'document: fatigue',
      read: (model) => apartOf(model).cycles,
    },
    k_s: {
      unit: '1',
      meaning: 'largest range of the force in a slam or snap over that of the stated swing',
      from: 'document: fatigue',
      read: (model) => apartOf(model).ratio,
    },
    DFF: {
      unit: '1',
      meaning: 'design fatigue factor, by access and consequence; no other factor is on stress or strength',
      from: 'document: fatigue',
      read: ({ document }) => factorOf(document).value,
    },
  };
}

/** Cycles of the stated swing with the damage of the history, contact followed for every size of cycle. */
function equivalentCycles(
  check: Check,
  classAt: ClassAt,
  sides: CycleResponse['sides'],
  model: Model,
  place: string,
): Reading {
  const history = historyOf(model);
  if ('missing' in history) return history;
  if (history.kind === 'constant' && history.ratio === 1) return history.cycles;
  const curve = curveAt(model, place, classAt);
  if ('missing' in curve) return curve;
  const of = valuesOfOneCycle(check, model, place);
  if ('missing' in of) return of as Missing;
  const { s_up, s_dn, z, k_t, D_w } = of as Readonly<Record<string, number>>;
  if (D_w === 0) return cyclesOf(history);
  return historyDamage(curve, history, { up: s_up!, down: s_dn!, z: z!, sides }, k_t) / D_w!;
}

/** The check's own values for one cycle of the stated swing. */
function valuesOfOneCycle(check: Check, model: Model, place: string): Readonly<Record<string, number>> | Missing {
  const { safety } = model.basis;
  const all: Record<string, number> = {};
  for (const [symbol, input] of Object.entries(check.inputs)) {
    const value = symbol === 'n_eq' ? 1 : input.read(model, place, model.loads.swing.up);
    if (typeof value !== 'number') return value;
    all[symbol] = value;
  }
  const results = compiled[check.id]![safety]!(all, kernels);
  check.steps[safety]!.forEach(({ symbol }, i) => (all[symbol] = results[i]!));
  return all;
}

const ranges: Readonly<Record<CycleResponse['sides'], readonly Step[]>> = {
  opposite: [
    {
      symbol: 'sigma_r',
      expression: 'abs(z) < 1 ? s_up + s_dn : abs(s_up - s_dn)',
      unit: 'MPa',
      meaning: 'stress range from peak to trough: the stress changes its sign where the detail is at rest',
    },
  ],
  same: [
    {
      symbol: 'sigma_r',
      expression: 'abs(z) < 1 ? max(s_up, s_dn) : abs(s_up - s_dn)',
      unit: 'MPa',
      meaning: 'stress range from peak to trough: pulled the same way at both ends, or let go, with rest between',
    },
    {
      symbol: 'sigma_2',
      expression: 'abs(z) < 1 ? min(s_up, s_dn) : 0 * s_up',
      unit: 'MPa',
      meaning: 'second, smaller range of the same cycle, on the other side of rest',
    },
  ],
};

const cyclesByCurve = (symbol: string): string => `(${symbol} > 1 ? ${symbol}^m_1 : ${symbol}^m_2)`;

/** From the stresses s_up and s_dn at both ends of the cycle to the damage D and its limit. */
export function damageSteps(sides: CycleResponse['sides']): readonly Step[] {
  const two = sides === 'same';
  return [
    ...ranges[sides],
    { symbol: 'k_t', expression: 't_d > t_ref ? (t_d / t_ref)^k_x : 1', unit: '1', meaning: 'thickness effect' },
    { symbol: 'x_1', expression: 'k_t * sigma_r / S_k', unit: '1', meaning: 'range over that at the knee' },
    ...(two
      ? [{ symbol: 'x_2', expression: 'k_t * sigma_2 / S_k', unit: '1', meaning: 'second range over that at the knee' }]
      : []),
    { symbol: 'x_s', expression: 'k_s * x_1', unit: '1', meaning: 'range of a slam or snap over that at the knee' },
    {
      symbol: 'D_w',
      expression: two
        ? `n_eq / N_k * (${cyclesByCurve('x_1')} + ${cyclesByCurve('x_2')})`
        : `n_eq / N_k * ${cyclesByCurve('x_1')}`,
      unit: '1',
      meaning: 'damage of the waves in the life, by Palmgren and Miner',
    },
    {
      symbol: 'D_s',
      expression: `n_s / N_k * ${cyclesByCurve('x_s')}`,
      unit: '1',
      meaning: 'damage of slams and snaps, counted apart',
    },
    { symbol: 'D', expression: 'D_w + D_s', unit: '1', meaning: 'damage in the life' },
    { symbol: 'D_lim', expression: '1 / DFF', unit: '1', meaning: 'damage that the design fatigue factor leaves' },
  ];
}

/** Bounds on D from another code: its category in air below; one slope and a third of the life in the sea above. */
export function damageBounds(sides: CycleResponse['sides']): SecondOpinion {
  const two = sides === 'same';
  const inAir = (y: string): string => `(${y} > 1 ? ${y}^3 : ${y}^5)`;
  return {
    title:
      'below: the detail category in air, slope 3 and from 5 million cycles 5; above: one slope of 3 and a third of the life, as for free corrosion, with 2 % for the rounding of the tables',
    source: [
      { document: 'EN 1993-1-9', edition: '2005', clause: '7.1(2), (3)' },
      {
        document: 'BS 7608',
        edition: '1993',
        clause: 'unprotected joints in sea water: a third of the life, no knee',
        memory: true,
      },
    ],
    steps: [
      { symbol: 'sigma_D', expression: 'cbrt(2 / 5) * sigma_C', unit: 'MPa', meaning: 'range at 5 million cycles' },
      { symbol: 'y_1', expression: 'k_t * sigma_r / sigma_D', unit: '1', meaning: 'range over that' },
      ...(two
        ? [{ symbol: 'y_2', expression: 'k_t * sigma_2 / sigma_D', unit: '1', meaning: 'second range over that' }]
        : []),
      {
        symbol: 'D_low',
        expression: two ? `n_eq / 5e6 * (${inAir('y_1')} + ${inAir('y_2')})` : `n_eq / 5e6 * ${inAir('y_1')}`,
        unit: '1',
        meaning: 'damage in air',
      },
      {
        symbol: 'D_high',
        expression: two
          ? '1.02 * 3 / 5e6 * (n_eq * (y_1^3 + y_2^3) + n_s * (k_s * y_1)^3)'
          : '1.02 * 3 / 5e6 * (n_eq * y_1^3 + n_s * (k_s * y_1)^3)',
        unit: '1',
        meaning: 'damage with one slope and a third of the life',
      },
    ],
    of: 'D',
    low: 'D_low',
    high: 'D_high',
  };
}

/** What every fatigue check is, beside its detail. */
export const fatigueCheck = {
  limitState: 'fatigue',
  once: true,
  demand: 'D',
  capacity: 'D_lim',
} as const;

/** The same steps under either kind of design basis: fatigue knows no partial factor on loads. */
export const underBoth = (steps: readonly Step[]): Readonly<Record<Safety, readonly Step[]>> => ({
  'partial factors': steps,
  'allowable stress': steps,
});

/** Sources of a detail's class and of its curves in the sea. */
export const detailSources = (clause: string, memory?: true): readonly Source[] => [
  {
    document: 'EN 1993-1-9',
    edition: '2005',
    clause: memory ? clause : `${clause}, read in a public copy`,
    ...(memory ? { memory } : {}),
  },
  {
    document: 'DNV-RP-C203',
    edition: '2016',
    clause: `Tables 2-2 and 2-4, ${environmentWords.protected} or free to corrode, read in public copies of the numbers`,
  },
];

export const fatigueCautions = [
  'The welds are taken as welded: no relief for compression or for a low mean stress.',
  'Inspect as the design fatigue factor assumes; a crack that is not looked for is not found.',
] as const;
