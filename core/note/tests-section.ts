import { testedWater } from '../hydrodynamics/tested-water.ts';
import type { TankTest } from '../document/tests-field.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { testKey } from '../tank/test-key.ts';
import { amplitudeOfForce } from '../water/amplitude-of-force.ts';
import { planInWater } from '../geometry/plan-in-water.ts';
import { linePlot } from './line-plot.ts';
import type { Block, Section } from './note.ts';
import { tankCautions } from './tank-section.ts';
import { tankTheory } from './tank-theory.ts';

/** Tests with an accepted result, as the document keeps them, and what the design takes from them; none where there is none. */
export function testsSection(model: Model, print: Print): Section[] {
  const accepted = (model.document.tests?.tank ?? []).filter(({ result }) => result !== undefined);
  if (accepted.length === 0) return [];
  return [
    {
      title: 'Tank tests',
      blocks: [...used(model, print), { kind: 'list', tone: 'caution', items: tankCautions }],
      sections: accepted.flatMap((test) => [
        { title: test.title, blocks: oneTest(test, print) },
        ...theoryOf(test, model, print),
      ]),
    },
  ];
}

function used(model: Model, print: Print): Block[] {
  const water = testedWater(model);
  if (water === null)
    return [{ kind: 'paragraph', text: 'The design uses no test: added mass and drag are computed.' }];
  if ('missing' in water)
    return [{ kind: 'paragraph', tone: 'loud', text: `Added mass and drag are computed: ${water.missing}.` }];
  const { test, reason, addedMass, dragCoefficient, area } = water;
  const { service } = model.document.loads;
  const force = service.measure === 'range' ? service.force.si / 2 : service.force.si;
  const amplitude = amplitudeOfForce(force, addedMass.value, dragCoefficient.value * area, model.mass.waterDensity, service.wavePeriod.si); // prettier-ignore
  return [
    {
      kind: 'paragraph',
      text: `The design uses the test “${test.title}” in the place of computed values: ${reason}. At full scale and in this water: added mass ${print.quantity(addedMass.value, 'kg')} (${print.quantity(addedMass.low, 'kg')} to ${print.quantity(addedMass.high, 'kg')}), drag coefficient ${significant(dragCoefficient.value, 4)} (${significant(dragCoefficient.low, 4)} to ${significant(dragCoefficient.high, 4)}) of ${print.quantity(area, 'm^2')}. Natural modes in water take this added mass in heave, spread over the plate as the flow about it is, mode by mode; the motion takes both.`,
    },
    {
      kind: 'paragraph',
      text: `Beside the stated force: with these two numbers ${print.quantity(force, 'kN')} either way at ${print.quantity(service.wavePeriod.si, 's', 3)} is what still water does to the plate moved by ${print.quantity(amplitude, 'm', 3)} up and down. The stated force is what the checks take.`,
    },
  ];
}

/** Theory for this plate on the same pictures, where the design uses the test. */
function theoryOf(test: TankTest, model: Model, print: Print): Section[] {
  if (!test.result || model.document.testUsed?.test !== test.id) return [];
  const { runs, addedMass, dragCoefficient } = test.result;
  const tested = { runs: runs.map((run) => ({ amplitude: run.amplitude.si, addedMass: run.addedMass.si, dragCoefficient: run.dragCoefficient })), addedMass: { value: addedMass.value.si }, dragCoefficient }; // prettier-ignore
  const { title, blocks } = tankTheory(tested, { area: test.setup.area.si, density: test.setup.density.si }, planInWater(model.geometry), test.setup.scale, print); // prettier-ignore
  return [{ title: `${test.title}: ${title.toLowerCase()}`, blocks }];
}

function oneTest(test: TankTest, print: Print): Block[] {
  const { record, setup, result } = test;
  if (!result) return [];
  const { addedMass, dragCoefficient, runs, overlay } = result;
  const KC = runs.map(({ keuleganCarpenter }) => keuleganCarpenter);
  const ends = [Math.min(...KC), Math.max(...KC)];
  return [
    ...(result.key === testKey(test) ? [] : [{ kind: 'paragraph', tone: 'loud', text: 'Settings or record were changed after this result was accepted: it is of those before.' } as const]), // prettier-ignore
    {
      kind: 'paragraph',
      text: `Record ${record.name}, ${record.bytes} bytes, SHA-256 ${record.hash}. Mass ${setup.mass.typed}, volume ${setup.volume.typed}, area ${setup.area.typed}, water of ${setup.density.typed}; ${setup.scale === 1 ? 'at full scale' : `a model at 1:${significant(setup.scale, 3)}`}. ${result.readings} readings used, ${result.rowsKeptOut} rows kept out, reduced by Stillplate ${result.programVersion}.`,
    },
    {
      kind: 'table',
      caption: `All runs together with 95 % intervals, then each run by itself. The model leaves over ${significant(100 * result.residual, 2)} % of the force’s own swing`,
      columns: [
        { title: 'Run', width: 0.22 },
        { title: 'Period', width: 0.12, align: 'right' },
        { title: 'Amplitude', width: 0.14, align: 'right' },
        { title: 'KC', width: 0.1, align: 'right' },
        { title: 'Added mass', width: 0.24, align: 'right' },
        { title: 'Drag coefficient', width: 0.18, align: 'right' },
      ],
      rows: [
        [
          'all',
          '',
          '',
          '',
          `${print.quantity(addedMass.value.si, 'kg')} (${print.quantity(addedMass.low.si, 'kg')} to ${print.quantity(addedMass.high.si, 'kg')})`,
          `${significant(dragCoefficient.value, 4)} (${significant(dragCoefficient.low, 4)} to ${significant(dragCoefficient.high, 4)})`,
        ],
        ...runs
          .slice(0, 40)
          .map((run, i) => [
            `${i + 1}, ${run.cycles} cycles`,
            print.quantity(run.period.si, 's', 3),
            print.quantity(run.amplitude.si, 'm', 3),
            significant(run.keuleganCarpenter, 3),
            print.quantity(run.addedMass.si, 'kg'),
            significant(run.dragCoefficient, 4),
          ]),
      ],
    },
    linePlot({
      caption: 'Force measured (points) and modelled (line), first cycles of the run with the largest amplitude',
      alt: `Force measured and modelled, ${test.title}`,
      axes: ['time, s', 'force, N'],
      curves: [{ x: overlay.time, y: overlay.modelled, pen: 'outline' }],
      points: overlay.time.flatMap((x, i) => (i % 2 === 0 ? [{ x, y: overlay.measured[i]!, fill: 'paper' as const }] : [])), // prettier-ignore
      shape: 0.34,
    }),
    ...(runs.length > 1
      ? [
          linePlot({
            caption: 'Drag coefficient of each run by itself; lines: all runs together, with their interval',
            alt: `Drag coefficient of each run, ${test.title}`,
            axes: ['Keulegan-Carpenter number', 'drag coefficient'],
            curves: ([[dragCoefficient.value, 'outline'], [dragCoefficient.low, 'hidden'], [dragCoefficient.high, 'hidden']] as const).map(([y, pen]) => ({ x: ends, y: [y, y], pen })), // prettier-ignore
            points: runs.map((run) => ({ x: run.keuleganCarpenter, y: run.dragCoefficient })),
            shape: 0.28,
          }),
        ]
      : []),
    { kind: 'list', items: [...result.steps, ...(result.findings.length === 0 ? ['Nothing was found that spoils the record.'] : [])] }, // prettier-ignore
    ...(result.findings.length > 0 ? [{ kind: 'list', tone: 'loud', items: result.findings } as const] : []),
  ];
}
