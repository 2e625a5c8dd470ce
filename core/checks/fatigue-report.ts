import { blocksOf, cyclesBeyond, cyclesOf, type LoadHistory } from '../fatigue/load-history.ts';
import { environmentWords, type Environment } from '../fatigue/sn-curve.ts';
import { cycleDamage } from '../fatigue/cycle-damage.ts';
import type { SnCurve } from '../fatigue/sn-curve.ts';
import { fromUnit, significant } from '../quantity/format-quantity.ts';
import type { Model } from '../model.ts';
import { graver, type CheckRow } from './check-row.ts';
import { curveOfCategory } from './fatigue-damage.ts';
import { apartOf, environmentOf, factorOf, historyOf } from './fatigue-history.ts';
import { fatigueMends } from './fatigue-mends.ts';
import { valuesAt, type Values } from './evaluate-check.ts';
import { checks } from './index.ts';

/** Life of one detail at one place. Stresses in Pa, times in years. */
export interface FatigueDetail {
  readonly id: string;
  readonly title: string;
  readonly place: string;
  readonly verdict: CheckRow['verdict'];
  /** Damage in the life wanted, that of slams and snaps in it; null where it cannot be judged. */
  readonly damage: number | null;
  readonly damageApart: number | null;
  /** Calculated life; null where nothing is damaged or known. And the life needed: that wanted, times the factor. */
  readonly life: number | null;
  readonly needed: number;
  /** Detail category, curve, range of the stated swing, and the range that would just last; null where not known. */
  readonly category: number | null;
  readonly curve: string | null;
  readonly range: number | null;
  readonly bearable: number | null;
  readonly reason: string;
  readonly mend: string;
  /** The gravest of its kind. */
  readonly leads: boolean;
}

export interface FatigueReport {
  readonly history: { readonly words: string; readonly cycles: number | null };
  readonly environment: { readonly name: Environment; readonly words: string };
  readonly factor: { readonly value: number; readonly reason: string };
  /** All details, the gravest first. */
  readonly details: readonly FatigueDetail[];
}

/** Lives of all details from their rows: the gravest of each kind leads, with its stress and class. */
export function fatigueReport(model: Model, rows: readonly CheckRow[]): FatigueReport {
  const { document } = model;
  const factor = factorOf(document);
  const wanted = document.basis.life.si / fromUnit(1, 'year');
  const made = rows.filter(({ limitState, verdict }) => limitState === 'fatigue' && verdict !== 'not applicable');
  const led = new Set<string>();
  const details = [...made].sort(graver).map((row): FatigueDetail => {
    const leads = !led.has(row.id);
    led.add(row.id);
    const values = leads && row.demand !== null ? valuesOf(model, row) : null;
    return {
      id: row.id,
      title: row.title,
      place: row.place,
      verdict: row.verdict,
      damage: row.demand,
      damageApart: values?.['D_s'] ?? null,
      life: row.demand ? wanted / row.demand : null,
      needed: wanted * factor.value,
      category: values ? values['sigma_C']! / 1e6 : null,
      curve: values ? curveOfCategory[(values['sigma_C']! / 1e6) as keyof typeof curveOfCategory] : null,
      range: values ? values['sigma_r']! : null,
      bearable: values ? bearableOf(values) : null,
      reason: row.reason,
      mend: fatigueMends[row.id] ?? '',
      leads,
    };
  });
  const environment = environmentOf(document);
  const history = historyOf(model);
  return {
    history: { words: historyWords(model), cycles: 'missing' in history ? null : cyclesOf(history) },
    environment: { name: environment, words: environmentWords[environment] },
    factor,
    details,
  };
}

function valuesOf(model: Model, row: CheckRow): Values | null {
  const check = checks.find(({ id }) => id === row.id);
  const values = check && valuesAt(check, model, row.place, model.loads.situations[0]!);
  return values && !('missing' in values) ? values.all : null;
}

/** The range whose damage alone is the limit: one range a cycle, slams and snaps left out. */
function bearableOf(values: Values): number | null {
  const { S_k, N_k, m_1, m_2, D_lim, n_eq, k_t } = values as Readonly<Record<string, number>>;
  if (!(n_eq! > 0)) return null;
  const ratio = (D_lim! * N_k!) / n_eq!;
  return (S_k! * ratio ** (1 / (ratio > 1 ? m_1! : m_2!))) / k_t!;
}

/** How the force swings over the life, in a sentence. */
export function historyWords(model: Model): string {
  const history = historyOf(model);
  if ('missing' in history) return `Not known: ${history.missing}.`;
  const { fatigue } = model.document;
  const cycles = `${significant(cyclesOf(history), 4)} cycles in the life`;
  const { cycles: n } = apartOf(model);
  const apart =
    n > 0
      ? ` Slams and snaps, ${significant(n, 4)} in the life, are counted apart, each at the largest of their ranges.`
      : '';
  const loading = fatigue?.loading;
  if (!loading)
    return `The stated force in every cycle: ${cycles} from peak to trough of the force of service. That is safe for an extreme force; a long-term distribution gives longer lives.${apart}`;
  const percent = (ratio: number) => `${significant(100 * ratio, 3)} % of the stated swing`;
  const said =
    history.kind === 'constant'
      ? `${cycles} of one range, ${percent(history.ratio)}`
      : history.kind === 'weibull'
        ? `Weibull’s distribution of ranges, shape ${significant(history.shape, 3)}, largest in ${significant(history.inCycles, 3)} cycles ${percent(history.largest)}; ${cycles}`
        : `A scatter table of ${history.states.length} sea states, each narrow-band (Rayleigh); ${cycles}`;
  return `${said} (${loading.source}).${apart}`;
}

/** A history as blocks of a detail's stress range: from, to (as ratios of the swing), cycles, and the part of the damage. */
export interface SpectrumBlock {
  readonly from: number;
  readonly to: number;
  readonly cycles: number;
  readonly part: number;
}

/** The spectrum of a proportional detail in `count` blocks, with each block's part of the damage by the curve. */
export function spectrumOf(history: LoadHistory, curve: SnCurve, range: number, count = 10): readonly SpectrumBlock[] {
  const { ratio, n } = blocksOf(history);
  const damage = Float64Array.from(ratio, (r, i) => n[i]! * cycleDamage(curve, r * range));
  const all = damage.reduce((sum, d) => sum + d, 0);
  if (history.kind === 'constant')
    return [{ from: history.ratio, to: history.ratio, cycles: history.cycles, part: all > 0 ? 1 : 0 }];
  // Up to what is exceeded once in the life: beyond it nobody would draw a block.
  let top = ratio.length;
  while (top > 1 && cyclesBeyond(history, ratio[top - 1]!) < 1) top--;
  const width = (ratio[top - 1]! + ratio[0]!) / count;
  return Array.from({ length: count }, (_, b): SpectrumBlock => {
    let cycles = 0;
    let part = 0;
    for (let i = 0; i < ratio.length; i++) {
      const block = Math.min(count - 1, Math.floor(ratio[i]! / width));
      if (block !== b) continue;
      cycles += n[i]!;
      part += damage[i]!;
    }
    return { from: b * width, to: (b + 1) * width, cycles, part: all > 0 ? part / all : 0 };
  });
}
