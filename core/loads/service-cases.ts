import type { Finding } from '../finding.ts';
import type { Panel } from '../geometry/geometry.ts';
import { significant } from '../quantity/format-quantity.ts';
import { everySupport, type CaseContext, type CaseResult } from './case-context.ts';
import { crossingActions, type CrossingActions } from './crossing-actions.ts';
import { holdingFindings } from './holding-findings.ts';
import type { Loaded } from './loaded.ts';
import { pathWords } from './path-words.ts';
import { flowSpreads, spreads, spreadWords, type FlowSpread, type Spread } from './plan-shares.ts';
import type { FlowPhase } from './water-shares.ts';
import { Pressures } from './pressures.ts';
import type { ServiceForce } from './service-force.ts';
import type { ServiceSwing, Situation } from './situation.ts';
import { solveCase, type CaseInput, type Loading, type SolvedCase } from './solve-case.ts';

const directions = ['down', 'up'] as const;
type Direction = (typeof directions)[number];

/** The stated force of the water, down and up, on the whole plate and with a bolt row, a panel or a leg lost. */
export function serviceCases(context: CaseContext, service: ServiceForce): CaseResult {
  const { geometry, suspension } = context;
  const solved: SolvedCase[] = [];
  const add = (input: CaseInput) => solved.push(solveCase(context.plate, input));
  for (const direction of directions) add(serviceCase(context, service, direction, {}));
  const whole = [...solved];
  if (geometry.panels.some(({ design }) => design.fixing.kind === 'bolted'))
    for (const direction of directions)
      add(
        serviceCase(context, service, direction, {
          loadCase: 'lost bolt row',
          title: 'One bolt row lost',
          remark: 'Pressures are those of service; the panel’s other rows take the lost row’s part.',
        }),
      );
  if (geometry.panels.length > 0)
    for (const direction of directions)
      add(
        serviceCase(context, service, direction, {
          loadCase: 'lost panel',
          title: 'One panel lost',
          lostPanels: byShare(context),
          remark:
            'The force of the water is taken to stay the same, and what is left shares it (an assumption on the safe side); each panel is judged with the loss of the largest other panel.',
        }),
      );
  const legs = everySupport(suspension);
  if (legs.length > 1) {
    const present = legs.map((lost) => legs.filter((leg) => leg !== lost));
    for (const direction of directions)
      add(
        serviceCase(context, service, direction, {
          loadCase: 'lost leg',
          title: `One ${legWord(context)} lost`,
          present,
          remark: `Each ${legWord(context)} in turn is taken away; the worst of all is kept.`,
        }),
      );
  }
  return {
    situations: solved.map(({ situation }) => situation),
    findings: () => [
      ...whole.flatMap((each) => holdingFindings(each, context)),
      ...slackFindings(context, service, solved),
      ...lossFindings(context),
    ],
  };
}

/**
 * The stated force at its peak and at its trough, every factor 1 and nothing lost: between them a cycle of the service
 * runs. Weight is taken whole for the force down and at its least for the force up, which makes the swing no smaller.
 */
export function serviceSwing(context: CaseContext, service: ServiceForce): ServiceSwing {
  const plain: CaseContext = { ...context, factor: () => 1 };
  const { missing: _without, ...stated } = service;
  const { plate, geometry } = context;
  const crossings: Record<Direction, ReadonlyMap<string, CrossingActions>[]> = { up: [], down: [] };
  const at = (direction: Direction): Situation => {
    const input: CaseInput = {
      ...serviceCase(plain, { ...stated, loadFactor: 1 }, direction, {}),
      // a case of its own beside the service cases, which have load factors
      id: `swing-${direction}`,
      title: `Cycle of service, force ${direction}`,
    };
    const { situation, solution } = solveCase(plate, input, (motion, load) =>
      crossings[direction].push(crossingActions(plate.frame, geometry.crossings, motion, load)),
    );
    solution();
    return situation;
  };
  return { up: at('up'), down: at('down'), amplitude: service.amplitude, crossings };
}

const legWord = ({ document }: CaseContext): string =>
  ({ line: 'line', bridle: 'leg', strut: 'strut' })[document.grid.suspension.kind];

interface Loss {
  readonly loadCase?: 'lost bolt row' | 'lost panel' | 'lost leg';
  readonly title?: string;
  readonly lostPanels?: readonly Panel[];
  readonly present?: CaseInput['present'];
  readonly remark?: string;
}

/** Both shares, and of each panel lost in turn both shares; or of the whole plate. */
function serviceCase(context: CaseContext, service: ServiceForce, direction: Direction, loss: Loss): CaseInput {
  const { plate, factor, suspension, geometry, flow, phases, phaseBounds } = context;
  const { fields } = plate;
  const accidental = loss.loadCase !== undefined;
  const sign = direction === 'up' ? 1 : -1;
  const loadFactor = service.missing ? 1 : accidental ? factor('gamma_F_accidental') : service.loadFactor;
  const unfactored = sign * service.amplitude;
  const force = loadFactor * unfactored;
  // up, weight helps (or buoyancy lifts): the least there is; it makes it worse where it acts the same way as the water
  const which = sign > 0 ? 'least' : 'weight';
  // Growth makes it heavier where weight adds to the force; it may be missing where weight helps.
  const growth = sign < 0 ? plate.growth : null;
  const grown = growth?.water.onFields ?? 0;
  const whole = plate[which].water + (growth?.water.weight ?? 0);
  const worse = sign > 0 === whole < 0;
  const ownWeight = service.holdsWeight ? 0 : 1;
  const weightFactor = ownWeight * (worse ? factor(accidental ? 'gamma_F_accidental' : 'gamma_F_permanent') : 1);

  const parts = new Map<Panel, Record<Spread, number>>();
  for (const { panel, part } of fields) {
    const known = parts.get(panel) ?? { area: 0, shape: 0 };
    parts.set(panel, { area: known.area + part.area, shape: known.shape + part.shape });
  }
  const partOf = (panel: Panel | null, of: Spread): number => (panel ? (parts.get(panel)?.[of] ?? 0) : 0);
  const perForce = (of: Spread) => Float64Array.from(fields, ({ part, area }) => part[of] / area);
  const patterns = { area: perForce('area'), shape: perForce('shape') };
  const weights = Float64Array.from(fields, ({ [which]: own }) => own.water + grown);
  /** Patterns of the water's force times their scales, on fields and tubes, with the weight; without a panel that is lost. */
  const acting = (
    name: string,
    lost: Panel | null,
    water: readonly (readonly [Float64Array, Loaded, number])[],
  ): Loading => ({
    // prettier-ignore
    name: `${name}${lost ? `, without panel ${lost.id}` : ''}`,
    ...(lost ? { lost: lost.id } : {}),
    pressures: new Pressures(
      [...water.map(([pattern, , scale]) => [pattern, scale] as const), [weights, -weightFactor]],
      fields.flatMap(({ panel }, i) => (panel === lost ? [i] : [])),
    ),
    onTubes: [
      ...water.map(([, onTubes, scale]) => [onTubes, scale] as const),
      [plate[sign > 0 ? 'leastOfRest' : 'weightOfRest'].water, weightFactor],
      ...(growth ? [[growth.water.onTubes, weightFactor] as const] : []),
    ],
  });
  const loading = (of: Spread, lost: Panel | null): Loading =>
    acting(spreadWords[of], lost, [[patterns[of], plate.onTubes[of], force / (1 - partOf(lost, of))]]);
  const lostPanels = loss.lostPanels ?? [null];
  const flowParts = new Map<Panel, Record<FlowSpread, number>[]>();
  for (const { panel, flow: own } of fields) {
    const known = flowParts.get(panel);
    flowParts.set(panel, own.map(({ inertia, edges }, k) => ({ inertia: inertia + (known?.[k]!.inertia ?? 0), edges: edges + (known?.[k]!.edges ?? 0) }))); // prettier-ignore
  }
  const flowPartOf = (panel: Panel | null, k: number, of: FlowSpread): number =>
    panel ? (flowParts.get(panel)?.[k]![of] ?? 0) : 0;
  const flowPatterns = plate.flowOnTubes.map((_, k) => {
    const perArea = (of: FlowSpread) => Float64Array.from(fields, ({ flow: own, area }) => own[k]![of] / area);
    return { inertia: perArea('inertia'), edges: perArea('edges') };
  });
  const flowing = ({ words, flow: k, ...part }: FlowPhase, lost: Panel | null): Loading =>
    acting(words, lost, flowSpreads.map((of) => [flowPatterns[k]![of], plate.flowOnTubes[k]![of], (force * part[of]) / (1 - flowPartOf(lost, k, of))])); // prettier-ignore
  const loadings = lostPanels.flatMap((lost) => [
    ...spreads.map((of) => loading(of, lost)),
    ...(lost ? phaseBounds : phases).map((phase) => flowing(phase, lost)),
  ]);

  const shares = fields.map(({ bay, panel, part, flow: own }) => {
    const others = lostPanels.filter((lost) => lost !== null && lost !== panel);
    const left = (lostOf: (lost: Panel | null) => number): number =>
      1 - others.reduce((most, lost) => Math.max(most, lostOf(lost)), 0);
    // What a lost panel carried goes to the others by what they carry themselves.
    const byFlow =
      others.length === 0
        ? [flow?.get(bay)?.peak ?? 0]
        : own.flatMap((of, k) => [of.inertia / left((lost) => flowPartOf(lost, k, 'inertia')), of.edges / left((lost) => flowPartOf(lost, k, 'edges'))]); // prettier-ignore
    return Math.max(...byFlow, ...spreads.map((of) => part[of] / left((lost) => partOf(lost, of))));
  });
  const shared = (of: number, ownWeight: number): Float64Array =>
    Float64Array.from(
      fields,
      ({ area, [which]: own }, i) => (of * shares[i]!) / area - ownWeight * (own.water + grown),
    );

  const firstLost = lostPanels[0] ?? null;
  const lostWeight = fields.reduce(
    (sum, { panel, area, [which]: own }) => (panel === firstLost ? sum + (own.water + grown) * area : sum),
    0,
  );
  const what = `Force of the water ${direction} on the plate`;
  return {
    id: `${(loss.loadCase ?? 'service').replaceAll(' ', '-')}-${direction}`,
    loadCase: loss.loadCase ?? 'service',
    direction,
    title: `${loss.title ?? 'Service'}, force of the water ${direction}`,
    path: [pathWords(what, direction, geometry), ...(loss.remark ? [loss.remark] : [])].join(' '),
    accidental,
    loadFactor,
    force,
    terms: [
      { name: 'Force of the water', force },
      ...(service.holdsWeight
        ? []
        : [
            {
              name: `${which === 'least' ? 'Least weight' : growth ? 'Weight with growth' : 'Weight'} in water${firstLost ? ` without panel ${firstLost.id}` : ''}`,
              force: -weightFactor * (whole - lostWeight),
            },
          ]),
    ],
    pressures: shared(force, weightFactor),
    relieved: !service.holdsInertia,
    service: { pressures: shared(unfactored, ownWeight), force: unfactored - ownWeight * (whole - lostWeight) },
    loadings,
    movingMass: plate.movingMass + (growth?.mass ?? 0),
    support: suspension,
    present: loss.present ?? [everySupport(suspension)],
    ...(service.missing ? { missing: service.missing } : {}),
  };
}

/** Panels, that with the largest part of the force first. */
function byShare({ geometry, plate: { fields } }: CaseContext): Panel[] {
  const part = new Map<Panel, number>();
  for (const field of fields)
    part.set(field.panel, (part.get(field.panel) ?? 0) + Math.max(field.part.area, field.part.shape));
  return geometry.panels.filter((panel) => part.has(panel)).sort((a, b) => part.get(b)! - part.get(a)!);
}

function slackFindings(
  context: CaseContext,
  { amplitude, holdsWeight, loadFactor }: ServiceForce,
  cases: readonly SolvedCase[],
): Finding[] {
  const { suspension, plate, forceText, factor } = context;
  if (!suspension.set.oneWay) return [];
  const holds = holdsWeight ? 0 : plate.least.water;
  const place = 'service-up';
  const word = legWord(context);
  const slack = cases
    .filter((each) => each.slack() && each.situation.direction === 'up')
    .map(({ situation }) => situation);
  const lost = slack.filter(({ loadCase }) => loadCase !== 'service').map(({ title }) => title.toLowerCase());
  const too = lost.length === 0 ? '' : ` So it does with ${lost.join(', ')}.`;
  const common = { place, mend: 'More weight in water, a slower stroke, or a strut that can push.' };
  if (amplitude > holds)
    return [{
      ...common,
      id: 'line-slack',
      text: `The ${word} cannot push: it goes slack at ${forceText(Math.max(holds, 0))} of force up, the amplitude is ${forceText(amplitude)}. It needs ${forceText(amplitude - holds)} more weight in water, taken at its least, or a slower stroke. The plate is solved with its own inertia; the snap when the ${word} draws tight again is not among these cases.${too}`,
    }]; // prettier-ignore
  const findings: Finding[] = [];
  const limit = factor('k_slack');
  if (amplitude > limit * holds)
    findings.push({
      ...common,
      id: 'line-nearly-slack',
      text: `The force up reaches ${((100 * amplitude) / holds).toFixed(0)} % of the least weight in water; beyond ${significant(100 * limit, 3)} % a line counts as going slack (DNV-RP-N103, slack criterion, from memory).`,
    });
  if (slack.some(({ loadCase }) => loadCase === 'service'))
    findings.push({
      ...common,
      id: 'line-slack-under-factor',
      text: `The ${word} keeps ${forceText(holds - amplitude)} at the stated amplitude, but goes slack under the load factor ${loadFactor}: the factored case is balanced by the plate’s own inertia.`,
    });
  return findings;
}

function lossFindings(context: CaseContext): Finding[] {
  const { suspension, document } = context;
  const word = legWord(context);
  const { items } = suspension.set;
  const place = 'suspension';
  if (items.length === 1)
    return [
      {
        id: 'single-load-path',
        place,
        text: `Single load path: loss of the ${word === 'leg' ? 'bridle’s only leg' : word} is loss of the plate.`,
        mend: `Add a second ${word}, or a safety line that is slack in service.`,
      },
    ];
  if (items.length - 1 < 3)
    return [{
      id: 'leg-lost-tilts',
      place,
      text: `With one ${word} lost ${items.length - 1 === 1 ? `one ${word} is` : `two ${word}s are`} left: the plate tilts until the load hangs under ${items.length - 1 === 1 ? 'it' : 'the line between them'}. Forces below are those at the moment of loss; the swing is not among these cases.`,
      mend: document.grid.suspension.kind === 'bridle' ? 'Four legs keep the plate nearly level when one is lost.' : `Four ${word}s keep the plate level when one is lost.`,
    }]; // prettier-ignore
  return [];
}
