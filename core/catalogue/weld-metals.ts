import type { SourceOfRow, WeldMetal } from './rows.ts';

const MPa = 1e6;

const aws: SourceOfRow = { document: 'AWS A5.1/A5.1M', clause: 'tensile strength of the classification', memory: true };
const iso: SourceOfRow = { document: 'EN ISO 2560-A and EN ISO 14341-A', clause: 'strength symbol', memory: true };
const aluminium: SourceOfRow = {
  document: 'EN 1999-1-1',
  edition: '2007',
  clause: 'Table 8.8; shear: Aluminum Design Manual, A.3, 17 ksi',
  memory: true,
};

/** Weld metals by their classification. */
export const weldMetals: readonly WeldMetal[] = [
  {
    id: 'matching',
    title: 'Filler at least as strong as the parts joined',
    family: 'carbon steel',
    ultimate: null,
    source: { document: 'EN 1993-1-8', edition: '2005', clause: '4.2(2)', memory: true },
    cautions: [
      'Ask for the consumable certificate: yield, strength, elongation and toughness not below those of the parts.',
    ],
  },
  {
    id: 'matching stainless',
    title: 'Stainless filler at least as strong as the parts joined',
    family: 'stainless steel',
    ultimate: null,
    source: { document: 'EN 1993-1-4', clause: '6.3', memory: true },
  },
  { id: 'E60XX', title: 'Covered electrode 60 ksi', family: 'carbon steel', ultimate: 414 * MPa, source: aws },
  { id: 'E70XX', title: 'Covered electrode 70 ksi', family: 'carbon steel', ultimate: 482 * MPa, source: aws },
  { id: 'E80XX', title: 'Covered electrode 80 ksi', family: 'carbon steel', ultimate: 552 * MPa, source: aws },
  { id: 'ISO 35', title: 'Filler with strength symbol 35', family: 'carbon steel', ultimate: 440 * MPa, source: iso },
  { id: 'ISO 38', title: 'Filler with strength symbol 38', family: 'carbon steel', ultimate: 470 * MPa, source: iso },
  { id: 'ISO 42', title: 'Filler with strength symbol 42', family: 'carbon steel', ultimate: 500 * MPa, source: iso },
  { id: 'ISO 46', title: 'Filler with strength symbol 46', family: 'carbon steel', ultimate: 530 * MPa, source: iso },
  { id: 'ISO 50', title: 'Filler with strength symbol 50', family: 'carbon steel', ultimate: 560 * MPa, source: iso },
  {
    id: '5356 on 5083',
    title: 'Filler 5356 on EN AW-5083',
    family: 'aluminium',
    ultimate: 240 * MPa,
    shear: 115 * MPa,
    source: aluminium,
  },
  {
    id: '5356 on 6082',
    title: 'Filler 5356 on EN AW-6082',
    family: 'aluminium',
    ultimate: 210 * MPa,
    shear: 115 * MPa,
    source: aluminium,
  },
];
