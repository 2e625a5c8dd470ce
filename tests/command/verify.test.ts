import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { mergePatch } from '../../core/document/merge-patch.ts';
import { readDocument } from '../../core/document/read-document.ts';
import { startingDocument } from '../../core/document/starting-document.ts';
import { checkNote } from '../../core/note/check-note.ts';
import type { Note } from '../../core/note/note.ts';
import { compare } from '../../core/options/compare.ts';
import { resultOf } from '../../core/result.ts';
import { writeNote } from '../../electron/host/note/write-note.ts';
import { resultDifferences } from '../../electron/host/verify/result-differences.ts';
import { verifyNote } from '../../electron/host/verify/verify-note.ts';
import { inFolder } from './in-folder.ts';
import { ran } from './ran.ts';

const raw = startingDocument('metric') as Record<string, unknown>;
const document = readDocument(raw);
const appraisal = appraise(raw, document, null);
const comparison = compare(raw, document, null);
const whole = checkNote(raw, appraisal, comparison);
/** The first sections are enough to forge in, and set in a fraction of the time. */
const note = { ...whole, sections: whole.sections.slice(0, 4) };
const pdf = await writeNote(note);
/** Making anew gives what was made: only the file looked at differs between these tests. */
const make = () => Promise.resolve({ pdf, result: resultOf(appraisal, { every: true }) });

/** The note with one text of its pages changed, all that it carries left as it was. */
const forged = (from: string, to: string): Note =>
  ({ ...note, sections: JSON.parse(JSON.stringify(note.sections).replace(from, to)) }) as Note;

const withAttachment = (name: string, change: (text: string) => string): Note => ({
  ...note,
  attachments: note.attachments.map((one) => one.name === name ? { ...one, bytes: new TextEncoder().encode(change(new TextDecoder().decode(one.bytes))) } : one), // prettier-ignore
});

describe('verify', () => {
  it('one changed digit in the visible text is named by its page, with both numbers', async () => {
    const mass = appraisal.quantities['mass.air']!.value.toFixed(1);
    const digit = mass.endsWith('1') ? '2' : '1';
    expect(JSON.stringify(note.sections)).toContain(`"${mass} kg`);
    const { differs, pageDifferences, sameBytes } = await verifyNote(await writeNote(forged(`"${mass} kg`, `"${mass.slice(0, -1)}${digit} kg`)), make); // prettier-ignore
    expect(sameBytes).toBe(false);
    expect(pageDifferences).toEqual([{ page: expect.any(Number), printed: `${mass.slice(0, -1)}${digit}`, recomputed: mass }]); // prettier-ignore
    expect(differs).toHaveLength(1);
    expect(differs[0]).toMatch(/^Page \d+ prints/);
  });
  it('a dimension of a figure is compared as every other text', async () => {
    const [, text = ''] = /"kind":"dimension"[^}]*"text":"([^"]+)"/.exec(JSON.stringify(note.sections))!;
    const { differs } = await verifyNote(await writeNote(forged(`"text":"${text}"`, `"text":"7${text}"`)), make);
    expect(differs.join()).toContain(`7${text.split(' ')[0]}`);
  });
  it('a changed result inside, and a line of a figure moved without a word, are said', async () => {
    const results = withAttachment('result.json', (text) => text.replace(/"mass\.air":(\{[^}]*)"value":(\d)/, '"mass.air":$1"value":9$2')); // prettier-ignore
    expect((await verifyNote(await writeNote(results), make)).differs.join()).toMatch(/results inside say 9\d.*quantity mass\.air/); // prettier-ignore
    const moved = { ...note, sections: JSON.parse(JSON.stringify(note.sections).replace(/("kind":"circle","at":\[[^\]]*\],"radius":)/, '$12'))} as Note; // prettier-ignore
    expect(JSON.stringify(moved.sections)).not.toBe(JSON.stringify(note.sections));
    expect((await verifyNote(await writeNote(moved), make)).differs.join()).toMatch(
      /something that is no text was changed/,
    );
  });
  it('a machine of another arithmetic: rounding in the last digit is told by its page and is no difference, more is one', async () => {
    const browser = (one: Note): Note => ({ ...one, attachments: withAttachment('note.json', (text) => text.replace(/"arithmetic":"\w{16}"/, '"arithmetic":"0123456789abcdef"')).attachments }); // prettier-ignore
    const mass = appraisal.quantities['mass.air']!.value.toFixed(1);
    const moved = (tenths: number): string => (Number(mass) + tenths / 10).toFixed(1);
    const rounded = await verifyNote(await writeNote(browser(forged(`"${mass} kg`, `"${moved(1)} kg`))), make);
    expect(rounded).toMatchObject({ sameArithmetic: false, tolerance: 1e-6, differs: [], roundedOtherwise: [{ printed: moved(1), recomputed: mass }] }); // prettier-ignore
    const more = await verifyNote(await writeNote(browser(forged(`"${mass} kg`, `"${moved(2)} kg`))), make);
    expect(more.differs).toEqual([expect.stringContaining(`“${moved(2)}”`)]);
    const inside = JSON.stringify(resultOf(appraisal, { every: true }));
    expect(resultDifferences(JSON.parse(inside), JSON.parse(inside.replace(/("utilisation":0\.[1-9]\d{4})\d*/, '$19')), 1e-6)).not.toEqual([]); // prettier-ignore
  });
  it('another document inside than the results are of is said', async () => {
    const other = withAttachment('document.stillplate.json', (text) => text.replace(/"revision": ?"[^"]*"/, '"revision": "Z"')); // prettier-ignore
    expect((await verifyNote(await writeNote(other), make)).differs.join()).toMatch(
      /results inside are of another document/,
    );
  });
  it('refuses a PDF that carries nothing, and what is no PDF', async () => {
    await expect(verifyNote(await writeNote({ ...note, attachments: [] }), make)).rejects.toThrow(
      /carries no document, no results/,
    );
    await expect(verifyNote(new TextEncoder().encode('%PDF-1.7 half'), make)).rejects.toThrow(/cannot be read as PDF/);
    await expect(verifyNote(await writeNote(withAttachment('note.json', () => '{"schema":"stillplate-note/1"}')), make)).rejects.toThrow(/not whole/); // prettier-ignore
  });
  it('from document to verified on the command line; the document given against it is compared field by field', () =>
    inFolder(async (folder) => {
      // A force that no panel of it stands: what fails is not issued.
      const weak = mergePatch(raw, { loads: { service: { force: '600 kN' } } }) as Record<string, unknown>;
      await writeFile(join(folder, 'plate.stillplate'), JSON.stringify(weak));
      const by = (role: string, name: string) => ['--role', role, '--by', name, '--date', '2026-03-14'];
      const step = (name: string, ...rest: string[]) =>
        ran(['issue', 'plate.stillplate', '--step', name, ...rest], folder);
      expect(await step('for-check', ...by('author', 'First'), '--out', 'note.pdf')).toMatchObject({
        code: 0,
        err: '',
      });
      expect((await step('checked', ...by('checker', 'First'))).err).toMatch(/is the author of this revision/);
      expect((await step('checked', ...by('checker', 'Second'))).out).toMatch(
        /: checked; .*checked 2026-03-14 by Second/,
      );
      expect((await step('issue', ...by('engineer', 'Third'))).err).toMatch(
        /cannot be issued: .*(not judged are|fails)/,
      );
      const read = await ran(['verify', 'note.pdf'], folder);
      expect(read).toMatchObject({ code: 0, err: '' });
      expect(read.out).toMatch(/same byte for byte/);
      await writeFile(join(folder, 'other.stillplate'), JSON.stringify({ ...weak, paper: 'letter' }));
      const against = await ran(['verify', 'note.pdf', '--document', 'other.stillplate', '--json'], folder);
      expect(against.code).toBe(1);
      expect(JSON.parse(against.out).documentChanges).toEqual([{ what: 'paper', was: '“A4”', is: '“letter”' }]);
      expect((await readFile(join(folder, 'plate.register.json'), 'utf8')).match(/"hash"/g)).toHaveLength(2);
    }));
});
