import type { BoltClass, SourceOfRow } from './rows.ts';

const MPa = 1e6;

const iso898: SourceOfRow = {
  document: 'EN 1993-1-8',
  edition: '2005',
  clause: 'Tables 3.1 and 3.4 (nominal strengths); hardness ISO 898-1 Table 3, from a public copy',
};
const iso3506: SourceOfRow = {
  document: 'ISO 3506-1',
  clause: 'strengths from a public copy; alpha_v EN 1993-1-4, 6.2, from memory',
  memory: true,
};
const aisc: SourceOfRow = {
  document: 'AISC 360',
  edition: '2016',
  clause: 'Table J3.2; tensile strength and hardness of the ASTM standard',
  memory: true,
};

const hard =
  'Harder than 350 HV: hydrogen from cathodic protection can crack it. Do not use it under water with anodes.';
const galling =
  'Stainless threads gall: lubricate, and turn slowly. Preload and slip cannot be counted on without procedure tests.';
const sizes = 'The strength holds up to a size that depends on the edition of ISO 3506-1: ask for the certificate.';

const carbon = { family: 'carbon steel', nominal: null, source: iso898 } as const;
const stainless = {
  family: 'stainless steel',
  alphaV: 0.5,
  alphaVShank: 0.6,
  nominal: null,
  hardnessMax: null,
  source: iso3506,
  cautions: [galling, sizes],
} as const;

/** Property classes of bolts, with the nominal strengths used in design. */
export const boltClasses: readonly BoltClass[] = [
  {
    ...carbon,
    id: '4.6',
    title: 'Property class 4.6',
    yield: 240 * MPa,
    ultimate: 400 * MPa,
    alphaV: 0.6,
    alphaVShank: 0.6,
    hardnessMax: 220,
    cautions: [],
  },
  {
    ...carbon,
    id: '5.6',
    title: 'Property class 5.6',
    yield: 300 * MPa,
    ultimate: 500 * MPa,
    alphaV: 0.6,
    alphaVShank: 0.6,
    hardnessMax: 220,
    cautions: [],
  },
  {
    ...carbon,
    id: '6.8',
    title: 'Property class 6.8',
    yield: 480 * MPa,
    ultimate: 600 * MPa,
    alphaV: 0.5,
    alphaVShank: 0.6,
    hardnessMax: 250,
    cautions: [],
  },
  {
    ...carbon,
    id: '8.8',
    title: 'Property class 8.8',
    yield: 640 * MPa,
    ultimate: 800 * MPa,
    alphaV: 0.6,
    alphaVShank: 0.6,
    hardnessMax: 335,
    cautions: [],
  },
  {
    ...carbon,
    id: '10.9',
    title: 'Property class 10.9',
    yield: 900 * MPa,
    ultimate: 1000 * MPa,
    alphaV: 0.5,
    alphaVShank: 0.6,
    hardnessMax: 380,
    cautions: [hard],
  },
  { ...stainless, id: 'A4-50', title: 'Stainless steel A4, class 50', yield: 210 * MPa, ultimate: 500 * MPa },
  { ...stainless, id: 'A4-70', title: 'Stainless steel A4, class 70', yield: 450 * MPa, ultimate: 700 * MPa },
  { ...stainless, id: 'A4-80', title: 'Stainless steel A4, class 80', yield: 600 * MPa, ultimate: 800 * MPa },
  {
    id: 'ASTM A307',
    title: 'Carbon steel bolt ASTM A307 grade A',
    family: 'carbon steel',
    yield: null,
    ultimate: 414 * MPa,
    alphaV: null,
    alphaVShank: null,
    nominal: { tension: 310 * MPa, shearThreads: 186 * MPa, shearShank: 186 * MPa },
    hardnessMax: 240,
    source: aisc,
    cautions: ['The standard sets no yield strength: preload cannot be counted on.'],
  },
  {
    id: 'ASTM A325 (F3125)',
    title: 'High-strength bolt ASTM F3125 grade A325',
    also: ['A325', 'ASTM A325', 'ASTM F3125 grade A325'],
    family: 'carbon steel',
    yield: 634 * MPa,
    ultimate: 827 * MPa,
    alphaV: null,
    alphaVShank: null,
    nominal: { tension: 620 * MPa, shearThreads: 372 * MPa, shearShank: 469 * MPa },
    hardnessMax: 336,
    source: aisc,
    cautions: [
      'Structural bolts have a larger (heavy) head than the row for the size says: the smaller head is on the safe side.',
    ],
  },
];
