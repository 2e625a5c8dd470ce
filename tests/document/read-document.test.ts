import { describe, expect, it } from 'vitest';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { middle, middleText, type Json } from './middle.ts';
import { refused } from './refused.ts';

const read = (document: object) => readDocument(readDocumentText(JSON.stringify(document)));

describe('a field that is wrong', () => {
  const design = (field: string, value: unknown) => middle((d) => void (d.designs['underside'][field] = value));

  it.each([
    [
      'a quantity that is missing',
      design('thickness', undefined),
      'designs.underside.thickness',
      /^This field is missing$/,
      /a length in quotation marks with its unit: 10 mm or 3\/8 in/,
    ],
    [
      'a bare number',
      design('thickness', 6),
      'designs.underside.thickness',
      /^6 has no unit, the field needs a length$/,
      /10 mm or 3\/8 in/,
    ],
    [
      'a quantity without unit',
      design('thickness', '6'),
      'designs.underside.thickness',
      /“6” has no unit/,
      /Write a length with its unit/,
    ],
    [
      'the wrong kind',
      design('thickness', '6 kg'),
      'designs.underside.thickness',
      /“6 kg” is a mass, the field needs a length/,
      /Write a length/,
    ],
    [
      'negative',
      design('thickness', '-6 mm'),
      'designs.underside.thickness',
      /“-6 mm” must be more than zero/,
      /above zero/,
    ],
    ['zero', design('thickness', '0 mm'), 'designs.underside.thickness', /“0 mm” must be more than zero/, /above zero/],
    [
      '1e400',
      design('thickness', '1e400 mm'),
      'designs.underside.thickness',
      /“1e400 mm” is not a finite number/,
      /smaller number/,
    ],
    [
      'NaN',
      design('thickness', 'NaN mm'),
      'designs.underside.thickness',
      /“NaN mm” does not begin with a number/,
      /Write a length/,
    ],
    ['null', design('thickness', null), 'designs.underside.thickness', /null is no quantity/, /Write a length/],
    [
      'a group that is missing',
      design('overlap', undefined),
      'designs.underside.overlap',
      /This field is missing/,
      /group of fields in { }/,
    ],
    [
      'a text in place of a group',
      design('fixing', 'bolted'),
      'designs.underside.fixing',
      /“bolted” is not a group of fields/,
      /{ }/,
    ],
    [
      'a wrong kind of fixing',
      design('fixing', { kind: 'glued' }),
      'designs.underside.fixing.kind',
      /“glued” is not one of the kinds allowed/,
      /"bolted", "welded"/,
    ],
    [
      'no kind of fixing',
      design('fixing', {}),
      'designs.underside.fixing.kind',
      /This field is missing/,
      /"bolted", "welded"/,
    ],
    [
      'a word not allowed',
      design('side', 'left'),
      'designs.underside.side',
      /“left” is not one of the values allowed/,
      /"topside", "underside"/,
    ],
    [
      'a list in place of text',
      design('material', ['S355']),
      'designs.underside.material',
      /\["S355"\] is not a text/,
      /quotation marks/,
    ],
    [
      'a name of blanks',
      middle((d) => void (d.project.name = '  ')),
      'project.name',
      /cannot be used here/,
      /more than blanks/,
    ],
    [
      'an empty name',
      middle((d) => void (d.project.name = '')),
      'project.name',
      /^The text is empty$/,
      /Write something/,
    ],
    [
      'a control character, which could reach a terminal',
      middle((d) => void (d.project.name = 'A\u001b[2J')),
      'project.name',
      /cannot be used/,
      /without control characters/,
    ],
    [
      'a name of 300',
      middle((d) => void (d.project.name = 'x'.repeat(300))),
      'project.name',
      /300 characters, the most is 200/,
      /Shorten/,
    ],
    [
      'a date of another form',
      middle((d) => void (d.project.date = '20.11.2026')),
      'project.date',
      /“20.11.2026” is no date/,
      /year-month-day/,
    ],
    [
      '30 February',
      middle((d) => void (d.project.date = '2026-02-30')),
      'project.date',
      /“2026-02-30” is no date/,
      /year-month-day/,
    ],
    [
      'half a tube',
      middle((d) => void (d.grid.mainTubes.count = 2.5)),
      'grid.mainTubes.count',
      /2.5 is not a whole number/,
      /whole number/,
    ],
    [
      'one tube',
      middle((d) => void (d.grid.mainTubes.count = 1)),
      'grid.mainTubes.count',
      /1 is too small/,
      /2 or more/,
    ],
    [
      'a million bays',
      middle((d) => void ([d.grid.mainTubes.count, d.grid.crossTubes.count] = [2, 1_000_001])),
      'grid.crossTubes.count',
      /1000001 is too large/,
      /The most is 60/,
    ],
    [
      'a number as text',
      middle((d) => void (d.loads.service.cyclesPerYear = '4.1e6')),
      'loads.service.cyclesPerYear',
      /“4.1e6” is not a number/,
      /without quotation marks/,
    ],
    [
      'yes for true',
      middle((d) => void (d.protection.cathodic = 'yes')),
      'protection.cathodic',
      /“yes” is not true or false/,
      /Write true or false/,
    ],
    [
      'an empty list',
      middle((d) => void (d.loads.service.includes = [])),
      'loads.service.includes',
      /0 entries, it needs 1 or more/,
      /Add/,
    ],
    [
      'a temperature below absolute zero',
      middle((d) => void (d.water.temperature = '-300 degC')),
      'water.temperature',
      /below absolute zero/,
      /above it/,
    ],
    [
      'an id with a full stop',
      middle((d) => void (d.designs['a.b'] = d.designs['top-4'])),
      'designs.a.b',
      /“a.b” cannot be used/,
      /letters and digits/,
    ],
  ] as const)('%s', (_, document, path, what, mend) => {
    const { all } = refused(document);
    expect(all).toHaveLength(1);
    expect(all[0]!.where).toMatchObject({ path });
    expect(all[0]!.where!['field']).toBeTruthy();
    expect(all[0]!.what).toMatch(what);
    expect(all[0]!.mend).toMatch(mend);
  });

  it('the words of the field stand beside its path', () => {
    expect(refused(middle((d) => void (d.grid.mainTubes.spacing = '5 kg'))).where).toEqual({
      path: 'grid.mainTubes.spacing',
      field: 'grid, main tubes, spacing',
    });
  });

  it('all of them are told at once', () => {
    const { all, message } = refused(
      middle((d) => {
        d.units = 'feet';
        delete d.water;
        d.colour = 'red';
        d.designs['underside'].thickness = '6';
        d.designs['top-4'].fixing.throat = '3 kg';
        d.designs['top-4'].fixing.bolt = 'M12';
        d.grid.suspension.attachments[2].x = 1660;
        d.options[1].changes.colour = 'red';
      }),
    );
    const paths = all.map(({ where }) => where!['path']);
    expect(paths.sort()).toEqual(['colour', 'designs.top-4.fixing.bolt', 'designs.top-4.fixing.throat', 'designs.underside.thickness', 'grid.suspension.attachments.2.x', 'options.1.changes.colour', 'units', 'water'].sort()); // prettier-ignore
    expect(message.split('\n')).toHaveLength(8);
  });
});

describe('a quantity given twice', () => {
  const thickness = (value: unknown) => middle((d) => void (d.designs['underside'].thickness = value));

  it('is read when both agree, and shows what was typed', () => {
    expect(read(thickness({ si: 0.009525, typed: '3/8 in' })).designs['underside']!.thickness).toEqual({
      si: expect.closeTo(0.009525, 15),
      typed: '3/8 in',
    });
    expect(read(thickness({ typed: '6 mm' })).designs['underside']!.thickness.typed).toBe('6 mm');
  });

  it('names both when they disagree', () =>
    expect(refused(thickness({ si: 0.06, typed: '6 mm' })).what).toBe('si 0.06 m and typed “6 mm” (0.006 m) disagree'));
  it('even where the typed value is zero', () =>
    expect(
      refused(middle((d) => void (d.grid.suspension.attachments[0].y = { si: 1e-12, typed: '0 mm' }))).what,
    ).toMatch(/disagree/));
  it('takes no si that is text, no si alone, and no third field', () => {
    expect(refused(thickness({ si: '0.006', typed: '6 mm' })).what).toMatch(/si “0.006” m and typed/);
    expect(refused(thickness({ si: 0.006 })).what).toMatch(/no quantity/);
    expect(refused(thickness({ si: 0.006, typed: '6 mm', note: 1 })).what).toMatch(/no quantity/);
  });
});

describe('what fields say about each other', () => {
  it.each([
    [
      'two options of one id',
      (d: Json) => d.options.push(d.options[0]),
      'options',
      /Two options have the id “top-4-welded”/,
    ],
    [
      'two attachments of one id',
      (d: Json) => (d.grid.suspension.attachments[1].id = 'S1'),
      'grid.suspension.attachments',
      /“S1” is given twice/,
    ],
    [
      'two pad eyes of one id',
      (d: Json) => (d.grid.padEyes.points[1].id = 'L1'),
      'grid.padEyes.points',
      /“L1” is given twice/,
    ],
    [
      'two deck supports of one id',
      (d: Json) => (d.loads.deck.supports[1].id = 'D1'),
      'loads.deck.supports',
      /“D1” is given twice/,
    ],
    [
      'an unknown base',
      (d: Json) => (d.options[0].base = 'nix'),
      'options.0.base',
      /“top-4-welded” builds on “nix”, which is not among the options/,
    ],
    [
      'an option as its own base',
      (d: Json) => (d.options[0].base = 'top-4-welded'),
      'options.0.base',
      /circle: top-4-welded → top-4-welded/,
    ],
    [
      'an option called base',
      (d: Json) => (d.options[0].id = 'base'),
      'options.0.id',
      /name of the document as it stands/,
    ],
    ['an unknown choice', (d: Json) => (d.chosen = 'nix'), 'chosen', /“nix” is not among the options/],
    [
      'tubes given twice',
      (d: Json) => (d.grid.mainTubes.tubes = [{ at: '0 m' }, { at: '1 m' }]),
      'grid.mainTubes',
      /given twice/,
    ],
    [
      'tubes not given',
      (d: Json) => (delete d.grid.mainTubes.count, delete d.grid.mainTubes.spacing),
      'grid.mainTubes',
      /The tubes are not given/,
    ],
    ['a count without spacing', (d: Json) => delete d.grid.mainTubes.spacing, 'grid.mainTubes', /“spacing” is missing/],
    [
      'no density of the water',
      (d: Json) => delete d.water.salinity,
      'water',
      /neither a density nor salinity and temperature/,
    ],
    ['two densities of the water', (d: Json) => (d.water.density = '1025 kg/m^3'), 'water', /a density and a salinity/],
    [
      'a bridle without apex',
      (d: Json) => (d.grid.suspension.kind = 'bridle'),
      'grid.suspension.apex',
      /height of its apex/,
    ],
    [
      'a line of four',
      (d: Json) => (d.grid.suspension.kind = 'line'),
      'grid.suspension',
      /one attachment, 4 are given/,
    ],
    [
      'an intermittent weld without its run',
      (d: Json) => (d.designs['top-4'].fixing.pattern = 'intermittent'),
      'designs.top-4.fixing',
      /length of each run and of the gap/,
    ],
  ])('%s', (_, change, path, what) => {
    const refusal = refused(middle(change));
    expect(refusal.all).toHaveLength(1);
    expect(refusal.where['path']).toBe(path);
    expect(refusal.what).toMatch(what);
    expect(refusal.mend.length).toBeGreaterThan(10);
  });

  it('a circle of two is told at both', () => {
    const { all } = refused(middle((d) => ((d.options[0].base = 'under-8'), (d.options[1].base = 'top-4-welded'))));
    expect(all.map(({ what }) => what)).toEqual([
      'The bases of option “top-4-welded” go in a circle: top-4-welded → under-8 → top-4-welded',
      'The bases of option “under-8” go in a circle: under-8 → top-4-welded → under-8',
    ]);
  });
});

describe('what fields say about each other is told beside what is wrong elsewhere', () => {
  const paths = (change: (d: Json) => void) =>
    refused(middle(change))
      .all.map(({ where }) => where!['path'])
      .sort();

  it('one rule of each group, with a wrong field beside it in the same group', () =>
    expect(
      paths((d) => {
        delete d.water.salinity;
        d.water.depth = '3 kg';
        delete d.grid.mainTubes.spacing;
        d.grid.mainTubes.overhang = 5;
        d.grid.suspension.kind = 'bridle';
        d.grid.suspension.attachments[0].x = '1 kg';
        d.grid.suspension.attachments[1].id = 'S1';
        d.grid.padEyes.points[1].id = 'L1';
        d.grid.padEyes.apex = 'high';
        d.designs['top-4'].fixing.pattern = 'intermittent';
        d.designs['top-4'].thickness = '-1 mm';
        d.options[0].base = 'nix';
        d.options[0].title = 7;
        d.chosen = 'nix';
        d.colour = 'red';
      }),
    ).toEqual(
      [
        'water',
        'water.depth',
        'grid.mainTubes',
        'grid.mainTubes.overhang',
        'grid.suspension.apex',
        'grid.suspension.attachments.0.x',
        'grid.suspension.attachments',
        'grid.padEyes.points',
        'grid.padEyes.apex',
        'designs.top-4.fixing',
        'designs.top-4.thickness',
        'options.0.base',
        'options.0.title',
        'chosen',
        'colour',
      ].sort(),
    ));

  it('but not where a field that the rule reads is itself wrong', () => {
    expect(paths((d) => ((d.water.salinity = 'much'), delete d.water.temperature))).toEqual(['water.salinity']);
    expect(paths((d) => ((d.grid.suspension.kind = 'bridle'), (d.grid.suspension.apex = '3 kg')))).toEqual([
      'grid.suspension.apex',
    ]);
    expect(paths((d) => ((d.options = 5), (d.chosen = 'nix')))).toEqual(['options']);
  });

  it('two options of one id do not hide a choice that is not there', () =>
    expect(paths((d) => (d.options.push(d.options[0]), (d.chosen = 'nix')))).toEqual(['chosen', 'options']));
});

describe('the state of the window', () => {
  const view = (value: unknown) => middle((d) => void (d.view = value));

  it('is kept as it is, whatever is in it', () => {
    const state = { camera: { from: [1, 2, 3.5], up: 'z' }, open: ['Panels', null], dark: true };
    expect(read(view(state)).view).toEqual(state);
    expect(read(middle())).not.toHaveProperty('view');
  });

  it('is a group of plain JSON of bounded size', () => {
    expect(refused(view('plan')).where['path']).toBe('view');
    const large = refused(view({ text: 'x'.repeat(100_001) }));
    expect(large.what).toMatch(/The view has 1000\d\d characters, the limit is 100000/);
    expect(large.mend).toMatch(/nothing that is computed is in it/);
    expect(refused(middleText.replace('"chosen"', '"view": { "zoom": 1e400 }, "chosen"')).where['path']).toMatch(
      /^view/,
    );
  });

  it('cannot be changed by an option', () =>
    expect(refused(middle((d) => void (d.options[0].changes.view = {}))).where['path']).toBe('options.0.changes.view'));
});

describe('names', () => {
  it.each([
    'Plattform Nord-Süd',
    'Плита 3',
    '反作用板',
    '리액션 플레이트',
    'لوحة',
    'पैनल',
    'แผง',
    'Tấm đỡ',
    'é'.normalize('NFD') + 'tai',
    "plate's edge",
  ])('“%s” may name a project, a design and an option', (name) => {
    const document = read(
      middle((d) => {
        d.project.name = name;
        d.designs[name] = d.designs['top-4'];
        d.panels.A1 = name;
        d.options[0].id = name;
        d.chosen = name;
      }),
    );
    expect(document.project.name).toBe(name);
    expect(Object.keys(document.designs)).toContain(name);
    expect(document.chosen).toBe(name);
  });
});

describe('a file that is no document', () => {
  it.each([
    ['an empty file', '', /The file is empty/, {}],
    ['cut off between fields', middleText.slice(0, 1500), /ends in the middle: its JSON is cut off/, { line: 30 }],
    ['cut off in a text', middleText.slice(0, middleText.indexOf('Harrow') + 3), /cut off/, { line: 4 }],
    [
      'no JSON',
      middleText.replace('"units": "metric"', '"units": metric'),
      /“metric” stands where a value is expected/,
      { line: 13, path: 'units' },
    ],
    [
      'NaN',
      middleText.replace('4.1e6', 'NaN'),
      /“NaN” stands where a value is expected/,
      { path: 'loads.service.cyclesPerYear' },
    ],
    [
      'a comma too many',
      middleText.replace('"chosen": null', '"chosen": null,'),
      /“}” stands where a name in quotation marks is expected/,
      {},
    ],
    ['something after the end', `${middleText}x`, /“x” stands where the end of the file is expected/, {}],
    ['a comment', `// plate\n${middleText}`, /\/\/ plate/, { line: 1 }],
    [
      'the same name twice',
      middleText.replace('"top-4": {', '"underside": {'),
      /“underside” is given twice in the same object/,
      { path: 'designs.underside' },
    ],
    ['a list', '[]', /no JSON object/, {}],
    [
      '__proto__',
      middleText.replace('"project": {', '"project": { "__proto__": { "x": 1 },'),
      /“__proto__”/,
      { path: 'project.__proto__' },
    ],
    [
      '__proto__ at the top',
      middleText.replace('"project": {', '"__proto__": {}, "project": {'),
      /“__proto__”/,
      { path: '__proto__' },
    ],
    ...(
      [
        ['a panel', '"panels": {', 'panels'],
        ['a design', '"designs": {', 'designs'],
        ['an option’s changes', '"changes": {', 'options.0.changes'],
      ] as const
    ).map(([what, opens, path]): [string, string, RegExp, { path: string }] => [
      `__proto__ as ${what}`,
      middleText.replace(opens, `${opens} "__proto__": null,`),
      /“__proto__”/,
      { path: `${path}.__proto__` },
    ]),
    [
      '__proto__ in escapes',
      middleText.replace('"project": {', '"\\u005f_proto__": {}, "project": {'),
      /“__proto__”/,
      { path: '__proto__' },
    ],
    [
      'constructor',
      middleText.replace('"project": {', '"project": { "constructor": 1,'),
      /“constructor”/,
      { path: 'project.constructor' },
    ],
    ['half a character', middleText.replace('HD-014', '\\ud800'), /lone surrogate/, { path: 'project.number' }],
    ['nested 50 deep', '{"a":'.repeat(50) + '1' + '}'.repeat(50), /deeper than 40 levels/, { line: 1 }],
    ['nested a million deep', '['.repeat(1e6) + ']'.repeat(1e6), /deeper than 40 levels/, { line: 1 }],
    ['no schema', '{}', /names no schema/, { path: 'schema' }],
    ['another schema', '{"schema": "plate/1"}', /“plate\/1” is not one of Stillplate's/, { path: 'schema' }],
    ['version 0', '{"schema": "stillplate-document/0"}', /version 0 was never released/, { path: 'schema' }],
  ])('%s', (_, text, what, where) => {
    const refusal = refused(text);
    expect(refusal.what).toMatch(what);
    expect(refusal.where).toMatchObject(where);
    expect(refusal.mend.length).toBeGreaterThan(10);
  });

  it('a file of a newer schema is not even looked into, whatever else is in it', () => {
    const refusal = refused(middle((d) => ((d.schema = 'stillplate-document/7'), (d.units = 'leagues'))));
    expect(refusal.all).toHaveLength(1);
    expect(refusal.message).toMatch(
      /schema version 7, this program reads up to 1\. Open it with a newer Stillplate; the file was not touched\./,
    );
  });

  it('a number that JSON reads as infinite', () => {
    const refusal = refused(middleText.replace('4.1e6', '1e400'));
    expect(refusal.where['path']).toBe('loads.service.cyclesPerYear');
    expect(refusal.what).toMatch(/too large to be read/);
  });

  it('a file too long', () =>
    expect(refused('x'.repeat(20_000_001)).what).toMatch(/20000001 characters, the limit is 20000000/));
  it('a byte order mark is no fault', () =>
    expect(readDocumentText(`\ufeff${middleText}`)).toEqual(JSON.parse(middleText)));
});
