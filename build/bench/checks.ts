import { appraise, modelOf } from '../../core/appraise.ts';
import type { Check } from '../../core/checks/check.ts';
import { checkRows, valuesAt } from '../../core/checks/evaluate-check.ts';
import { checks } from '../../core/checks/index.ts';
import { traceCheck } from '../../core/checks/trace-check.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import type { PlateDocument } from '../../core/document/schema.ts';
import type { Model } from '../../core/model.ts';
import { quantitiesOf } from '../../core/quantities.ts';
import type { Situation } from '../../core/loads/situation.ts';
import { byHand } from './by-hand.ts';
import { formulasAndByHand } from './formulas.ts';
import { handAgainstEngine, handJudged, judgedPlaces, registered } from './hand-judged.ts';
import { interleaved } from './interleaved.ts';
import { measuredMemory } from './memory.ts';
import type { Measure } from './measure.ts';
import { measuredNote } from './note.ts';
import { sample } from './sample.ts';

/** Part `checks`: an edit of the middle sample, the large one beside it, traces, the note, memory. */
export async function bench(): Promise<readonly Measure[]> {
  const middle = await opened('middle');
  const large = await opened('large');
  requireSameNumbers(modelOf(middle.document));
  const edit = interleaved(
    { engine: (n) => appraised(middle, n), hand: (n) => handAppraised(middle, n), large: (n) => appraised(large, n) },
    9,
  );
  const model = modelOf(thinner(middle, 0).document);
  const judged = interleaved(
    { engine: () => registered.flatMap((check) => checkRows(check, model).rows), hand: () => handJudged(model) },
    9,
  );
  const formulas = formulasAndByHand(model);
  const pairs = twentyOf(model);
  const trace = interleaved(
    {
      engine: () => pairs.map(([check, place, situation]) => traceCheck(check, model, place, situation)),
      plain: () => pairs.map(([check, place, situation]) => valuesAt(check, model, place, situation)),
    },
    9,
  );
  return [
    measure(
      'middle sample after an edit, over the same with its checks written by hand',
      edit.engine / edit.hand,
      3,
      edit.engine,
    ),
    measure(
      'its checks alone, same inputs and kernels, over formulas written by hand',
      judged.engine / judged.hand,
      3,
      judged.engine,
    ),
    measure(
      'its formulas alone, inputs read and kernels warm, over those written by hand',
      formulas.engine / formulas.hand,
      3,
      formulas.engine,
    ),
    measure('large sample after an edit, over the middle one', edit.large / edit.engine, 8, edit.large),
    measure('traces of 20 checks, over their values alone (no goal)', trace.engine / trace.plain, null, trace.engine),
    ...(await measuredNote(middle.raw, middle.document)),
    ...(await measuredMemory()),
  ];
}

const measure = (name: string, ratio: number, goal: number | null, milliseconds: number): Measure => ({
  name,
  ratio,
  goal,
  met: goal === null ? null : ratio <= goal,
  milliseconds,
});

interface Opened {
  readonly raw: RawDocument;
  readonly document: PlateDocument;
}

async function opened(name: string): Promise<Opened> {
  const raw = readDocumentText(await sample(name));
  return { raw, document: readDocument(raw) };
}

/** The document with all its panels thinner by n micrometres: an edit that no earlier run has seen. */
function thinner({ raw, document }: Opened, n: number): Opened {
  const designs = Object.fromEntries(
    Object.entries(document.designs).map(([name, design]) => [
      name,
      { ...design, thickness: { ...design.thickness, si: design.thickness.si - n * 1e-6 } },
    ]),
  );
  return { raw, document: { ...document, designs } };
}

function appraised(of: Opened, n: number): unknown {
  const { raw, document } = thinner(of, n);
  return appraise(raw, document, null);
}

/** The same work with the checks as plain functions: the model and its quantities are plain functions already. */
function handAppraised(of: Opened, n: number): unknown {
  const model = modelOf(thinner(of, n).document);
  return [handJudged(model), quantitiesOf(model, [])];
}

/** Stops the benchmark when a formula written by hand does not give the engine's number. */
function requireSameNumbers(model: Model): void {
  const { compared, differences } = handAgainstEngine(model);
  if (differences.length > 0)
    throw new Error(
      `The yardstick of the benchmark differs from the engine. Mend by-hand.ts.\n${differences.join('\n')}`,
    );
  const left = checks.filter(({ id }) => !byHand[id]).map(({ id }) => id);
  console.error(
    `${compared} rows of ${registered.length} checks agree with the formulas written by hand.${left.length > 0 ? ` Not written by hand and left out of the second ratio: ${left.join(', ')}.` : ''}`,
  );
}

/** Twenty places where checks have values, from as many checks as there are. */
function twentyOf(model: Model): [Check, string, Situation][] {
  const firsts = checks.flatMap((check) => {
    for (const { place, situation } of judgedPlaces(check, model))
      if (!('missing' in valuesAt(check, model, place, situation)))
        return [[check, place, situation] as [Check, string, Situation]];
    return [];
  });
  return firsts.slice(0, 20);
}
