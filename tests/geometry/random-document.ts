import { demoDocument } from './demo-document.ts';
import { seeded } from './seeded.ts';

/** An invented plate whose lengths are multiples of 10 mm: 2–4 × 2–5 tubes at uneven distances, about half of the bays
 *  covered, by up to two designs, some of several bays. */
export function randomDocument(seed: number, { holes = true, changes }: { holes?: boolean; changes?: unknown } = {}) {
  const next = seeded(seed);
  const pick = <T>(items: readonly T[]): T => items[Math.floor(next() * items.length)]!;
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  const positions = (n: number): string[] => {
    let at = 0;
    return Array.from({ length: n }, () => `${(at += 10 * whole(45, 90)) / 1000} m`);
  };
  const sections = ['SHS 100x100x5 hot', 'SHS 120x120x8 hot', 'RHS 160x80x6.3 hot', 'SHS 140x140x8 cold'];
  const arrangement = pick(['stacked', 'flush'] as const);
  const [mains, crosses] = [whole(2, 4), whole(2, 5)];
  const side = pick(['topside', 'underside'] as const);
  const support = arrangement === 'flush' ? 'four sides' : side === 'topside' ? 'cross tubes' : 'main tubes';
  const design = (over: object) => ({
    side,
    thickness: pick(['8 mm', '10 mm']),
    material: 'S355 plate',
    overlap: { onMain: `${10 * whole(2, 4)} mm`, onCross: `${10 * whole(2, 4)} mm` },
    support,
    holes: holes
      ? [
          { x: '20 mm', y: '-30 mm', diameter: '60 mm', purpose: 'vent' },
          { x: '-80 mm', y: '40 mm', diameter: '40 mm', purpose: 'drain' },
        ]
      : [],
    fixing: { kind: 'welded', throat: '5 mm', pattern: 'all round' },
    ...over,
  });
  const free = new Set<string>();
  for (let i = 0; i < mains - 1; i++) for (let k = 0; k < crosses - 1; k++) free.add(`${'ABC'[i]}${k + 1}`);
  const placed: Record<string, string | null> = { A1: null, A3: null, B1: null, B3: null };
  for (const bay of [...free]) {
    if (!free.has(bay) || next() < 0.45) continue;
    const beside = `${bay[0]}${Number(bay[1]) + 1}`;
    if (free.has(beside) && next() < 0.3) {
      free.delete(beside);
      placed[`${bay}:${beside}`] = 'plain';
    } else placed[bay] = pick(['plain', 'notched']);
    free.delete(bay);
  }
  const tubes = (section: string, at: string[]) => ({
    section,
    count: null,
    spacing: null,
    tubes: at.map((a) => ({ at: a })),
    overhang: `${10 * whole(0, 20)} mm`,
  });
  return demoDocument(
    {
      grid: {
        arrangement,
        mainTubes: tubes(pick(sections), positions(mains)),
        crossTubes: tubes(pick(sections), positions(crosses)),
      },
      designs: { deck: null, plain: design({}), notched: design({ cornerNotch: `${10 * whole(1, 8)} mm` }) },
      panels: placed,
    },
    ...(changes === undefined ? [] : [changes]),
  );
}
