import { expect, it } from 'vitest';

interface Licences {
  readonly shippedPackages: () => ReadonlyMap<string, string>;
  readonly kindsOf: (folder: string) => readonly string[];
  readonly licenceText: (folders: Iterable<string>) => string;
  readonly allowed: readonly string[];
}
const { shippedPackages, kindsOf, licenceText, allowed } = (await import('../../build/licences.mjs' as string)) as Licences; // prettier-ignore

// Kinds by the list of the Open Source Initiative that ask for no more than their text beside the program; OFL-1.1 for
// fonts. Bitstream Vera's is the font licence that DejaVu carries.
const permissive = ['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'BSL-1.0', 'ISC', 'MIT', 'OFL-1.1', 'Zlib'];

it('every package that runs is under a permissive licence', () => {
  expect(allowed.filter((kind) => !permissive.includes(kind))).toEqual([]);
  const kinds = new Map([...shippedPackages()].map(([folder, name]) => [name, kindsOf(folder)]));
  expect(kinds.size).toBeGreaterThan(40);
  expect([...kinds].filter(([, of]) => of.some((kind) => ![...permissive, 'Bitstream-Vera'].includes(kind)))).toEqual([]); // prettier-ignore
  expect(kinds.get('node-forge')).toEqual(['BSD-3-Clause']);
  expect(kinds.get('@expo-google-fonts/source-sans-3')).toEqual(['MIT', 'OFL-1.1']);
});

it('the list names each with its version and its text, the same each time', () => {
  const folders = [...shippedPackages().keys()];
  const text = licenceText(folders);
  expect(text).toBe(licenceText([...folders].reverse()));
  expect(text.match(/^\S+ \d+\.\d+\.\d+\S*: /gm)).toHaveLength(folders.length);
  expect(text).toContain('SIL OPEN FONT LICENSE');
  expect(/^three \d.*?^-----/ms.exec(text)![0]).toContain('Permission is hereby granted');
});
