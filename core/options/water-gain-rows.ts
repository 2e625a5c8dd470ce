import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Spread } from '../water/spread.ts';
import type { Gain, Known, WaterGains } from './water-gains.ts';

/** One line of the comparison: a number, below it its range or why there is none. */
export interface GainRow {
  readonly title: string;
  readonly text: string;
  readonly beside: string;
}

/** What an option gains in the water, in words and units: the same for window, note and command. currency: of the rates. */
export function waterGainRows(gains: WaterGains, print: Print, currency: string | null): readonly GainRow[] {
  const quantity = (unit: string) => (value: number) => print.quantity(value, unit, 3);
  const [kg, m2, kN] = [quantity('kg'), quantity('m^2'), quantity('kN')];
  const plain = (value: number): string => significant(value, 3);
  const wave = gains.atWave;
  const money = currency === null ? 'unit of cost' : `unit of cost (${currency})`;
  const massUnit = print.unit('kg');
  return [
    ranged('Added mass', gains.addedMass, kg),
    ranged('Drag coefficient on the outline', gains.dragCoefficient, plain),
    ranged('Drag area', gains.dragArea, m2),
    ranged('Reaction at equal motion', gains.atMotion, kN),
    ...('missing' in wave
      ? [
          { title: 'Reaction at equal wave', text: '–', beside: wave.missing },
          { title: 'Motion left in that wave', text: '–', beside: '' },
        ]
      : [
          { title: 'Reaction at equal wave', text: kN(wave.pull), beside: wave.slack ? 'a line goes slack' : 'amplitude' }, // prettier-ignore
          { title: 'Motion left in that wave', text: print.quantity(wave.plate, 'm', 3), beside: `through the water ${print.quantity(wave.through, 'm', 3)}` }, // prettier-ignore
        ]),
    ...gain('gained over the open grid', gains.gained, kg, m2),
    ...gain(`for each ${massUnit} of panels and fasteners`, gains.perKg, (value) => `${plain(value)} ${massUnit}`, quantity('m^2/kg')), // prettier-ignore
    ...gain(`for each ${money}`, gains.perCost, kg, m2),
    'missing' in gains.lift
      ? { title: 'Hook load of the lift', text: '–', beside: gains.lift.missing }
      : {
          title: 'Hook load of the lift',
          text: kN(gains.lift.hook),
          beside: `${gains.lift.stage}; sea up to ${print.quantity(gains.lift.allowedHeight, 'm', 2)}`,
        },
    'missing' in gains.line
      ? { title: 'Pull of the suspension in service', text: '–', beside: gains.line.missing }
      : {
          title: 'Pull of the suspension in service',
          text: kN(gains.line.pull),
          beside: `force ${gains.line.direction}, attachments’ worst`,
        },
  ];
}

function ranged(title: string, known: Known<Spread>, text: (value: number) => string): GainRow {
  return 'missing' in known
    ? { title, text: '–', beside: known.missing }
    : { title, text: text(known.best), beside: `${text(known.low)} to ${text(known.high)}` };
}

function gain(
  words: string,
  known: Known<Gain>,
  mass: (value: number) => string,
  area: (value: number) => string,
): GainRow[] {
  const titles = [`Added mass ${words}`, `Drag area ${words}`] as const;
  if ('missing' in known) return [{ title: titles[0], text: '–', beside: known.missing }, { title: titles[1], text: '–', beside: '' }]; // prettier-ignore
  return [
    { title: titles[0], text: mass(known.addedMass), beside: '' },
    { title: titles[1], text: known.dragArea === null ? '–' : area(known.dragArea), beside: known.dragArea === null ? 'outside the tests of edge drag' : '' }, // prettier-ignore
  ];
}
