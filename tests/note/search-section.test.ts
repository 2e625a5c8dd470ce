import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import type { Section } from '../../core/note/note.ts';
import { againstSection } from '../../core/note/against-section.ts';
import { searchSection } from '../../core/note/search-section.ts';
import { boltedAgainstWelded } from '../../core/options/bolted-against-welded.ts';
import { askedOf } from '../../core/options/search/asked-of.ts';
import { checkedFront } from '../../core/options/search/checked-front.ts';
import { askedSpace } from '../../core/options/search/default-space.ts';
import { searchRecord } from '../../core/options/search/search-record.ts';
import { search, searchProblem } from '../../core/options/search/search.ts';
import { printIn } from '../../core/print-in.ts';

const small = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const asked = { thickness: ['4 mm', '5 mm'], aside: ['fatigue', 'stability'] };
const rates = { currency: 'EUR', source: 'invented for this test', perBolt: 6, weldPerMetre: 40 };

const sections = (raw: RawDocument): readonly Section[] =>
  searchSection(raw, modelOf(readDocument(raw)), printIn('metric'));
const wordsOf = (made: readonly Section[]): string => JSON.stringify(made);

it('tells the bounds, what was found and why the others were turned down, as a search of that document says it', () => {
  const raw = { ...small, search: asked };
  expect(sections(small)).toEqual([]);
  expect(wordsOf(sections(raw))).toContain('No search is kept');

  const problem = searchProblem(raw, askedSpace(raw, null, askedOf(readDocument(raw).search)));
  const steps = search(problem);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const record = searchRecord(raw, problem, step.value, checkedFront(raw, problem, step.value.front));
  expect(record.stopped.reduce((sum, { count }) => sum + count, record.passing + record.beaten)).toBe(record.options);

  const told = wordsOf(sections({ ...small, search: { ...asked, record } }));
  for (const words of ['4 mm; 5 mm', 'fatigue; stability', record.found[0]!.title, record.stopped[0]!.title])
    expect(told).toContain(words);
  expect(record.found[0]!.whyNotThinner[0]).toMatch(/^Not 4 mm: /);

  // Of another state of the document nothing is told.
  const changed = wordsOf(sections({ ...small, search: { ...asked, thickness: ['6 mm'], record } }));
  expect(changed).toContain('another state');
  expect(changed).not.toContain(record.found[0]!.title);
}, 300_000);

it('names beside each line of bolted against welded where it is from', () => {
  const section = againstSection(boltedAgainstWelded({ ...small, rates }, null), printIn('metric'));
  const [table] = section.blocks.filter((block) => block.kind === 'table');
  expect(table!.rows.length).toBeGreaterThan(15);
  for (const row of table!.rows) expect(row[3]).toMatch(/\S/);
  expect(table!.rows.find(([title]) => title === 'Cost by the rates given')![3]).toContain('invented for this test');
}, 300_000);
