import { ultimateOf, yieldOf } from '../catalogue/strength-at-thickness.ts';
import type { Bolt as BoltRow, BoltClass, Material } from '../catalogue/rows.ts';
import { boltPattern } from '../document/bolt-pattern.ts';
import type { BoltedFixing } from '../document/schema.ts';
import { boltSteel } from '../geometry/bolt-steel.ts';
import type { Bearing, Bolt, Panel, Tube } from '../geometry/geometry.ts';
import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { missing, type Input, type Reading } from './check.ts';
import { fieldAt, isPulled, panelAt } from './field-inputs.ts';
import { partialFactor } from './partial-factor.ts';
import { basisFactor } from './inputs.ts';
import { sectionAtEnd } from './tube-inputs.ts';

/** True, or why a check of bolts does not apply. */
export const bolted = (model: Model, bay: string): true | string =>
  panelAt(model, bay).design.fixing.kind === 'bolted' || 'the panel is welded';

/** The fixing of a bolted panel; only asked where `bolted` is true. */
export const fixingAt = (model: Model, bay: string): BoltedFixing => panelAt(model, bay).design.fixing as BoltedFixing;
export const boltAt = (model: Model, bay: string): BoltRow => model.catalogue.bolt(fixingAt(model, bay).bolt);
export const boltClassAt = (model: Model, bay: string): BoltClass =>
  model.catalogue.boltClass(fixingAt(model, bay).class);

type Read = Input['read'];
const asIs = (read: Read): Read => read;

/** A value over the panel's bolts; missing where it has none. */
const overBolts =
  (value: (bolts: readonly Bolt[]) => number): Read =>
  (model, bay) => {
    const { bolts } = panelAt(model, bay);
    return bolts.length ? value(bolts) : missing('bolts: no side of the panel is long enough for its edge distances');
  };
const least = (values: readonly number[]): number => values.reduce((low, value) => Math.min(low, value), Infinity);
const most = (values: readonly number[]): number => values.reduce((high, value) => Math.max(high, value), 0);

/** Strengths of the panel's and the tube's material where a bolt bears: by the rules for carbon and stainless steel. */
function steelStrength(material: Material, thickness: number, of: typeof yieldOf, model: Model): Reading {
  if (material.judged === 'no published rule')
    return missing(`a published design rule for bolts in ${material.title}: none is held`);
  if (material.family === 'aluminium')
    return missing(
      `a rule for bolts in ${material.title}: EN 1999-1-1, 8.5, is held for panels under partial factors alone`,
    );
  if (material.family === 'stainless steel' && model.basis.safety === 'allowable stress')
    return missing(`a rule for ${material.title} under ${model.basis.title}: AISC 360 holds for carbon steel`);
  return of(material, thickness);
}

/** Tubes that the panel is fixed to. */
export function tubesUnder(model: Model, bay: string): readonly Tube[] {
  const panel = panelAt(model, bay);
  const ids = new Set([
    ...panel.bolts.map(({ tube }) => tube),
    ...panel.bearings.filter(({ fixed }) => fixed).map(({ tube }) => tube),
  ]);
  return [...ids].map((id) => model.tubes.get(id) as Tube);
}

/** The fixed tube whose value is least, by value. */
function leastOfTubes(model: Model, bay: string, of: (tube: Tube) => Reading): Reading {
  const values: number[] = [];
  for (const tube of tubesUnder(model, bay)) {
    const value = of(tube);
    if (typeof value !== 'number') return value;
    values.push(value);
  }
  return values.length ? least(values) : missing('a tube that the panel is bolted to');
}

const isMain = ({ side }: Bearing): boolean => side.startsWith('main');

/** Which pairs of sides the design relies on. */
export const holds = (panel: Panel, set: 'main' | 'cross'): boolean =>
  panel.design.support === 'four sides' || panel.design.support === `${set} tubes`;

/**
 * Lever of the edge's moment on a row of bolts, m. Pulled off, the plate's outer edge is the heel; pressed on, the line
 * where the flat of the tube begins. Where the sides are not fixed there is no moment, and the edge distance stands in.
 */
function lever(model: Model, bay: string, situation: Situation, set: 'main' | 'cross'): Reading {
  const panel = panelAt(model, bay);
  const pattern = boltPattern(fixingAt(model, bay));
  if (pattern.kind === 'listed') return listedLever(model, bay, situation, set);
  const edge = pattern.edgeDistance.si;
  // Pressed on, a clamp beside the tube holds nothing down: its own lever would be no smaller.
  if (!holds(panel, set) || isPulled(model, bay, situation) || fixingAt(model, bay).into === 'clamp') return edge;
  const radius = (tube: string): number => (model.tubes.get(tube) as Tube).section.outerRadius;
  const outer = panel.bearings
    .filter((b) => b.fixed && isMain(b) === (set === 'main'))
    .map(({ lap, tube }) => lap - edge - Math.min(radius(tube), lap));
  const inner = panel.bolts
    .filter((b) => b.inner && b.side.startsWith(set))
    .map(({ fromFace, tube }) => fromFace - radius(tube));
  const length = least([...outer, ...inner]);
  return length > 0 && Number.isFinite(length)
    ? length
    : missing(
        `a lever for the bolts on the ${set} tubes: their line does not lie behind the line where the flat of the tube begins. Take a larger overlap or a smaller edge distance`,
      );
}

/** The same of listed bolts: the least of theirs, each from its own place, a corner bolt's on both tubes. Where the sides
 *  are not fixed, the others' distance to the edge stands in. */
function listedLever(model: Model, bay: string, situation: Situation, set: 'main' | 'cross'): Reading {
  const panel = panelAt(model, bay);
  const isHeld = holds(panel, set);
  const radius = (tube: string): number => (model.tubes.get(tube) as Tube).section.outerRadius;
  const outer = panel.bearings
    .filter((b) => b.fixed && (!isHeld || isMain(b) === (set === 'main')))
    .flatMap((b) =>
      alongSide(panel, b).map((edge) => ({ edge, behind: b.lap - edge - Math.min(radius(b.tube), b.lap) })),
    );
  const inner = panel.bolts.filter((b) => b.inner && b.side.startsWith(set)).map((b) => b.fromFace - radius(b.tube));
  // Pressed on, a clamp beside the tube holds nothing down: its own lever would be no smaller.
  const fromEdge = !isHeld || isPulled(model, bay, situation) || fixingAt(model, bay).into === 'clamp';
  if (outer.length === 0)
    return missing(`a lever for the bolts on the ${set} tubes: none of the listed places stands on them`);
  const length = least(fromEdge ? outer.map(({ edge }) => edge) : [...outer.map(({ behind }) => behind), ...inner]);
  return length > 0
    ? length
    : missing(
        fromEdge
          ? `a lever for the bolts on the ${set} tubes: a listed place does not lie inside the panel's edge`
          : `a lever for the bolts on the ${set} tubes: a listed place does not lie behind the line where the flat of the tube begins. Move it towards the middle of the tube`,
      );
}

/** The bolts along a side, corner bolts among them: each one's distance to the panel's edge there, m. */
function alongSide({ outline: { x0, y0, x1, y1 }, bolts }: Panel, { side, lap }: Bearing): readonly number[] {
  const toEdge = ({ x, y }: Bolt): number =>
    ({ mainLow: y - y0, mainHigh: y1 - y, crossLow: x - x0, crossHigh: x1 - x })[side];
  return bolts.filter((b) => (b.side === side && !b.inner) || toEdge(b) <= lap + 1e-9).map(toEdge);
}

const nearestEdge = overBolts((bolts) =>
  least(bolts.flatMap((bolt) => [boltSteel(bolt).edge1, boltSteel(bolt).edge2])),
);
const smallestPitch = overBolts((bolts) => least(bolts.map((bolt) => boltSteel(bolt).pitch)));
/** True where the panel's holes are slots. */
export const isSlotted = ({ hole }: BoltedFixing): boolean => hole === 'short slot' || hole === 'long slot';

/**
 * What a hole leaves of bearing. EN 1993-1-8, Table 3.4: 0.8 oversize, 0.6 for a slot across the force. AISC 360, J3.10:
 * 1.0 l_c and 2.0 d in place of 1.2 and 2.4 for a long slot across the force. A slot is taken as across it, whatever the
 * direction: the force of a bolt at a corner, and of a plate solved as a whole, has parts both ways.
 */
const bearingOfHole =
  (on: 'panel' | 'tube'): Read =>
  (model, bay) => {
    const fixing = fixingAt(model, bay);
    const slotted = on === 'panel' && isSlotted(fixing);
    if (model.basis.safety === 'allowable stress') return slotted && fixing.hole === 'long slot' ? 1 / 1.2 : 1;
    return slotted ? 0.6 : fixing.hole === 'oversize' ? 0.8 : 1;
  };
/** Factor on resistance of whichever kind of basis holds, for a second opinion, whose steps serve both. */
export const factorOfEither = (partial: string | Input, allowable: string, meaning: string): Input => {
  const ofPartial = typeof partial === 'string' ? basisFactor(partial, meaning) : partial;
  return {
    unit: '1',
    meaning,
    from: ofPartial.from,
    read: (model, place, situation) =>
      (model.basis.safety === 'partial factors' ? ofPartial : basisFactor(allowable, meaning)).read(
        model,
        place,
        situation,
      ),
  };
};

/** Materials of the tubes that the panel is fixed to. */
const materialsOfTubes = (model: Model, bay: string) => tubesUnder(model, bay).map(({ material }) => material);

/** Partial factors on the tubes that the panel is fixed to. */
export const wallYieldFactor = partialFactor('gamma_M0', 'partial factor on yielding', materialsOfTubes);
export const wallStabilityFactor = partialFactor('gamma_M1', 'partial factor on stability', materialsOfTubes);

/** What holds for a panel of aluminium, beside the rule for steel that it repeats. */
export const aluminiumPanel = (clause: string) =>
  ({
    document: 'EN 1999-1-1',
    edition: '2007',
    clause,
    safety: 'partial factors',
    metal: 'aluminium',
    memory: true,
  }) as const;

const forSteel =
  (read: (row: BoltClass) => Reading): Read =>
  (model, bay) =>
    read(boltClassAt(model, bay));

/** Inputs that the checks of bolts share, by symbol. Each check takes those it needs. */
export const boltInputs = {
  d: {
    unit: 'mm',
    meaning: 'diameter of the bolt',
    from: 'catalogue: fasteners',
    read: asIs((model, bay) => boltAt(model, bay).diameter),
  },
  d_0: {
    unit: 'mm',
    meaning: 'diameter of the hole; a fitted bolt fills it',
    from: 'document: fixing',
    read: overBolts((bolts) => most(bolts.map(({ hole }) => hole))),
  },
  d_m: {
    unit: 'mm',
    meaning: "mean of the head's size across flats and across corners; over a slot, width of the washer that covers it",
    from: 'catalogue: fasteners',
    read: asIs((model, bay) => {
      const [fixing, bolt] = [fixingAt(model, bay), boltAt(model, bay)];
      if (fixing.countersunk) return missing('the head diameter of the countersunk bolt');
      return isSlotted(fixing) ? washerOverSlot(model, bay) : (bolt.headAcrossFlats + bolt.headAcrossCorners) / 2;
    }),
  },
  A_s: {
    unit: 'mm^2',
    meaning: 'tensile stress area',
    from: 'catalogue: fasteners',
    read: asIs((model, bay) => boltAt(model, bay).tensileArea),
  },
  A_b: {
    unit: 'mm^2',
    meaning: 'area of the shank',
    from: 'catalogue: fasteners',
    read: asIs((model, bay) => boltAt(model, bay).shankArea),
  },
  threads: {
    unit: '1',
    meaning: 'threads in the shear plane (1) or not (0)',
    from: 'document: fixing',
    read: asIs((model, bay) => (fixingAt(model, bay).threadsInShearPlane ? 1 : 0)),
  },
  f_ub: {
    unit: 'MPa',
    meaning: 'ultimate strength of the bolt',
    from: 'catalogue: fasteners',
    read: asIs((model, bay) => boltClassAt(model, bay).ultimate),
  },
  alpha_v: {
    unit: '1',
    meaning: 'shear factor of the bolt class, by where its threads are',
    from: 'catalogue: fasteners',
    only: 'partial factors',
    read: asIs((model, bay) => {
      const row = boltClassAt(model, bay);
      return (
        (fixingAt(model, bay).threadsInShearPlane ? row.alphaV : row.alphaVShank) ??
        missing(`the shear factor alpha_v of ${row.title}: EN 1993-1-8 does not list it`)
      );
    }),
  },
  k_2: {
    unit: '1',
    meaning: '0.63 countersunk, 0.9 otherwise',
    from: 'document: fixing',
    only: 'partial factors',
    read: asIs((model, bay) => (fixingAt(model, bay).countersunk ? 0.63 : 0.9)),
  },
  F_nt: {
    unit: 'MPa',
    meaning: 'nominal tensile stress of the bolt',
    from: 'catalogue: fasteners',
    only: 'allowable stress',
    read: forSteel((row) => nominalStress(row, 'tension', 0.75)),
  },
  F_nv: {
    unit: 'MPa',
    meaning: 'nominal shear stress of the bolt, by where its threads are',
    from: 'catalogue: fasteners',
    only: 'allowable stress',
    read: asIs((model, bay) =>
      fixingAt(model, bay).threadsInShearPlane
        ? nominalStress(boltClassAt(model, bay), 'shearThreads', 0.45)
        : nominalStress(boltClassAt(model, bay), 'shearShank', 0.563),
    ),
  },
  e_1: {
    unit: 'mm',
    meaning: "hole's centre to the panel's nearest edge, along the force",
    from: 'geometry',
    read: nearestEdge,
  },
  e_2: {
    unit: 'mm',
    meaning: "hole's centre to the panel's nearest edge, across the force",
    from: 'geometry',
    read: nearestEdge,
  },
  e_far: {
    unit: 'mm',
    meaning: "bolt line to the panel's edge, the farthest",
    from: 'geometry',
    read: overBolts((bolts) =>
      most(bolts.filter(({ inner }) => !inner).map(({ edge2, listed }) => listed?.far ?? edge2)),
    ),
  },
  p_1: { unit: 'mm', meaning: 'smallest pitch, along the force', from: 'geometry', read: smallestPitch },
  p_2: { unit: 'mm', meaning: 'smallest pitch, across the force', from: 'geometry', read: smallestPitch },
  p_far: {
    unit: 'mm',
    meaning: 'largest pitch',
    from: 'geometry',
    read: overBolts((bolts) =>
      most(bolts.map(({ pitch, pitchAcross, listed }) => listed?.next ?? Math.max(pitch, pitchAcross ?? 0))),
    ),
  },
  f_yp: {
    unit: 'MPa',
    meaning: 'yield strength of the panel',
    from: 'catalogue: materials',
    read: asIs((model, bay) => strengthOfPanel(model, bay, yieldOf)),
  },
  f_u: {
    unit: 'MPa',
    meaning: 'ultimate strength of the panel',
    from: 'catalogue: materials',
    read: asIs((model, bay) => strengthOfPanel(model, bay, ultimateOf)),
  },
  stainless: {
    unit: '1',
    meaning: 'panel of stainless steel (1) or carbon steel (0)',
    from: 'catalogue: materials',
    read: asIs((model, bay) => (panelAt(model, bay).material.family === 'stainless steel' ? 1 : 0)),
  },
  t_w: {
    unit: 'mm',
    meaning: 'thinnest tube wall under the bolts at the end of life',
    from: 'document: corrosion',
    read: asIs((model, bay) => leastOfTubes(model, bay, ({ id }) => sectionAtEnd(model, id).wall)),
  },
  f_yw: {
    unit: 'MPa',
    meaning: 'yield strength of the tube',
    from: 'catalogue: materials',
    read: asIs((model, bay) => strengthOfTubes(model, bay, yieldOf)),
  },
  f_uw: {
    unit: 'MPa',
    meaning: 'ultimate strength of the tube',
    from: 'catalogue: materials',
    read: asIs((model, bay) => strengthOfTubes(model, bay, ultimateOf)),
  },
  stainless_w: {
    unit: '1',
    meaning: 'tube of stainless steel (1) or carbon steel (0)',
    from: 'catalogue: materials',
    read: asIs((model, bay) =>
      tubesUnder(model, bay).some(({ material }) => material.family === 'stainless steel') ? 1 : 0,
    ),
  },
  e_w: {
    unit: 'mm',
    meaning: "hole's centre to the nearest end of the tube's steel",
    from: 'geometry',
    read: endOfTube(),
  },
  k_h: {
    unit: '1',
    meaning: 'what the kind of hole leaves of bearing: 1 for a standard hole',
    from: 'document: fixing',
    read: bearingOfHole('panel'),
  },
  k_hw: {
    unit: '1',
    meaning:
      'what the kind of hole in the tube leaves of bearing: 1 for a standard hole, which it is under a slot of the panel',
    from: 'document: fixing',
    read: bearingOfHole('tube'),
  },
} as const satisfies Readonly<Record<string, Input>>;

/** Inputs of the forces in the bolts of a field, by symbol, beside those of the plate field itself. */
export const boltForceInputs = {
  pulled: {
    unit: '1',
    meaning: 'the load pulls the panel off its tubes (1) or presses it on (0)',
    from: 'loads: direction',
    read: asIs((model, bay, situation) => (isPulled(model, bay, situation) ? 1 : 0)),
  },
  lost: {
    unit: '1',
    meaning: 'a row of bolts is lost (1) or not (0)',
    from: 'loads: case',
    read: asIs((_model, _bay, situation) => (situation.loadCase === 'lost bolt row' ? 1 : 0)),
  },
  h_x: {
    unit: '1',
    meaning: 'held by the cross tubes (1) or not (0)',
    from: 'document: designs',
    read: asIs((model, bay) => (holds(panelAt(model, bay), 'cross') ? 1 : 0)),
  },
  h_y: {
    unit: '1',
    meaning: 'held by the main tubes (1) or not (0)',
    from: 'document: designs',
    read: asIs((model, bay) => (holds(panelAt(model, bay), 'main') ? 1 : 0)),
  },
  a_b: {
    unit: 'mm',
    meaning: 'between the rows of bolts, along x',
    from: 'geometry',
    read: asIs((model, bay) => fieldAt(model, bay).pulled.a),
  },
  b_b: {
    unit: 'mm',
    meaning: 'between the rows of bolts, along y',
    from: 'geometry',
    read: asIs((model, bay) => fieldAt(model, bay).pulled.b),
  },
  n_x: {
    unit: '1',
    meaning: 'bolts in a row along x, corners counted',
    from: 'geometry',
    read: asIs((model, bay) => rowOf(fieldAt(model, bay).pulled.boltsAlongX, 'x')),
  },
  n_y: {
    unit: '1',
    meaning: 'bolts in a row along y, corners counted',
    from: 'geometry',
    read: asIs((model, bay) => rowOf(fieldAt(model, bay).pulled.boltsAlongY, 'y')),
  },
  i_x: {
    unit: 'mm',
    meaning: 'plate beyond the rows, along x',
    from: 'geometry',
    read: asIs((model, bay) => fieldAt(model, bay).pulled.insetX),
  },
  i_y: {
    unit: 'mm',
    meaning: 'plate beyond the rows, along y',
    from: 'geometry',
    read: asIs((model, bay) => fieldAt(model, bay).pulled.insetY),
  },
  d_w: {
    unit: 'mm',
    meaning: 'outer diameter of the washer',
    from: 'catalogue: fasteners',
    read: asIs((model, bay) => boltAt(model, bay).washerOuter),
  },
  l_x: {
    unit: 'mm',
    meaning:
      'lever of the moment at the cross tubes: bolt to the line that the plate heels on (its outer edge when pulled, the end of the corner radius when pressed)',
    from: 'geometry',
    read: asIs((model, bay, situation) => lever(model, bay, situation, 'cross')),
  },
  l_y: {
    unit: 'mm',
    meaning: 'lever of the moment at the main tubes, the same',
    from: 'geometry',
    read: asIs((model, bay, situation) => lever(model, bay, situation, 'main')),
  },
} as const satisfies Readonly<Record<string, Input>>;

/** Width of the washer that bears on both sides of a slot and covers it, m. */
export function washerOverSlot(model: Model, bay: string): Reading {
  const { plateWasher } = fixingAt(model, bay);
  const [bolt] = panelAt(model, bay).bolts;
  const width = plateWasher?.width.si ?? boltAt(model, bay).washerOuter;
  if (!bolt?.slot || width >= bolt.slot.length) return width;
  return missing(
    `a washer that covers the slot of ${Math.round(1e4 * bolt.slot.length) / 10} mm: this one is ${Math.round(1e4 * width) / 10} mm wide ("plateWasher" of the fixing)`,
  );
}

/** Bolts in a row of which the corners are two. */
const rowOf = (n: number, along: 'x' | 'y'): Reading =>
  n >= 2 ? n : missing(`two bolts or more in each row along ${along}: this row has ${n}`);

/** Nominal stress of AISC 360 Table J3.2: by name, or as a part of f_ub for threaded parts of another carbon steel. */
function nominalStress(row: BoltClass, of: 'tension' | 'shearThreads' | 'shearShank', part: number): Reading {
  if (row.nominal) return row.nominal[of];
  return row.family === 'carbon steel'
    ? part * row.ultimate
    : missing(`a nominal stress of ${row.title}: AISC 360 does not list it`);
}

function strengthOfPanel(model: Model, bay: string, of: typeof yieldOf): Reading {
  const { material, thickness } = panelAt(model, bay);
  return material.family === 'aluminium' && model.basis.safety === 'partial factors'
    ? of(material, thickness)
    : steelStrength(material, thickness, of, model);
}

const strengthOfTubes = (model: Model, bay: string, of: typeof yieldOf): Reading =>
  leastOfTubes(model, bay, (tube) => steelStrength(tube.material, tube.section.wall, of, model));

/** Hole's centre to the nearest end of the piece of tube that it stands in, along the tube, m. */
function endOfTube(): Read {
  return (model, bay) => {
    const ends = panelAt(model, bay).bolts.flatMap(({ x, y, tube: id }) => {
      const tube = model.tubes.get(id) as Tube;
      const along = tube.set === 'main' ? x : y;
      return tube.pieces
        .filter(([from, to]) => along >= from && along <= to)
        .map(([from, to]) => Math.min(along - from, to - along));
    });
    return ends.length ? least(ends) : missing('a bolt that stands on the steel of a tube');
  };
}

/** With a row of bolts lost, a panel that hung on two rows turns about the other: that fails whatever the numbers are. */
export const nothingLeft = (model: Model, bay: string, situation: Situation): string | undefined =>
  situation.loadCase === 'lost bolt row' &&
  isPulled(model, bay, situation) &&
  panelAt(model, bay).design.support !== 'four sides'
    ? 'the panel hangs on two rows of bolts: with one lost it turns about the other'
    : undefined;

/** True where the bolt goes through a hole in the tube's wall, or why there is none. */
export function holeInTube(model: Model, bay: string): true | string {
  const applies = bolted(model, bay);
  if (applies !== true) return applies;
  const { into } = fixingAt(model, bay);
  if (into === 'welded stud') return 'the stud is welded on: there is no hole in the tube';
  if (into === 'tapped pad') return 'the bolt bears in its pad, not on the wall of the tube';
  if (into === 'clamp') return 'the clamp goes round the tube: there is no hole in it';
  return true;
}
