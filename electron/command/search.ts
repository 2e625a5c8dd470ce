import { readFile, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { laidRaw } from '../../core/document/edit.ts';
import { readDocument } from '../../core/document/read-document.ts';
import { aimIds, aimWords, asSmall, type AimId } from '../../core/options/search/aims.ts';
import { askedOf } from '../../core/options/search/asked-of.ts';
import { inOrder, shownOption, type ShownOption } from '../../core/options/search/checked-front.ts';
import { askedSpace, type Asked } from '../../core/options/search/default-space.ts';
import { searchKey } from '../../core/options/search/search-record.ts';
import { search, searchProblem, type Piece, type Problem, type SearchState } from '../../core/options/search/search.ts';
import { formatQuantity, printedUnit, unitText, type UnitSystem } from '../../core/quantity/format-quantity.ts';
import type { SolveProgress } from '../../core/plate/solve-cases.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { quantityOption } from './quantity-option.ts';
import { tableText } from './table-text.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = [
  'search FILE [--aims LIST] [--option ID] [--thickness LIST] [--material LIST] [--side LIST] [--overlap LIST]',
  '  [--kind LIST] [--bolt LIST] [--pitch LIST] [--throat LIST] [--zones all|designs|panels] [--open] [--lift MASS]',
  '  [--panel MASS] [--open-least PART] [--open-most PART] [--aside LIST] [--judged] [--piece K/N] [--state FILE] [--json]',
].join('\n');

export const searchVerb: Verb = {
  usage,
  purpose:
    'finds the best compromises among thicknesses, materials, sides, overlaps and fixings, and says why not thinner',
  help: [
    `  --aims         what is wanted, the first leads: ${aimIds.join(', ')}; by default mass,holes. "use" is the governing utilisation,`,
    '                 addedMass and drag what is gained over the open grid in the stated motion: these two large, all others small',
    '  --option       what the search starts from: an option’s id, or "base"; by default the chosen option',
    '  --thickness    and --material, --side, --overlap, --kind, --bolt, --pitch, --throat: what to try, with commas between;',
    '                 what is not named stays. Without any: thicknesses from stock, from half to twice what is there',
    '  --zones        one design for all panels, for each set that has the same design now, or for each panel',
    '  --open         panels may also be left out',
    '  --lift         heaviest plate that may be lifted; --panel: heaviest panel by hand; --open-least, --open-most: open part, 0 to 1',
    '  --aside        limit states or checks set aside, for example fatigue: what is found may fail them, and is told so',
    '  --judged       nor may any check be left that cannot be judged',
    '  --piece        one of several pieces of the search, for example 1/4; together they are the whole',
    '  --state        a file in which the search puts away how far it is, and from which it goes on',
    '  --json         one object, SI',
    '',
    'What is not named here is as the document’s own “search” says, where it has one.',
    '',
    'Example: stillplate search samples/small.stillplate.json --thickness 5mm,6mm --aside fatigue',
  ].join('\n'),
  run: async (args, on) => {
    const text = { type: 'string' } as const;
    const flag = { type: 'boolean' } as const;
    const { values, file } = optionsOf(args, { aims: text, option: text, thickness: text, material: text, side: text, overlap: text, kind: text, bolt: text, pitch: text, throat: text, zones: text, open: flag, lift: text, panel: text, 'open-least': text, 'open-most': text, aside: text, judged: flag, piece: text, state: text, json: flag }, usage, 1); // prettier-ignore
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const option = chosenOption(document, values.option);
    const { search: stated } = readDocument(laidRaw(raw, option));
    const own: Asked = stated ? askedOf(stated) : {};
    const asked: Asked = {
      ...own,
      ...listed('aims', values.aims, aimIds),
      ...listed('thickness', values.thickness),
      ...listed('material', values.material),
      ...listed('side', values.side, ['topside', 'underside']),
      ...listed('overlap', values.overlap),
      ...listed('kind', values.kind, ['bolted', 'welded']),
      ...listed('bolt', values.bolt),
      ...listed('pitch', values.pitch),
      ...listed('throat', values.throat),
      ...listed('aside', values.aside),
      ...(values.zones === undefined ? {} : { zones: oneOf('zones', values.zones, ['all', 'designs', 'panels']) }),
      ...(values.open ? { open: true } : {}),
      ...(values.judged ? { judged: true } : {}),
      limits: {
        ...own.limits,
        ...(values.lift === undefined ? {} : { lift: quantityOption('--lift', values.lift, 'mass') }),
        ...(values.panel === undefined ? {} : { panelByHand: quantityOption('--panel', values.panel, 'mass') }),
        ...(values['open-least'] === undefined ? {} : { openLeast: partOf('--open-least', values['open-least']) }),
        ...(values['open-most'] === undefined ? {} : { openMost: partOf('--open-most', values['open-most']) }),
      },
    } as Asked;
    const problem = searchProblem(raw, askedSpace(raw, option, asked), pieceOf(values.piece));
    const tell = teller(problem, on);
    const key = JSON.stringify([searchKey(raw, option), problem.space, problem.piece, problem.options]);
    const state = await searched(
      problem,
      key,
      values.state === undefined ? null : resolve(on.folder, values.state),
      tell,
    );
    const found = inOrder(raw, state.front).map(({ found: one, id }) =>
      heard(shownOption(raw, problem, one, id), (step) => tell(step, id)),
    );
    on.out(values.json ? searchJson(problem, state, found) : searchText(problem, state, found));
    return found.length > 0 &&
      found.every(({ appraisal }) =>
        appraisal.rows.every(({ verdict }) => verdict === 'passes' || verdict === 'not applicable'),
      )
      ? exit.passes
      : exit.failsOrUnjudged;
  },
};

/** Runs a search to its end, from where a file says it was left; each second or so it is put away there again. */
async function searched(problem: Problem, key: string, file: string | null, tell: Tell): Promise<SearchState> {
  let from: SearchState | undefined;
  if (file !== null) {
    const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) =>
      error.code === 'ENOENT' ? null : Promise.reject(error),
    );
    if (text !== null) {
      const kept = JSON.parse(text) as { readonly of: string; readonly state: SearchState };
      if (kept.of !== key)
        throw refusal({
          what: `“${file}” is the state of another search`,
          where: { option: '--state' },
          mend: 'Name another file, or search as before.',
        });
      from = kept.state;
    }
  }
  const steps = search(problem, from);
  let state = from;
  let putAway = performance.now();
  for (let step = steps.next(); ; step = steps.next()) {
    state = step.value;
    if (state.solving) tell(state.solving, `option ${state.solved + 1}`);
    if (file !== null && (step.done || performance.now() - putAway > 1000)) {
      await writeFile(file, JSON.stringify({ of: key, state }));
      putAway = performance.now();
    }
    if (step.done) return state;
  }
}

type Tell = (step: SolveProgress, of: string) => void;

/** Says on the second channel what is being solved: a line for each loading of each option. */
function teller({ options, solver }: Problem, on: { readonly err: (text: string) => void }): Tell {
  if (solver)
    on.err(
      `Options that hold by hand are solved as whole plates, each of which takes a while: up to ${options} of them.`,
    );
  let said = '';
  return ({ what }, of) => {
    const line = `  ${of}: ${what.replace(/: (contact|forces|checks|buckling).*$/, '').replace(/(contact|buckling).*$/, '$1')}`;
    if (line !== said) on.err((said = line));
  };
}

/** What a computation comes to, each of whose steps is told. */
function heard<Step, T>(steps: Generator<Step, T>, tell: (step: Step) => void): T {
  let step = steps.next();
  for (; !step.done; step = steps.next()) tell(step.value);
  return step.value;
}

function searchJson(problem: Problem, state: SearchState, found: readonly ShownOption[]): string {
  const { space, piece, options } = problem;
  return JSON.stringify(
    {
      schema: 'stillplate-search/1',
      programVersion,
      from: space.from,
      aims: space.aims,
      aside: space.aside,
      piece,
      options,
      decided: state.decided,
      judged: state.judged,
      passing: state.passing,
      beaten: state.beaten,
      forces: problem.solver ? 'hand and solver' : 'hand',
      solved: state.solved,
      stopped: state.stopped,
      best: found[0]?.aims[space.aims[0]] ?? null,
      bound: state.bound === null ? null : asSmall(space.aims[0], state.bound),
      gap: gapOf(problem, state, found),
      complete: state.next === null,
      front: found.map(({ option, aims, aside, thinner, appraisal }) => ({
        id: option.id,
        title: option.title,
        aims,
        failsAside: aside,
        unjudged: appraisal.rows.filter(({ verdict }) => verdict === 'cannot be judged').length,
        findings: appraisal.findings.length,
        changes: option.changes,
        whyNotThinner: thinner,
      })),
    },
    null,
    2,
  );
}

/** What the best could still be better by, as a part of it: zero when all is decided. */
function gapOf({ space }: Problem, { bound, next }: SearchState, found: readonly ShownOption[]): number | null {
  const best = found[0]?.aims[space.aims[0]];
  if (best === undefined) return null;
  return next === null || bound === null || best === 0
    ? 0
    : Math.max(0, (asSmall(space.aims[0], best) - bound) / Math.abs(best));
}

function searchText(problem: Problem, state: SearchState, found: readonly ShownOption[]): string {
  const { space, base, options, piece } = problem;
  const system = base.units;
  const stops = Object.values(state.stopped).sort((a, b) => b.count - a.count);
  const unjudged = [
    ...new Set(
      found.flatMap(({ appraisal }) =>
        appraisal.rows.filter(({ verdict }) => verdict === 'cannot be judged').map(({ title }) => title),
      ),
    ),
  ];
  return [
    `${options} options${piece.of > 1 ? `, piece ${piece.index + 1} of ${piece.of}` : ''}: ${state.decided} decided, ${state.judged} judged by checks, ${state.passing} pass, ${state.beaten} put aside because one found is better and leaves no other check open.${problem.solver ? ` ${state.solved} held by hand and were solved as whole plates: what is found passes with both forces.` : ''}`,
    ...(space.aside.length > 0 ? [`SET ASIDE, not judged by in this search: ${space.aside.join(', ')}.`] : []),
    ...(unjudged.length > 0
      ? [
          `CANNOT BE JUDGED in what is found: ${unjudged.join('; ')}. An option that leaves checks open puts aside only what leaves the same open: what is judged in full stands beside it, and alone with --judged.`,
        ]
      : []),
    ...(stops.length > 0 ? [`Stopped by: ${stops.map(({ title, count }) => `${title} (${count})`).join('; ')}.`] : []),
    '',
    ...(found.length === 0
      ? [
          'NOTHING PASSES. What stopped the options is named above; a limit state can be set aside with --aside to see the rest.',
        ]
      : [
          tableText([
            ['', ...shownAims(found).map((aim) => titleOf(aim, system)), 'What it is'],
            ...found.map(({ option, aims }) => [
              option.id,
              ...shownAims(found).map((aim) => numberOf(aim, aims[aim]!, system)),
              option.title,
            ]),
          ]),
          '',
          ...found.flatMap(({ option, aside, thinner }) => [
            ...(aside.length > 0 ? [`${option.id} FAILS what was set aside: ${aside.join('; ')}.`] : []),
            ...thinner.map(
              ({ zone, thickness, stops: all }) =>
                `${option.id}, why not ${thickness}${thinner.length > 1 ? ` in ${zone}` : ''}? ${all.length > 0 ? all.map(stopWords).join('; ') : 'Nothing stops it.'}`,
            ),
          ]),
          '',
          'Each was appraised in full before it was printed. A search is no design: the engineer chooses, and who signs reviews.',
        ]),
  ].join('\n');
}

const shownAims = (found: readonly ShownOption[]): readonly AimId[] =>
  aimIds.filter((aim) => found[0]!.aims[aim] !== undefined);
const stopWords = ({
  title,
  place,
  utilisation,
  reason,
}: {
  readonly title: string;
  readonly place: string;
  readonly utilisation: number | null;
  readonly reason: string;
}): string => `${title} at ${place}${utilisation === null ? `: ${reason}` : ` (${utilisation.toFixed(2)})`}`;

function titleOf(aim: AimId, system: UnitSystem): string {
  const { title, unit } = aimWords[aim];
  const printed = printedUnit(unit, system);
  return printed === '1' ? title : `${title}, ${unitText(printed)}`;
}
const numberOf = (aim: AimId, value: number, system: UnitSystem): string =>
  aim === 'holes' ? String(value) : formatQuantity(value, printedUnit(aimWords[aim].unit, system)).number;

/** A list with commas between, under its name; nothing where it is not given. */
function listed(name: string, typed: string | undefined, known?: readonly string[]): Record<string, readonly string[]> {
  if (typed === undefined) return {};
  const list = typed.split(',').map((one) => one.trim());
  return { [name]: known ? list.map((one) => oneOf(name, one, known)) : list };
}

function oneOf<T extends string>(name: string, typed: string, known: readonly T[]): T {
  const found = known.find((one) => one === typed);
  if (found !== undefined) return found;
  throw refusal({
    what: `“${typed}” is none of ${known.join(', ')}`,
    where: { option: `--${name}` },
    mend: 'Name one of them.',
  });
}

function partOf(option: string, typed: string): number {
  const value = Number(typed);
  if (typed.trim() !== '' && value >= 0 && value <= 1) return value;
  throw refusal({ what: `“${typed}” is no part from 0 to 1`, where: { option }, mend: 'Write for example 0.4.' });
}

function pieceOf(typed: string | undefined): Piece {
  const [, index, of] = /^(\d+)\/(\d+)$/.exec(typed ?? '1/1') ?? [];
  if (index === undefined)
    throw refusal({
      what: `“${typed}” names no piece`,
      where: { option: '--piece' },
      mend: 'Write 1/4, 2/4, 3/4 and 4/4 for a search in four pieces.',
    });
  return { index: Number(index) - 1, of: Number(of) };
}
