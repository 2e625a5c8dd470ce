import { resolve } from 'node:path';
import { documentOfOption } from '../../core/document/option.ts';
import { planOf } from '../../core/appraise.ts';
import { spreadInputs, type Spread, type SpreadInput } from '../../core/document/spreads-field.ts';
import { sensitivity, sensitivityShares, type Sensitivity } from '../../core/options/sensitivity/sensitivity.ts';
import { inputWords } from '../../core/options/sensitivity/varied-model.ts';
import type { VarianceShares } from '../../core/options/sensitivity/variance-shares.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { tableText } from './table-text.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'sensitivity FILE [--option ID] [--spread LIST] [--points N] [--seed N] [--json]';

export const sensitivityVerb: Verb = {
  usage,
  purpose: 'says which inputs move the governing check most, each over the spread that is stated of it',
  help: [
    '  --option ID    an option’s id, or "base"; by default the chosen option',
    `  --spread       instead of those of the document: ${spreadInputs.join(', ')}, each with its part either way,`,
    '                 for example force=0.1,thickness=0.05',
    '  --points N     all inputs at once, N times two samples: each input’s part of the variance, and the distribution',
    '  --seed N       of that sampling; by default 1',
    '  --json         one object; utilisations are plain numbers',
    '',
    'Example: stillplate sensitivity samples/small.stillplate.json --spread force=0.1,thickness=0.05',
  ].join('\n'),
  run: async (args, on) => {
    const text = { type: 'string' } as const;
    const { values, file } = optionsOf(args, { option: text, spread: text, points: text, seed: text, json: { type: 'boolean' } }, usage, 1); // prettier-ignore
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const resolved = documentOfOption(raw, document, chosenOption(document, values.option), planOf).document;
    const given = values.spread === undefined ? resolved : { ...resolved, spreads: listed(values.spread) };
    const steps = sensitivity(given);
    let step = steps.next();
    while (!step.done) step = steps.next();
    const shares =
      values.points === undefined
        ? null
        : sensitivityShares(given, step.value.governing, {
            points: whole('--points', values.points),
            seed: whole('--seed', values.seed ?? '1'),
          });
    on.out(values.json ? asJson(step.value, shares, given.spreads!) : asText(step.value, shares, given.spreads!));
    return exit.passes;
  },
};

const distributionOf = ({ sorted }: VarianceShares) => {
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!;
  return { p05: at(0.05), p50: at(0.5), p95: at(0.95), partOverOne: sorted.filter((use) => use > 1).length / sorted.length }; // prettier-ignore
};

function asJson({ governing, moved }: Sensitivity, shares: VarianceShares | null, spreads: readonly Spread[]): string {
  const variance = shares && {
    seed: shares.seed,
    points: shares.points,
    mean: shares.mean,
    variance: shares.variance,
    ...distributionOf(shares),
    inputs: spreads.map(({ input }, i) => ({ input, first: shares.first[i], total: shares.total[i] })),
  };
  return JSON.stringify({ schema: 'stillplate-sensitivity/1', programVersion, governing, moved, variance }, null, 2);
}

function asText({ governing, moved }: Sensitivity, shares: VarianceShares | null, spreads: readonly Spread[]): string {
  const use = (value: number | null) => (value === null ? 'cannot be judged' : value.toFixed(3));
  const parts = (part: number) => `${part > 0 ? '+' : ''}${(100 * part).toFixed(1)} %`;
  return [
    `Governs: ${governing.title} at ${governing.place}, ${governing.use.toFixed(3)}. Forces by hand; no verdict is changed by what follows.`,
    '',
    tableText([
      ['Input', 'low', 'then', 'high', 'then', 'stated by'],
      ...moved.map(({ input, low, high, atLow, atHigh, source }) => [
        inputWords[input], parts(low), use(atLow), parts(high), use(atHigh), source,
      ]),
    ]), // prettier-ignore
    ...moved.flatMap(({ input, otherAtLow, otherAtHigh }) =>
      ([['low', otherAtLow], ['high', otherAtHigh]] as const).flatMap(([end, other]) =>
        other ? [`${inputWords[input]} at its ${end}: ${other.title} at ${other.place} governs (${other.use.toFixed(3)}).`] : [],
      ),
    ), // prettier-ignore
    ...(shares ? ['', ...varianceText(shares, spreads)] : []),
  ].join('\n');
}

function varianceText(shares: VarianceShares, spreads: readonly Spread[]): readonly string[] {
  const { p05, p50, p95, partOverOne } = distributionOf(shares);
  return [
    `All at once, each equally likely anywhere in its spread (seed ${shares.seed}, ${shares.sorted.length} points): 5 % below ${p05.toFixed(3)}, half below ${p50.toFixed(3)}, 95 % below ${p95.toFixed(3)}; ${(100 * partOverOne).toFixed(1)} % above 1.`,
    tableText([
      ['Input', 'of the variance by itself', 'with all it does together'],
      ...spreads.map(({ input }, i) => [inputWords[input], shares.first[i]!.toFixed(2), shares.total[i]!.toFixed(2)]),
    ]),
    `These parts are estimated: with ${shares.points} points they are off by about ${(1 / Math.sqrt(shares.points)).toFixed(2)}, and may come out below 0 or above 1. Four times the points halve that.`,
  ];
}

function listed(typed: string): Spread[] {
  return typed.split(',').map((one) => {
    const [name, part] = one.split('=').map((side) => side.trim());
    const input = spreadInputs.find((each) => each === name);
    const width = Number(part);
    if (input && part !== undefined && part !== '' && width > 0 && width <= 0.9)
      return { input: input satisfies SpreadInput, low: -width, high: width, source: 'stated on the command line' };
    throw refusal({
      what: `“${one}” is no spread`,
      where: { option: '--spread' },
      mend: `Write one of ${spreadInputs.join(', ')} with its part either way, for example force=0.1.`,
    });
  });
}

function whole(option: string, typed: string): number {
  const value = Number(typed);
  if (typed.trim() !== '' && Number.isInteger(value) && value >= 0) return value;
  throw refusal({ what: `“${typed}” is no whole number`, where: { option }, mend: 'Write for example 64.' });
}
