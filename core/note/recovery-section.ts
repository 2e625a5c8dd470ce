import { liftSlam } from '../checks/panel-slam.ts';
import type { CheckRow } from '../checks/check-row.ts';
import type { Model } from '../model.ts';
import { placeWords } from '../place-words.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { recoveryCautions } from '../recovery/recovery-cautions.ts';
import {
  allowedFor,
  heaviestStage,
  recoveryReport,
  type Emptied,
  type RecoveryReport,
} from '../recovery/recovery-report.ts';
import type { Lift } from '../recovery/lift-stages.ts';
import { allowedSeaFigure, hookByPeriodFigure, hookLoadFigure } from './lift-figures.ts';
import { canisterFigure, riggingFigure } from './recovery-figures.ts';
import { mergedRows } from './merged-rows.ts';
import type { Block, Section } from './note.ts';

/** Putting the plate down and getting it back: the ways side by side, rope, float, sound, and the lift stage by stage. */
export function recoverySection(model: Model, rows: readonly CheckRow[], print: Print): Section {
  const title = 'Deployment and recovery';
  const report = recoveryReport(model);
  if (!report)
    return {
      title,
      blocks: [{ kind: 'paragraph', tone: 'caution', text: 'The document does not say how the plate is put down and got back: none of it is judged here.' }], // prettier-ignore
    };
  return {
    title,
    blocks: [
      ...ways(report, print),
      riggingFigure(model, report, print),
      ropeAndFloat(report, print),
      ...canisters(model, report, print),
      ...sound(report, print),
      ...lift(report, print),
      ...slam(model, rows, print),
      ...legs(model, report, print),
      ...emptied(report.emptied, model, print),
      ...freeEnd(report, print),
      ...(report.findings.length === 0 ? [] : [{ kind: 'list', tone: 'loud', items: report.findings.map(({ text, mend }) => `${text} ${mend}`) } as const]), // prettier-ignore
      { kind: 'list', tone: 'caution', items: recoveryCautions },
    ],
  };
}

const chance = (value: number | null): string => (value === null ? 'no rate' : significant(value, 2));

function ways({ ways: all }: RecoveryReport, print: Print): Block[] {
  const ordered = [...all].sort((a, b) => a.rank - b.rank);
  return [
    {
      kind: 'table',
      caption: ordered.every(({ fails }) => fails !== null)
        ? 'Ways of getting the plate back, by the probability of failing, from rates that the document names'
        : 'Ways of getting the plate back, ranked by what is twofold and unlike: without every rate there is no probability',
      columns: [
        { title: 'Way', width: 0.25 },
        { title: 'Fails', width: 0.09, align: 'right' },
        { title: 'Lets go by itself', width: 0.11, align: 'right' },
        { title: 'Adds', width: 0.11, align: 'right' },
        { title: 'Leaves', width: 0.17 },
        { title: 'What has to work', width: 0.27 },
      ],
      rows: ordered.map(({ title, chosen, fails, releasesFalsely, mass, left, chain, kind }) => [
        chosen ? `${title} (chosen)` : title,
        chance(fails),
        kind === 'released float' ? chance(releasesFalsely) : '–',
        print.quantity(mass, 'kg', 3),
        left,
        chain.join('; '),
      ]),
      loud: ordered.flatMap(({ chosen, rank }, i) => (chosen && rank > 1 ? [i] : [])),
    },
    ...ordered.flatMap(({ title, commonCause }): Block[] => commonCause.length === 0 ? [] : [{ kind: 'paragraph', text: `What can take out both releases of “${title}” at once: ${commonCause.join('; ')}.` }]), // prettier-ignore
  ];
}

function ropeAndFloat({ rope, float, quantities }: RecoveryReport, print: Print): Block {
  const given = (id: string, unit: string): string =>
    quantities[id] ? print.quantity(quantities[id].value, unit, 3) : '–';
  const { splice, bend, wear, wet, age } = rope.parts;
  return {
    kind: 'table',
    caption: 'Rope and float, at the end of the deployment',
    columns: [
      { title: 'What', width: 0.42 },
      { title: 'Value', width: 0.16, align: 'right' },
      { title: 'From', width: 0.42 },
    ],
    rows: [
      ['Length of the rope', given('rope.length', 'm'), 'document, or depth, drift and slack'],
      ['Strength left', given('rope.strength', 'kN'), `parts left: splice ${splice}, bend ${significant(bend, 3)} (the worse), wear ${wear}, wet ${wet}, age ${significant(age, 3)}`],
      ['Pull that it hauls', print.quantity(rope.pull, 'kN', 3), 'the heavier line, or the plate'],
      ['Weight of the rope in water', given('rope.weightInWater', 'N/m'), 'negative where it floats'],
      ['Net buoyancy of the float at depth', given('float.netBuoyancy', 'N'), 'volume compressed and partly filled'],
      ['Growth on the float', given('float.growth', 'N'), 'as on the plate, on a sphere of its volume'],
      ['Pull left when snag is set aside', given('float.reserve', 'N'), `${print.quantity(float.snag, 'N', 3)} for a snag`],
      ['Time to the surface', given('float.ascentTime', 's'), 'buoyancy against drag, by steps of depth'],
      ['Drift on the way', given('float.drift', 'm'), 'current by time'],
      ['Radius and area of search', `${print.quantity(float.searchRadius, 'm', 3)}, ${given('float.searchArea', 'm^2')}`, 'larger of watch circle and drift'],
      ['Depth at which the float collapses', print.quantity(float.crushDepth, 'm', 3), 'document, or 1.25 of its rated depth (common practice, no source)'],
    ],
  }; // prettier-ignore
}

function canisters({ document }: Model, { canisters: all, centre }: RecoveryReport, print: Print): Block[] {
  if (all.length === 0) return [];
  return [
    {
      kind: 'table',
      caption: `Rope canisters: ${document.recovery!.rope.packing.how === 'measured' ? 'packing measured' : 'packing assumed, to be measured by coiling once'}`,
      columns: [
        { title: 'On release', width: 0.16 },
        { title: 'Inside, diameter by height', width: 0.26 },
        { title: 'Height needed', width: 0.18, align: 'right' },
        { title: 'Would hold it too: diameter by height', width: 0.4 },
      ],
      rows: all.map(({ release, canister, needed, sizes }) => [
        release,
        `${canister.diameter.typed} by ${canister.height.typed}`,
        print.length(needed),
        sizes.map(({ diameter, height }) => `${print.length(diameter)} by ${print.length(height)}`).join('; '),
      ]),
      loud: all.flatMap(({ needed, canister }, i) => (needed > canister.height.si ? [i] : [])),
    },
    ...all.slice(0, 1).map((one) => canisterFigure(one, print)),
    { kind: 'paragraph', text: `Releases, canisters and floats on the plate move its centre of mass by ${print.length(centre.moved)} in plan.` }, // prettier-ignore
  ];
}

function sound({ acoustic }: RecoveryReport, print: Print): Block[] {
  if (!acoustic) return [];
  if ('missing' in acoustic)
    return [{ kind: 'paragraph', tone: 'loud', text: `The acoustic budget cannot be told: ${acoustic.missing}.` }];
  const { link, loss, excess, range } = acoustic;
  return [
    {
      kind: 'paragraph',
      text: `Command by sound: source ${link.sourceLevel} dB, less ${significant(loss, 3)} dB by spreading and absorption (${significant(1000 * link.absorption, 3)} dB in a kilometre, Francois and Garrison 1982), noise ${significant(link.noise, 3)} dB in a hertz, threshold ${link.threshold} dB: ${significant(excess, 3)} dB are left at the range stated, none at ${print.quantity(range, 'm', 3)}. Straight rays in even water: layers, shadow zones, the plate’s own shadow and bubbles under a hull take more. Try it at the place.`,
    },
  ];
}

function lift({ lift: own, openLift, legs: found }: RecoveryReport, print: Print): Block[] {
  if (!own || !openLift)
    return [{ kind: 'paragraph', tone: 'caution', text: 'No lift is described: hook loads, slack lines and allowed seas are not judged.' }]; // prettier-ignore
  const most = heaviestStage(own);
  return [
    {
      kind: 'paragraph',
      text: `The heaviest stage is “${most.title.toLowerCase()}”: ${print.quantity(most.hook, 'kN', 3)} on the hook, ${print.quantity(heaviestStage(openLift).hook, 'kN', 3)} at most for the open grid; ${print.quantity(own.capacity, 'kN', 3)} may be carried. Added mass in the lift ${print.quantity(own.water.addedMass, 'kg', 3)}, open ${print.quantity(openLift.water.addedMass, 'kg', 3)}. Growth weighs ${print.quantity(own.growth, 'kg', 3)}; undrained water ${print.quantity(own.heldTubes + own.heldTrays, 'kg', 3)}.`,
    },
    stages(own, found, print),
    hookLoadFigure(own, openLift, print),
    allowedSeaFigure(own, openLift, print),
    ...[hookByPeriodFigure(own, openLift, print)].filter((figure) => figure !== null),
  ];
}

function stages(lift: Lift, legs: RecoveryReport['legs'], print: Print): Block {
  const { stages: all, capacity } = lift;
  return {
    kind: 'table',
    caption: 'Lift stage by stage (simplified method of DNV-RP-N103, from memory). Slack margin: 0.9 of the least weight over what the water lifts. Sea: the largest significant height at the period stated, by capacity, slack and slam',
    columns: [
      { title: 'Stage', width: 0.175 },
      { title: 'Weight', width: 0.095, align: 'right' },
      { title: 'Water held', width: 0.09, align: 'right' },
      { title: 'Hook', width: 0.1, align: 'right' },
      { title: 'Sling', width: 0.095, align: 'right' },
      { title: 'Factor', width: 0.085, align: 'right' },
      { title: 'Slack margin', width: 0.08, align: 'right' },
      { title: 'Sea', width: 0.08, align: 'right' },
      { title: 'If it goes wrong', width: 0.2 },
    ],
    rows: all.map((stage) => {
      const { title, kind, weight, held, hook, dynamicFactor, slackMargin, snaps, abort } = stage;
      const allowed = allowedFor(lift, stage);
      return [
      title,
      kind === 'at rest' ? '–' : print.quantity(weight, 'kN', 3),
      held > 0 ? print.quantity(held, 'kg', 3) : '–',
      kind === 'at rest' ? '–' : print.quantity(hook, 'kN', 3),
      kind === 'at rest' || 'missing' in legs ? '–' : print.quantity(legs.largest * hook, 'kN', 3),
      dynamicFactor === null ? '–' : dynamicFactor.toFixed(2),
      slackMargin === null ? '–' : `${slackMargin.toFixed(2)}${snaps ? ' snaps' : ''}`,
      allowed === null ? '–' : print.quantity(allowed, 'm', 2),
      abort,
    ];
    }),
    loud: all.flatMap(({ hook, snaps, slackMargin }, i) => (hook > capacity || snaps || (slackMargin ?? 1) < 1 ? [i] : [])),
  }; // prettier-ignore
}

/** Slam on panels and their fixings: what the lift brings, what they are proved for, and what is then the gravest. */
function slam(model: Model, rows: readonly CheckRow[], print: Print): Block[] {
  const found = liftSlam(model, rows);
  if (!found) return [];
  const { worst, proved, panels } = found;
  const { speed, pressure } = worst.slam!;
  const beyond = proved === null || pressure > proved;
  const table = mergedRows(
    panels.map(({ panel, area, force, gravest }) => ({
      cells: [
        panel,
        print.quantity(area, 'm^2', 3),
        print.quantity(force, 'kN', 3),
        gravest?.title ?? 'not made',
        gravest === null ? '–' : gravest.utilisation === null ? gravest.verdict : gravest.utilisation.toFixed(2),
      ],
      loud: beyond || gravest?.verdict === 'fails',
    })),
    0,
  );
  return [
    {
      kind: 'table',
      caption: `Slam on each panel and its fixings. Hardest: ${worst.title.toLowerCase()}, ${print.quantity(speed, 'm/s', 3)} against the water, ${print.quantity(pressure, 'kPa', 3)}; proved for ${proved === null ? 'none: the document states no speed of crossing the surface' : `${print.quantity(proved, 'kPa', 3)}${beyond ? ', less than that' : ''} (load case “crossing the surface”)`}`,
      columns: [
        { title: 'Panels', width: 0.34 },
        { title: 'Area', width: 0.12, align: 'right' },
        { title: 'Slam', width: 0.12, align: 'right' },
        { title: 'Gravest of panel and fixings when proved', width: 0.29 },
        { title: 'Utilisation', width: 0.13, align: 'right' },
      ],
      ...table,
    },
  ];
}

function legs(model: Model, { legs: found, lift: own }: RecoveryReport, print: Print): Block[] {
  if (!own) return [];
  if ('missing' in found)
    return [{ kind: 'paragraph', tone: 'loud', text: `The slings cannot be judged: ${found.missing}.` }];
  const hook = heaviestStage(own).hook;
  // Under a hundredth of a degree it is round-off, or nothing that a spirit level shows.
  const degrees = (angle: number): string =>
    angle < 1.7e-4 ? 'less than 0.01°' : `${significant((angle * 180) / Math.PI, 2)}°`;
  return [
    {
      kind: 'table',
      caption: `Slings: part of the hook load in each leg, skew ${found.skew} (${found.skewSource}); the plate hangs ${degrees(found.whole.tilt)} from level`,
      columns: [
        { title: 'Leg', width: 0.3 },
        { title: 'Length', width: 0.15, align: 'right' },
        { title: 'Largest pull', width: 0.15, align: 'right' },
        { title: 'Were this leg lost: largest pull of another, tilt', width: 0.4 },
      ],
      rows: found.ids.map((id, i) => {
        const lost = found.lost.find((one) => one.id === id);
        return [
          placeWords(model, id),
          print.quantity(found.lengths[i]!, 'm', 3),
          print.quantity(found.skew * found.whole.tensions[i]! * hook, 'kN', 3),
          !lost ? '–' : lost.reason || `${print.quantity(lost.largest * hook, 'kN', 3)}, ${degrees(lost.tilt)}`,
        ];
      }),
    },
  ];
}

function emptied(all: readonly Emptied[], model: Model, print: Print): Block[] {
  if (all.length === 0) return [];
  const time = (seconds: number | null): string => (seconds === null ? 'never' : print.quantity(seconds, 's', 3));
  const table = mergedRows(
    all.map(({ bay, mass, half, time: whole, hole, there }) => ({
      cells: [placeWords(model, bay), print.quantity(mass, 'kg', 3), time(half), time(whole), `${print.quantity(there, 'mm^2', 3)}, ${print.quantity(hole, 'mm^2', 3)}`], // prettier-ignore
      loud: there < hole,
    })),
    0,
  );
  return [
    {
      kind: 'table',
      caption: 'Bays that hold water as the plate leaves the sea (Torricelli)',
      columns: [
        { title: 'Bays', width: 0.3 },
        { title: 'Water when full', width: 0.16, align: 'right' },
        { title: 'Half empty', width: 0.15, align: 'right' },
        { title: 'Empty', width: 0.15, align: 'right' },
        { title: 'Openings there, and wanted', width: 0.24, align: 'right' },
      ],
      ...table,
    },
  ];
}

function freeEnd({ freeEnd: end }: RecoveryReport, print: Print): Block[] {
  if (!end) return [];
  const { speed, fastest, timeToBed, energy, bearing, towing, mayLose, mayLosePart } = end;
  return [
    {
      kind: 'paragraph',
      text: `Were nothing to hold it, the plate would sink flat at ${print.quantity(speed, 'm/s', 2)} (${print.quantity(fastest, 'm/s', 2)} with three quarters of its drag)${timeToBed === null ? '' : `, ${print.quantity(timeToBed, 's', 2)} to the bed`}; the blow there ${print.quantity(energy, 'kJ', 2)}, at rest ${print.quantity(bearing, 'kPa', 2)} on the bed. Towed flat at a knot it pulls ${print.quantity(towing, 'kN', 2)}.${mayLose === null || mayLosePart === null ? ' What the float over the plate may lose is not given.' : ` The float over it may lose ${print.quantity(mayLose, 'kN', 3)} of buoyancy, ${significant(100 * mayLosePart, 2)} %, before it sinks.`}`,
    },
  ];
}
