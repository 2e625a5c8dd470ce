import type { Geometry } from '../geometry/geometry.ts';

/** On which path the panels hand a force to the tubes: "Force of the water up on the plate: topside panels are pulled …". */
export function pathWords(what: string, direction: 'up' | 'down', { panels }: Pick<Geometry, 'panels'>): string {
  const parts = (['topside', 'underside'] as const).flatMap((side) => {
    const own = panels.filter(({ design }) => design.side === side);
    if (own.length === 0) return [];
    if (own[0]!.pressedBy === direction) return [`${side} panels are pressed onto their tubes`];
    const kinds = new Set(own.map(({ design }) => design.fixing.kind));
    return [
      `${side} panels are pulled off their tubes and hang on their ${[...kinds].map((kind) => (kind === 'bolted' ? 'bolts' : 'welds')).join(' or ')}`,
    ];
  });
  return `${what}: ${parts.length > 0 ? parts.join('; ') : 'no panels, the tubes take it all'}.`;
}
