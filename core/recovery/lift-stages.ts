import type { LiftFields, RecoveryFields } from '../document/recovery-field.ts';
import { growthAfter, growthDensity } from '../water/marine-growth.ts';
import { openGrid } from '../hydrodynamics/open-grid.ts';
import { liftDynamics } from '../loads/lift-dynamic-factor.ts';
import { flatSlamCoefficient, slamPressure } from '../loads/slam-pressure.ts';
import { forceOf } from '../loads/loaded.ts';
import { heldVolume } from '../mass/held-volume.ts';
import { compartmentsOf } from '../geometry/compartments-of.ts';
import type { Model } from '../model.ts';
import { g } from '../water/sea-water.ts';
import { addedByEquipment, equipmentOf } from './equipment.ts';
import { deepForces, snapPull, splashForces, type LiftLoad, type Sea } from './lift-load.ts';
import { liftWater, type LiftWater } from './lift-water.ts';
import { oncePerModel } from '../once-per-model.ts';
import { stageTitles, type StageId } from './stage-titles.ts';
import { shortestPeriod } from './wave-zone.ts';

/** One stage of putting the plate down or getting it back. Forces in N, water held in kg. */
export interface LiftStage {
  readonly id: string;
  readonly title: string;
  readonly kind: 'at rest' | 'air' | 'splash' | 'deep';
  readonly weight: number;
  readonly held: number;
  readonly hook: number;
  readonly dynamicFactor: number | null;
  /** 0.9 of the least weight on the hook over what the water lifts; null where no water acts. */
  readonly slackMargin: number | null;
  /** Least weight on the hook, and what acts against it, N. */
  readonly leastWeight: number;
  readonly lifting: number;
  /** A snap is counted in the hook load. */
  readonly snaps: boolean;
  /** How the underside meets the water in the splash zone: speed against it, m/s, and pressure on a panel, Pa; null elsewhere. */
  readonly slam: { readonly speed: number; readonly pressure: number } | null;
  readonly abort: string;
}

/** A lift with its stages, and what it may be done in. */
export interface Lift {
  readonly water: LiftWater;
  readonly load: LiftLoad;
  readonly capacity: number;
  /** Slam for which panels and fixings are proved, without load factor, Pa; null where none is stated, or without panels. */
  readonly slamProved: number | null;
  /** Stated. */
  readonly sea: Sea;
  readonly stages: readonly LiftStage[];
  /** Stages at any sea. */
  readonly at: (sea: Sea) => readonly LiftStage[];
  readonly airFactor: { readonly value: number; readonly source: string };
  /** kg: plate with equipment; growth on it after the deployment; water in tubes and on trays when nothing has drained. */
  readonly mass: number;
  readonly growth: number;
  readonly heldTubes: number;
  readonly heldTrays: number;
  readonly heldUndrainable: number;
}

/** Drag coefficient of lifting where none is stated: the floor of the simplified method for open bodies, and for closed plates the usual one. */
export const liftDragFloor = {
  value: 2.5,
  source: 'DNV-RP-N103, floor for oscillating flow without tests (from memory)',
} as const;
export const liftSlamFloor = {
  value: 5,
  source: 'DNV-RP-N103, bodies that are no smooth cylinder (from memory)',
} as const;

/** Least of what A-frame, winch and line may carry, N. */
export const liftCapacity = ({ aFrame, winch, line }: LiftFields): number =>
  Math.min(aFrame.si, winch.si, line.breakingStrength.si / line.designFactor);

/**
 * The lift of a model in stages; null for a document without one.
 * Growth: after the deployment, on all faces, by `growthAfter`. Water held: `undrained` all of it, `half`, or drained but for tubes without a drain.
 */
export const liftOf = oncePerModel((model) => made(model, false));
/** The same with every panel left out. */
export const openLiftOf = oncePerModel((model) => made(model, true));

function made(model: Model, bare: boolean): Lift | null {
  const recovery = model.document.recovery;
  const fields = recovery?.lift;
  if (!recovery || !fields) return null;
  const { mass: report, document, loads } = model;
  const density = report.waterDensity;
  const water = liftWater(bare ? openGrid(model) : model, density);
  const way = recovery.ways.find(({ id }) => id === recovery.chosen)!;
  const added = addedByEquipment(equipmentOf(document, way), document);
  const panelMass = bare ? report.parts.filter(({ kind }) => kind === 'panels').reduce((s, p) => s + p.mass, 0) : 0;
  const panelVolume = bare ? report.parts.filter(({ kind }) => kind === 'panels').reduce((s, p) => s + p.volume, 0) : 0;
  const mass = report.total - panelMass + added.mass;
  const volume = report.displaced.asBuilt - panelVolume + added.volume;
  const growth = growthOf(model, recovery, bare);
  const grownDensity = document.hydrodynamics?.growth?.density?.si ?? growthDensity;
  const heldUndrainable = -forceOf(loads.plate.frame, loads.plate.heldWater.undrained) / g;
  const trays = bare ? [] : report.trays;
  const heldTrays = trays.reduce((sum, { effect }) => sum + effect, 0);
  const bells = bare ? 0 : report.bells.reduce((sum, { effect }) => sum + effect, 0);
  const drag = fields.dragCoefficient ?? document.loads.liftOut?.dragCoefficient ?? liftDragFloor;
  const load: LiftLoad = {
    fields,
    density,
    mass,
    entrained: report.entrainedWater,
    volume,
    lineMass: fields.line.mass.si * document.water.depth.si,
    addedMass: water.addedMass,
    area: water.area,
    breadth: water.breadth,
    dragCoefficient: Math.max(drag.value, water.steady),
    slamCoefficient: (fields.slamCoefficient ?? liftSlamFloor).value,
  };
  const grown: LiftLoad = { ...load, mass: mass + growth, volume: volume + growth / grownDensity };
  const airFactor = liftDynamics(mass + heldUndrainable, document.loads.liftInAir?.dynamicFactor);
  const lineInWater = load.lineMass * g * (1 - density / 7850);
  const down = g * (mass - density * volume);
  const up = down + growth * g * (1 - density / grownDensity);
  const tilt = fields.tilt?.si ?? 0;
  const tilted = keptTilted(model, bare, 'tray', tilt) * density;
  // Air leaves a bell over its higher edge as water leaves a tray.
  const bellsTilted = Math.min(bells, keptTilted(model, bare, 'bell', tilt) * density * g);

  const at = (sea: Sea): readonly LiftStage[] => {
    const rest = (id: StageId, abort: string): LiftStage => ({
      ...still,
      id,
      title: stageTitles[id],
      weight: 0,
      abort,
    });
    const air = (id: StageId, onHook: number, held: number, abort: string): LiftStage => {
      const weight = g * (onHook + held);
      const factor = liftDynamics(onHook + held, document.loads.liftInAir?.dynamicFactor).value;
      return { ...still, id, title: stageTitles[id], kind: 'air', weight, held, hook: weight * factor, dynamicFactor: factor, leastWeight: weight, abort }; // prettier-ignore
    };
    const splash = (
      id: StageId,
      of: LiftLoad,
      held: number,
      least: number,
      speed: number,
      theta: number,
      abort: string,
    ): LiftStage => {
      const weight = g * (of.mass + held);
      const { hydrodynamic, relative, pressure } = splashForces(of, sea, speed, theta);
      const slackMargin = hydrodynamic > 0 ? (0.9 * least) / hydrodynamic : null;
      const snaps = slackMargin !== null && slackMargin < 1;
      const dynamic = snaps ? Math.max(hydrodynamic, snapPull(of, sea, least, speed)) : hydrodynamic;
      return { id, title: stageTitles[id], kind: 'splash', weight, held, hook: weight + dynamic, dynamicFactor: (weight + dynamic) / weight, slackMargin, leastWeight: least, lifting: hydrodynamic, snaps, slam: { speed: relative, pressure }, abort }; // prettier-ignore
    };
    const deep = (
      id: StageId,
      of: LiftLoad,
      onHook: number,
      speed: number,
      hauling: boolean,
      abort: string,
    ): LiftStage => {
      const weight = onHook + lineInWater;
      const { drag, pull } = deepForces(of, sea, speed);
      const lifting = pull + (hauling ? 0 : drag);
      const slackMargin = lifting > 0 ? (0.9 * onHook) / lifting : null;
      const hook = weight + pull + (hauling ? drag : 0);
      return { id, title: stageTitles[id], kind: 'deep', weight, held: 0, hook, dynamicFactor: hook / weight, slackMargin, leastWeight: onHook, lifting, snaps: false, slam: null, abort }; // prettier-ignore
    };
    const { lowering, hoisting } = { lowering: fields.lowering.si, hoisting: fields.hoisting.si };
    const all = report.entrainedWater + heldTrays;
    return [
      rest('deck', 'Do not lift: weather, rigging or transponder not as planned.'),
      air('overboard', mass, heldUndrainable, 'Land on deck again before the plate is over the rail.'),
      splash('splash-down', load, 0, down - bells, lowering, 0, 'Hoist back into the air if a leg goes slack.'), // prettier-ignore
      ...(tilt > 0
        ? [splash('splash-down-tilted', load, 0, down - bellsTilted, lowering, tilt, 'Hoist back into the air if a leg goes slack.')] // prettier-ignore
        : []),
      deep('lower', load, down, lowering, false, 'Stop and hold at depth; hoist if the line goes slack again.'), // prettier-ignore
      deep('connect', load, down, 0, false, 'Keep the plate on the hook until the suspension carries it.'), // prettier-ignore
      rest('service', 'The suspension carries the plate; nothing hangs on the hook.'),
      deep('disconnect', grown, up, 0, true, 'Leave the suspension connected until the hook carries the plate.'), // prettier-ignore
      deep('haul', grown, up, hoisting, true, 'Stop the winch; lower to calmer water below the waves.'), // prettier-ignore
      splash('splash-up', grown, all, up, hoisting, 0, 'Lower until just under water and wait.'), // prettier-ignore
      splash('splash-up-half', grown, heldUndrainable + (all - heldUndrainable) / 2, up, hoisting, 0, 'Lower until just under water and wait.'), // prettier-ignore
      splash('splash-up-drained', grown, heldUndrainable, up, hoisting, 0, 'Hold clear of the crests until the water has run out.'), // prettier-ignore
      ...(tilt > 0
        ? [splash('splash-up-tilted', grown, Math.max(heldUndrainable, report.entrainedWater / 2) + tilted, up, hoisting, tilt, 'Lower until just under water and wait.')] // prettier-ignore
        : []),
      air('deck-again', mass + growth, heldUndrainable, 'Hang inboard over the landing place until it is clear.'), // prettier-ignore
    ];
  };
  const { crossing } = document.loads;
  const slamProved = bare || !crossing ? null : slamPressure({ rho: density, C_s: crossing.slamCoefficient?.value ?? flatSlamCoefficient, v: crossing.speed.si }); // prettier-ignore
  const sea: Sea = { Hs: fields.sea.height.si, Tz: fields.sea.period.si };
  return { water, load, capacity: liftCapacity(fields), slamProved, sea, stages: at(sea), at, airFactor, mass, growth, heldTubes: report.entrainedWater, heldTrays, heldUndrainable }; // prettier-ignore
}

const still = { kind: 'at rest', held: 0, hook: 0, dynamicFactor: null, slackMargin: null, leastWeight: 0, lifting: 0, snaps: false, slam: null } as const; // prettier-ignore

/** Growth on all faces of tubes and panels after the deployment, kg. */
function growthOf({ document, geometry }: Model, { deployment }: RecoveryFields, bare: boolean): number {
  const years = deployment.si / secondsInYear;
  const { thickness, density } = growthAfter(document, years);
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes].reduce((sum, { section: { width, height }, from, to }) => sum + 2 * (width + height) * (to - from), 0); // prettier-ignore
  const panels = bare ? 0 : geometry.panels.reduce((sum, { area }) => sum + 2 * area, 0);
  return thickness * density * (tubes + panels);
}
export const secondsInYear = 365.25 * 86400;

/** What trays keep of water, or bells of air, while the plate hangs tilted, m³; a bay closed on both sides keeps all. */
function keptTilted({ geometry }: Model, bare: boolean, of: 'tray' | 'bell', tilt: number): number {
  if (bare || tilt === 0) return 0;
  return compartmentsOf(geometry).reduce((sum, { kind, a, b, height, otherHoles }) => sum + (kind !== of ? 0 : otherHoles === null ? heldVolume(a, b, height, tilt) : a * b * height), 0); // prettier-ignore
}

/** Largest significant height, m, in which every stage chosen keeps within the capacity, taut, and within the slam that panels are proved for, at a period; steeper seas do not occur. */
export function allowedHeight(
  { at, capacity, slamProved }: Lift,
  Tz: number,
  chosen: (stage: LiftStage) => boolean,
): number {
  const steepest = 9.80665 * (Tz / 8.898) ** 2;
  const good = (Hs: number): boolean =>
    at({ Hs, Tz }).every(
      (stage) =>
        !chosen(stage) ||
        (stage.hook <= capacity &&
          (stage.slackMargin ?? 1) >= 1 &&
          (stage.slam?.pressure ?? 0) <= (slamProved ?? Infinity)),
    );
  if (!good(1e-6)) return 0;
  if (good(steepest)) return steepest;
  let [low, high] = [0, steepest];
  for (let n = 0; n < 40 && high - low > 1e-4; n++) {
    const middle = (low + high) / 2;
    if (good(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Mean periods of the table and the figure, s. */
export const liftPeriods = [3, 4, 5, 6, 7, 8, 9, 10, 12, 14] as const;
export const seaExists = ({ Hs, Tz }: Sea): boolean => Tz >= shortestPeriod(Hs);
