import { describe, expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { checks } from '../../core/checks/index.ts';
import { sampleModels } from './sample-models.ts';

/** What no sample has. */
const notInSamples: Readonly<Record<string, string>> = {
  'panel-bending-two-sides': 'a panel on two sides',
  'panel-deflection-two-sides': 'a panel on two sides',
  'bolt-anchorage': 'one-sided fixings',
  'bolt-stud': 'welded studs',
  'bolt-thread-engagement': 'tapped pads',
  'bolt-pad-weld': 'tapped pads',
  'bolt-clamp-slip': 'clamps',
  'bolt-separation': 'stated torques',
  'bolt-sleeve': 'stated torques',
  'crossing-round': 'round tubes',
  'crossing-weld': 'stacked tubes',
  'weld-end-return': 'welds that end at a corner',
  'weld-plug': 'plug welds',
  'weld-plug-size': 'plug welds',
  'weld-plug-pitch': 'plug welds',
  'weld-throat': 'the throat method',
  'weld-intermittent': 'intermittent welds',
  'fatigue-weld-intermittent': 'intermittent welds',
  'fatigue-bolt-shear': 'bolts that bear shear',
  'panel-stress': 'forces of the whole plate',
  'panel-buckling': 'forces of the whole plate',
  'tube-wall-pressure': 'sealed tubes',
  'tube-wall-bent': 'sealed tubes',
  'tube-wall-collapse': 'sealed tubes',
  'fatigue-sealed-wall': 'sealed tubes',
  'eye-cheek-weld': 'cheek plates',
  'weld-aluminium': 'aluminium welded to aluminium',
  'bolt-washer-pressure': 'soft panels on bolts',
  'fatigue-weld-plug': 'plug welds',
  'fatigue-weld-plug-shear': 'plug welds',
  'weld-flare': 'edges on the corner of a tube',
  'weld-corner': 'edges on the corner of a tube',
  'fatigue-weld-corner': 'edges on the corner of a tube',
  'eye-foot-plate': 'bolted foot plates of eyes',
  'eye-foot-bolts': 'bolted foot plates of eyes',
  'eye-foot-wall': 'bolted foot plates of eyes',
  'fatigue-eye-foot-bolts': 'bolted foot plates of eyes',
};

describe.each(checks.map((check) => [check.id, check] as const))('%s', (id, check) => {
  it('is made in some sample, if any has what it is about', () => {
    const rows = sampleModels().flatMap((model) => checkRows(check, model).rows);
    const made = rows.filter(({ verdict }) => verdict !== 'not applicable');
    expect(made.length === 0, notInSamples[id]).toBe(id in notInSamples);
  });

  // The second opinion is another method with a source of its own: the samples are ordinary plates, inside its bounds.
  it('agrees with its second opinion in the samples', () => {
    expect(sampleModels().flatMap((model) => checkRows(check, model).findings)).toEqual([]);
  });
});
