import { documentSchema, type PlateDocument } from '../../core/document/schema.ts';

type Raw = Record<string, unknown>;

/** Lays `over` on `base`, object by object; null takes away. */
function merged(base: unknown, over: unknown): unknown {
  const isObject = (v: unknown): v is Raw => typeof v === 'object' && v !== null && !Array.isArray(v);
  if (!isObject(base) || !isObject(over)) return over;
  const result: Raw = { ...base };
  for (const [key, value] of Object.entries(over)) {
    if (value === null) delete result[key];
    else result[key] = key in result ? merged(result[key], value) : value;
  }
  return result;
}

const eye = {
  material: 'S355 plate',
  thickness: '25 mm',
  width: '180 mm',
  height: '90 mm',
  holeDiameter: '38 mm',
  pinDiameter: '35 mm',
  edge: '60 mm',
  weldThroat: '8 mm',
};

/** An invented plate that has nothing wrong with it: flush grid of 3 × 4 tubes, four bolted topside panels, a bridle. */
const base = {
  schema: 'stillplate-document/1',
  project: { name: 'Invented plate', revision: '0', date: '2025-01-15' },
  units: 'metric',
  paper: 'A4',
  basis: { table: 'EN 1993', life: '10 years' },
  water: { depth: '60 m', density: '1026 kg/m^3' },
  grid: {
    arrangement: 'flush',
    mainTubes: {
      section: 'SHS 150x150x8 hot',
      material: 'S355H hot finished',
      flooding: 'flooded',
      vent: '20 mm',
      drain: '20 mm',
      count: 3,
      spacing: '1.3 m',
      overhang: '75 mm',
    },
    crossTubes: {
      section: 'SHS 150x150x8 hot',
      material: 'S355H hot finished',
      flooding: 'flooded',
      vent: '20 mm',
      drain: '20 mm',
      count: 4,
      spacing: '1.1 m',
      overhang: '75 mm',
    },
    jointThroat: '6 mm',
    suspension: {
      kind: 'bridle',
      apex: '4 m',
      attachments: [
        { id: 'S1', x: '1.65 m', y: '0 m' },
        { id: 'S2', x: '1.65 m', y: '2.6 m' },
      ],
      eye,
    },
  },
  designs: {
    deck: {
      side: 'topside',
      thickness: '10 mm',
      material: 'S355 plate',
      overlap: { onMain: '60 mm', onCross: '60 mm' },
      support: 'four sides',
      holes: [{ x: '0 mm', y: '0 mm', diameter: '50 mm', purpose: 'vent' }],
      fixing: {
        kind: 'bolted',
        bolt: 'M12',
        class: '8.8',
        pitch: '200 mm',
        edgeDistance: '30 mm',
        shear: 'clearance',
        into: 'one-sided',
      },
    },
  },
  panels: { A1: 'deck', A3: 'deck', B1: 'deck', B3: 'deck' },
  protection: {
    cathodic: true,
    lossPerFace: { panel: '0.5 mm', tubeOutside: '0.5 mm', tubeInside: '0.2 mm', source: 'invented' },
  },
  mass: { weld: 0.02, tolerance: 0 },
  loads: {
    service: {
      source: 'stated',
      force: '60 kN',
      measure: 'amplitude',
      level: 'extreme',
      returnPeriod: '1 year',
      includes: ['weight', 'inertia', 'drag'],
      wavePeriod: '8 s',
      cyclesPerYear: 4000000,
    },
  },
};

/** The invented document with changes laid on it (null takes a field away). */
export const demoDocument = (...changes: unknown[]): PlateDocument =>
  documentSchema.parse(changes.reduce(merged, base));
