import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checks } from '../../core/checks/index.ts';
import { handbookNote } from '../../core/handbook/handbook-note.ts';
import { handbook } from '../../core/handbook/handbook.ts';
import { notWhere } from '../../core/handbook/not-where.ts';
import { openFaces } from '../../electron/host/note/faces.ts';
import { unprintable } from '../../electron/host/note/unprintable.ts';
import { texts } from '../../renderer/texts.ts';

const chapters = handbook();
const chapter = (id: string) => chapters.find((each) => each.id === id)!;

describe('the theory of a check', () => {
  const pages = chapter('theory').entries;

  it('is there once for every check, under what it is about', () => {
    expect(pages.map(({ id }) => id)).toEqual(checks.map(({ id }) => id));
    for (const { id, group } of pages) expect(group, id).toMatch(/^[A-Z]/);
  });

  it('names every input, line, source and caution, and no number of a formula is lost', () => {
    for (const [n, check] of checks.entries()) {
      const { section, ...page } = pages[n]!;
      // A power is printed as a raised digit.
      const words = page.words.normalize('NFKC');
      const own = [...Object.values(check.steps).flat(), ...check.second.steps];
      const said = [...Object.values(check.inputs), ...own].map(({ meaning }) => meaning);
      const named = [...check.source, ...check.second.source].map(({ document }) => document);
      for (const text of [...said, ...named, ...check.cautions])
        expect(words, check.id).toContain(text.toLowerCase().normalize('NFKC'));
      for (const step of own)
        for (const [number] of 'kernel' in step ? [] : step.expression.matchAll(/(?<![\w.])\d+(\.\d+)?(?![\w.])/g))
          expect(words, `${check.id}: ${step.symbol}`).toContain(String(Number(number)));
      const lines = section.blocks.filter(({ kind }) => kind === 'equation').length;
      expect(lines, check.id).toBeGreaterThanOrEqual(new Set(own.map(({ symbol }) => symbol)).size + 1);
    }
  });

  it('sets bolts in tension as EN 1993-1-8:2005, Table 3.4 prints it', () => {
    const { words } = pages.find(({ id }) => id === 'bolt-tension')!;
    expect(words).toContain('f_t,rd = k_2·f_ub·a_s/γ_m2');
    expect(words).toContain('en 1993-1-8:2005, table 3.4');
  });

  it('knows where checks are not made, of checks that exist', () => {
    const ids = new Set(checks.map(({ id }) => id));
    expect(Object.keys(notWhere).filter((id) => !ids.has(id))).toEqual([]);
    expect(notWhere['weld-throat']).toContain('the panel is bolted');
  });
});

describe('the first hour', () => {
  it('names sheets, buttons, options and checks as they are called', () => {
    const sample = JSON.parse(readFileSync('samples/middle.stillplate.json', 'utf8')) as {
      options: { title: string }[];
    };
    const called = new Set([...stringsOf(texts), ...sample.options.map(({ title }) => title), ...checks.map(({ title }) => title)]); // prettier-ignore
    const { entries } = chapter('hour');
    for (const { sheet, title } of entries) if (sheet) expect(title).toMatch(new RegExp(`^\\d+\\. ${texts.sheets[sheet]}: `)); // prettier-ignore
    const quoted = entries.flatMap(({ section }) => [...JSON.stringify(section).matchAll(/“([^”]+)”/g)].map(([, name]) => name!)); // prettier-ignore
    expect(quoted.length).toBeGreaterThan(8);
    expect(quoted.filter((name) => !called.has(name))).toEqual([]);
  });

  it('takes an hour', () => {
    const minutes = chapter('hour').entries.map(({ title }) => Number(/\((\d+) min\)$/.exec(title)![1]));
    expect(minutes.reduce((sum, each) => sum + each)).toBe(60);
  });
});

it('every word of the trade stands once, with a meaning', () => {
  const { entries } = chapter('glossary');
  expect(new Set(entries.map(({ title }) => title.toLowerCase())).size).toBe(entries.length);
  for (const term of [
    'plate',
    'panel',
    'bay',
    'overlap',
    'added mass',
    'drag coefficient',
    'keulegan-carpenter number',
    'snap load',
  ])
    // prettier-ignore
    expect(entries.map(({ title }) => title.toLowerCase()).some((title) => title.includes(term)), term).toBe(true);
  for (const { words, title } of entries) expect(words.length, title).toBeGreaterThan(title.length + 20);
});

it('can be printed with the fonts that the note has', () => {
  expect(unprintable(handbookNote('A4', '2026-01-01'), openFaces())).toEqual([]);
});

/** Every string in the window's texts. */
function stringsOf(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsOf) : [];
}
