import type { Model } from '../model.ts';
import type { MotionQuantity } from '../motion/motion-quantities.ts';
import { motionInRegularWave } from './motion-in-regular-wave.ts';
import { motionInSea } from './motion-in-sea.ts';
import { openGridPeriods } from './open-grid-motion.ts';
import { serviceAgainstRope } from './service-against-rope.ts';
import { motionOverScatter, scatterHistory } from './motion-over-scatter.ts';

/** The motion left over in all that a document states: sea, regular wave (ids behind “wave.”) and scatter table (“scatter.”). */
export function motionQuantitiesOf(model: Model): {
  readonly quantities: Readonly<Record<string, MotionQuantity>>;
  readonly missing: readonly { readonly id: string; readonly reason: string }[];
} {
  const quantities: Record<string, MotionQuantity> = {};
  const missing: { id: string; reason: string }[] = [];
  const sea = motionInSea(model);
  if ('missing' in sea) missing.push({ id: 'motion.significant', reason: sea.missing });
  else {
    sea.periods.forEach((value, i) => {
      quantities[`motion.naturalPeriod.${i + 1}`] = { value, unit: 's', title: `Natural period ${i + 1} in heave, undamped`, source: 'two bodies in heave' }; // prettier-ignore
    });
    quantities['motion.addedMass'] = { value: sea.addedMass, unit: 'kg', title: 'Added mass in this sea', source: sea.from }; // prettier-ignore
    quantities['motion.dragArea'] = { value: sea.dragArea, unit: 'm^2', title: 'Drag coefficient times area in this sea', source: sea.from }; // prettier-ignore
    const put = (id: string, values: readonly number[] | null | undefined, title: string): void =>
      values?.forEach((value, i) => (quantities[`motion.naturalPeriod.${id}.${i + 1}`] = { value, unit: 's', title: `Natural period ${i + 1} in heave, ${title}`, source: 'two bodies in heave' })); // prettier-ignore
    const rope = serviceAgainstRope(model, sea.addedMass);
    put('open', openGridPeriods(model), 'of the grid without panels, at the stated motion');
    put('locked', rope?.locked.closed, 'with the power take-off at its stop');
    put('openLocked', rope?.locked.open, 'of the grid without panels, with the power take-off at its stop');
    Object.assign(quantities, sea.quantities);
  }
  const wave = motionInRegularWave(model);
  if (wave && 'missing' in wave) missing.push({ id: 'wave.motion.peakToPeak', reason: wave.missing });
  else if (wave)
    for (const [id, quantity] of Object.entries(wave.quantities))
      quantities[id.startsWith('wave.') ? id : `wave.${id}`] = { ...quantity, title: `In the regular wave: ${lowerFirst(quantity.title)}` }; // prettier-ignore
  const scatter = motionOverScatter(model);
  if (scatter && 'missing' in scatter) missing.push({ id: 'scatter.significant', reason: scatter.missing });
  else if (scatter) {
    const put = (id: string, value: number, unit: string, title: string): void => {
      quantities[`scatter.${id}`] = { value, unit, title, source: 'scatter table, by spectra, drag linearised' };
    };
    put('significant', scatter.mean.significant, 'm', 'Significant double amplitude of the plate, mean over the scatter table’s time'); // prettier-ignore
    if (scatter.stepped) {
      const { significant, linearised, slack } = scatter.stepped;
      const by = `scatter table, ${scatterHistory.duration / 60} minutes of each state by time steps`;
      quantities['scatter.stepped.significant'] = { value: significant, unit: 'm', title: 'The same by time steps, over the states that were stepped', source: by }; // prettier-ignore
      quantities['scatter.stepped.overLinearised'] = { value: significant / linearised, unit: '1', title: 'By time steps over drag linearised, in those states', source: by }; // prettier-ignore
      quantities['scatter.stepped.slack'] = { value: slack, unit: '1', title: 'Part of the time in states whose history by time steps goes slack', source: by }; // prettier-ignore
    }
    put('power', scatter.mean.power, 'W', 'Mean power of the power take-off over that time');
    for (const { limit, part } of scatter.within) put(`within.${limit}`, part, '1', `Part of the time with at most ${limit} m of significant double amplitude`); // prettier-ignore
    put('slack', scatter.slack, '1', 'Part of the time in states in which the line goes slack');
    for (const { height, peakPeriod, why } of scatter.unjudged) missing.push({ id: `scatter.${height}.${Number(peakPeriod.toPrecision(4))}`, reason: why }); // prettier-ignore
  }
  return { quantities, missing };
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
