import { documentHash } from '../../document/document-hash.ts';
import { laidRaw } from '../../document/edit.ts';
import { plateAlone } from '../../document/plate-alone.ts';
import type { RawDocument } from '../../document/read-document.ts';
import type { PlateDocument } from '../../document/schema.ts';
import type { SearchRecord } from '../../document/search-field.ts';
import { isWaterAim } from './aims.ts';
import { asksSolver } from '../../appraise.ts';
import type { CheckRow } from '../../checks/check-row.ts';
import type { ShownOption } from './checked-front.ts';
import { knownUse, stopOf, type Stop } from './judge.ts';
import type { Problem, SearchState } from './search.ts';

/** Key of all that a search depends on: the document under the option it starts from, what it was asked, and whose forces judge. */
export function searchKey(raw: RawDocument, from: string | null): string {
  const laid = laidRaw(raw, from);
  const { project: _project, paper: _paper, ...plate } = plateAlone(laid);
  const { record: _record, ...asked } = (laid['search'] ?? {}) as Record<string, unknown>;
  // Before plates were solved in a search, a document that asks for it was searched by hand: such a record is of another search.
  const judgedBy = asksSolver(laid) ? { judgedBy: 'hand and solver' } : {};
  // Before this, an option with checks left open put aside what leaves none open: such a record has another front.
  return documentHash({ ...plate, search: asked, from, ...judgedBy, openChecks: 'put nothing aside that is judged' });
}

/** What is kept of a finished search with the document, for the note. */
export function searchRecord(
  raw: RawDocument,
  { space, options, solver }: Problem,
  state: SearchState,
  found: readonly ShownOption[],
): SearchRecord {
  return {
    of: searchKey(raw, space.from),
    from: space.from,
    options,
    decided: state.decided,
    judged: state.judged,
    passing: state.passing,
    beaten: state.beaten,
    ...(solver ? { solved: state.solved } : {}),
    stopped: mostFirst(state),
    found: found.map((one) => ({
      title: one.option.title,
      aims: { ...one.aims } as Record<string, number>,
      governing: governingWords(one),
      unjudged: one.appraisal.rows.filter(({ verdict }) => verdict === 'cannot be judged').length,
      failsAside: [...one.aside],
      whyNotThinner: one.thinner.map((thinner) => thinnerWords(thinner, one.thinner.length > 1)),
    })),
  };
}

/** What stopped options, the check that stopped most of them first. */
export const mostFirst = ({ stopped }: SearchState): { title: string; count: number }[] =>
  Object.values(stopped)
    .map(({ title, count }) => ({ title, count }))
    .sort((a, b) => b.count - a.count || (a.title < b.title ? -1 : 1));

/** The check with the highest utilisation of an option that was found, in words. */
export function governingWords({ appraisal, aims }: ShownOption): string {
  const row = appraisal.rows.find(
    (each): each is CheckRow => !each.detailing && knownUse(each) !== null && knownUse(each) === aims.use,
  );
  return row ? `${stopOf(row).title} at ${row.place}` : '';
}

/** "Why not thinner?" in words. */
export const thinnerWords = ({ zone, thickness, stops }: ShownOption['thinner'][number], several: boolean): string =>
  `Not ${thickness}${several ? ` in ${zone}` : ''}: ${stops.length > 0 ? stops.map(stopWords).join('; ') : 'nothing stops it'}.`;

export const stopWords = ({ title, place, utilisation, reason }: Stop): string =>
  `${title} at ${place}${utilisation === null ? (reason ? `: ${reason}` : '') : ` (${utilisation.toFixed(2)})`}`;

/** What a search leaves out, said wherever its result stands. */
export const searchCautions = (
  document: Parameters<typeof asksSolver>[0] & Pick<PlateDocument, 'search'>,
): readonly string[] => [
  'Each option that is found was appraised in full before it was shown. A search is no design: the engineer chooses, and who signs reviews.',
  ...(asksSolver(document)
    ? [
        'What is found passes by hand and with the whole plate’s forces; what fails by hand, or is beaten by hand, was not solved.',
      ]
    : []),
  ...(document.search?.aims.some(isWaterAim)
    ? [
        'What is gained in the water is found on a coarser lattice that all options share (a few per cent off the comparison), and loads stay as the document states them: more water moved asks for more force.',
      ]
    : []),
];
