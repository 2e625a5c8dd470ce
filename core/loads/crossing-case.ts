import { everySupport, type CaseContext, type CaseResult } from './case-context.ts';
import { holdingFindings } from './holding-findings.ts';
import { missingCase } from './missing-case.ts';
import { pathWords } from './path-words.ts';
import { flatSlamCoefficient, slamPressure } from './slam-pressure.ts';
import { Pressures } from './pressures.ts';
import { solveCase } from './solve-case.ts';

const head = {
  id: 'crossing-up',
  loadCase: 'crossing the surface',
  direction: 'up',
  title: 'Crossing the surface, slam up',
} as const;

/** The plate meets the water: slam on panels and tubes, against the least weight in air (no factor, it helps); tubes still empty. */
export function crossingCase(context: CaseContext): CaseResult {
  const { document, plate, mass, factor, geometry, suspension, forceText } = context;
  const { crossing } = document.loads;
  if (!crossing)
    return missingCase(
      head,
      'the speed at which the plate crosses the surface',
      'loads.crossing',
      'Give loads.crossing.speed: lowering speed with the water’s own speed.',
    );
  const C_s = crossing.slamCoefficient?.value ?? flatSlamCoefficient;
  const loadFactor = factor('gamma_F_characteristic');
  const pressure = loadFactor * slamPressure({ rho: mass.waterDensity, C_s, v: crossing.speed.si });
  const force = pressure * plate.shares.solid;
  const pressures = Float64Array.from(plate.fields, ({ least }) => pressure - least.air);
  const solved = solveCase(plate, {
    ...head,
    path: `${pathWords('Slam of the water up on the plate', 'up', geometry)} All of the solid area is taken to meet the water at once; slam coefficient ${C_s} (${crossing.slamCoefficient?.source ?? 'DNV-RP-N103, simplified method, from memory'}).`,
    accidental: false,
    loadFactor,
    force,
    terms: [
      { name: 'Slam of the water', force },
      { name: 'Least weight in air', force: -plate.least.air },
    ],
    pressures,
    relieved: true,
    service: {
      pressures: Float64Array.from(plate.fields, ({ least }) => pressure / loadFactor - least.air),
      force: force / loadFactor - plate.least.air,
    },
    loadings: [
      {
        name: 'slam on all of the solid area',
        pressures: Pressures.of(pressures),
        onTubes: [
          [plate.onTubes.area, force],
          [plate.leastOfRest.air, 1],
        ],
      },
    ],
    movingMass: plate.mass,
    support: suspension,
    present: [everySupport(suspension)],
  });
  return {
    situations: [solved.situation],
    findings: () => [
      ...holdingFindings(solved, context),
      ...(solved.slack() && suspension.set.oneWay
        ? [
            {
              id: 'line-slack',
              place: head.id,
              text: `The slam lifts the plate: the suspension goes slack at ${forceText(plate.least.air)}, the slam is ${forceText(force / loadFactor)} (${forceText(force)} with its factor). The plate is solved with its own inertia; the snap that follows is not among these cases.`,
              mend: 'Cross the surface more slowly, or tilted.',
            },
          ]
        : []),
    ],
  };
}
