import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import { emptyingTray, holeFor } from './emptying-tray.ts';
import { acousticOf, type AcousticReport } from './acoustic-of.ts';
import { legsOf, type Legs } from './bridle-of.ts';
import { canistersOf, centreWith, type CanisterReport } from './canisters-of.ts';
import { compartmentsOf } from '../geometry/compartments-of.ts';
import { lengthOfRope, ropeWeightInWater } from './equipment.ts';
import { floatOf, type FloatReport } from './float-of.ts';
import { freeEndOf, type FreeEnd } from './free-end.ts';
import { allowedHeight, liftOf, liftPeriods, openLiftOf, type Lift, type LiftStage } from './lift-stages.ts';
import { oncePerModel } from '../once-per-model.ts';
import { ropePartsOf, ropeStretch, strengthOfRope } from './rope-of.ts';
import type { RopeParts } from './rope-strength.ts';
import { tipMotion } from './tip-motion.ts';
import { hoistPeriod, sinkingSpeed } from './wave-zone.ts';
import { waysOf, type WayReport } from './ways-of.ts';
import { waterDensityOf } from '../water/sea-water.ts';

export interface RecoveryQuantity {
  readonly value: number;
  readonly unit: string;
  readonly title: string;
  readonly source: string;
}

/** A bay that holds water as the plate leaves the sea. */
export interface Emptied {
  readonly bay: string;
  /** kg when full, s to half and to nothing through the openings that are there (null: nothing lets it out), m² that would do in the time stated. */
  readonly mass: number;
  readonly half: number | null;
  readonly time: number | null;
  readonly hole: number;
  readonly there: number;
}

/** Everything about putting a plate down and getting it back. SI. */
export interface RecoveryReport {
  readonly rope: {
    readonly length: number;
    readonly parts: RopeParts;
    readonly strength: number;
    readonly weightInWater: number;
    readonly stretch: number;
    readonly pull: number;
  };
  readonly float: FloatReport;
  readonly canisters: readonly CanisterReport[];
  readonly centre: ReturnType<typeof centreWith>;
  readonly acoustic: AcousticReport | { readonly missing: string } | null;
  readonly ways: readonly WayReport[];
  readonly lift: Lift | null;
  /** The same with every panel left out. */
  readonly openLift: Lift | null;
  readonly legs: Legs | { readonly missing: string };
  readonly emptied: readonly Emptied[];
  readonly freeEnd: FreeEnd | null;
  readonly quantities: Readonly<Record<string, RecoveryQuantity>>;
  readonly findings: readonly Finding[];
}

/** The report of a model, for command, sheet and note. Null where the document says nothing of recovery. */
export const recoveryReport = oncePerModel((model): RecoveryReport | null =>
  model.document.recovery ? reportOf(model) : null,
);

function reportOf(model: Model): RecoveryReport {
  const { document, mass } = model;
  const recovery = document.recovery!;
  const density = waterDensityOf(document);
  const lift = liftOf(model);
  const legs = legsOf(model);
  const pull = recovery.rope.hauls === 'plate' ? (stageOf(lift, 'haul')?.hook ?? 0) : recovery.rope.messengerPull!.si;
  const rope = {
    length: lengthOfRope(document),
    parts: ropePartsOf(recovery),
    strength: strengthOfRope(recovery),
    weightInWater: ropeWeightInWater(recovery, density),
    stretch: ropeStretch(recovery, pull),
    pull,
  };
  const parts = {
    rope,
    float: floatOf(document),
    canisters: canistersOf(document),
    centre: centreWith(document, mass),
    acoustic: acousticOf(document),
    ways: waysOf(document),
    lift,
    openLift: openLiftOf(model),
    legs,
    emptied: emptiedOf(model),
    freeEnd: lift ? freeEndOf(model, lift) : null,
  };
  return { ...parts, quantities: quantitiesOf(parts), findings: findingsOf(model, parts) };
}

export const stageOf = (lift: Lift | null, id: string): LiftStage | undefined =>
  lift?.stages.find((stage) => stage.id === id);

/** The stage that pulls hardest on the hook. */
export const heaviestStage = ({ stages }: Lift): LiftStage =>
  stages.reduce((most, stage) => (stage.hook > most.hook ? stage : most));

function emptiedOf({ geometry, mass, document }: Model): Emptied[] {
  const wanted = document.recovery?.lift?.drainTime.si;
  if (wanted === undefined) return [];
  return compartmentsOf(geometry).flatMap((compartment) => {
    if (compartment.kind !== 'tray') return [];
    const { bay, a, b, height, holes, otherHoles } = compartment;
    const area = a * b;
    const tray = mass.trays.find((one) => one.bay === bay.id)!;
    const hole = holes > 0 && otherHoles !== 0 ? holes : 0;
    const time = tray.drainTime;
    const run = time === null ? null : emptyingTray(area, height, hole, time);
    const half = run ? run.time[run.inside.findIndex((v) => v <= (area * height) / 2)]! : null;
    return [{ bay: bay.id, mass: tray.effect, half, time, hole: holeFor(area, height, wanted), there: holes }];
  });
}

type Parts = Omit<RecoveryReport, 'quantities' | 'findings'>;

function quantitiesOf({
  rope,
  float,
  canisters,
  acoustic,
  ways,
  lift,
  openLift,
  legs,
  freeEnd,
  emptied,
  centre,
}: Parts): RecoveryReport['quantities'] {
  const all: Record<string, RecoveryQuantity> = {};
  const put = (id: string, value: number | null | undefined, unit: string, title: string, source: string): void => {
    if (value !== null && value !== undefined && Number.isFinite(value)) all[id] = { value, unit, title, source };
  };
  put('rope.length', rope.length, 'm', 'Length of the rope', 'document, or depth, drift and slack');
  put(
    'rope.strength',
    rope.strength,
    'N',
    'Strength of the rope at the end of the deployment',
    '0027/ND Rev 11, 7.7 and 7.8; factors of the document',
  );
  put(
    'rope.weightInWater',
    rope.weightInWater,
    'N/m',
    'Weight of the rope in water, negative where it floats',
    'Archimedes',
  );
  put(
    'rope.stretch',
    rope.stretch,
    '1',
    'Part that the rope is longer under its pull',
    'stretch at break in proportion',
  );
  const [canister] = canisters;
  if (canister) {
    put(
      'rope.stowedVolume',
      canister.stowed,
      'm^3',
      'Volume of the coiled rope with its packing',
      'solid part of the document',
    );
    put(
      'canister.height',
      canister.needed,
      'm',
      'Height that the coil needs in its canister, clearance included',
      'geometry of the coil',
    );
    put('canister.heightThere', canister.canister.height.si, 'm', 'Height of the canister', 'document');
  }
  put('centre.moved', centre.moved, 'm', 'Centre of mass moved in plan by releases, canisters and floats', 'statics');
  put(
    'float.netBuoyancy',
    float.net,
    'N',
    'Net buoyancy of the float at depth, at the end of the deployment',
    'Archimedes, compression and uptake of the document',
  );
  put(
    'float.growth',
    float.growth,
    'N',
    'Weight of growth on the float in water',
    'growth as for the plate, on the sphere of its volume',
  );
  put('float.reserve', float.reserve, 'N', 'Pull left for a snag and to spare while the rope runs out', 'statics');
  if (!('missing' in float.ascent)) {
    put(
      'float.ascentTime',
      float.ascent.time,
      's',
      'Time until the float is at the surface',
      'drag and buoyancy, by steps of depth',
    );
    put('float.ascentSpeed', float.ascent.meanSpeed, 'm/s', 'Its mean speed', 'the same');
    put('float.drift', float.ascent.drift, 'm', 'Drift in the current on the way', 'current by time');
  }
  put('float.watchCircle', float.watchCircle, 'm', 'Radius in which a float on its rope lies', 'taut rope');
  put(
    'float.searchArea',
    float.searchArea,
    'm^2',
    'Area to search, without the vessel’s own error',
    'circle of watch or of drift',
  );
  const chosen = ways.find((way) => way.chosen)!;
  put(
    'release.failsToRelease',
    chosen.fails,
    '1',
    'Probability of not getting the plate back by the chosen way',
    'rates of the document, beta-factor model',
  );
  put(
    'release.releasesFalsely',
    chosen.releasesFalsely,
    '1',
    'Probability that it lets go by itself within the deployment',
    'rates of the document',
  );
  if (acoustic && !('missing' in acoustic)) {
    put(
      'acoustic.absorption',
      acoustic.link.absorption,
      '1/m',
      'Absorption of sound, in dB for a metre',
      'Francois & Garrison 1982',
    );
    put(
      'acoustic.excess',
      acoustic.excess,
      '1',
      'Left over the threshold at the range stated, in dB',
      'sonar equation',
    );
    put('acoustic.range', acoustic.range, 'm', 'Range at which nothing is left over', 'sonar equation');
  }
  if (lift) {
    const most = heaviestStage(lift);
    put(
      'lift.mass',
      lift.mass,
      'kg',
      'Mass lifted, equipment of recovery included',
      'mass, and the document’s equipment',
    );
    put('lift.hookLoad', most.hook, 'N', `Largest load on the hook: ${most.title.toLowerCase()}`, 'stages of the lift');
    put(
      'lift.dynamicFactor.air',
      stageOf(lift, 'overboard')!.dynamicFactor,
      '1',
      'Dynamic factor in air',
      lift.airFactor.source,
    );
    const wet = lift.stages
      .filter(({ kind }) => kind === 'splash' || kind === 'deep')
      .reduce((a, b) => (b.hook > a.hook ? b : a));
    put(
      'lift.dynamicFactor.water',
      wet.hook / (lift.mass * 9.80665),
      '1',
      `Load on the hook over the weight in air, in the water: ${wet.title.toLowerCase()}`,
      'DNV-RP-N103, 4.4 (from memory)',
    );
    put(
      'lift.addedMass',
      lift.water.addedMass,
      'kg',
      'Added mass in the lift',
      'lattice, and open-area rule for large motions',
    );
    put(
      'lift.addedMass.open',
      openLift!.water.addedMass,
      'kg',
      'Added mass of the open grid in the lift',
      'the same without panels',
    );
    put(
      'lift.hookLoad.open',
      heaviestStage(openLift!).hook,
      'N',
      'Largest load on the hook with every panel left out',
      'stages of the lift',
    );
    put(
      'lift.hoistPeriod',
      hoistPeriod(
        lift.load.mass + lift.load.entrained + lift.load.addedMass,
        lift.load.lineMass,
        lift.load.fields.line.stiffness.si,
      ),
      's',
      'Natural period on the hoist at depth',
      'one mass on the line',
    );
    put(
      'lift.allowedHeight',
      allowedHeight(lift, lift.sea.Tz, () => true),
      'm',
      'Largest significant height for every stage, at the period stated',
      'capacity, slack and slam',
    );
    put(
      'lift.allowedHeight.open',
      allowedHeight(openLift!, lift.sea.Tz, () => true),
      'm',
      'The same with every panel left out',
      'capacity and slack',
    );
    put(
      'lift.sinkSpeed',
      sinkingSpeed(
        lift.stages.find(({ id }) => id === 'lower')!.leastWeight,
        lift.load.density,
        lift.load.dragCoefficient,
        lift.load.area,
      ),
      'm/s',
      'Speed at which the plate sinks by itself',
      'drag and weight in water',
    );
    put(
      'lift.tipSpeed',
      tipMotion(lift.load.fields, lift.sea.Hs, lift.sea.Tz).speed,
      'm/s',
      'Speed of the tip of crane or frame',
      'DNV-RP-N103, 4.3.3 (from memory)',
    );
  }
  if (!('missing' in legs)) {
    put(
      'bridle.largest',
      legs.largest,
      '1',
      'Largest part of the hook load in a leg, skew included',
      'statics; 0027/ND Rev 11, 5.6.12',
    );
    put('bridle.tilt', legs.whole.tilt, 'rad', 'Tilt of the plate under its hook', 'statics');
  }
  if (freeEnd) {
    put('free.speed', freeEnd.speed, 'm/s', 'Speed of sinking flat when nothing holds it', 'drag and weight in water');
    put('free.timeToBed', freeEnd.timeToBed, 's', 'Time to the sea bed', 'depth by speed');
    put('free.energy', freeEnd.energy, 'J', 'Energy of the blow on the bed, added mass included', 'kinetic energy');
    put('free.towing', freeEnd.towing, 'N', 'Pull of towing it flat below its float at a knot', 'drag');
    put('free.mayLose', freeEnd.mayLose, 'N', 'Buoyancy that the float over the plate may lose', 'document');
  }
  const slowest = emptied.reduce((most, { time }) => (time === null ? Infinity : Math.max(most, time)), 0);
  if (emptied.length > 0) put('lift.drainTime', slowest, 's', 'Longest time until a bay has drained', 'Torricelli');
  return all;
}

function findingsOf(
  { document }: Model,
  { canisters, ways, legs, lift, centre, freeEnd, rope, acoustic }: Parts,
): Finding[] {
  const recovery = document.recovery!;
  const chosen = ways.find((way) => way.chosen)!;
  const findings: Finding[] = [];
  const tell = (id: string, text: string, mend: string): void =>
    void findings.push({ id, place: 'recovery', text, mend });
  for (const { release, runsFree } of canisters)
    for (const text of runsFree)
      tell('rope-may-hang', `Canister of ${release}: ${text}`, 'Try the run-out in water before sailing.');
  if (chosen.fails === null || chosen.releasesFalsely === null)
    tell(
      'no-rates',
      `No probability can be told for “${chosen.title}”: nobody gave ${chosen.without.join('; ')}.`,
      'Give rates of the maker or of your own records with their source, or decide by the ranking and the common causes.',
    );
  if (chosen.chain.filter((part) => part.startsWith('release')).length === 1)
    tell(
      'one-release',
      'One release is all that brings the float up.',
      'Two of unlike kind are worth more than two of one kind.',
    );
  for (const id of recovery.ways.find(({ id }) => id === recovery.chosen)!.releases) {
    const release = recovery.releases.find((one) => one.id === id)!;
    if (!release.checkedBeforeSailing)
      tell(
        'not-checked',
        `Release ${id} is not checked before sailing.`,
        'Let the transponder answer on deck and in the water, and write the answer down.',
      );
    if (!release.antifouled)
      tell(
        'fouling',
        `Release ${id} is not kept free of growth.`,
        'Growth holds hooks shut: antifoul it, and pull it clear at each inspection.',
      );
    if (release.tiltLimit && !('missing' in legs) && legs.whole.tilt > release.tiltLimit.si)
      tell(
        'release-tilted',
        `The plate hangs more tilted than release ${id} may be.`,
        'Look at the balance of the plate, or mount the release in gimbals.',
      );
  }
  if (rope.length < document.water.depth.si)
    tell(
      'rope-short',
      `The rope is ${rope.length.toFixed(1)} m long, the water over the plate ${document.water.depth.si.toFixed(1)} m deep: the float does not reach the surface.`,
      'Give a longer rope.',
    );
  if (recovery.rope.packing.how === 'assumed')
    tell(
      'packing-assumed',
      'How tightly the rope lies is assumed, not measured.',
      'Coil the rope into its canister once and measure the height.',
    );
  if (centre.moved > 0.05)
    tell(
      'centre-moved',
      `Releases, canisters and floats move the centre of mass by ${(1000 * centre.moved).toFixed(0)} mm.`,
      'Place two canisters opposite each other, or move the point of hang.',
    );
  if ('missing' in legs && lift)
    tell('no-bridle', `The slings cannot be judged: ${legs.missing}.`, 'Give what is missing.');
  if (lift && lift.stages.some(({ snaps }) => snaps))
    tell(
      'line-snaps',
      'The hoist line goes slack in the splash zone at the sea stated, and comes taut with a jerk.',
      'Lift in a lower or longer sea, an edge first, or with a compensated hoist.',
    );
  const slammed = lift?.slamProved ? lift.stages.filter(({ slam }) => slam && slam.pressure > lift.slamProved!) : [];
  if (slammed.length > 0)
    tell(
      'slam-beyond-proof',
      `In the lift the plate meets the water at ${Math.max(...slammed.map(({ slam }) => slam!.speed)).toFixed(2)} m/s at the sea stated; panels and fixings are proved for ${document.loads.crossing!.speed.typed}.`,
      'Raise the speed of crossing the surface (loads), or lift more slowly or in a lower sea.',
    );
  if (lift && 9.80665 * (lift.sea.Tz / 8.898) ** 2 < lift.sea.Hs)
    tell(
      'sea-too-steep',
      'A sea of this height has no mean period as short as stated.',
      'Give a longer period, or a lower sea.',
    );
  if (acoustic && 'missing' in acoustic)
    tell('no-acoustic-budget', `The acoustic budget cannot be told: ${acoustic.missing}.`, 'Give what is missing.');
  if (freeEnd)
    tell(
      'may-flutter',
      'A plate that sinks freely may tumble or glide sideways, faster than flat: the speed told is no bound.',
      'Keep people and vessels clear of the whole water over it.',
    );
  return findings;
}

/** Largest significant height for one stage at the period stated, m; null for a stage that no sea touches. */
export const allowedFor = (lift: Lift, { id, kind }: LiftStage): number | null =>
  kind === 'splash' || kind === 'deep' ? allowedHeight(lift, lift.sea.Tz, (stage) => stage.id === id) : null;

/** Allowed significant heights by period, stage by stage kind. */
export function allowedByPeriod(
  lift: Lift,
): readonly { readonly period: number; readonly splash: number; readonly deep: number }[] {
  return liftPeriods.map((period) => ({
    period,
    splash: allowedHeight(lift, period, ({ kind }) => kind === 'splash'),
    deep: allowedHeight(lift, period, ({ kind }) => kind === 'deep'),
  }));
}
