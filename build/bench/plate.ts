import { builtCholmod, startCholmod, type CholmodRound } from '../cholmod/cholmod.ts';
import { lowerTriangle } from '../cholmod/lower-triangle.ts';
import { modelOf } from '../../core/appraise.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import { firstSize } from '../../core/plate/mesh-study.ts';
import { readyPlate, solveLoading } from '../../core/plate/solve-plate.ts';
import { drained } from '../../core/solve/drained.ts';
import { solverSession, type SolverSession } from '../../core/solve/sparse/solver-session.ts';
import type { StiffnessSystem } from '../../core/solve/sparse/stiffness-system.ts';
import { firstContactStep, type SystemInParts } from '../../tests/plate/first-contact-step.ts';
import { median } from './interleaved.ts';
import type { Measure } from './measure.ts';
import { sample } from './sample.ts';

interface Design {
  thickness: string;
  side: string;
  overlap: { onMain: string; onCross: string };
  fixing: { pitch: string };
}
interface Plate {
  designs: Record<string, Design>;
  panels: Record<string, string>;
}

const rounds = 7;

/** Part `plate`: the large sample as one structure, as its first contact step has it, against CHOLMOD on one thread: solved from the
 *  start, then one option after another in a session, over CHOLMOD's factor and solve of the whole; and what an edit costs beside the
 *  factors and solves that it takes. */
export async function bench(): Promise<readonly Measure[]> {
  const large = readDocumentText(await sample('large'));
  const measures = builtCholmod() ? await againstCholmod(large) : [];
  if (measures.length === 0) console.error('CHOLMOD is not here: apt-get install gcc libsuitesparse-dev');
  return [...measures, afterAnEdit(readDocumentText(await sample('small')))];
}

async function againstCholmod(raw: RawDocument): Promise<readonly Measure[]> {
  const equal = whole(raw);
  const name = `${equal.system.held.length - 6} unknowns`;
  const theirs = await cholmodOf('large', equal.system);
  const all = theirs.analyse + theirs.factor + theirs.solve;
  console.error(`large sample, ${name}: CHOLMOD analyse ${theirs.analyse.toFixed(0)} ms, factor ${theirs.factor.toFixed(0)} ms, again ${theirs.refactor.toFixed(0)} ms, solve ${theirs.again.toFixed(1)} ms`); // prettier-ignore
  const over = (what: string, milliseconds: number, goal: number): Measure => ({ name: `large sample, ${name}, ${what}: analyse, factor and solve over CHOLMOD`, ratio: milliseconds / all, goal, met: milliseconds <= goal * all, milliseconds }); // prettier-ignore
  const each = whole(raw, (plate) => {
    for (const [i, [panel, design]] of Object.entries(plate.panels).entries())
      own(plate, panel, design, (copy) => (copy.thickness = `${8 + i / 50} mm`));
  });
  const fromTheStart = (of: SystemInParts): number =>
    median(Array.from({ length: rounds }, () => timed(() => void solved(solverSession(), of))));
  const again = theirs.refactor + theirs.again;
  const session = solverSession();
  const option = (what: string, goal: number, change: (plate: Plate, i: number) => void): Measure => {
    const times = Array.from({ length: rounds + 2 }, (_, i) => {
      const next = whole(raw, (plate) => {
        own(plate, 'B6', plate.panels['B6']!, () => undefined);
        change(plate, i);
      });
      return timed(() => void solved(session, next));
    });
    const milliseconds = median(times.slice(2));
    return { name: `CHOLMOD’s factor and solve of the large sample, over an option after another: ${what} (at least)`, ratio: again / milliseconds, goal, met: again >= goal * milliseconds, milliseconds }; // prettier-ignore
  };
  const one = ({ designs }: Plate): Design => designs['own-B6']!;
  return [
    over('equal panels', fromTheStart(equal), 0.15),
    over('each panel of a thickness of its own', fromTheStart(each), 0.7),
    option('one panel’s thickness', 60, (plate, i) => (one(plate).thickness = `${9 + i / 10} mm`)),
    option('one panel’s, thicknesses met before', 50, (plate, i) => (one(plate).thickness = `${9 + (i % 2) / 10} mm`)),
    option('a thickness that all other bays share', 15, (plate, i) => (plate.designs['deck-8']!.thickness = `${7 + i / 10} mm`)), // prettier-ignore
    option('one panel’s bolt pattern', 12, (plate, i) => (one(plate).fixing.pitch = `${70 + 2 * i} mm`)),
    option('one panel’s overlap', 12, (plate, i) => (one(plate).overlap.onCross = `${36 + i} mm`)),
  ];
}

/** Gives a panel a design of its own, like another but for what is changed. */
function own({ designs, panels }: Plate, panel: string, like: string, change: (copy: Design) => void): void {
  const copy = structuredClone(designs[like]!);
  change(copy);
  designs[`own-${panel}`] = copy;
  panels[panel] = `own-${panel}`;
}

function whole(raw: RawDocument, change: (plate: Plate) => void = () => undefined): SystemInParts {
  const copy = structuredClone(raw);
  change(copy as unknown as Plate);
  const model = modelOf(readDocument(copy));
  const plate = readyPlate(model, { size: firstSize(model) });
  const situation = model.loads.situations.find(({ loadCase }) => loadCase === 'service')!;
  return firstContactStep(plate, situation);
}

/** Solves and proves the answer: a residual above 1e-14 is no answer. */
function solved(session: SolverSession, { system, parts }: SystemInParts): void {
  const f = Float64Array.from(system.held, (held, i) => (held ? 0 : Math.sin(i)));
  const made = session.factorise(system, parts);
  const residual = made.residual(made.solve(f), f);
  if (!(residual <= 1e-14)) throw new Error(`The scaled residual is ${residual}`);
}

function timed(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/** Medians of the ordering that took less in all the first time. */
async function cholmodOf(name: string, system: StiffnessSystem): Promise<CholmodRound> {
  const K = lowerTriangle(system);
  const ones = new Float64Array(K.freedoms.length).fill(1);
  const both = (['amd', 'metis'] as const).map((ordering) => startCholmod(`${name}-${ordering}`, K, ones, ordering));
  const first: number[] = [];
  for (const one of both) {
    const { analyse, factor, solve } = await one.round();
    first.push(analyse + factor + solve);
  }
  const better = both[first[0]! <= first[1]! ? 0 : 1]!;
  const all: CholmodRound[] = [];
  for (let round = 0; round < rounds; round++) all.push(await better.round());
  for (const one of both) one.end();
  const of = (key: keyof CholmodRound): number => median(all.map((round) => round[key]));
  return {
    analyse: of('analyse'),
    factor: of('factor'),
    refactor: of('refactor'),
    solve: of('solve'),
    again: of('again'),
    residual: of('residual'),
    entries: of('entries'),
    bytes: of('bytes'),
  };
}

/** A thickness is typed: both service cases solved until contact has settled, over their factors and solves alone. */
function afterAnEdit(raw: RawDocument): Measure {
  const session = solverSession();
  const ratios: number[] = [];
  let [factors, steps, milliseconds] = [0, 0, 0];
  for (let i = -1; i < rounds; i++) {
    const copy = structuredClone(raw) as unknown as Plate;
    copy.designs['bolted-5']!.thickness = `${7 + i / 10} mm`;
    const model = modelOf(readDocument(copy as unknown as RawDocument));
    let inside = 0;
    factors = 0;
    const counted: SolverSession = {
      done: session.done,
      factorise(system, parts) {
        let made: ReturnType<SolverSession['factorise']>;
        inside += timed(() => (made = session.factorise(system, parts)));
        factors++;
        // on the whole of it: a copy would ask for the estimate of the condition, which nobody here does
        return Object.assign(Object.create(made!) as typeof made, {
          solve: (f: Float64Array) => {
            let u!: Float64Array;
            inside += timed(() => (u = made.solve(f)));
            return u;
          },
        });
      },
    };
    const all = timed(() => {
      const plate = readyPlate(model, { size: firstSize(model), session: counted });
      for (const situation of model.loads.situations.filter(({ loadCase }) => loadCase === 'service')) {
        const one = drained(solveLoading(plate, situation, { loading: 0, variant: 0, stage: 'contact' }));
        steps = Math.max(steps, one.answer.steps);
      }
    });
    if (i < 0) continue;
    ratios.push(all / inside);
    milliseconds = all;
  }
  const ratio = median(ratios);
  return { name: `small sample after an edit, service down and up until contact has settled (${factors} factors, at most ${steps} contact steps), over its factors and solves`, ratio, goal: 1.5, met: ratio <= 1.5 && steps <= 15, milliseconds }; // prettier-ignore
}
