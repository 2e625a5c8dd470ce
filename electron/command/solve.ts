import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import type { RawDocument } from '../../core/document/read-document.ts';
import type { PlateDocument } from '../../core/document/schema.ts';
import { printedUnit, quantityText, significant } from '../../core/quantity/format-quantity.ts';
import { readQuantity } from '../../core/quantity/read-quantity.ts';
import { programVersion } from '../../core/result.ts';
import { refusal } from '../../core/refusal.ts';
import { boltUse } from '../../core/checks/bolt-use.ts';
import { jointCautions } from '../../core/plate/mesh/joint-stiffness.ts';
import { balanceReport } from '../../core/plate/results/balance-report.ts';
import { deflections } from '../../core/plate/results/deflections.ts';
import { errorEstimate } from '../../core/plate/results/error-estimate.ts';
import { fixingForces } from '../../core/plate/results/fixing-forces.ts';
import { serviceRanges, type BoltRange } from '../../core/plate/results/bolt-ranges.ts';
import { changeWords } from '../../core/plate/results/change-words.ts';
import { changesBetween, changesTable, type LoadingChange } from '../../core/plate/results/changes-between.ts';
import { jointSpread } from '../../core/plate/results/joint-spread.ts';
import { loadPath } from '../../core/plate/results/load-path.ts';
import { motionTables, type ListedMotion } from '../../core/plate/results/motion-csv.ts';
import { panelStress } from '../../core/plate/results/panel-stress.ts';
import { rangeTables, type SolverTable } from '../../core/plate/results/solver-tables.ts';
import type { MeshStudy } from '../../core/plate/mesh-study.ts';
import { largeTable, largeTables, shownTables, studyTable } from '../../core/plate/results/whole-tables.ts';
import { tubeForces } from '../../core/plate/results/tube-forces.ts';
import { everySolved, solveCases, type SolvedCases } from '../../core/plate/solve-cases.ts';
import type { ReadyPlate, SolvedLoading } from '../../core/plate/solve-plate.ts';
import { panelBuckling } from '../../core/plate/buckling-of-panels.ts';
import { largePanels, smallDeflection } from '../../core/plate/large-panel.ts';
import { plateModes } from '../../core/plate/plate-modes.ts';
import { drained } from '../../core/solve/drained.ts';
import { openDocument } from '../host/open-document.ts';
import { writeFileWhole } from '../host/write-file.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'solve FILE [--option ID] [--size LENGTH] [--linear] [--all] [--losses [all]] [--against ID] [--modes] [--buckling] [--large] [--csv FOLDER] [--json]'; // prettier-ignore

/** The plate as one structure: tubes, panels, fixings and contact together. */
export const solveVerb: Verb = {
  usage,
  purpose: 'solves the plate as one structure: deflection, stress, bolts, contact, modes, buckling',
  help: [
    '  --option ID    the option; by default the chosen one; "base" is the document as it stands',
    '  --size 60mm    widest cell of the mesh; by a mesh study within 2 % where it is not given',
    '  --linear       contact as the load’s direction presses or pulls the panels; otherwise contact is settled',
    '  --all          every load case, not only service down and up',
    '  --losses       also with the worst bolt row, panel and joint lost, and each leg; the row is followed to its end',
    '  --losses all   with each row, panel, joint and leg lost in turn, each row followed to its end',
    '  --against ID   what changed against another option, and why: the deflection by parts, panels’ dip, way of the load',
    '  --modes        natural modes, hung, in air and in water     --buckling   of the panels in service',
    '  --large        panels that dip by more than half their thickness, with their stretch',
    '  --csv FOLDER   tables of every solved loading: nodes, tubes, panels, bolts, welds, contact, supports, at both ends of',
    '                 the joints’ range too; ranges of bolts as the load turns; of mesh study, changes, modes, buckling and',
    '                 large deflection where they were asked for',
    '  --json         one object, SI',
    '',
    'Ends with 1 where contact did not settle, a mode or panel did not, or no mesh came within 2 %.',
    '',
    'Example: stillplate solve samples/small.stillplate.json --size 100mm --linear',
  ].join('\n'),
  run: async (args, on) => {
    const flags = ['linear', 'all', 'modes', 'buckling', 'large', 'json'] as const;
    const { values, file } = optionsOf(
      withLossesNamed(args),
      {
        option: { type: 'string' },
        losses: { type: 'string' },
        size: { type: 'string' },
        against: { type: 'string' },
        csv: { type: 'string' },
        ...(Object.fromEntries(flags.map((flag) => [flag, { type: 'boolean' }])) as Record<(typeof flags)[number], { type: 'boolean' }>), // prettier-ignore
      },
      usage,
      1,
    );
    const { raw, document } = await openDocument(resolve(on.folder, file));
    if (values.losses !== undefined && values.losses !== 'worst' && values.losses !== 'all')
      throw refusal({ what: `“${values.losses}” are no losses`, mend: 'Write --losses, or --losses all.' });
    const { model, optionTitle, rows } = appraise(raw, document, chosenOption(document, values.option));
    const { units } = model.document;
    const text = (si: number, unit: string): string => quantityText(si, printedUnit(unit, units), 4);
    const cases = drained(
      solveCases(model, {
        stage: values.linear ? 'linear' : 'contact',
        cases: values.all ? 'all' : 'service',
        losses: values.losses === 'all' ? 'all' : values.losses !== undefined,
        use: boltUse(model, rows),
        ...(values.size === undefined ? {} : { size: readQuantity(values.size, 'length').si }),
      }),
    );
    const all = everySolved(cases);
    const ranges = serviceRanges(cases);
    const changes = values.against === undefined ? [] : changesFrom(raw, document, values, cases);
    const chains = cases.losses.flatMap(({ unzipping, jointEnds }) => [
      ...(unzipping ? [unzipping] : []),
      ...jointEnds.flatMap(({ end, unzipping: chain }) => (chain ? [{ ...chain, words: `Joints at the ${end} end of their range: ${chain.words}` }] : [])),
    ]); // prettier-ignore
    const lines = all.map(({ plate, solved, lost, title, joints }) => ({
      without: lost && `${lost.kind} ${lost.id}`,
      ...summary(plate, solved),
      title,
      joints: joints.map((at) => jointSpread(at.end, at.plate, at.solved)),
    }));
    const modes = values.modes ? drained(plateModes(cases.plate, { holding: 'hung', count: 6 })) : null;
    const inService = cases.solved.filter(({ situation }) => situation.loadCase === 'service');
    const buckling = values.buckling
      ? inService.map((solved) => ({ solved, ...drained(panelBuckling(cases.plate, solved, { count: 1 })) }))
      : [];
    const large = values.large
      ? inService
          .filter((solved) =>
            deflections(cases.plate, solved).panels.some(({ dipOverThickness }) => dipOverThickness > smallDeflection),
          ) // prettier-ignore
          .map((solved) => ({ of: solved, ...drained(largePanels(cases.plate, solved)) }))
      : [];

    if (values.csv !== undefined) {
      const into = async (name: string, tables: readonly SolverTable[]): Promise<void> => {
        const folder = join(resolve(on.folder, values.csv!), name);
        await mkdir(folder, { recursive: true });
        for (const table of tables) await writeFileWhole(join(folder, table.name), table.text);
      };
      for (const [i, one] of all.entries())
        await into(`${String(i + 1).padStart(3, '0')} ${one.solved.situation.id}`, shownTables(one, units));
      for (const [i, one] of large.entries())
        await into(`large ${String(i + 1).padStart(3, '0')} ${one.of.situation.id}`, largeTables(cases.plate, one, units)); // prettier-ignore
      const { structure } = cases.plate;
      const found = [
        ...rangeTables(ranges, units),
        ...(cases.study ? [studyTable(cases.study, units)] : []),
        ...(large.length > 0 ? [largeTable(large)] : []),
        ...(changes.length > 0 ? [changesTable(changes)] : []),
        ...(modes ? motionTables(structure, 'modes', [...listed('in air', modes.air.modes), ...listed('with added mass', modes.water.modes)]) : []), // prettier-ignore
        ...(buckling.length > 0 ? motionTables(structure, 'buckling', buckling.flatMap(({ solved, modes: own }) => own.map(({ factor, shape }) => ({ group: `${solved.situation.id}, ${solved.loading}`, value: factor, shape })))) : []), // prettier-ignore
      ];
      for (const table of found) await writeFileWhole(join(resolve(on.folder, values.csv), table.name), table.text);
    }

    const frequencies = modes && {
      air: modes.air.modes.map(({ frequency }) => frequency),
      water: modes.water.modes.map(({ frequency }) => frequency),
      added: { total: modes.added.total, method: modes.added.method, test: modes.added.test, said: modes.added.said },
      findings: [...modes.findings.map((finding) => finding.text), ...modes.cautions],
    };
    const factors = buckling.map(({ solved, modes: found, within }) => ({
      situation: solved.situation.id,
      loading: solved.loading,
      factor: found[0]?.factor ?? null,
      within,
      part: found[0] ? `${found[0].most.kind} ${found[0].most.id}` : null,
    }));
    const stretched = large.map(({ of: { situation, loading }, converged, panels }) => ({
      situation: situation.id,
      loading,
      converged,
      panels: panels.map(({ id, linear, large: dip }) => ({ id, linear, large: dip })),
    }));
    if (values.json)
      on.out(JSON.stringify({ schema: 'stillplate-solution/1', programVersion, option: optionTitle, mesh: meshOf(cases), loadings: lines, boltRanges: ranges, changes, unzipping: chains, modes: frequencies, buckling: factors, large: stretched, cautions: [...jointCautions(model), ...cautions] }, null, 2)); // prettier-ignore
    else {
      on.out(`${model.document.project.name}. ${optionTitle}. Solved as one structure.`);
      for (const line of meshText(cases, text)) on.out(line);
      for (const line of lines) {
        on.out('');
        on.out(`${line.title}, ${line.loading}${line.variants > 1 ? `, variant ${line.variant + 1}` : ''}${line.without && !line.loading.endsWith(`without ${line.without}`) ? `, without ${line.without}` : ''}`); // prettier-ignore
        on.out(`  largest deflection ${text(line.deflection, 'mm')} at ${line.deflectionAt}; panels dip ${text(line.dip, 'mm')}`); // prettier-ignore
        on.out(`  panel stress ${text(line.stress, 'MPa')}${line.stressAt ? ` in ${line.stressAt}` : ''}; tube moment ${text(line.moment, 'kN*m')} (by hand ${text(line.momentByHand, 'kN*m')})`); // prettier-ignore
        on.out(`  bolt pull ${text(line.pull, 'kN')}, shear ${text(line.shear, 'kN')}; weld ${text(line.weld, 'N/mm')}; contact ${text(line.contact, 'kN')}`); // prettier-ignore
        on.out(`  panels hand ${percent(line.toMain)} of the load to main tubes, ${percent(line.toCross)} to cross tubes; stress error ${percent(line.stressError)}`); // prettier-ignore
        for (const { end, deflection, moment, pull, shear, weld } of line.joints) on.out(`  joints at the ${end} end of their range: deflection ${text(deflection, 'mm')}, tube moment ${text(moment, 'kN*m')}, bolt pull ${text(pull, 'kN')}, shear ${text(shear, 'kN')}, weld ${text(weld, 'N/mm')}`); // prettier-ignore
        on.out(line.stage === 'linear' ? `  linear: contact as the load’s direction presses or pulls, nothing let lift off; balance to ${line.residual.toExponential(0)}` : line.settled ? `  contact settled in ${line.steps} steps; balance to ${line.residual.toExponential(0)}` : `  CONTACT DID NOT SETTLE: ${line.faults} points are wrong after ${line.steps} steps; do not use these numbers`); // prettier-ignore
      }
      for (const line of rangeWords(ranges, text)) on.out(line);
      for (const { title, loading, variant, changed } of changes) {
        on.out('');
        on.out(`Against ${values.against}: ${title}, ${loading}${variant > 0 ? `, variant ${variant + 1}` : ''}`);
        for (const line of changeWords(changed, units)) on.out(`  ${line}`);
      }
      if (chains.length > 0) on.out('');
      for (const chain of chains) on.out(chain.words);
      if (frequencies) {
        on.out('');
        on.out(`Natural frequencies, hung: in air ${hertz(frequencies.air)}; in water ${hertz(frequencies.water)}`);
        on.out(`  ${frequencies.added.said}`);
        for (const finding of frequencies.findings) on.out(`  ${finding}`);
      }
      for (const { situation, loading, factor, within, part } of factors)
        on.out(factor === null ? `Buckling, ${situation}, ${loading}: none up to ${within} times the load` : `Buckling, ${situation}, ${loading}: at ${significant(factor, 3)} times the load, ${part}`); // prettier-ignore
      for (const { situation, loading, converged, panels } of stretched)
        on.out(`Large deflection, ${situation}, ${loading}${converged ? '' : ' DID NOT CONVERGE'}: ${panels.map(({ id, linear, large: dip }) => `${id} dips ${dip === null ? 'unknown' : text(dip, 'mm')} (linear ${text(linear, 'mm')})`).join('; ')}`); // prettier-ignore
      on.out('');
      for (const caution of [...jointCautions(model), ...cautions]) on.out(caution);
    }
    const sound =
      lines.every(({ settled, joints }) => (settled && joints.every((end) => end.settled)) || values.linear) &&
      (cases.study === null || cases.study.chosen !== null) &&
      (modes === null || (modes.air.converged && modes.water.converged)) &&
      buckling.every(({ converged }) => converged) &&
      stretched.every(({ converged }) => converged);
    return sound ? exit.passes : exit.failsOrUnjudged;
  },
};

/** The other option, solved on the same mesh and for the same cases, beside what was solved. */
function changesFrom(
  raw: RawDocument,
  document: PlateDocument,
  { against, linear, all }: { readonly against?: string | undefined; readonly linear?: boolean | undefined; readonly all?: boolean | undefined }, // prettier-ignore
  after: SolvedCases,
): LoadingChange[] {
  const { model } = appraise(raw, document, chosenOption(document, against));
  const before = drained(
    solveCases(model, { stage: linear ? 'linear' : 'contact', cases: all ? 'all' : 'service', losses: false, size: after.plate.size }), // prettier-ignore
  );
  return changesBetween(before, after);
}

/** What turning the service load round does to the bolt that feels most of it, in tension and in shear. */
function rangeWords(ranges: readonly BoltRange[], text: (si: number, unit: string) => string): string[] {
  const [widest] = ranges;
  if (!widest) return [];
  const sheared = ranges.reduce((most, one) => (one.shearRange > most.shearRange ? one : most));
  const parting = ranges.filter(({ parts }) => parts).length;
  return [
    '',
    `Bolts as the service load turns round, load factors included: tension of ${widest.id} by ${text(widest.range, 'kN')} (${text(widest.least, 'kN')} to ${text(widest.most, 'kN')}), shear of ${sheared.id} by ${text(sheared.shearRange, 'kN')}${parting > 0 ? `; the faces part at ${parting} bolts` : ''}.`,
  ];
}

const listed = (group: string, modes: readonly { readonly frequency: number; readonly shape: Float64Array }[]): ListedMotion[] =>
  modes.map(({ frequency, shape }) => ({ group, value: frequency, shape })); // prettier-ignore

/** “--losses” alone means the worst of each kind. */
const withLossesNamed = (args: readonly string[]): string[] =>
  args.flatMap(
    (arg, i) =>
    arg === '--losses' ? [`--losses=${args[i + 1] === 'all' ? 'all' : 'worst'}`] : arg === 'all' && args[i - 1] === '--losses' ? [] : [arg], // prettier-ignore
  );

const cautions = [
  'Tubes keep the shape of their sections, lines and legs do not stretch: both make the plate stiffer than it is. Walls under panels and joints are judged by the checks.',
  'Panels whose bolts are fitted or slip-resistant bend with the tubes and take load off them; that counts only while the check of slip passes. Bolts with clearance are taken to slip.',
  'Bolt pulls include prying on rigid walls: an upper bound. Bolts have no preload where none is stated. Judge them with the larger of hand and solver. The numbers are for a licensed engineer to judge.',
];

function summary(plate: ReadyPlate, solved: SolvedLoading) {
  const { situation, loading, variant, answer } = solved;
  const bend = deflections(plate, solved);
  const fixings = fixingForces(plate, solved);
  const stresses = panelStress(plate, solved);
  const worst = stresses.reduce<(typeof stresses)[number] | null>(
    (best, panel) => ((panel.largest?.stress.vonMises ?? 0) > (best?.largest?.stress.vonMises ?? 0) ? panel : best),
    null,
  );
  const path = loadPath(plate, solved);
  const { part, id, x, y } = bend.largest.point;
  return {
    situation: situation.id,
    title: situation.title,
    loading,
    variant,
    variants: situation.present.length,
    stage: solved.stage,
    deflection: bend.largest.rise,
    deflectionAt: `${part} ${id} (x ${x.toFixed(3)} m, y ${y.toFixed(3)} m)`,
    dip: Math.max(0, ...bend.panels.map(({ dip }) => Math.abs(dip?.rise ?? 0))),
    stress: worst?.largest?.stress.vonMises ?? 0,
    stressAt: worst ? `panel ${worst.id}` : '',
    stressError: errorEstimate(plate, solved).clear,
    moment: Math.max(0, ...tubeForces(plate, solved).map(({ largest }) => Math.abs(largest.My.value))),
    momentByHand: Math.max(0, ...[...situation.tubes.values()].map(({ moment }) => moment)),
    pull: fixings.largest.pull?.pull ?? 0,
    shear: fixings.largest.shear?.shear ?? 0,
    weld: fixings.largest.weld?.resultant ?? 0,
    contact: fixings.contacts.reduce((sum, { force }) => sum + force, 0),
    toMain: path.toMainTubes.all,
    toCross: path.toCrossTubes.all,
    supports: Object.fromEntries(fixings.supports.map((support) => [support.id, support.along])),
    settled: answer.settled,
    steps: answer.steps,
    faults: answer.faults,
    residual: balanceReport(plate, solved).residual,
  };
}

const meshOf = ({ plate, study }: SolvedCases): { size: number; unknowns: number; study: MeshStudy | null } => ({
  size: plate.size,
  unknowns: 2 * plate.structure.coordinates.length - 6,
  study,
});

function meshText(cases: SolvedCases, text: (si: number, unit: string) => string): string[] {
  const { size, unknowns, study } = meshOf(cases);
  const lines = [`Mesh: cells up to ${text(size, 'mm')}, ${unknowns} unknowns.`];
  if (!study) return [...lines, 'The mesh was given; no study of its error was made.'];
  for (const { size: own, unknowns: count, stressError } of study.meshes)
    lines.push(`  cells up to ${text(own, 'mm')}: ${count} unknowns, stress error ${percent(stressError)}`);
  for (const { quantity, order, errors, extrapolated } of study.convergence)
    lines.push(
      `  ${quantity}: ${text(extrapolated, studied[quantity])} for cells of no size; errors ${errors.map(percent).join(', ')}${order === null ? '' : `, order ${order.toFixed(1)}`}`,
    );
  if (study.chosen === null) lines.push(`  NO MESH CAME WITHIN ${percent(study.target)}: the finest is taken.`);
  return lines;
}

const studied = { deflection: 'mm', bolt: 'kN', weld: 'N/mm' } as const;

const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
const hertz = (of: readonly number[]): string => of.map((f) => `${significant(f, 3)} Hz`).join(', ');
