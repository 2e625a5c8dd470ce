import { modelOf } from '../../core/appraise.ts';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { firstSize } from '../../core/plate/mesh-study.ts';
import { readyPlate } from '../../core/plate/solve-plate.ts';
import { factorise } from '../../core/solve/sparse/factorise.ts';
import { solverSession } from '../../core/solve/sparse/solver-session.ts';
import { firstContactStep, type SystemInParts } from '../../tests/plate/first-contact-step.ts';
import { median } from './interleaved.ts';
import type { Measure } from './measure.ts';

const rounds = 5;

/** The whole plate of the middle sample as a search solves it, option after option in one session, each in turns with a full factor and
 *  solve of the same system: thicknesses that all panels share, one panel's, and both of those met before. What is left of the time in
 *  a search: a part of a new thickness is eliminated, the frame of tubes and edges is factored. */
export function searchedPlates(raw: RawDocument): readonly Measure[] {
  const session = solverSession();
  const inTurn = (options: readonly (readonly [number, number])[]): { full: number; again: number } => {
    const full: number[] = [];
    const again: number[] = [];
    for (const [shared, own] of options) {
      const { system, parts } = systemOf(raw, shared, own);
      const f = Float64Array.from(system.held, (held, i) => (held ? 0 : Math.sin(i)));
      const start = performance.now();
      session.factorise(system, parts).solve(f);
      const between = performance.now();
      factorise(system).solve(f);
      again.push(between - start);
      full.push(performance.now() - between);
    }
    return { full: median(full), again: median(again) };
  };
  const each = Array.from({ length: rounds }, (_, i) => i);
  inTurn([[6, 6], [6.5, 6.5]]); // prettier-ignore
  const shared = inTurn(each.map((i) => [7 + i / 2, 7 + i / 2]));
  inTurn([[7, 7]]);
  const own = inTurn(each.map((i) => [7, 10 + i / 2]));
  const known = inTurn(each.map((i) => [7, 10 + ((i + 2) % rounds) / 2]));
  const line = (what: string, { full, again }: { full: number; again: number }, goal: number | null): Measure => ({
    name: `full factor and solve of the middle plate, over the same in a search: ${what}`,
    ratio: full / again,
    goal,
    met: goal === null ? null : full / again >= goal,
    milliseconds: full,
  });
  return [
    line('a thickness that 12 bays share is new (at least)', shared, 15),
    line('one panel’s is new (at least)', own, 50),
    line('one panel’s changes to one met before', known, null),
  ];
}

/** The plate with all panels of one thickness but A3's, mm, as the first contact step of its first case has it. */
function systemOf(raw: RawDocument, shared: number, own: number): SystemInParts {
  const { designs, panels } = raw as { designs: Record<string, object>; panels: Record<string, string> };
  const like = designs['underside']!;
  const model = modelOf(
    readDocument({
      ...raw,
      designs: {
        ...designs,
        underside: { ...like, thickness: `${shared} mm` },
        own: { ...like, thickness: `${own} mm` },
      },
      panels: { ...panels, A3: 'own' },
    }),
  );
  return firstContactStep(readyPlate(model, { size: firstSize(model) }), model.loads.situations[0]!);
}
