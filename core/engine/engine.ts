import { utf8ToBytes } from '@noble/hashes/utils.js';
import type { Appraisal } from '../appraise.ts';
import { catalogueWith } from '../catalogue/catalogue.ts';
import { designBasis } from '../catalogue/design-basis.ts';
import { graver } from '../checks/check-row.ts';
import { documentHash } from '../document/document-hash.ts';
import { laidRaw, optionsOf, valueAt } from '../document/edit.ts';
import { readDocument, readDocumentText, type RawDocument } from '../document/read-document.ts';
import type { PlateDocument } from '../document/schema.ts';
import { listOfKind, rowLike } from '../document/row-like.ts';
import { userRows } from '../document/user-rows.ts';
import { toWire } from '../host/wire.ts';
import { againstSection } from '../note/against-section.ts';
import { boltedAgainstWelded } from '../options/bolted-against-welded.ts';
import { eventOfStep } from '../issue/issue-step.ts';
import { issueView } from '../note/issue-view.ts';
import { recorded } from '../issue/note-life.ts';
import { emptyRegister, readRegister, type Register } from '../issue/register.ts';
import { plateBodyOf } from '../hydrodynamics/plate-body.ts';
import { checkNote } from '../note/check-note.ts';
import { durabilitySection } from '../note/durability-section.ts';
import { recoverySection } from '../note/recovery-section.ts';
import { fatigueSection } from '../note/fatigue-section.ts';
import { fullCheck } from '../note/check-sections.ts';
import { printIn } from '../print-in.ts';
import { compared, type Comparison } from '../options/compare.ts';
import { kinds, type Kind } from '../quantity/kinds.ts';
import { inUnit, significant, unitText, type UnitSystem } from '../quantity/format-quantity.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { handbook } from '../handbook/handbook.ts';
import { refusal, Refusal, type RefusalText } from '../refusal.ts';
import { readingsOf } from '../scene/readings-of.ts';
import type { Scene } from '../scene/scene.ts';
import { sceneOf } from '../scene/scene-of.ts';
import { Appraisals, type Attempt } from './appraisals.ts';
import { catalogueRows, freeRowId } from './catalogue-calls.ts';
import { comparisonView, type Contender } from './comparison-view.ts';
import { edited, putAway, redone, replayed, undone, type Changed, type History } from './history.ts';
import type { Choices, EngineCall, EngineCalls, EngineNews } from './messages.ts';
import { newPlate } from './new-plate.ts';
import { previewOf } from './preview-of.ts';
import { resultView } from './result-view.ts';
import { toldComparison } from './told-comparison.ts';

/** What the engine needs of the world: a place for its news, and a way to go on after other messages were heard. */
export interface EngineWorld {
  readonly tell: (news: EngineNews) => void;
  readonly later: (goOn: () => void) => void;
}

type Calls = { readonly [C in EngineCall]: (takes: EngineCalls[C]['takes']) => EngineCalls[C]['gives'] };

/**
 * Holds one document with its history and answers for it: each edit is applied, appraised under the shown option and
 * told at once; the other options follow in short slices that a newer edit cuts off. Calls throw a `Refusal` for what
 * cannot be done; a document with something wrong in it is no refusal but a view with its faults, and the last good
 * result stays, marked as of before.
 */
export function createEngine({ tell, later }: EngineWorld): Calls {
  const appraisals = new Appraisals();
  let history: History | null = null;
  let option: string | null = null;
  let base: string | null = null;
  let lastGood: Appraisal | null = null;
  let parts: Scene['parts'] = [];
  let round = 0;
  /** Options as they were told last, by id: what the window has is not told again. */
  const toldOptions = new Map<string | null, string>();

  const open = (): History => {
    if (history) return history;
    throw refusal({ what: 'No document is open', mend: 'Open one first.' });
  };

  /** Tells everything about the document as it is now. */
  function show(): void {
    const { raw, head, past, future } = open();
    const all = optionsOf(raw);
    if (option !== null && !all.some(({ id }) => id === option)) option = null;
    if (base !== null && !all.some(({ id }) => id === base)) base = null;
    appraisals.keepOnly(new Set([null, ...all.map(({ id }) => id)]));
    const attempt = appraisals.of(raw, option);
    const laid = attempt.ok ? laidRaw(raw, option) : laidOr(raw, option);
    tell({
      kind: 'document',
      view: {
        head,
        raw,
        option,
        laid,
        read: attempt.ok ? attempt.appraisal.model.document : readOr(laid),
        faults: attempt.ok ? [] : attempt.faults,
        hash: documentHash(raw),
        undo: past.at(-1)?.words ?? null,
        redo: future.at(-1)?.words ?? null,
      },
    });
    const before = lastGood;
    if (attempt.ok) lastGood = attempt.appraisal;
    if (lastGood) tell({ kind: 'result', view: resultView(lastGood, attempt.ok) });
    if (attempt.ok) {
      const { appraisal } = attempt;
      if (before?.model.geometry !== appraisal.model.geometry) {
        const scene = sceneOf(appraisal.model);
        parts = scene.parts;
        tell({ kind: 'scene', option, scene });
      }
      tell({ kind: 'readings', readings: readingsOf(appraisal, { parts }) });
    }
    compareInSlices(raw, ++round);
  }

  /** Appraises one option a slice; what changed meanwhile starts a new round and ends this one. */
  function compareInSlices(raw: RawDocument, mine: number): void {
    const titles = new Map<string | null, string>([
      [null, 'As it stands'],
      ...optionsOf(raw).map(({ id, title }) => [id, title] as const),
    ]);
    const contenders: Contender[] = [];
    const waiting = [...titles];
    const next = (): void => {
      if (mine !== round) return;
      const [id, title] = waiting.shift() ?? [];
      if (title === undefined) {
        tell({ kind: 'comparison', view: toldComparison(comparisonView(contenders, base), toldOptions) });
        return;
      }
      const attempt = appraisals.of(raw, id!);
      contenders.push(contender(id!, title, attempt));
      later(next);
    };
    later(next);
  }

  function changed(change: Changed | null): EngineCalls['edit']['gives'] {
    if (!change) return [];
    history = change.history;
    show();
    return change.entries;
  }

  /** The appraisal of an option, or its first faults as a refusal. */
  function sound(of: string | null): Appraisal {
    const attempt = appraisals.of(open().raw, of);
    if (attempt.ok) return attempt.appraisal;
    throw new Refusal(attempt.faults as [RefusalText, ...RefusalText[]]);
  }

  return {
    open: ({ text, journal, option: wanted }) => {
      history = replayed(readDocumentText(text), journal);
      appraisals.keepOnly(new Set());
      appraisals.keepOnly(new Set());
      toldOptions.clear();
      lastGood = null;
      base = null;
      const { raw } = history;
      const chosen = valueAt(raw, ['chosen']);
      const isThere = wanted === null || optionsOf(raw).some(({ id }) => id === wanted);
      option = wanted !== undefined && isThere ? wanted : typeof chosen === 'string' ? chosen : null;
      show();
      return { head: history.head };
    },
    close: () => {
      history = null;
      lastGood = null;
      parts = [];
      round++;
      appraisals.keepOnly(new Set());
      return null;
    },
    edit: ({ edit }) => changed(edited(open(), edit)),
    undo: () => changed(undone(open())),
    redo: () => changed(redone(open())),
    show: ({ option: id }) => {
      if (id !== null && !optionsOf(open().raw).some((other) => other.id === id))
        throw refusal({ what: `There is no option “${id}”`, mend: 'Choose one that is listed.' });
      option = id;
      show();
      return null;
    },
    solved: ({ option: of, forces }) => {
      // a plate that was closed meanwhile has no use for them
      if (!history) return null;
      appraisals.takeSolved(of, forces);
      show();
      return null;
    },
    countFrom: ({ option: id }) => {
      base = id;
      compareInSlices(open().raw, ++round);
      return null;
    },
    text: () => ({ text: writtenAs(open().raw), hash: documentHash(open().raw) }),
    putAway: () => {
      history = putAway(open());
      return null;
    },
    explain: ({ option: of, check, place, situation }) => {
      const { rows, model } = sound(of);
      const [row] = rows
        .filter((r) => r.id === check && r.place === place && (situation === null || r.situation === situation))
        .sort(graver);
      if (!row)
        throw refusal({ what: `The check ${check} is not made at ${place}`, mend: 'Choose a line of the list.' });
      return fullCheck(row, model);
    },
    fatigue: ({ option: of }) => {
      const { rows, model } = sound(of);
      return fatigueSection(model, rows, printIn(model.document.units));
    },
    durability: ({ option: of }) => {
      const { rows, model } = sound(of);
      return durabilitySection(model, rows, printIn(model.document.units));
    },
    recovery: ({ option: of }) => {
      const { rows, model } = sound(of);
      return recoverySection(model, rows, printIn(model.document.units));
    },
    against: ({ option: of }) =>
      againstSection(boltedAgainstWelded(open().raw, of), printIn(sound(of).model.document.units)),
    testSetup: ({ option: of }) => {
      const { mass, volume, area, density, waterInside } = plateBodyOf(sound(of).model);
      const typed = (value: number, unit: string): string => `${Number(value.toPrecision(6))} ${unit}`;
      return {
        mass: typed(mass, 'kg'),
        volume: typed(volume, 'm^3'),
        area: typed(area, 'm^2'),
        density: typed(density, 'kg/m^3'),
        waterInside: typed(waterInside, 'm^3'),
      };
    },
    issue: ({ option: of, register }) => issueView(registerIn(register), open().raw, sound(of)),
    issueStep: ({ option: of, register, step }) => {
      const event = eventOfStep(step, open().raw, () => sound(of));
      return { register: `${JSON.stringify(recorded(registerIn(register), event))}\n` };
    },
    note: ({ option: of, register }) => {
      const { raw } = open();
      const ids = [null, ...optionsOf(raw).map(({ id }) => id)];
      const all = ids.map(sound);
      const reference = all[0]!;
      const comparison: Comparison = {
        base: null,
        appraisals: all,
        options: all.map((one) => compared(one, reference)),
      };
      return { wire: toWire(checkNote(raw, sound(of), comparison, utf8ToBytes(writtenAs(raw)), registerIn(register))) };
    },
    readQuantity: ({ kind, typed }) => {
      const { si } = readQuantity(typed, kind);
      const unit = shownIn[kind] ?? kinds[kind].unit;
      const plain = significant(inUnit(si, unit), 6)
        .replace(/(\.\d*?)0+$/, '$1')
        .replace(/\.$/, '');
      return { si, text: `${plain} ${unitText(unit)}` };
    },
    preview: ({ text }) => previewOf(text),
    newPlate: (asked) => {
      const text = `${JSON.stringify(newPlate(asked), null, 2)}\n`;
      return { text, preview: previewOf(text) };
    },
    compareWith: ({ text }) => {
      const other = readDocumentText(text);
      const theirs = new Appraisals();
      const chosen = valueAt(other, ['chosen']);
      const id = typeof chosen === 'string' ? chosen : null;
      const name = valueAt(other, ['project', 'name']);
      return comparisonView(
        [
          contender(option, 'This document', appraisals.of(open().raw, option)),
          contender('other', typeof name === 'string' ? name : 'The other document', theirs.of(other, id)),
        ],
        option,
      );
    },
    handbook,
    catalogueRows: (asked) => catalogueRows(asked, unitsOf(open().raw)),
    rowLike: ({ kind, id }) => {
      const { raw } = open();
      const own = valueAt(raw, ['catalogue', listOfKind[kind]]);
      const taken = Array.isArray(own) ? own.map((row) => valueAt(row, ['id'])) : [];
      return { row: rowLike(kind, id, { as: freeRowId(id, taken), units: unitsOf(raw) }) };
    },
    choices: () => choicesFor(history ? readOr(history.raw) : null),
  };
}

/** Metric where the document does not say otherwise, or not rightly. */
const unitsOf = (raw: RawDocument): UnitSystem => (valueAt(raw, ['units']) === 'inch' ? 'inch' : 'metric');

const registerIn = (text: string | null): Register => (text === null ? emptyRegister : readRegister(text));

/** A document as it is written to a file. */
const writtenAs = (raw: RawDocument): string => `${JSON.stringify(raw, null, 2)}\n`;

/** Units beside a field where the plain SI unit would count in millions. */
const shownIn: Partial<Record<Kind, string>> = { stress: 'MPa', force: 'kN', moment: 'kN*m', lineForce: 'kN/m' };

const contender = (id: string | null, title: string, attempt: Attempt): Contender => ({
  id,
  title,
  appraisal: attempt.ok ? attempt.appraisal : null,
  faults: attempt.ok ? [] : attempt.faults,
});

/** A document that cannot be read shows without its parsed side; its faults are told beside it. */
function readOr(raw: RawDocument): PlateDocument | null {
  try {
    return readDocument(raw);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return null;
  }
}

/** An option whose bases go in a circle shows as the document stands. */
function laidOr(raw: RawDocument, option: string | null): RawDocument {
  try {
    return laidRaw(raw, option);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return raw;
  }
}

/** Ids to choose from: the catalogue with the document's own rows. */
function choicesFor(document: PlateDocument | null): Choices {
  const catalogue = catalogueWith(document ? userRows(document) : {});
  const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);
  const plates = (system: 'metric' | 'inch') =>
    catalogue.stockPlates.filter(({ id }) => id.includes(system === 'inch' ? 'in' : 'mm')).map(({ id }) => id);
  return {
    sections: catalogue.list('section').map(({ id, title }) => ({ id, title })),
    materials: catalogue.list('material').map(({ id, title, family }) => ({ id, title, family })),
    bolts: ids(catalogue.list('bolt')),
    classes: ids(catalogue.list('boltClass')),
    weldMetals: ids(catalogue.list('weldMetal')),
    plates: { metric: plates('metric'), inch: plates('inch') },
    bases: (['EN 1993', 'AISC 360 ASD'] as const).map((id) => {
      const { title, factors } = designBasis(id, []);
      return {
        id,
        title,
        factors: Object.entries(factors).map(([name, { value, meaning }]) => ({ name, value, meaning })),
      };
    }),
  };
}
