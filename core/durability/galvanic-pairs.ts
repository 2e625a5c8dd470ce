import type { MaterialFamily } from '../catalogue/rows.ts';
import type { Durability } from '../document/durability-field.ts';
import type { Model } from '../model.ts';
import { protectedArea } from './protected-area.ts';

/** Potential of a metal in flowing seawater, V (Ag/AgCl), least and most noble. Source: the galvanic series of F. L. LaQue,
 *  as tabled by boatbuilders' handbooks (read in a copy); passive stainless from memory. */
export const potentials: Readonly<Partial<Record<MaterialFamily, readonly [number, number]>>> = {
  'carbon steel': [-0.71, -0.6],
  'stainless steel': [-0.1, 0],
  aluminium: [-1.0, -0.76],
};

export interface GalvanicPair {
  /** Which parts touch. */
  readonly where: string;
  /** The part that is eaten, and that which eats. */
  readonly anode: string;
  readonly cathode: string;
  /** Between the middles of both ranges, V. */
  readonly difference: number;
  /** Area of the cathode over that of the anode. */
  readonly areaRatio: number;
  /** `protected`: both are joined to anodes; `isolated`: kept apart; `mild`: a small cathode; `severe`. */
  readonly verdict: 'protected' | 'isolated' | 'mild' | 'severe';
  readonly words: string;
}

/** Two metals nearer than this, V, do not harm each other. Common practice, no source. */
const harmless = 0.15;
/** A cathode smaller than this part of the anode eats little of it. Common practice, no source. */
const small = 0.1;

interface Part {
  readonly name: string;
  readonly family: MaterialFamily;
  readonly area: number;
}

/** Pairs of unlike metals that touch: panels on tubes, bolts in panels and tubes. */
export function galvanicPairs(model: Model, given: Durability): GalvanicPair[] {
  const { geometry, catalogue, document } = model;
  const areas = new Map(protectedArea(model, { ...given, panels: 'bonded', panelsApart: {}, fasteners: 'bonded' }).parts.map(({ name, area }) => [name, area])); // prettier-ignore
  const tubes: Part = {
    name: 'tubes',
    family: geometry.mainTubes[0]!.material.family,
    area: areas.get('Tubes, outside')!,
  };
  const seen = new Map<string, GalvanicPair>();
  const meet = (where: string, a: Part, b: Part, joined: 'bonded' | 'isolated') => {
    const pair = pairOf(where, a, b, joined === 'isolated', document.protection.cathodic && given.anodes !== undefined);
    if (pair) seen.set(`${where} ${a.family} ${b.family}`, pair);
  };
  for (const panel of geometry.panels) {
    const { fixing } = panel.design;
    const faces: Part = { name: 'panels', family: panel.material.family, area: areas.get('Panels, both faces and edges') ?? 2 * panel.area }; // prettier-ignore
    meet('panel on tube', faces, tubes, given.panelsApart[panel.id] ?? given.panels);
    if (fixing.kind !== 'bolted') continue;
    const bolts: Part = { name: 'bolts', family: catalogue.boltClass(fixing.class).family, area: areas.get('Bolts, heads, nuts and washers') ?? 0 }; // prettier-ignore
    meet('bolt in panel', bolts, faces, given.fasteners);
    meet('bolt in tube', bolts, tubes, given.fasteners);
  }
  return [...seen.values()];
}

function pairOf(where: string, a: Part, b: Part, isolated: boolean, anodes: boolean): GalvanicPair | null {
  const [first, second] = [potentials[a.family], potentials[b.family]];
  if (!first || !second) return null;
  const middle = ([low, high]: readonly [number, number]) => (low + high) / 2;
  const difference = Math.abs(middle(first) - middle(second));
  if (difference < harmless) return null;
  const [anode, cathode] = middle(first) < middle(second) ? [a, b] : [b, a];
  const areaRatio = cathode.area / anode.area;
  const verdict = isolated ? 'isolated' : anodes ? 'protected' : areaRatio <= small ? 'mild' : 'severe';
  const eats = `${cathode.family} of the ${cathode.name} eats ${anode.family} of the ${anode.name}`;
  const words = {
    isolated: `Kept apart by sleeve and washers: measure that they are. Where one fails, ${eats}.`,
    protected: 'Both are joined to the anodes, which protect both: their areas are in the current demand.',
    mild: `The ${cathode.name} are small beside the ${anode.name}: ${eats}, slowly and near by.`,
    severe: `${eats[0]!.toUpperCase()}${eats.slice(1)}, ${areaRatio.toFixed(1)} times as large: keep them apart, take one metal, or join both to anodes.`,
  }[verdict];
  return { where, anode: `${anode.name}, ${anode.family}`, cathode: `${cathode.name}, ${cathode.family}`, difference, areaRatio, verdict, words }; // prettier-ignore
}
