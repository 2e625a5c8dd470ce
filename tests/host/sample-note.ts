import type { Box } from '../../core/derive/box.ts';
import type { EquationBlock, Note, Shape } from '../../core/note/note.ts';

const symbol = (text: string): Box => ({ kind: 'symbol', text });
const text = (words: string): Box => ({ kind: 'text', text: words });
const number = (digits: string): Box => ({ kind: 'number', text: digits });
const operator = (sign: string): Box => ({ kind: 'operator', text: sign });
const row = (...boxes: Box[]): Box => ({ kind: 'row', boxes });
const over = (top: Box, under: Box): Box => ({ kind: 'fraction', over: top, under });
const root = (body: Box): Box => ({ kind: 'root', body });
const round = (body: Box): Box => ({ kind: 'bracket', body, shape: 'round' });
const bar = (body: Box): Box => ({ kind: 'bracket', body, shape: 'bar' });
const sub = (base: string, low: string): Box => ({ kind: 'script', base: symbol(base), sub: text(low) });
const power = (base: Box, high: string): Box => ({ kind: 'script', base, sup: number(high) });
const amount = (digits: string, unit: string): Box => row(number(digits), text(`\u00a0${unit}`));
export const boxes = { symbol, text, number, operator, row, over, root, round, bar, sub, power, amount };

const boltTension: EquationBlock = {
  kind: 'equation',
  meaning: 'Tension resistance of one bolt',
  source: 'EN 1993-1-8:2005, Table 3.4',
  left: sub('F', 't,Rd'),
  formula: over(row(sub('k', '2'), text('\u2009'), sub('f', 'ub'), text('\u2009'), sub('A', 's')), sub('γ', 'M2')),
  substituted: over(
    row(number('0.9'), operator('·'), amount('800', 'MPa'), operator('·'), amount('84.3', 'mm²')),
    number('1.25'),
  ),
  result: amount('48.6', 'kN'),
  plain: 'F_t,Rd = k_2 f_ub A_s / γ_M2 = 0.9 · 800 MPa · 84.3 mm² / 1.25 = 48.6 kN',
};

const equivalentStress: EquationBlock = {
  kind: 'equation',
  meaning: 'Equivalent stress in the panel at the edge of the vent hole',
  left: sub('σ', 'v'),
  formula: root(
    row(power(sub('σ', 'x'), '2'), operator('+'), power(sub('σ', 'y'), '2'), operator('-'), sub('σ', 'x'), text('\u2009'), sub('σ', 'y'), operator('+'), number('3'), operator('·'), power(sub('τ', 'xy'), '2')),
  ),
  substituted: root(
    row(
      power(round(amount('141.2', 'MPa')), '2'), operator('+'), power(round(amount('38.7', 'MPa')), '2'), operator('-'),
      amount('141.2', 'MPa'), operator('·'), amount('38.7', 'MPa'), operator('+'), number('3'), operator('·'), power(round(amount('22.9', 'MPa')), '2'),
    ),
  ),
  result: amount('132.4', 'MPa'),
  plain: 'σ_v = √(σ_x² + σ_y² − σ_x σ_y + 3 τ_xy²) = 132.4 MPa',
}; // prettier-ignore

const slenderness: EquationBlock = {
  kind: 'equation',
  meaning: 'Reduction for plate buckling',
  left: symbol('ρ'),
  formula: {
    kind: 'cases',
    rows: [
      { value: number('1'), when: row(sub('λ', 'p'), operator('≤'), number('0.673')) },
      {
        value: over(row(sub('λ', 'p'), operator('-'), number('0.22')), power(sub('λ', 'p'), '2')),
        when: text('otherwise'),
      },
    ],
  },
  substituted: over(row(number('0.91'), operator('-'), number('0.22')), power(number('0.91'), '2')),
  result: number('0.833'),
  plain: 'ρ = 1 if λ_p ≤ 0.673, (λ_p − 0.22) / λ_p² otherwise = 0.833',
};

const longTerm = (i: number): Box =>
  row(number((12.5 + i).toFixed(2)), operator('·'), amount((0.35 + i / 10).toFixed(3), 'm'), operator('·'), round(row(amount('1025', 'kg/m³'), operator('+'), amount(String(40 + i), 'kg/m³')))); // prettier-ignore
const longSum: EquationBlock = {
  kind: 'equation',
  meaning: 'Sum over the bays, long on purpose: it breaks before its signs',
  left: sub('Δm', 'tot'),
  formula: row(text('∑'), text('\u2009'), sub('ρ', 'i'), text('\u2009'), sub('c', 'i'), text('\u2009'), sub('b', 'i'), operator('+'), bar(row(sub('m', '0'), operator('-'), sub('m', '1')))),
  substituted: row(...Array.from({ length: 9 }, (_, i) => (i ? [operator('+'), longTerm(i)] : [longTerm(i)])).flat()),
  result: row(number('1.234'), text('·'), power(number('10'), '5'), text('\u00a0kg')),
  plain: 'Δm_tot = ∑ ρ_i c_i b_i + |m_0 − m_1| = 1.234·10⁵ kg',
}; // prettier-ignore

const wideFraction: EquationBlock = {
  kind: 'equation',
  meaning: 'A fraction wider than the column is laid open',
  left: symbol('Ω'),
  formula: power(round(over(symbol('a'), row(symbol('b'), operator('+'), over(symbol('c'), symbol('d'))))), '3'),
  substituted: over(
    row(...Array.from({ length: 14 }, (_, i) => [...(i ? [operator('+')] : []), amount(`${i + 1}.75`, 'kN·m')]).flat()),
    row(amount('3.20', 'm'), operator('·'), round(row(amount('1.5', 'm'), operator('+'), amount('0.25', 'm')))),
  ),
  result: amount('20.4', 'kN'),
  plain: 'Ω = (a / (b + c / d))³ = 20.4 kN',
};

const rect = (x: number, y: number, w: number, h: number): readonly (readonly [number, number])[] => [
  [x, y], [x + w, y], [x + w, y + h], [x, y + h],
]; // prettier-ignore
const ring = (x: number, y: number, r: number) =>
  Array.from(
    { length: 40 },
    (_, i) => [x + r * Math.cos((i * Math.PI) / 20), y + r * Math.sin((i * Math.PI) / 20)] as const,
  );

const plan: readonly Shape[] = [
  { kind: 'path', rings: [rect(0.1, 0.1, 2.3, 1.5), ring(1.25, 0.85, 0.16)], closed: true, pen: 'thin', fill: 'panel' },
  ...[0, 1.52].map((y): Shape => ({ kind: 'path', rings: [rect(0, y, 2.5, 0.18)], closed: true, pen: 'outline', fill: 'tube' })),
  ...[0, 1.14, 2.32].map((x): Shape => ({ kind: 'path', rings: [rect(x, 0.18, 0.18, 1.34)], closed: true, pen: 'outline', fill: 'tube' })),
  { kind: 'path', rings: [[[1.23, -0.12], [1.23, 1.82]]], closed: false, pen: 'centre' },
  { kind: 'path', rings: [[[0.1, 0.85], [2.4, 0.85]]], closed: false, pen: 'hidden' },
  { kind: 'circle', at: [0.7, 0.5], radius: 0.09, pen: 'accent', fill: 'accent' },
  { kind: 'label', at: [0.68, 1.15], text: 'P1', size: 10, anchor: 'middle' },
  { kind: 'label', at: [1.82, 1.15], text: 'P2', size: 10, anchor: 'middle' },
  { kind: 'label', at: [2.41, 0.85], text: 'cross tube', size: 7.5, anchor: 'middle', turn: 90 },
  { kind: 'dimension', from: [0, 0], to: [2.5, 0], offset: 30, text: '2500' },
  { kind: 'dimension', from: [0, 0], to: [0.18, 0], offset: 14, text: '180' },
  { kind: 'dimension', from: [0.18, 0], to: [1.14, 0], offset: 14, text: '960' },
  { kind: 'dimension', from: [2.5, 0], to: [2.5, 1.7], offset: 18, text: '1700' },
  { kind: 'arrow', from: [1.8, 0.35], to: [2.2, 0.6], pen: 'accent' },
  { kind: 'arrow', from: [0.3, 1.95], to: [0.68, 1.3], pen: 'thin' },
  { kind: 'label', at: [0.28, 1.98], text: 'panel 10 mm, overlap 50 mm', size: 8, anchor: 'start' },
]; // prettier-ignore
const section: readonly Shape[] = [
  {
    kind: 'path',
    rings: [rect(0, 0, 180, 180), rect(10, 10, 160, 160)],
    closed: true,
    pen: 'outline',
    fill: 'section',
  },
  { kind: 'path', rings: [rect(120, 180, 240, 10)], closed: true, pen: 'outline', fill: 'section' },
  { kind: 'circle', at: [150, 185], radius: 4, pen: 'outline', fill: 'paper' },
  { kind: 'dimension', from: [0, 0], to: [180, 0], offset: 16, text: '180' },
  { kind: 'dimension', from: [120, 190], to: [180, 190], offset: 16, text: '60 overlap' },
  { kind: 'label', at: [250, 200], text: 't = 10 mm', size: 8, anchor: 'start' },
];

export const attachment = new TextEncoder().encode(
  JSON.stringify({ grid: 'Fjordlys', thickness: '10 mm', note: 'Ærø' }),
);

const rows = Array.from({ length: 64 }, (_, i) => [
  `B${i + 1}`,
  i % 7 === 3 ? 'Long check name that has to be wrapped because its column is narrow, row by row' : 'Bolt in tension',
  { box: sub('F', 't,Rd') },
  (31.5 + i * 0.731).toFixed(1),
  (48.6).toFixed(1),
  ((31.5 + i * 0.731) / 48.6).toFixed(2),
]);

/** An invented note with every kind of block, every pen and fill, and text in several scripts. */
export const sampleNote: Note = {
  title: 'Fjordlys reaction plate: infill panels of option B & fixings',
  stamp: 'NOT ISSUED',
  paper: 'A4',
  titleBlock: [
    ['Project', 'Fjordlys buoy, lower body'],
    ['Option', 'B: bolted panels, 10 mm'],
    ['Design basis', 'EN 1993, partial factors'],
    ['Vessel', 'MV Ærø Бриз'],
    ['Units', 'mm, kN, MPa'],
    ['Revision', '3 of 2026-03-14'],
  ],
  documentHash: '9f2b5c0d7e1a4836b7c9d0e1f2a3b4c5d6e7f8091a2b3c4d5e6f708192a3b4c5',
  programVersion: '0.1.0',
  date: '2026-03-14',
  language: 'en-GB',
  sections: [
    {
      title: 'Summary', numbered: false,
      blocks: [
        { kind: 'paragraph', tone: 'loud', text: '2 checks fail, 1 cannot be judged. Governing: bolt in tension at B42, utilisation 1.26.' },
        { kind: 'paragraph', text: 'The panels close twelve bays of the submerged grid. The load is the stated pressure; it includes added mass at the closed area. Numbers are amplitudes. The text of this paragraph runs over several lines so that its breaks and its spacing can be looked at, with units such as 3.2 kN/m² and a diameter ⌀ 14 mm in between.' },
        { kind: 'list', items: ['Panels P1 to P12 are flat plates, topside, bolted.', 'Main tubes are flooded; cross tubes are sealed. A second sentence makes this item long enough to need another line of the list.', 'Each bolt carries its share with prying.'] },
        { kind: 'list', tone: 'caution', items: ['A suspension line cannot push: see load case 3.', 'Weld throats were not inspected.'] },
        { kind: 'paragraph', tone: 'caution', text: 'Local codes and a licensed engineer decide. This note supports that judgement and does not replace it.' },
        { kind: 'paragraph', tone: 'small', text: 'Names as typed: Бухта Северная, Ναύς Ερμής, السفينة الزرقاء, 海洋平台, \u{1F6A2}.' },
      ],
    },
    {
      title: 'Strength of the fixings',
      blocks: [{ kind: 'paragraph', text: 'Each step is printed as it was evaluated.' }],
      sections: [
        { title: 'Bolt in tension', blocks: [boltTension, { ...boltTension, meaning: 'Demand on the worst bolt', source: undefined, left: sub('F', 't'), formula: undefined, substituted: undefined, result: amount('61.2', 'kN'), plain: 'F_t = 61.2 kN' }, { kind: 'paragraph', tone: 'loud', text: 'FAILS: 61.2 kN > 48.6 kN, utilisation 1.26' }] },
        { title: 'Panel', blocks: [equivalentStress, slenderness, longSum, wideFraction] },
      ],
    },
    {
      title: 'Checks of every bolt',
      blocks: [
        {
          kind: 'table', caption: 'Bolts in tension, one row a bolt',
          columns: [{ title: 'Bolt', width: 1 }, { title: 'Check', width: 3 }, { title: 'Symbol', width: 1 }, { title: 'Demand kN', width: 1.2, align: 'right' }, { title: 'Capacity kN', width: 1.2, align: 'right' }, { title: 'Utilisation', width: 1.2, align: 'right' }],
          rows, loud: rows.flatMap((_, i) => (i >= 24 && i < 27 ? [i] : [])),
        },
        { kind: 'table', caption: 'Findings', columns: [{ title: 'Place', width: 1 }, { title: 'Finding', width: 3 }], rows: [] },
      ],
    },
    {
      title: 'Drawings', startsPage: true,
      blocks: [
        { kind: 'paragraph', text: 'Dimensions in millimetres.' },
        { kind: 'figure', caption: 'Plan of the grid with panels P1 and P2', alt: 'Two main tubes, three cross tubes, two panels with a vent hole', box: { x: 0, y: -0.12, width: 2.5, height: 2.1 }, widthShare: 0.8, shapes: plan },
        { kind: 'figure', caption: 'Section through tube and panel at the bolt line; the overlap is measured from the tube’s outer face and does not include the corner radius, which the supplier gives', alt: 'Hollow section, plate on top with bolt hole', box: { x: 0, y: 0, width: 360, height: 210 }, widthShare: 0.55, shapes: section },
      ],
    },
    { title: 'Sign-off', blocks: [{ kind: 'paragraph', text: 'Signed by a licensed engineer after their own review.' }, { kind: 'signOff', roles: ['Prepared', 'Checked', 'Approved'], fields: ['Name', 'Licence', 'Date', 'Signature'] }] },
  ],
  attachments: [
    { name: 'fjordlys.stillplate.json', description: 'The document as it was judged', mime: 'application/json', bytes: attachment, relationship: 'Source' },
    { name: 'tank record.csv', description: 'Record of the tank test', mime: 'text/csv', bytes: new TextEncoder().encode('t,F\n0,1\n'), relationship: 'Data' },
  ],
}; // prettier-ignore
