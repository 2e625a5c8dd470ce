import { schemaName } from './schema.ts';

/** A small complete document to start from: two main and four cross tubes, three bays, one bolted design and one welded option. Every value is there to be changed. */
export function startingDocument(units: 'metric' | 'inch') {
  const inch = units === 'inch';
  /** The value in the document's system; both are round figures of their own, not conversions. */
  const q = (metric: string, inches: string): string => (inch ? inches : metric);
  const tubes = {
    material: inch ? 'ASTM A500 C' : 'S355H hot finished',
    flooding: 'flooded',
    vent: q('20 mm', '3/4 in'),
    drain: q('20 mm', '3/4 in'),
  };
  const plate = inch ? 'ASTM A36' : 'S355 plate';
  const hole = (x: string, purpose: string) => ({ x, y: q('0 mm', '0 in'), diameter: q('25 mm', '1 in'), purpose });
  return {
    schema: schemaName,
    project: { name: 'New plate', revision: 'A', date: '2026-01-01' },
    units,
    paper: inch ? 'letter' : 'A4',
    basis: { table: inch ? 'AISC 360 ASD' : 'EN 1993', life: '5 years' },
    water: { depth: q('30 m', '100 ft'), density: q('1025 kg/m^3', '64 lbm/ft^3') },
    grid: {
      arrangement: 'flush',
      mainTubes: {
        ...tubes,
        section: inch ? 'HSS 5x5x5/16' : 'SHS 120x120x6.3 hot',
        count: 2,
        spacing: q('1100 mm', '44 in'),
        overhang: q('130 mm', '5 in'),
      },
      crossTubes: {
        ...tubes,
        section: inch ? 'HSS 5x5x5/16' : 'SHS 120x120x6.3 hot',
        count: 4,
        spacing: q('720 mm', '28 in'),
        overhang: q('60 mm', '2 1/2 in'),
      },
      jointThroat: q('4 mm', '3/16 in'),
      flareWeld: { process: 'gas-shielded wire' },
      suspension: {
        kind: 'strut',
        attachments: [
          { id: 'S1', x: q('720 mm', '28 in'), y: q('0 mm', '0 in') },
          { id: 'S2', x: q('1440 mm', '56 in'), y: q('0 mm', '0 in') },
          { id: 'S3', x: q('720 mm', '28 in'), y: q('1100 mm', '44 in') },
          { id: 'S4', x: q('1440 mm', '56 in'), y: q('1100 mm', '44 in') },
        ],
        eye: {
          material: plate,
          thickness: q('16 mm', '5/8 in'),
          width: q('100 mm', '4 in'),
          height: q('60 mm', '2 1/2 in'),
          holeDiameter: q('26 mm', '1 1/16 in'),
          pinDiameter: q('24 mm', '1 in'),
          edge: q('40 mm', '1 5/8 in'),
          weldThroat: q('5 mm', '3/16 in'),
        },
      },
    },
    designs: {
      bolted: {
        side: 'underside',
        thickness: q('6 mm', '5/16 in'),
        material: plate,
        overlap: { onMain: q('46 mm', '2 1/8 in'), onCross: q('46 mm', '2 1/8 in') },
        holes: [hole(q('-200 mm', '-8 in'), 'drain'), hole(q('200 mm', '8 in'), 'drain')],
        support: 'four sides',
        fixing: {
          kind: 'bolted',
          bolt: inch ? '1/2 in' : 'M12',
          class: inch ? 'ASTM A325' : '8.8',
          pitch: q('75 mm', '4 in'),
          edgeDistance: q('18 mm', '3/4 in'),
          shear: 'slip-resistant',
          slipFactor: { value: 0.3, source: 'assumed, to be proved on the coated surface' },
          into: 'through-bolt with sleeve',
        },
      },
      welded: {
        side: 'topside',
        thickness: q('5 mm', '3/16 in'),
        material: plate,
        overlap: { onMain: q('36 mm', '1 1/2 in'), onCross: q('36 mm', '1 1/2 in') },
        holes: [hole(q('-200 mm', '-8 in'), 'vent'), hole(q('200 mm', '8 in'), 'vent')],
        support: 'four sides',
        fixing: { kind: 'welded', throat: q('3 mm', '1/8 in'), pattern: 'all round' },
      },
    },
    panels: { A1: 'bolted', A2: 'bolted', A3: 'bolted' },
    protection: {
      cathodic: false,
      lossPerFace: {
        panel: q('0.2 mm', '0.008 in'),
        tubeOutside: q('0.2 mm', '0.008 in'),
        tubeInside: q('0.2 mm', '0.008 in'),
        source: 'to be stated',
      },
    },
    mass: { weld: 0.02, tolerance: 0.03 },
    fatigue: {
      loading: {
        kind: 'weibull',
        largestRange: q('12 kN', '2600 lbf'),
        // as often as the stated force comes once in its return period
        inCycles: 210_000_000,
        shape: 1,
        cyclesPerYear: 4_200_000,
        source: 'an assumption of the starting document, to be stated',
      },
      access: 'above water',
      consequence: 'substantial',
    },
    loads: {
      service: {
        source: 'stated',
        force: q('6 kN', '1300 lbf'),
        measure: 'amplitude',
        level: 'extreme',
        returnPeriod: '50 years',
        includes: ['inertia', 'drag'],
        wavePeriod: '7 s',
        cyclesPerYear: 4.2e6,
      },
      crossing: { speed: q('0.5 m/s', '1.6 ft/s') },
      liftOut: { speed: q('0.2 m/s', '0.65 ft/s'), dragCoefficient: { value: 2.5, source: 'to be stated' } },
      liftInAir: {},
      deck: {
        supports: [
          { id: 'D1', x: q('0 mm', '0 in'), y: q('0 mm', '0 in') },
          { id: 'D2', x: q('2160 mm', '84 in'), y: q('0 mm', '0 in') },
          { id: 'D3', x: q('0 mm', '0 in'), y: q('1100 mm', '44 in') },
          { id: 'D4', x: q('2160 mm', '84 in'), y: q('1100 mm', '44 in') },
        ],
        dynamicFactor: { value: 1.3, source: 'to be stated' },
      },
    },
    options: [
      {
        id: 'welded',
        title: 'Welded on top',
        base: null,
        changes: { panels: { A1: 'welded', A2: 'welded', A3: 'welded' } },
      },
    ],
    chosen: null,
  };
}
