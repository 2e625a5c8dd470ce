import type { Comparison } from '../options/compare.ts';

/** What each option of a sample gives, in figures that a person can hold against the note: verdicts and highest utilisations. */
export const sampleRecord = ({ options, appraisals }: Comparison): Record<string, unknown> =>
  Object.fromEntries(
    options.map(({ id, quantities, fails, unjudged, findings }, i) => [
      id ?? 'base',
      {
        massKg: Number(quantities['mass.air'].toPrecision(5)),
        weightInWaterN: Number(quantities['weight.submerged'].toPrecision(5)),
        fails,
        unjudged,
        findings,
        limitStates: Object.fromEntries(
          appraisals[i]!.limitStates.map(({ name: state, verdict, highest }) => [
            state,
            highest?.utilisation == null ? verdict : `${verdict}; highest ${highest.utilisation.toFixed(3)}: ${highest.id} at ${highest.place}, ${highest.situation ?? 'no load'}`, // prettier-ignore
          ]),
        ),
      },
    ]),
  );
