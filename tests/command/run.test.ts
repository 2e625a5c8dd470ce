import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { startingDocument } from '../../core/document/starting-document.ts';
import { verbs } from '../../electron/command/verbs.ts';
import { middle } from '../document/middle.ts';
import { ownRows } from '../document/own-rows.ts';
import { readPdf } from '../host/read-pdf.ts';
import { inFolder } from './in-folder.ts';
import { ran } from './ran.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** A folder with the document that `new` writes: it is appraised in a fraction of the samples' time. */
const folderOfPlate = await mkdtemp(join(tmpdir(), 'stillplate-test-'));
const plate = join(folderOfPlate, 'plate.stillplate');
await writeFile(plate, JSON.stringify(startingDocument('metric')));
afterAll(() => rm(folderOfPlate, { recursive: true }));

describe('help', () => {
  it('stands on its own, with every command, a first hour and the exit codes', async () => {
    for (const args of [[], ['help'], ['--help'], ['-h']]) {
      const { code, out } = await ran(args);
      expect(code).toBe(0);
      for (const [name, { purpose }] of Object.entries(verbs)) expect(out).toContain(`  ${name.padEnd(10)} ${purpose}`);
      expect(out).toMatch(/Exit codes: 0 .*1 .*2 bad input; 3 /s);
      expect(out).toMatch(/no approval: a licensed engineer/);
    }
  });

  it.each(Object.entries(verbs))(
    '%s: usage, purpose, options, an example, the same by either way',
    async (name, { usage, purpose, help }) => {
      const { code, out } = await ran(['help', name]);
      expect(code).toBe(0);
      expect(out).toContain(`stillplate ${usage}`);
      expect(out).toContain(purpose);
      for (const option of usage.match(/--[a-z]+/g) ?? []) expect(help, option).toContain(option);
      for (const option of help.match(/--[a-z]+/g) ?? []) expect(usage, option).toContain(option);
      expect(help).toMatch(/Example: stillplate/);
      expect(await ran([name, '--help'])).toEqual({ code, out, err: '' });
      expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThan(160);
    },
  );

  it('an unknown command is refused by its name, and help for it too', async () => {
    for (const args of [['weld'], ['help', 'weld'], ['constructor'], ['help', '__proto__']]) {
      const { code, err, out } = await ran(args);
      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(/There is no command “\w+”\. Use one of: new, validate, check/);
    }
  });

  it('the version is the package’s', async () => {
    const { version } = JSON.parse(await readFile(join(root, 'package.json'), 'utf8')) as { version: string };
    expect(await ran(['--version'])).toEqual({ code: 0, out: `Stillplate ${version}`, err: '' });
  });
});

describe('exit code 2: the input is wrong', () => {
  const file = (
    name: string,
    bytes: string | Uint8Array,
    args: (path: string) => string[] = (path) => ['check', path],
  ) =>
    inFolder(async (folder) => {
      await writeFile(join(folder, name), bytes);
      const result = await ran(args(name), folder);
      expect(await readFile(join(folder, name))).toEqual(Buffer.from(bytes));
      return result;
    });

  it.each(['validate', 'check', 'compare', 'note'])('%s: no file, two files, a missing file, a folder', (verb) =>
    inFolder(async (folder) => {
      for (const [args, says] of [
        [[], /A file is missing\. Usage: stillplate/],
        [[plate, 'second'], /“second” is one argument too many/],
        [['none.stillplate'], /none\.stillplate: There is no such file/],
        [['.'], /This is a folder, not a document/],
        [[plate, '--colour'], /There is no option “--colour” here/],
      ] as const) {
        const { code, err, out } = await ran([verb, ...args], folder);
        expect([code, out]).toEqual([2, '']);
        expect(err).toMatch(says);
      }
      expect(await readdir(folder)).toEqual([]);
    }),
  );

  it('not UTF-8, cut off, and wrong in three fields: each told, the file untouched', async () => {
    expect(await file('a', Buffer.from('{"M\xfcller":1}', 'latin1'))).toMatchObject({
      code: 2,
      err: expect.stringMatching(/not UTF-8/),
    });
    expect(await file('a', '{"schema": "stillplate-document/1",')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/^line 1: .*cut off/),
    });
    const { code, err } = await file(
      'a',
      JSON.stringify(middle((d) => ((d.units = 'x'), (d.paper = 'x'), (d.designs['top-4'].thickness = '4 kg')))),
    );
    expect(code).toBe(2);
    expect(err.split('\n').map((line) => line.split(':')[0])).toEqual(['units', 'paper', 'designs.top-4.thickness']);
  });

  it('an option that is not there is refused with those that are', async () => {
    for (const args of [
      ['check', plate, '--option', 'nix'],
      ['note', plate, '--option', 'nix'],
      ['compare', plate, '--against', 'nix'],
    ]) {
      const { code, err } = await ran(args);
      expect(code).toBe(2);
      expect(err).toMatch(/option --\w+: There is no option “nix”\. Name one of: base, welded\./);
    }
  });

  it('validate tells the faults of every option at once, after the options that can be built', async () => {
    const { code, out, err } = await file(
      'a',
      JSON.stringify(
        middle(
          (d) => (
            (d.options[1].changes = { designs: { underside: { thickness: '8 kg' } } }),
            (d.options[2].changes = { water: { depth: '-1 m' } })
          ),
        ),
      ),
      (path) => ['validate', path],
    );
    expect(code).toBe(2);
    expect(out).toMatch(/The document as it stands: can be built/);
    expect(err.split('\n').map((line) => line.split(':')[0])).toEqual([
      'options.under-8.designs.underside.thickness',
      'options.under-6-clearance.water.depth',
    ]);
  });

  it('a kind of row that is none', async () =>
    expect(await ran(['catalogue', '--kind', 'nuts'])).toMatchObject({
      code: 2,
      err: expect.stringMatching(/“nuts” is no kind of row\. Use one of: materials, sections/),
    }));
});

describe('new', () => {
  it.each(['metric', 'inch'])(
    '%s: writes a document that validates without findings and can be checked, compared and noted',
    { timeout: 120_000 },
    (units) =>
      inFolder(async (folder) => {
        expect(await ran(['new', 'plate.stillplate', '--units', units], folder)).toMatchObject({
          code: 0,
          out: 'Wrote plate.stillplate. Next: stillplate check plate.stillplate',
        });
        const validated = await ran(['validate', 'plate.stillplate'], folder);
        expect(validated).toMatchObject({ code: 0, err: '' });
        expect(validated.out.split('\n')).toEqual([
          'The document as it stands: can be built, no findings',
          'Welded on top: can be built, no findings',
        ]);
        for (const option of ['base', 'welded']) {
          const { code, out } = await ran(
            ['check', 'plate.stillplate', '--option', option, '--json', '--every'],
            folder,
          );
          expect(code).toBe(0);
          const { checks } = JSON.parse(out) as {
            checks: { id: string; verdict: string; utilisation: number | null }[];
          };
          expect(checks.filter(({ verdict }) => verdict === 'fails' || verdict === 'cannot be judged')).toEqual([]);
          expect(checks.filter(({ verdict }) => verdict === 'passes').length).toBeGreaterThan(20);
        }
        expect((await ran(['compare', 'plate.stillplate'], folder)).code).toBe(0);
        expect((await ran(['note', 'plate.stillplate'], folder)).out).toMatch(
          /Wrote note\.pdf: The document as it stands/,
        );
        expect((await readFile(join(folder, 'note.pdf'))).toString('latin1', 0, 5)).toBe('%PDF-');
      }),
  );

  it('never overwrites', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'plate.stillplate'), 'mine');
      const { code, err } = await ran(['new', 'plate.stillplate'], folder);
      expect(code).toBe(2);
      expect(err).toMatch(/plate\.stillplate: There is a file of this name already.*nothing was changed/);
      expect(await readFile(join(folder, 'plate.stillplate'), 'utf8')).toBe('mine');
    }));

  it('refuses another system of units', async () =>
    expect(await ran(['new', 'x', '--units', 'cubits'])).toMatchObject({
      code: 2,
      err: expect.stringMatching(/“cubits” is no system of units/),
    }));
});

describe('exit code 3: a file cannot be written', () => {
  it('no folder, a file in the folder’s place, a folder in the file’s', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'file'), 'mine');
      for (const [args, says] of [
        [['new', 'no/plate.stillplate'], /Cannot write .*no\/plate\.stillplate: the folder does not exist/],
        [['new', 'file/plate.stillplate'], /a part of the path is a file/],
        [['note', plate, '--out', 'no/note.pdf'], /the folder does not exist/],
        [['note', plate, '--out', '.'], /a folder is in its place/],
      ] as const) {
        const { code, err } = await ran(args, folder);
        expect(code).toBe(3);
        expect(err).toMatch(says);
      }
      expect(await readFile(join(folder, 'file'), 'utf8')).toBe('mine');
      expect(await readdir(folder)).toEqual(['file']);
    }));
});

describe('note', () => {
  it('carries the document as it was read, byte for byte, spaces, order and window state as they stood', () =>
    inFolder(async (folder) => {
      const text = `{ "view": {"zoom":2},\r\n${JSON.stringify(startingDocument('metric'), null, 3).slice(1)}  \n`;
      await writeFile(join(folder, 'a.stillplate'), text);
      expect((await ran(['note', 'a.stillplate'], folder)).err).toBe('');
      const { attachments } = readPdf(await readFile(join(folder, 'note.pdf')));
      expect(Buffer.from(attachments.get('document.stillplate.json')!).toString('utf8')).toBe(text);
    }));
});

describe('results', () => {
  it('check --json: the keys of schema stillplate-result/1, finite numbers only, SI', async () => {
    const { out } = await ran(['check', plate, '--json', '--every']);
    const result = JSON.parse(out);
    expect(Object.keys(result)).toEqual([
      'schema',
      'document',
      'documentHash',
      'programVersion',
      'option',
      'basis',
      'quantities',
      'checks',
      'governing',
      'limitStates',
      'findings',
    ]);
    expect(result.schema).toBe('stillplate-result/1');
    for (const row of result.checks) {
      expect(Object.keys(row)).toEqual([
        'id',
        'title',
        'limitState',
        'place',
        'loadCase',
        'direction',
        'demand',
        'capacity',
        'unit',
        'utilisation',
        'verdict',
        'near',
        'reason',
        'sources',
      ]);
      if (row.verdict === 'passes' || row.verdict === 'fails') {
        expect(
          Number.isFinite(row.demand) && Number.isFinite(row.capacity) && Number.isFinite(row.utilisation),
          `${row.id} at ${row.place}`,
        ).toBe(true);
        expect(row.sources.length).toBeGreaterThan(0);
      } else expect(row.reason.length, `${row.id} at ${row.place}`).toBeGreaterThan(3);
    }
    for (const [id, { value }] of Object.entries(result.quantities as Record<string, { value: number | null }>))
      if (value !== null) expect(Number.isFinite(value), id).toBe(true);
    expect(out).not.toMatch(/NaN|undefined|\[object/);
  });

  it('the words say the same as the JSON: hash, masses, what governs', async () => {
    const { quantities, documentHash, limitStates } = JSON.parse((await ran(['check', plate, '--json'])).out);
    const { out } = await ran(['check', plate]);
    expect(out).toContain(documentHash.slice(0, 16));
    expect(out).toContain(`Mass in air: ${quantities['mass.air'].value.toFixed(1)} kg`);
    for (const { name } of limitStates) expect(out).toContain(name);
    expect(out).toMatch(/No approval/);
    expect(out).not.toMatch(/NaN|undefined|\[object/);
  });

  it('the same command gives the same words twice, and under another option another', async () => {
    const first = await ran(['check', plate]);
    expect(await ran(['check', plate])).toEqual(first);
    expect((await ran(['check', plate, '--option', 'welded'])).out).not.toBe(first.out);
  });

  it('compare --json: every option with its result and its change', async () => {
    const { out } = await ran(['compare', plate, '--json', '--against', 'welded']);
    const { schema, against, options } = JSON.parse(out);
    expect([schema, against]).toEqual(['stillplate-result/1', 'welded']);
    expect(options.map(({ id }: { id: string | null }) => id)).toEqual([null, 'welded']);
    expect(options[1].change['mass.air']).toBe(0);
    // 6 mm bolted underneath is heavier than 5 mm welded on top.
    expect(options[0].change['mass.air']).toBeGreaterThan(0);
    expect(options[0].quantities['mass.air'].value - options[1].quantities['mass.air'].value).toBeCloseTo(
      options[0].change['mass.air'],
      9,
    );
  });

  it('compare: holes and bolts are whole numbers; check: one finding is “1 finding”', async () => {
    const { out } = await ran(['compare', plate]);
    const counts = out.split('\n').filter((line) => /^(Holes|Bolts) /.test(line));
    expect(counts).toHaveLength(2);
    for (const line of counts) expect(line).toMatch(/ [1-9]\d* /);
    for (const line of counts) expect(line).not.toContain('.');
    const one = { ...startingDocument('metric') } as Record<string, any>; // eslint-disable-line @typescript-eslint/no-explicit-any -- a test reaches into JSON by hand
    one['basis'] = { ...one['basis'], overrides: [{ factor: 'gamma_M2', value: 1.2, reason: 'client' }] };
    const file = join(folderOfPlate, 'one.stillplate');
    await writeFile(file, JSON.stringify(one));
    expect((await ran(['check', file])).out).toMatch(/^1 finding:\n.*gamma_M2.*below the 1\.25/m);
  });

  it('catalogue: every row with a source or the words “no source”, found by text, in JSON', async () => {
    const { out } = await ran(['catalogue']);
    for (const kind of ['materials', 'sections', 'bolts', 'classes', 'welds', 'plates', 'substances'])
      expect(out).toContain(`${kind}:`);
    expect((await ran(['catalogue', '--kind', 'sections', '--find', '100X100'])).out).toMatch(
      /^sections:\n( {2}\S.*100.*\n?)+$/,
    );
    const json = JSON.parse((await ran(['catalogue', '--kind', 'bolts', '--json'])).out);
    expect(Object.keys(json)).toEqual(['bolts']);
    expect(json.bolts.find(({ id }: { id: string }) => id === 'M12').diameter).toBe(0.012);
    const own = join(folderOfPlate, 'own.stillplate');
    await writeFile(own, JSON.stringify({ ...startingDocument('metric'), catalogue: ownRows() }));
    const listed = await ran(['catalogue', '--document', own, '--find', 'yard']);
    expect(listed.out).toMatch(/^ {2}yard wire .*the document’s own: data sheet$/m);
    const classes = JSON.parse(
      (await ran(['catalogue', '--document', own, '--kind', 'classes', '--json'])).out,
    ).classes;
    expect(classes.at(-1)).toMatchObject({ id: '9.8', ultimate: 900e6 });
    expect((await ran(['catalogue', '--document', 'none'])).err).toMatch(/There is no such file/);
    const nothing = await ran(['catalogue', '--find', 'adamantine']);
    expect(nothing.out).toMatch(/No row/);
  });
});
