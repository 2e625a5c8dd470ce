import type { BayPlan } from '../document/option.ts';
import { bayRectangle } from './bay-rectangle.ts';
import type { PlainBay } from './bays-between.ts';

/** What an option asks of a grid's bays: see `BayPlan`. */
export function bayPlan(bays: readonly PlainBay[]): BayPlan {
  const known = new Map(bays.map((bay) => [bay.id, bay]));
  return {
    ids: new Set(known.keys()),
    rectangle: (ids) => {
      const around = ids.flatMap((id) => known.get(id) ?? []);
      if (around.length === 0 || around.length < ids.length) return null;
      const { bays: inside, tubes } = bayRectangle(around, bays);
      if (!tubes) return null;
      const low = inside.find(({ main, cross }) => main[0] === tubes.mainLow && cross[0] === tubes.crossLow);
      const high = inside.find(({ main, cross }) => main[1] === tubes.mainHigh && cross[1] === tubes.crossHigh);
      if (!low || !high) return null;
      return { key: low === high ? low.id : `${low.id}:${high.id}`, bays: inside.map(({ id }) => id) };
    },
  };
}
