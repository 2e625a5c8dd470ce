import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Box } from '../../core/derive/box.ts';
import type { Note } from '../../core/note/note.ts';
import { house } from '../../electron/host/note/house.ts';
import { unprintable } from '../../electron/host/note/unprintable.ts';
import { writeNote } from '../../electron/host/note/write-note.ts';
import { readPdf, type PdfReading } from './read-pdf.ts';
import { attachment, boxes, sampleNote } from './sample-note.ts';

let bytes: Uint8Array;
let pdf: PdfReading;
let text: string;
beforeAll(async () => {
  bytes = await writeNote(sampleNote);
  pdf = readPdf(bytes);
  text = pdf.pages.join('\n');
});

const pageOf = (part: string): number => pdf.pages.findIndex((page) => page.includes(part)) + 1;
const ofType = (type: string) => pdf.objects.filter((object) => object['/Type'] === type);
const ofStructure = (type: string) => pdf.objects.filter((object) => object['/S'] === type && '/P' in object);

describe('the file', () => {
  it('has no fault that qpdf --check can find', () => {
    expect(pdf.check).toContain('No syntax or stream encoding errors found');
    expect(pdf.check).not.toMatch(/warning|WARNING/);
  });
  it('is a tagged PDF 1.7 on A4 and asks for PDF/A-3a', () => {
    expect(pdf.info).toMatch(/^Tagged: +yes$/m);
    expect(pdf.info).toMatch(/^PDF version: +1\.7$/m);
    expect(pdf.info).toMatch(/^Page size: +595\.28 x 841\.89 pts \(A4\)$/m);
    expect(pdf.metadata).toContain('<pdfaid:part>3</pdfaid:part>');
    expect(pdf.metadata).toContain('<pdfaid:conformance>A</pdfaid:conformance>');
    const [catalog] = ofType('/Catalog');
    expect(catalog).toMatchObject({
      '/Lang': 'u:en-GB',
      '/AF': expect.any(Array),
      '/OutputIntents': expect.any(Array),
    });
  });
  it('embeds every font, with its characters', () => {
    expect(pdf.fonts.length).toBeGreaterThan(4);
    for (const font of pdf.fonts) expect(font).toMatchObject({ embedded: true, unicode: true });
  });
  it('carries the attachments byte for byte, each with its relationship and type', () => {
    expect([...pdf.attachments.keys()].sort()).toEqual(['fjordlys.stillplate.json', 'tank record.csv']);
    expect(pdf.attachments.get('fjordlys.stillplate.json')).toEqual(attachment);
    expect(ofType('/Filespec').map((spec) => spec['/AFRelationship'])).toEqual(['/Source', '/Data']);
    expect(ofType('/EmbeddedFile').map((file) => file['/Subtype'])).toEqual(['/application/json', '/text/csv']);
  });
  it('takes its dates from the revision and escapes the title in the metadata', () => {
    expect(pdf.info).toContain('Title:           Fjordlys reaction plate: infill panels of option B & fixings');
    expect(pdf.info).toMatch(/CreationDate: +Sat Mar 14 00:00:00 2026 UTC/);
    expect(pdf.metadata).toContain('option B &amp; fixings');
  });
});

describe('same note, same bytes', () => {
  it('in one process', async () => {
    expect(await writeNote(sampleNote)).toEqual(bytes);
  });
  it('bundled, after another note, under another time zone, language and folder', async () => {
    // The bundle lies where its packages are found; the folder it runs in is another.
    const folder = resolve('node_modules', '.cache', `note-test-${process.pid}`);
    mkdirSync(folder, { recursive: true });
    try {
      const outfile = join(folder, 'write.mjs');
      const contents = `import { writeNote } from './electron/host/note/write-note.ts';
        import { sampleNote } from './tests/host/sample-note.ts';
        import { createHash } from 'node:crypto';
        // One glyph may stand for two characters (a space and a no-break space, two deltas): a note that was set
        // first with the other ones must not leak into this one.
        await writeNote({ ...sampleNote, sections: [{ title: 'x', blocks: [{ kind: 'paragraph', text: 'a\\u00a0b ∆ Ω µ \\u2011' }] }], titleBlock: [['a\\u00a0b', 'a\\u00a0b']] });
        process.stdout.write(createHash('sha256').update(await writeNote(sampleNote)).digest('hex'));`;
      await build({ stdin: { contents, resolveDir: resolve('.') }, outfile, bundle: true, platform: 'node', format: 'esm', packages: 'external', logLevel: 'silent' }); // prettier-ignore
      const env = { ...process.env, TZ: 'Pacific/Kiritimati', LANG: 'sv_SE.UTF-8', LC_ALL: 'sv_SE.UTF-8' };
      const hash = execFileSync(process.execPath, [outfile], { cwd: tmpdir(), env, encoding: 'utf8' });
      expect(hash).toBe(createHash('sha256').update(bytes).digest('hex'));
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
  it('reads a time without a zone as UTC', async () => {
    const timed = readPdf(await writeNote({ ...sampleNote, date: '2026-03-14T23:30:00' }));
    expect(timed.info).toMatch(/CreationDate: +Sat Mar 14 23:30:00 2026 UTC/);
  });
});

describe('the pages', () => {
  it('open with the stamp, the title and the title block with the whole hash', () => {
    const first = pdf.pages[0]!;
    expect(first.indexOf('NOT ISSUED')).toBeLessThan(first.indexOf('Fjordlys reaction plate'));
    for (const [label, value] of sampleNote.titleBlock) {
      expect(first).toContain(label);
      expect(first).toContain(value);
    }
    expect(first).toContain(sampleNote.documentHash);
  });
  it('set the stamp larger than anything else, and over no other word', () => {
    const stamp = pdf.words.filter((word) => word.page === 1 && ['NOT', 'ISSUED'].includes(word.text));
    const rest = pdf.words.filter((word) => word.page === 1 && !stamp.includes(word));
    expect(stamp).toHaveLength(2);
    for (const word of rest) expect(word.top).toBeGreaterThan(stamp[0]!.bottom - 6);
    for (const word of rest) expect(word.bottom - word.top).toBeLessThan(stamp[0]!.bottom - stamp[0]!.top);
  });
  it('carry title and stamp in the head, hash, program and page x of y in the foot', () => {
    pdf.pages.forEach((page, i) => {
      expect(page).toContain(`page ${i + 1} of ${pdf.pages.length}`);
      expect(page).toMatch(/Document 9f2b5c0d7e1a4836\s+Stillplate 0\.1\.0/);
      expect(page).toContain('NOT ISSUED');
      if (i > 0) expect(page.trimStart()).toMatch(/^Fjordlys reaction plate/);
    });
  });
  it('keep every word within the margins', () => expectWithinMargins(pdf, 'A4'));
  it('number sections and list them as bookmarks', () => {
    for (const heading of [/^1 +Strength of the fixings/m, /^1\.1 +Bolt in tension/m, /^1\.2 +Panel/m, /^2 +Checks/m])
      expect(text).toMatch(heading);
    expect(text).toMatch(/^Summary$/m);
    const titles = pdf.objects
      .filter((object) => '/Title' in object && '/Parent' in object)
      .map((item) => item['/Title']);
    expect(titles).toEqual(['u:Summary', 'u:1  Strength of the fixings', 'u:1.1  Bolt in tension', 'u:1.2  Panel', 'u:2  Checks of every bolt', 'u:3  Drawings', 'u:4  Sign-off']); // prettier-ignore
  });
  it('keep the boxes to sign in on one page with their heading', () => {
    const page = pdf.pages[pageOf('Sign-off') - 1]!;
    for (const part of ['4 Sign-off', 'Prepared', 'Checked', 'Approved', 'Licence', 'Signature'])
      expect(page.replace(/ +/g, ' ')).toContain(part);
  });
  it('print on letter paper too', async () => {
    const letter = readPdf(await writeNote({ ...sampleNote, paper: 'letter' }));
    expect(letter.info).toMatch(/^Page size: +612 x 792 pts \(letter\)$/m);
    expectWithinMargins(letter, 'letter');
  });
});

describe('the structure that a screen reader follows', () => {
  it('has a node for every kind of block', () => {
    for (const type of ['Document', 'Sect', 'H1', 'H2', 'H3', 'P', 'L', 'LI', 'Lbl', 'LBody', 'Table', 'TR', 'TH', 'TD', 'Formula', 'Figure', 'Caption'])
      expect(ofStructure(`/${type}`).length, type).toBeGreaterThan(0); // prettier-ignore
  });
  it('speaks each formula and each figure', () => {
    const equations = sampleNote.sections[1]!.sections!.flatMap((section) => section.blocks).filter(
      (block) => block.kind === 'equation',
    );
    expect(ofStructure('/Formula').map((node) => node['/Alt'])).toEqual(equations.map((block) => `u:${block.plain}`));
    expect(ofStructure('/Figure').map((node) => node['/Alt'])).toEqual(['u:Two main tubes, three cross tubes, two panels with a vent hole', 'u:Hollow section, plate on top with bolt hole']); // prettier-ignore
  });
  it('tells the head of a table once, however often it is printed', () => {
    expect(ofStructure('/TH').filter((node) => JSON.stringify(node['/A']).includes('/Column'))).toHaveLength(6 + 2);
  });
});

describe('formulas', () => {
  it('keep their letters, signs and numbers as text', () => {
    // The run of formulas may begin on the page before.
    const last = pageOf('Equivalent stress');
    const page = pdf.pages.slice(pageOf('Tension resistance of one bolt') - 1, last).join('\n');
    for (const sign of [...'σγτλρΔΩ√≤{∑()|+−·=', '141.2', '38.7', '22.9', '132.4 MPa', '48.6 kN', '0.833', 'otherwise', 'k2', 'EN 1993-1-8:2005, Table 3.4'])
      expect(page.replaceAll('\u00a0', ' ')).toContain(sign); // prettier-ignore
    expect(pdf.pages[last - 1]).not.toContain('□');
  });
  it('stand above and below their bar', () => {
    const page = pageOf('Tension resistance of one bolt');
    const word = (part: RegExp) => pdf.words.find((found) => found.page === page && part.test(found.text))!;
    const [above, below, result] = [word(/^800/), word(/^1\.25$/), word(/^48\.6/)];
    expect(above.bottom).toBeLessThan(below.bottom - 6);
    expect(result.top).toBeGreaterThan(above.top + 2);
    expect(result.bottom).toBeLessThan(below.bottom - 2);
  });
  it('align their equals signs through a run and break before signs when they are long', () => {
    const page = pageOf('Sum over the bays');
    const start = pdf.words.find((word) => word.page === page && word.text === 'Sum')!.top;
    const signs = pdf.words.filter((word) => word.page === page && /^=/.test(word.text) && word.top > start);
    expect(signs).toHaveLength(6);
    for (const sign of signs) expect(sign.left).toBeCloseTo(signs[0]!.left, 1);
    const lines = pdf.pages[page - 1]!.split('\n').map((line) => line.trim());
    expect(lines.filter((line) => line.startsWith('+ ')).length).toBeGreaterThanOrEqual(6);
    expect(lines.filter((line) => /kg.*\+$/.test(line))).toEqual([]);
    // Nothing is lost at the breaks: each of the nine terms, and each of the fourteen of the opened fraction.
    for (let i = 0; i < 9; i++) expect(text).toContain((12.5 + i).toFixed(2));
    for (let i = 1; i <= 14; i++) expect(text.replaceAll('\u00a0', ' ')).toContain(`${i}.75 kN·m`);
  });
});

describe('tables', () => {
  const tablePages = () => pdf.pages.filter((page) => /Bolt\s+Check\s+Symbol/.test(page));
  it('repeat their head on every page, say so, and print every row once', () => {
    expect(tablePages().length).toBeGreaterThan(1);
    tablePages().slice(1).forEach((page) => expect(page).toContain('Table 1, continued')); // prettier-ignore
    for (let i = 1; i <= 64; i++) expect(text.match(new RegExp(`^ *B${i} `, 'gm'))).toHaveLength(1);
  });
  it('divide no row between pages', () => {
    for (const page of tablePages())
      expect(page.match(/Long check name/g)?.length ?? 0).toBe(page.match(/row by row/g)?.length ?? 0);
  });
  it('set figures of one width, right-aligned', () => {
    const column = pdf.words.filter(
      (word) => /^\d\d\.\d$/.test(word.text) && word.text !== '48.6' && word.page === pageOf('Table 1, continued'),
    );
    expect(column.length).toBeGreaterThan(20);
    // Bold rows are a little wider, so only the right end is common to all.
    for (const word of column) expect(word.right).toBeCloseTo(column[0]!.right, 1);
  });
  it('set a loud row bold', () => {
    const row = pdf.words.filter((word) => word.text === '50.5' || word.text === '49.8');
    const plain = pdf.words.filter((word) => word.text === '51.2' || word.text === '52.0');
    expect(row[0]!.right - row[0]!.left).toBeGreaterThan(plain[0]!.right - plain[0]!.left + 0.3);
  });
  it('say when there is nothing to list', () => expect(text).toMatch(/Place\s+Finding\s+No entries/));
  it('refuse a row with more cells than columns and name it', async () => {
    const table = {
      kind: 'table',
      caption: 'Bolts',
      columns: [{ title: 'A', width: 1 }],
      rows: [['1'], ['1', '2']],
    } as const;
    await expect(writeNote(noteOf(table))).rejects.toThrow(/Row 2 of the table “Bolts” has 2 cells for 1 columns/);
  });
});

describe('figures', () => {
  it('print their labels, dimensions and numbered captions', () => {
    for (const part of ['P1', 'P2', 'panel 10 mm, overlap 50 mm', '2500', '960', '180', '60 overlap', 't = 10 mm', 'Figure 1', 'Figure 2'])
      expect(text).toContain(part); // prettier-ignore
  });
  it('refuse a figure without extent or with a coordinate that is none', async () => {
    const figure = { kind: 'figure', caption: 'Plan', alt: '', shapes: [] } as const;
    await expect(writeNote(noteOf({ ...figure, box: { x: 0, y: 0, width: 0, height: 1 } }))).rejects.toThrow(
      /“Plan” has no extent/,
    );
    const arrow = { kind: 'arrow', from: [0, Number.NaN], to: [1, 1], pen: 'thin' } as const;
    await expect(
      writeNote(noteOf({ ...figure, box: { x: 0, y: 0, width: 1, height: 1 }, shapes: [arrow] })),
    ).rejects.toThrow(/no number/);
  });
});

describe('text in any script', () => {
  it('prints Cyrillic, Greek and Arabic as text', () => {
    for (const name of ['Бухта Северная', 'Ναύς Ερμής', 'MV Ærø Бриз', '⌀ 14 mm']) expect(text).toContain(name);
    // Readers turn right-to-left words back; marks of direction that they add are left out.
    const arabic = text.replace(/[\u202a-\u202e]/gu, '').normalize('NFKC');
    expect(arabic).toContain('السفينة');
    expect(arabic).toContain('الزرقاء');
  });
  it('prints a box for what no font has, and says which characters those were', () => {
    const lost = ['U+53F0', 'U+5E73', 'U+6D0B', 'U+6D77', 'U+1F6A2'];
    expect(unprintable(sampleNote)).toEqual(lost);
    expect(pdf.pages[0]!.replace(/\s+/g, ' ')).toContain(`These characters could not be printed: ${lost.join(', ')}.`);
    expect(text).toContain('□□□□');
  });
  it('shows characters that turn the reading direction, so that no name reads otherwise than it is stored', () => {
    const note = noteOf({ kind: 'paragraph', text: 'abc\u202efdp.exe' });
    expect(unprintable(note)).toEqual(['U+202E']);
  });
  it('says nothing when everything is printable', async () => {
    const plain = noteOf({ kind: 'paragraph', text: 'Plain' });
    expect(unprintable(plain)).toEqual([]);
    expect(readPdf(await writeNote(plain)).pages.join()).not.toContain('could not be printed');
  });
});

describe('lines of text', () => {
  it('part no number from its unit and no name at its slash', async () => {
    // In a column this narrow a break falls after nearly every word.
    const columns = [
      { title: 'A', width: 1 },
      { title: 'B', width: 7 },
    ];
    const rows = ['about 2080 kg (+216 kg)', 'a tube 150 × 100 mm', 'crossings A/1, A/2, B/1'].map((text) => [
      text,
      '',
    ]);
    const lines = readPdf(await writeNote(noteOf({ kind: 'table', caption: 'Narrow', columns, rows }))).pages.join(
      '\n',
    );
    for (const whole of ['2080 kg', '(+216 kg)', '150 × 100', 'A/1,', 'A/2,', 'B/1']) expect(lines).toContain(whole);
    expect(lines).not.toContain('about 2080 kg (+216 kg)');
  });
});

describe('what a careless document may hold', () => {
  it('breaks words that are wider than their column and loses no letter', async () => {
    const long = Array.from({ length: 90 }, (_, i) => `W${String(i).padStart(3, '0')}`).join('');
    const reading = readPdf(
      await writeNote(
        noteOf(
          { kind: 'paragraph', text: long },
          { kind: 'list', items: [long] },
          { kind: 'table', caption: long, columns: [{ title: long, width: 1 }, { title: 'B', width: 20 }], rows: [[long, long]] },
          { kind: 'equation', meaning: long, left: boxes.symbol(long), result: boxes.text(long), plain: long },
        ),
      ),
    ); // prettier-ignore
    expectWithinMargins(reading, 'A4');
    const words = reading.words.map((word) => word.text).join('');
    for (let i = 0; i < 90; i++) expect(words.split(`W${String(i).padStart(3, '0')}`).length).toBeGreaterThan(2);
  });
  it('goes on with a row that is taller than a page, and keeps all its lines', async () => {
    const words = Array.from({ length: 1500 }, (_, i) => `n${i}`);
    const columns = [
      { title: 'A', width: 1 },
      { title: 'B', width: 1 },
      { title: 'C', width: 6 },
    ];
    const reading = readPdf(
      await writeNote(
        noteOf({
          kind: 'table',
          caption: 'Tall',
          columns,
          rows: [
            [words.join(' '), 'x', 'y'],
            ['last', '', ''],
          ],
        }),
      ),
    );
    expectWithinMargins(reading, 'A4');
    const found = new Set(reading.words.map((word) => word.text));
    for (const word of [...words, 'last']) expect(found.has(word)).toBe(true);
  });
  it('sets thousands of rows', async () => {
    const columns = [
      { title: 'Place', width: 1 },
      { title: 'Value', width: 1, align: 'right' as const },
    ];
    const rows = Array.from({ length: 4000 }, (_, i) => [`R${i}`, (i / 7).toFixed(3)]);
    const reading = readPdf(await writeNote(noteOf({ kind: 'table', caption: 'Many', columns, rows })));
    expect(reading.words.filter((word) => /^R\d+$/.test(word.text)).map((word) => word.text)).toEqual(
      rows.map(([place]) => place),
    );
    expect(reading.check).not.toMatch(/warning/i);
  });
  it('sets empty tables, lists, figures, sections and texts', async () => {
    const note: Note = {
      ...noteOf(
        { kind: 'table', caption: '', columns: [], rows: [] },
        { kind: 'table', caption: '', columns: [{ title: '', width: 0 }], rows: [[''], []] },
        { kind: 'list', items: [] }, { kind: 'list', items: [''] }, { kind: 'paragraph', text: '' },
        { kind: 'equation', meaning: '', left: boxes.row(), result: boxes.row(), plain: '' },
        { kind: 'equation', meaning: '', left: boxes.symbol('x'), result: { kind: 'cases', rows: [] }, plain: '' },
        { kind: 'figure', caption: '', alt: '', box: { x: 0, y: 0, width: 1, height: 1 }, shapes: [{ kind: 'path', rings: [[]], closed: true, pen: 'thin', fill: 'section' }] },
        { kind: 'signOff', roles: [], fields: [] }, { kind: 'signOff', roles: ['One'], fields: [] },
      ),
      titleBlock: [], stamp: '', documentHash: '', programVersion: '', attachments: [],
    }; // prettier-ignore
    const reading = readPdf(await writeNote(note));
    expect(reading.check).toContain('No syntax or stream encoding errors found');
    expect(reading.pages[0]).toContain('No entries');
  });
  it('sets any text and any formula within the margins', async () => {
    const word = fc.string({ unit: 'binary', maxLength: 30 });
    const leaf = fc.record({ kind: fc.constantFrom('symbol' as const, 'text' as const, 'number' as const, 'operator' as const), text: fc.string({ maxLength: 12 }) });
    const { box } = fc.letrec<{ box: Box }>((tie) => ({
      box: fc.oneof(
        { maxDepth: 5, depthSize: 'medium' }, leaf,
        fc.record({ kind: fc.constant('row' as const), boxes: fc.array(tie('box'), { maxLength: 9 }) }),
        fc.record({ kind: fc.constant('fraction' as const), over: tie('box'), under: tie('box') }),
        fc.record({ kind: fc.constant('root' as const), body: tie('box') }),
        fc.record({ kind: fc.constant('script' as const), base: tie('box'), sub: tie('box'), sup: tie('box') }),
        fc.record({ kind: fc.constant('bracket' as const), body: tie('box'), shape: fc.constantFrom('round' as const, 'bar' as const) }),
        fc.record({ kind: fc.constant('cases' as const), rows: fc.array(fc.record({ value: tie('box'), when: tie('box') }), { maxLength: 3 }) }),
      ),
    }));
    const equation = fc.record({ left: box, formula: box, substituted: box, result: box }).map((sides) => ({ kind: 'equation' as const, meaning: 'm', plain: 'p', ...sides }));
    const cell = fc.oneof(word, fc.record({ box }));
    const table = fc.array(fc.tuple(word, cell, cell), { maxLength: 4 }).map((rows) => ({
      kind: 'table' as const, caption: 'c', rows,
      columns: [{ title: 'a', width: 1 }, { title: 'b', width: 2, align: 'right' as const }, { title: 'c', width: 2 }],
    }));
    const paragraph = word.map((text) => ({ kind: 'paragraph' as const, text }));
    await fc.assert(
      fc.asyncProperty(fc.array(fc.oneof(equation, table, paragraph), { minLength: 15, maxLength: 15 }), word, async (blocks, title) => {
        const reading = readPdf(await writeNote({ ...noteOf(...blocks), title }));
        expectWithinMargins(reading, 'A4');
        expect(reading.check).not.toMatch(/warning/i);
      }),
      { numRuns: 6, seed: 20260314, endOnFailure: true },
    );
  }); // prettier-ignore
  it('refuses a date that is none', () =>
    expect(writeNote({ ...noteOf(), date: 'soon' })).rejects.toThrow(/“soon” is no date/));
});

function noteOf(...blocks: Note['sections'][number]['blocks'][number][]): Note {
  return { ...sampleNote, title: 'Trial', titleBlock: [['Vessel', 'Trial']], sections: [{ title: 'Only', blocks }] };
}

function expectWithinMargins({ words }: PdfReading, paper: Note['paper']): void {
  const { width, height } = house.paper[paper];
  expect(words.length).toBeGreaterThan(20);
  for (const word of words) {
    expect(word.left).toBeGreaterThan(house.margin.left - 1);
    expect(word.right).toBeLessThan(width - house.margin.right + 1.5);
    expect(word.top).toBeGreaterThan(30);
    expect(word.bottom).toBeLessThan(height - 25);
  }
}
