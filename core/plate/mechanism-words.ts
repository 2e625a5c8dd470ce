import type { RefusalText } from '../refusal.ts';
import type { Mechanism } from '../solve/sparse/mechanism.ts';
import type { Structure } from '../solve/structure/structure.ts';

/** A free motion in the engineer's words: what moves, what holds it, and how to mend it. Where a panel moves and the tubes
 *  do not, the panel is named with its bolts; else the tube. */
export function mechanismText({ motion, node }: Mechanism, structure: Structure): RefusalText {
  const travel = (n: number): number => Math.hypot(motion[6 * n]!, motion[6 * n + 1]!, motion[6 * n + 2]!);
  const most = structure.panels.map((panel) => Math.max(...[...panel.nodes].filter((n) => n >= 0).map(travel)));
  const tubes = structure.tubes.map((tube) => Math.max(...[...tube.nodes].map(travel)));
  const leader = most.indexOf(Math.max(...most));
  const where = [0, 1, 2].map((k) => structure.coordinates[3 * node + k]!.toFixed(3)).join(', ');
  if (most.length > 0 && most[leader]! > 10 * Math.max(...tubes)) {
    const { id, ties } = structure.panels[leader]!;
    const bolts = structure.ties.slice(...ties);
    const by = bolts.length === 0 ? 'nothing' : `${bolts.length} ${bolts[0]!.kind === 'bolt' ? (bolts.length === 1 ? 'bolt' : 'bolts') : 'lengths of weld'}`; // prettier-ignore
    return {
      what: `Panel ${id} is held by ${by} and can ${turnWords(structure, leader, motion)}`,
      where: { panel: id, place: where },
      mend: 'Bolt or weld it on two opposite sides at least.',
    };
  }
  const tube = structure.tubes[tubes.indexOf(Math.max(...tubes))]!;
  return {
    what: `Tube ${tube.id} can move near ${where} m: nothing holds it there`,
    where: { tube: tube.id, place: where },
    mend: 'Let it cross another tube, or weld its joint.',
  };
}

/** Whether a panel slides, turns about an upright axis (and through which bolt), or lifts. */
function turnWords({ panels, coordinates, ties }: Structure, panel: number, motion: Float64Array): string {
  const nodes = [...panels[panel]!.nodes].filter((n) => n >= 0);
  const mean = (k: number): number => nodes.reduce((sum, n) => sum + Math.abs(motion[6 * n + k]!), 0) / nodes.length;
  const [slide, lift] = [Math.hypot(mean(0), mean(1)), mean(2)];
  const bolts = ties.slice(...panels[panel]!.ties);
  if (lift > slide) return bolts.length > 0 ? 'lift off, turning about what holds it' : 'lift off its tubes';
  const spread = nodes.map((n) => Math.hypot(motion[6 * n]!, motion[6 * n + 1]!));
  const turns = Math.max(...spread) > 1.5 * Math.min(...spread);
  const still = bolts.find(
    ({ nodes: [n] }) => Math.hypot(motion[6 * n]!, motion[6 * n + 1]!) < 0.05 * Math.max(...spread),
  );
  if (!turns) return 'slide on its tubes';
  return still
    ? `turn about ${still.id} (x ${coordinates[3 * still.nodes[0]]!.toFixed(3)} m, y ${coordinates[3 * still.nodes[0] + 1]!.toFixed(3)} m)`
    : 'turn on its tubes';
}
