import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise, type Appraisal } from '../../core/appraise.ts';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import type { SolvedForces } from '../../core/loads/solved-forces.ts';
import { bothForcesSection, bothForcesTitle } from '../../core/note/both-forces-section.ts';
import { fullCheck } from '../../core/note/check-sections.ts';
import { firstPage } from '../../core/note/first-page.ts';
import type { Block, Section } from '../../core/note/note.ts';
import { printIn } from '../../core/print-in.ts';
import { solvedAlike } from '../checks/solved-alike.ts';

const small = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument;
const reason = 'strain gauges on the sister plate showed no more';
const choose = [{ check: 'tube-bending', place: 'A', take: 'hand', reason }];
const asking = { ...small, forces: { from: 'hand and solver', choose } };
const appraised = (raw: RawDocument, solved?: SolvedForces): Appraisal =>
  appraise(raw, readDocument(raw), null, solved);
const print = printIn('metric');

/** Moments half as large again as by hand, so that the solver's govern wherever nothing is chosen. */
const forces = solvedAlike(appraised(asking).model, (one) => ({
  ...one,
  tubes: Object.fromEntries(Object.entries(one.tubes).map(([id, tube]) => [id, { ...tube, M: 1.5 * tube.M }])),
}));
const both = appraised(asking, forces);

const rowAt = (of: Appraisal, place: string) =>
  of.rows.find((row) => row.id === 'tube-bending' && row.place === place && row.situation === 'service-up')!;
const textOf = (blocks: readonly Block[]): string =>
  blocks
    .map((block) => {
      if (block.kind === 'paragraph') return block.text;
      if (block.kind === 'equation') return block.plain;
      if (block.kind === 'list') return block.items.join('\n');
      return block.kind === 'table' ? [block.caption, ...block.rows.map((cells) => cells.filter((c) => typeof c === 'string').join(' | '))].join('\n') : ''; // prettier-ignore
    })
    .join('\n');

describe('a check in full', () => {
  it('prints both demands, which governs, and the lines in which the other side differs', () => {
    const row = rowAt(both, 'B');
    const { hand, solver } = row.both!;
    const text = textOf(fullCheck(row, both.model).blocks);
    for (const { demand, utilisation } of [hand, solver]) {
      expect(text).toContain(print.quantity(demand!, 'kN*m'));
      expect(text).toContain(`utilisation ${utilisation!.toFixed(3)}`);
    }
    expect(text).toContain('The larger governs: that by the whole plate’s solution.');
    // the trace in full is that of the solver's forces; of the hand's only the moment differs
    const moments = text.split('\n').filter((line) => line.startsWith('M ='));
    expect(moments).toEqual([expect.stringContaining(print.quantity(hand.demand!, 'kN*m', 4).split(' ')[0]!)]);
  });

  it('says loudly that the smaller is taken, and why', () => {
    const row = rowAt(both, 'A');
    const { blocks } = fullCheck(row, both.model);
    const said = blocks.find((block) => block.kind === 'paragraph' && block.text.includes(reason));
    expect(said).toMatchObject({ tone: 'loud' });
    expect(textOf(blocks)).toContain('That by hand is taken, the smaller of the two');
  });

  it('says what waits where the plate is not solved', () => {
    const waiting = appraised(asking);
    const text = textOf(fullCheck(rowAt(waiting, 'B'), waiting.model).blocks);
    expect(text).toContain('By the whole plate’s solution: the plate is not solved yet as one structure.');
    expect(text).toMatch(/CANNOT BE JUDGED: the plate is not solved yet/);
  });
});

describe('the section on both forces', () => {
  const [section] = bothForcesSection(both, print) as [Section];
  const text = textOf(section.blocks);

  it('holds mesh, error, balance, contact and buckling, and a table a kind with both demands', () => {
    expect(section.title).toBe(bothForcesTitle);
    expect(text).toMatch(/cells up to 50(\.0)? mm, 1000 unknowns/);
    expect(text).toMatch(/1\.0 %/);
    expect(text).toMatch(/under a thousand-millionth of the load/);
    expect(text).toMatch(/Contact settled in every loading/);
    expect(text).toMatch(/Nothing buckles up to 100 times/);
    for (const kind of ['Panels', 'Bolts', 'Tubes', 'Crossings', 'Suspension and eyes'])
      expect(text).toContain(`${kind}: gravest place of each check`);
    const [line] = text.split('\n').filter((row) => row.startsWith('Tube in bending | '));
    const [, , hand, solver] = line!.split(' | ').map((cell) => parseFloat(cell));
    expect(solver! / hand!).toBeCloseTo(1.5, 1);
  });

  it('lists every demand taken at the smaller with its reason, as the first page counts them', () => {
    const taken = both.rows.filter((row) => row.both?.smaller === reason);
    expect(taken.length).toBeGreaterThan(1);
    expect(text.split('\n').filter((line) => line.endsWith(`hand | ${reason}`)).length).toBe(taken.length);
    const page = textOf(firstPage(both, print).blocks);
    expect(page).toContain(`${taken.length} demands are taken at the smaller of two values, reasons in section “${bothForcesTitle}”`); // prettier-ignore
  });

  it('names cases in which contact did not settle', () => {
    const open = solvedAlike(both.model, (one, id) => ({ ...one, settled: id !== 'service-up' }));
    const [told] = bothForcesSection(appraised(asking, open), print) as [Section];
    expect(textOf(told.blocks)).toMatch(/CONTACT DID NOT SETTLE in service, up/);
  });

  it('is left out where forces are by hand, and loud where they are asked for and missing', () => {
    expect(bothForcesSection(appraised(small), print)).toEqual([]);
    const [missing] = bothForcesSection(appraised(asking), print) as [Section];
    expect(missing.blocks[0]).toMatchObject({ tone: 'loud', text: expect.stringMatching(/not solved yet/) as unknown });
  });
});
