import type { SearchField } from '../../document/search-field.ts';
import type { Quantity } from '../../quantity/kinds.ts';
import type { Asked } from './default-space.ts';

/** What the document asks a search for. Aims and limits that a person leaves out are left to `askedSpace`. */
export function askedOf(given: SearchField | undefined): Asked {
  if (!given) return { aims: ['mass', 'use'] };
  const { aims, thickness, material, side, overlap, kind, bolt, pitch, throat, zones, open, aside, judged } = given;
  const { lift, panelByHand, openLeast, openMost } = given;
  return {
    aims: aims as unknown as NonNullable<Asked['aims']>,
    ...(thickness ? { thickness: typed(thickness) } : {}),
    ...(material ? { material } : {}),
    ...(side ? { side } : {}),
    ...(overlap ? { overlap: typed(overlap) } : {}),
    ...(kind ? { kind } : {}),
    ...(bolt ? { bolt } : {}),
    ...(pitch ? { pitch: typed(pitch) } : {}),
    ...(throat ? { throat: typed(throat) } : {}),
    zones,
    open,
    aside,
    judged,
    limits: {
      ...(lift ? { lift: lift.si } : {}),
      ...(panelByHand ? { panelByHand: panelByHand.si } : {}),
      ...(openLeast === undefined ? {} : { openLeast }),
      ...(openMost === undefined ? {} : { openMost }),
    },
  };
}

const typed = (list: readonly Quantity[]): readonly string[] => list.map((one) => one.typed);
