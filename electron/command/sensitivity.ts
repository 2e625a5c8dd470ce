import { resolve } from 'node:path';
import { documentOfOption } from '../../core/document/option.ts';
import { planOf } from '../../core/appraise.ts';
import type { SensitivityRecord } from '../../core/document/sensitivity-field.ts';
import { spreadInputs, type Spread, type SpreadInput } from '../../core/document/spreads-field.ts';
import {
  otherwiseGoverns,
  partWords,
  sharesWords,
  spreadWords,
  togetherWords,
  useWords,
} from '../../core/note/sensitivity-words.ts';
import { inputWords } from '../../core/options/sensitivity/input-words.ts';
import { spreadsJudged } from '../../core/options/sensitivity/sensitivity-record.ts';
import { sensitivity, type Sensitivity } from '../../core/options/sensitivity/sensitivity.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { drained } from '../../core/solve/drained.ts';
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
    if (values.points === undefined) {
      const found = drained(sensitivity(given));
      on.out(values.json ? asJson(found) : apartText(found));
    } else {
      const sampling = { points: whole('--points', values.points), seed: whole('--seed', values.seed ?? '1') };
      const found = drained(spreadsJudged(given, sampling));
      on.out(values.json ? asJson(found, found.together) : `${apartText(found)}\n\n${togetherText(found.together)}`);
    }
    return exit.passes;
  },
};

type Together = SensitivityRecord['together'];

const asJson = ({ governing, moved }: Sensitivity, together?: Together): string =>
  JSON.stringify({ schema: 'stillplate-sensitivity/1', programVersion, governing, moved, together }, null, 2);

const apartText = ({ governing, moved }: Sensitivity): string =>
  [
    `Governs: ${governing.title} at ${governing.place}, ${useWords(governing.use)}. Forces by hand; no verdict is changed by what follows.`,
    '',
    tableText([
      ['Input', 'spread', 'at low', 'at high', 'stated by'],
      ...moved.map(({ input, low, high, atLow, atHigh, source }) => [
        inputWords[input], spreadWords(low, high), useWords(atLow), useWords(atHigh), source,
      ]),
    ]), // prettier-ignore
    ...otherwiseGoverns(moved),
  ].join('\n');

const togetherText = (together: Together): string =>
  [
    togetherWords(together),
    tableText([
      ['Input', 'of the variance by itself', 'with all it does together'],
      ...together.shares.map(({ input, first, total }) => [inputWords[input], partWords(first), partWords(total)]),
    ]),
    sharesWords(together),
  ].join('\n');

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
