import type { Json } from '../../../core/document/edit.ts';
import { texts } from '../../texts.ts';

/** What a part of the recovery begins with when it is added: round values to be typed over, sources to be stated. */

const t = texts.recovery;
const source = t.toBeStated;

export const newRelease = (id: string, inch: boolean): Json => ({
  id,
  kind: 'acoustic',
  mass: inch ? '30 lbm' : '14 kg',
  volume: inch ? '0.2 ft^3' : '0.006 m^3',
  rating: inch ? '1100 lbf' : '5 kN',
  leastPull: inch ? '15 lbf' : '60 N',
  endurance: '12 months',
});

export const newCanister = (inch: boolean): Json => ({
  diameter: inch ? '16 in' : '400 mm',
  height: inch ? '10 in' : '250 mm',
  clearance: inch ? '2 in' : '50 mm',
  cone: inch ? '4 in' : '100 mm',
  mass: inch ? '40 lbm' : '20 kg',
  volume: inch ? '0.1 ft^3' : '0.0025 m^3',
  x: inch ? '0 in' : '0 mm',
  y: inch ? '0 in' : '0 mm',
  z: inch ? '0 in' : '0 mm',
  lay: 'figure of eight',
  bolts: inch
    ? { bolt: '1/2 in', class: 'ASTM A325 (F3125)', count: 6, circle: '18 in' }
    : { bolt: 'M12', class: '8.8', count: 6, circle: '460 mm' },
});

export const newWay = (id: string): Json => ({ id, kind: 'diver', title: source, parts: [{ name: source }] });

export const newAcoustic = (inch: boolean): Json => ({
  sourceLevel: 185,
  frequency: 10000,
  bandwidth: 500,
  threshold: 12,
  range: inch ? '1600 ft' : '500 m',
  wind: '10 m/s',
  source,
});

export const newMainFloat = (inch: boolean): Json => ({ reserve: inch ? '2 kip' : '10 kN', whole: inch ? '10 kip' : '50 kN', source }); // prettier-ignore

export const newLift = (inch: boolean): Json => ({
  sea: { height: inch ? '1.5 ft' : '0.5 m', period: '6 s' },
  lowering: inch ? '0.5 ft/s' : '0.15 m/s',
  hoisting: inch ? '0.5 ft/s' : '0.15 m/s',
  aFrame: inch ? '20 kip' : '100 kN',
  winch: inch ? '18 kip' : '80 kN',
  line: { breakingStrength: inch ? '60 kip' : '280 kN', stiffness: inch ? '30 kip/ft' : '450 kN/m', mass: inch ? '1 lbm/ft' : '1.5 kg/m' },
  capacitySource: source,
  motions: [{ period: '6 s', heave: inch ? '10 in' : '0.25 m', roll: '1.5 deg', pitch: '1 deg' }],
  tip: { along: inch ? '-18 ft' : '-6 m', across: inch ? '0 ft' : '0 m' },
  motionSource: source,
  sling: { kind: 'wire', breakingStrength: inch ? '40 kip' : '180 kN', source },
  shackle: { workingLoad: inch ? '10 kip' : '46 kN', source },
  drainTime: '240 s',
}); // prettier-ignore

/** All that the recovery needs at the least: a rope, a float, one release and one way. */
export const newRecovery = (inch: boolean): Json => ({
  deployment: '6 months',
  current: inch ? '1 ft/s' : '0.3 m/s',
  snag: inch ? '25 lbf' : '100 N',
  rope: {
    material: 'HMPE',
    diameter: inch ? '3/8 in' : '10 mm',
    breakingStrength: inch ? '18 kip' : '80 kN',
    mass: inch ? '0.04 lbm/ft' : '0.06 kg/m',
    source,
    packing: { solid: 0.45, how: 'assumed', source },
    hauls: 'messenger',
    messengerPull: inch ? '800 lbf' : '3.5 kN',
  },
  float: {
    kind: 'foam',
    volume: inch ? '2.5 ft^3' : '0.075 m^3',
    mass: inch ? '62 lbm' : '28 kg',
    diameter: inch ? '20 in' : '0.5 m',
    ratedDepth: inch ? '330 ft' : '100 m',
    source,
  },
  releases: [newRelease('R1', inch)],
  ways: [{ id: 'one', kind: 'released float', title: t.firstWay, releases: ['R1'], parts: t.partsOfFirstWay.map((name) => ({ name })) }],
  chosen: 'one',
}); // prettier-ignore
