import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import type { Edit, Json } from '../../core/document/edit.ts';
import { documentHash } from '../../core/document/document-hash.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { Appraisals } from '../../core/engine/appraisals.ts';
import { createEngine } from '../../core/engine/engine.ts';
import {
  edited,
  historyOf,
  putAway,
  redone,
  replayed,
  undone,
  type Changed,
  type History,
} from '../../core/engine/history.ts';
import type { EngineNews } from '../../core/engine/messages.ts';
import type { JournalEntry } from '../../core/host/host-schema.ts';
import { fromWire } from '../../core/host/wire.ts';
import type { Note } from '../../core/note/note.ts';

const text = (name: string) => readFileSync(new URL(`../../samples/${name}.stillplate.json`, import.meta.url), 'utf8');
const small = readDocumentText(text('small'));
const optionIds = (small['options'] as { id: string }[]).map(({ id }) => id);

/** An engine whose slices run when asked. */
function started(sample = 'small') {
  const news: EngineNews[] = [];
  const waiting: (() => void)[] = [];
  const engine = createEngine({ tell: (item) => news.push(item), later: (goOn) => waiting.push(goOn) });
  const rest = () => {
    while (waiting.length > 0) waiting.shift()!();
  };
  engine.open({ text: text(sample), journal: [] });
  const last = <K extends EngineNews['kind']>(kind: K) =>
    news.filter((item): item is Extract<EngineNews, { kind: K }> => item.kind === kind).at(-1);
  return { engine, news, rest, last };
}

const depth = (value: string, option: string | null = null): Edit => ({
  kind: 'setField',
  option,
  path: ['water', 'depth'],
  value,
});

describe('the engine', () => {
  it('tells document, result, scene and comparison when a document is opened', () => {
    const { rest, last } = started();
    expect(last('comparison')).toBeUndefined();
    rest();
    expect(last('document')!.view.faults).toEqual([]);
    expect(last('comparison')!.view.options.map(({ id }) => id)).toEqual([null, ...optionIds]);
    const { view } = last('result')!;
    const fresh = appraise(small, readDocument(small), view.option);
    expect(view.quantities['mass.air']!.value).toBe(fresh.quantities['mass.air']!.value);
    expect(view.fails).toBe(fresh.rows.filter(({ verdict }) => verdict === 'fails').length);
  });
  it('keeps the last good result while something is wrong, and says that it is as of before', () => {
    const { engine, last } = started();
    engine.edit({ edit: depth('5 kg') });
    expect(last('document')!.view.faults.map(({ where }) => where?.['path'])).toContain('water.depth');
    expect(last('result')!.view.current).toBe(false);
    engine.edit({ edit: depth('25 m') });
    expect(last('document')!.view.faults).toEqual([]);
    expect(last('result')!.view.current).toBe(true);
  });
  it('cuts a comparison off when a newer edit comes', () => {
    const { engine, news, rest } = started();
    engine.edit({ edit: depth('25 m') });
    rest();
    expect(news.filter(({ kind }) => kind === 'comparison')).toHaveLength(1);
  });
  it('explains a check in the words of the note, and refuses one that is not made', () => {
    const { engine, last } = started();
    const { rows } = last('result')!.view;
    const row = rows.find(({ utilisation }) => utilisation !== null)!;
    const section = engine.explain({
      option: last('result')!.view.option,
      check: row.id,
      place: row.place,
      situation: row.situation,
    });
    expect(section.title).toContain(row.title);
    expect(section.blocks.some(({ kind }) => kind === 'equation')).toBe(true);
    expect(() => engine.explain({ option: null, check: row.id, place: 'nowhere', situation: null })).toThrow(
      /not made/,
    );
  });
  it('reads a typed quantity, and makes a note of an option', () => {
    const { engine } = started();
    const { si, text: said } = engine.readQuantity({ kind: 'length', typed: '3/8 in' });
    expect(si).toBeCloseTo(0.009525, 12);
    expect(said).toBe('0.009525 m');
    expect(engine.readQuantity({ kind: 'stress', typed: '355 MPa' }).text).toBe('355 MPa');
    expect(() => engine.readQuantity({ kind: 'length', typed: '10 kg' })).toThrow(/mass/);
    const note = fromWire(engine.note({ option: null, register: null }).wire) as Note;
    expect(note.stamp).toBe('NOT ISSUED');
  });
  it('makes a new plate of six answers with exactly the outline asked for', () => {
    const { engine } = started();
    for (const [units, length, width, section] of [
      ['metric', '4.1 m', '2.35 m', 'SHS 120x120x6.3 hot'],
      ['inch', '150 in', '90 in', 'HSS 5x5x5/16'],
    ] as const) {
      const asked = {
        name: 'Trial',
        units,
        length,
        width,
        mainTubes: 3,
        crossTubes: 5,
        section,
        depth: '30 m',
        force: '8 kN',
      };
      const made = engine.newPlate(asked);
      expect(made.preview.faults).toEqual([]);
      const raw = readDocumentText(made.text);
      const { model } = appraise(raw, readDocument(raw), null);
      const { outline } = model.geometry;
      const metres = units === 'metric' ? [4.1, 2.35] : [150 * 0.0254, 90 * 0.0254];
      expect(outline.x1 - outline.x0).toBeCloseTo(metres[0]!, 6);
      expect(outline.y1 - outline.y0).toBeCloseTo(metres[1]!, 6);
      expect(model.geometry.panels).toHaveLength(8);
    }
  });
  it('refuses a new plate with every wrong answer at once', () => {
    const { engine } = started();
    const asked = {
      name: 'x',
      units: 'metric',
      length: '2 kg',
      width: '-1 m',
      mainTubes: 1,
      crossTubes: 2.5,
      section: 'none',
      depth: '',
      force: '3',
    } as const;
    try {
      engine.newPlate(asked);
      expect.unreachable('a plate of wrong answers was made');
    } catch (error) {
      const fields = (error as { all: { where: { path: string } }[] }).all.map(({ where }) => where.path);
      expect(new Set(fields)).toEqual(
        new Set(['length', 'width', 'mainTubes', 'crossTubes', 'section', 'depth', 'force']),
      );
    }
  });
});

describe('memo and history', () => {
  const lengths = fc.integer({ min: 3, max: 90 }).map((n) => `${n} m`);
  const anyEdit: fc.Arbitrary<Edit | 'undo' | 'redo'> = fc.oneof(
    fc.tuple(lengths, fc.constantFrom(null, ...optionIds)).map(([value, option]) => depth(value, option)),
    fc.constantFrom<Edit | 'undo' | 'redo'>('undo', 'redo', depth('wrong'), {
      kind: 'chooseOption',
      id: optionIds[0]!,
    }),
    fc.integer({ min: 4, max: 9 }).map((n): Edit => ({
      kind: 'setField',
      option: optionIds[0]!,
      path: ['designs', Object.keys(small['designs'] as object)[0]!, 'thickness'],
      value: `${n} mm` as Json,
    })),
    fc.constant<Edit>({ kind: 'setField', option: null, path: ['project', 'name'], value: 'Another name' }),
  );
  const step = (history: History, edit: Edit | 'undo' | 'redo'): Changed | null =>
    edit === 'undo' ? undone(history) : edit === 'redo' ? redone(history) : edited(history, edit);

  it('appraises from the memo what a fresh run gives, after any edits', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { minLength: 1, maxLength: 6 }), (edits) => {
        const memo = new Appraisals();
        let history = historyOf(small);
        for (const edit of edits) {
          history = step(history, edit)?.history ?? history;
          for (const option of [null, optionIds[0]!]) {
            const kept = memo.of(history.raw, option);
            const fresh = new Appraisals().of(history.raw, option);
            expect(kept.ok).toBe(fresh.ok);
            if (kept.ok && fresh.ok) {
              expect(kept.appraisal.documentHash).toBe(fresh.appraisal.documentHash);
              expect(kept.appraisal.optionTitle).toBe(fresh.appraisal.optionTitle);
              expect(JSON.stringify(kept.appraisal.rows)).toBe(JSON.stringify(fresh.appraisal.rows));
              expect(kept.appraisal.findings).toEqual(fresh.appraisal.findings);
              expect(kept.appraisal.model.document).toEqual(fresh.appraisal.model.document);
            } else expect(kept).toEqual(fresh);
          }
        }
      }),
      { numRuns: 5, seed: 7 },
    );
  });
  it('brings a journal back to the same document, and undoing all to the first', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { maxLength: 30 }), (edits) => {
        let history = historyOf(small);
        const journal: JournalEntry[] = [];
        for (const edit of edits) {
          const changed = step(history, edit);
          if (!changed) continue;
          history = changed.history;
          journal.push(...changed.entries);
        }
        expect(journal).toHaveLength(history.head);
        expect(documentHash(replayed(small, journal).raw)).toBe(documentHash(history.raw));
        const last = documentHash(history.raw);
        let back = history;
        for (let changed = undone(back); changed; changed = undone(back)) back = changed.history;
        expect(documentHash(back.raw)).toBe(documentHash(small));
        for (let n = 0; n < history.past.length; n++) back = redone(back)!.history;
        expect(documentHash(back.raw)).toBe(last);
      }),
      { numRuns: 60, seed: 3 },
    );
  });
  it('says a step that the journal since a revision does not hold as an edit of its own, so that it can always be brought back', () => {
    const any = fc.array(fc.oneof({ arbitrary: anyEdit, weight: 5 }, fc.constant('revision' as const)), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(any, (moves) => {
        let history = historyOf(small);
        let text = small;
        let journal: JournalEntry[] = [];
        for (const move of moves) {
          if (move === 'revision') {
            history = putAway(history);
            text = history.raw;
            journal = [];
            continue;
          }
          const changed = step(history, move);
          if (!changed) continue;
          history = changed.history;
          journal.push(...changed.entries);
          expect(documentHash(replayed(text, journal).raw)).toBe(documentHash(history.raw));
        }
      }),
      { numRuns: 60, seed: 5 },
    );
    const first = putAway(edited(historyOf(small), depth('40 m')).history);
    expect(undone(first)!.entries[0]!.kind).toBe('edit');
    // Undone before the revision: the step forth is put away with it too.
    const back = putAway(undone(edited(historyOf(small), depth('40 m')).history)!.history);
    expect(redone(back)!.entries[0]!.kind).toBe('edit');
  });
});
