import { acousticOf, type AcousticReport } from '../recovery/acoustic-of.ts';
import { missing, type Check, type Input } from './check.ts';
import { constant } from './inputs.ts';
import { onEitherBasis } from './lift-inputs.ts';
import { ofRecovery, withRecovery } from './recovery-inputs.ts';

const ofLink = (unit: string, meaning: string, from: string, read: (report: AcousticReport) => number): Input => ({
  unit,
  meaning,
  from,
  read: ({ document }) => {
    const report = acousticOf(document);
    return report === null ? missing('a command by sound') : 'missing' in report ? report : read(report);
  },
});

/** The command is heard by the release. Levels are pure numbers in dB. */
export const recoveryAcoustic: Check = {
  id: 'recovery-acoustic',
  title: 'Acoustic command is heard',
  limitState: 'handling',
  source: [
    { document: 'Urick, Principles of Underwater Sound', clause: 'sonar equation', memory: true },
    { document: 'Francois & Garrison, J. Acoust. Soc. Am. 72', edition: '1982', clause: 'absorption' },
    {
      document: 'Wenz, J. Acoust. Soc. Am. 34',
      edition: '1962',
      clause: 'noise of the wind, fitted by Coates (1990)',
      memory: true,
    },
  ],
  places: () => ['acoustic command'],
  applies: (model) => {
    const told = withRecovery(model);
    return told !== true ? told : model.document.recovery?.acoustic !== undefined || 'no command is given by sound';
  },
  once: true,
  inputs: {
    r: ofRecovery(
      'm',
      'range',
      'loads: recovery',
      ({ acoustic }) => acoustic?.range.si ?? missing('a command by sound'),
    ),
    r_1: constant(1, 'm', 'range to which the source level refers', 'definition of source level'),
    alpha: ofLink('1/m', 'absorption, in dB for a metre', 'Francois & Garrison', ({ link }) => link.absorption),
    alpha_s: ofLink(
      '1/m',
      'absorption by the shorter formula, in dB for a metre',
      'Ainslie & McColm 1998',
      ({ shortAbsorption }) => shortAbsorption,
    ),
    SL: ofLink('1', 'source level, in dB re 1 µPa at 1 m', 'document: recovery', ({ link }) => link.sourceLevel),
    N_1: ofLink('1', 'noise in a hertz, in dB re 1 µPa', 'document: recovery, or wind', ({ link }) => link.noise),
    B_w: ofLink('Hz', 'bandwidth', 'document: recovery', ({ link }) => link.bandwidth),
    B_1: constant(1, 'Hz', 'band to which the noise refers', 'definition of noise level'),
    DT: ofLink('1', 'threshold of detection, in dB', 'document: recovery', ({ link }) => link.threshold),
  },
  steps: onEitherBasis(
    {
      symbol: 'TL',
      expression: '20 * log(r / r_1) / log(10) + alpha * r',
      unit: '1',
      meaning: 'loss on the way, in dB',
    },
    { symbol: 'NL', expression: 'N_1 + 10 * log(B_w / B_1) / log(10)', unit: '1', meaning: 'noise in the band, in dB' },
    { symbol: 'L_need', expression: 'TL + NL + DT', unit: '1', meaning: 'source level needed, in dB' },
    { symbol: 'L_there', expression: 'SL', unit: '1', meaning: 'source level there is, in dB' },
  ),
  demand: 'L_need',
  capacity: 'L_there',
  second: {
    title: 'absorption by another formula of the same measurements, within a fifth',
    source: [{ document: 'Ainslie & McColm, J. Acoust. Soc. Am. 103', edition: '1998' }],
    steps: [
      {
        symbol: 'TL_low',
        expression: '20 * log(r / r_1) / log(10) + 0.8 * alpha_s * r',
        unit: '1',
        meaning: 'four fifths of it',
      },
      {
        symbol: 'TL_high',
        expression: '20 * log(r / r_1) / log(10) + 1.2 * alpha_s * r',
        unit: '1',
        meaning: 'six fifths of it',
      },
    ],
    of: 'TL',
    low: 'TL_low',
    high: 'TL_high',
  },
  cautions: [
    'Arithmetic of the trade: layers of warm water bend sound away, and a hull, the plate or growth may stand between. Try it at the site.',
    'A ratio of levels in dB is no ratio of powers: the margin in dB is what counts.',
  ],
};
