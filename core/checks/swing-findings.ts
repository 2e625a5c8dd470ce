import { historyOf } from './fatigue-history.ts';
import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import { printedUnit, quantityText } from '../quantity/format-quantity.ts';

/**
 * The largest range of the force's history beside the swing of the stated force, largest up to largest down. They need not be
 * equal, but where one is about half of the other an amplitude was typed for a range. The bounds are common practice, no source.
 */
export function swingFindings(model: Model): Finding[] {
  const { fatigue, loads, units } = model.document;
  const history = historyOf(model);
  if (!fatigue?.loading || 'missing' in history || history.kind === 'scatter' || loads.service.level === 'mean') return [];
  const ratio = history.kind === 'weibull' ? history.largest : history.ratio;
  if (ratio > 0.62 && ratio < 1.6) return [];
  const swing = 2 * model.loads.swing.amplitude;
  const force = (si: number): string => quantityText(si, printedUnit('kN', units), 4);
  return [
    {
      id: 'range-beside-amplitude',
      place: 'loads.service.force',
      text: `The stated force of service swings by ${force(swing)} from largest up to largest down, the largest range of its history is ${force(ratio * swing)}: ${ratio.toFixed(2)} of that.`,
      mend: 'Half or twice is what an amplitude typed for a range makes. Look at “loads.service.measure” and at “fatigue.loading”.',
    },
  ];
} // prettier-ignore
